package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.scenarios.cli.EveryCommand;
import io.github.heatswell.scenarios.cli.Outcome;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where nothing can be written, nothing is lost, one line says why, and the status says so too. */
@Order(1)
class WritingTest {

    private static final String NOT_WRITTEN = "4";

    @TempDir
    private Path temporary;

    @Test
    void noCommandLeavesHalfAFile() throws Exception {
        assumeTrue(Child.works("/bin/sh", "-c", "ulimit -f 1"), "there is no shell here that limits the size of files");
        Path out = temporary.resolve("out");
        EveryCommand.earlier(out);
        Path readings = EveryCommand.readings(temporary);
        Map<String, String> before = EveryCommand.contents(temporary);
        Child.Ended ended = Child.run(Child.behind(
                List.of("/bin/sh", "-c", "ulimit -f 1; exec \"$@\"", "sh"),
                Child.java(WritingProbe.class, out.toString(), readings.toString())));
        Set<String> seen = new HashSet<>();
        ended.out().lines().forEach(line -> {
            String[] parts = line.split("\\|");
            seen.add(parts[0]);
            assertEquals(NOT_WRITTEN, parts[1], line);
            assertEquals(3, parts.length, line);
            assertTrue(parts[2].matches(".*cannot write .*: .+"), line);
        });
        assertEquals(EveryCommand.lines(out, readings).keySet(), seen, ended.err());
        Map<String, String> after = EveryCommand.contents(temporary);
        // The first answers of the interview did fit, and stay for the next one.
        String kept = after.remove(
                temporary.relativize(out.resolve("my-house.partial.yaml")).toString());
        assertTrue(kept.contains("\n#: title = Mill cottage, as answered\n"), kept);
        assertEquals(before, after);
    }

    /** One command for each way in which commands write. */
    @ParameterizedTest
    @ValueSource(strings = {"run", "compare", "spread", "interview"})
    void noCommandTakesAFileForAFolder(String name) throws Exception {
        Path readings = EveryCommand.readings(temporary);
        Path file = Files.writeString(temporary.resolve("file"), "mine");
        Map<String, String> before = EveryCommand.contents(temporary);
        Outcome outcome =
                EveryCommand.execute(EveryCommand.lines(file, readings).get(name));
        assertEquals(4, outcome.status());
        assertTrue(outcome.err().endsWith(file + " is a file; results need a folder there\n"), outcome.err());
        assertEquals(before, EveryCommand.contents(temporary));
    }

    /** A small disk of its own, mounted where only the child sees it: first it is full, then it can only be read. */
    @Test
    void aFullDiskAndOneThatCanOnlyBeReadAreNamed() throws Exception {
        String disk = Files.createDirectory(temporary.resolve("disk")).toString();
        String mount = "mount -t tmpfs -o size=64k disk '" + disk + "'";
        assumeTrue(Child.works("unshare", "-Urm", "sh", "-c", mount), "no disk can be mounted here");
        String script = mount + "; cd '" + disk + "'; echo mine >report.html; head -c 40000 /dev/zero >filling; \"$@\""
                + " >&2; echo $?; mount -o remount,ro '" + disk + "'; \"$@\" >&2; echo $?; ls -A; cat report.html";
        Child.Ended ended = Child.run(Child.behind(
                List.of("unshare", "-Urm", "sh", "-c", script, "sh"),
                Child.heatswell("run", "orchard-lodge", "--out", disk)));
        assertEquals("4\n4\nfilling\nreport.html\nmine\n", ended.out());
        List<String> complaints = ended.err()
                .lines()
                .filter(line -> line.contains("cannot write"))
                .toList();
        assertEquals(2, complaints.size(), ended.err());
        assertTrue(complaints.get(0).matches("orchard-lodge: cannot write .*/disk/.*: the disk is full"));
        assertTrue(complaints.get(1).matches("orchard-lodge: cannot write .*/disk: Read-only file system"));
    }

    @Test
    void aFolderWithoutPermissionIsNamed() throws Exception {
        assumeTrue(
                Files.getFileStore(temporary).supportsFileAttributeView("posix"), "there are no such permissions here");
        List<String> bound = List.of();
        if (System.getProperty("user.name").equals("root")) {
            bound = List.of("setpriv", "--bounding-set=-dac_override,-dac_read_search");
            assumeTrue(
                    Child.works("setpriv", bound.get(1), "true"), "permissions do not bind root, nor can it be bound");
        }
        Path out = temporary.resolve("out");
        EveryCommand.earlier(out);
        Map<String, String> before = EveryCommand.contents(out);
        Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            Child.Ended ended =
                    Child.run(Child.behind(bound, Child.heatswell("run", "orchard-lodge", "--out", out.toString())));
            assertEquals("orchard-lodge: cannot write " + out + ": there is no permission\n", ended.err());
            assertEquals(4, ended.status());
        } finally {
            Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        assertEquals(before, EveryCommand.contents(out));
    }
}
