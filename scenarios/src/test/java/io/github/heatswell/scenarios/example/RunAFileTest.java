package io.github.heatswell.scenarios.example;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunAFileTest {

    @Test
    void itPrintsTheHazardAndThePeak(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), Catalogue.text("quarry-row"));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        RunAFile.run(file, new PrintStream(bytes, true, StandardCharsets.UTF_8));
        assertEquals("""
                HAZARD: test pressure reached
                Quarry row, check valve and nothing else: 1600 kPa at most
                """, bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"));
    }
}
