package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.QuantityReader;
import java.util.List;

/** The units household gauges read in, and which of them make sense of a number. */
final class GaugeUnits {

    /** What a gauge on a house usually shows at its highest (Pa), where its unit is inferred from it; our own judgement. */
    private static final double USUAL_LEAST = 1.5e5;

    private static final double USUAL_MOST = 25e5;

    private GaugeUnits() {}

    /** The units in which a number would be the highest reading of a house, possibly none. */
    static List<String> fitting(double highest) {
        return List.of("psi", "bar", "kPa").stream()
                .filter(unit -> {
                    double meant =
                            highest * QuantityReader.pressure("1 " + unit).value();
                    return meant >= USUAL_LEAST && meant <= USUAL_MOST;
                })
                .toList();
    }
}
