package io.github.heatswell.system;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.ExpansionUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A part that is built anew from its own builder is the same part. */
class ChangedPartsTest {

    private static <T> void same(T part, T copy, List<Function<T, Object>> properties) {
        for (int i = 0; i < properties.size(); i++) {
            assertEquals(properties.get(i).apply(part), properties.get(i).apply(copy), "property " + i);
        }
    }

    @Test
    void aTank() {
        Tank tank = Tank.builder()
                .volume(230, VolumeUnit.LITRE)
                .shell(Shell.rigid())
                .standingLoss(2.4, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(6, BAR))
                .layers(7)
                .height(1.4, LengthUnit.METRE)
                .inletMixing(15, RatioUnit.PERCENT)
                .build();

        same(
                tank,
                tank.toBuilder().build(),
                List.of(
                        Tank::volume,
                        Tank::shell,
                        Tank::compliance,
                        Tank::complianceGiven,
                        Tank::standingLoss,
                        Tank::workingPressure,
                        Tank::layers,
                        Tank::height,
                        Tank::inletMixing));
    }

    @Test
    void aTankOfGivenCompliance() {
        Tank tank = Tank.builder()
                .volume(230, VolumeUnit.LITRE)
                .material(Material.STEEL)
                .compliance(28.3, ComplianceUnit.MILLILITRE_PER_BAR)
                .expansion(14, ExpansionUnit.MILLIONTH_PER_KELVIN)
                .neverFails(true)
                .air(0.3, VolumeUnit.LITRE)
                .standingLoss(2.4, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(6, BAR))
                .build();
        same(
                tank,
                tank.toBuilder().build(),
                List.of(
                        Tank::compliance,
                        Tank::complianceGiven,
                        Tank::neverFails,
                        Tank::air,
                        same -> same.shell().compliance(),
                        same -> same.shell().thermalGrowth()));
    }

    @Test
    void aSupplyAndItsReducingValve() {
        ReducingValve valve = ReducingValve.builder()
                .set(Pressure.gauge(3, BAR))
                .lockUpRise(0.4, BAR)
                .droop(0.9, BAR)
                .ratedFlow(33, FlowUnit.LITRE_PER_MINUTE)
                .bypassOpens(0.2, BAR)
                .build();
        Supply supply = Supply.builder()
                .arrangement(Supply.Arrangement.REDUCING_VALVE)
                .pressure(Pressure.gauge(6, BAR))
                .water(9, TemperatureUnit.CELSIUS)
                .reducingValve(valve)
                .seatLeakage(0.1, FlowUnit.LITRE_PER_MINUTE)
                .addOutage(new Supply.Outage(100, 200))
                .build();

        same(
                valve,
                valve.toBuilder().build(),
                List.of(
                        ReducingValve::set,
                        ReducingValve::lockUpRise,
                        ReducingValve::droop,
                        ReducingValve::ratedFlow,
                        ReducingValve::bypassOpens));
        same(
                supply,
                supply.toBuilder().build(),
                List.of(
                        Supply::arrangement,
                        Supply::mains,
                        Supply::water,
                        Supply::reducingValve,
                        Supply::seatLeakage,
                        Supply::outages));
        assertTrue(supply.toBuilder().withoutOutages().build().outages().isEmpty());
    }

    @Test
    void aHeater() {
        Element upper = Element.builder()
                .input(2, PowerUnit.KILOWATT)
                .setPoint(61, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN)
                .height(70, RatioUnit.PERCENT)
                .build();
        Heater heater = Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .setPoint(59, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN)
                .height(10, RatioUnit.PERCENT)
                .upper(upper)
                .simultaneous(true)
                .thermostatStuck(true)
                .cutOut(85, TemperatureUnit.CELSIUS)
                .mixedTo(48, TemperatureUnit.CELSIUS)
                .build();
        List<Function<Element, Object>> element =
                List.of(Element::input, Element::setPoint, Element::differential, Element::height);

        same(
                heater,
                heater.toBuilder().build(),
                List.of(
                        Heater::energy,
                        Heater::recoveryEfficiency,
                        Heater::simultaneous,
                        Heater::thermostatStuck,
                        Heater::cutOut,
                        Heater::mixedTo));
        for (int i = 0; i < 2; i++) {
            same(heater.elements().get(i), heater.toBuilder().build().elements().get(i), element);
        }
        same(upper, upper.toBuilder().build(), element);
    }

