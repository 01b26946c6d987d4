package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartTest {

    private static final RunResult RESULT =
            Handmade.run(Plants.bare().build(), 60, 4.2, 5).result();

    @Test
    void comparesTwoToSix() {
        for (int count : new int[] {0, 1, 7}) {
            List<NamedRun> runs = runs(count);
            IllegalArgumentException refused =
                    assertThrows(IllegalArgumentException.class, () -> Chart.comparing(runs, UnitSystem.SI));
            assertTrue(refused.getMessage().startsWith("runs: " + count), refused.getMessage());
        }
        assertEquals(
                6,
                Chart.comparing(runs(6), UnitSystem.SI)
                        .picture()
                        .upper()
                        .curves()
                        .size());
    }

    @Test
    void refusesTwoRunsOfOneName() {
        List<NamedRun> twins = List.of(new NamedRun("a", RESULT), new NamedRun("a", RESULT));
        assertThrows(IllegalArgumentException.class, () -> Chart.comparing(twins, UnitSystem.SI));
    }

    @Test
    void aRunThatIsNullIsRefusedInWords() {
        List<NamedRun> none = Arrays.asList(null, null);
        assertEquals(
                "runs: one of them is null",
                assertThrows(NullPointerException.class, () -> Chart.comparing(none, UnitSystem.SI))
                        .getMessage());
    }

    @Test
    void refusesARunWithoutAName() {
        assertThrows(IllegalArgumentException.class, () -> new NamedRun("  ", RESULT));
        assertThrows(NullPointerException.class, () -> new NamedRun("a", null));
    }

    @Test
    void doesNotChangeWithTheCallersList() {
        List<NamedRun> runs = new ArrayList<>(runs(3));
        Chart chart = Chart.comparing(runs, UnitSystem.SI);
        runs.clear();
        assertEquals(3, chart.picture().upper().curves().size());
    }

    @Test
    void comesInOtherSizes() {
        Chart chart = Chart.of(RESULT, UnitSystem.SI);
        Chart small = chart.withSize(720, 520);
        assertEquals(720, small.picture().size().width());
        assertEquals(1040, chart.picture().size().width());
        assertThrows(IllegalArgumentException.class, () -> chart.withSize(719, 700));
        assertThrows(IllegalArgumentException.class, () -> chart.withSize(1000, 2401));
    }

    private static List<NamedRun> runs(int count) {
        List<NamedRun> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            runs.add(new NamedRun("run " + i, RESULT));
        }
        return runs;
    }
}
