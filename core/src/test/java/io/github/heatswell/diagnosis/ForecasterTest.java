package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a logger would show in a house, against runs of that house. */
class ForecasterTest {

    static final double AIR = Abbey.plain().build().site().atmosphere();
    private static final double HOUR = 3_600;

    private static PressureLog log(int count, double interval) {
        double[] times = new double[count];
        double[] gauge = new double[count];
        Arrays.setAll(times, i -> interval * i);
        double[] kelvin = new double[count];
        Arrays.fill(gauge, 3e5);
        Arrays.fill(kelvin, 300);
        return PressureLog.builder(times, gauge).temperature(kelvin).build();
    }

    static RunResult run(HotWaterSystem house, double hours) {
        return Simulation.of(house, Duration.ofSeconds((long) (hours * HOUR)))
                .sampledEvery(Duration.ofSeconds(15))
                .run();
    }

    private static Forecaster.Forecast forecast(HotWaterSystem house, PressureLog log, double start) {
        return new Forecaster(log, Set.of(), new Balances.Count()).of(house, start, Forecaster.Instruments.PERFECT);
    }

    /** A log of five hours to the minute is forecast from a run four times as fine. */
    @Test
    void readingsAreThoseOfARun() {
        HotWaterSystem house = Abbey.plain().build();
        RunResult run = run(house, 5);
        Trace trace = run.trace();
        PressureLog log = log(300, 60);
        Forecaster.Forecast forecast = forecast(house, log, 0);
        for (int i = 0; i < log.count(); i++) {
            assertEquals(trace.value(Channel.GAUGE_READING, 4 * i), forecast.gauge()[i], 1, "reading " + i);
            assertEquals(trace.value(Channel.WATER_TOP, 4 * i), forecast.top()[i], 1e-4);
            assertEquals(trace.regime(4 * i), forecast.regimes().apply(i));
        }
        double off = run.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        double on = run.first(Event.Kind.HEATER_ON).orElseThrow().time();
        assertEquals(off - on, forecast.firstBurn(), 1e-6);
        assertTrue(forecast.spots().isEmpty());
    }

    @Test
    void beforeTheStartTheHouseIsFed() {
        HotWaterSystem house = Abbey.plain().build();
        Trace trace = run(house, 5).trace();
        Forecaster.Forecast forecast = forecast(house, log(300, 60), 1_230);
        for (int i = 0; i <= 20; i++) {
            assertEquals(trace.value(Channel.GAUGE_READING, 0), forecast.gauge()[i], 1e-9);
            assertEquals(Trace.Regime.FED, forecast.regimes().apply(i));
        }
        assertEquals(Trace.Regime.SEALED, forecast.regimes().apply(30));
        assertEquals(trace.value(Channel.GAUGE_READING, 4 * 100 - 82), forecast.gauge()[100], 1);
        assertEquals(trace.regime(4 * 100 - 82), forecast.regimes().apply(100));
    }

    @Test
    void aStartBeforeTheLogIsPossible() {
        HotWaterSystem house = Abbey.plain().build();
        Trace trace = run(house, 7).trace();
        Forecaster forecaster = new Forecaster(log(300, 60), Set.of(), new Balances.Count());
        for (double start : new double[] {600, -1_200, -3_600, 0}) {
            Forecaster.Forecast forecast = forecaster.of(house, start, Forecaster.Instruments.PERFECT);
            int shift = (int) (-start / 15);
            assertEquals(trace.value(Channel.GAUGE_READING, 4 * 40 + shift), forecast.gauge()[40], 5, "from " + start);
            assertEquals(trace.value(Channel.GAUGE_READING, 4 * 299 + shift), forecast.gauge()[299], 5);
        }
    }

    /** Sealed, giving off water, and sealed again. */
    @Test
    void whatFixesThePressureChangesWithTime() {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        Trace trace = run(house, 5).trace();
        Forecaster.Forecast forecast = forecast(house, log(300, 60), 0);
        int same = 0;
        for (int i = 0; i < 300; i++) {
            same += trace.regime(4 * i) == forecast.regimes().apply(i) ? 1 : 0;
        }
        assertTrue(same >= 298, "of 300, where a sample may fall on a change: " + same);
        assertEquals(
                Set.of(Trace.Regime.SEALED, Trace.Regime.RELIEVING),
                IntStream.range(0, forecast.gauge().length)
                        .mapToObj(forecast.regimes())
                        .collect(Collectors.toSet()));
    }

