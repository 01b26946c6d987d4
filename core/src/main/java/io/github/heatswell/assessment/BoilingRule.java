package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.Event;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.Saturation;
import java.util.function.Consumer;

/** How far the hottest water is from boiling: in the open, where every leak would flash to steam, and in the tank. */
final class BoilingRule implements Rule {

    private static final double OPEN_LIMIT = TemperatureUnit.CELSIUS.toSi(99);
    /** Least distance from the boiling point in the tank (K); our own judgement. */
    private static final double MARGIN = 10;

    private static final double EQUAL = 1e-6;

    private static final Authority BOILING =
            Authority.code("boiling line of water, IAPWS R7-97(2012) section 8", Citation.Standing.SEEN);

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.run.flatMap(run -> run.first(Event.Kind.VAPOUR_FORMS)).isPresent()) {
            return;
        }
        double hottest = subject.run
                .map(run -> run.extremes().highestTemperature().value())
                .orElse(subject.highestSetPoint());
        double lowest = subject.run
                .map(run -> run.extremes().lowestPressure().value())
                .orElse(subject.lowestStatic() + subject.atmosphere);
        double open = boilsInTheOpen(subject);
        double boils = Saturation.temperature(lowest);
        if (hottest > open + EQUAL) {
            found.accept(flashes(subject, hottest, open));
        } else if (boils - hottest < MARGIN - EQUAL) {
            found.accept(near(hottest, boils, lowest - subject.atmosphere));
        }
    }

    /** The temperature (K) above which water that gets out flashes to steam. */
    static double boilsInTheOpen(AssessmentContext subject) {
        return Math.min(OPEN_LIMIT, Saturation.temperature(subject.atmosphere));
    }

    private static CandidateFinding flashes(AssessmentContext subject, double hottest, double open) {
        return Finding.draft("water-hotter-than-boiling", Severity.HAZARD)
                .rests(Deciding.HEAT)
                .says(
                        "The water reaches {}. Above {} it flashes to steam where it escapes, and all at once if the tank fails.",
                        temperature(hottest),
                        temperature(open))
                .found(temperature(hottest))
                .limit(temperature(open))
                .advises(HazardRule.emergency(subject))
                .asks("Ask a licensed professional to check thermostat, cut-out and relief valve before the heater is"
                        + " used again.")
                .by(BOILING);
    }

    private static CandidateFinding near(double hottest, double boils, double gauge) {
        return Finding.draft("boiling-margin-small", Severity.CAUTION)
                .rests(Deciding.HEAT)
                .says(
                        "The hottest water, {}, is only {} below the {} at which it boils under the lowest pressure of {}.",
                        temperature(hottest),
                        new Measure(Measure.Kind.TEMPERATURE_DIFFERENCE, boils - hottest),
                        temperature(boils),
                        gauge(gauge))
                .found(temperature(hottest))
                .limit(temperature(boils - MARGIN))
                .advises("Set the thermostat lower. Do not shut the supply off while the water is that hot.")
                .by(BOILING);
    }
}
