package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.temperature;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.NamedValue;
import java.util.function.Consumer;

/** A run in which the heater never switches on, so that its calm pressure says nothing about a heat-up. */
final class IdleHeaterRule implements Rule {

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.run
                .filter(run -> !run.heats() && run.hazard().isEmpty())
                .ifPresent(run -> found.accept(idle(
                        subject.house.start().waterTemperature().orElse(subject.house.coldAtStart()),
                        subject.house.heater().elements().stream()
                                .mapToDouble(Element::switchesOn)
                                .max()
                                .orElseThrow())));
    }

    private static CandidateFinding idle(double starts, double calls) {
        return Finding.draft("heater-never-heats", Severity.CAUTION)
                .compares(NamedValue.SET_POINT, NamedValue.UPPER_SET_POINT)
                .unless("cut-out-tripped")
                .says(
                        "The heater never switches on in this run: the water starts at {}, and the thermostat calls for"
                                + " heat only below {}. So the run does not show what heating does to the pressure.",
                        temperature(starts),
                        temperature(calls))
                .found(temperature(starts))
                .limit(temperature(calls))
                .advises("Let the run start with colder water, draw hot water in it, or make it longer.")
                .by(Authority.computed("the run; the temperature at which the thermostat switches on"));
    }
}
