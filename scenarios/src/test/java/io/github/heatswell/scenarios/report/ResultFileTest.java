package io.github.heatswell.scenarios.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Files whose contents are made at the same time are the same files. */
class ResultFileTest {

    @Test
    void keepNameAndContentAndAreMadeOnce() throws IOException {
        AtomicInteger made = new AtomicInteger();
        List<ResultFile> files = ResultFile.sideBySide(List.of(
                ResultFile.ofText("a.txt", out -> out.append("a" + made.incrementAndGet())),
                ResultFile.of("b.bin", out -> out.write(7))));
        assertEquals(0, made.get());
        assertEquals(
                List.of("a.txt", "b.bin"), files.stream().map(ResultFile::name).toList());
        assertEquals("\u0007", written(files.get(1)));
        assertEquals("a1", written(files.get(0)));
        assertEquals("a1", written(files.get(0)));
    }

    @Test
    void aFailureIsThatOfItsFile() throws IOException {
        List<ResultFile> files = ResultFile.sideBySide(
                List.of(ResultFile.ofText("good.txt", out -> out.append("good")), ResultFile.ofText("bad.txt", out -> {
                    throw new IOException("no room");
                })));
        assertEquals("good", written(files.get(0)));
        assertEquals(
                "no room",
                assertThrows(IOException.class, () -> written(files.get(1))).getMessage());
    }

    /** Whether a machine has a second processor to do so does not matter to what is written. */
    @Test
    void areMadeAtTheSameTimeWhereThereAreProcessors() throws IOException {
        int together = Math.min(2, Runtime.getRuntime().availableProcessors());
        CountDownLatch begun = new CountDownLatch(together);
        ResultFile.Text meets = out -> {
            begun.countDown();
            try {
                out.append(begun.await(1, TimeUnit.MINUTES) ? "met" : "alone");
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
        };
        List<ResultFile> files =
                ResultFile.sideBySide(List.of(ResultFile.ofText("a.txt", meets), ResultFile.ofText("b.txt", meets)));
        assertEquals("met", written(files.get(0)));
        assertEquals("met", written(files.get(1)));
    }

    private static String written(ResultFile file) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        file.writeTo(bytes);
        return bytes.toString(UTF_8);
    }
}
