package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.function.Consumer;

/** A relief valve that opened in a run: by temperature, or by pressure, which makes it the means of expansion control. */
final class ReliefOpeningRule implements Rule {

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.run.ifPresent(run -> subject.house.reliefValves().forEach(valve -> look(subject, run, valve, found)));
    }

    private static void look(
            AssessmentContext subject, RunSummary run, ReliefValve valve, Consumer<CandidateFinding> found) {
        if (run.openedByTemperature(valve.name()).findAny().isPresent()) {
            found.accept(byTemperature(subject, valve));
        }
        long times = run.openings(valve.name()).filter(Event::openedByPressure).count();
        if (times > 0 && !subject.open() && subject.soundVessel().isEmpty() && !subject.drivenUp()) {
            String often = often(times, run.openings(valve.name()).count());
            found.accept(
                    subject.isItsWork(valve)
                            ? ExpansionValveRule.works(subject, run, valve, often, limits(subject))
                            : controlling(subject, run, valve, often));
        }
    }

    private static CandidateFinding byTemperature(AssessmentContext subject, ReliefValve valve) {
        Measure limit = Measure.temperature(valve.setTemperature().orElseThrow());
        return Finding.draft("relief-valve-opened-by-heat", Severity.HAZARD)
                .rests(NamedValue.SET_TEMPERATURE, NamedValue.HEATER_INPUT)
                .about(valve)
                .says(
                        Rule.quoted(valve.name())
                                + " opened because the water had reached {}, where it is the last safeguard.",
                        limit)
                .limit(limit)
                .advises(HazardRule.emergency(subject) + " Never plug or cap the valve.")
                .asks(
                        "Ask a licensed professional why the thermostat did not stop the heater, and to check the cut-out before it"
                                + " is used again.")
                .by(Codes.RUN);
    }

    private static CandidateFinding controlling(
            AssessmentContext subject, RunSummary run, ReliefValve valve, String often) {
        Measure set = gauge(valve.setPressure(), subject.atmosphere);
        boolean may = subject.mayDischargeExpansion(valve);
        boolean refused = !may && subject.isExpansionValve(valve);
        Finding.Draft draft = Finding.draft("relief-valve-controls-expansion", may ? Severity.CAUTION : Severity.FAULT)
                .rests(Deciding.HEAT_UP)
                .unless("vessel-isolated", "vessel-waterlogged", "vessel-upstream-of-check", "bypass-opens-too-late")
                .says(Statement.of(
                                Rule.quoted(valve.name()) + ", set to {}, opened " + often
                                        + " because the heated water had nowhere else to go."
                                        + (refused ? " That is its job, but the rules here ask for more." : ""),
                                set)
                        .then(fed(subject, run, valve))
                        .then(limits(subject)))
                .found(gauge(subject.peak()))
                .limit(set)
                .asks(ExpansionRule.ASK);
        return (may && !(subject.fed(valve) > 0)
                        ? draft.advises(ExpansionRule.mayDrip(subject) + ExpansionRule.NEVER_PLUG)
                        : draft.advisesWork(ExpansionRule.HAVE_FITTED + ExpansionRule.NEVER_PLUG))
                .by(
                        refused
                                ? subject.by(Topic.EXPANSION_CONTROL, Codes.EXPANSION_CONTROL)
                                : subject.by(
                                        Topic.RELIEF_FOR_EXPANSION,
                                        may ? Codes.RELIEF_MAY_DRIP : Codes.RELIEF_IS_NO_CONTROL));
    }

    /** What is not expansion of what a valve discharged. */
    private static Statement fed(AssessmentContext subject, RunSummary run, ReliefValve valve) {
        return !(subject.fed(valve) > 0)
                ? Statement.plain("")
                : Statement.of(
                        " Once open, it ran on water from the supply for {}. It discharged {}, while a heat-up from cold expands the"
                                + " water by only about {}.",
                        Measure.time(subject.fed(valve)),
                        Measure.volume(ExpansionValveRule.discharged(run, valve)),
                        Measure.volume(VesselSizeRule.expansion(subject)));
    }

    private static Statement limits(AssessmentContext subject) {
        return PeakRule.beyondCode(subject, subject.peak())
                .map(rule -> aboveCode(subject, rule))
                .orElse(Statement.plain(""));
    }

    /** The limit that heating passes before a valve opens, with its clause. */
    private static Statement aboveCode(AssessmentContext subject, PlaceRule rule) {
        return Statement.of(
                " By then the pressure had passed {}, the limit "
                        + (subject.place.isKnown() ? "the rules here set" : "US model codes set")
                        + " for expansion control (" + Statement.literal(rule.clause()) + ").",
                gauge(rule.limit().orElseThrow()));
    }

    private static String often(long byPressure, long all) {
        String run = QuantityFormat.times(all) + " in the run";
        return byPressure == all ? run : run + ", " + byPressure + " of them";
    }
}
