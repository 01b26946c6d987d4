package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import java.util.function.Consumer;

/** A supply too close to the set pressure of a relief valve, or to the pressure at which it closes. */
final class ReliefSettingRule implements Rule {

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.working().stream()
                .filter(valve -> valve.condition() != ReliefFault.Condition.STUCK_OPEN)
                .forEach(valve -> look(subject, valve, found));
    }

    private static void look(AssessmentContext subject, ReliefValve valve, Consumer<CandidateFinding> found) {
        PlaceRule rule = subject.limits(Topic.SUPPLY_TO_RELIEF).get(0);
        double share = rule.limit().orElseThrow();
        Authority authority = subject.hasLimit(Topic.SUPPLY_TO_RELIEF) ? Authority.of(rule) : Codes.SUPPLY_TO_RELIEF;
        double lift = subject.lift(valve.height());
        double supply = subject.highestStatic() - lift;
        double set = valve.setPressure().gauge(subject.atmosphere);
        double reseatPressure = valve.reseatPressure().gauge(subject.atmosphere);
        if (Rule.reaches(supply, set)) {
            found.accept(runs(subject, valve, gauge(supply), gauge(set)).by(authority));
        } else if (Rule.reaches(supply, reseatPressure)) {
            found.accept(keepsRunning(subject, valve, gauge(supply), gauge(reseatPressure))
                    .by(authority));
        } else if (Rule.readsAbove(supply, share * set)) {
            found.accept(close(subject, valve, gauge(supply), gauge(set), gauge(share * set))
                    .by(authority));
        }
    }

    private static String lower(AssessmentContext subject) {
        return "Have a pressure reducing valve fitted or set lower" + matched(subject);
    }

    /** What goes with a supply that is lowered: the end of a sentence. */
    static String matched(AssessmentContext subject) {
        return switch (subject.house.vessels().size()) {
            case 0 -> ".";
            case 1 -> ", and the precharge of the vessel matched to it.";
            default -> ", and the precharge of every vessel matched to it.";
        };
    }

    private static Finding.Draft runs(AssessmentContext subject, ReliefValve valve, Measure supply, Measure set) {
        return Finding.draft("supply-opens-relief-valve", Severity.FAULT)
                .compares(Deciding.STATIC, NamedValue.SET_PRESSURE)
                .about(valve)
                .says(
                        "The supply reaches {} at " + Rule.quoted(valve.name())
                                + ", which opens at {}: it runs without any" + " heating.",
                        supply,
                        set)
                .found(supply)
                .limit(set)
                .advisesWork(
                        lower(subject)
                                + " Never plug or cap the relief valve, nor replace it with one set above the tank's working pressure.");
    }

    private static Finding.Draft keepsRunning(
            AssessmentContext subject, ReliefValve valve, Measure supply, Measure reseatPressure) {
        return Finding.draft("relief-reseats-below-supply", Severity.FAULT)
                .compares(Deciding.STATIC, NamedValue.SET_PRESSURE, NamedValue.RESEAT_PRESSURE)
                .about(valve)
                .says(
                        "Once open, " + Rule.quoted(valve.name())
                                + " reseats at {}, but the supply pressure there reaches {}: it then"
                                + " keeps running.",
                        reseatPressure,
                        supply)
                .found(reseatPressure)
                .limit(supply)
                .advisesWork(
                        subject.closesTooLow(valve)
                                ? FaultRule.REPLACE
                                : "Have the supply pressure lowered by a reducing valve; never plug or cap the relief valve.")
                .asks("Ask a licensed plumber whether the valve is worn or the supply too high for it.");
    }

    private static Finding.Draft close(
            AssessmentContext subject, ReliefValve valve, Measure supply, Measure set, Measure limit) {
        return Finding.draft("supply-near-relief-set", Severity.CAUTION)
                .compares(Deciding.STATIC, NamedValue.SET_PRESSURE)
                .about(valve)
                .says(
                        "The supply reaches {} at " + Rule.quoted(valve.name())
                                + ", which opens at {}: above {} there is too little room for the expansion.",
                        supply,
                        set,
                        limit)
                .found(supply)
                .limit(limit)
                .advisesWork(lower(subject));
    }
}
