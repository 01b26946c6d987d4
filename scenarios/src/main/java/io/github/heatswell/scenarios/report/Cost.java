package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * The water that relief valves give off in a year, and what it costs.
 *
 * @param of what gives it off, such as {@code as it is}
 * @param yearlyWater the water (m3 a year)
 * @param price what it costs in a year, with its currency, possibly nothing
 * @param basis how both were found, possibly nothing
 */
public record Cost(String of, double yearlyWater, String price, String basis) {

    /**
     * Checks that everything is there.
     *
     * @param of what gives it off, such as {@code as it is}
     * @param yearlyWater the water (m3 a year)
     * @param price what it costs in a year, with its currency, possibly nothing
     * @param basis how both were found, possibly nothing
     */
    public Cost {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(basis, "basis");
    }
}
