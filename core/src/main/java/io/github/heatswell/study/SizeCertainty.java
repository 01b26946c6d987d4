package io.github.heatswell.study;

import io.github.heatswell.result.Balances;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Share of uncertain houses whose worst heat-up exceeds the limit: with the vessel that the best estimates call for
 * and, if that share exceeds {@link #HOLDS}, with larger vessels on sale until the smallest that passes is found.
 *
 * @param usual whether the description gives no uncertain value, so that the usual ones were taken
 * @param tried the vessels looked at, the smallest first; a volume of 0 stands for none
 * @param balances those of the runs behind it
 */
public record SizeCertainty(boolean usual, List<Tried> tried, Balances balances) {

    /** A vessel passes if at most this share (-) of the houses exceeds the limit; own judgement. */
    public static final double HOLDS = 0.1;

    /**
     * One vessel.
     *
     * @param volume its volume (m3), 0 for none
     * @param above how many of the houses go above the limit with it
     */
    public record Tried(double volume, StudyResult.Share above) {

        /**
         * Whether the vessel keeps the limit in nine of ten houses.
         *
         * @return true if it does
         */
        public boolean holds() {
            return above.value() <= HOLDS;
        }
    }

    /**
     * Copies the list.
     *
     * @param usual whether the usual uncertainties were taken
     * @param tried the vessels looked at
     * @param balances those of the runs behind it
     */
    public SizeCertainty {
        Objects.requireNonNull(balances, "balances");
        tried = List.copyOf(Objects.requireNonNull(tried, "tried"));
    }

    /**
     * The smallest vessel looked at that holds.
     *
     * @return the vessel, or empty if none does
     */
    public Optional<Tried> advised() {
        return tried.stream().filter(Tried::holds).findFirst();
    }

    /**
     * What the best estimates call for: the smallest vessel on sale that is enough by them, or none.
     *
     * @return the smallest looked at
     */
    public Tried bare() {
        return tried.get(0);
    }

    /**
     * What was found of a size.
     *
     * @param volume its volume (m3)
     * @return it, or empty if it was not looked at
     */
    public Optional<Tried> at(double volume) {
        return tried.stream().filter(one -> one.volume() == volume).findFirst();
    }
}
