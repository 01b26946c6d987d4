package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Files that appear in a folder together or not at all. They are written into a {@link WorkFolder}. Once all are complete,
 * the files of their names move out of the folder, and only then do the new ones move in: the results of two runs never lie
 * side by side.
 *
 * <p>A signal to end the program removes what is unfinished, or waits while files move. Once the program is being ended, no
 * transaction begins. If the program is killed, the next transaction in the folder removes what is unfinished, and finishes
 * a move.
 */
final class FileTransaction implements AutoCloseable {

    /** Files that are being written. */
    private static final String NEW = "new";

    /** The same folder once all of them are complete. */
    private static final String READY = "ready";

    /** Where the files of their names move to. */
    private static final String OLD = "old";

    private final Path folder;
    private final Mover mover;
    private final long patience;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread onShutdown = new Thread(this::interrupt);
    private final List<String> names = new ArrayList<>();
    private WorkFolder work;
    /** Whether nothing may be written any more: everything has its name, or the program is being ended. */
    private boolean over;

    /** Gives a file another name. */
    @FunctionalInterface
    interface Mover {
        /** Moves a file within one file system, in place of the file that has the name. */
        void move(Path from, Path to) throws IOException;
    }

    private record Move(Path from, Path to) {}

    private FileTransaction(Path folder, long patience, Mover mover) {
        this.folder = folder;
        this.patience = patience;
        this.mover = mover;
    }

    /**
     * Begins to write.
     *
     * @param folder where to; made if it is missing
     * @param boundary the folder it must lie in, whatever links say
     * @param patience how long (s) the end of the program waits for the files, before it removes them
     * @throws OutputException if another program writes there, or the program is being ended
     */
    static FileTransaction begin(Path folder, Path boundary, long patience) throws IOException {
        return begin(folder, boundary, patience, FileTransaction::replace);
    }

    /** Begins to write, with another way to move files. */
    static FileTransaction begin(Path folder, Path boundary, long patience, Mover mover) throws IOException {
        FileTransaction transaction = new FileTransaction(folder, patience, mover);
        try {
            Runtime.getRuntime().addShutdownHook(transaction.onShutdown);
        } catch (IllegalStateException e) {
            throw transaction.interrupted();
        }
        boolean begun = false;
        try {
            transaction.open(boundary);
            begun = true;
            return transaction;
        } finally {
            if (!begun) {
                transaction.close();
            }
        }
    }

    private synchronized void open(Path boundary) throws IOException {
        refuseIfOver();
        work = WorkFolder.take(folder, boundary);
        finishKilled();
        clear();
        work.make(NEW);
    }

    /** Finishes the moves of a program that was killed. If that fails they wait for the next run. */
    private void finishKilled() throws IOException {
        over = true;
        for (Move move : swap(work.files(READY))) {
            mover.move(move.from(), move.to());
        }
        over = false;
    }

    /** Writes a file that gets its name later. */
    void write(ResultFile file) throws OutputException {
        try (OutputStream out = create(file.name())) {
            file.writeTo(out);
        } catch (IOException | UncheckedIOException e) {
            throw OutputException.cannotWrite(folder.resolve(file.name()), e);
        }
    }

    private synchronized OutputStream create(String name) throws IOException {
        refuseIfOver();
        names.add(name);
        return Files.newOutputStream(
                work.inside(NEW).resolve(name), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /** Gives every file its name, or none. */
    synchronized void commit() throws OutputException {
        refuseIfOver();
        try {
            List<Move> moves = new ArrayList<>(List.of(new Move(work.inside(NEW), work.inside(READY))));
            moves.addAll(swap(names));
            move(moves);
        } catch (IOException e) {
            throw OutputException.cannotWrite(folder, e);
        }
        finish();
    }

    /** How the files of these names move in, after those that have the names move out. */
    private List<Move> swap(List<String> files) throws IOException {
        List<Move> moves = new ArrayList<>();
        for (String name : files) {
            if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                moves.add(new Move(folder.resolve(name), work.make(OLD).resolve(name)));
            }
        }
        for (String name : files) {
            moves.add(new Move(work.inside(READY).resolve(name), folder.resolve(name)));
        }
        return moves;
    }

    /** Makes all moves or none. */
    private void move(List<Move> moves) throws OutputException {
        int done = 0;
        // Until this is settled nothing may be removed.
        over = true;
        try {
            for (Move move : moves) {
                mover.move(move.from(), move.to());
                done++;
            }
        } catch (IOException e) {
            undo(moves.subList(0, done));
            Path name = moves.get(done).to().getFileName();
            throw OutputException.cannotWrite(folder.resolve(name), e);
        } catch (RuntimeException | Error e) {
            undo(moves.subList(0, done));
            throw e;
        }
        over = false;
    }

    private void undo(List<Move> done) throws OutputException {
        for (int i = done.size() - 1; i >= 0; i--) {
            try {
                mover.move(done.get(i).to(), done.get(i).from());
            } catch (IOException e) {
                String failed =
                        OutputException.cannotWrite(done.get(i).from(), e).getMessage();
                throw new OutputException(
                        failed + "; what was there before is in " + work.inside(OLD) + " until the next run", e);
            }
        }
        over = false;
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private void refuseIfOver() throws OutputException {
        if (over) {
            throw interrupted();
        }
    }

    private OutputException interrupted() {
        return new OutputException("interrupted; nothing is written into " + folder, null);
    }

    /** What happens when the program is being ended. */
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
        synchronized (this) {
            release();
        }
        closed.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(onShutdown);
        } catch (IllegalStateException e) {
            // The program is being ended and the hook runs already.
            return;
        }
    }

    /** Removes what is unfinished, with the folders made for it. */
    private synchronized void giveUp() {
        WorkFolder unfinished = work;
        if (!over) {
            finish();
            if (unfinished != null) {
                unfinished.takeAway();
            }
        }
    }

    private void finish() {
        over = true;
        if (work != null) {
            clear();
        }
        release();
    }

    private void clear() {
        List.of(NEW, READY, OLD).forEach(work::clear);
    }

    private void release() {
        if (work != null) {
            work.release();
            work = null;
        }
    }
}
