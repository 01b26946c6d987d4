package io.github.heatswell.result;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The grid of samples and the trace on it. */
class TraceGridTest {

    @ParameterizedTest
    @CsvSource({"60, 14400, 241", "60, 14430, 242", "60, 30, 2", "60, 0, 1", "1, 86400, 86401", "0.1, 0.3, 4"})
    void firstAndLastInstantAreSamples(double step, double end, int count) {
        Trace.Grid grid = new Trace.Grid(step, end);
        assertEquals(count, grid.count());
        assertEquals(count == 1 ? end : 0, grid.time(0));
        assertEquals(end, grid.time(count - 1));
        for (int i = 0; i < count - 1; i++) {
            assertEquals(i * step, grid.time(i));
        }
        assertThrows(IndexOutOfBoundsException.class, () -> grid.time(count));
        assertThrows(IndexOutOfBoundsException.class, () -> grid.time(-1));
    }

    @ParameterizedTest
    @CsvSource({"0, 10", "-1, 10", "NaN, 10", "60, -1", "60, NaN", "60, Infinity", "1e-9, 1e6", "1, 1e9"})
    void impossibleGridsAreRefused(double step, double end) {
        assertThrows(IllegalArgumentException.class, () -> new Trace.Grid(step, end));
    }

    @Test
    void traceKeepsItsOwnCopy() {
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            columns.put(channel, new double[] {1, 2});
        }
        Trace.Grid grid = new Trace.Grid(60, 60);
        Trace trace = new Trace(grid, columns, List.of(Trace.Regime.SEALED, Trace.Regime.FED));
        columns.get(Channel.WATER_MEAN)[0] = 99;
        trace.values(Channel.WATER_MEAN)[1] = 99;
        assertArrayEquals(new double[] {1, 2}, trace.values(Channel.WATER_MEAN));
        assertEquals(Trace.Regime.FED, trace.regime(1));
        columns.put(Channel.WATER_MEAN, new double[] {1});
        assertThrows(
                IllegalArgumentException.class,
                () -> new Trace(grid, columns, List.of(Trace.Regime.SEALED, Trace.Regime.FED)));
        columns.remove(Channel.WATER_MEAN);
        assertThrows(
                IllegalArgumentException.class,
                () -> new Trace(grid, columns, List.of(Trace.Regime.SEALED, Trace.Regime.FED)));
    }

    @Test
    void auditOfNothingMovedIsTheResidualItself() {
        assertEquals(0, new RunSummary.Audit(0, 0, 0, 0).massFraction());
        assertEquals(2e-3, new RunSummary.Audit(2e-3, 0.5, 0, 1).massFraction(), "of a kilogram at least");
        assertEquals(1e-3, new RunSummary.Audit(-2e-3, 2, 0, 1).massFraction());
    }
}
