package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.DurationUnit;
import java.util.Optional;

/** The usual sampling of a run, from its length. */
final class TypicalRun {

    /** Runs above this length (s) are sampled once an hour. */
    private static final double LONG = 60 * 86_400.0;

    private TypicalRun() {}

    static Optional<String> sample(String duration) {
        Amount<DurationUnit> length = QuantityReader.read(duration, Kind.DURATION);
        double seconds = length.unit().toSi(length.value());
        if (seconds < 60) {
            return Optional.of(duration);
        }
        return Optional.of(seconds > LONG ? "1 h" : "1 min");
    }
}
