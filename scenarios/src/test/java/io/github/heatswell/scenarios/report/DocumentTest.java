package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: a document that cannot be is refused. */
class DocumentTest {

    @Test
    void contentThatCannotBeIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Document(" ", "", List.of(), "", List.of(), List.of(), Place.NOT_KNOWN, UnitSystem.SI));
        List<List<String>> rows = List.of(List.of("one"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Grid("x", List.of("a", "b"), rows))
                .getMessage()
                .contains("1 cells do not fit 2 columns"));
    }
}
