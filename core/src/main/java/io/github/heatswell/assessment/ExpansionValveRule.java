package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.volume;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** A safety group or expansion valve on the cold inlet: its job is to discharge the expansion, and it has to open first. */
final class ExpansionValveRule implements Rule {

    static final String MISSING = "expansion-valve-missing";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        List<ReliefValve> guards = subject.working().stream()
                .filter(valve -> valve.setTemperature().isPresent())
                .toList();
        boolean asked = subject.place
                .demand(Topic.EXPANSION_MEANS)
                .filter(PlaceRule::requires)
                .isPresent();
        if (asked && !guards.isEmpty() && guards.size() == subject.working().size() && !subject.open()) {
            found.accept(missing(subject, guards.get(0)));
        }
        subject.working().stream()
                .filter(valve -> valve.kind().takesExpansion())
                .forEach(valve -> guards.stream()
                        .filter(guard -> !Rule.exceeds(subject.setPressure(guard), subject.setPressure(valve)))
                        .findFirst()
                        .ifPresent(guard -> found.accept(opensAfter(subject, valve, guard))));
    }

    /** Only valves that open on temperature are described: whatever a vessel does not take, they have to discharge. */
    private static CandidateFinding missing(AssessmentContext subject, ReliefValve guard) {
        boolean opened = !subject.drivenUp()
                && subject.run
                        .filter(run -> run.openings(guard.name()).anyMatch(Event::openedByPressure))
                        .isPresent();
        boolean sound = subject.soundVessel().isPresent();
        String last = Rule.quoted(guard.name()) + ", the last safeguard, ";
        return Finding.draft(MISSING, opened || !sound ? Severity.FAULT : Severity.CAUTION)
                .compares(NamedValue.SET_TEMPERATURE)
                .about(guard)
                .says("No expansion valve is described, and the rules here name one besides the vessel. "
                        + (opened
                                ? "So " + last + "discharged the expansion in the run. It must not be left to that."
                                : (sound ? "Should the vessel fail, lose its precharge or be too small, " : "So ")
                                        + last + "would discharge the expansion. It must not be left to that."))
                .advisesWork(
                        "Look for an expansion valve on the cold feed and add it to the description: it opens at a lower"
                                + " pressure, so the vessel may have to be larger. If there is none, have one fitted."
                                + " Never plug, cap or alter the temperature and pressure relief valve.")
                .by(subject.by(Topic.EXPANSION_MEANS, Codes.MADE_FOR_EXPANSION));
    }

    /** What is expected of such a valve in a house without a vessel, before a run. */
    static CandidateFinding provided(AssessmentContext subject, ReliefValve valve) {
        return advised(
                        subject,
                        valve,
                        Finding.draft("expansion-valve-provided", severity(subject, valve))
                                .unless("expansion-valve-works"))
                .says(
                        Rule.quoted(valve.name())
                                + ", on the cold inlet, is there to discharge the expansion. It drips on every heat-up that drives"
                                + " the pressure to {}: that is its job.",
                        gauge(subject.setPressure(valve)))
                .limit(gauge(subject.setPressure(valve)))
                .by(authority(subject, valve));
    }

    /** What such a valve did in a run. */
    static CandidateFinding works(
            AssessmentContext subject, RunSummary run, ReliefValve valve, String often, Statement limits) {
        double discharged = discharged(run, valve);
        String guards = subject.working().stream()
                .filter(guard -> guard.setTemperature().isPresent())
                .filter(guard -> run.openings(guard.name()).findAny().isEmpty())
                .findFirst()
                .map(guard -> " " + Rule.quoted(guard.name()) + " stayed shut, as it should.")
                .orElse("");
        return advised(subject, valve, Finding.draft("expansion-valve-works", severity(subject, valve)))
                .says(Statement.of(
                                Rule.quoted(valve.name())
                                        + " is there to discharge the expansion on the cold inlet. It opened " + often
                                        + " and discharged {}",
                                volume(discharged))
                        .then(WaterLossRule.inAYear(subject, run, discharged))
                        .then(Statement.of(guards))
                        .then(limits))
                .found(volume(discharged))
                .by(authority(subject, valve));
    }

    /** What a valve discharged in a run (m3). */
    static double discharged(RunSummary run, ReliefValve valve) {
        return run.totals().relief().stream()
                .filter(relief -> relief.name().equals(valve.name()))
                .mapToDouble(Totals.Relief::volume)
                .sum();
    }

    private static Finding.Draft advised(AssessmentContext subject, ReliefValve valve, Finding.Draft draft) {
        String keep = "Let the " + valve.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                + " drip, keep its discharge pipe open and in sight, and never plug, cap or downsize it."
                + ExpansionRule.MAY_END
                + " The water expands by about {} in a heat-up from cold. Much more than that, or water still running long after"
                + " the heater went off, is not expansion.";
        return draft.rests(Deciding.HEAT_UP)
                .about(valve)
                .advises(keep, volume(VesselSizeRule.expansion(subject)))
                .asks(ExpansionRule.ASK);
    }

    /** Where the rules of the place were read and name such a valve only among the means, somebody has to agree to it. */
    private static Severity severity(AssessmentContext subject, ReliefValve valve) {
        return subject.leavesExpansionTo(valve) ? Severity.NOTE : Severity.CAUTION;
    }

    private static Finding.Authority authority(AssessmentContext subject, ReliefValve valve) {
        return subject.leavesExpansionTo(valve)
                ? Codes.MADE_FOR_EXPANSION
                : subject.by(Topic.EXPANSION_MEANS, Codes.MADE_FOR_EXPANSION);
    }

    private static CandidateFinding opensAfter(AssessmentContext subject, ReliefValve valve, ReliefValve guard) {
        return Finding.draft("expansion-valve-opens-late", Severity.CAUTION)
                .compares(NamedValue.SET_PRESSURE)
                .about(valve)
                .says(
                        Rule.quoted(valve.name()) + " opens at {} at the tank, not below " + Rule.quoted(guard.name())
                                + " at {}. So the temperature and pressure relief valve, meant as the last safeguard, discharges"
                                + " the expansion instead, and hot.",
                        gauge(subject.setPressure(valve)),
                        gauge(subject.setPressure(guard)))
                .found(gauge(subject.setPressure(valve)))
                .limit(gauge(subject.setPressure(guard)))
                .advisesWork(
                        "Have the valve on the cold inlet replaced with one set clearly lower. Never plug, cap or alter"
                                + " the temperature and pressure relief valve.")
                .by(Codes.OPENS_FIRST);
    }
}
