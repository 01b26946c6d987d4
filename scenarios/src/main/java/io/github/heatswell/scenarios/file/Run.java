package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * When a run begins, how long it is and how finely it is sampled.
 *
 * @param duration the length of the run
 * @param sample the distance of the samples
 * @param begins the clock time at the start (s since midnight)
 * @param day the day of the year at the start, 1 to 366
 * @param tolerance how closely it is integrated: the relative tolerance of a step (-)
 */
record Run(Duration duration, Duration sample, double begins, int day, double tolerance) {

    /** The tolerance (-) of a run that says nothing about it. */
    static final double TOLERANCE = 1e-8;

    /** As the simulation allows (s); a run has two samples at least, so that it is no shorter either. */
    private static final double MIN_SAMPLE = 1;

    /** As the simulation allows: a hundred years of 365.25 days (s). */
    private static final double MAX_DURATION = 36_525 * 86_400.0;

    private static final Limits DURATION = Limits.between("duration", MIN_SAMPLE, MAX_DURATION);
    private static final Limits SAMPLE = Limits.between("sample", MIN_SAMPLE, MAX_DURATION);

    /** As the simulation allows. */
    private static final double MAX_SAMPLES = 20_000_000;

    /** The same run, sampled differently. */
    Run sampledEvery(Duration other) {
        return new Run(duration, other, begins, day, tolerance);
    }

    /** A start when the run begins. */
    Start beginning(Start start) {
        return start.toBuilder()
                .timeOfDay(begins, DurationUnit.SECOND)
                .dayOfYear(day)
                .build();
    }

    /** What is wrong with sampling a run so. */
    static Optional<String> conflict(Duration duration, Duration sample) {
        double length = duration.toNanos() * 1e-9;
        double step = sample.toNanos() * 1e-9;
        if (step < MIN_SAMPLE) {
            return Optional.of(time(step) + " is shorter than the shortest interval, 1 s");
        }
        if (step > length) {
            return Optional.of(time(step) + " is longer than the run of " + time(length));
        }
        return length / step > MAX_SAMPLES
                ? Optional.of(time(step) + " gives more than 20 million samples; take a longer interval")
                : Optional.empty();
    }

    private static String time(double seconds) {
        return QuantityFormat.ascii(UnitSystem.SI).time(seconds);
    }

    /** Takes a run key by key, as a file has them. */
    static final class Builder {
        private double duration;
        private double sample;
        private double begins;
        private int day = 1;
        private double tolerance = TOLERANCE;

        void begins(double secondsSinceMidnight) {
            begins = secondsSinceMidnight;
        }

        void day(int ofYear) {
            day = ofYear;
        }

        void tolerance(double relative) {
            tolerance = relative;
        }

        void duration(double value, DurationUnit unit) {
            double seconds = unit.toSi(value);
            if (!DURATION.contains(seconds) || seconds > MAX_DURATION) {
                throw new IllegalArgumentException(
                        DURATION.outside(value, unit) + " is outside the allowed range, 1 s to 36525 d");
            }
            duration = Math.max(MIN_SAMPLE, seconds);
        }

        void sample(double value, DurationUnit unit) {
            double seconds = unit.toSi(value);
            if (!SAMPLE.contains(seconds)) {
                throw new IllegalArgumentException(
                        SAMPLE.outside(value, unit) + " is outside the allowed range, 1 s to the duration of the run");
            }
            sample = Math.max(MIN_SAMPLE, seconds);
        }

        /**
         * Ends the run.
         *
         * @throws InvalidDescriptionException if duration and sample do not go together
         */
        Run build() {
            Run run = new Run(exact(duration), exact(sample), begins, day, tolerance);
            conflict(run.duration(), run.sample()).ifPresent(message -> {
                throw new InvalidDescriptionException(
                        List.of(new InvalidDescriptionException.Problem("sample", message)));
            });
            return run;
        }

        private static Duration exact(double seconds) {
            return Duration.ofNanos(Math.round(seconds * 1e9));
        }
    }
}
