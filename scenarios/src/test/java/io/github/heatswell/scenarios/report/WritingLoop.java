package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.scenarios.Parent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.CRC32;

/** Writes sets of files into a folder, in a Java machine that a test ends with a signal. */
public final class WritingLoop {

    /** The files of a set. */
    public static final List<String> NAMES = List.of("a.csv", "b.png", "c.html");

    /** How many files move when a set takes the place of another: the folder they are in, the old ones and the new ones. */
    public static final int MOVES = 1 + 2 * NAMES.size();

    /** How often it tries to write after the end of the program has begun, before it lets that happen. */
    private static final int LATE = 3;

    private static final int SIZE = 200_000;

    private WritingLoop() {}

    /**
     * Takes the folder, and {@code loop}, or {@code move} or {@code file} with a number: where writing the second set stops
     * until a line comes in.
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        if (arguments[1].equals("loop")) {
            loop(folder);
            return;
        }
        ResultFolder.at(folder).write(set(1, -1));
        int point = Integer.parseInt(arguments[2]);
        boolean moving = arguments[1].equals("move");
        int[] moves = new int[1];
        try (FileTransaction transaction = FileTransaction.begin(ResultFolder.at(folder), (from, to) -> {
            if (moving && moves[0]++ == point) {
                pause();
            }
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        })) {
            for (ResultFile file : set(2, moving ? -1 : point)) {
                transaction.write(file);
            }
            transaction.commit();
        }
        pause();
    }

    /** Goes on until its parent is gone, also when the program is being ended. */
    private static void loop(Path folder) {
        Parent.outlivedByNone();
        CountDownLatch late = new CountDownLatch(LATE);
        AtomicBoolean ending = new AtomicBoolean();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            ending.set(true);
            try {
                late.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }));
        for (int number = 1; ; number++) {
            boolean isLate = ending.get();
            try {
                ResultFolder.at(folder).write(set(number, -1));
                System.out.println(isLate ? "written late" : "written");
            } catch (OutputException e) {
                System.out.println(e.getMessage());
            }
            if (isLate) {
                late.countDown();
            }
        }
    }

    private static void pause() throws IOException {
        System.out.println("here");
        System.in.read();
    }

    private static List<ResultFile> set(int number, int pausing) {
        List<ResultFile> files = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++) {
            byte[] content = content(number, NAMES.get(i));
            boolean pauses = i == pausing;
            files.add(ResultFile.of(NAMES.get(i), out -> {
                out.write(content, 0, SIZE / 2);
                if (pauses) {
                    out.flush();
                    pause();
                }
                out.write(content, SIZE / 2, content.length - SIZE / 2);
            }));
        }
        return files;
    }

    private static byte[] content(int number, String name) {
        String text = (number + "," + name + ",").repeat(SIZE / 4).substring(0, SIZE);
        return (number + "\n" + text + "\n" + checksum(text)).getBytes(StandardCharsets.US_ASCII);
    }

    private static long checksum(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.US_ASCII));
        return sum.getValue();
    }

    /** The numbers of the sets that the files in a folder are of, each of which must be complete in itself. */
    public static Set<String> sets(Path folder) throws IOException {
        Set<String> sets = new TreeSet<>();
        for (String name : NAMES) {
            if (Files.exists(folder.resolve(name))) {
                List<String> lines = Files.readAllLines(folder.resolve(name));
                assertEquals(Long.toString(checksum(lines.get(1))), lines.get(2), name);
                sets.add(lines.get(0));
            }
        }
        return sets;
    }
}
