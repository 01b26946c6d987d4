package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PASCAL;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;

/** Invented systems the tests start from. */
final class Systems {

    /** The air pressure at sea level (Pa), where most of them stand. */
    static final double SEA_LEVEL = 101_325;

    private Systems() {}

    /** A thermostat that never opens, on a gas burner of 11.2 kW set to 58 degC. */
    static Heater.Builder runaway() {
        return Parts.heaterBuilder(11.2, 78, 58, 6).thermostatStuck(true);
    }

    /** Opens at 10 bar or at 99 degC. */
    static ReliefValve.Builder temperatureAndPressure() {
        return Parts.valve("T&P valve", 10, 8.5)
                .fullFlow(30, FlowUnit.LITRE_PER_MINUTE)
                .location(ReliefValve.Location.TANK_TOP)
                .opensAt(99, TemperatureUnit.CELSIUS)
                .reseatsAt(88, TemperatureUnit.CELSIUS);
    }

    /** Opens at 7 bar, fully lifted at 7.7, reseats at 5.6, 20 L/min. */
    static ReliefValve valve(ReliefValve.LiftCharacteristic character) {
        return valve("expansion valve", character, 7, 7.7, 5.6);
    }

    static ReliefValve valve(
            String name,
            ReliefValve.LiftCharacteristic character,
            double setPressure,
            double fullLiftPressure,
            double reseatPressure) {
        return Parts.valve(name, setPressure, reseatPressure)
                .fullLiftPressure(Pressure.gauge(fullLiftPressure, BAR))
                .liftCharacteristic(character)
                .build();
    }

    /** A modulating valve that holds a pressure within a hundredth of a bar. */
    static ReliefValve holding(double absolutePascal) {
        return ReliefValve.builder()
                .name("holding valve")
                .setPressure(Pressure.absolute(absolutePascal, PASCAL))
                .fullLiftPressure(Pressure.absolute(absolutePascal + 500, PASCAL))
                .reseatPressure(Pressure.absolute(absolutePascal - 500, PASCAL))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build();
    }

    static ExpansionVessel vessel(double litres, Pressure precharge, double acceptancePercent) {
        return Parts.vessel(litres, precharge, acceptancePercent).build();
    }

    static ExpansionVessel slowVessel(double litres, Pressure precharge, double timeConstant) {
        return Parts.vessel(litres, precharge, 100)
                .gasTimeConstant(timeConstant, DurationUnit.SECOND)
                .build();
    }

    static double celsius(double degrees) {
        return TemperatureUnit.CELSIUS.toSi(degrees);
    }
}
