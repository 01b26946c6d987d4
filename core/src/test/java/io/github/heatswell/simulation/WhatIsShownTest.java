package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a run shows of its continuous solution: samples, extremes and totals. */
class WhatIsShownTest {

    private static final Duration HALF_DAY = Duration.ofHours(12);

    private static HotWaterSystem withDraws() {
        return Parts.lodge(4.2, 58)
                .tank(Parts.tank(230, Parts.steel(480, 2.2), 2.4, 10).toBuilder()
                        .layers(3)
                        .height(1.3, LengthUnit.METRE)
                        .build())
                .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING))
                .draws(DrawProfile.published().get("eu-m"))
                .build();
    }

    /** Contract: what is streamed is what a trace holds. */
    @Test
    void streamsTheSamplesOfTheTrace() {
        Simulation run = Simulation.of(withDraws(), HALF_DAY);
        List<Double> times = new ArrayList<>();
        List<double[]> values = new ArrayList<>();
        List<Trace.Regime> regimes = new ArrayList<>();
        RunSummary summary = run.stream((time, row, regime) -> {
            times.add(time);
            values.add(row.clone());
            regimes.add(regime);
        });
        RunResult result = run.run();
        Trace trace = result.trace();

        assertEquals(result.totals(), summary.totals());
        assertEquals(trace.count(), times.size());
        assertEquals(trace.regimes(), regimes);
        for (int i = 0; i < trace.count(); i++) {
            assertEquals(trace.grid().time(i), times.get(i));
            for (Channel channel : Channel.values()) {
                assertEquals(trace.value(channel, i), values.get(i)[channel.ordinal()]);
            }
        }
    }

    /** Contract: a quantity asked for is as in the whole trace, whatever else is left out, and so is what the run found. */
    @Test
    void streamsOnlyWhatIsAskedFor() {
        Simulation run = Simulation.of(withDraws(), HALF_DAY);
        RunResult whole = run.run();
        for (Channel asked : Channel.values()) {
            List<Double> values = new ArrayList<>();
            RunSummary summary = run.stream(Set.of(asked), (time, row, regime) -> {
                values.add(row[asked.ordinal()]);
                assertEquals(
                        Channel.values().length - 1,
                        Arrays.stream(row).filter(Double::isNaN).count());
            });
            assertEquals(whole.summary(), summary);
            assertArrayEquals(
                    whole.trace().values(asked),
                    values.stream().mapToDouble(v -> v).toArray());
        }
    }

    /** Contract: samples taken one by one, each the only one of its step, are those taken together. */
    @Test
    void samplesAreTheSameHoweverManyAStepHolds() {
        Simulation run = Simulation.of(withDraws(), HALF_DAY);
        Trace fine = run.sampledEvery(Duration.ofSeconds(10)).run().trace();
        Trace coarse = run.sampledEvery(Duration.ofMinutes(20)).run().trace();
        for (int i = 0; i < coarse.count(); i++) {
            for (Channel channel : Channel.values()) {
                double expected = fine.value(channel, 120 * i);
                assertEquals(expected, coarse.value(channel, i), 1e-9 * Math.abs(expected), channel + " at " + i);
            }
        }
    }

    /** Validation: the mean is that of the layers, and what was counted is what flowed, by the trapezoidal rule. */
    @Test
    void channelsBelongTogether() {
        Simulation run = Simulation.of(withDraws(), HALF_DAY).sampledEvery(Duration.ofSeconds(1));
        Trace trace = run.run().trace();
        double relieved = 0;
        double drawn = 0;
        for (int i = 1; i < trace.count(); i++) {
            relieved += 0.5 * (trace.value(Channel.RELIEF_FLOW, i - 1) + trace.value(Channel.RELIEF_FLOW, i));
            drawn += 0.5 * (trace.value(Channel.DRAW_FLOW, i - 1) + trace.value(Channel.DRAW_FLOW, i));
            double mean = trace.value(Channel.WATER_MEAN, i);
            assertTrue(mean >= trace.value(Channel.WATER_BOTTOM, i) - 1e-6, "mean of layers");
            assertTrue(mean <= trace.value(Channel.WATER_TOP, i) + 1e-6, "mean of layers");
        }
        int last = trace.count() - 1;
        assertTrue(relieved > 1e-3 && drawn > 1e-3, "both happen");
        // each opening begins with a burst shorter than a second
        assertEquals(relieved, trace.value(Channel.RELIEVED_TOTAL, last), 0.05 * relieved);
        assertEquals(drawn, trace.value(Channel.DRAWN_TOTAL, last), 1e-2 * drawn); // a second at both ends of each
    }

    /** Validation: totals are the last samples, masses by the density of cold water, and heat the burner's time. */
    @Test
    void totalsAgreeWithTraceAndEvents() {
        RunResult result = Simulation.of(withDraws(), HALF_DAY).run();
        int last = result.trace().count() - 1;
        double density = GibbsPolynomialWater.instance()
                .density(Systems.celsius(9), result.system().site().atmosphere());
        assertEquals(result.totals().relieved(), result.trace().value(Channel.RELIEVED_TOTAL, last), 1e-15);
        assertEquals(result.totals().letIn(), result.trace().value(Channel.INFLOW_TOTAL, last), 1e-15);
        assertEquals(result.totals().drawn(), result.trace().value(Channel.DRAWN_TOTAL, last), 1e-15);
        assertEquals(
                result.totals().relief().get(0).mass(),
                density * result.totals().relief().get(0).volume(),
                1e-9);
        assertEquals(
                result.events().stream()
                        .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED)
                        .count(),
                result.totals().relief().get(0).openings());
        double on = 0;
        double since = 0;
        for (Event event : result.events()) {
            assertTrue(event.waterTemperature() >= Systems.celsius(9), event::toString);
            assertTrue(event.waterTemperature() <= Systems.celsius(60), event::toString);
            if (event.kind() == Event.Kind.HEATER_ON) {
                since = event.time();
            } else if (event.kind() == Event.Kind.HEATER_OFF) {
                on += event.time() - since;
            }
        }
        assertEquals(11_200 * on, result.totals().heaterInput(), 1);
        assertEquals(0.78 * 11_200 * on, result.totals().heatToWater(), 1);
    }

    /** Validation: without a check valve what the water gains goes back to the mains, and is shown as returned. */
    @Test
    void showsWhatGoesBack() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .supply(Parts.supply(Supply.Arrangement.DIRECT, Pressure.gauge(4.2, BAR), 9))
                                .build(),
                        HALF_DAY)
                .run();
        Trace trace = result.trace();
        assertTrue(result.totals().returned() > 2e-3, "230 L from 9 to 58 degC");
        assertEquals(result.totals().returned(), trace.value(Channel.RETURNED_TOTAL, trace.count() - 1), 1e-15);
    }

    /** Contract: a run ends when it was told to, to the thousandth of a second. */
    @Test
    void endsInTheMiddleOfASecond() {
        RunResult result = Simulation.of(withDraws(), Duration.ofMillis(90_250)).run();
        assertEquals(90.25, result.trace().grid().end(), 1e-12);
    }

    /**
     * Validation: cold water hardly grows, so that a leak at first takes more than the heating brings; later it grows faster.
     * The lowest pressure lies where no sample and no event does.
     */
    @Test
    void findsALowestPressureInsideAStep() {
        HotWaterSystem leaking = Parts.textbook(100, 5, 3, 90)
                .vessel(Systems.vessel(8, Pressure.absolute(3, BAR), 100))
                .addLeak(Leak.of(10, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(5, BAR)))
                .start(Start.builder().pressure(Pressure.absolute(6, BAR)).build())
                .build();
        Simulation run = Simulation.of(leaking, Duration.ofMinutes(40));
        Trace fine = run.sampledEvery(Duration.ofSeconds(1)).run().trace();
        RunResult found = run.sampledEvery(Duration.ofMinutes(40)).run();
        int lowest = indexOf(fine, Channel.PRESSURE_ABSOLUTE, -1);

        assertTrue(lowest > 60 && lowest < fine.count() - 60, "neither at the start nor at the end: " + lowest);
        RunSummary.Extreme extreme = found.extremes().lowestPressure();
        assertEquals(fine.value(Channel.PRESSURE_ABSOLUTE, lowest), extreme.value(), 1); // Pa, of some thousands
        assertEquals(lowest, extreme.time(), 2);
    }

    private static HotWaterSystem.Builder seeping() {
        return Parts.textbook(100, 10, 3, 94)
                .tank(Parts.tank(100, Parts.steel(480, 2.2), 60, 12.5))
                .vessel(Systems.slowVessel(8, Pressure.absolute(3, BAR), 600))
                .addLeak(Leak.of(16, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(5, BAR)))
                .start(Start.builder()
                        .water(30, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.absolute(3.5, BAR))
                        .build());
    }

    /**
     * Validation: the hotter the tank, the more of a weak element's heat is lost and the slower the water grows, until a leak
     * takes more. Pressure turns; gas that the compression has warmed goes on cooling, and the vessel's water turns later.
     */
    @Test
    void findsAHighestPressureAndTheMostVesselWaterInsideAStep() {
        Simulation run = Simulation.of(seeping().build(), Duration.ofHours(2));
        Trace fine = run.sampledEvery(Duration.ofSeconds(1)).run().trace();
        RunResult found = run.sampledEvery(Duration.ofHours(2)).run();
        int highest = indexOf(fine, Channel.PRESSURE_ABSOLUTE, 1);
        int fullest = indexOf(fine, Channel.VESSEL_WATER, 1);

        assertTrue(highest > 60 && highest < fine.count() - 60, "neither at the start nor at the end: " + highest);
        assertTrue(fullest > highest + 2, "later: " + fullest + " s, not " + highest + " s");
        RunSummary.Extreme pressure = found.extremes().highestPressure();
        assertEquals(fine.value(Channel.PRESSURE_ABSOLUTE, highest), pressure.value(), 1); // Pa
        assertEquals(highest, pressure.time(), 2);
        RunSummary.Extreme water = found.extremes().mostVesselWater();
        assertEquals(fine.value(Channel.VESSEL_WATER, fullest), water.value(), 1e-9); // m3
        assertEquals(fullest, water.time(), 2);
    }

    /**
     * Validation: a valve whose set pressure lies a little below the turning point opens when the pressure gets there, though at
     * both ends of the step it is lower; and does not where the turning point is as much lower.
     */
    @Test
    void opensWhereThePressureOnlyPeeksOver() {
        Simulation shut = Simulation.of(seeping().build(), Duration.ofHours(2));
        Trace fine = shut.sampledEvery(Duration.ofSeconds(1)).run().trace();
        double peak = shut.run().extremes().highestPressure().value();
        double setPressure = peak - 40; // Pa
        int expected = 0;
        while (fine.value(Channel.PRESSURE_ABSOLUTE, expected) < setPressure) {
            expected++;
        }
        RunResult reached = Simulation.of(
                        seeping().addReliefValve(Systems.holding(setPressure)).build(), Duration.ofHours(2))
                .run();
        RunResult missed = Simulation.of(
                        seeping().addReliefValve(Systems.holding(peak + 40)).build(), Duration.ofHours(2))
                .run();

        assertEquals(expected, opening(reached), 1);
        assertEquals(Double.NaN, opening(missed));
    }

    private static double opening(RunResult result) {
        return result.events().stream()
                .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED)
                .mapToDouble(Event::time)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** Validation: a waterlogged vessel is a piece of pipe, and its water is more of what has to be squeezed. */
    @Test
    void aWaterloggedVesselIsSoMuchWater() {
        HotWaterSystem.Builder rigid = Parts.textbook(100, 10, 3, 12);
        ExpansionVessel logged = Systems.vessel(50, Pressure.gauge(2, BAR), 100).toBuilder()
                .condition(ExpansionVessel.Condition.WATERLOGGED)
                .build();
        double alone = rise(rigid.build());
        double with = rise(rigid.vessel(logged).build());
        assertEquals(1.5, alone / with, 0.01); // 150 L give way to what 100 L of them grow
    }

    private static double rise(HotWaterSystem system) {
        RunResult result = Simulation.of(system, Duration.ofHours(1)).run();
        return result.extremes().highestPressure().value()
                - result.extremes().lowestPressure().value();
    }

    private static int indexOf(Trace trace, Channel channel, int sign) {
        int best = 0;
        for (int i = 1; i < trace.count(); i++) {
            if (sign * trace.value(channel, i) > sign * trace.value(channel, best)) {
                best = i;
            }
        }
        return best;
    }
}
