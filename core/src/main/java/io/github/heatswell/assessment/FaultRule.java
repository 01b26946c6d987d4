package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import java.util.function.Consumer;

/** What is described as broken: the thermostat and relief valves. */
final class FaultRule implements Rule {

    /** How a relief valve is replaced. */
    static final String REPLACE =
            "Have the valve replaced with one set no higher than the pressure on the tank's plate, with"
                    + " a discharge capacity of at least the heater's input. Never plug, cap or downsize it.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.house.heater().thermostatStuck()) {
            found.accept(Finding.draft("thermostat-stuck", Severity.HAZARD)
                    .says("The thermostat never switches off, so the water heats up until another device stops it.")
                    .advises(
                            "Turn the heater off at its breaker or the gas meter and leave it off until the thermostat has"
                                    + " been replaced. If it rumbles or steams, do not go near it.")
                    .asks("Ask a licensed professional to check the cut-out and the relief valve as well.")
                    .by(Codes.DESCRIPTION));
        }
        subject.house.reliefValves().forEach(valve -> look(subject, valve, found));
    }

    private static void look(AssessmentContext subject, ReliefValve valve, Consumer<CandidateFinding> found) {
        switch (valve.condition()) {
            case BLOCKED ->
                found.accept(Finding.draft("relief-valve-blocked", Severity.HAZARD)
                        .says(Rule.quoted(valve.name()) + " never opens: the tank has lost that safeguard.")
                        .advises(
                                "Turn the heater off and leave it off until the valve has been replaced and its discharge pipe"
                                        + " found free. Never plug or cap a relief valve.")
                        .asks("Ask a licensed professional whether the tank was overstressed and may stay in use.")
                        .by(Codes.RELIEF_CAPACITY));
            case STUCK_OPEN ->
                found.accept(Finding.draft("relief-valve-stuck-open", Severity.FAULT)
                        .says(
                                Rule.quoted(valve.name()) + " does not close: it is stuck at {} of its lift.",
                                Measure.share(valve.fault().stuckLift()))
                        .advises((subject.overheats()
                                        ? "Turn the heater off. Leave the cold feed open until the water is cold: what comes"
                                                + " in cools the tank. "
                                        : "Turn the heater off, then shut the cold feed: until then the valve runs on. ")
                                + REPLACE)
                        .by(Codes.DESCRIPTION));
            case LEAKING_SEAT ->
                found.accept(Finding.draft("relief-valve-seat-leaks", Severity.FAULT)
                        .rests(NamedValue.SET_PRESSURE)
                        .about(valve)
                        .says(
                                "The seat of " + Rule.quoted(valve.name())
                                        + " leaks from {} up, though the valve opens only at {}.",
                                gauge(valve.fault().leaksFrom().orElseThrow(), subject.atmosphere),
                                gauge(valve.setPressure(), subject.atmosphere))
                        .found(gauge(valve.fault().leaksFrom().orElseThrow(), subject.atmosphere))
                        .limit(gauge(valve.setPressure(), subject.atmosphere))
                        .advisesWork(REPLACE)
                        .by(Codes.DESCRIPTION));
            default -> {
                // a sound valve has no fault
            }
        }
    }
}
