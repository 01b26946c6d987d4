package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * How long a day to some years take, streamed at one sample a minute, in a heap of 128 MB: the time should grow as the days do.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx128m")
@Warmup(iterations = 3)
@Measurement(iterations = 5)
public class LongRunBenchmark {

    /** How many days. */
    @Param({"1", "10", "100", "365", "1000"})
    public int days;

    private Simulation run;

    /** Describes the house. */
    @Setup
    public void describe() {
        run = Simulation.of(
                Parts.lodge(4.2, 58)
                        .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING))
                        .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60))
                        .draws(DrawProfile.published().get("eu-m"))
                        .build(),
                Duration.ofDays(days));
    }

    /**
     * A run with a vessel and the draws of EU profile M.
     *
     * @param sink takes the samples
     * @return what it found
     */
    @Benchmark
    public RunSummary streamed(Blackhole sink) {
        return run.stream((time, values, regime) -> sink.consume(values[Channel.PRESSURE_ABSOLUTE.ordinal()]));
    }
}
