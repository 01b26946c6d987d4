package io.github.heatswell.assessment;

import io.github.heatswell.units.TemperatureUnit;
import java.util.Comparator;
import java.util.List;

/**
 * How soon hot water burns an adult's skin badly: the wording of the US Consumer Product Safety Commission on tap water
 * (document 5098, seen quoted). Only its own points are told, never a time between them.
 *
 * @param temperature a temperature of the source (K)
 * @param seconds the time the source gives for it (s)
 */
record Burns(double temperature, double seconds) {

    private static final List<Burns> TABLE = List.of(at(120, 300), at(130, 30), at(140, 6), at(150, 2));

    /** Temperatures closer than this (K) read the same. */
    private static final double SAME = 0.05;

    private static Burns at(double fahrenheit, double seconds) {
        return new Burns(TemperatureUnit.FAHRENHEIT.toSi(fahrenheit), seconds);
    }

    /** The point of the source nearest to a temperature (K). */
    static Burns nearest(double kelvin) {
        return TABLE.stream()
                .min(Comparator.comparingDouble(point -> Math.abs(point.temperature - kelvin)))
                .orElseThrow();
    }

    /** The point as a sentence with places for its temperature and its time, beside water of a temperature (K). */
    String beside(double kelvin) {
        String than = Math.abs(kelvin - temperature) < SAME
                ? ""
                : kelvin > temperature ? ", cooler than this," : ", hotter than this,";
        return "Water at {}" + than + " burns an adult badly within {}, and a child sooner.";
    }
}
