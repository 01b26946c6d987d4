package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.units.Pressure;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Result of a sizing: which vessel, at which precharge, keeps the peak within the limit, if any does.
 *
 * @param outcome whether a vessel is needed and can help
 * @param target what the peak had to stay below
 * @param supplyStatic the highest static pressure of the supply
 * @param smallest the smallest vessel that does it, if there is one
 * @param nominal the sizes on sale with what each would do, in their order; empty if no vessel can
 * @param lowerSupplyTo if no vessel can, or none on sale: the highest static pressure of the supply at which the largest size on sale is
 *     enough behind a tight valve, if there is one above 15 psi
 * @param largest the largest of the sizes on sale (m3)
 * @param balances those of all runs behind it
 */
public record SizingResult(
        Outcome outcome,
        SizingTarget target,
        Pressure supplyStatic,
        Optional<Vessel> smallest,
        List<Vessel> nominal,
        Optional<Pressure> lowerSupplyTo,
        double largest,
        Balances balances) {

    /** Whether a vessel is needed and can help. */
    public enum Outcome {
        /** The peak stays within the target without one. */
        NONE_NEEDED,
        /** There is a smallest vessel that does it. */
        SIZED,
        /** No vessel of any size keeps the peak within the target. */
        NO_VESSEL_CAN
    }

    /**
     * Checks that everything is there and copies the sizes.
     *
     * @param outcome whether a vessel is needed and can help
     * @param target what the peak had to stay below
     * @param supplyStatic the highest static pressure of the supply
     * @param smallest the smallest vessel that does it, if there is one
     * @param nominal the sizes on sale with what each would do, in their order; empty if no vessel can
     * @param lowerSupplyTo if no vessel can, or none on sale: the highest static pressure of the supply at which the largest size on sale
     *     is enough behind a tight valve, if there is one above 15 psi
     * @param largest the largest of the sizes on sale (m3)
     * @param balances those of all runs behind it
     */
    public SizingResult {
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(supplyStatic, "supplyStatic");
        Objects.requireNonNull(smallest, "smallest");
        nominal = List.copyOf(Objects.requireNonNull(nominal, "nominal"));
        Objects.requireNonNull(lowerSupplyTo, "lowerSupplyTo");
        Objects.requireNonNull(balances, "balances");
    }

    /** {@return the outcome, and the smallest vessel with its precharge, in one line} */
    @Override
    public String toString() {
        return outcome + smallest.map(vessel -> ", " + vessel).orElse("");
    }

    /**
     * The smallest size on sale that suffices for the given numbers. Their uncertainty is not considered here: a size
     * that barely meets its target fails in many slightly different houses.
     *
     * @return the vessel, or empty if none of the sizes is, or none is needed
     */
    public Optional<Vessel> smallestOnSale() {
        return outcome == Outcome.SIZED
                ? nominal.stream().filter(Vessel::suffices).min((a, b) -> Double.compare(a.volume(), b.volume()))
                : Optional.empty();
    }

    /**
     * A vessel with its simulated peak.
     *
     * @param volume the whole volume (m3)
     * @param precharge the gas pressure to set with the water side empty
     * @param peakAbsolute the highest pressure of the heat-up (Pa, absolute), at the height of the drain cock
     * @param margin how far that is below the target (Pa, difference), negative if it is above
     * @param higher whether the pressure would have risen further: the heat-up was not followed beyond the tank's test
     *     pressure
     * @param price what it costs, or empty if no price was given
     */
    public record Vessel(
            double volume,
            Pressure precharge,
            double peakAbsolute,
            double margin,
            boolean higher,
            Optional<NominalSize.Price> price) {

        /**
         * Checks that everything is there.
         *
         * @param volume the whole volume (m3)
         * @param precharge the gas pressure to set with the water side empty
         * @param peakAbsolute the highest pressure of the heat-up (Pa, absolute), at the height of the drain cock
         * @param margin how far that is below the target (Pa, difference), negative if it is above
         * @param higher whether the pressure would have risen further: the heat-up was not followed beyond the tank's test
         *     pressure
         * @param price what it costs, or empty if no price was given
         */
        public Vessel {
            Objects.requireNonNull(precharge, "precharge");
            Objects.requireNonNull(price, "price");
        }

        /**
         * Whether the vessel keeps the peak within the target.
         *
         * @return true if the margin is not negative
         */
        public boolean suffices() {
            return margin >= 0;
        }
    }
}
