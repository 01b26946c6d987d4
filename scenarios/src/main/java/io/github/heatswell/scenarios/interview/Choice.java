package io.github.heatswell.scenarios.interview;

import io.github.heatswell.units.UnitSystem;

/**
 * The same thing said in both systems of units.
 *
 * @param si with bar, degrees Celsius, litres and kilowatts
 * @param us with psi, degrees Fahrenheit, gallons and Btu an hour
 */
record Choice(String si, String us) {

    String in(UnitSystem units) {
        return units == UnitSystem.US ? us : si;
    }
}
