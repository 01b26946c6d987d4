/**
 * Uncertainty of an answer: many houses are simulated that differ in the scenario's uncertain values.
 * {@link io.github.heatswell.scenarios.spread.HouseSpread} is where to begin.
 */
package io.github.heatswell.scenarios.spread;
