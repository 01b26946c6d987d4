package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.UnitSystem;

/** A line of plain text. */
final class TextAnswer implements AnswerKind {

    private final int longest;

    TextAnswer(int longest) {
        this.longest = longest;
    }

    @Override
    public String understand(String line) {
        String text = line.strip().replaceAll("\\s+", " ");
        if (!Printable.shows(text)) {
            throw new IllegalArgumentException("this contains invisible characters; write plain text");
        }
        if (text.length() > longest) {
            throw new IllegalArgumentException(
                    "this has " + text.length() + " characters; up to " + longest + " are allowed");
        }
        return text;
    }

    @Override
    public String offer(UnitSystem units) {
        return "a few words";
    }
}
