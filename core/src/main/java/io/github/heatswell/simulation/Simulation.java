package io.github.heatswell.simulation;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Recorder.SampleSink;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CancellationException;

/**
 * A run ready to start: what to simulate, for how long, and the sampling interval. Immutable; {@link #run()} may be
 * called any number of times, from any number of threads, and finds the same each time, to the last digit. The summaries of two
 * such runs are equal; their {@linkplain RunResult results} are not, because each has a trace of its own.
 *
 * <p>A run on an interrupted thread stops at its next event or change of conditions with a {@link CancellationException}. The
 * thread stays marked as interrupted.
 */
public final class Simulation {

    private static final Duration MIN_SAMPLE = Duration.ofSeconds(1);
    private static final Duration MAX_RUN = Duration.ofDays(36_525);
    private static final long MAX_SAMPLES = 20_000_000;
    private static final double HOUR = 3_600;
    private static final double MIN_TOLERANCE = 1e-12;
    private static final double MAX_TOLERANCE = 1e-4;

    private final HotWaterSystem system;
    private final Duration duration;
    private final Duration sample;
    private final double tolerance;
    private final Workers.Progress progress;

    private Simulation(
            HotWaterSystem system, Duration duration, Duration sample, double tolerance, Workers.Progress progress) {
        this.system = system;
        this.duration = duration;
        this.sample = sample;
        this.tolerance = tolerance;
        this.progress = progress;
    }

    /**
     * Prepares a run sampled once a minute.
     *
     * @param system what to simulate
     * @param duration for how long, above 0 to 100 years
     * @return the run
     * @throws IllegalArgumentException if the duration is outside its range
     */
    public static Simulation of(HotWaterSystem system, Duration duration) {
        Objects.requireNonNull(system, "system");
        Objects.requireNonNull(duration, "duration");
        if (duration.isZero() || duration.isNegative() || duration.compareTo(MAX_RUN) > 0) {
            throw new IllegalArgumentException(
                    "duration: " + duration + " is outside the allowed range, above 0 s to 100 years");
        }
        return new Simulation(
                system, duration, Duration.ofMinutes(1), SegmentSolver.RELATIVE_TOLERANCE, (done, total) -> {});
    }

    /** {@return duration, interval of the samples and system in a line} */
    @Override
    public String toString() {
        return "run of " + duration + ", sampled every " + sample + ": " + system;
    }

    /**
     * The same run, sampled differently. Results other than the trace do not depend on it.
     *
     * @param interval the distance of the samples, 1 s to the length of the run
     * @return the run with that interval
     * @throws IllegalArgumentException if the interval is outside its range or gives more than 20 million samples
     */
    public Simulation sampledEvery(Duration interval) {
        Objects.requireNonNull(interval, "sample");
        if (interval.compareTo(MIN_SAMPLE) < 0 || interval.compareTo(duration) > 0) {
            throw new IllegalArgumentException("sample: " + interval
                    + " is outside the allowed range, 1 s to the duration of the run, " + duration);
        }
        Simulation sampled = new Simulation(system, duration, interval, tolerance, progress);
        if (sampled.hasTooManySamples()) {
            throw new IllegalArgumentException(sampled.tooManySamples());
        }
        return sampled;
    }

    /**
     * The same run, integrated more or less closely, to study how results converge.
     *
     * @param relative the relative tolerance of a step (-), 1e-12 to 1e-4; 1e-8 if not set. Audits and published comparisons
     *     hold for 1e-8; below 1e-10 rounding decides
     * @return the run with that tolerance
     * @throws IllegalArgumentException if the tolerance is outside its range
     */
    public Simulation withTolerance(double relative) {
        if (!(relative >= MIN_TOLERANCE && relative <= MAX_TOLERANCE)) {
            throw new IllegalArgumentException(
                    "tolerance: " + relative + " is outside the allowed range, 1e-12 to 1e-4");
        }
        return new Simulation(system, duration, sample, relative, progress);
    }

