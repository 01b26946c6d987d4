package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** What was seen besides the gauge counts: by definition of a sighting, and in a diagnosis of readings that do not tell the causes apart. */
@Order(1)
class SightingTest {

    private static final double SURE = Math.sqrt(-2 * Math.log(0.01));

    /** Ten minutes: the heater is on from the second minute to the sixth, a litre leaves from the fourth to the fifth. */
    private static final SeenRun RUN =
            new SeenRun(60, new double[] {0, 0, 0, 0, 0.5e-3, 1e-3, 1e-3, 1e-3, 1e-3, 1e-3}, new boolean[] {
                false, false, true, true, true, true, true, false, false, false
            });

    private static double missed(Sighting.Kind kind, double from, double until, double start) {
        return RUN.residuals(List.of(Sighting.of(kind, from, until)), start)[0];
    }

    @Test
    void aSightingThatTheRunShowsIsMet() {
        assertEquals(0, missed(Sighting.Kind.DRIPS, 240, 240, 0), 1e-9, "seen as it happens");
        assertEquals(0, missed(Sighting.Kind.DRIPS, 0, 540, 0), 1e-9, "at some time in between");
        assertEquals(0, missed(Sighting.Kind.DRY, 0, 180, 0), 1e-9, "before it opens");
        assertEquals(0, missed(Sighting.Kind.HEATER_ON, 200, 200, 0), 1e-9, "while it is on");
        assertEquals(0, missed(Sighting.Kind.HEATER_OFF, 480, 480, 0), 1e-9, "after it went off");
        assertEquals(0, missed(Sighting.Kind.HEATER_OFF, -300, -300, 0), 1e-9, "before the run begins");
        assertEquals(0, missed(Sighting.Kind.DRIPS, 1240, 1240, 1000), 1e-9, "in a run that starts later");
    }

    /** One of a hundred sightings is a mistake, and no cause is ruled out by one. */
    @Test
    void aSightingThatTheRunNeverShowsCountsAsOneMistakeInAHundred() {
        SeenRun idle = new SeenRun(60, new double[10], new boolean[10]);
        for (Sighting.Kind kind : List.of(Sighting.Kind.DRIPS, Sighting.Kind.HEATER_ON)) {
            assertEquals(
                    SURE, idle.residuals(List.of(Sighting.of(kind, 0, 0)), 0)[0], 1e-9, "-2 ln 0.01, the root of it");
        }
        double near = missed(Sighting.Kind.DRIPS, 600, 600, 0);
        assertTrue(
                near > 0.85 && near < 0.95,
                () -> "five minutes off are one standard deviation, less half a sample: " + near);
    }

    @Test
    void whatWasCaughtIsMeasured() {
        assertEquals(0, RUN.residuals(List.of(new Sighting(Sighting.Kind.CAUGHT, 0, 540, 1e-3)), 0)[0], 1e-9, "all");
        assertEquals(
                0, RUN.residuals(List.of(new Sighting(Sighting.Kind.CAUGHT, 240, 540, 0.5e-3)), 0)[0], 1e-9, "half");
        assertEquals(
                2,
                RUN.residuals(List.of(new Sighting(Sighting.Kind.CAUGHT, 0, 540, 0.8e-3)), 0)[0],
                1e-9,
                "0.2 L of what a jug tells to 0.1 L");
    }

