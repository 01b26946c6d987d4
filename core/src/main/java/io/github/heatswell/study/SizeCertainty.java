package io.github.heatswell.study;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.NamedValue;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Share of uncertain houses whose worst heat-up exceeds the limit, each with the precharge that its vessel has lost by the next check:
 * with the vessel that the best estimates call for and, if that share exceeds {@link #HOLDS}, with larger vessels on sale until the
 * smallest that passes is found.
 *
 * @param usual whether the description gives no uncertain value, so that the usual ones were taken
 * @param tried the vessels looked at, the smallest first; a volume of 0 stands for none
 * @param opening in how many of the houses with the first of them a relief valve opens; empty where nobody looked
 * @param needed between which sizes on sale the houses differ; empty if none of the sizes is enough for one in ten of them
 * @param balances those of the runs behind it
 */
public record SizeCertainty(
        boolean usual,
        List<Tried> tried,
        Optional<StudyResult.Share> opening,
        Optional<Range> needed,
        Balances balances) {

    /** A vessel passes if, with 95 % confidence, at most this share (-) of the houses exceeds the limit; our own judgement. */
    public static final double HOLDS = 0.1;

    /** No single size is named first where the largest that may be needed is more than so many times the smallest; our own judgement. */
    private static final double VAGUE = 2.5;

    /**
     * One vessel.
     *
     * @param volume its volume (m3), 0 for none
     * @param above how many of the houses go above the limit with it
     */
    public record Tried(double volume, StudyResult.Share above) {

        /**
         * Whether the vessel is sure to keep the limit in nine of ten houses: the exact interval of the count lies within.
         *
         * @return true if it is
         */
        public boolean holds() {
            return above.atMost() <= HOLDS;
        }

        /**
         * Whether the count leaves open how many of the houses keep the limit, so that more of them would tell.
         *
         * @return true if nine of ten lies within the exact interval of the count
         */
        public boolean isOpen() {
            return !holds() && above.atLeast() <= HOLDS;
        }
    }

    /**
     * The sizes on sale that the houses call for: one in ten of them manages with the least or a smaller one, and one in ten needs more
     * than the most.
     *
     * @param least the smallest size that is enough in at least one of ten houses (m3), 0 for none
     * @param most the smallest that is enough in nine of ten (m3); empty if no size on sale is
     * @param reading what decides most, and how far the sizes still differ once it is known; empty where they do not differ widely
     */
    public record Range(double least, OptionalDouble most, Optional<Reading> reading) {

        /**
         * Checks that everything is there.
         *
         * @param least the smallest size that is enough in at least one of ten houses (m3), 0 for none
         * @param most the smallest that is enough in nine of ten (m3)
         * @param reading what decides most
         */
        public Range {
            Objects.requireNonNull(most, "most");
            Objects.requireNonNull(reading, "reading");
        }

        /**
         * Whether the sizes differ so widely that something is to be found out before a size is bought.
         *
         * @return true if the house is known too roughly
         */
        public boolean isVague() {
            return most.isEmpty() || least > 0 && most.getAsDouble() > VAGUE * least;
        }
    }

    /**
     * What to find out first.
     *
     * @param name what it is called
     * @param value what it is, which says how to find it out; empty for a value that has no way of its own
     * @param least the smallest size that is enough in at least one of ten houses once it is known (m3)
     * @param most the smallest that is enough in nine of ten then (m3); empty if no size on sale is
     */
    public record Reading(String name, Optional<NamedValue> value, double least, OptionalDouble most) {

        /**
         * Checks that everything is there.
         *
         * @param name what it is called
         * @param value what it is
         * @param least the smallest size that is enough in at least one of ten houses once it is known (m3)
         * @param most the smallest that is enough in nine of ten then (m3)
         */
        public Reading {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(most, "most");
        }
    }

    /**
     * Copies the list.
     *
     * @param usual whether the usual uncertainties were taken
     * @param tried the vessels looked at
     * @param opening in how many of the houses with the first of them a relief valve opens
     * @param needed between which sizes on sale the houses differ
     * @param balances those of the runs behind it
     */
    public SizeCertainty {
        Objects.requireNonNull(opening, "opening");
        Objects.requireNonNull(needed, "needed");
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
     * @return the first looked at
     */
    public Tried bare() {
        return tried.get(0);
    }

    /**
     * Between which sizes the answer lies, where too little is known to name one.
     *
     * @return the sizes, and what decides; empty where the sizes do not differ widely
     */
    public Optional<Range> vague() {
        return needed.filter(Range::isVague);
    }

    /**
     * What was found about a size.
     *
     * @param volume its volume (m3)
     * @return the vessel, or empty if it was not looked at
     */
    public Optional<Tried> at(double volume) {
        return tried.stream().filter(one -> one.volume() == volume).findFirst();
    }
}
