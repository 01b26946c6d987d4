/**
 * Quantities as people write them, {@code 4.2 bar} or {@code 58 degC}: a number and a unit. Nothing is guessed: a number
 * without a unit, a unit of another kind and a decimal comma are errors that say how to write it.
 */
package io.github.heatswell.scenarios.quantity;
