package io.github.heatswell.scenarios;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output. It records the first write failure, which writers swallow, and then discards further output.
 */
final class StandardOutput extends OutputStream {

    /** POSIX file types: pipes, and sockets, which some shells use instead. */
    private static final int KIND = 0170000;

    private static final int PIPE = 0010000;
    private static final int SOCKET = 0140000;

    private final OutputStream out;
    private String trouble;

    StandardOutput() {
        this(new FileOutputStream(FileDescriptor.out));
    }

    StandardOutput(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) {
        if (trouble != null) {
            return;
        }
        try {
            out.write(bytes, offset, length);
        } catch (IOException e) {
            trouble = String.valueOf(e.getMessage());
        }
    }

    /**
     * Why part of the output was lost; empty if none was, or if the reader closed the pipe early, as {@code head} does.
     */
    Optional<String> trouble() {
        return Optional.ofNullable(trouble)
                .filter(said -> !said.toLowerCase(Locale.ROOT).contains("pipe") && !isPipe());
    }

    /** Whether the output is a pipe; independent of the language of the system's error message. */
    private static boolean isPipe() {
        try {
            Object mode = Files.getAttribute(Path.of("/dev/fd/1"), "unix:mode");
            int kind = mode instanceof Integer number ? number & KIND : 0;
            return kind == PIPE || kind == SOCKET;
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
            return false;
        }
    }
}
