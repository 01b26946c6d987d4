package io.github.heatswell.scenarios.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTextTest {

    @TempDir
    private Path folder;

    @Test
    void aByteOrderMarkIsNoPartOfTheText() throws IOException {
        Path file = file("\uFEFFa: \u00b0C".getBytes(StandardCharsets.UTF_8));
        assertEquals(Optional.of("a: \u00b0C"), SourceText.of(file, new Faults()));
    }

    @Test
    void anotherEncodingIsPointedAt() throws IOException {
        Path file = file("title: x\nroom: 20 \u00b0C\n".getBytes(StandardCharsets.ISO_8859_1));
        Faults faults = new Faults();
        assertEquals(Optional.empty(), SourceText.of(file, faults));
        assertEquals(
                "[2:10: the text here is not UTF-8; save the file as UTF-8]",
                faults.inOrder().toString());
    }

    @Test
    void sixteenBitEncodingsAreRefused() throws IOException {
        Faults faults = new Faults();
        assertEquals(Optional.empty(), SourceText.of(file("title: x".getBytes(StandardCharsets.UTF_16)), faults));
        assertTrue(faults.inOrder().toString().contains("save the file as UTF-8"));
    }

    @Test
    void aHundredMegabytesAreNotRead() throws IOException {
        Path file = folder.resolve("large.yaml");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(100_000_000);
        }
        FileSystemException refusal = assertThrows(FileSystemException.class, () -> SourceText.of(file, new Faults()));
        assertEquals("this is larger than 256 KiB; a scenario is about a page of text", refusal.getReason());
        assertEquals(file.toString(), refusal.getFile());
    }

    @Test
    void foldersAndMissingFilesAreTold() {
        FileSystemException refusal =
                assertThrows(FileSystemException.class, () -> SourceText.of(folder, new Faults()));
        assertEquals("this is a folder, not a file", refusal.getReason());
        Path missing = folder.resolve("no.yaml");
        assertThrows(NoSuchFileException.class, () -> SourceText.of(missing, new Faults()));
    }

    private Path file(byte[] content) throws IOException {
        return Files.write(folder.resolve("file.yaml"), content);
    }
}
