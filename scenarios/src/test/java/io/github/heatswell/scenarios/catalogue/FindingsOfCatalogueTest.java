package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: what is found in the bundled scenarios, in the order of gravity. Most of these invented houses name neither
 * a temperature and pressure relief valve nor a cut-out nor a mixing valve, and are told so.
 */
class FindingsOfCatalogueTest {

    private static final String EXPECTED = """
            orchard-lodge                    | relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve temperature-relief-missing relief-water-loss
            ridge-house                      | relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage                     | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            vineyard-cottage                 | expansion-valve-works temperature-relief-missing
            shearers-hut                     | expansion-valve-works
            mill-cottage-small-vessel        | vessel-bottomed-out peak-above-code-limit scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-overcharged-vessel  | precharge-above-static peak-above-code-limit scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-isolated-vessel     | vessel-isolated peak-above-code-limit scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-dripping-tap        | expansion-control-missing dripping-hides-expansion scald-without-mixing-valve temperature-relief-missing
            mill-cottage-worn-seat           | relief-valve-seat-leaks scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-stuck-open          | relief-valve-stuck-open scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-night-mains        | static-pressure-high supply-opens-relief-valve scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-high-mains         | static-pressure-high supply-opens-relief-valve scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-creeping-reducer    | reducing-valve-creeps precharge-above-static peak-above-code-limit scald-without-mixing-valve temperature-relief-missing relief-water-loss
            mill-cottage-thermostat          | relief-valve-opened-by-heat thermostat-stuck scald-without-mixing-valve relief-water-loss
            ferry-cottage                    | scald-without-mixing-valve temperature-relief-missing expansion-returns-to-mains
            ford-house-leaking-check         | relief-valve-controls-expansion check-valve-leaks scald-without-mixing-valve temperature-relief-missing relief-water-loss
            ford-house-shut-off              | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            tannery-yard                     | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            tannery-yard-bypass              | expansion-returns-to-mains peak-near-relief scald-without-mixing-valve temperature-relief-missing
            tannery-yard-bypass-high-mains  | bypass-opens-too-late peak-above-code-limit scald-without-mixing-valve temperature-relief-missing relief-water-loss
            heron-hill-year                  | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            orchard-lodge-vessel             | peak-above-code-limit peak-near-relief stored-too-cool scald-without-mixing-valve temperature-relief-missing
            orchard-lodge-lost-charge        | precharge-below-static peak-above-code-limit stored-too-cool scald-without-mixing-valve temperature-relief-missing relief-water-loss
            orchard-lodge-waterlogged        | vessel-waterlogged peak-above-code-limit stored-too-cool scald-without-mixing-valve temperature-relief-missing relief-water-loss
            orchard-lodge-warm-vessel        | precharge-above-static peak-above-code-limit peak-near-relief stored-too-cool scald-without-mixing-valve temperature-relief-missing
            orchard-lodge-cold-vessel        | precharge-below-static peak-above-code-limit peak-near-relief stored-too-cool scald-without-mixing-valve temperature-relief-missing
            orchard-lodge-air                | relief-valve-controls-expansion trapped-air stored-too-cool scald-without-mixing-valve temperature-relief-missing relief-water-loss
            orchard-lodge-two-vessels        | precharge-below-static peak-above-code-limit peak-near-relief stored-too-cool scald-without-mixing-valve temperature-relief-missing
            orchard-lodge-leak-test          | relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve temperature-relief-missing hot-branch-long hot-branch-cools relief-water-loss
            orchard-lodge-circulation        | stored-too-cool scald-without-mixing-valve temperature-relief-missing
            orchard-lodge-pex                | relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve temperature-relief-missing relief-water-loss
            beacon-tower                     | peak-above-code-limit peak-near-relief scald-without-mixing-valve temperature-relief-missing
            quarry-row                       | test-pressure-reached relief-valve-missing expansion-control-missing scald-without-mixing-valve
            kiln-house-runaway               | relief-valve-opened-by-heat thermostat-stuck scald-without-mixing-valve expansion-returns-to-mains relief-water-loss
            kiln-house-cut-out               | thermostat-stuck cut-out-tripped scald-without-mixing-valve expansion-returns-to-mains
            kiln-house-blocked               | vapour-forms thermostat-stuck relief-valve-blocked scald-without-mixing-valve expansion-returns-to-mains
            weir-house-day                   | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            weir-house-timetable             | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            weir-house-layers                | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            weir-house-mixed                 | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            weir-house-two-elements          | relief-valve-controls-expansion scald-without-mixing-valve temperature-relief-missing relief-water-loss
            birch-street-day                 | stored-too-cool scald-without-mixing-valve
            """;

    static Stream<Arguments> expected() {
        return EXPECTED.lines().map(line -> line.split("\\|")).map(row -> Arguments.of(row[0].strip(), row[1].strip()));
    }

    @Test
    void everyScenarioIsInTheTable() {
        assertEquals(
                new TreeSet<>(Catalogue.names()),
                expected().map(row -> (String) row.get()[0]).collect(Collectors.toCollection(TreeSet::new)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("expected")
    void findsWhatItShould(String name, String ids) {
        List<String> found = Findings.of(Catalogue.read(name).simulation().run().summary()).stream()
                .map(Finding::id)
                .toList();
        assertEquals(Arrays.asList(ids.split(" ")), found);
    }
}
