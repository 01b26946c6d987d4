package io.github.heatswell.finding;

import io.github.heatswell.units.TemperatureUnit;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * How soon hot water burns an adult's skin badly: a table of a hospital's information sheet (childrensal.org, read), after
 * Moritz and Henriques 1947. Where it gives a range, the shorter time stands here; between two rows the time of the
 * hotter one counts, so that no answer is longer than the table's.
 */
final class Burns {

    /** Seconds by degrees Fahrenheit; 120 degF stands for "more than 5 minutes", 140 and 145 degF for "less than". */
    private static final NavigableMap<Double, Double> TABLE = new TreeMap<>(Map.of(
            120.0, 300.0, 125.0, 90.0, 130.0, 30.0, 135.0, 10.0, 140.0, 5.0, 145.0, 3.0, 150.0, 1.5, 155.0, 1.0));

    private Burns() {}

    /** The time (s) in which water of a temperature (K) burns badly. */
    static double seconds(double kelvin) {
        double fahrenheit = TemperatureUnit.FAHRENHEIT.fromSi(kelvin) - 1e-6;
        Map.Entry<Double, Double> row = TABLE.ceilingEntry(fahrenheit);
        return row == null ? TABLE.lastEntry().getValue() : row.getValue();
    }
}
