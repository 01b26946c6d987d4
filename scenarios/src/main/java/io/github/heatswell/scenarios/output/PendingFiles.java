package io.github.heatswell.scenarios.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/**
 * Files under temporary names until all of them are complete. What is not published is removed, also if the program is
 * interrupted.
 */
final class PendingFiles implements AutoCloseable {

    private final Path folder;
    private final Map<Path, Path> targets = new LinkedHashMap<>();
    private final Thread onInterrupt = new Thread(this::removeAll);

    PendingFiles(Path folder) {
        this.folder = folder;
        try {
            Runtime.getRuntime().addShutdownHook(onInterrupt);
        } catch (IllegalStateException e) {
            // The program is being ended and waits for these files.
            return;
        }
    }

    /** Writes a file under a temporary name. */
    void write(ResultFile file) throws IOException {
        Path temporary = folder.resolve("." + file.name() + "." + UUID.randomUUID() + ".tmp");
        synchronized (targets) {
            targets.put(temporary, folder.resolve(file.name()));
        }
        try (OutputStream out = new BufferedOutputStream(
                Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            file.writeTo(out);
        }
    }

    /** Gives every file its name. */
    void publish() throws IOException {
        for (Path target : targets.values()) {
            if (Files.isDirectory(target)) {
                throw new OutputException(target + " is a folder; a file of results belongs there", null);
            }
        }
        for (Map.Entry<Path, Path> move : targets.entrySet()) {
            publish(move.getKey(), move.getValue());
        }
    }

    private static void publish(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() {
        removeAll();
        try {
            Runtime.getRuntime().removeShutdownHook(onInterrupt);
        } catch (IllegalStateException e) {
            // The program is being ended and the hook runs already.
            return;
        }
    }

    private void removeAll() {
        synchronized (targets) {
            for (Path temporary : targets.keySet()) {
                try {
                    Files.deleteIfExists(temporary);
                } catch (IOException e) {
                    // Nothing more can be done for this one; the others may still go.
                    continue;
                }
            }
        }
    }
}
