package consumer;

import static io.github.heatswell.units.LengthUnit.METRE;
import static io.github.heatswell.units.LengthUnit.MILLIMETRE;
import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** An invented house, written as somebody does who has nothing but the library's jars and their Javadoc. */
final class Cottage {

    private Cottage() {}

    /** A tank behind a check valve with a 7 bar relief valve and no expansion vessel. */
    static HotWaterSystem withoutVessel() {
        return HotWaterSystem.builder()
                .site(Site.builder()
                        .altitude(310, METRE)
                        .room(17, TemperatureUnit.CELSIUS)
                        .build())
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(3.5, BAR))
                        .water(9, TemperatureUnit.CELSIUS)
                        .build())
                .tank(Tank.builder()
                        .volume(200, VolumeUnit.LITRE)
                        .shell(Shell.cylinder(Material.STEEL, 470, 2.3, MILLIMETRE))
                        .standingLoss(2.1, ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(Pressure.gauge(10, BAR))
                        .build())
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(3, PowerUnit.KILOWATT)
                        .recoveryEfficiency(100, RatioUnit.PERCENT)
                        .setPoint(62, TemperatureUnit.CELSIUS)
                        .differential(4, TemperatureDifferenceUnit.KELVIN)
                        .build())
                .addReliefValve(ReliefValve.builder()
                        .name("valve in the cold feed")
                        .setPressure(Pressure.gauge(7, BAR))
                        .fullLiftPressure(Pressure.gauge(7.7, BAR))
                        .reseatPressure(Pressure.gauge(5.9, BAR))
                        .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                        .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                        .build())
                .build();
    }
}