    @Test
    void aVessel() {
        ExpansionVessel vessel = ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(4, BAR))
                .acceptance(60, RatioUnit.PERCENT)
                .gasTimeConstant(30, DurationUnit.SECOND)
                .chargedAt(12, TemperatureUnit.CELSIUS)
                .temperature(24, TemperatureUnit.CELSIUS)
                .height(-1, LengthUnit.METRE)
                .condition(ExpansionVessel.Condition.ISOLATED)
                .rating(Pressure.gauge(10, BAR))
                .build();

        same(
                vessel,
                vessel.toBuilder().build(),
                List.of(
                        ExpansionVessel::volume,
                        ExpansionVessel::precharge,
                        ExpansionVessel::acceptance,
                        ExpansionVessel::gasTimeConstant,
                        ExpansionVessel::chargedAt,
                        ExpansionVessel::temperature,
                        ExpansionVessel::height,
                        ExpansionVessel::condition,
                        ExpansionVessel::body));
    }

    @Test
    void aReliefValve() {
        ReliefValve.Builder builder = ReliefValve.builder()
                .name("combined")
                .setPressure(Pressure.gauge(7, BAR))
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .reseatPressure(Pressure.gauge(5.6, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.SNAP)
                .location(ReliefValve.Location.TANK_TOP)
                .height(1.3, LengthUnit.METRE)
                .opensAt(99, TemperatureUnit.CELSIUS)
                .reseatsAt(85, TemperatureUnit.CELSIUS)
                .ratedInput(30, PowerUnit.KILOWATT);
        for (ReliefValve valve : List.of(
                builder.fault(ReliefFault.leakingSeat(Pressure.gauge(3, BAR), 0.01, FlowUnit.LITRE_PER_MINUTE))
                        .build(),
                builder.fault(ReliefFault.stuckOpen(2, RatioUnit.PERCENT)).build())) {
            same(
                    valve,
                    valve.toBuilder().build(),
                    List.of(
                            ReliefValve::name,
                            ReliefValve::setPressure,
                            ReliefValve::fullLiftPressure,
                            ReliefValve::reseatPressure,
                            ReliefValve::fullFlow,
                            ReliefValve::liftCharacteristic,
                            ReliefValve::location,
                            ReliefValve::height,
                            ReliefValve::setTemperature,
                            ReliefValve::reseatTemperature,
                            ReliefValve::condition,
                            ReliefValve::fault,
                            ReliefValve::ratedInput));
        }
    }

    @Test
    void aStart() {
        Start start = Start.builder()
                .water(40, TemperatureUnit.CELSIUS)
                .pressure(Pressure.gauge(5, BAR))
                .timeOfDay(6, DurationUnit.HOUR)
                .dayOfYear(33)
                .build();

        same(
                start,
                start.toBuilder().build(),
                List.of(Start::waterTemperature, Start::pressure, Start::timeOfDay, Start::dayOfYear));
        assertTrue(start.toBuilder().atSupplyPressure().build().pressure().isEmpty());
    }

    @Test
    void aTimetableAndASeasonMoveAsAWhole() {
        MainsPressure mains =
                MainsPressure.daily(Map.of(0.0, Pressure.gauge(5, BAR), 43_200.0, Pressure.absolute(4, BAR)));
        SupplyTemperature seasonal =
                SupplyTemperature.seasonal(10, TemperatureUnit.CELSIUS, 20, TemperatureDifferenceUnit.KELVIN);
        SupplyTemperature cold = SupplyTemperature.constant(1, TemperatureUnit.CELSIUS);

        for (double time : new double[] {0, 20_000, 43_200, 70_000}) {
            assertEquals(
                    mains.absolute(time, 1e5) + 0.3e5,
                    mains.raisedBy(0.3, PressureUnit.BAR).absolute(time, 1e5),
                    1e-6); // rounding
        }
        assertThrows(IllegalArgumentException.class, () -> mains.raisedBy(-5, PressureUnit.BAR));
        assertEquals(
                seasonal.on(200) + 2,
                seasonal.warmerBy(2, TemperatureDifferenceUnit.KELVIN).on(200),
                1e-9); // rounding
        assertEquals(273.15, cold.warmerBy(-5, TemperatureDifferenceUnit.KELVIN).on(1));
        assertEquals(313.15, cold.warmerBy(50, TemperatureDifferenceUnit.KELVIN).on(1));
    }
}
