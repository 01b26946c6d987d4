package io.github.heatswell.diagnosis;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the readings say. Immutable.
 *
 * @param fits every cause looked at, the best explanation first
 * @param readings how many readings were used
 * @param uncertainty the standard uncertainty taken for a reading of the log (Pa, difference), NaN without a log
 * @param simulations how many runs it took
 * @param check the check on site that tells the best explanation from the next, or empty if none of the simple ones does
 */
public record DiagnosisResult(
        List<HypothesisFit> fits, int readings, double uncertainty, int simulations, Optional<SeparatingCheck> check) {

    /** Causes whose criterion lies within this (-) of the best explain the readings about as well: twenty to one. */
    public static final double ALIKE = 6;

    /**
     * Copies the list.
     *
     * @param fits every cause looked at, the best explanation first
     * @param readings how many readings were used
     * @param uncertainty the standard uncertainty taken for a reading of the log (Pa, difference), NaN without a log
     * @param simulations how many runs it took
     * @param check the check on site that tells the best explanation from the next, or empty
     * @throws IllegalArgumentException if there is no fit
     */
    public DiagnosisResult {
        Objects.requireNonNull(check, "check");
        fits = List.copyOf(Objects.requireNonNull(fits, "fits"));
        if (fits.isEmpty()) {
            throw new IllegalArgumentException("a diagnosis needs at least one cause to look at");
        }
    }

    /**
     * The cause that explains the readings best.
     *
     * @return the first of all fits
     */
    public HypothesisFit best() {
        return fits.get(0);
    }

    /**
     * The best explanation and every other that these readings cannot tell from it.
     *
     * @return at least one fit
     */
    public List<HypothesisFit> alike() {
        return fits.stream().filter(fit -> fit.criterion() < ALIKE).toList();
    }

    /**
     * Whether the readings single out one cause. A fault too slight to show in the readings is never singled out and not ruled
     * out either: that everything is as described then explains them as well, with fewer numbers.
     *
     * @return true if no other explains them about as well
     */
    public boolean isDecided() {
        return alike().size() == 1;
    }

    /**
     * Whether even the best explanation leaves something unexplained that is more than the uncertainty of the readings. Then none of
     * the causes looked at is the whole story.
     *
     * @return true if the readings are not explained
     */
    public boolean misfit() {
        return best().misfit()
                .map(Misfit::isSerious)
                .orElseGet(() -> best().sumOfSquares() > readings + 4 * Math.sqrt(2.0 * readings));
    }

    /**
     * What was found about one cause.
     *
     * @param cause the cause
     * @return the best fit with that cause, or empty if it was not looked at
     */
    public Optional<HypothesisFit> of(Cause cause) {
        Objects.requireNonNull(cause, "cause");
        return fits.stream().filter(fit -> fit.cause() == cause).findFirst();
    }
}
