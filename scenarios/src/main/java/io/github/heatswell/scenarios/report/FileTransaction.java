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
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Files that appear in a folder together or not at all. They are written into a {@link WorkFolder}. Once all are complete,
 * the files of their names move out of the folder, and only then do the new ones move in: the results of two runs are never
 * mixed. Nobody else writes into the folder meanwhile.
 *
 * <p>A signal to end the program removes what is unfinished, or waits while files move. Once the program is being ended, no
 * transaction begins. If the program is killed, the next transaction in the folder removes what is unfinished, and finishes
 * a move.
 */
public final class FileTransaction implements AutoCloseable {

    private final ResultFolder place;
    private final Mover mover;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread onShutdown = new Thread(this::interrupt);
    private final List<String> names = new ArrayList<>();
    private final Deque<Move> moved = new ArrayDeque<>();
    private volatile boolean interrupted;
    private WorkFolder work;
    /** Whether nothing may be written any more: everything has its name, or the program is being ended. */
    private boolean over;

    /** Gives a file another name within one file system, in place of the file that has the name. */
    @FunctionalInterface
    interface Mover {
        void move(Path from, Path to) throws IOException;
    }

    private record Move(Path from, Path to) {}

    private FileTransaction(ResultFolder place, Mover mover) {
        this.place = place;
        this.mover = mover;
    }

    /** Begins to write; refused if another program writes there, or this one is being ended. */
    static FileTransaction begin(ResultFolder place) throws OutputException {
        return begin(place, FileTransaction::replace);
    }

    /** Begins to write, with another way to move files. */
    static FileTransaction begin(ResultFolder place, Mover mover) throws OutputException {
        FileTransaction transaction = new FileTransaction(place, mover);
        boolean begun = false;
        try {
            transaction.open();
            begun = true;
            return transaction;
        } catch (IOException e) {
            throw OutputException.cannotWrite(place.path(), e);
        } finally {
            if (!begun) {
                transaction.close();
            }
        }
    }

    private synchronized void open() throws IOException {
        try {
            Runtime.getRuntime().addShutdownHook(onShutdown);
        } catch (IllegalStateException e) {
            throw interrupted();
        }
        work = WorkFolder.take(place);
        // What a killed program left half moved is moved first, or waits for the next run.
        over = true;
        swap(work.files(WorkFolder.READY));
        over = false;
        work.clear();
        work.make(WorkFolder.NEW);
    }

    /**
     * Where the folder is.
     *
     * @return the path as it was given
     */
    public Path path() {
        return place.path();
    }

    /**
     * Whether the user has asked for the end of the program, so that long work should stop and be written.
     *
     * @return true from then on
     */
    public boolean isInterrupted() {
        return interrupted;
    }

    /**
     * Writes files into the folder, once, as {@link ResultFolder#write} does.
     *
     * @param files the files
     * @param completed is run once all of them are complete, before the first gets its name; if it throws, none does
     * @return the names of those that {@link ResultFile#toBeChanged were changed} since and are kept as they are
     * @throws IllegalArgumentException if two files have the same name; nothing is written then
     * @throws OutputException if a file cannot be written; the message says which and why
     */
    public List<String> write(List<ResultFile> files, Runnable completed) throws OutputException {
        place.refuseObstacles(files);
        List<String> kept = new ArrayList<>();
        for (ResultFile file : files) {
            if (file.isChangedIn(path())) {
                kept.add(file.name());
            } else {
                write(file);
            }
        }
        completed.run();
        commit();
        return kept;
    }

    /** Writes a file that gets its name later. */
    void write(ResultFile file) throws OutputException {
        try (OutputStream out = create(file.name())) {
            file.writeTo(out);
        } catch (IOException | UncheckedIOException e) {
            throw OutputException.cannotWrite(path().resolve(file.name()), e);
        }
    }

    private synchronized OutputStream create(String name) throws IOException {
        refuseIfOver();
        names.add(name);
        return Files.newOutputStream(
                work.inside(WorkFolder.NEW).resolve(name), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /** Gives every file its name, or none; until that is settled, nothing may be removed. */
    synchronized void commit() throws OutputException {
        refuseIfOver();
        over = true;
        boolean done = false;
        try {
            moved.clear();
            move(work.inside(WorkFolder.NEW), work.inside(WorkFolder.READY));
            swap(names);
            done = true;
        } catch (IOException e) {
            throw OutputException.cannotWrite(path(), e);
        } finally {
            if (!done) {
                undo();
            }
        }
        over = false;
        end();
    }

    /** The ready files move in, after those that have their names move out. */
    private void swap(List<String> ready) throws IOException {
        for (String name : ready) {
            if (Files.exists(path().resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                move(path().resolve(name), work.make(WorkFolder.OLD).resolve(name));
            }
        }
        for (String name : ready) {
            move(work.inside(WorkFolder.READY).resolve(name), path().resolve(name));
        }
    }

    private void move(Path from, Path to) throws OutputException {
        try {
            mover.move(from, to);
            moved.push(new Move(from, to));
        } catch (IOException e) {
            throw OutputException.cannotWrite(path().resolve(to.getFileName()), e);
        }
    }

    private void undo() throws OutputException {
        for (Move move : moved) {
            try {
                mover.move(move.to(), move.from());
            } catch (IOException e) {
                throw new OutputException(
                        OutputException.cannotWrite(move.from(), e).getMessage() + "; what was there before is in "
                                + work.inside(WorkFolder.OLD) + " until the next run",
                        e);
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
        return new OutputException("interrupted; nothing is written into " + path(), null);
    }

    /** What happens when the program is being ended. */
    void interrupt() {
        interrupted = true;
        try {
            if (closed.await(place.patience(), TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        end();
    }

    /** Removes what was not written completely. */
    @Override
    public void close() {
        end();
        closed.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(onShutdown);
        } catch (IllegalStateException e) {
            // The program is being ended and the hook runs already.
            return;
        }
    }

    /** Removes what is unfinished, unless moves could not be undone: the next run finishes those. */
    private synchronized void end() {
        if (work != null) {
            if (!over) {
                work.clear();
            }
            work.release();
            work = null;
        }
        over = true;
    }
}
