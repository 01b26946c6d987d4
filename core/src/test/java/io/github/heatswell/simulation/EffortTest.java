package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.ThreadMXBean;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PowerCurve;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: how much work a day takes, counted and not timed. The bounds leave a sixth of room above what was counted when
 * they were written; a change that needs more should say why.
 */
class EffortTest {

    private static final ReliefValve MODULATING = Systems.valve(ReliefValve.LiftCharacteristic.MODULATING);

    private static HotWaterSystem.Builder withVessel() {
        return Parts.lodge(4.2, 58).addReliefValve(MODULATING).vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60));
    }

    private static HotWaterSystem europeanDay() {
        return withVessel().draws(DrawProfile.published().get("eu-m")).build();
    }

    private static HotWaterSystem layeredDay() {
        Tank tank = Parts.tank(230, Parts.steel(480, 2.2), 2.4, 10).toBuilder()
                .layers(12)
                .height(1.2, LengthUnit.METRE)
                .build();
        return withVessel()
                .tank(tank)
                .draws(DrawProfile.published().get("eu-m"))
                .build();
    }

    static Stream<Arguments> days() {
        HotWaterSystem snapping = Parts.lodge(4.2, 58)
                .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.SNAP))
                .build();
        return Stream.of(
                Arguments.of("vessel", withVessel().build(), 5, 20, 146),
                Arguments.of("vessel and EU profile M", europeanDay(), 61, 99, 710),
                Arguments.of(
                        "modulating valve",
                        Parts.lodge(4.2, 58).addReliefValve(MODULATING).build(),
                        12,
                        123,
                        767),
                Arguments.of("snap valve", snapping, 162, 290, 1_935),
                Arguments.of("layers and EU profile M", layeredDay(), 155, 410, 3_140),
                Arguments.of("leaking check valve", behindALeakingCheckValve(), 12, 50, 447));
    }

    /** Its seat passes ten litres a minute, so that the pressure answers within milliseconds; at night the mains stand low. */
    private static HotWaterSystem behindALeakingCheckValve() {
        MainsPressure mains =
                MainsPressure.daily(Map.of(6 * 3_600.0, Pressure.gauge(2, BAR), 18 * 3_600.0, Pressure.gauge(6, BAR)));
        Supply supply = Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 9).toBuilder()
                .mains(mains)
                .seatLeakage(10, FlowUnit.LITRE_PER_MINUTE)
                .build();
        return Parts.lodge(4.2, 58).supply(supply).addReliefValve(MODULATING).build();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("days")
    void aDayTakesNoMoreThanThis(String name, HotWaterSystem house, int segments, int steps, int evaluations) {
        RunSummary.Numerics found = day(house, 1).numerics();
        assertEquals(segments, found.segments(), "segments follow from what happens, not from the solver");
        assertTrue(found.steps() <= steps, found::toString);
        assertTrue(found.evaluations() <= evaluations, found::toString);
    }

    /** Contract: where nothing flows and nothing responds to the pressure, the explanation names neither a flow nor a time. */
    @Test
    void aHouseAtRestIsExplainedWithoutNumbersItLacks() {
        Moment still = new Moment(Parts.lodge(4.2, 58), 5, 17).with(PressureRegime.FREE);
        still.balance.under(still.conditions);
        still.balance.evaluate(still.y, still.modes, new double[still.vector.length]);
        String message = new Effort(still.plant, still.balance).explain(List.of(), 1_000_000, 60);
        assertTrue(message.endsWith("a curve of your own that jumps"), message);
        assertFalse(message.contains("Infinity"), message);
    }

    /** Contract: a house that fills through its reducing valve, with nothing else open, is stiff by that valve. */
    @Test
    void theReducingValveIsNamedWhereItMakesTheHouseStiff() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 9).toBuilder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .reducingValve(ReducingValve.builder()
                                .set(Pressure.gauge(3, BAR))
                                .lockUpRise(0.2, BAR)
                                .droop(0.5, BAR)
                                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                                .build())
                        .build());
        Moment filling = new Moment(house, 2, 17).with(PressureRegime.FILLING);
        filling.balance.under(filling.conditions);
        filling.balance.evaluate(filling.y, filling.modes, new double[filling.vector.length]);
        String message = new Effort(filling.plant, filling.balance).explain(List.of(), 1_000_000, 60);
        assertTrue(message.contains("to the reducing valve;"), message);
    }

    /** Contract: a run that takes more steps than its hours allow ends there, and says so. */
    @Test
    void noRunTakesMoreStepsThanItsHoursAllow() {
        PowerCurve restless = new PowerCurve() {
            @Override
            public double share(double clock, double temperature) {
                return 1;
            }

            @Override
            public double nextChange(double clock) {
                return clock + 1e-3;
            }
        };
        HotWaterSystem house = withVessel()
                .heater(Parts.heater(11.2, 78, 58, 6).toBuilder()
                        .powerCurve(restless)
                        .build())
                .build();
        Simulation tenMinutes = Simulation.of(house, Duration.ofMinutes(10));
        SimulationException found = assertThrows(SimulationException.class, tenMinutes::run);
        assertTrue(found.getMessage().startsWith("too many steps: 8"), found.getMessage());
    }

    /** Ten times the days take ten times the work, and no more memory for each. */
    @Test
    void workGrowsInProportionToTheDays() {
        RunSummary ten = day(europeanDay(), 10);
        RunSummary hundred = day(europeanDay(), 100);
        double ratio =
                (double) hundred.numerics().evaluations() / ten.numerics().evaluations();
        assertEquals(10, ratio, 0.5); // the first day begins cold
    }

    @Test
    void aDayAllocatesNoMoreThanThis() {
        assumeTrue(ManagementFactory.getThreadMXBean() instanceof ThreadMXBean, "this Java does not count allocations");
        ThreadMXBean counter = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        HotWaterSystem house = europeanDay();
        day(house, 1);
        long before = counter.getCurrentThreadAllocatedBytes();
        day(house, 1);
        long bytes = counter.getCurrentThreadAllocatedBytes() - before;
        assertTrue(bytes < 425_000, bytes + " bytes"); // counted: 364 000, compiled or not
    }

    private static RunSummary day(HotWaterSystem house, int days) {
        return Simulation.of(house, Duration.ofDays(days)).stream((time, values, regime) -> {});
    }
}
