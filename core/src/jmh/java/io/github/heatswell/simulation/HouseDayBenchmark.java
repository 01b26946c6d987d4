package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long one simulated day takes, warm, with minute samples of all channels. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class HouseDayBenchmark {

    private final Simulation withVessel = day(Parts.lodge(4.2, 58)
            .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING))
            .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60)));
    private final Simulation withModulatingValve =
            day(Parts.lodge(4.2, 58).addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING)));
    private final Simulation withSnapValve =
            day(Parts.lodge(4.2, 58).addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.SNAP)));

    private final Simulation withDraws = day(Parts.lodge(4.2, 58)
            .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING))
            .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60))
            .draws(DrawProfile.published().get("eu-m")));

    private static Simulation day(HotWaterSystem.Builder system) {
        return Simulation.of(system.build(), Duration.ofDays(1));
    }

    /** {@return a day with a vessel that takes up the expansion} */
    @Benchmark
    public RunResult vessel() {
        return withVessel.run();
    }

    /** {@return a day with a vessel and the draws of EU profile M} */
    @Benchmark
    public RunResult draws() {
        return withDraws.run();
    }

    /** {@return a day with a modulating relief valve} */
    @Benchmark
    public RunResult modulatingValve() {
        return withModulatingValve.run();
    }

    /** {@return a day with a snap-acting relief valve that opens some seventy times} */
    @Benchmark
    public RunResult snapValve() {
        return withSnapValve.run();
    }
}
