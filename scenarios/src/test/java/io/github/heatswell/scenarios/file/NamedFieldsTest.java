package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.system.NamedValue;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: what the core calls a value of a house is a key of files, so that a change of one shows the other. */
class NamedFieldsTest {

    @Test
    void everyNamedValueIsAKeyOfFiles() {
        List<String> unknown = Arrays.stream(NamedValue.values())
                .map(NamedValue::field)
                .filter(field -> Schema.field(field).isEmpty())
                .toList();
        assertEquals(List.of(), unknown);
    }

    @Test
    void everyChoiceNobodyHasLookedAtMayBeLeftOpen() {
        assertEquals(
                List.of("heater.energy", "relief.opens-at", "supply.arrangement", "tank.material", "vessel"),
                List.copyOf(DoubtsOf.CHOICES));
    }
}
