/**
 * Uncertainty of an answer: simulates many houses that differ in the scenario's uncertain values.
 * Start at {@link io.github.heatswell.scenarios.spread.HouseSpread}.
 */
package io.github.heatswell.scenarios.spread;
