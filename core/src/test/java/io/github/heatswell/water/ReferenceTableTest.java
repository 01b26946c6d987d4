package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Regression: a table that is not what its test takes it for stops the test. */
class ReferenceTableTest {
    @Test
    void rightTableIsRead() {
        ReferenceTable table = ReferenceTable.read("if97_table35.csv", 3, "T_K", "psat_abs_MPa");
        assertEquals(3, table.size());
        assertEquals(500, table.number(1, "T_K"));
        assertEquals("0.263889776e1", table.text(1, "psat_abs_MPa"));
    }

    @Test
    void columnsInAnotherOrderAreRefused() {
        assertThrows(
                IllegalStateException.class, () -> ReferenceTable.read("if97_table35.csv", 3, "psat_abs_MPa", "T_K"));
    }

    @Test
    void missingColumnIsRefused() {
        assertThrows(IllegalStateException.class, () -> ReferenceTable.read("if97_table35.csv", 3, "T_K"));
    }

    @Test
    void anotherNumberOfRowsIsRefused() {
        assertThrows(
                IllegalStateException.class, () -> ReferenceTable.read("if97_table35.csv", 4, "T_K", "psat_abs_MPa"));
    }

    @Test
    void unknownColumnAndUnknownFileAreRefused() {
        ReferenceTable table = ReferenceTable.read("if97_table35.csv", 3, "T_K", "psat_abs_MPa");
        assertThrows(IllegalStateException.class, () -> table.number(0, "t_k"));
        assertThrows(IllegalStateException.class, () -> ReferenceTable.read("absent.csv", 3, "T_K"));
    }
}
