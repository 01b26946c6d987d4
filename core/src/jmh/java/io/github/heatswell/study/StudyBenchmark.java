package io.github.heatswell.study;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long 10 000 days of an uncertain house take, from a cold fill, in 64 MB, with and without a vessel. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx64m")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class StudyBenchmark {

    /** On how many threads. */
    @Param({"1", "2"})
    public int threads;

    /** The vessel (L), 0 for none. */
    @Param({"0", "12"})
    public double vessel;

    /** How many houses. */
    @Param({"10000"})
    public int houses;

    /** {@return what so many days found} */
    @Benchmark
    public StudyResult days() {
        return Study.builder()
                .input("supply pressure (bar)", Distribution.around(4.2, 0.15))
                .input("set point (degC)", Distribution.around(58, 3))
                .input("precharge (bar)", Distribution.around(4.0, 0.1))
                .input("relief set pressure (bar)", Distribution.around(7, 0.21))
                .input("tank volume (L)", Distribution.around(230, 7))
                .outputs(HouseDay.outputs())
                .model(HouseDay.of(this::house, Duration.ofDays(1)))
                .samples(houses)
                .threads(threads)
                .build()
                .run();
    }

    private HotWaterSystem house(double[] values) {
        HotWaterSystem.Builder house = Parts.lodge(values[0], values[1])
                .tank(Parts.tank(values[4], Parts.steel(480, 2.2), 2.4, 10))
                .addReliefValve(Houses.valve(values[3]));
        if (vessel > 0) {
            house.vessel(Houses.vessel(vessel, values[2]));
        }
        return house.build();
    }
}
