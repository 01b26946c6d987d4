package io.github.heatswell.scenarios.report;

/** A headline as a sentence in a report. */
final class Sentence {

    private Sentence() {}

    /** The headline with a full stop, in characters that every terminal can show. */
    static String of(String headline) {
        return headline.replace('\u201c', '"').replace('\u201d', '"') + ".";
    }
}
