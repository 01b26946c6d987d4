package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Applies every rule to a house or a run. */
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
            new ChargeAbovePlateRule(),
            new PrechargeRule(),
            new SupplyRule(),
            new SurgeRule(),
            new ReliefSettingRule(),
            new ExpansionValveRule(),
            new PeakRule(),
            new FrostRule(),
            new HiddenExpansionRule(),
            new HotBranchRule(),
            new CirculationRule(),
            new VesselWeightRule(),
            new IdleHeaterRule(),
            new WaterTemperatureRule(),
            new MixedWaterRule());

    private Findings() {}

    /**
     * What can be said of a house without running it.
     *
     * @param house the house
     * @return the findings, the gravest first and otherwise in a fixed order; unmodifiable
     */
    public static List<Finding> of(HotWaterSystem house) {
        return of(new AssessmentContext(Objects.requireNonNull(house, "house"), Optional.empty()));
    }

    /**
     * What can be said of a run and of the house that was run.
     *
     * @param run what the run found
     * @return the findings, the gravest first and otherwise in a fixed order; unmodifiable
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
     * @return the findings, the gravest first and otherwise in a fixed order; unmodifiable
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
     * @return the findings, the gravest first and otherwise in a fixed order; unmodifiable
     */
    public static List<Finding> of(RunSummary run, Doubts doubts) {
        Objects.requireNonNull(run, "run");
        return of(new AssessmentContext(run.system(), Optional.of(run), Objects.requireNonNull(doubts, "doubts")));
    }

    /**
     * Whether the seat of a reducing valve leaks, so that the pressure climbs while nothing is drawn, whatever the vessel.
     *
     * @param house the house
     * @return whether it does
     */
    public static boolean creeps(HotWaterSystem house) {
        return new AssessmentContext(house, Optional.empty()).creeps();
    }

    /**
     * The expansion in a full heat-up from cold, as cold water and less the thermal growth of the tank: the most that
     * a relief valve discharges in one.
     *
     * @param house the house
     * @return the volume (m3)
     */
    public static double expansion(HotWaterSystem house) {
        return VesselSizeRule.expansion(new AssessmentContext(house, Optional.empty()));
    }

    /**
     * What to do about water above its boiling point that pressure still keeps liquid.
     *
     * @return whole sentences
     */
    public static String keepAway() {
        return HazardRule.LEAVE_THE_FEED;
    }

    /**
     * Why the pressure of a house has fallen to that of the air.
     *
     * @param run a run that ended so
     * @return a clause, such as {@code a tap is open while the supply is shut off}
     */
    public static String whyEmptied(RunSummary run) {
        HotWaterSystem house = run.system();
        Optional<String> stuck = house.reliefValves().stream()
                .filter(valve -> valve.condition() == ReliefFault.Condition.STUCK_OPEN)
                .map(valve -> Rule.quoted(valve.name()) + " is stuck open")
                .findFirst();
        Optional<String> empties = lasts(run, Interval.Phase.DRAW)
                ? Optional.of("a tap is open")
                : stuck.or(() -> house.leaks().isEmpty() ? Optional.empty() : Optional.of("water leaks out"));
        return lasts(run, Interval.Phase.SUPPLY_SHUT_OFF)
                ? empties.orElse("the water cools and shrinks") + " while the supply is shut off"
                : empties.map(way -> way + " and the supply does not keep up")
                        .orElse("the supply does not hold it higher");
    }

    /** Whether something went on when the run ended. */
    private static boolean lasts(RunSummary run, Interval.Phase phase) {
        return run.intervals(phase).stream().anyMatch(interval -> interval.contains(run.end()));
    }

    static List<Finding> of(AssessmentContext subject) {
        return CandidateFinding.kept(all(subject), subject.doubts).stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** What every rule says, before it is weighed and anything is left out beside something else. */
    static List<CandidateFinding> all(AssessmentContext subject) {
        List<CandidateFinding> all = new ArrayList<>();
        RULES.forEach(rule -> rule.look(subject, all::add));
        boolean hazard = all.stream().anyMatch(found -> found.finding().severity() == Severity.HAZARD);
        new WaterLossRule(hazard).look(subject, all::add);
        return List.copyOf(all);
    }
}
