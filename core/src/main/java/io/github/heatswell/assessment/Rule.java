package io.github.heatswell.assessment;

import java.util.function.Consumer;

/** One subject of the findings: says nothing where it does not apply. */
interface Rule {

    /** Pressures closer than this (Pa) are the same. */
    double SAME = 1;

    /**
     * Pressures this close (Pa), a hundredth of a bar, may read the same: a limit is not passed by less where the sentence tells
     * both.
     */
    double READS_THE_SAME = 1000;

    /** Looks at a case and hands over what is to be said of it. */
    void look(AssessmentContext subject, Consumer<CandidateFinding> found);

    /** Whether a pressure passes a limit (both Pa), and not by rounding alone. */
    static boolean exceeds(double pressure, double limit) {
        return pressure > limit + SAME;
    }

    /** Whether a pressure is at a limit or above it (both Pa), whatever the rounding. */
    static boolean reaches(double pressure, double limit) {
        return !exceeds(limit, pressure);
    }

    /** Whether a pressure passes a limit (both Pa) so that a gauge shows it. */
    static boolean readsAbove(double pressure, double limit) {
        return pressure > limit + READS_THE_SAME;
    }

    /** A phrase at the beginning of a sentence. */
    static String sentence(String phrase) {
        return Character.toUpperCase(phrase.charAt(0)) + phrase.substring(1);
    }

    /** A name within a pattern, in quotation marks; braces in it are no places. */
    static String quoted(String name) {
        return "'" + Statement.literal(name) + "'";
    }
}
