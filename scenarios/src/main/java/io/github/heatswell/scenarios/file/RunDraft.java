package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.quantity.DayOfYear;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.Limits;
import java.time.Duration;
import java.util.Optional;

/** How long to simulate and how finely to sample, while being read. */
final class RunDraft {

    /** As the simulation allows (s); a run has two samples at least, so that it is no shorter either. */
    private static final double SHORTEST_SAMPLE = 1;
    /** As the simulation allows: a hundred years of 365.25 days (s). */
    private static final double LONGEST = 36_525 * 86_400.0;

    private static final Limits DURATION = Limits.between("duration", SHORTEST_SAMPLE, LONGEST);
    private static final Limits SAMPLE = Limits.between("sample", SHORTEST_SAMPLE, LONGEST);
    /** As the simulation allows. */
    private static final double MAX_SAMPLES = 20_000_000;

    private double duration;
    private double sample;
    private double begins;
    private int day = 1;

    void begins(String clock) {
        begins = ClockTime.read(clock);
    }

    void day(String text) {
        day = DayOfYear.read(text);
    }

    void duration(double value, DurationUnit unit) {
        double seconds = unit.toSi(value);
        if (!DURATION.contains(seconds) || seconds > LONGEST) {
            throw new IllegalArgumentException(
                    DURATION.outside(value, unit) + " is outside the allowed range, 1 s to 36525 d");
        }
        duration = Math.max(SHORTEST_SAMPLE, seconds);
    }

    void sample(double value, DurationUnit unit) {
        double seconds = unit.toSi(value);
        if (!SAMPLE.contains(seconds)) {
            throw new IllegalArgumentException(
                    SAMPLE.outside(value, unit) + " is outside the allowed range, 1 s to the duration of the run");
        }
        sample = Math.max(SHORTEST_SAMPLE, seconds);
    }

    Run end() {
        return new Run(exact(duration), exact(sample), begins, day);
    }

    /** What is wrong with duration and sample together. */
    Optional<String> conflict() {
        return conflict(exact(duration), exact(sample));
    }

    /** What is wrong with sampling a run so. */
    static Optional<String> conflict(Duration duration, Duration sample) {
        return conflict(duration.toNanos() * 1e-9, sample.toNanos() * 1e-9);
    }

    private static Optional<String> conflict(double duration, double sample) {
        if (sample < SHORTEST_SAMPLE) {
            return Optional.of(quantity(sample, DurationUnit.SECOND) + " is shorter than the shortest interval, 1 s");
        }
        if (sample > duration) {
            return Optional.of(quantity(sample, DurationUnit.SECOND) + " is longer than the run, "
                    + quantity(duration, DurationUnit.SECOND));
        }
        return duration / sample > MAX_SAMPLES
                ? Optional.of(quantity(sample, DurationUnit.SECOND)
                        + " gives more than 20 million samples; take a longer interval")
                : Optional.empty();
    }

    /** A number and its unit, as messages show them. */
    static String quantity(double value, DurationUnit unit) {
        return Decimals.significant(value, 6) + " " + unit.symbol();
    }

    private static Duration exact(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }

    /**
     * When a run begins, how long it is and how finely it is sampled.
     *
     * @param duration the length of the run
     * @param sample the distance of the samples
     * @param begins the clock time at the start (s since midnight)
     * @param day the day of the year at the start, 1 to 366
     */
    record Run(Duration duration, Duration sample, double begins, int day) {

        /** The same run, sampled differently. */
        Run sampledEvery(Duration other) {
            return new Run(duration, other, begins, day);
        }

        /** Tells a system when the run begins. */
        Start.Builder into(Start.Builder start) {
            return start.timeOfDay(begins, DurationUnit.SECOND).dayOfYear(day);
        }
    }
}
