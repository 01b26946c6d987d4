package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A lost report is an error; one that nobody wanted to read further is not. */
class StandardOutputTest {

    private static final Path FULL = Path.of("/dev/full");
    private static final Path SHELL = Path.of("/bin/sh");

    @TempDir
    private Path folder;

    @Test
    void theFirstFailureIsRememberedAndTheRestIsSilence() {
        OutputStream broken = new OutputStream() {
            private int asked;

            @Override
            public void write(int b) throws IOException {
                asked++;
                throw new IOException("failure " + asked);
            }
        };
        Heatswell.StandardOutput output = new Heatswell.StandardOutput(broken);
        assertEquals(Optional.empty(), output.trouble());
        output.write('a');
        output.write(new byte[] {1, 2}, 0, 2);
        // Where the tests' own output is a pipe, a failure counts as that of a reader who has left.
        assertTrue(output.trouble().stream().allMatch("failure 1"::equals));
    }

    @ParameterizedTest
    @CsvSource({"show orchard-lodge, 4", "--help, 4", "run quarry-row, 4"})
    void aReportThatDoesNotFitOnTheDiskIsNoSuccess(String arguments, int status) throws Exception {
        assumeTrue(Files.exists(FULL), "there is no /dev/full here");
        ProcessBuilder builder = new ProcessBuilder(Child.heatswell(in(folder, arguments)));
        Child.Ended ended =
                Child.end(builder.redirectOutput(new File(FULL.toString())).start());
        assertEquals(status, ended.status());
        assertEquals(1, ended.err().lines().count(), ended.err());
        assertTrue(ended.err().startsWith("heatswell: cannot write to standard output: "), ended.err());
        if (arguments.startsWith("run")) {
            assertTrue(Files.exists(folder.resolve("report.html")));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"list", "run quarry-row"})
    void aReaderWhoHasReadEnoughChangesNothing(String arguments) throws Exception {
        assumeTrue(Files.exists(SHELL), "there is no /bin/sh here to wait until nobody reads");
        List<String> waiting = List.of(SHELL.toString(), "-c", "read line; exec \"$@\"", "sh");
        Process process = new ProcessBuilder(Child.behind(waiting, Child.heatswell(in(folder, arguments)))).start();
        process.getInputStream().close();
        process.getOutputStream().write('\n');
        process.getOutputStream().close();
        String err = new String(process.getErrorStream().readAllBytes());
        assertEquals(arguments.equals("list") ? 0 : 3, process.waitFor());
        assertEquals("", err);
        assertEquals(arguments.startsWith("run"), Files.exists(folder.resolve("report.html")));
    }

    private static String[] in(Path folder, String arguments) {
        return (arguments.startsWith("run") ? arguments + " --out " + folder : arguments).split(" ");
    }
}
