package io.github.heatswell.scenarios.document;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is no file of text is refused before it is opened: a pipe that nobody writes into would be waited for. */
class ReadableFileTest {

    @TempDir
    Path folder;

    @Test
    void filesAndLinksToFilesPass() throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), "");
        assertDoesNotThrow(() -> SourceText.check(file));
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
        assertDoesNotThrow(() -> SourceText.check(link));
    }

    @Test
    void whatAShellHandsOverPasses() {
        assertDoesNotThrow(() -> SourceText.check(Path.of("/dev/stdin")));
        assertDoesNotThrow(() -> SourceText.check(Path.of("/dev/fd/63")));
    }

    @Test
    void aPipeIsNotWaitedFor() throws Exception {
        Path pipe = folder.resolve("pipe.yaml");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "no way to make a pipe");
        assertEquals(
                0,
                new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor());
        assertEquals("this is a pipe or a device, not a text file; give a file, or /dev/stdin", refusal(pipe));
    }

    @Test
    void aLinkToNothingIsCalledOne() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), Path.of("gone.yaml"));
        assertEquals("this is a link to 'gone.yaml', which does not exist", refusal(link));
        Path round = Files.createSymbolicLink(folder.resolve("round.yaml"), Path.of("about.yaml"));
        Files.createSymbolicLink(folder.resolve("about.yaml"), Path.of("round.yaml"));
        assertEquals("this is a link to 'about.yaml', a link that leads to no file either", refusal(round));
    }

    @Test
    void aFolderAndNothingAreCalledWhatTheyAre() {
        assertEquals("this is a folder, not a file", refusal(folder));
        Path nothing = folder.resolve("nothing.yaml");
        assertThrows(NoSuchFileException.class, () -> SourceText.check(nothing));
    }

    private static String refusal(Path file) {
        return assertThrows(FileSystemException.class, () -> SourceText.check(file))
                .getReason();
    }
}
