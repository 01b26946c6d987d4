package io.github.heatswell.scenarios.generated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.file.FormatKey;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Several;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Random files are valid, and no key of the format is left out of them. More of them are read with {@code
 * -Dtest.jvm.options=-Dgenerated.files=10000}.
 */
class RandomScenariosTest {

    private static final int COUNT = Integer.getInteger("generated.files", 500);

    @Test
    void everyFileIsValid(TestReporter reporter) {
        int refused = 0;
        StringBuilder reasons = new StringBuilder();
        for (int seed = 0; seed < COUNT; seed++) {
            try {
                RandomScenarios.of(seed).scenario();
            } catch (InvalidScenarioException e) {
                refused++;
                reasons.append(refused > 10 ? "" : "\n" + seed + ": " + first(e.faults()));
            }
        }
        reporter.publishEntry(COUNT + " files, " + refused + " refused");
        assertEquals(0, refused, () -> reasons.toString());
    }

    /** Whatever a valid file describes is judged, before any run of it, without an exception. */
    @Test
    void everyHouseIsJudged() {
        int findings = 0;
        StringBuilder failures = new StringBuilder();
        for (int seed = 0; seed < COUNT; seed++) {
            var house = RandomScenarios.of(seed).system();
            try {
                findings += Findings.of(house).size();
            } catch (RuntimeException e) {
                failures.append("\n" + seed + ": " + e + " at " + e.getStackTrace()[0]);
            }
        }
        assertEquals("", failures.toString());
        assertTrue(findings > COUNT / 10, "something is wrong with many of these houses: " + findings);
    }

    /** A key that is new to the format is drawn by itself; one that never stays in a file would go untested. */
    @Test
    void everyKeyOccurs() {
        Set<String> missing = new TreeSet<>();
        FormatKey.all().forEach(key -> missing.add(key.path()));
        assertTrue(missing.size() > 100, "few keys: " + missing.size());
        for (int seed = 0; seed < 300 && !missing.isEmpty(); seed++) {
            strike(RandomScenarios.of(seed).file(), Format.TOP, missing);
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void aSeedMakesTheSameFileAgain() {
        assertEquals(RandomScenarios.of(17).yaml(), RandomScenarios.of(17).yaml());
        assertTrue(!RandomScenarios.of(17).yaml().equals(RandomScenarios.of(20).yaml()));
    }

    @Test
    void jsonSaysTheSame() {
        for (RandomScenario file : RandomScenarios.first(50)) {
            var read = io.github.heatswell.scenarios.file.ScenarioReader.read(file.toString(), file.json());
            assertEquals(file.scenario().duration(), read.duration());
            assertEquals(file.scenario().assumptions(), read.assumptions());
            assertEquals(file.scenario().title(), read.title());
        }
    }

    private static void strike(Keyed part, List<FormatKey> keys, Set<String> missing) {
        for (FormatKey key : keys) {
            Part value = part.values().get(key.name());
            if (value == null) {
                continue;
            }
            missing.remove(key.path());
            if (value instanceof Keyed inner) {
                strike(inner, key.inner(), missing);
            } else if (value instanceof Several several) {
                several.keyed().forEach(item -> strike(item, key.inner(), missing));
            }
        }
    }

    private static String first(List<Fault> faults) {
        return faults.get(0).toString();
    }
}
