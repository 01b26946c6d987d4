package io.github.heatswell.finding;

import static io.github.heatswell.finding.Measure.temperature;

import io.github.heatswell.source.Source;
import io.github.heatswell.units.TemperatureUnit;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Water that is stored too cool, which legionella like, and water that comes to the taps too hot, which scalds. */
final class WaterTemperatureRule implements Rule {

    private static final double STORED = TemperatureUnit.CELSIUS.toSi(60);
    /** 120 degF are 48.9 degC: where the published table of burns ends with more than five minutes. */
    private static final double DELIVERED = TemperatureUnit.CELSIUS.toSi(49);

    /** Rounding of temperatures (K). */
    private static final double EQUAL = 1e-6;

    private static final Authority BURNS = Authority.practice(
            "burn table of a hospital's information sheet, after Moritz and Henriques 1947", Source.Standing.SEEN);

    @Override
    public void look(Case subject, Consumer<Finding> found) {
        double stored = subject.house.heater().setPoint();
        OptionalDouble mixed = subject.house.heater().mixedTo();
        if (stored < STORED - EQUAL) {
            found.accept(cool(temperature(stored), mixed.isPresent()));
        }
        double delivered = mixed.orElse(subject.highestSetPoint());
        if (delivered > DELIVERED + EQUAL) {
            found.accept(mixed.isPresent() ? mixedTooHot(delivered) : unmixed(delivered));
        }
    }

    private static Finding cool(Measure stored, boolean mixed) {
        Measure limit = temperature(STORED);
        return Finding.draft("stored-too-cool", Severity.CAUTION)
                .says("The water is stored at {}, below the {} that keep legionella from growing.", stored, limit)
                .found(stored)
                .limit(limit)
                .advises(
                        mixed
                                ? "Set the thermostat to {}, and measure at the nearest tap whether the mixing valve keeps it"
                                        + " from scalding."
                                : "Set the thermostat to {}, and have a mixing valve fitted first so that the taps do not"
                                        + " scald.",
                        limit)
                .asks("Ask the local authority or the maker which storage temperature it prescribes.")
                .by(Codes.LEGIONELLA);
    }

    private static Finding unmixed(double delivered) {
        return Finding.draft("scald-without-mixing-valve", Severity.CAUTION)
                .says(
                        "Water of up to {} can reach the taps, as no mixing valve is described; it can burn an adult badly"
                                + " within {}, and a child sooner.",
                        temperature(delivered),
                        Measure.time(Burns.seconds(delivered)))
                .found(temperature(delivered))
                .limit(temperature(DELIVERED))
                .advisesWork("Have a mixing valve fitted behind the tank; do not store the water cooler instead.")
                .asks("Ask the local authority how hot water may be at the taps.")
                .by(BURNS);
    }

    private static Finding mixedTooHot(double delivered) {
        return Finding.draft("mixing-valve-set-high", Severity.CAUTION)
                .says(
                        "The mixing valve delivers {} to the taps, which can burn an adult badly within {}, and a child"
                                + " sooner.",
                        temperature(delivered),
                        Measure.time(Burns.seconds(delivered)))
                .found(temperature(delivered))
                .limit(temperature(DELIVERED))
                .advises(
                        "Have the mixing valve set to {} or less, and measure at the nearest tap.",
                        temperature(DELIVERED))
                .asks("Ask the local authority how hot water may be at the taps.")
                .by(BURNS);
    }
}
