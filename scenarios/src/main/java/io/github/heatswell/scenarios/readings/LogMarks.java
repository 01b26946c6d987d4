package io.github.heatswell.scenarios.readings;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;

/**
 * Detects confused decimal and thousands separators from all numbers of a log. A spreadsheet with another locale may
 * swap them, making every number a thousand times too large or too small.
 */
final class LogMarks {

    /** What a gauge on a house shows at its highest (Pa); beyond, the unit may be wrong. */
    static final double MIN_PEAK = 0.1e5;

    static final double MAX_PEAK = 40e5;

    /** A time whose thousands a comma has cut off, and what was cut off. */
    static final Pattern SPLIT_THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

    /** So many times the step before, at most, a step is when the thousands are put together again. */
    static final double MAX_STEP = 3;

    /** No relief valve on a house lets the pressure (Pa) always be as high; the same for readings on site. */
    private static final double MAX_LOWEST = 50e5;

    /** Nothing that a heater does shows in less (s). */
    private static final double SHORT = 60;
    /** A log's second reading comes sooner than this (s) after its first. */
    private static final double LONG = 2 * 86_400.0;

    private static final QuantityFormat BOTH =
            QuantityFormat.ascii(UnitSystem.SI).inBoth();

    private LogMarks() {}

    /**
     * What was found.
     *
     * @param line where
     * @param message what, and what to write
     */
    record Suspicion(long line, String message) {}

    /** Whether marks in the pressures part thousands, or were lost. */
    static Optional<Suspicion> ofPressure(
            LogNumbers pressures, DoubleUnaryOperator toGauge, double lowest, double highest) {
        if (lowest > MAX_LOWEST) {
            return Optional.of(new Suspicion(
                    pressures.firstLine(),
                    "pressure: no reading is below " + BOTH.pressure(lowest)
                            + ", more than any house has; is the unit right, and are the decimal points"
                            + " still there?"));
        }
        Optional<LogNumbers.Marked> doubtful =
                pressures.doubtful().filter(marked -> Math.abs(toGauge.applyAsDouble(marked.thousands())) <= MAX_PEAK);
        if (doubtful.isPresent() && pressures.uneven().isEmpty() && highest < MIN_PEAK) {
            String text = doubtful.get().text();
            return Optional.of(new Suspicion(
                    doubtful.get().line(),
                    "pressure: no reading reaches " + BOTH.pressure(MIN_PEAK) + "; if the mark in '" + text
                            + "' separates thousands, write " + doubtful.get().unmarked()
                            + ", and if not, write all readings with one decimal"));
        }
        return doubtful.flatMap(marked -> uneven("pressure", pressures, marked));
    }

    /** Whether marks in the times part thousands. */
    static Optional<Suspicion> ofTime(LogNumbers times, Unit unit) {
        return times.doubtful()
                .filter(marked -> unit.toSi(marked.thousands()) <= LONG)
                .flatMap(marked -> uneven("time", times, marked));
    }

    /** What is to be said of a log so short that its marks may part thousands. */
    static Optional<String> shortTime(LogNumbers times, double end) {
        return times.doubtful()
                .filter(marked -> end < SHORT)
                .map(marked -> "the readings span only " + BOTH.time(end) + "; if the mark in the time '"
                        + marked.text() + "' separates thousands, write " + marked.unmarked());
    }

    private static Optional<Suspicion> uneven(String field, LogNumbers numbers, LogNumbers.Marked marked) {
        return numbers.uneven()
                .map(whole -> new Suspicion(
                        marked.line(),
                        field + ": '" + marked.text() + "' has a mark and '" + whole
                                + "' has none; if the mark separates thousands, write " + marked.unmarked()
                                + ", and if not, write all readings with the same number of decimals"));
    }
}
