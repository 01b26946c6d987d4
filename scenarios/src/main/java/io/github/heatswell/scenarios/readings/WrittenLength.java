package io.github.heatswell.scenarios.readings;

import java.util.Optional;

/** How long what somebody wrote may be, looked at where it comes in: patterns that look for words in it would take ever longer. */
final class WrittenLength {

    /** As many characters as a cell, a line of a list or a reading on site may have: a reading and a note of about 80 words. */
    static final int MAX = 500;

    private WrittenLength() {}

    /**
     * What is wrong with a text that is too long.
     *
     * @param text what was written
     * @param what what it is, such as {@code cell}
     */
    static Optional<String> complaint(String text, String what) {
        return text.length() <= MAX
                ? Optional.empty()
                : Optional.of("this " + what + " has " + text.length() + " characters; up to " + MAX
                        + " are allowed: leave only the reading and a short note");
    }

    /** The text itself, if it is not too long. */
    static String checked(String text, String what) {
        complaint(text, what).ifPresent(found -> {
            throw new IllegalArgumentException(found);
        });
        return text;
    }
}
