package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResultFolderTest {

    @TempDir
    private Path temporary;

    @Test
    void filesAreWrittenAndReplaced() throws IOException {
        Path folder = temporary.resolve("a/b");
        ResultFolder.at(folder).write(List.of(text("one.txt", "1"), text("two.txt", "2")));
        ResultFolder.at(folder).write(List.of(text("one.txt", "new")));
        assertEquals("new", Files.readString(folder.resolve("one.txt")));
        assertEquals(List.of("one.txt", "two.txt"), names(folder));
    }

    @Test
    void aFailureMidwayLeavesNothingBehind() throws IOException {
        Path folder = temporary.resolve("new/folder");
        OutputException failure = assertThrows(
                OutputException.class,
                () -> ResultFolder.at(folder)
                        .write(List.of(
                                text("one.txt", "1"), failing("two.txt", new IOException("No space left on device")))));
        assertEquals("cannot write " + folder.resolve("two.txt") + ": the disk is full", failure.getMessage());
        assertEquals(List.of(), names(temporary));
    }

    @Test
    void aFailureMidwayKeepsEarlierResults() throws IOException {
        ResultFolder.at(temporary).write(List.of(text("one.txt", "old"), text("two.txt", "old")));
        assertThrows(
                OutputException.class,
                () -> ResultFolder.at(temporary)
                        .write(List.of(
                                text("one.txt", "new"),
                                failing("two.txt", new UncheckedIOException(new IOException("gone"))))));
        assertEquals("old", Files.readString(temporary.resolve("one.txt")));
        assertEquals(List.of("one.txt", "two.txt"), names(temporary));
    }

    @Test
    void aNameThatCannotBeGivenKeepsEarlierResults() throws IOException {
        ResultFolder.at(temporary).write(List.of(text("one.txt", "old"), text("three.txt", "old")));
        Path folder = temporary;
        ResultFile robbed =
                ResultFile.of("four.txt", out -> Files.delete(folder.resolve(WorkFolder.NAME + "/new/three.txt")));
        OutputException failure = assertThrows(
                OutputException.class,
                () -> ResultFolder.at(folder)
                        .write(List.of(text("one.txt", "1"), text("two.txt", "2"), text("three.txt", "3"), robbed)));
        assertTrue(failure.getMessage().startsWith("cannot write " + folder.resolve("three.txt") + ": "));
        assertEquals(List.of("one.txt", "three.txt"), names(folder));
        assertEquals("old", Files.readString(folder.resolve("one.txt")));
        assertEquals("old", Files.readString(folder.resolve("three.txt")));
    }

    @Test
    void aFailureThatAWriterKeepsToItselfIsNoticed() throws IOException {
        IOException full = new IOException("No space left on device");
        OutputStream disk = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw full;
            }
        };
        ResultFile deaf = ResultFile.of("table.txt", out -> {
            PrintStream printing = new PrintStream(out, true, StandardCharsets.UTF_8);
            printing.print("a table");
            printing.flush();
        });
        assertEquals(full, assertThrows(IOException.class, () -> deaf.writeTo(disk)));
    }

    @Test
    void whatACommandReadsIsNotReplaced() throws IOException {
        Path log = Files.writeString(temporary.resolve("readings.csv"), "mine");
        Path detour = temporary.resolve("x/../readings.csv");
        Files.createDirectory(temporary.resolve("x"));
        OutputException failure = assertThrows(
                OutputException.class,
                () -> ResultFolder.at(temporary)
                        .sparing(List.of(detour))
                        .write(List.of(text("one.txt", "1"), text("readings.csv", "2"))));
        assertTrue(failure.getMessage().startsWith(log + " is what this command reads"), failure::getMessage);
        assertEquals("mine", Files.readString(log));
        assertEquals(List.of("readings.csv", "x"), names(temporary));
    }

    @Test
    void anInterruptionLeavesNothingBehindAndLetsNothingFollow() throws IOException {
        Path folder = temporary.resolve("new/folder");
        try (FileTransaction pending = ResultFolder.at(folder).reserve()) {
            pending.write(text("one.txt", "1"));
            pending.interrupt();
            assertEquals(List.of(), names(temporary));
            assertThrows(OutputException.class, () -> pending.write(text("two.txt", "2")));
            assertThrows(OutputException.class, pending::commit);
        }
        assertEquals(List.of(), names(temporary));
    }

    @Test
    void anInterruptionAsksTheWorkToStopAndMayWaitForItsFiles() throws Exception {
        FileTransaction pending = ResultFolder.at(temporary).awaited().reserve();
        assertFalse(pending.isInterrupted());
        Thread interrupting = new Thread(pending::interrupt);
        interrupting.start();
        while (!pending.isInterrupted()) {
            Thread.onSpinWait();
        }
        pending.write(text("one.txt", "1"));
        pending.commit();
        assertTrue(interrupting.isAlive(), "waits until everything is written and shown");
        pending.close();
        interrupting.join();
        assertEquals(List.of("one.txt"), names(temporary));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "..", "../x", "/x", "a/../../b", "a/b", "a\u0000b"})
    void aFileOfResultsHasAPlainName(String name) {
        assertThrows(IllegalArgumentException.class, () -> text(name, "1"));
    }

    @Test
    void whatAReaderHasChangedIsKept() throws IOException {
        List<ResultFile> files = List.of(
                text("page.html", "1"),
                text("house.yaml", "1").toBeChanged(),
                text("other.yaml", "1").toBeChanged());
        assertEquals(List.of(), ResultFolder.at(temporary).write(files));
        Files.writeString(temporary.resolve("page.html"), "mine");
        Files.writeString(temporary.resolve("house.yaml"), "mine");
        assertEquals(List.of("house.yaml"), ResultFolder.at(temporary).write(files));
        assertEquals("1", Files.readString(temporary.resolve("page.html")));
        assertEquals("mine", Files.readString(temporary.resolve("house.yaml")));
    }

    @Test
    void aComplaintIsOneLineWhateverAFolderIsCalled() throws IOException {
        Path file = Files.writeString(temporary.resolve("a\nb"), "mine");
        OutputException failure =
                assertThrows(OutputException.class, () -> ResultFolder.at(file).write(List.of(text("one.txt", "1"))));
        assertEquals(temporary.resolve("a?b") + " is a file; results need a folder there", failure.getMessage());
    }

    @Test
    void aProgrammingErrorLeavesNothingBehindEither() throws IOException {
        Path folder = temporary.resolve("new");
        ResultFile broken = ResultFile.of("two.txt", out -> {
            throw new IllegalStateException("broken");
        });
        assertThrows(
                IllegalStateException.class,
                () -> ResultFolder.at(folder).write(List.of(text("one.txt", "1"), broken)));
        assertEquals(List.of(), names(temporary));
    }

    @Test
    void aFileInPlaceOfTheFolderIsTold() throws IOException {
        Path file = Files.writeString(temporary.resolve("file"), "mine");
        OutputException failure =
                assertThrows(OutputException.class, () -> ResultFolder.at(file).write(List.of(text("one.txt", "1"))));
        assertEquals(file + " is a file; results need a folder there", failure.getMessage());
        assertThrows(
                OutputException.class,
                () -> ResultFolder.at(file.resolve("below")).write(List.of(text("one.txt", "1"))));
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void aFolderInPlaceOfAFileIsTold() throws IOException {
        Path inTheWay = Files.createDirectory(temporary.resolve("one.txt"));
        OutputException failure = assertThrows(
                OutputException.class, () -> ResultFolder.at(temporary).write(List.of(text("one.txt", "1"))));
        assertEquals(inTheWay + " is a folder; a file of results belongs there", failure.getMessage());
        assertEquals(List.of("one.txt"), names(temporary));
    }

    @Test
    void aLinkDoesNotLeadOutOfTheFolder() throws IOException {
        Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
        Path out = Files.createDirectory(temporary.resolve("out"));
        Files.createSymbolicLink(out.resolve("house"), elsewhere);
        OutputException failure = assertThrows(
                OutputException.class, () -> ResultFolder.inside(out, "house").write(List.of(text("one.txt", "1"))));
        assertTrue(failure.getMessage().contains("is a link that leads out of"), failure::getMessage);
        assertEquals(List.of(), names(elsewhere));
    }

    /** Contract: a folder inside another stays there by its name, and nothing is made before that is known. */
    @ParameterizedTest
    @ValueSource(strings = {"", ".", "..", "../yq", "a/b", "/yq", "a\0b"})
    void aFolderInsideHasAPlainName(String name) throws IOException {
        Path parent = temporary.resolve("out2/q");
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> ResultFolder.inside(parent, name));
        assertTrue(refusal.getMessage().endsWith(" is not that of a folder in a folder"), refusal::getMessage);
        assertEquals(List.of(), names(temporary));
    }

    @Test
    void aLinkInPlaceOfAFileIsReplacedAndNotFollowed() throws IOException {
        Path victim = Files.writeString(temporary.resolve("victim"), "mine");
        Path out = Files.createDirectory(temporary.resolve("out"));
        Files.createSymbolicLink(out.resolve("one.txt"), victim);
        ResultFolder.at(out).write(List.of(text("one.txt", "1")));
        assertEquals("mine", Files.readString(victim));
        assertFalse(Files.isSymbolicLink(out.resolve("one.txt")));
    }

    @Test
    void theFolderTheUserNamesMayBeALink() throws IOException {
        Path real = Files.createDirectory(temporary.resolve("real"));
        Path link = Files.createSymbolicLink(temporary.resolve("link"), real);
        ResultFolder.at(link).write(List.of(text("one.txt", "1")));
        ResultFolder.inside(link, "house").write(List.of(text("two.txt", "2")));
        assertEquals(List.of("house", "one.txt"), names(real));
    }

    @Test
    void aLinkToNowhereIsLeftAlone() throws IOException {
        Path link = Files.createSymbolicLink(temporary.resolve("link"), temporary.resolve("nowhere"));
        OutputException failure =
                assertThrows(OutputException.class, () -> ResultFolder.at(link).write(List.of(text("one.txt", "1"))));
        assertEquals(link + " is a link that leads nowhere; results need a folder there", failure.getMessage());
        assertTrue(Files.exists(link, LinkOption.NOFOLLOW_LINKS));
    }

    private static ResultFile text(String name, String content) {
        return ResultFile.ofText(name, out -> out.append(content));
    }

    private static ResultFile failing(String name, Exception failure) {
        return ResultFile.of(name, out -> {
            out.write("half a f".getBytes(StandardCharsets.US_ASCII));
            if (failure instanceof IOException io) {
                throw io;
            }
            throw (UncheckedIOException) failure;
        });
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
