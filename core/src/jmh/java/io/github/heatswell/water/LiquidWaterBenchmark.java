package io.github.heatswell.water;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Cost of all properties at one point.
 *
 * <p>{@code independent} evaluates points that do not depend on each other, so the processor overlaps them: the cost in
 * a loop over layers. {@code chained} makes each point depend on the result of the last, so nothing overlaps: the cost
 * in an iteration.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(3)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class LiquidWaterBenchmark {
    private static final int POINTS = 1024;

    @Param({"polynomial", "if97"})
    private String formulation;

    private final double[] temperature = new double[POINTS];
    private final double[] pressureAbsolute = new double[POINTS];
    private final LiquidWater.State state = new LiquidWater.State();
    private LiquidWater water;

    @Setup
    public void choosePoints() {
        water = formulation.equals("if97") ? If97Region1.instance() : GibbsPolynomialWater.instance();
        Random random = new Random(20);
        for (int i = 0; i < POINTS; i++) {
            temperature[i] = 273.16 + 149.99 * random.nextDouble();
            pressureAbsolute[i] = 1e5 + 2.4e6 * random.nextDouble();
        }
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double independent() {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            water.evaluate(temperature[i], pressureAbsolute[i], state);
            sum += useAll();
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double chained() {
        double last = 0;
        for (int i = 0; i < POINTS; i++) {
            water.evaluate(temperature[i] + 1e-12 * last, pressureAbsolute[i], state);
            last = useAll();
        }
        return last;
    }

    private double useAll() {
        return state.density()
                + state.expansivity()
                + state.compressibility()
                + state.heatCapacity()
                + state.enthalpy();
    }
}
