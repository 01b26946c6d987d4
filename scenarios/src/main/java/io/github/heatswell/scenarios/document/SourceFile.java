package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Makes sure that something is a file that can be read to its end.
 */
public final class SourceFile {

    private SourceFile() {}

    /**
     * Accepts files, {@code /dev/stdin} and shell substitutions such as {@code /dev/fd/63}. A named pipe could block
     * forever.
     *
     * @param file the file
     * @throws NoSuchFileException if nothing is there
     * @throws FileSystemException if it is something else; it names the file, and its reason is a plain sentence
     * @throws IOException if nothing can be learnt about it
     */
    public static void check(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw refusal(file, "this is a folder, not a file");
        }
        if (Files.isRegularFile(file) && !Files.isReadable(file)) {
            throw refusal(file, "you do not have permission to read it");
        }
        if (Files.isRegularFile(file) || handedOver(file)) {
            return;
        }
        if (Files.exists(file)) {
            throw refusal(file, "this is a pipe or a device, not a text file; give a file, or /dev/stdin");
        }
        if (Files.isSymbolicLink(file)) {
            throw refusal(
                    file,
                    "this is a link to "
                            + Printable.quote(Files.readSymbolicLink(file).toString()) + ", which does not exist");
        }
        throw new NoSuchFileException(file.toString(), null, "there is no such file");
    }

    /** Says why a file is not read; the message names it, the reason does not. */
    static FileSystemException refusal(Path file, String reason) {
        return new FileSystemException(file.toString(), null, reason);
    }

    private static boolean handedOver(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return whole.equals(Path.of("/dev/stdin")) || whole.startsWith("/dev/fd") || whole.startsWith("/proc/self/fd");
    }
}
