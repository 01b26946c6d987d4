package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.simulation.Workers;
import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * A file of results that is still to be written.
 */
public final class ResultFile {

    private final String name;
    private final Content content;
    private final boolean toBeChanged;

    private ResultFile(String name, Content content, boolean toBeChanged) {
        this.name = requirePlain(name, "file");
        this.content = Objects.requireNonNull(content, "content");
        this.toBeChanged = toBeChanged;
    }

    /** {@return the name of the file} */
    @Override
    public String toString() {
        return name;
    }

    /** Refuses the name of a file or folder that would not stay in the folder it is written into. */
    static String requirePlain(String name, String what) {
        if (!isPlain(Objects.requireNonNull(name, "name"))) {
            throw new IllegalArgumentException(
                    "name: " + Printable.quote(name) + " is not that of a " + what + " in a folder");
        }
        return name;
    }

    private static boolean isPlain(String name) {
        try {
            Path path = Path.of(name);
            return path.equals(path.getFileName()) && !name.isEmpty() && !name.equals(".") && !name.equals("..");
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** Writes the content of a file. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes everything; the stream is closed by the caller.
         *
         * @param out takes the bytes
         * @throws IOException if writing fails
         */
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes the content of a file of text. */
    @FunctionalInterface
    public interface Text {
        /**
         * Writes everything.
         *
         * @param out takes the characters
         * @throws IOException if writing fails
         */
        void writeTo(Appendable out) throws IOException;
    }

    /**
     * A file of bytes.
     *
     * @param name its name in the folder of results
     * @param content writes its content
     * @return the file
     * @throws IllegalArgumentException if the name would lead out of the folder or cannot be one here
     */
    public static ResultFile of(String name, Content content) {
        return new ResultFile(name, content, false);
    }

    /**
     * A file of text in UTF-8.
     *
     * @param name its name in the folder of results
     * @param text writes its text
     * @return the file
     * @throws IllegalArgumentException if the name would lead out of the folder or cannot be one here
     */
    public static ResultFile ofText(String name, Text text) {
        Objects.requireNonNull(text, "text");
        return new ResultFile(
                name,
                out -> {
                    BufferedWriter writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                    text.writeTo(writer);
                    writer.flush();
                },
                false);
    }

    /**
     * The same files, the contents of which are made at the same time, one by each processor, as soon as the first of them is
     * written. They are held in memory.
     *
     * @param files files that do not need each other
     * @return files of the same names and contents
     */
    static List<ResultFile> sideBySide(List<ResultFile> files) {
        Content[] made = new Content[files.size()];
        return IntStream.range(0, made.length)
                .mapToObj(i -> of(files.get(i).name, out -> {
                    synchronized (made) {
                        if (made[i] == null) {
                            Workers.of(Runtime.getRuntime().availableProcessors())
                                    .each(
                                            made.length,
                                            each -> made[each] = files.get(each).made());
                        }
                    }
                    made[i].writeTo(out);
                }))
                .toList();
    }

    /** The content held in memory; one that cannot be made fails when it is written. */
    private Content made() {
        try {
            byte[] bytes = bytes();
            return out -> out.write(bytes);
        } catch (IOException e) {
            return out -> {
                throw e;
            };
        }
    }

    /**
     * The same file as one that its reader is asked to change: where one of its name has been changed, that is kept.
     *
     * @return the file
     */
    public ResultFile toBeChanged() {
        return new ResultFile(name, content, true);
    }

    /**
     * What the file is called.
     *
     * @return its name in the folder of results
     */
    public String name() {
        return name;
    }

    /** Whether a file of this name in a folder is one that its reader has changed, which is not replaced. */
    boolean isChangedIn(Path folder) throws OutputException {
        try {
            Path existing = folder.resolve(name);
            return toBeChanged && Files.exists(existing) && !Arrays.equals(bytes(), Files.readAllBytes(existing));
        } catch (IOException e) {
            throw OutputException.cannotWrite(folder, e);
        }
    }

    /**
     * The content, without any folder.
     *
     * @return the bytes, held in memory
     * @throws IOException if the content cannot be made
     */
    public byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        writeTo(bytes);
        return bytes.toByteArray();
    }

    /**
     * Writes the content.
     *
     * @param out takes the bytes; stays open
     * @throws IOException if writing fails, also where the content keeps that to itself
     */
    public void writeTo(OutputStream out) throws IOException {
        Tracked tracked = new Tracked(Objects.requireNonNull(out, "out"));
        BufferedOutputStream buffered = new BufferedOutputStream(tracked);
        content.writeTo(buffered);
        buffered.flush();
        if (tracked.failure != null) {
            throw tracked.failure;
        }
    }

    /** A stream that remembers that writing failed, since not every writer on top of it passes the failure on. */
    private static final class Tracked extends FilterOutputStream {
        private IOException failure;

        Tracked(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            try {
                out.write(bytes, offset, length);
            } catch (IOException e) {
                failure = e;
                throw e;
            }
        }
    }
}