    @Test
    void aSightingIsOfATimeOfTheLog() {
        assertThrows(IllegalArgumentException.class, () -> Sighting.of(Sighting.Kind.DRIPS, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> Sighting.of(Sighting.Kind.DRIPS, 0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Sighting(Sighting.Kind.CAUGHT, 0, 1, -1));
        PressureLog log = PressureLog.builder(new double[] {0, 60, 120}, new double[] {3e5, 3e5, 3e5})
                .build()
                .seen(List.of(
                        Sighting.of(Sighting.Kind.DRIPS, 60, 60), Sighting.of(Sighting.Kind.DRIPS, 50_000, 50_000)));
        assertEquals(1, log.sightings().size(), "what came a day after the log is none of it");
        Sighting later = Sighting.of(Sighting.Kind.DRIPS, 600, 600);
        assertEquals(600, log.seen(List.of(later)).lastSeen(), 0, "the run goes on until then");
        assertEquals(1, log.roughened(true, true, true).sightings().size(), "a changed log keeps what was seen");
    }

    /** A dozen readings by hand of the house as described, two hours from the heater's coming on. */
    private static PressureLog.Builder readings(HotWaterSystem house) {
        Trace trace = Simulation.of(house, Duration.ofHours(2)).run().trace();
        double[] times = new double[13];
        double[] gauge = new double[13];
        for (int i = 0; i < times.length; i++) {
            times[i] = 600.0 * i;
            gauge[i] = 1e4 * Math.rint(trace.value(Channel.GAUGE_READING, 10 * i) / 1e4);
        }
        return PressureLog.builder(times, gauge);
    }

    private static DiagnosisResult diagnosed(HotWaterSystem house, Sighting... seen) {
        PressureLog log = readings(house).build().seen(List.of(seen));
        return Diagnosis.builder(house).log(log).threads(2).build().run();
    }

    private static double weight(DiagnosisResult result, Cause... causes) {
        return Arrays.stream(causes)
                .map(result::of)
                .flatMap(Optional::stream)
                .mapToDouble(HypothesisFit::weight)
                .sum();
    }

    /** Three looks at a dripping pipe, in a house whose gauge shows nothing unusual, make its relief valve suspect; dry looks do not. */
    @Test
    void aDripThatWasSeenMovesTheDiagnosis() {
        HotWaterSystem house = Abbey.plain().build();
        Cause[] ofRelief = {Cause.RELIEF_OPENS_LOW, Cause.RELIEF_SEAT_WEEPS, Cause.RELIEF_STUCK_OPEN};
        DiagnosisResult unseen = diagnosed(house);
        DiagnosisResult dripping = diagnosed(
                house,
                Sighting.of(Sighting.Kind.DRIPS, 4200, 4200),
                Sighting.of(Sighting.Kind.DRIPS, 5400, 5400),
                Sighting.of(Sighting.Kind.DRIPS, 7200, 7200));
        DiagnosisResult dry = diagnosed(
                house,
                Sighting.of(Sighting.Kind.DRY, 4200, 4200),
                Sighting.of(Sighting.Kind.DRY, 5400, 5400),
                Sighting.of(Sighting.Kind.DRY, 7200, 7200));
        assertTrue(weight(unseen, ofRelief) < 0.5, () -> "without: " + weight(unseen, ofRelief));
        assertTrue(weight(dripping, ofRelief) > 0.8, () -> "dripping: " + weight(dripping, ofRelief));
        assertTrue(weight(dry, ofRelief) <= weight(unseen, ofRelief) + 0.01, () -> "dry: " + weight(dry, ofRelief));
        HypothesisFit described = dripping.of(Cause.AS_DESCRIBED).orElseThrow();
        assertTrue(
                described.evidence().stream()
                        .anyMatch(one -> one.part() == Evidence.Part.SEEN_DISCHARGE && one.against()),
                () -> described.evidence().toString());
    }

    /** A gauge that rests while the heater is seen on for an hour and a half is stuck, as far as it goes; one that moves is none. */
    @Test
    void aGaugeThatRestsWhileHeatedIsACauseOfItsOwn() {
        HotWaterSystem house = Abbey.plain().build();
        double[] times = {0, 600, 1_200, 1_800, 3_600, 5_400, 7_200};
        double[] rests = {3e5, 3e5, 3e5, 3.02e5, 3e5, 3e5, 3e5};
        PressureLog log = PressureLog.builder(times, rests)
                .build()
                .seen(List.of(
                        Sighting.of(Sighting.Kind.HEATER_ON, 600, 600),
                        Sighting.of(Sighting.Kind.HEATER_ON, 5_400, 5_400)));
        DiagnosisResult result =
                Diagnosis.builder(house).log(log).threads(2).build().run();
        HypothesisFit stuck = result.of(Cause.GAUGE_STUCK).orElseThrow();
        assertTrue(result.alike().contains(stuck), () -> result.fits().toString());
        assertTrue(stuck.weight() > weight(result, Cause.AS_DESCRIBED), "a gauge that works would have risen");
        assertTrue(log.restsWhileHeated(), "as the verdict says");
        assertTrue(diagnosed(house).of(Cause.GAUGE_STUCK).isEmpty(), "a gauge that moves");
        assertTrue(result.mayBeDeadGauge() && result.check().isEmpty(), "no reading of it tells anything");
    }

    /** When the heater came on bounds the start of the run, as a column of the burner does. */
    @Test
    void theHeaterThatWasSeenSetsTheStart() {
        HotWaterSystem house = Abbey.plain().build();
        PressureLog log = readings(house)
                .build()
                .seen(List.of(
                        Sighting.of(Sighting.Kind.HEATER_OFF, -120, -120),
                        Sighting.of(Sighting.Kind.HEATER_ON, -60, -60)));
        FreeParameter start = new Circumstances(house, log, Set.of(), DrawMarks.none())
                .with(List.of()).stream()
                        .filter(one -> one.parameter() == Parameter.START_OF_HEATING)
                        .findFirst()
                        .orElseThrow();
        assertEquals(-120, start.low(), 0, "seen off");
        assertEquals(-60, start.high(), 0, "seen on");
    }
}
