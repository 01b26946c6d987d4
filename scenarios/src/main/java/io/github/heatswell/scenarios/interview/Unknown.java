package io.github.heatswell.scenarios.interview;

import io.github.heatswell.units.UnitSystem;

/**
 * Substitute for an unknown answer.
 *
 * @param value what the file gives instead, empty if it leaves the field out
 * @param reason why, as a comment of the file
 */
record Unknown(Choice value, String reason) {

    /** A range in which every value is equally likely. */
    static Unknown range(String si, String us) {
        return new Unknown(new Choice(si, us), "not known; typical range, common practice, no source");
    }

    /** A choice that is made for the owner. */
    static Unknown taken(String word, String reason) {
        return new Unknown(new Choice(word, word), "not known; " + reason);
    }

    /** Nothing: the format has a typical value, or goes without. */
    static Unknown leftOut(String reason) {
        return new Unknown(new Choice("", ""), "not known and left out; " + reason);
    }

    String in(UnitSystem units) {
        return value.in(units);
    }
}
