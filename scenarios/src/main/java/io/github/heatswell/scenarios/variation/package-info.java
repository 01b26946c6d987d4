/**
 * Scenarios in all combinations of some values: which combinations there are, what they find, and which of them to draw.
 */
package io.github.heatswell.scenarios.variation;
