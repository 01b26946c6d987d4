package consumer;

import static io.github.heatswell.units.LengthUnit.METRE;
import static io.github.heatswell.units.LengthUnit.MILLIMETRE;
import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.GasLaw;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PowerCurve;
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

    /** The same with a relief valve that lifts by three quarters half way to its full lift. */
    static HotWaterSystem withQuickOpeningValve() {
        HotWaterSystem house = withoutVessel();
        ReliefValve valve = house.reliefValves().get(0);
        return house.toBuilder()
                .withoutReliefValves()
                .addReliefValve(valve.toBuilder().liftCurve(new QuickOpening()).build())
                .build();
    }

    /** The same with a heat pump in place of the element. */
    static HotWaterSystem withHeatPump() {
        HotWaterSystem house = withoutVessel();
        return house.toBuilder()
                .heater(house.heater().toBuilder().powerCurve(new HeatPump()).build())
                .build();
    }

    /** The same with a vessel whose diaphragm stretches. */
    static HotWaterSystem withStretchingDiaphragm() {
        return withoutVessel().toBuilder()
                .vessel(vessel().gasLaw(new StretchingDiaphragm()).build())
                .build();
    }

    /** A vessel that is too small. */
    static ExpansionVessel.Builder vessel() {
        return ExpansionVessel.builder()
                .volume(2, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(3.5, BAR))
                .acceptance(60, RatioUnit.PERCENT);
    }

    private static final class QuickOpening implements ReliefValve.LiftCurve {
        @Override
        public double lift(double share) {
            return share * (2 - share);
        }

        @Override
        public double slope(double share) {
            return 2 - 2 * share;
        }
    }

    private static final class HeatPump implements PowerCurve {
        @Override
        public double share(double clock, double temperature) {
            return Math.max(0.4, Math.min(1, 1 - 0.012 * (temperature - 288.15)));
        }
    }

    private static final class StretchingDiaphragm implements GasLaw {
        private static final double STIFFNESS = 60_000;

        @Override
        public double pressure(double charge, double share, double warmth) {
            return charge * warmth / share + STIFFNESS * (1 - share);
        }

        @Override
        public double byShare(double charge, double share, double warmth) {
            return -charge * warmth / (share * share) - STIFFNESS;
        }

        @Override
        public double byWarmth(double charge, double share, double warmth) {
            return charge / share;
        }
    }
}
