package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.units.Unit;

/**
 * A number and its unit.
 *
 * @param value the number, in {@code unit}
 * @param unit the unit
 * @param <U> the kind of unit
 */
public record Amount<U extends Unit>(double value, U unit) {}
