package io.github.heatswell.study;

import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Optional;

/** A house while its numbers are moved away from their description. */
final class Deviations {

    private final HotWaterSystem described;
    private final HotWaterSystem.Builder house;
    private final Supply.Builder supply;
    private final Heater.Builder heater;

    Deviations(HotWaterSystem described) {
        this.described = described;
        house = described.toBuilder();
        supply = described.supply().toBuilder();
        heater = described.heater().toBuilder();
    }

    /**
     * The house with everything moved. A start pressure that would then lie below the supply's, or that an open
     * connection to the mains could not hold, follows the supply.
     *
     * @throws IllegalArgumentException if the numbers contradict each other
     */
    HotWaterSystem moved() {
        Supply fed = supply.build();
        house.supply(fed).heater(heater.build());
        double atmosphere = described.site().atmosphere();
        double feed = fed.staticAbsolute(described.start().timeOfDay(), atmosphere);
        Optional<Pressure> start = described.start().pressure();
        if (start.isPresent()
                && (start.get().absolute(atmosphere) < feed || fed.arrangement() == Supply.Arrangement.DIRECT)) {
            house.start(described.start().toBuilder().atSupplyPressure().build());
        }
        return house.build();
    }

    void supplyPressure(double pascal) {
        supply.mains(described.supply().mains().raisedBy(pascal, PressureUnit.PASCAL));
    }

    void reducedPressure(double pascal) {
        described
                .supply()
                .reducingValve()
                .ifPresent(valve -> supply.reducingValve(
                        valve.toBuilder().set(raised(valve.set(), pascal)).build()));
    }

    void supplyWater(double kelvin) {
        supply.water(described.supply().water().warmerBy(kelvin, TemperatureDifferenceUnit.KELVIN));
    }

    void setPoint(double kelvin) {
        heater.setPoint(described.heater().setPoint() + kelvin, TemperatureUnit.KELVIN);
        if (described.heater().elements().size() > 1) {
            Element upper = described.heater().elements().get(1);
            heater.upper(upper.toBuilder()
                    .setPoint(upper.setPoint() + kelvin, TemperatureUnit.KELVIN)
                    .build());
        }
    }

    void recoveryEfficiency(double share) {
        double percent = 100 * Math.min(1, described.heater().recoveryEfficiency() * (1 + share));
        heater.recoveryEfficiency(percent, RatioUnit.PERCENT);
    }

    void tankVolume(double share) {
        Tank tank = described.tank();
        double litres = VolumeUnit.LITRE.fromSi(tank.volume() * (1 + share));
        house.tank(tank.toBuilder().volume(litres, VolumeUnit.LITRE).build());
    }

    void precharge(double pascal) {
        ExpansionVessel vessel = described.vessel().orElseThrow();
        house.vessel(
                vessel.toBuilder().precharge(raised(vessel.precharge(), pascal)).build());
    }

    void reliefSet(double share) {
        house.withoutReliefValves();
        for (ReliefValve valve : described.reliefValves()) {
            house.addReliefValve(valve.toBuilder()
                    .setPressure(scaled(valve.setPressure(), share))
                    .fullLiftPressure(scaled(valve.fullLiftPressure(), share))
                    .reseatPressure(scaled(valve.reseatPressure(), share))
                    .build());
        }
    }

    private static Pressure raised(Pressure pressure, double pascal) {
        return new Pressure(pressure.value() + pascal, pressure.reference());
    }

    /** Springs are set against the air, so it is the gauge pressure that deviates by a share. */
    private Pressure scaled(Pressure pressure, double share) {
        double atmosphere = described.site().atmosphere();
        return Pressure.gauge(pressure.gauge(atmosphere) * (1 + share), PressureUnit.PASCAL);
    }
}
