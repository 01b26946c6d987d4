package io.github.heatswell.scenarios.file;

import java.util.Locale;

/** Where a value comes from. */
public enum Origin {
    /** Somebody gave it. */
    GIVEN("given"),
    /** Somebody gave it for one answer, from outside the file. */
    CHANGED("given for this answer"),
    /** Somebody gave it within a range, or with how far it may be off. */
    RANGE("given within a range"),
    /** Somebody gave it, and how far it may be off is what such readings usually are. */
    USUAL_ACCURACY("given; how far it may be off is common practice, no source"),
    /** Somebody gave it roughly, or as a guess. */
    GUESSED("given roughly or as a guess"),
    /** The code of a place, from a state or a country that somebody named. */
    ASSUMED_CODE("assumed from the state or country named: ask the local authority which code applies"),
    /** Nobody gave it. */
    TYPICAL("not given: typical, common practice, no source"),
    /** A choice that nobody has looked at. */
    NOT_KNOWN("assumed: nobody has checked");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    /**
     * The key under which a file names the fields that have it.
     *
     * @return such as {@code usual-accuracy}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The origin in words.
     *
     * @return such as {@code given roughly or as a guess}
     */
    public String words() {
        return words;
    }
}
