package io.github.heatswell.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What results say of themselves, without a run behind them. */
class ResultTest {

    /** Both books must close, each to the stated share of what moved, and a residual counts whichever sign it has. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, true",
        "1e-6, 0, true",
        "0, 1e-6, true",
        "-1e-6, -1e-6, true",
        "1.001e-6, 0, false",
        "0, 1.001e-6, false",
        "-1.001e-6, 0, false",
        "NaN, 0, false",
        "0, NaN, false"
    })
    void booksCloseToTheStatedShare(double massShare, double energyShare, boolean closes) {
        // Moved amounts that are powers of two leave the shares exact.
        Audit audit = new Audit(massShare * 2, 2, energyShare * 1024, 1024);
        assertEquals(closes, audit.closes());
        assertEquals(Math.abs(massShare), audit.massFraction());
        assertEquals(Math.abs(energyShare), audit.energyFraction());
    }

    @Test
    void nothingMovedAndSomethingLeftOverDoesNotClose() {
        assertTrue(new Audit(0, 0, 0, 0).closes());
        assertFalse(new Audit(1, 0, 0, 0).closes());
        assertFalse(new Audit(0, 0, 1, 0).closes());
    }

    /** By the documentation of the kinds: those that say "the run ends". */
    @Test
    void hazardsEndTheRun() {
        Set<EventKind> ending = EnumSet.noneOf(EventKind.class);
        for (EventKind kind : EventKind.values()) {
            if (kind.endsRun()) {
                ending.add(kind);
            }
        }
        assertEquals(
                EnumSet.of(
                        EventKind.TEST_PRESSURE_REACHED,
                        EventKind.VAPOUR_FORMS,
                        EventKind.ATMOSPHERE_REACHED,
                        EventKind.RELIEF_CHATTERS,
                        EventKind.WATER_OUT_OF_RANGE),
                ending);
    }

    @Test
    void whatAllValvesGaveOffIsTheSum() {
        List<ReliefTotal> valves =
                List.of(new ReliefTotal("a", 1.5, 1.5e-3, 3), new ReliefTotal("b", 0.25, 0.25e-3, 1));
        assertEquals(1.75e-3, new Totals(valves, 0, 0, 0, 0, 0, 0, 0, 0).relieved(), 1e-18); // rounding
        assertEquals(0, new Totals(List.of(), 0, 0, 0, 0, 0, 0, 0, 0).relieved());
    }

    /** Tables and pictures tell channels apart by these words. */
    @Test
    void channelsHaveNamesOfTheirOwn() {
        Set<String> symbols = new HashSet<>();
        Set<String> descriptions = new HashSet<>();
        for (Channel channel : Channel.values()) {
            assertTrue(symbols.add(channel.symbol()), channel.symbol());
            assertTrue(descriptions.add(channel.description()), channel.description());
            assertTrue(Set.of("K", "Pa", "W", "m3", "m3/s").contains(channel.unit()), channel + " " + channel.unit());
        }
    }

    @ParameterizedTest
    @EnumSource(EventKind.class)
    void eventsAreDescribed(EventKind kind) {
        assertTrue(kind.description().matches("[a-z][a-z -]+"), kind.description());
    }

    @ParameterizedTest
    @CsvSource({"SEALED, sealed", "FED, fed", "RELIEVING, relieving", "RETURNED, returned", "UNSEALED, unsealed"})
    void regimesAreWordsInLowerCase(Regime regime, String label) {
        assertEquals(label, regime.label());
    }
}
