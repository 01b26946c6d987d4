package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Regression: what people read is rounded in one place alone. */
class OneRoundingTest {

    private static final Pattern OWN_ROUNDING =
            Pattern.compile("HALF_EVEN|HALF_DOWN|DecimalFormat\\b|\\.setScale\\(|%[-+,0 ]?\\d*\\.\\d+[feg]");

    /**
     * What writes numbers for machines, ticks of axes, limits that are rounded towards their range, tolerances, and how far
     * a run had come that took too long, whose numbers may be infinite.
     */
    private static final Set<String> ALLOWED = Set.of(
            "Decimals.java",
            "Limits.java",
            "FixedDecimals.java",
            "Axis.java",
            "SvgWriter.java",
            "Effort.java",
            "PageMethods.java");

    @Test
    void nothingElseRoundsWhatPeopleRead() throws IOException {
        List<String> found = new ArrayList<>();
        int files = 0;
        for (String module : List.of("core", "charts", "scenarios")) {
            try (Stream<Path> sources = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                for (Path source : sources.filter(path -> path.toString().endsWith(".java"))
                        .toList()) {
                    files++;
                    if (!ALLOWED.contains(source.getFileName().toString())
                            && OWN_ROUNDING.matcher(Files.readString(source)).find()) {
                        found.add(source.getFileName().toString());
                    }
                }
            }
        }
        assertTrue(files > 300, "an empty walk proves nothing: " + files + " files seen");
        assertEquals(List.of(), found);
    }
}
