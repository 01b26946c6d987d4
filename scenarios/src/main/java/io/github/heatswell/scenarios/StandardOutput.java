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
 * Standard output. It remembers why it could not be written, which the writers on it do not tell, and from then on takes
 * everything in silence.
 */
final class StandardOutput extends OutputStream {

    /** Kinds of files by the system's own numbers: pipes, and sockets, which some shells use for them. */
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
     * Why a part of the output is lost; empty if nothing is, or if it went to a program that had read enough, such as
     * {@code head}: that is no trouble.
     */
    Optional<String> trouble() {
        return Optional.ofNullable(trouble)
                .filter(said -> !said.toLowerCase(Locale.ROOT).contains("pipe") && !isPipe());
    }

    /** Whether the output is a pipe, whatever the language in which the system says that it is broken. */
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
