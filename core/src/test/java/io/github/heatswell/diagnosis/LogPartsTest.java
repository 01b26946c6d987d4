package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Trace;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taken from a log: not too much of it, when the heater was on, and what its parts say. */
class LogPartsTest {

    private static PressureLog.Builder log(int count, double interval) {
        double[] times = new double[count];
        double[] gauge = new double[count];
        Arrays.setAll(times, i -> interval * i);
        Arrays.setAll(gauge, i -> 3e5 + i);
        return PressureLog.builder(times, gauge).uncertainty(700);
    }

    @ParameterizedTest
    @CsvSource({
        "2881, 60, 2881, 60", // two days to the minute
        "3000, 10, 3000, 10",
        "3001, 10, 1501, 20",
        "17000, 10, 2834, 60",
        "2882, 60, 2881, 60",
        "17290, 10, 2881, 60",
        "10, 50000, 4, 50000",
        "5, 80000, 3, 80000",
        "5, 100000, 5, 100000" // two readings would be too few
    })
    void aLongLogIsThinned(int count, double interval, int left, double apart) {
        PressureLog thinned = log(count, interval).build().thinned();
        assertEquals(left, thinned.count());
        assertEquals(apart, thinned.time(1));
        assertEquals((left - 1) * apart, thinned.end());
        assertEquals(700, thinned.uncertainty());
        assertFalse(thinned.hasTemperature());
        assertFalse(thinned.hasBurner());
        assertTrue(thinned.timeOfDay().isEmpty());
    }

    @Test
    void aLogThatIsShortEnoughStaysTheSame() {
        PressureLog log = log(100, 60).build();
        assertSame(log, log.thinned());
    }

    @Test
    void thinningKeepsWhatBelongsToAReading() {
        int count = 6_100;
        double[] temperature = new double[count];
        boolean[] burner = new boolean[count];
        Arrays.setAll(temperature, i -> i == 3 ? Double.NaN : 280 + 0.01 * i);
        Arrays.fill(burner, 30, 60, true);
        PressureLog thinned = log(count, 10)
                .temperature(temperature)
                .burner(burner)
                .timeOfDay(7_200)
                .build()
                .thinned();
        assertEquals(2_034, thinned.count(), "every third");
        assertEquals(3e5 + 33, thinned.gauge(11));
        assertEquals(330, thinned.time(11));
        assertEquals(280.33, thinned.temperature(11).orElseThrow(), 1e-12);
        assertTrue(thinned.temperature(1).isEmpty());
        assertFalse(thinned.burnerOn(9));
        assertTrue(thinned.burnerOn(10));
        assertTrue(thinned.burnerOn(19));
        assertFalse(thinned.burnerOn(20));
        assertEquals(7_200, thinned.timeOfDay().orElseThrow());
    }

    private static BurnerColumn burner(boolean... on) {
        return new BurnerColumn(log(on.length, 60).burner(on).build());
    }

    @Test
    void theHeaterCameOnBetweenTwoReadings() {
        assertEquals(60, burner(false, false, true, true, false).lastSeenOff());
        assertEquals(120, burner(false, false, true, true, false).firstSeenOn());
        assertEquals(120, burner(false, false, true, true, false, true).firstBurn());
        assertEquals(0, burner(true, true, false).firstSeenOn());
        assertEquals(0, burner(true, true, false).lastSeenOff());
    }

    @Test
    void aBurnWithoutBeginningOrEndHasNoLength() {
        assertTrue(Double.isNaN(burner(true, true, false).firstBurn()));
        assertTrue(Double.isNaN(burner(false, true, true).firstBurn()));
        assertTrue(Double.isNaN(burner(false, false, false).firstBurn()));
        assertTrue(Double.isNaN(burner(false, false, false).firstSeenOn()));
        BurnerColumn without = new BurnerColumn(log(4, 60).build());
        assertTrue(Double.isNaN(without.firstSeenOn()));
        assertTrue(Double.isNaN(without.firstBurn()));
    }

    /** Fed, fed, rising, rising, open, falling, resting, in standard uncertainties of 700 Pa from the log. */
    @Test
    void eachPartSpeaksForItself() {
        double[] times = {0, 60, 120, 180, 240, 300, 360};
        double[] gauge = {3e5, 3e5, 3.05e5, 3.1e5, 3.15e5, 3.1e5, 3.1e5};
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(700).build();
        Trace.Regime[] regimes = {
            Trace.Regime.FED,
            Trace.Regime.FED,
            Trace.Regime.SEALED,
            Trace.Regime.SEALED,
            Trace.Regime.RELIEVING,
            Trace.Regime.SEALED,
            Trace.Regime.SEALED
        };
        Forecaster.Forecast best = new Forecaster.Forecast(
                gauge, new double[7], new double[7], List.of(regimes)::get, Double.NaN, new double[0], Map.of());
        double[] other = {3e5 + 700, 3e5 - 700, 3.05e5 + 1_400, 3.1e5 + 1_400, 3.15e5 + 70_000, 3.1e5 + 2_100, 3.1e5};
        Evidence.Finder finder = new Evidence.Finder(Target.fine(log, SpotReadings.none()), best);

        List<Evidence> evidence = finder.about(
                new Forecaster.Forecast(
                        other,
                        new double[7],
                        new double[7],
                        List.of(regimes)::get,
                        Double.NaN,
                        new double[0],
                        Map.of()),
                List.of());
        assertEquals(
                List.of(Evidence.Part.AT_SUPPLY, Evidence.Part.RISE, Evidence.Part.VALVE_OPEN, Evidence.Part.FALL),
                evidence.stream().map(Evidence::part).toList());
        assertEquals(List.of(2, 2, 1, 2), evidence.stream().map(Evidence::count).toList());
        assertEquals(
                List.of(0.0, 120.0, 240.0, 300.0),
                evidence.stream().map(Evidence::from).toList());
        assertEquals(0, evidence.get(0).meanDifference(), 1e-9);
        assertEquals(1_400, evidence.get(1).meanDifference(), 1e-9);
        assertEquals(70_000, evidence.get(2).meanDifference(), 1e-9);
        assertEquals(1_050, evidence.get(3).meanDifference(), 1e-9);
        assertEquals(2, evidence.get(0).excess(), 1e-9);
        assertEquals(8, evidence.get(1).excess(), 1e-9);
        assertEquals(2.5 * (2 * 100 - 2.5), evidence.get(2).excess(), 1e-6);
        assertEquals(2.5 * (2 * 3 - 2.5), evidence.get(3).excess(), 1e-9);
        assertEquals(
                List.of(false, true, true, true),
                evidence.stream().map(Evidence::against).toList());
        finder.about(best, List.of()).forEach(one -> assertEquals(0, one.excess(), one.toString()));
    }

