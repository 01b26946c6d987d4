package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Control characters in a text, which no editor shows: signs of a wrong encoding or of a file that is no text at all.
 */
final class HiddenCharacters {

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
