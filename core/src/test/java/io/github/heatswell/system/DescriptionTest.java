package io.github.heatswell.system;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What was described is what is read back, in SI units, also after a copy by {@code toBuilder}; what was not described is
 * empty. Every number differs from its default and from the others of its part.
 */
class DescriptionTest {

    private static final double ROUNDING = 1e-12;

    @Test
    void vessel() {
        ExpansionVessel described = fullVessel();
        for (ExpansionVessel vessel : List.of(described, described.toBuilder().build())) {
            assertEquals(0.012, vessel.volume(), ROUNDING);
            assertEquals(Pressure.gauge(3.5, BAR), vessel.precharge());
            assertEquals(0.6, vessel.acceptance(), ROUNDING);
            assertEquals(120, vessel.gasTimeConstant().orElseThrow(), ROUNDING);
            assertEquals(288.15, vessel.chargedAt().orElseThrow(), ROUNDING);
            assertEquals(303.15, vessel.temperature().orElseThrow(), ROUNDING);
            assertEquals(2, vessel.height());
            assertEquals(ExpansionVessel.Condition.SOUND, vessel.condition());
        }
        ExpansionVessel plain = ExpansionVessel.builder()
                .volume(8, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(3, BAR))
                .acceptance(50, RatioUnit.PERCENT)
                .build();
        assertTrue(plain.gasTimeConstant().isEmpty());
        assertTrue(plain.chargedAt().isEmpty());
        assertTrue(plain.temperature().isEmpty());
    }

    @Test
    void bodyOfAVessel() {
        ExpansionVessel.Body body = fullVessel().toBuilder()
                .rating(Pressure.gauge(10, BAR))
                .mounting(ExpansionVessel.Mounting.HANGING)
                .emptyMass(4, MassUnit.KILOGRAM)
                .length(0.3, LengthUnit.METRE)
                .build()
                .body();
        assertEquals(Pressure.gauge(10, BAR), body.rating().orElseThrow());
        assertEquals(ExpansionVessel.Mounting.HANGING, body.mounting().orElseThrow());
        assertEquals(4, body.emptyMass().orElseThrow(), ROUNDING);
        assertEquals(0.3, body.length().orElseThrow(), ROUNDING);
        assertTrue(fullVessel().body().rating().isEmpty());
    }

