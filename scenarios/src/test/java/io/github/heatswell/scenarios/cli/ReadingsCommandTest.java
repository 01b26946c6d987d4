package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.report.ReadingsSheet;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Regression: the blank sheet for readings. */
class ReadingsCommandTest {

    @TempDir
    private Path folder;

    private Outcome sheet(String name) {
        return Outcome.execute("readings", "--sheet", folder.resolve(name).toString());
    }

    @Test
    void aBlankSheetSaysHowReadingsAreTaken() throws IOException {
        assertEquals(0, sheet("blank.html").status());
        String page = Files.readString(folder.resolve("blank.html"));
        ReadingsSheet.how(UnitSystem.SI).forEach(how -> assertTrue(page.contains(how), how));
        assertTrue(page.contains("The heater comes on"), page);
        assertTrue(page.contains("Screw the gauge onto the drain cock"), "where it goes: " + page);
    }

    /** Regression: an owner in the US was warned of degrees Celsius, and shown litres and German. */
    @Test
    void aSheetIsInTheUnitsAskedFor() throws IOException {
        Outcome american = Outcome.execute(
                "readings", "-u", "us", "--sheet", folder.resolve("us.html").toString());
        assertEquals(0, american.status(), american.err());
        String page = Files.readString(folder.resolve("us.html"));
        String said = page.substring(page.indexOf("<body"));
        for (String foreign : List.of("\u00b0C", "0.3 L", "58 C", "vessel", "cold feed", " tap", "bar")) {
            assertFalse(said.contains(foreign), foreign + " in " + said);
        }
        assertTrue(said.contains("hot faucet 136 F") && said.contains("\u00b0F"), said);
    }

    @Test
    void whatIsNoPageIsRefused() throws IOException {
        Outcome refused = sheet("blank.txt");
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("ends in .html"), refused::err);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
    }
}
