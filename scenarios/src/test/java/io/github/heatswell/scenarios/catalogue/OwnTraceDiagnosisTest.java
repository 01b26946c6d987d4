package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.PressureUnit;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: a trace of the library itself without noise, logged with temperature and burner or without, is explained by the
 * house it came from, however far apart its readings are and wherever in the tank the thermometer sits. Every combination is
 * looked at with {@code -Dlong.look=true} in {@code test.jvm.options}, which takes about an hour; {@code -Dlong.look.houses=REGEX}
 * picks some of the houses.
 */
@Order(1)
class OwnTraceDiagnosisTest {

    private static final int HOURS = 12;
    private static final double SURE = 0.8;

    /** What is logged beside the pressure. */
    private enum Columns {
        PRESSURE(null, false),
        TOP(Channel.WATER_TOP, false),
        BURNER(null, true),
        TOP_AND_BURNER(Channel.WATER_TOP, true),
        MEAN_AND_BURNER(Channel.WATER_MEAN, true),
        BOTTOM_AND_BURNER(Channel.WATER_BOTTOM, true);

        private final Channel thermometer;
        private final boolean burner;

        Columns(Channel thermometer, boolean burner) {
            this.thermometer = thermometer;
            this.burner = burner;
        }
    }

    /**
     * The idle minutes are put before the run, so that the heater comes on at no reading and at no middle of two; below 0, so many
     * minutes of the run are cut off.
     */
    private static PressureLog log(HotWaterSystem house, int hours, int minutes, Columns columns, int idle) {
        Trace trace = Simulation.of(house, Duration.ofHours(hours))
                .sampledEvery(Duration.ofMinutes(1))
                .run()
                .trace();
        // a run that a hazard ends is shorter
        int count = (Math.min(hours * 60, trace.count()) + idle) / minutes;
        assumeTrue(count > 2, "fewer readings than a log needs");
        double[] times = new double[count];
        double[] gauge = new double[count];
        double[] kelvin = new double[count];
        boolean[] on = new boolean[count];
        for (int i = 0; i < count; i++) {
            times[i] = 60.0 * minutes * i;
            int at = Math.max(0, i * minutes - idle);
            gauge[i] = trace.value(Channel.GAUGE_READING, at);
            kelvin[i] = columns.thermometer == null ? Double.NaN : trace.value(columns.thermometer, at);
            on[i] = i * minutes >= idle && trace.value(Channel.HEATER_POWER, at) > 0;
        }
        PressureLog.Builder log = PressureLog.builder(times, gauge);
        if (columns.thermometer != null) {
            log.temperature(kelvin);
        }
        return (columns.burner ? log.burner(on) : log).build();
    }

    /** The same pressures as a gauge shows them that is read, or logged, to a digit. */
    private static PressureLog rounded(PressureLog log, PressureUnit unit, double digit) {
        double[] times = new double[log.count()];
        double[] gauge = new double[log.count()];
        for (int i = 0; i < times.length; i++) {
            times[i] = log.time(i);
            gauge[i] = unit.toSi(digit * Math.rint(unit.fromSi(log.gauge(i)) / digit));
        }
        return PressureLog.builder(times, gauge).build();
    }

    /**
     * Regression: an hour on one digit counted as many readings that agreed, and a valve that works as described was accused of
     * opening low, at 99.9 % in two hours read every three minutes. In the last an isolated vessel, which shows nothing else than one
     * without charge, came first. The long look has more of them, and a house for which the search once ended early.
     */
    @ParameterizedTest
    @CsvSource({"orchard-lodge, 2, 3, PSI, 1", "orchard-lodge-lost-charge, 2, 10, PSI, 1"})
    void aDigitShownForAnHourAccusesNothing(String house, int hours, int minutes, PressureUnit unit, double digit) {
        HotWaterSystem described = Catalogue.read(house).system();
        PressureLog log = rounded(log(described, hours, minutes, Columns.PRESSURE, 0), unit, digit);
        DiagnosisResult found = Diagnosis.builder(described).log(log).build().run();
        assertEquals(Cause.AS_DESCRIBED, found.best().cause(), found.fits()::toString);
        assertFalse(found.misfit(), found.best()::toString);
        assertEquals(List.of(), found.hazards());
    }

