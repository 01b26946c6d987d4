package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The folder inside a folder of results in which one program at a time prepares its files. The system releases its lock
 * even if the program is killed, so that the next program can tell what is left over from what is in use.
 */
final class WorkFolder {

    /** What the folder is called. */
    static final String NAME = ".heatswell-unfinished";

    private static final String LOCK = "lock";
    private static final int MAX_TRIES = 10;

    private final Path path;
    private final FileChannel lock;

    private WorkFolder(Path path, FileChannel lock) {
        this.path = path;
        this.lock = lock;
    }

    /**
     * Takes the work folder of a folder, whether it is new or was left over.
     *
     * @throws OutputException if another program holds it
     */
    static WorkFolder take(Path folder) throws IOException {
        Path path = folder.resolve(NAME);
        for (int i = 0; i < MAX_TRIES; i++) {
            try {
                makeFolder(path);
                makeFile(path.resolve(LOCK));
                FileChannel lock = lock(path.resolve(LOCK));
                if (lock != null) {
                    return new WorkFolder(path, lock);
                }
            } catch (NoSuchFileException e) {
                // Another program has just finished and taken the folder away.
                continue;
            }
        }
        throw new OutputException(
                "another Heatswell is writing into " + folder + "; nothing was written there, try again", null);
    }

    private static void makeFolder(Path path) throws IOException {
        try {
            Files.createDirectory(path);
        } catch (FileAlreadyExistsException e) {
            if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS) || Files.isSymbolicLink(path)) {
                throw new OutputException(path + " is in the way; Heatswell prepares its files there", e);
            }
        }
    }

    private static void makeFile(Path path) throws IOException {
        try {
            Files.createFile(path);
        } catch (FileAlreadyExistsException e) {
            // It was left over, or belongs to another program, which holds its lock.
            return;
        }
    }

    /** The locked file; null if another program holds it or took it away meanwhile. */
    private static FileChannel lock(Path file) throws IOException {
        Object before = key(file);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        boolean mine = false;
        try {
            mine = tryLock(channel) && Objects.equals(before, key(file));
            return mine ? channel : null;
        } finally {
            if (!mine) {
                channel.close();
            }
        }
    }

    private static boolean tryLock(FileChannel channel) {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            // This file system has no locks, so nobody can hold one.
            return true;
        }
    }

    private static Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                .fileKey();
    }

    /** A folder inside. */
    Path inside(String name) {
        return path.resolve(name);
    }

    /** Makes a folder inside if it is missing. */
    Path make(String name) throws IOException {
        makeFolder(inside(name));
        return inside(name);
    }

    /** Takes a folder inside away, with its files. What cannot be deleted stays; it does no harm. */
    void clear(String name) {
        try {
            files(name).forEach(file -> delete(inside(name).resolve(file)));
        } catch (IOException e) {
            return;
        }
        delete(inside(name));
    }

    /** The names of the files of a folder inside; none if there is no such folder. */
    List<String> files(String name) throws IOException {
        if (!Files.isDirectory(inside(name), LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(inside(name))) {
            return files.map(file -> inside(name).relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    /** Gives the folder up. It goes away if it is empty. */
    void release() {
        delete(path.resolve(LOCK));
        delete(path);
        try {
            lock.close();
        } catch (IOException e) {
            // The system releases it at the end of the program.
            return;
        }
    }

    private static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // It takes room, and the next run tries again.
            return;
        }
    }
}
