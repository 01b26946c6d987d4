package io.github.heatswell.diagnosis;

import java.util.Objects;

/**
 * A reading on site that tells two causes apart.
 *
 * @param check what to read
 * @param first the cause that explains the readings best
 * @param expectedFirst what the check shows if that is the cause (in the SI unit of the check, pressures gauge)
 * @param second the other cause
 * @param expectedSecond what it shows if it is the other (in the SI unit of the check, pressures gauge)
 * @param separation how far both lie apart, in the usual uncertainty of the check (-)
 */
public record SeparatingCheck(
        SiteCheck check, Cause first, double expectedFirst, Cause second, double expectedSecond, double separation) {

    /**
     * Checks that everything is there.
     *
     * @param check what to read
     * @param first the cause that explains the readings best
     * @param expectedFirst what the check shows if that is the cause (in the SI unit of the check, pressures gauge)
     * @param second the other cause
     * @param expectedSecond what it shows if it is the other (in the SI unit of the check, pressures gauge)
     * @param separation how far both lie apart, in the usual uncertainty of the check (-)
     */
    public SeparatingCheck {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
    }
}
