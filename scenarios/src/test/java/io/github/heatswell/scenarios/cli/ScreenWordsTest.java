package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: what an answer must say on the screen, and what it must not, where a reader could take it wrongly. */
class ScreenWordsTest {

    private static final Map<String, Outcome> OUTCOMES = new HashMap<>();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // A valve that is stuck open, or whose seat leaks, discharges without ever opening.
                "compare mill-cottage-stuck-open mill-cottage -u us"
                        + "| In both runs the relief valve discharges water: more with \"mill-cottage-stuck-open\" (658 gal, its valve stuck open), less with \"mill-cottage\" (2.7 gal)."
                        + "| shut",
                "compare mill-cottage-worn-seat mill-cottage -u us"
                        + "| more with \"mill-cottage-worn-seat\" (5.55 gal, through a worn seat), less with \"mill-cottage\" (2.7 gal)."
                        + "| shut",
                "compare mill-cottage-stuck-open ridge-house | 2490 L stuck open | bar left",
                // Never is not what a number of years can show.
                "outlook orchard-lodge-vessel -y 10 | 12 L, slowest loss not within 10 years | never ",
                "outlook birch-street-day --set tank.layers=1 -u us -y 5"
                        + "| At the expected loss no relief valve drips within 5 years; one house in twenty drips by year 3."
                        + "| in one house of twenty already",
                "outlook birch-street-day --set tank.layers=1 -u us -y 5"
                        + "| of precharge left. The manufacturer allows no more than 150 psi in use."
                        + "| no more than this",
                "run beacon-tower | The peak of 7.44 bar is too close to the set pressure of 'cellar valve' | leaves too little",
                // Tank, vessel, gauge and valves at four heights: what each sees.
                "run beacon-tower"
                        + "| At the peak of 7.44 bar at the drain cock, each at its own height: the gauge shows 6.45 bar, the vessel sees 5.67 bar, \"attic valve\" sees 5.96 bar."
                        + "| and the vessel charged to 1.84 bar:",
                "run beacon-tower"
                        + "| Not confirmed on site: the reseat pressure of 'cellar valve', assumed 6 bar;"
                        + "| of a relief valve, assumed",
                // One clock in one answer, and no lowest pressure that is the first.
                "run mill-cottage-small-vessel | Peak 7 bar at 17:18 | after 8 h",
                "run mill-cottage-thermostat | Hottest 99 degC at | Lowest",
                "run mill-cottage-stuck-open --set supply.shut-off=[{\"from\":4h,\"to\":48h}]"
                        + "| HAZARD: At 16:00 the pressure has fallen to that of the air: 'safety valve' is stuck open while the supply is shut off."
                        + "| After 4 h",
                // Runs of different length are not held against each other without saying so.
                "compare orchard-lodge mill-cottage-small-vessel | (4.02 L in 3 d), less with \"orchard-lodge\" (3.14 L in 4 h). | (3.14 L)",
                "size mill-cottage-high-mains -u us"
                        + "| The cheapest way that works: have a reducing valve installed and set to"
                        + "| 77 psi",
                "size orchard-lodge-vessel | That is enough in 62 of 64 sampled houses | EN 12828",
                "run kiln-house-blocked | Relief set none no relief valve works | working relief valve is described",
                "run ferry-cottage --set heater.set-point=58degC | Water at 58 degC burns an adult badly in 6 s to 30 s | hotter than this",
            })
    void anAnswerSays(String command, String said, String unsaid) {
        Outcome outcome = OUTCOMES.computeIfAbsent(
                command, same -> Outcome.execute((same + " -o " + folder.resolve("out")).split(" ")));
        String out = outcome.out().replaceAll("\\s+", " ").replaceAll("Caution: hot water scalds.*", "");
        assertTrue(out.contains(said), out + outcome.err());
        assertFalse(out.contains(unsaid), out);
    }
}
