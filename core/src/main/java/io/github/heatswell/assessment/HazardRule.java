package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.water.Saturation;
import java.util.Set;
import java.util.function.Consumer;

/** The hazard that ended a run, and the cut-out that prevented one. */
final class HazardRule implements Rule {

    private static final String STAY_AWAY =
            "Stay away from the tank. If you can do it safely from elsewhere, trip the heater's breaker"
                    + " or shut the gas at the meter. Leave and call for help. Do not lift the relief valve or open a tap.";

    /** For water that boils in the tank, and for pressure beyond what a tank is tested to. */
    static final String LET_NOTHING_IN = STAY_AWAY + " Let no cold water in.";

    /** For hot water that is still held: the cold feed replaces what a valve discharges, and cools the tank. */
    static final String LEAVE_THE_FEED = STAY_AWAY + " Leave the cold feed as it is: what comes in cools the tank.";

    private static final String DRY =
            "Turn the heater off: an element that runs dry burns out. Keep all taps closed. Before the"
                    + " power goes back on, fill the tank and run a hot tap until no air comes.";

    private static final String OFF = "Turn the heater off, keep clear of the discharge pipe and let it cool.";

    private static final String THAW =
            "Turn the heater off and shut the cold feed. Leave it off until the room is warm, all ice has"
                    + " thawed, and tank, vessel, pipes, relief valve and discharge pipe have been found whole and free. Then keep the room"
                    + " above freezing.";

    private static final String ASK =
            "Ask a licensed professional to inspect the whole heater before it is used again.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.run.ifPresent(run -> {
            run.hazard().ifPresent(event -> found.accept(hazard(run, event)));
            run.first(Event.Kind.CUT_OUT_TRIPPED).ifPresent(event -> found.accept(cutOut(subject, run, event)));
        });
    }

    private static CandidateFinding hazard(RunSummary run, Event event) {
        Statement when = Moments.of(run.system(), run.end()).at(event.time()).capitalised();
        Measure pressure = gauge(run.gauge(event.pressureAbsolute()));
        Measure hottest = temperature(run.extremes().highestTemperature().value());
        Measure boiling = temperature(Saturation.temperature(event.pressureAbsolute()));
        return switch (event.kind()) {
            case TEST_PRESSURE_REACHED ->
                draft("test-pressure-reached", event, when, " the pressure reaches {}.", pressure)
                        .found(pressure)
                        .by(
                                Authority.computed(
                                        "the test pressure described, or twice the working pressure, which is our own judgement"));
            case VAPOUR_FORMS ->
                run.system().tank().air().isPresent()
                        ? draft(
                                        "vapour-forms",
                                        event,
                                        when,
                                        " steam takes over the air under the top of the tank, under {}.",
                                        pressure)
                                .found(pressure)
                                .by(Codes.RUN)
                        : draft("vapour-forms", event, when, " the water boils at {} under {}.", boiling, pressure)
                                .found(boiling)
                                .by(Codes.RUN);
            case RELIEF_CHATTERS ->
                draft(
                                "relief-valve-chatters",
                                event,
                                when,
                                " " + Rule.quoted(event.device()) + " opens and closes several times a second.")
                        .by(Codes.RUN);
            case ATMOSPHERE_REACHED ->
                draft(
                                "pressure-lost",
                                event,
                                when,
                                " the pressure has fallen to that of the air: " + Findings.whyEmptied(run) + ".")
                        .by(Codes.RUN);
            case WATER_FREEZES ->
                draft(
                                "water-freezes",
                                event,
                                when,
                                event.device().isEmpty()
                                        ? " the coldest water in the tank freezes."
                                        : " the water in the " + event.device() + " freezes.")
                        .by(Codes.RUN);
            default ->
                draft(
                                "water-out-of-range",
                                event,
                                when,
                                " the water has gone beyond the temperatures and pressures the model covers, with {} at most in the run.",
                                hottest)
                        .found(hottest)
                        .by(Codes.RUN);
        };
    }

    /** What to do depends on what happened; a tank that boils or may burst is approached by nobody. */
    private static Finding.Draft draft(String id, Event event, Statement when, String happened, Measure... measures) {
        String advice = switch (id) {
            case "pressure-lost" -> DRY;
            case "relief-valve-chatters" -> OFF;
            case "water-freezes" -> THAW;
            default -> LET_NOTHING_IN;
        };
        return Finding.draft(id, Severity.HAZARD)
                .rests(id.equals("water-freezes") ? Set.of() : Deciding.HEAT)
                .says(when.then(
                        Statement.of(happened + " " + event.kind().meaning() + " The run ends there.", measures)))
                .advises(advice)
                .asks(ASK);
    }

    /** What to do about water hotter than boils in the open: one answer for all findings of a case. */
    static String emergency(AssessmentContext subject) {
        boolean lost = subject.run
                .flatMap(RunSummary::hazard)
                .filter(event -> event.kind() == Event.Kind.VAPOUR_FORMS
                        || event.kind() == Event.Kind.TEST_PRESSURE_REACHED
                        || event.kind() == Event.Kind.WATER_OUT_OF_RANGE)
                .isPresent();
        return lost ? LET_NOTHING_IN : LEAVE_THE_FEED;
    }

    private static CandidateFinding cutOut(AssessmentContext subject, RunSummary run, Event event) {
        Measure limit = temperature(subject.house.heater().cutOut().orElseThrow());
        return Finding.draft("cut-out-tripped", Severity.FAULT)
                .rests(NamedValue.CUT_OUT, NamedValue.HEATER_INPUT)
                .says(Moments.of(run.system(), run.end())
                        .at(event.time())
                        .capitalised()
                        .then(" the cut-out switched the heater off at ")
                        .then(limit)
                        .then("; the thermostat should have done so first."))
                .limit(limit)
                .advises("Leave the heater off and do not reset the cut-out until the thermostat has been checked.")
                .asks("Ask a licensed professional why the thermostat did not switch off.")
                .by(Codes.RUN);
    }
}
