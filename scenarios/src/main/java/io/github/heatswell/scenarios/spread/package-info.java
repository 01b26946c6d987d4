/**
 * How far the answer may be off: many houses are simulated that differ in what a scenario knows only so well.
 * {@link io.github.heatswell.scenarios.spread.HouseSpread} is where to begin.
 */
package io.github.heatswell.scenarios.spread;