    @Test
    void anotherHouseIsAnotherRun() {
        Forecaster forecaster = new Forecaster(log(300, 60), Set.of(), new Balances.Count());
        double high = forecaster.of(Abbey.plain().withoutVessel().build(), 0, Forecaster.Instruments.PERFECT)
                .gauge()[60];
        double low = forecaster.of(Abbey.plain().build(), 0, Forecaster.Instruments.PERFECT)
                .gauge()[60];
        assertTrue(high > low + 1e5);
    }

    /** Between two samples the reading lies on their straight line; a log of seconds is met by samples of a second. */
    @Test
    void uncommonIntervalsAreMet() {
        HotWaterSystem house = Abbey.plain().build();
        Trace trace = run(house, 5).trace();
        Forecaster.Forecast odd = forecast(house, log(40, 397.3), 0);
        double time = 397.3 * 20;
        int before = (int) (time / 15);
        double share = time / 15 - before;
        double line = (1 - share) * trace.value(Channel.GAUGE_READING, before)
                + share * trace.value(Channel.GAUGE_READING, before + 1);
        assertEquals(line, odd.gauge()[20], 300);
        Forecaster.Forecast seconds = forecast(house, log(31, 1), 0);
        assertEquals(trace.value(Channel.GAUGE_READING, 2), seconds.gauge()[30], 1);
        Forecaster.Forecast brief = forecast(house, log(3, 2), 0);
        assertEquals(trace.value(Channel.GAUGE_READING, 0), brief.gauge()[2], 100);
    }

    /** Within a few pascal of the pressure at that very moment, where it rises by hundreds between two samples. */
    @Test
    void betweenTwoSamplesAReadingLiesOnTheirLine() {
        HotWaterSystem house = Abbey.plain().build();
        Trace seconds = Simulation.of(house, Duration.ofHours(2))
                .sampledEvery(Duration.ofSeconds(1))
                .run()
                .trace();
        Forecaster.Forecast forecast = forecast(house, log(120, 60), 35);
        for (int i = 1; i < 120; i++) {
            assertEquals(seconds.value(Channel.GAUGE_READING, 60 * i - 35), forecast.gauge()[i], 5, "reading " + i);
            assertEquals(seconds.value(Channel.WATER_TOP, 60 * i - 35), forecast.top()[i], 1e-3);
        }
        Forecaster.Forecast later = new Forecaster(log(120, 60), Set.of(), new Balances.Count())
                .of(house, -3_500, Forecaster.Instruments.PERFECT);
        assertEquals(seconds.value(Channel.GAUGE_READING, 3_500), later.gauge()[0], 20);
    }

    /** A log of two days is met by more than a sample a minute and a half, and its end by the end of the run. */
    @Test
    void aLongLogIsMetAsWell() {
        HotWaterSystem house = Abbey.plain().build();
        Trace minutes = Simulation.of(house, Duration.ofDays(2)).run().trace();
        Forecaster.Forecast forecast = forecast(house, log(2_881, 60), 0);
        for (int i = 0; i < 2_881; i++) {
            assertEquals(minutes.value(Channel.WATER_TOP, i), forecast.top()[i], 0.05, "reading " + i);
        }
        assertEquals(minutes.value(Channel.GAUGE_READING, 2_880), forecast.gauge()[2_880], 20);
        assertEquals(minutes.regime(2_880), forecast.regimes().apply(2_880));
    }

    /** A warm tank rests first: what counts is the time from on to off. */
    @Test
    void aBurnBeginsWhenTheHeaterComesOn() {
        HotWaterSystem warm = Abbey.plain()
                .start(Start.builder().water(55.3, TemperatureUnit.CELSIUS).build())
                .build();
        RunResult run = run(warm, 5);
        double on = run.first(Event.Kind.HEATER_ON).orElseThrow().time();
        double off = run.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        assertTrue(on > 1_000);
        assertEquals(off - on, forecast(warm, log(300, 60), 0).firstBurn(), 1e-6);
    }