    private static ExpansionVessel fullVessel() {
        return ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(3.5, BAR))
                .acceptance(60, RatioUnit.PERCENT)
                .gasTimeConstant(2, DurationUnit.MINUTE)
                .chargedAt(15, TemperatureUnit.CELSIUS)
                .temperature(30, TemperatureUnit.CELSIUS)
                .height(2, LengthUnit.METRE)
                .build();
    }

    @Test
    void heater() {
        Heater described = fullHeater();
        for (Heater heater : List.of(described, described.toBuilder().build())) {
            assertEquals(Heater.Energy.ELECTRIC, heater.energy());
            assertEquals(3000, heater.input(), ROUNDING);
            assertEquals(0.95, heater.recoveryEfficiency(), ROUNDING);
            assertEquals(2850, heater.output(), 1e-9); // rounding
            assertEquals(333.15, heater.setPoint(), ROUNDING);
            assertEquals(5, heater.differential(), ROUNDING);
            assertEquals(363.15, heater.cutOut().orElseThrow(), ROUNDING);
            assertEquals(318.15, heater.mixedTo().orElseThrow(), ROUNDING);
            assertTrue(heater.simultaneous());
            assertTrue(heater.thermostatStuck());
            assertEquals(2, heater.elements().size());
            Element upper = heater.elements().get(1);
            assertEquals(2000, upper.input(), ROUNDING);
            assertEquals(0.7, upper.height(), ROUNDING);
            assertEquals(328.15, upper.setPoint(), ROUNDING);
            assertEquals(4, upper.differential(), ROUNDING);
        }
        Heater plain = RefusalTest.heater(60, 5);
        assertTrue(plain.cutOut().isEmpty());
        assertTrue(plain.mixedTo().isEmpty());
        assertEquals(false, plain.simultaneous() || plain.thermostatStuck());
        assertEquals(1, plain.toBuilder().build().elements().size());
    }

    private static Heater fullHeater() {
        return Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(95, RatioUnit.PERCENT)
                .height(10, RatioUnit.PERCENT)
                .setPoint(60, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN)
                .cutOut(90, TemperatureUnit.CELSIUS)
                .mixedTo(45, TemperatureUnit.CELSIUS)
                .simultaneous(true)
                .thermostatStuck(true)
                .upper(Element.builder()
                        .input(2, PowerUnit.KILOWATT)
                        .height(70, RatioUnit.PERCENT)
                        .setPoint(55, TemperatureUnit.CELSIUS)
                        .differential(4, TemperatureDifferenceUnit.KELVIN)
                        .build())
                .build();
    }

    @Test
    void reliefValve() {
        ReliefValve described = combined();
        for (ReliefValve valve : List.of(described, described.toBuilder().build())) {
            assertEquals(Pressure.gauge(7, BAR), valve.setPressure());
            assertEquals(Pressure.gauge(7.7, BAR), valve.fullLiftPressure());
            assertEquals(Pressure.gauge(5.6, BAR), valve.reseatPressure());
            assertEquals(10e-3 / 60, valve.fullFlow(), ROUNDING);
            assertEquals(Optional.of(ReliefValve.LiftCharacteristic.SNAP), valve.liftCharacteristic());
            assertEquals(ReliefValve.Location.TANK_TOP, valve.location());
            assertEquals(1.5, valve.height());
            assertEquals(371.15, valve.setTemperature().orElseThrow(), ROUNDING);
            assertEquals(355.15, valve.reseatTemperature().orElseThrow(), ROUNDING);
            assertEquals(30_000, valve.ratedInput().orElseThrow(), ROUNDING);
            assertEquals(ReliefFault.Condition.SOUND, valve.condition());
        }
        ReliefValve plain = RefusalTest.valve("a", 7, 7.7, 5.6);
        assertTrue(plain.setTemperature().isEmpty());
        assertTrue(plain.reseatTemperature().isEmpty());
        assertTrue(plain.ratedInput().isEmpty());
        assertTrue(plain.fault().leaksFrom().isEmpty());
        assertEquals(0, plain.fault().leakage());
    }

    private static ReliefValve combined() {
        return ReliefValve.builder()
                .name("combined")
                .setPressure(Pressure.gauge(7, BAR))
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .reseatPressure(Pressure.gauge(5.6, BAR))
                .fullFlow(10, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.SNAP)
                .location(ReliefValve.Location.TANK_TOP)
                .height(1.5, LengthUnit.METRE)
                .opensAt(98, TemperatureUnit.CELSIUS)
                .reseatsAt(82, TemperatureUnit.CELSIUS)
                .ratedInput(30, PowerUnit.KILOWATT)
                .build();
    }

    @Test
    void faultsOfAReliefValve() {
        ReliefValve stuck =
                combined().toBuilder().fault(ReliefFault.stuckOpen(20, RatioUnit.PERCENT)).build().toBuilder()
                        .build();
        assertEquals(ReliefFault.Condition.STUCK_OPEN, stuck.condition());
        assertEquals(0.2, stuck.fault().stuckLift(), ROUNDING);
        ReliefValve leaking = combined().toBuilder()
                .fault(ReliefFault.leakingSeat(Pressure.gauge(4, BAR), 0.3, FlowUnit.LITRE_PER_MINUTE))
                .build()
                .toBuilder()
                .build();
        assertEquals(ReliefFault.Condition.LEAKING_SEAT, leaking.condition());
        assertEquals(Pressure.gauge(4, BAR), leaking.fault().leaksFrom().orElseThrow());
        assertEquals(0.3e-3 / 60, leaking.fault().leakage(), ROUNDING);
        assertEquals(
                ReliefFault.Condition.BLOCKED,
                combined().toBuilder().fault(ReliefFault.blocked()).build().condition());
    }

    @Test
    void supplyWithReducingValve() {
        ReducingValve reducing = ReducingValve.builder()
                .set(Pressure.gauge(3, BAR))
                .lockUpRise(0.2, BAR)
                .droop(0.5, BAR)
                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .bypassOpens(0.3, BAR)
                .build();
        for (ReducingValve valve : List.of(reducing, reducing.toBuilder().build())) {
            assertEquals(Pressure.gauge(3, BAR), valve.set());
            assertEquals(0.2e5, valve.lockUpRise(), 1e-9); // rounding
            assertEquals(0.5e5, valve.droop(), 1e-9); // rounding
            assertEquals(20e-3 / 60, valve.ratedFlow(), ROUNDING);
            assertEquals(0.3e5, valve.bypassOpens().orElseThrow(), 1e-9); // rounding
        }
        SupplyTemperature water = SupplyTemperature.constant(11, TemperatureUnit.CELSIUS);
        Supply described = RefusalTest.supply(Supply.Arrangement.CHECK_VALVE, 5).toBuilder()
                .arrangement(Supply.Arrangement.REDUCING_VALVE)
                .reducingValve(reducing)
                .water(water)
                .seatLeakage(0.1, FlowUnit.LITRE_PER_MINUTE)
                .addOutage(new Supply.Outage(500, 600))
                .addOutage(new Supply.Outage(100, 200))
                .build();
        for (Supply supply : List.of(described, described.toBuilder().build())) {
            assertSame(water, supply.water());
            assertSame(reducing, supply.reducingValve().orElseThrow());
            assertEquals(0.1e-3 / 60, supply.seatLeakage(), ROUNDING);
            assertEquals(
                    List.of(new Supply.Outage(100, 200), new Supply.Outage(500, 600)),
                    supply.outages(),
                    "in order of time");
            assertEquals(1e5 + 3.2e5, supply.staticAbsolute(0, 1e5), 1e-9); // rounding
        }
        assertEquals(
                1e5 + 2.5e5,
                described.toBuilder().pressure(Pressure.gauge(2.5, BAR)).build().staticAbsolute(0, 1e5),
                1e-9); // rounding
        assertTrue(
                RefusalTest.supply(Supply.Arrangement.DIRECT, 5).reducingValve().isEmpty());
    }

    @Test
    void tankAndPiping() {
        Shell shell = Shell.rigid();
        Tank described = Tank.builder()
                .volume(200, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(1.5, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(6, BAR))
                .layers(8)
                .height(1.4, LengthUnit.METRE)
                .build();
        for (Tank tank : List.of(described, described.toBuilder().build())) {
            assertEquals(0.2, tank.volume(), ROUNDING);
            assertSame(shell, tank.shell());
            assertEquals(1.5, tank.standingLoss(), ROUNDING);
            assertEquals(8, tank.layers());
            assertEquals(1.4, tank.height().orElseThrow(), ROUNDING);
            assertEquals(12e5 + 1e5, tank.testPressureAbsolute(1e5), 1e-9); // rounding
        }
        Tank plain = RefusalTest.whole(4, 10).build().tank();
        assertTrue(plain.height().isEmpty());
        assertTrue(plain.toBuilder().build().height().isEmpty());
        assertSame(Material.COPPER, pipe().material());
        Leak leak = Leak.of(2, FlowUnit.LITRE_PER_MINUTE, Pressure.gauge(3, BAR));
        assertEquals(2e-3 / 60, leak.flow(), ROUNDING);
        assertEquals(Pressure.gauge(3, BAR), leak.at());
    }

    @Test
    void start() {
        Start described = Start.builder()
                .water(50, TemperatureUnit.CELSIUS)
                .pressure(Pressure.gauge(4.5, BAR))
                .timeOfDay(6, DurationUnit.HOUR)
                .dayOfYear(200)
                .build();
        for (Start start : List.of(described, described.toBuilder().build())) {
            assertEquals(323.15, start.waterTemperature().orElseThrow(), ROUNDING);
            assertEquals(Pressure.gauge(4.5, BAR), start.pressure().orElseThrow());
            assertEquals(21_600, start.timeOfDay());
            assertEquals(200, start.dayOfYear());
        }
        Start plain = Start.builder().build();
        assertTrue(plain.waterTemperature().isEmpty());
        assertTrue(plain.pressure().isEmpty());
        assertEquals(0, plain.timeOfDay());
        assertEquals(1, plain.dayOfYear());
    }

    @Test
    void wholeHouse() {
        Leak leak = Leak.of(2, FlowUnit.LITRE_PER_MINUTE, Pressure.gauge(3, BAR));
        DrawProfile draws = DrawProfile.of("nothing much", List.of());
        HotWaterSystem described = RefusalTest.whole(4, 10)
                .site(Site.builder()
                        .altitude(310, LengthUnit.METRE)
                        .room(17, TemperatureUnit.CELSIUS)
                        .build())
                .addPipe(pipe())
                .addReliefValve(combined())
                .vessel(fullVessel())
                .trappedAir(0.1, VolumeUnit.LITRE)
                .addLeak(leak)
                .draws(draws)
                .gaugeHeight(1.2, LengthUnit.METRE)
                .start(Start.builder().dayOfYear(200).build())
                .build();
        for (HotWaterSystem house : List.of(described, described.toBuilder().build())) {
            assertEquals(310, house.site().altitude(), ROUNDING);
            assertEquals(290.15, house.site().roomTemperature(), ROUNDING);
            assertEquals(10e-3 / 60, house.reliefValves().get(0).fullFlow(), ROUNDING);
            assertEquals(Supply.Arrangement.CHECK_VALVE, house.supply().arrangement());
            assertEquals(0.1, house.tank().volume(), ROUNDING);
            assertEquals(3000, house.heater().input(), ROUNDING);
            assertEquals(1, house.piping().size());
            assertEquals("combined", house.reliefValves().get(0).name());
            assertEquals(2, house.vessel().orElseThrow().height());
            assertEquals(0.1e-3, house.trappedAir().orElseThrow(), ROUNDING);
            assertEquals(List.of(leak), house.leaks());
            assertSame(draws, house.draws());
            assertEquals(1.2, house.gaugeHeight());
            assertEquals(200, house.start().dayOfYear());
            assertEquals(4e5, house.supplyAtStart().gauge(house.site().atmosphere()), 1e-9); // rounding
            assertEquals(283.15, house.coldAtStart(), ROUNDING);
        }
        assertTrue(described.toBuilder()
                .withoutReliefValves()
                .build()
                .reliefValves()
                .isEmpty());
    }

    private static PipeRun pipe() {
        return PipeRun.builder()
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(1, LengthUnit.MILLIMETRE)
                .length(10, LengthUnit.METRE)
                .build();
    }
}
