package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated("changes the language of the whole Java machine")
class SummaryJsonTest {

    @Test
    void theReadmeNamesExactlyTheFieldsThatAreWritten() throws IOException {
        Map<String, Set<String>> written = new TreeMap<>();
        for (String name : List.of("quarry-row", "ridge-house")) {
            summary(name).forEach((field, value) -> collect(written, field, value));
        }
        Scenario changed =
                Catalogue.read("orchard-lodge").with(List.of(Change.of("supply.pressure=4.2 bar +- 0.2 bar")));
        JsonText.object(text(changed)).forEach((field, value) -> collect(written, field, value));
        written.get("hazard").removeAll(written.get("events"));
        assertEquals(documented(), written);
    }

    @Test
    void theHazardComesFirst() throws IOException {
        Map<String, Object> summary = summary("quarry-row");
        assertEquals("hazard", summary.keySet().iterator().next());
        Map<?, ?> hazard = (Map<?, ?>) summary.get("hazard");
        assertEquals("test_pressure_reached", hazard.get("kind"));
        assertEquals(1.6e6, (double) hazard.get("pressure_gauge_pa"), 1e-3);
        assertNull(summary.get("relief_set"));
        assertEquals(true, ((Map<?, ?>) summary.get("test_pressure")).get("reached"));
        assertEquals(-8e5, (double) ((Map<?, ?>) summary.get("working_pressure")).get("margin_pa"), 1);
    }

    @Test
    void numbersAreThoseOfTheRun() throws IOException {
        Scenario scenario = Catalogue.read("orchard-lodge");
        RunResult result = scenario.simulation().run();
        Map<String, Object> summary = summary("orchard-lodge");
        assertNull(summary.get("hazard"));
        Map<?, ?> highest = (Map<?, ?>) summary.get("highest_pressure");
        double peak = result.extremes().highestPressure().value();
        assertEquals(peak, (double) highest.get("pressure_absolute_pa"), 1e-9 * peak);
        assertEquals(result.gauge(peak), (double) highest.get("pressure_gauge_pa"), 1e-9 * peak);
        Map<?, ?> totals = (Map<?, ?>) summary.get("totals");
        assertEquals(result.totals().relieved(), (double) totals.get("relieved_m3"), 1e-12);
        Map<?, ?> run = (Map<?, ?>) summary.get("run");
        assertEquals(14_400.0, run.get("asked_s"));
        assertEquals(241.0, run.get("samples"));
        assertEquals(scenario.source(), summary.get("input"));
        assertEquals(
                List.of(Map.of(
                        "field", "relief[0].character",
                        "value", "modulating",
                        "basis", "small spring-loaded valves dribble before they lift")),
                summary.get("assumptions"));
    }

    @Test
    void theTextIsTheSameOnEveryMachine() throws IOException {
        String text = text("orchard-lodge");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals(text, text("orchard-lodge"));
        } finally {
            Locale.setDefault(before);
        }
        assertFalse(text.contains("\r"));
        assertTrue(text.endsWith("}\n"));
    }

    private static void collect(Map<String, Set<String>> written, String field, Object value) {
        Set<String> inner = written.computeIfAbsent(field, key -> new TreeSet<>());
        if (value instanceof Map<?, ?> object) {
            object.forEach((name, part) -> {
                inner.add((String) name);
                if (part instanceof List<?>) {
                    collect(written, field, part);
                }
            });
        } else if (value instanceof List<?> list) {
            list.forEach(item -> collect(written, field, item));
        }
    }

    private static Map<String, Set<String>> documented() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        String section = readme.substring(readme.indexOf("## summary.json"), readme.indexOf("## From Java"));
        Map<String, Set<String>> fields = new TreeMap<>();
        for (String line :
                section.lines().filter(line -> line.startsWith("| `")).toList()) {
            List<String> names = Pattern.compile("`([a-z_0-9]+)`")
                    .matcher(line)
                    .results()
                    .map((MatchResult result) -> result.group(1))
                    .toList();
            fields.put(names.get(0), new TreeSet<>(names.subList(1, names.size())));
        }
        return fields;
    }

    private static Map<String, Object> summary(String name) throws IOException {
        return JsonText.object(text(name));
    }

    private static String text(String name) throws IOException {
        return text(Catalogue.read(name));
    }

    private static String text(Scenario scenario) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        SummaryJson.of(scenario, RunFindings.of(scenario.simulation().run())).write(bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
