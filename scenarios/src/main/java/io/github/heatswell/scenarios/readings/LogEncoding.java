package io.github.heatswell.scenarios.readings;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * How the text of a log is encoded: what its first bytes say, else UTF-8 where that is no contradiction, else Windows-1252, in which
 * spreadsheets save a degree sign.
 */
record LogEncoding(Charset charset) {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    /** So many bytes are looked at. */
    private static final int LOOKED_AT = 1 << 20;

    /** Looks ahead; what was looked at is still to be read. */
    static LogEncoding of(BufferedInputStream in) throws IOException {
        in.mark(LOOKED_AT + 1);
        byte[] start = in.readNBytes(LOOKED_AT);
        in.reset();
        int first = start.length < 2 ? -1 : start[0] & 0xFF;
        int second = start.length < 2 ? -1 : start[1] & 0xFF;
        if (first == 0xFE && second == 0xFF || first == 0xFF && second == 0xFE) {
            return new LogEncoding(StandardCharsets.UTF_16);
        }
        if (first > 0 && second == 0) {
            return new LogEncoding(StandardCharsets.UTF_16LE);
        }
        if (first == 0 && second > 0) {
            return new LogEncoding(StandardCharsets.UTF_16BE);
        }
        CharBuffer any = CharBuffer.allocate(start.length + 1);
        boolean malformed = decoder(StandardCharsets.UTF_8)
                .decode(ByteBuffer.wrap(start), any, start.length < LOOKED_AT)
                .isError();
        return new LogEncoding(malformed ? WINDOWS : StandardCharsets.UTF_8);
    }

    /** A decoder that refuses what is no text in it. */
    CharsetDecoder decoder() {
        return decoder(charset);
    }

    private static CharsetDecoder decoder(Charset charset) {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    /** That it was taken for something that the file does not say. */
    Optional<String> remark() {
        return WINDOWS.equals(charset)
                ? Optional.of(
                        "the file is not in UTF-8 and was read as Windows-1252; if words look wrong, save it as UTF-8")
                : Optional.empty();
    }
}