    @Test
    void aBurnThatDoesNotEndHasNoLength() {
        assertTrue(Double.isNaN(forecast(Abbey.plain().build(), log(20, 60), 0).firstBurn()));
    }

    /** A lone reading far above both beside it is a wild value; the highest of a house is one that its neighbours lead up to. */
    @Test
    void theHighestReadingIsNoWildValue() {
        double[] times = new double[10];
        double[] gauge = new double[10];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.fill(gauge, 3e5);
        gauge[3] = 9e5;
        gauge[6] = 4e5;
        gauge[7] = 4.01e5;
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(1_000).build();
        List<Misfit.Stray> strays = new Forecaster(log, Set.of(), new Balances.Count())
                .strays(Abbey.plain().build(), 600, Forecaster.Instruments.PERFECT);
        assertEquals(
                List.of(false, false, true),
                strays.stream().map(Misfit.Stray::highest).toList());
    }

    /**
     * Regression: only the highest reading could show that a cause is wrong. One of a list by hand that is two bar too low is as bad; in a
     * logger's, which goes on as though nothing had been, it is a slip; and no gauge is so good that a tenth of a bar shows anything.
     */
    @ParameterizedTest
    @CsvSource({"20, 12, -2e5, true", "40, 24, -2e5, false", "20, 12, -0.1e5, false", "20, 19, 2e5, true"})
    void aReadingThatIsFarOffIsNotExplained(int count, int at, double by, boolean far) {
        HotWaterSystem house = Abbey.plain().build();
        double[] times = new double[count];
        double[] gauge = new double[count];
        Arrays.setAll(times, i -> 14_400.0 / count * i);
        Trace trace = run(house, 4).trace();
        Arrays.setAll(gauge, i -> trace.value(Channel.GAUGE_READING, (int) Math.rint(times[i] / 15)));
        gauge[at] += by;
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(1_000).build();
        List<Misfit.Stray> strays =
                new Forecaster(log, Set.of(), new Balances.Count()).strays(house, 0, Forecaster.Instruments.PERFECT);
        assertEquals(List.of(far), strays.stream().map(Misfit.Stray::far).toList());
        assertEquals(by, strays.get(0).above(), 1_500);
        assertEquals(gauge[at], strays.get(0).read());
    }

    /** Regression: a clock that was off by a minute and a half while the pressure rose accused a sound house. */
    @ParameterizedTest
    @CsvSource({"90, 0", "240, 1"})
    void aTimeReadOffAClockMayBeAMinuteOff(int late, int missed) {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        Trace trace = run(house, 1).trace();
        int rising = IntStream.range(0, trace.count())
                .filter(i -> trace.value(Channel.GAUGE_READING, i) > trace.value(Channel.GAUGE_READING, 0) + 1e5)
                .findFirst()
                .orElseThrow();
        double[] times = {0, 15.0 * rising, 15.0 * rising + 600, 15.0 * rising + 1_200};
        double[] gauge = new double[times.length];
        Arrays.setAll(gauge, i -> trace.value(Channel.GAUGE_READING, (int) Math.min(times[i] / 15, trace.count() - 1)));
        gauge[1] = trace.value(Channel.GAUGE_READING, rising - late / 15);
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(1_000).build();
        List<Misfit.Stray> strays =
                new Forecaster(log, Set.of(), new Balances.Count()).strays(house, 0, Forecaster.Instruments.PERFECT);
        assertEquals(missed, strays.size());
    }

