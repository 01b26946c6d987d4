package io.github.heatswell.scenarios.generated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.UncertainField;
import io.github.heatswell.system.HotWaterSystem;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Contract: a house drawn with certain values, for which the text is not read again, is in every number the house of a file
 * that gives these values, and is refused where that file is.
 */
class DrawnHousesTest {

    private static final int FILES = Integer.getInteger("generated.files", 500);

    @Test
    void aDrawnHouseIsThatOfAFileWithTheseValues(TestReporter reporter) throws IllegalAccessException {
        Random random = new Random(5);
        int drawn = 0;
        int refused = 0;
        for (int seed = 0; seed < FILES; seed++) {
            Scenario scenario = RandomScenarios.of(seed).scenario();
            if (scenario.uncertain().isEmpty()) {
                continue;
            }
            double[] values = scenario.uncertain().stream()
                    .mapToDouble(field -> field.distribution().quantile(random.nextDouble()))
                    .toArray();
            List<Change> changes = new ArrayList<>();
            for (int i = 0; i < values.length; i++) {
                UncertainField field = scenario.uncertain().get(i);
                changes.add(new Change(field.field(), field.at(values[i])));
            }
            HotWaterSystem expected;
            try {
                expected = scenario.with(changes).system();
            } catch (InvalidScenarioException e) {
                refused++;
                assertThrows(InvalidScenarioException.class, () -> scenario.drawn(values), e::getMessage);
                continue;
            }
            drawn++;
            assertEquals(told(expected), told(scenario.drawn(values)), "seed " + seed);
        }
        reporter.publishEntry(drawn + " houses drawn, " + refused + " refused");
        assertTrue(drawn > FILES / 20, drawn + " houses with something uncertain");
    }

    /** Everything a description holds, to the last digit. */
    private static String told(Object part) throws IllegalAccessException {
        if (part instanceof Iterable<?> parts) {
            StringBuilder all = new StringBuilder("[");
            for (Object one : parts) {
                all.append(told(one)).append(", ");
            }
            return all.append(']').toString();
        }
        if (part instanceof Map<?, ?> map) {
            return told(map.keySet()) + told(map.values());
        }
        if (part == null || part instanceof Enum<?> || part.getClass().getName().startsWith("java.")) {
            return String.valueOf(part);
        }
        StringBuilder all = new StringBuilder(part.getClass().getSimpleName()).append('{');
        for (Field field : part.getClass().getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers())) {
                field.setAccessible(true);
                all.append(field.getName())
                        .append('=')
                        .append(told(field.get(part)))
                        .append(' ');
            }
        }
        return all.append('}').toString();
    }
}
