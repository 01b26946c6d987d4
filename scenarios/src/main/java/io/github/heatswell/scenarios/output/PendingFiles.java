package io.github.heatswell.scenarios.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Files under temporary names until all of them are complete. What is not published is removed, with the folders made for it,
 * also if the program is interrupted. While names are being given, an interruption waits.
 */
final class PendingFiles implements AutoCloseable {

    private final Path folder;
    private final NewFolder making;
    private final long patience;
    private final Map<Path, Path> targets = new LinkedHashMap<>();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread onInterrupt = new Thread(this::interrupt);
    /** Whether files can get no name any more, since they have got it or the program is being ended. */
    private boolean over;

    /**
     * Prepares to write.
     *
     * @param folder where to
     * @param patience how long (s) an interruption waits until the files are written, before it removes them
     */
    PendingFiles(Path folder, long patience) {
        this.folder = folder;
        this.making = new NewFolder(folder);
        this.patience = patience;
        try {
            Runtime.getRuntime().addShutdownHook(onInterrupt);
        } catch (IllegalStateException e) {
            // The program is being ended and waits for these files.
            return;
        }
    }

    /** Makes the folder if it is missing. */
    synchronized void open() throws IOException {
        refuseIfOver();
        making.make();
    }

    /** Writes a file under a temporary name. */
    void write(ResultFile file) throws OutputException {
        Path target = folder.resolve(file.name());
        try (OutputStream stream = create(target)) {
            SureStream out = new SureStream(new BufferedOutputStream(stream));
            file.writeTo(out);
            out.complete();
        } catch (IOException | UncheckedIOException e) {
            throw Reasons.cannotWrite(target, e);
        }
    }

    private synchronized OutputStream create(Path target) throws IOException {
        refuseIfOver();
        Path temporary = TemporaryName.beside(target);
        targets.put(temporary, target);
        return Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /** Gives every file its name, or none. */
    synchronized void publish() throws OutputException {
        refuseIfOver();
        new Exchange().publish(targets);
        over = true;
    }

    private void refuseIfOver() throws OutputException {
        if (over) {
            throw new OutputException("interrupted; nothing is written into " + folder, null);
        }
    }

    /** What happens when the program is interrupted. */
    void interrupt() {
        try {
            if (closed.await(patience, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        giveUp();
    }

    @Override
    public void close() {
        giveUp();
        closed.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(onInterrupt);
        } catch (IllegalStateException e) {
            // The program is being ended and the hook runs already.
            return;
        }
    }

    private synchronized void giveUp() {
        if (over) {
            return;
        }
        over = true;
        for (Path temporary : targets.keySet()) {
            try {
                Files.deleteIfExists(temporary);
            } catch (IOException e) {
                // Nothing more can be done for this one; the others may still go.
                continue;
            }
        }
        making.takeAway();
    }
}
