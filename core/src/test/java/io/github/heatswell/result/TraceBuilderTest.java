package io.github.heatswell.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
