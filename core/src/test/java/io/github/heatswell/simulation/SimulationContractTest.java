package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a user of {@link Simulation} may rely on. */
class SimulationContractTest {

    private static HotWaterSystem protectedLodge() {
        return Parts.lodge(4.2, 58)
                .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING))
                .vessel(Systems.vessel(3, Pressure.gauge(4.2, BAR), 90))
                .build();
    }

    /** Summaries of two runs are equal; their results are two, each with a trace of its own. */
    @Test
    void whatTwoRunsFindIsEqual() {
        Simulation simulation = Simulation.of(protectedLodge(), Duration.ofHours(2));
        // of one system: two systems are never equal
        assertEquals(simulation.run().summary(), simulation.run().summary());
        assertNotEquals(simulation.run(), simulation.run());
    }

    /** A run tells each hour that is over, and that all are, also where it fails. */
    @Test
    void aRunTellsHowFarItIs() {
        List<String> told = new ArrayList<>();
        Simulation simulation = Simulation.of(protectedLodge(), Duration.ofMinutes(150))
                .telling((done, total) -> told.add(done + " of " + total));
        simulation.run();
        assertEquals(List.of("1 of 3", "2 of 3", "3 of 3"), told);
        told.clear();
        assertThrows(
                IllegalStateException.class,
                () -> simulation.stream((time, values, regime) -> {
                    throw new IllegalStateException("enough");
                }));
        assertEquals(List.of("3 of 3"), told);
    }

    /** Each of the three ways to run heeds an interruption, before it begins and while it runs, and leaves the mark. */
    @Test
    void anInterruptedRunStops() {
        Simulation simulation = Simulation.of(protectedLodge(), Duration.ofHours(2));
        int[] samples = {0};
        int whole = simulation.run().trace().count();
        try {
            assertThrows(
                    CancellationException.class,
                    () -> simulation.stream((time, values, regime) -> {
                        samples[0]++;
                        Thread.currentThread().interrupt();
                    }));
            assertTrue(samples[0] < whole, samples[0] + " samples of " + whole);
            assertThrows(CancellationException.class, simulation::run);
            assertThrows(CancellationException.class, simulation::summary);
            assertTrue(Thread.currentThread().isInterrupted());
        } finally {
            Thread.interrupted();
        }
    }

    /** Results other than the trace do not depend on how finely it is sampled, to the last bit. */
    @ParameterizedTest
    @ValueSource(longs = {1, 7, 60, 3600, 7200})
    void resultsDoNotDependOnSampling(long seconds) {
        RunResult reference =
                Simulation.of(protectedLodge(), Duration.ofHours(2)).run();
        RunResult result = Simulation.of(protectedLodge(), Duration.ofHours(2))
                .sampledEvery(Duration.ofSeconds(seconds))
                .run();
        assertEquals(reference.events(), result.events());
        assertEquals(reference.totals(), result.totals());
        assertEquals(reference.audit(), result.audit());
        assertEquals(new Trace.Grid(seconds, 7200), result.trace().grid());
        assertEquals(
                reference.extremes().highestPressure().value(),
                result.extremes().highestPressure().value(),
                1e-6); // Pa; a sample may fall nearer to a peak than a bisected turning point
    }

    /** A sample is the value of the continuous solution: coarse samples are a subset of fine ones. */
    @Test
    void coarseSamplesAreASubsetOfFineOnes() {
        RunResult fine = Simulation.of(protectedLodge(), Duration.ofHours(1))
                .sampledEvery(Duration.ofSeconds(10))
                .run();
        RunResult coarse = Simulation.of(protectedLodge(), Duration.ofHours(1)).run();
        for (Channel channel : Channel.values()) {
            for (int i = 0; i < coarse.trace().count(); i++) {
                double expected = fine.trace().value(channel, 6 * i);
                assertEquals(expected, coarse.trace().value(channel, i), 1e-9 * Math.abs(expected)); // rounding
            }
        }
    }

    @Test
    void theSameRunGivesTheSameBits() {
        Simulation simulation = Simulation.of(protectedLodge(), Duration.ofHours(3));
        assertSame(simulation.run(), simulation.run());
    }

    /** One description simulated by sixteen threads at once, and every kind of house among them, gives the same bits. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7})
    void threadsDoNotDisturbEachOther(long seed) throws Exception {
        HotWaterSystem house = seed == 0
                ? protectedLodge()
                : RandomHouses.withAirAndVessels(seed).next();
        Simulation simulation = Simulation.of(house, Duration.ofHours(12));
        RunResult alone = simulation.run();
        int threads = 16;
        CyclicBarrier start = new CyclicBarrier(threads);
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            Callable<RunResult> task = () -> {
                start.await();
                return simulation.run();
            };
            for (Future<RunResult> together : pool.invokeAll(Collections.nCopies(4 * threads, task))) {
                assertSame(alone, together.get());
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static void assertSame(RunResult expected, RunResult actual) {
        assertEquals(expected.events(), actual.events());
        assertEquals(expected.totals(), actual.totals());
        assertEquals(expected.extremes(), actual.extremes());
        assertEquals(expected.audit(), actual.audit());
        assertEquals(expected.numerics(), actual.numerics());
        for (Channel channel : Channel.values()) {
            assertArrayEquals(expected.trace().values(channel), actual.trace().values(channel));
        }
    }

    /** Convergence: tightening the tolerance never makes it cheaper, and peak pressure and events settle. */
    @Test
    void resultsConverge() {
        RunResult finest = run(1e-12);
        double lastError = Double.POSITIVE_INFINITY;
        long lastEvaluations = 0;
        for (double tolerance : new double[] {1e-5, 1e-7, 1e-9}) {
            RunResult result = run(tolerance);
            assertTrue(result.numerics().evaluations() >= lastEvaluations, "at " + tolerance);
            double error = 0;
            assertEquals(finest.events().size(), result.events().size());
            for (int i = 0; i < finest.events().size(); i++) {
                assertEquals(
                        finest.events().get(i).kind(), result.events().get(i).kind());
                error = Math.max(
                        error,
                        Math.abs(finest.events().get(i).time()
                                - result.events().get(i).time()));
            }
            assertTrue(error <= lastError, error + " s after " + lastError + " s at " + tolerance);
            lastError = error;
            lastEvaluations = result.numerics().evaluations();
        }
        assertTrue(lastError < 0.01, "event times settle to 10 ms, not " + lastError + " s");
    }

    private static RunResult run(double tolerance) {
        return Simulation.of(protectedLodge(), Duration.ofHours(3))
                .withTolerance(tolerance)
                .run();
    }

    /** A tolerance is kept by a change of the samples, told with the result, and refused outside its range. */
    @Test
    void aToleranceIsKeptAndTold() {
        Simulation run = Simulation.of(protectedLodge(), Duration.ofHours(1));
        assertEquals(1e-8, run.summary().numerics().relativeTolerance());
        assertEquals(
                1e-6,
                run.withTolerance(1e-6)
                        .sampledEvery(Duration.ofMinutes(2))
                        .summary()
                        .numerics()
                        .relativeTolerance());
        for (double bad : new double[] {0, 9e-13, 2e-4, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> run.withTolerance(bad));
        }
    }

    /** A count of work, not of time: a normal day stays cheap. */
    @Test
    void aDayIsCheap() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60))
                                .build(),
                        Duration.ofDays(1))
                .run();
        assertTrue(result.numerics().evaluations() < 200, result.numerics().toString());
        assertTrue(result.toString().matches("run of 24 h, [0-9]+ events, peak [0-9.]+ bar abs"), result.toString());
        assertTrue(
                result.trace().toString().matches("[0-9]+ samples, one every [0-9]+ (s|min)"),
                result.trace()::toString);
    }

    /** The thermostat keeps its two temperatures for days on end, and the books close. */
    @Test
    void daysOfThermostat() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60))
                                .build(),
                        Duration.ofDays(20))
                .run();
        for (Event event : result.events()) {
            if (event.kind() == Event.Kind.HEATER_OFF) {
                assertEquals(Systems.celsius(58), event.waterTemperature(), 1e-5);
            } else if (event.kind() == Event.Kind.HEATER_ON && event.time() > 0) {
                assertEquals(Systems.celsius(52), event.waterTemperature(), 1e-5);
            }
        }
        assertTrue(result.audit().closes(), result.audit().toString());
    }

    /** A run that starts warm inside the thermostat's differential starts with the heater off. */
    @Test
    void startsWithTheHeaterOffInsideTheDifferential() {
        HotWaterSystem system = Parts.lodge(4.2, 58)
                .start(Start.builder()
                        .water(55, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.gauge(4.5, BAR))
                        .build())
                .build();
        RunResult result = Simulation.of(system, Duration.ofMinutes(30)).run();
        assertEquals(0, result.trace().value(Channel.HEATER_POWER, 0));
        assertTrue(result.events().stream().noneMatch(e -> e.kind() == Event.Kind.HEATER_ON));
        assertEquals(4.5e5, result.gauge(result.trace().value(Channel.PRESSURE_ABSOLUTE, 0)), 1e-6);
    }

    /** A tank heated beyond boiling at its pressure ends in vapour, at the saturation pressure of its water. */
    @Test
    void vapourEndsTheRun() {
        HotWaterSystem system = Parts.lodge(4.2, 58)
                .site(Parts.site(5000, 17))
                .supply(Parts.supply(io.github.heatswell.system.Supply.Arrangement.DIRECT, Pressure.gauge(0.2, BAR), 9))
                .heater(Parts.heater(11, 80, 99, 2))
                .build();
        RunResult result = Simulation.of(system, Duration.ofHours(10)).run();
        Event hazard = result.hazard().orElseThrow();
        assertEquals(Event.Kind.VAPOUR_FORMS, hazard.kind());
        assertEquals(
                io.github.heatswell.water.Saturation.pressureAbsolute(hazard.waterTemperature()),
                hazard.pressureAbsolute(),
                1);
    }

    @Test
    void impossibleRunsAreRefused() {
        HotWaterSystem system = Parts.lodge(4.2, 58).build();
        Simulation hour = Simulation.of(system, Duration.ofHours(1));
        assertThrows(IllegalArgumentException.class, () -> Simulation.of(system, Duration.ZERO));
        assertThrows(IllegalArgumentException.class, () -> Simulation.of(system, Duration.ofHours(-1)));
        assertThrows(IllegalArgumentException.class, () -> Simulation.of(system, Duration.ofDays(40_000)));
        assertThrows(IllegalArgumentException.class, () -> hour.sampledEvery(Duration.ofMillis(999)));
        assertThrows(IllegalArgumentException.class, () -> hour.sampledEvery(Duration.ofHours(2)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Simulation.of(system, Duration.ofDays(3650)).sampledEvery(Duration.ofSeconds(1)));
    }

    /** More samples than may be kept are refused before they fill the memory, by the default interval as by any other. */
    @Test
    void tooManySamplesAreRefusedByDefaultToo() {
        Simulation years = Simulation.of(Parts.lodge(4.2, 58).build(), Duration.ofDays(20_000));
        String chosen = assertThrows(IllegalArgumentException.class, () -> years.sampledEvery(Duration.ofMinutes(1)))
                .getMessage();
        assertEquals(
                chosen, assertThrows(IllegalStateException.class, years::run).getMessage());
        assertEquals("sample: PT1M gives more than 20000000 samples; take a longer interval", chosen);
    }

    /** A run shorter than the shortest interval has a summary, as it has a trace. */
    @Test
    void aRunOfHalfASecondHasASummary() {
        Simulation half = Simulation.of(protectedLodge(), Duration.ofMillis(500));
        assertEquals(half.run().totals(), half.summary().totals());
        assertEquals(0.5, half.summary().end());
    }

    /** A run that cannot go on says where it stood, in words and in numbers. */
    @Test
    void aRunThatCannotGoOnSaysWhereItStood() {
        RuntimeException cause = new IllegalStateException("too small a step");
        SimulationException stopped = new SimulationException("stopped", 61.5, 4.2e5, 330, cause);
        assertEquals("stopped (at 61.5 s; last valid state: 420000.0 Pa absolute, 330.0 K)", stopped.getMessage());
        assertEquals(61.5, stopped.time());
        assertEquals(4.2e5, stopped.pressureAbsolute());
        assertEquals(330, stopped.waterTemperature());
        assertEquals(cause, stopped.getCause());
    }

    /** What the audit measures its residuals against is all that moved, and no less. */
    @Test
    void theAuditCountsAllThatMoved() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .vessel(Systems.vessel(18, Pressure.gauge(4.2, BAR), 60))
                                .draws(DrawProfile.published().get("eu-m"))
                                .build(),
                        Duration.ofDays(1))
                .run();
        Totals totals = result.totals();
        double energy = totals.heatToWater() + totals.heatLost() + totals.heatDelivered();
        assertTrue(result.audit().energyMoved() > energy, "what flows carry comes on top");
        assertTrue(result.audit().energyMoved() < 2 * energy);
        double water = 1_000 * (totals.letIn() + totals.drawn());
        assertEquals(water, result.audit().massMoved(), 0.03 * water + 5);
    }
}
