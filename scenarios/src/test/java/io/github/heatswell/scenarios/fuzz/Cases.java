package io.github.heatswell.scenarios.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.generated.Chance;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.TestReporter;

/**
 * Many mutated files, one after the other, and what each of them broke. The seed and the number of a case make it again: {@code
 * -Dfuzz.seed} and {@code -Dfuzz.first}; {@code -Dfuzz.cases} says how many there are.
 */
final class Cases {

    static final int COUNT = Integer.getInteger("fuzz.cases", 1_000);
    private static final long SEED = Long.getLong("fuzz.seed", 1);
    private static final int FIRST = Integer.getInteger("fuzz.first", 0);

    /** What no file may take longer than (s, processor time of its thread, so that a busy machine does not count). */
    private static final double LONGEST = 1;

    private static final int BATCH = 1_000;
    /** Far more than a batch takes that is sound: this only ends what would not end. */
    private static final Duration HANGING = Duration.ofMinutes(5);

    private final Path file;
    private final Mutations mutations;
    private final List<String> texts;
    private final List<String> broken = new ArrayList<>();
    private final AtomicInteger current = new AtomicInteger();
    private double slowest;
    private int slowestCase;

    /** What is done with a file. */
    interface Use {
        void of(Path file, Chance chance) throws IOException;
    }

    Cases(Path file, List<Mutation> mutations, List<String> texts) {
        this.file = file;
        this.mutations = new Mutations(mutations);
        this.texts = texts;
    }

    /** Uses all files. */
    void all(TestReporter reporter, Use use) {
        for (int from = FIRST; from < FIRST + COUNT; from += BATCH) {
            int first = from;
            int end = Math.min(from + BATCH, FIRST + COUNT);
            assertTimeoutPreemptively(HANGING, () -> batch(first, end, use), () -> "case " + current.get() + " hangs");
        }
        reporter.publishEntry(String.format(
                Locale.ROOT,
                "%d cases, %d broken, slowest case %d with %.3f s",
                COUNT,
                broken.size(),
                slowestCase,
                slowest));
        assertEquals(List.of(), broken.subList(0, Math.min(20, broken.size())), broken.size() + " are broken");
    }

    private void batch(int first, int end, Use use) throws IOException {
        for (int i = first; i < end; i++) {
            current.set(i);
            Chance chance = new Chance(SEED, i);
            Files.write(file, mutations.of(chance.of(texts), chance));
            try {
                use.of(file, chance);
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError unexpected) {
                StackTraceElement[] trace = unexpected.getStackTrace();
                broken("threw " + unexpected + (trace.length == 0 ? "" : " at " + trace[0]));
            }
        }
    }

    /** What reads a file. */
    interface Read<T> {
        T of(Path file) throws IOException;
    }

    /** Reads the file at hand and sees how long that takes. */
    <T> T timed(Read<T> read) throws IOException {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        try {
            return read.of(file);
        } finally {
            double taken = 1e-9 * (threads.getCurrentThreadCpuTime() - before);
            if (taken > slowest) {
                slowest = taken;
                slowestCase = current.get();
            }
            if (taken > LONGEST) {
                broken("took " + taken + " s");
            }
        }
    }

    /** Notes that the file at hand broke something. */
    void broken(String what) {
        broken.add("case " + current.get() + ": " + what);
    }

    /** Looks at a file that cannot be read at all: the only reason is its size. */
    void unread(IOException failure) throws IOException {
        boolean large = Files.size(file) > SourceText.MAX_SIZE
                && failure instanceof FileSystemException known
                && String.valueOf(known.getReason()).startsWith("this is larger than 256 KiB");
        if (!large) {
            broken("could not be read: " + failure);
        }
    }

    /** Makes sure that a command refused the file with a complaint and left nothing behind. */
    void refused(int status, String complaints) throws IOException {
        boolean plain = !complaints.isBlank()
                && complaints.lines().allMatch(line -> line.startsWith(file.toString()) || line.startsWith("... and "));
        if (status != 2 || !plain) {
            broken("status " + status + ": " + complaints);
        }
        try (var left = Files.list(file.getParent())) {
            if (left.count() != 1) {
                broken("left something behind");
            }
        }
    }
}
