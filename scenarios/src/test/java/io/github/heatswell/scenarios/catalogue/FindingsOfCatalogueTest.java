package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.finding.Finding;
import io.github.heatswell.finding.Findings;
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
            orchard-lodge                    | temperature-relief-missing relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve relief-water-loss
            ridge-house                      | relief-set-above-tank temperature-relief-missing relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve relief-water-loss
            mill-cottage                     | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            mill-cottage-small-vessel        | temperature-relief-missing vessel-bottomed-out scald-without-mixing-valve relief-water-loss
            mill-cottage-overcharged-vessel  | temperature-relief-missing precharge-above-static scald-without-mixing-valve relief-water-loss
            mill-cottage-isolated-vessel     | temperature-relief-missing vessel-isolated scald-without-mixing-valve relief-water-loss
            mill-cottage-dripping-tap        | temperature-relief-missing expansion-control-missing dripping-hides-expansion scald-without-mixing-valve
            mill-cottage-worn-seat           | relief-valve-seat-leaks temperature-relief-missing scald-without-mixing-valve relief-water-loss
            mill-cottage-stuck-open          | relief-valve-stuck-open temperature-relief-missing scald-without-mixing-valve relief-water-loss
            mill-cottage-night-street        | temperature-relief-missing static-pressure-high supply-opens-relief-valve scald-without-mixing-valve relief-water-loss
            mill-cottage-high-street         | temperature-relief-missing static-pressure-high supply-opens-relief-valve scald-without-mixing-valve relief-water-loss
            mill-cottage-creeping-reducer    | temperature-relief-missing reducing-valve-creeps precharge-above-static scald-without-mixing-valve relief-water-loss
            mill-cottage-thermostat          | thermostat-stuck relief-valve-opened-by-heat scald-without-mixing-valve relief-water-loss
            ferry-cottage                    | temperature-relief-missing scald-without-mixing-valve expansion-returns-to-street
            ford-house-leaking-check         | temperature-relief-missing relief-valve-controls-expansion check-valve-leaks scald-without-mixing-valve relief-water-loss
            ford-house-shut-off              | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            tannery-yard                     | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            tannery-yard-bypass              | temperature-relief-missing scald-without-mixing-valve expansion-returns-to-street peak-near-relief
            tannery-yard-bypass-high-street  | temperature-relief-missing bypass-opens-too-late scald-without-mixing-valve relief-water-loss
            heron-hill-year                  | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            orchard-lodge-vessel             | temperature-relief-missing stored-too-cool scald-without-mixing-valve peak-near-relief
            orchard-lodge-lost-charge        | temperature-relief-missing precharge-below-static stored-too-cool scald-without-mixing-valve relief-water-loss
            orchard-lodge-waterlogged        | temperature-relief-missing vessel-waterlogged stored-too-cool scald-without-mixing-valve relief-water-loss
            orchard-lodge-warm-vessel        | temperature-relief-missing precharge-above-static peak-near-relief stored-too-cool scald-without-mixing-valve
            orchard-lodge-cold-vessel        | temperature-relief-missing precharge-below-static stored-too-cool scald-without-mixing-valve peak-near-relief
            orchard-lodge-air                | temperature-relief-missing relief-valve-controls-expansion trapped-air stored-too-cool scald-without-mixing-valve relief-water-loss
            orchard-lodge-pex                | temperature-relief-missing relief-valve-controls-expansion stored-too-cool scald-without-mixing-valve relief-water-loss
            beacon-tower                     | temperature-relief-missing peak-near-relief scald-without-mixing-valve
            quarry-row                       | test-pressure-reached relief-valve-missing expansion-control-missing scald-without-mixing-valve
            kiln-house-runaway               | thermostat-stuck relief-valve-opened-by-heat scald-without-mixing-valve expansion-returns-to-street relief-water-loss
            kiln-house-cut-out               | thermostat-stuck cut-out-tripped scald-without-mixing-valve expansion-returns-to-street
            kiln-house-blocked               | vapour-forms thermostat-stuck relief-valve-blocked scald-without-mixing-valve expansion-returns-to-street
            weir-house-day                   | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            weir-house-timetable             | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            weir-house-layers                | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            weir-house-mixed                 | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
            weir-house-two-elements          | temperature-relief-missing relief-valve-controls-expansion scald-without-mixing-valve relief-water-loss
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
