package io.github.heatswell.finding;

import io.github.heatswell.units.TemperatureUnit;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * How soon hot water burns an adult's skin badly: the wording of the US Consumer Product Safety Commission on tap water
 * (document 5098, seen quoted). Between two of its temperatures the time of the hotter one counts, so that no answer is
 * longer than the source's; above the hottest the shortest time stands, which is then an upper bound.
 */
final class Burns {

    /** Seconds by degrees Fahrenheit. */
    private static final NavigableMap<Double, Double> TABLE =
            new TreeMap<>(Map.of(120.0, 300.0, 130.0, 30.0, 140.0, 6.0, 150.0, 2.0));

    private Burns() {}

    /** The time (s) within which water of a temperature (K) burns badly. */
    static double seconds(double kelvin) {
        double fahrenheit = TemperatureUnit.FAHRENHEIT.fromSi(kelvin) - 1e-6;
        Map.Entry<Double, Double> row = TABLE.ceilingEntry(fahrenheit);
        return row == null ? TABLE.lastEntry().getValue() : row.getValue();
    }
}