    /**
     * Regression: a house whose pump follows the clock, and whose warm tank rested for hours before the heater came on, was forecast from
     * another start than the log's, so that differences below the digit accused the seat of the relief valve. A house with a
     * hot branch is as described too.
     */
    @ParameterizedTest
    @CsvSource({"orchard-lodge-circulation, 24, 10, BAR, 0.1", "orchard-lodge-leak-test, 3, 10, BAR, 0.1"})
    void loopsAndBranchesAreAsDescribed(String house, int hours, int minutes, PressureUnit unit, double digit) {
        HotWaterSystem described = Catalogue.read(house).system();
        Diagnosis.Builder diagnosis = Diagnosis.builder(described)
                .log(rounded(log(described, hours, minutes, Columns.PRESSURE, 0), unit, digit));
        EnumSet.complementOf(EnumSet.of(Cause.AS_DESCRIBED, Cause.RELIEF_SEAT_WEEPS))
                .forEach(diagnosis::without);
        DiagnosisResult found = diagnosis.build().run();
        assertEquals(Cause.AS_DESCRIBED, found.best().cause(), found.fits()::toString);
        assertFalse(found.misfit(), found.best()::toString);
    }

    /**
     * Regression: only scatter and steps counted as uncertain, so that the opening pressure took up what a gauge was off, and a sound
     * valve was accused, even of a hazard: of opening high by a gauge 2 % high, of opening low or of a leaking seat by others. In a log
     * every four minutes the search for the house as described ended at another start of the heat-up, because that was sought
     * with a gauge without error.
     */
    @ParameterizedTest
    @CsvSource({"0, 1.02, 4, 0.05", "-0.1, 1, 2, 0.1"})
    void aGaugeThatIsALittleOffAccusesNoValve(double zero, double scale, int minutes, double digit) {
        HotWaterSystem described = Catalogue.read("orchard-lodge").system();
        PressureLog right = log(described, 4, minutes, Columns.PRESSURE, 0);
        double[] times = new double[right.count()];
        double[] gauge = new double[right.count()];
        for (int i = 0; i < times.length; i++) {
            times[i] = right.time(i);
            gauge[i] = zero * 1e5 + scale * right.gauge(i);
        }
        PressureLog off = rounded(PressureLog.builder(times, gauge).build(), PressureUnit.BAR, digit);
        Diagnosis.Builder diagnosis = Diagnosis.builder(described).log(off);
        EnumSet.complementOf(EnumSet.of(
                        Cause.AS_DESCRIBED, Cause.RELIEF_OPENS_LOW, Cause.RELIEF_OPENS_HIGH, Cause.RELIEF_SEAT_WEEPS))
                .forEach(diagnosis::without);
        DiagnosisResult found = diagnosis.build().run();
        assertEquals(Cause.AS_DESCRIBED, found.best().cause(), found.fits()::toString);
        assertTrue(found.isDecided(), found.alike()::toString);
    }

    private static void isExplained(String house, int hours, int minutes, Columns columns, int idle) {
        HotWaterSystem described = Catalogue.read(house).system();
        DiagnosisResult found = Diagnosis.builder(described)
                .log(log(described, hours, minutes, columns, idle))
                .build()
                .run();
        assertEquals(Cause.AS_DESCRIBED, found.best().cause(), found.fits()::toString);
        assertFalse(found.misfit(), found.best()::toString);
        assertHolds(found.best(), Parameter.HEATING_RATE, 1);
    }

