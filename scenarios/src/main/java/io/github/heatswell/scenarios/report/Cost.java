package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * The water a relief valve gives off in a year, and what it costs.
 *
 * @param yearlyWater the water (m3 a year)
 * @param price what it costs in a year, with its currency, possibly nothing
 * @param basis how both were found
 */
public record Cost(double yearlyWater, String price, String basis) {

    /**
     * Checks that everything is there.
     *
     * @param yearlyWater the water (m3 a year)
     * @param price what it costs in a year, with its currency, possibly nothing
     * @param basis how both were found
     */
    public Cost {
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(basis, "basis");
    }
}