    /** Regression: where a valve is open in the best run, another whose run is shut in was said to miss "the time in which a valve is open". */
    @Test
    void aPartIsThatOfTheRunItself() {
        double[] times = {0, 60, 120, 180};
        double[] gauge = {3e5, 3.1e5, 3.2e5, 3.1e5};
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(700).build();
        Trace.Regime[] open = new Trace.Regime[4];
        Arrays.fill(open, Trace.Regime.RELIEVING);
        Trace.Regime[] shut = {Trace.Regime.FILLING, Trace.Regime.SEALED, Trace.Regime.RELIEVING, Trace.Regime.SEALED};
        Forecaster.Forecast best = new Forecaster.Forecast(
                gauge, new double[4], new double[4], List.of(open)::get, Double.NaN, new double[0], Map.of());
        Forecaster.Forecast other = new Forecaster.Forecast(
                gauge, new double[4], new double[4], List.of(shut)::get, Double.NaN, new double[0], Map.of());
        Evidence.Finder finder = new Evidence.Finder(Target.fine(log, SpotReadings.none()), best);
        assertEquals(
                List.of(Evidence.Part.VALVE_OPEN),
                finder.about(best, List.of()).stream().map(Evidence::part).toList());
        assertEquals(
                List.of(Evidence.Part.AT_SUPPLY, Evidence.Part.RISE, Evidence.Part.VALVE_OPEN, Evidence.Part.FALL),
                finder.about(other, List.of()).stream().map(Evidence::part).toList());
    }

    /** What the best itself leaves is no evidence against another. */
    @Test
    void aPartSpeaksAgainstTheBestByComparison() {
        PressureLog log = log(3, 60).build();
        Trace.Regime[] fed = {Trace.Regime.FED, Trace.Regime.FED, Trace.Regime.FED};
        double[] off = {3e5 + 1_400, 3e5 + 1, 3e5 + 2};
        double[] further = {3e5 + 1_400, 3e5 + 1 + 700, 3e5 + 2};
        Forecaster.Forecast best = new Forecaster.Forecast(
                off, new double[3], new double[3], List.of(fed)::get, Double.NaN, new double[0], Map.of());
        Forecaster.Forecast other = new Forecaster.Forecast(
                further, new double[3], new double[3], List.of(fed)::get, Double.NaN, new double[0], Map.of());
        Evidence.Finder finder = new Evidence.Finder(Target.fine(log, SpotReadings.none()), best);
        assertEquals(1, finder.about(other, List.of()).get(0).excess(), 1e-9);
        assertFalse(finder.about(best, List.of()).get(0).against());
        Misfit.Stray stray = new Misfit.Stray(60, 4e5, 3e5, false, false);
        assertTrue(
                finder.about(best, List.of(stray)).get(0).against(), "what the best misses speaks against it as well");
        double[] wide = {3e5 + 7_000, 3e5 + 7_000, 3e5 + 7_000};
        Forecaster.Forecast missing = new Forecaster.Forecast(
                wide, new double[3], new double[3], List.of(fed)::get, Double.NaN, new double[0], Map.of());
        assertTrue(new Evidence.Finder(Target.fine(log, SpotReadings.none()), missing)
                .about(missing, List.of())
                .get(0)
                .against());
    }

    @Test
    void aPartThatIsNotThereSaysNothing() {
        PressureLog log = log(3, 60).build();
        Trace.Regime[] sealed = {Trace.Regime.SEALED, Trace.Regime.SEALED, Trace.Regime.SEALED};
        Forecaster.Forecast best = new Forecaster.Forecast(
                new double[] {3e5, 3.1e5, 3.2e5},
                new double[3],
                new double[3],
                List.of(sealed)::get,
                Double.NaN,
                new double[0],
                Map.of());
        List<Evidence> evidence =
                new Evidence.Finder(Target.fine(log, SpotReadings.none()), best).about(best, List.of());
        assertEquals(
                List.of(Evidence.Part.RISE),
                evidence.stream().map(Evidence::part).toList());
        assertFalse(
                new Evidence(Evidence.Part.RISE, Optional.empty(), 0, 1, 0, 6, false).against(), "six is the limit");
    }

    @Test
    void partsSayWhatTheyAre() {
        assertEquals(
                Evidence.Part.values().length,
                Arrays.stream(Evidence.Part.values())
                        .map(Evidence.Part::words)
                        .filter(w -> w.length() > 10)
                        .distinct()
                        .count());
    }
}
