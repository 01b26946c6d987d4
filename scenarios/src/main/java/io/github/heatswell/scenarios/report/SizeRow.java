package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * A size of vessel and what the simulation says about it.
 *
 * @param volume the whole volume (m3)
 * @param prechargeGauge the gas pressure to set with the water side empty (Pa, gauge)
 * @param peakGauge the highest pressure (Pa, gauge)
 * @param margin how far that is below the target (Pa, difference), below 0 if it is above
 * @param higher whether the pressure would have risen further; it was not followed beyond the tank's test pressure
 * @param enough whether that is enough, and how sure it is; not empty
 * @param price what it costs, possibly nothing
 */
public record SizeRow(
        double volume,
        double prechargeGauge,
        double peakGauge,
        double margin,
        boolean higher,
        String enough,
        String price) {

    /**
     * Checks that everything is there.
     *
     * @param volume the whole volume (m3)
     * @param prechargeGauge the gas pressure to set with the water side empty (Pa, gauge)
     * @param peakGauge the highest pressure (Pa, gauge)
     * @param margin how far that is below the target (Pa, difference), below 0 if it is above
     * @param higher whether the pressure would have risen further; it was not followed beyond the tank's test pressure
     * @param enough whether that is enough, and how sure it is; not empty
     * @param price what it costs, possibly nothing
     */
    public SizeRow {
        Objects.requireNonNull(enough, "enough");
        Objects.requireNonNull(price, "price");
    }
}
