package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Findings of a house or a run, by every rule. */
public final class Findings {

    /** All rules, in the order in which findings of the same severity are listed. */
    private static final List<Rule> RULES = List.of(
            new HazardRule(),
            new BoilingRule(),
            new ReliefOpeningRule(),
            new FaultRule(),
            new OverheatGuardRule(),
            new TankRatingRule(),
            new ExpansionRule(),
            new VesselSizeRule(),
            new PrechargeRule(),
            new SupplyRule(),
            new ReliefSettingRule(),
            new PeakRule(),
            new HiddenExpansionRule(),
            new VesselWeightRule(),
            new IdleHeaterRule(),
            new WaterTemperatureRule(),
            new MixedWaterRule());

    private Findings() {}

    /**
     * What can be said of a house without running it.
     *
     * @param house the house
     * @return the findings, the gravest first, then in an order that never changes; never changed
     */
    public static List<Finding> of(HotWaterSystem house) {
        return of(new AssessmentContext(Objects.requireNonNull(house, "house"), Optional.empty()));
    }

    /**
     * What can be said of a run and of the house that was run.
     *
     * @param run what the run found
     * @return the findings, the gravest first, then in an order that never changes; never changed
     */
    public static List<Finding> of(RunSummary run) {
        Objects.requireNonNull(run, "run");
        return of(new AssessmentContext(run.system(), Optional.of(run)));
    }

    /**
     * What can be said of a house of which not everything is known.
     *
     * @param house the house
     * @param doubts what is not known: findings that rest on it say so
     * @return the findings, the gravest first, then in an order that never changes; never changed
     */
    public static List<Finding> of(HotWaterSystem house, Doubts doubts) {
        return of(new AssessmentContext(
                Objects.requireNonNull(house, "house"), Optional.empty(), Objects.requireNonNull(doubts, "doubts")));
    }

    /**
     * What can be said of a run of a house of which not everything is known.
     *
     * @param run what the run found
     * @param doubts what is not known: findings that rest on it say so
     * @return the findings, the gravest first, then in an order that never changes; never changed
     */
    public static List<Finding> of(RunSummary run, Doubts doubts) {
        Objects.requireNonNull(run, "run");
        return of(new AssessmentContext(run.system(), Optional.of(run), Objects.requireNonNull(doubts, "doubts")));
    }

    /**
     * Tells whether the seat of a reducing valve leaks, so that the pressure climbs while nothing is drawn, whatever the vessel.
     *
     * @param house the house
     * @return whether it does
     */
    public static boolean creeps(HotWaterSystem house) {
        return new AssessmentContext(house, Optional.empty()).creeps();
    }

    static List<Finding> of(AssessmentContext subject) {
        return Found.kept(all(subject), subject.doubts).stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** What every rule says, before it is weighed and anything is left out beside something else. */
    static List<Found> all(AssessmentContext subject) {
        List<Found> all = new ArrayList<>();
        RULES.forEach(rule -> rule.look(subject, all::add));
        boolean hazard = all.stream().anyMatch(found -> found.finding().severity() == Severity.HAZARD);
        new WaterLossRule(hazard).look(subject, all::add);
        return List.copyOf(all);
    }
}