    @ParameterizedTest
    @CsvSource({
        "orchard-lodge, 12, 10, TOP, 0",
        "orchard-lodge, 12, 10, TOP_AND_BURNER, 33",
        "mill-cottage, 12, 15, BURNER, 0",
    })
    void theHouseAsDescribedExplainsItsOwnTrace(String house, int hours, int minutes, Columns columns, int idle) {
        isExplained(house, hours, minutes, columns, idle);
    }

    /**
     * A log that begins a while after the heater came on: what the thermometer shows first is not what the house began with, and
     * the heat-up began before the log.
     */
    @ParameterizedTest
    @CsvSource({"1, 3, TOP"})
    void aLogThatBeginsDuringTheHeatUpIsExplainedToo(int late, int minutes, Columns columns) {
        HotWaterSystem described = Catalogue.read("orchard-lodge").system();
        DiagnosisResult found = Diagnosis.builder(described)
                .log(log(described, 4, minutes, columns, -late))
                .build()
                .run();
        HypothesisFit best = found.best();
        assertEquals(Cause.AS_DESCRIBED, best.cause(), found.fits()::toString);
        assertFalse(found.misfit(), best::toString);
        assertHolds(best, Parameter.HEATING_RATE, 1);
        assertHolds(best, Parameter.START_OF_HEATING, -60.0 * late);
        assertHolds(best, Parameter.START_TEMPERATURE, 282.15);
    }

    private static void assertHolds(HypothesisFit fit, Parameter parameter, double truth) {
        assertTrue(fit.estimate(parameter).orElseThrow().contains(truth), fit.estimates()::toString);
    }

    /** Minutes at which a person may read a gauge, often at first; the valve of the house opens just after the third. */
    private static final List<Integer> BY_HAND = List.of(0, 5, 10, 15, 30, 50, 55, 70, 90, 115);

    /** A few readings of a fast heat-up, rounded as gauges are read, at an instant that no sample of the search need meet. */
    private static void areExplained(PressureUnit unit, double digit, IntUnaryOperator minute, int count) {
        HotWaterSystem house = Catalogue.read("orchard-lodge").system();
        Trace trace = Simulation.of(house, Duration.ofHours(5))
                .sampledEvery(Duration.ofMinutes(1))
                .run()
                .trace();
        double[] times = new double[count];
        double[] gauge = new double[count];
        for (int i = 0; i < count; i++) {
            int at = minute.applyAsInt(i);
            times[i] = 60.0 * at;
            double shown = unit.fromSi(trace.value(Channel.GAUGE_READING, at));
            gauge[i] = unit.toSi(digit * Math.rint(shown / digit));
        }
        DiagnosisResult found = Diagnosis.builder(house)
                .log(PressureLog.builder(times, gauge).build())
                .build()
                .run();
        assertFalse(found.misfit(), () -> Arrays.toString(gauge) + found.best());
        assertEquals(List.of(), found.best().misfit().orElseThrow().strays());
        assertTrue(found.alike().stream().anyMatch(fit -> fit.cause() == Cause.AS_DESCRIBED), found.fits()::toString);
    }

    /** Regression: ten readings of a sound house, its peak seen once, rounded to what a gauge shows. */
    @ParameterizedTest
    @CsvSource("PSI, 1")
    void readingsByHandOfASoundHouseAreExplained(PressureUnit unit, double digit) {
        areExplained(unit, digit, BY_HAND::get, BY_HAND.size());
    }

    /** The long look. */
    @ParameterizedTest
    @EnabledIfSystemProperty(named = "long.look", matches = "true")
    @CsvSource({"PSI, 1", "BAR, 0.1"})
    void soAreThoseAtAnySpacing(PressureUnit unit, double digit) {
        areExplained(unit, digit, BY_HAND::get, BY_HAND.size());
        for (int spacing : new int[] {3, 5, 8, 10, 12, 20}) {
            for (int late : new int[] {0, 1, 3}) {
                areExplained(unit, digit, i -> i == 0 ? 0 : spacing * i + late, 10);
            }
        }
    }

