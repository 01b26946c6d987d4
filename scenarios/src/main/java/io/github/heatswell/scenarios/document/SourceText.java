package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Reads the text of a file, checking that it is one, its size and its encoding.
 */
public final class SourceText {

    /** Descriptions are a page or two; a file beyond this size (byte) is something else. */
    public static final int MAX_SIZE = 256 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SourceText() {}

    /**
     * Reads a file of text in UTF-8, with or without a byte order mark.
     *
     * @param file the file
     * @param faults notes what is wrong with the encoding
     * @return the text without a byte order mark, or empty if it is not UTF-8
     * @throws FileSystemException if the file is a folder or another thing that is no file, or is larger than {@link #MAX_SIZE};
     *     it names the file, and its reason is a plain sentence
     * @throws IOException if the file cannot be read
     */
    public static Optional<String> of(Path file, Faults faults) throws IOException {
        check(file);
        if (Files.isRegularFile(file) && Files.size(file) > MAX_SIZE) {
            throw tooLarge(file);
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MAX_SIZE + 1);
            if (bytes.length > MAX_SIZE) {
                throw tooLarge(file);
            }
            return decode(bytes, faults);
        }
    }

    /**
     * Makes sure that something is a file that can be read to its end. Accepts files, {@code /dev/stdin} and shell substitutions such as {@code /dev/fd/63}. A named pipe could block
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
            Path target = Files.readSymbolicLink(file);
            boolean isLink = Files.isSymbolicLink(file.resolveSibling(target));
            throw refusal(
                    file,
                    "this is a link to " + Printable.quote(target.toString())
                            + (isLink ? ", a link that leads to no file either" : ", which does not exist"));
        }
        throw new NoSuchFileException(file.toString(), null, "there is no such file");
    }

    /** Says why a file is not read; the message names it, the reason does not. */
    private static FileSystemException refusal(Path file, String reason) {
        return new FileSystemException(file.toString(), null, reason);
    }

    private static boolean handedOver(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return whole.equals(Path.of("/dev/stdin")) || whole.startsWith("/dev/fd") || whole.startsWith("/proc/self/fd");
    }

    private static FileSystemException tooLarge(Path file) {
        return refusal(file, "this is larger than " + MAX_SIZE / 1024 + " KiB; a scenario is about a page of text");
    }

    private static Optional<String> decode(byte[] bytes, Faults faults) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length + 1);
        CoderResult outcome = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        String decoded = withoutMark(text.flip().toString());
        if (outcome.isError()) {
            faults.add(Location.after(decoded), "the text here is not UTF-8; save the file as UTF-8");
            return Optional.empty();
        }
        return Optional.of(decoded);
    }

    private static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    /**
     * Invisible control characters in a text: signs of a wrong encoding or a binary file.
     */
    static final class HiddenCharacters {

        private HiddenCharacters() {}

        /** The first control character other than a tab and the ends of lines. */
        static Optional<Fault> in(String text) {
            OptionalInt index = IntStream.range(0, text.length())
                    .filter(i -> hidden(text.charAt(i)))
                    .findFirst();
            return index.isPresent() ? Optional.of(fault(text, index.getAsInt())) : Optional.empty();
        }

        private static boolean hidden(char c) {
            return Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r' || c == '\uFFFE' || c == '\uFFFF';
        }

        private static Fault fault(String text, int index) {
            String code = String.format(Locale.ROOT, "U+%04X", (int) text.charAt(index));
            return new Fault(
                    Location.after(text.substring(0, index)),
                    "a control character (" + code + ") is here; save the file as plain text in UTF-8");
        }
    }
}
