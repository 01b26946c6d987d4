package io.github.heatswell.sizing;

import io.github.heatswell.units.Pressure;
import java.util.Objects;
import java.util.Optional;

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
public record SizedVessel(
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
    public SizedVessel {
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
