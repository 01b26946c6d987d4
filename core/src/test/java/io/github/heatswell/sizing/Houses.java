package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;

/** Invented houses to find vessels for. */
final class Houses {

    private Houses() {}

    /** A steel tank behind a check valve, with copper pipe, a 7 bar valve and a place for a vessel. */
    static HotWaterSystem.Builder cottage(double supplyBar) {
        return HotWaterSystem.builder()
                .site(Parts.site(310, 17))
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(supplyBar, BAR), 9))
                .tank(Parts.tank(200, Parts.steel(470, 2.3), 2.1, 10))
                .heater(heater(3, 62))
                .addPipe(Parts.pipe(Material.COPPER, 22, 1, 12))
                .addReliefValve(valve(7, 5.9))
                .vessel(vessel(60));
    }

    /** The textbook case: rigid, without loss or piping, at sea level. */
    static HotWaterSystem textbook(double litres, double setCelsius) {
        return Parts.textbook(litres, 10, 4, setCelsius)
                .heater(heater(4.5, setCelsius))
                .vessel(vessel(100))
                .build();
    }

    static Heater heater(double kilowatt, double setCelsius) {
        return heaterBuilder(kilowatt, setCelsius).build();
    }

    static Heater.Builder heaterBuilder(double kilowatt, double setCelsius) {
        return Parts.heaterBuilder(kilowatt, 100, setCelsius, 4).energy(Heater.Energy.ELECTRIC);
    }

    static ReliefValve valve(double opensBar, double reseatsBar) {
        return valveBuilder(opensBar, reseatsBar).build();
    }

    static ReliefValve.Builder valveBuilder(double opensBar, double reseatsBar) {
        return Parts.valve("valve " + opensBar, opensBar, reseatsBar);
    }

    static ExpansionVessel vessel(double acceptancePercent) {
        return vesselBuilder(acceptancePercent).build();
    }

    static ExpansionVessel.Builder vesselBuilder(double acceptancePercent) {
        return Parts.vessel(12, Pressure.gauge(2, BAR), acceptancePercent);
    }

    /** A target of so many bar absolute, below every other bound. */
    static SizingTarget target(HotWaterSystem house, double absoluteBar) {
        return SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(16, BAR))
                .withoutCodeCap()
                .own(Pressure.absolute(absoluteBar, BAR))
                .build();
    }
}
