package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.cli.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Regression: a quantity of a run has one spelling on the screen, on the page, in the picture and in the summary. */
class OneSpellingTest {

    @TempDir
    Path folder;

    @Test
    void peakAndDischargeReadAlikeEverywhere() throws IOException {
        Outcome outcome = Outcome.execute("run", "orchard-lodge", "-o", folder.toString());
        assertEquals(0, outcome.status(), outcome.err());
        Map<String, String> outputs = Map.of(
                "screen", outcome.out(),
                "page", plain(Files.readString(folder.resolve("report.html"))),
                "picture", plain(Files.readString(folder.resolve("pressure.svg"))),
                "summary", Files.readString(folder.resolve("summary.json")));
        outputs.forEach((name, text) -> {
            String flat = text.replaceAll("\\s+", " ");
            assertEquals(Set.of("7"), near(flat, "bar", 7, 0.06), name);
            // the expansion of the heat-up is another quantity, of 3.19 L
            assertEquals(Set.of("3.14"), near(flat, "L", 3.1394, 0.045), name);
        });
        assertTrue(outcome.out().contains("opens after 10 min 16 s"), outcome.out());
    }

    private static String plain(String markup) {
        return markup.replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replace("&#160;", " ");
    }

    /** How a value near a number is spelt. */
    private static Set<String> near(String text, String unit, double value, double distance) {
        Set<String> spelt = new TreeSet<>();
        Matcher matcher =
                Pattern.compile("(?<![\\d.])(\\d+(?:\\.\\d+)?) " + unit + "\\b").matcher(text);
        while (matcher.find()) {
            if (Math.abs(Double.parseDouble(matcher.group(1)) - value) < distance) {
                spelt.add(matcher.group(1));
            }
        }
        return spelt;
    }
}