    /** The long look: one test for each house, spacing and choice of columns. */
    static Stream<Arguments> everyLog() {
        return Stream.of(
                        "birch-street-day",
                        "orchard-lodge",
                        "mill-cottage",
                        "weir-house-day",
                        "tannery-yard",
                        "ridge-house",
                        "quarry-row",
                        "mill-cottage-worn-seat",
                        "beacon-tower",
                        "orchard-lodge-vessel")
                .filter(Pattern.compile(System.getProperty("long.look.houses", ".*"))
                        .asMatchPredicate())
                .flatMap(house -> IntStream.of(1, 2, 4, 5, 10, 15)
                        .boxed()
                        .flatMap(minutes -> Stream.of(Columns.values())
                                .map(columns -> Arguments.of(house, HOURS, minutes, columns, 0))));
    }

    @ParameterizedTest
    @EnabledIfSystemProperty(named = "long.look", matches = "true")
    @MethodSource("everyLog")
    void soDoesEveryHouse(String house, int hours, int minutes, Columns columns, int idle) {
        isExplained(house, hours, minutes, columns, idle);
    }

    /** The long look: logs for which the search once ended early, or a digit once decided. */
    @ParameterizedTest
    @EnabledIfSystemProperty(named = "long.look", matches = "true")
    @CsvSource({
        "orchard-lodge, 2, 2, PSI, 1",
        "orchard-lodge, 6, 10, PSI, 1",
        "orchard-lodge, 12, 3, BAR, 0.1",
        "tannery-yard, 6, 1, BAR, 0.1"
    })
    void moreDigitsAccuseNothing(String house, int hours, int minutes, PressureUnit unit, double digit) {
        aDigitShownForAnHourAccusesNothing(house, hours, minutes, unit, digit);
    }

    /** The long look: every bundled house as a household gauge shows it. */
    static Stream<Arguments> everyRoundedLog() {
        return Catalogue.names().stream()
                .filter(Pattern.compile(System.getProperty("long.look.houses", ".*"))
                        .asMatchPredicate())
                .flatMap(house -> IntStream.of(1, 2, 3, 5, 10)
                        .boxed()
                        .flatMap(minutes -> Stream.of(
                                Arguments.of(house, HOURS / 2, minutes, PressureUnit.PSI, 1.0),
                                Arguments.of(house, HOURS / 2, minutes, PressureUnit.BAR, 0.1))));
    }

    @ParameterizedTest
    @EnabledIfSystemProperty(named = "long.look", matches = "true")
    @MethodSource("everyRoundedLog")
    void noHouseIsAccusedByADigit(String house, int hours, int minutes, PressureUnit unit, double digit) {
        aDigitShownForAnHourAccusesNothing(house, hours, minutes, unit, digit);
    }

    /** A seat that leaks, in a house described as sound: found, or left open, but nothing else is blamed. */
    @ParameterizedTest
    @CsvSource({"10, PRESSURE", "15, TOP_AND_BURNER"})
    void aLeakingSeatIsNotTakenForAnotherCause(int minutes, Columns columns) {
        HotWaterSystem real = Catalogue.read("mill-cottage-worn-seat").system();
        HotWaterSystem described = real.toBuilder()
                .changeReliefValves(
                        valve -> valve.toBuilder().fault(ReliefFault.none()).build())
                .build();
        DiagnosisResult found = Diagnosis.builder(described)
                .log(log(real, HOURS, minutes, columns, 0))
                .build()
                .run();
        assertTrue(
                found.best().cause() == Cause.RELIEF_SEAT_WEEPS || found.best().weight() < SURE,
                found.fits()::toString);
        assertTrue(
                found.alike().stream().anyMatch(fit -> fit.cause() == Cause.RELIEF_SEAT_WEEPS), found.fits()::toString);
    }
}