    /**
     * The same run, reporting its progress: a century of a busy house takes minutes.
     *
     * @param listener hears how many simulated hours are over, of how many, on the thread that runs; all are once the run has ended,
     *     also where it ends early or fails
     * @return the run that reports
     */
    public Simulation telling(Workers.Progress listener) {
        return new Simulation(system, duration, sample, tolerance, Objects.requireNonNull(listener, "listener"));
    }

    /**
     * Simulates and keeps every sample.
     *
     * @return what the run found; a run that met a hazard ends there and keeps the results so far
     * @throws IllegalStateException if the run, sampled once a minute as by default, has more than 20 million samples; a longer
     *     interval, {@link #stream} or {@link #summary} takes it
     * @throws SimulationException if the equations could not be integrated
     * @throws CancellationException if the calling thread is interrupted
     */
    public RunResult run() {
        if (hasTooManySamples()) {
            throw new IllegalStateException(tooManySamples());
        }
        Trace.Builder trace = new Trace.Builder(planned(), system.vessels().size());
        RunSummary summary = simulate(trace::addAll);
        return new RunResult(summary, trace.build());
    }

    /**
     * Simulates and passes on every sample without keeping it: for runs too long to hold in memory.
     *
     * @param listener takes the samples, on the calling thread
     * @return what the run found, without its course
     * @throws SimulationException if the equations could not be integrated
     * @throws CancellationException if the calling thread is interrupted
     */
    public RunSummary stream(SampleListener listener) {
        Objects.requireNonNull(listener, "listener");
        return simulate(SampleSink.to(listener, Trace.columns(system.vessels().size())));
    }

    /**
     * Simulates and passes on only some quantities of each sample, which costs less.
     *
     * @param channels which; the others are NaN in what the listener takes, and so are those of each of several vessels
     * @param listener takes the samples, on the calling thread
     * @return what the run found, without its course
     * @throws SimulationException if the equations could not be integrated
     * @throws CancellationException if the calling thread is interrupted
     */
    public RunSummary stream(Set<Channel> channels, SampleListener listener) {
        Objects.requireNonNull(listener, "listener");
        return simulate(SampleSink.to(listener, Set.copyOf(channels)));
    }

    /**
     * Simulates without sampling the course.
     *
     * @return what the run found, without its course
     * @throws SimulationException if the equations could not be integrated
     * @throws CancellationException if the calling thread is interrupted
     */
    public RunSummary summary() {
        return new Simulation(system, duration, duration, tolerance, progress)
                .stream(Set.of(), (time, values, regime) -> {});
    }

    private boolean hasTooManySamples() {
        return duration.toNanos() / sample.toNanos() > MAX_SAMPLES; // 100 years are 3.2e18 of them
    }

    private String tooManySamples() {
        return "sample: " + sample + " gives more than " + MAX_SAMPLES + " samples; take a longer interval";
    }

    private RunSummary simulate(SampleSink sink) {
        int hours = (int) Math.ceil(seconds(duration) / HOUR);
        int[] over = {0};
        try {
            return new Engine(system, planned(), sink, tolerance)
                    .telling(time -> {
                        while (over[0] + 1 < hours && time >= (over[0] + 1) * HOUR) {
                            over[0]++;
                            progress.done(over[0], hours);
                        }
                    })
                    .run();
        } finally {
            progress.done(hours, hours);
        }
    }

    private Trace.Grid planned() {
        return new Trace.Grid(seconds(sample), seconds(duration));
    }

    private static double seconds(Duration duration) {
        return duration.getSeconds() + duration.getNano() * 1e-9;
    }

    /**
     * Receives the samples of a run one by one, so that a long run need not be held in memory.
     */
    @FunctionalInterface
    public interface SampleListener {

        /**
         * Takes one sample. Samples come in the order of time, the first at the start and the last at the end of the
         * run.
         *
         * @param time since the start of the run (s)
         * @param values one value for each {@link Channel}, by its {@code ordinal()}, in its SI unit, and behind them where there
         *     are several vessels water and gas of each ({@link Trace#vesselWater(int, int)}, {@link Trace#vesselGas(int, int)}); the array
         *     is reused for the next sample and must not be kept
         * @param regime the pressure regime
         */
        void sample(double time, double[] values, Trace.Regime regime);
    }
}
