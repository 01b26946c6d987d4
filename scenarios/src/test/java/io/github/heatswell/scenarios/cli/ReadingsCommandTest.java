package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.report.ReadingsSheet;
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
        ReadingsSheet.HOW.forEach(how -> assertTrue(page.contains(how), how));
        assertTrue(page.contains("The heater comes on"), page);
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