    /** Between two readings ten minutes apart a valve opens and closes: what is drawn shows it, and ends with the log. */
    @Test
    void theCourseShowsWhatHappensBetweenReadings() {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        HypothesisFit.Course course = new Forecaster(log(13, 600), Set.of(), new Balances.Count())
                .course(house, -60, Forecaster.Instruments.PERFECT);
        double opens =
                house.reliefValves().get(0).setPressure().gauge(house.site().atmosphere())
                        - house.head(house.gaugeHeight());
        double highest = course.gauge().stream().mapToDouble(p -> p).max().orElseThrow();
        assertEquals(opens, highest, 0.1e5, "the valve stands about a metre above the gauge at most");
        double read =
                Arrays.stream(forecast(house, log(13, 600), -60).gauge()).max().orElseThrow();
        assertTrue(highest > read + 0.2e5, "no reading was taken at the peak");
        assertEquals(0, course.times().get(0));
        assertEquals(7_200, course.times().get(course.times().size() - 1));
    }

    /**
     * Regression: a valve stuck open a little, which does not open further, took the first place with a peak a third above its set
     * pressure between two readings of a person who stood by. Nobody stands by for an hour, and what was read is not unseen.
     */
    @Test
    void aPeakBeyondThePlatesBetweenTwoReadingsIsUnseen() {
        HotWaterSystem sound = Abbey.plain().withoutVessel().build();
        HotWaterSystem stuck = sound.toBuilder()
                .withoutReliefValves()
                .addReliefValve(sound.reliefValves().get(0).toBuilder()
                        .fault(ReliefFault.stuckOpen(1e-4, RatioUnit.ONE))
                        .build())
                .build();
        PressureLog log = log(4, 1_800);
        double highest = new Forecaster(log, Set.of(), new Balances.Count())
                .course(stuck, 0, Forecaster.Instruments.PERFECT).gauge().stream()
                        .mapToDouble(p -> p)
                        .max()
                        .orElseThrow();
        double limit = Overpressure.hazardFrom(stuck).orElseThrow();
        assertTrue(highest > limit + 1e5, highest + " Pa");
        assertEquals(highest - limit, unseen(stuck, log), 1, "Pa; as in the course drawn");
        assertEquals(0, unseen(sound, log));
        assertEquals(0, unseen(stuck, log(3, 2_700)));
        double[] read = new double[4];
        Arrays.fill(read, limit + 1);
        assertEquals(
                0,
                unseen(
                        stuck,
                        PressureLog.builder(new double[] {0, 1_800, 3_600, 5_400}, read)
                                .build()));
    }

    private static double unseen(HotWaterSystem house, PressureLog log) {
        return new Forecaster(log, Set.of(), new Balances.Count()).unseen(house, 0, Forecaster.Instruments.PERFECT);
    }

    /**
     * Regression: a valve that opened three minutes later than forecast left its peak unexplained, and a log of a thousand good readings
     * with it. A peak an hour from the forecast one is not explained.
     */
    @Test
    void aPeakIsExplainedByItsHeightMinutesAway() {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        Trace trace = run(house, 2).trace();
        assertEquals(List.of(), highest(house, trace, 3));
        assertEquals(List.of(true), highest(house, trace, 60));
    }

    /** Regression: in a day's forecast, half a minute between samples hid how high a stiff house rises before its valve opens. */
    @Test
    void aPeakBetweenTwoSamplesIsForecastToo() {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        RunResult run = run(house, 24);
        double opens = run.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        double[] times = new double[1_440];
        double[] gauge = new double[times.length];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.setAll(gauge, i -> run.trace().value(Channel.GAUGE_READING, 4 * i));
        gauge[(int) Math.rint(opens / 60) + 3] = 6.99e5;
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(100).build();
        assertTrue(new Forecaster(log, Set.of(), new Balances.Count())
                .strays(house, 0, Forecaster.Instruments.PERFECT).stream().noneMatch(Misfit.Stray::highest));
    }

    private static List<Boolean> highest(HotWaterSystem house, Trace trace, int minutesLate) {
        double[] times = new double[100];
        double[] gauge = new double[100];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.setAll(gauge, i -> trace.value(Channel.GAUGE_READING, 4 * Math.max(0, i - minutesLate)));
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(1_000).build();
        List<Misfit.Stray> strays =
                new Forecaster(log, Set.of(), new Balances.Count()).strays(house, 0, Forecaster.Instruments.PERFECT);
        assertFalse(strays.isEmpty());
        return strays.stream().map(Misfit.Stray::highest).filter(is -> is).toList();
    }
}
