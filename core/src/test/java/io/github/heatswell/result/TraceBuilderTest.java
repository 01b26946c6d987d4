package io.github.heatswell.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Contracts of a trace put together by hand. */
class TraceBuilderTest {

    private static final Trace.Grid PLANNED = new Trace.Grid(60, 240);

    /** Values that tell channel and sample apart. */
    private static double[][] values(int samples, int first) {
        double[][] values = new double[Channel.values().length][samples];
        for (int channel = 0; channel < values.length; channel++) {
            for (int i = 0; i < samples; i++) {
                values[channel][i] = 100 * channel + first + i;
            }
        }
        return values;
    }

    private static double[] row(int sample) {
        double[] row = new double[Channel.values().length];
        for (int channel = 0; channel < row.length; channel++) {
            row[channel] = 100 * channel + sample;
        }
        return row;
    }

    @Test
    void takesSamplesOneByOneAndTogether() {
        Trace.Builder builder = new Trace.Builder(PLANNED);
        builder.add(0, row(0), Trace.Regime.FED);
        double[][] three = values(5, 1);
        builder.addAll(3, new double[] {60, 120, 180, 0, 0}, three, Trace.Regime.SEALED);
        three[0][0] = Double.NaN;
        builder.add(240, row(4), Trace.Regime.RELIEVING);
        Trace trace = builder.build();

        assertEquals(5, trace.count());
        assertEquals(240, trace.grid().end());
        assertEquals(
                List.of(
                        Trace.Regime.FED,
                        Trace.Regime.SEALED,
                        Trace.Regime.SEALED,
                        Trace.Regime.SEALED,
                        Trace.Regime.RELIEVING),
                trace.regimes());
        for (Channel channel : Channel.values()) {
            for (int i = 0; i < 5; i++) {
                assertEquals(100 * channel.ordinal() + i, trace.value(channel, i));
            }
        }
    }

    /** Contract: one value stands for all samples it comes with, whatever comes before and after, and channels that shared it may part. */
    @Test
    void oneValueStandsForMany() {
        double[] one = {7};
        double[] other = {8};
        double[] many = {1, 2, Double.NaN};
        assertEquals(List.of(7.0, 7.0, 7.0, 7.0, 7.0), course(one, one));
        assertEquals(List.of(7.0, 7.0, 7.0, 8.0, 8.0), course(one, other));
        assertEquals(List.of(7.0, 7.0, 7.0, 1.0, 2.0), course(one, many));
        assertEquals(List.of(1.0, 2.0, Double.NaN, 7.0, 7.0), course(many, one));
    }

    /** The values of a channel that comes in an array first, three times, and in another then, twice; the others stay at the first. */
    private static List<Double> course(double[] first, double[] then) {
        Trace.Builder builder = new Trace.Builder(PLANNED);
        double[][] values = new double[Channel.values().length][];
        Arrays.fill(values, first);
        double[] times = {0, 60, 120};
        builder.addAll(3, times, values, Trace.Regime.SEALED);
        int parting = Channel.VESSEL_WATER.ordinal();
        values[parting] = then;
        builder.addAll(2, times, values, Trace.Regime.FED);
        Trace trace = builder.build();
        assertThrows(IndexOutOfBoundsException.class, () -> trace.value(Channel.WATER_MEAN, 5));
        assertEquals(first[0], trace.value(Channel.WATER_TOP, 3), "those that stay share what they had");
        for (int i = 0; i < 5; i++) {
            assertEquals(trace.value(Channel.VESSEL_WATER, i), trace.sample(i)[parting]);
        }
        return Arrays.stream(trace.values(Channel.VESSEL_WATER)).boxed().toList();
    }

    @Test
    void endsEarlyWithWhatItHas() {
        Trace.Builder builder = new Trace.Builder(PLANNED);
        builder.addAll(2, new double[] {0, 60}, values(2, 0), Trace.Regime.SEALED);
        Trace trace = builder.build();
        assertEquals(2, trace.count());
        assertEquals(60, trace.grid().end());
    }

    @Test
    void refusesWhatDoesNotFit() {
        Trace.Builder builder = new Trace.Builder(PLANNED);
        assertEquals(
                "a trace needs at least one sample",
                assertThrows(IllegalStateException.class, builder::build).getMessage());
        builder.addAll(4, new double[] {0, 60, 120, 180}, values(4, 0), Trace.Regime.SEALED);
        double[] times = {240, 300};
        assertEquals(
                "a trace planned for 5 samples takes no more",
                assertThrows(
                                IllegalStateException.class,
                                () -> builder.addAll(2, times, values(2, 4), Trace.Regime.SEALED))
                        .getMessage());
        builder.add(240, row(4), Trace.Regime.SEALED);
        assertEquals(
                "a trace planned for 5 samples takes no more",
                assertThrows(IllegalStateException.class, () -> builder.add(300, row(5), Trace.Regime.SEALED))
                        .getMessage());
        builder.build();
        assertEquals(
                "the trace has been built; start another for more samples",
                assertThrows(IllegalStateException.class, () -> builder.add(300, row(5), Trace.Regime.SEALED))
                        .getMessage());
    }

    /** Values of single vessels stand in a sample only where there are several, and those of no vessel nowhere. */
    @Test
    void onlyOneOfSeveralVesselsHasItsOwnPlace() {
        assertEquals(Trace.columns(2), Trace.vesselGas(1, 2) + 1);
        assertEquals(Trace.columns(0), Trace.vesselWater(0, 2));
        assertThrows(IndexOutOfBoundsException.class, () -> Trace.vesselGas(-1, 2));
        assertThrows(IndexOutOfBoundsException.class, () -> Trace.vesselWater(2, 2));
        assertThrows(IndexOutOfBoundsException.class, () -> Trace.vesselWater(0, 1));
    }
}
