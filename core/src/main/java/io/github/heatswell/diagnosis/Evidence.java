package io.github.heatswell.diagnosis;

import java.util.Objects;

/**
 * What one part of the log says about a hypothesis, against the one that explains the log best.
 *
 * @param part which part
 * @param from when it is first met (s)
 * @param count how many readings it has
 * @param meanDifference forecast less log, in the mean of the part (Pa)
 * @param excess by how much the part's sum of squares is larger than with the best hypothesis (-); each such unit makes the
 *     hypothesis less likely by a factor of 1.6
 */
public record Evidence(LogPart part, double from, int count, double meanDifference, double excess) {

    private static final double TELLING = 6;

    /**
     * Checks that the part is there.
     *
     * @param part which part
     * @param from when it is first met (s)
     * @param count how many readings it has
     * @param meanDifference forecast less log, in the mean of the part (Pa)
     * @param excess by how much the part's sum of squares is larger than with the best hypothesis (-)
     */
    public Evidence {
        Objects.requireNonNull(part, "part");
    }

    /**
     * Whether this part speaks against the hypothesis.
     *
     * @return true if the part alone makes it twenty times less likely than the best
     */
    public boolean against() {
        return excess > TELLING;
    }
}
