package io.github.heatswell.scenarios.lesson;

import java.util.List;

/** Texts that must be there. */
final class Texts {

    private Texts() {}

    static String require(String what, String text) {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException(what + " is missing; write some words");
        }
        return text;
    }

    static List<String> require(String what, List<String> texts, int least, int most) {
        List<String> copy = List.copyOf(texts);
        requireCount(what, copy.size(), least, most);
        copy.forEach(text -> require("one of " + what, text));
        return copy;
    }

    static void requireCount(String what, int count, int least, int most) {
        if (count < least || count > most) {
            String allowed = most == Integer.MAX_VALUE ? "at least " + least : least + " to " + most;
            throw new IllegalArgumentException(what + " must be " + allowed + ", not " + count);
        }
    }
}
