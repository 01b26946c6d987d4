package io.github.heatswell.assessment;

import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The rules of the place that matter for a house, and where the house breaks them. Rules that were not read are not among
 * them: only their topics are listed, as questions for the authority.
 *
 * @param place the place
 * @param rules the rules that were read, in the order of their topics
 * @param unread the topics that matter and of which nobody read a rule of this place
 * @param vessel what the description alone shows to be wrong with a vessel, whatever the rules say of it: as in every other place; and
 *     that it, the cold pipe and the relief valve stand in frost
 */
public record RulesHere(Place place, List<Held> rules, List<Topic> unread, List<Finding> vessel) {

    /** Topics that a look at the description decides. */
    private static final Set<Topic> JUDGED = EnumSet.of(
            Topic.STATIC_LIMIT,
            Topic.EXPANSION_CONTROL,
            Topic.BYPASS,
            Topic.RELIEF_FOR_EXPANSION,
            Topic.HEAT_RELIEF,
            Topic.RELIEF_TEMPERATURE,
            Topic.RELIEF_PRESSURE,
            Topic.SUPPLY_TO_RELIEF,
            Topic.TAP_TEMPERATURE);

    /** Topics on the valve that opens on temperature, which one that never opens does not answer. */
    private static final Set<Topic> GUARDS = EnumSet.of(Topic.HEAT_RELIEF, Topic.RELIEF_TEMPERATURE);

    /** Topics on where the water goes that expands. */
    private static final Set<Topic> ON_EXPANSION = EnumSet.of(Topic.EXPANSION_CONTROL, Topic.EXPANSION_MEANS);

    /** The finding that the temperature of a relief valve is missing. */
    private static final String NO_TEMPERATURE = "temperature-relief-missing";

    /** Findings that a closed house gives its expansion nowhere to go but to a relief valve. */
    private static final Set<String> NO_CONTROL = Set.of("expansion-control-missing", "bypass-opens-too-late");

    /** How the findings begin that are about a vessel. */
    private static final List<String> OF_THE_VESSEL = List.of("precharge-", "vessel-");

    /** What became of a rule. */
    public enum Verdict {
        /** The house has something against it. */
        AGAINST,
        /** Nothing in the description is against it. */
        KEPT,
        /** It leaves the matter open. */
        OPEN,
        /** A run has to show it. */
        BY_A_RUN,
        /** It has to be looked at in the house. */
        ON_SITE,
        /** It asks for a cut-out that does not reset itself; which kind the one described is, nobody has said. */
        CUT_OUT_ON_SITE,
        /** Water can flow back to the mains, and once a check valve is fitted it holds in full. */
        ONCE_CLOSED,
        /** It holds in a smaller region, which it names. */
        ELSEWHERE,
        /** It stands in an older standard, and another decides. */
        OLDER,
        /** The place is not known. */
        NOT_KNOWN
    }

    /**
     * A rule and what became of it.
     *
     * @param rule the rule, which was read
     * @param verdict what became of it
     * @param finding what the house has against it, or what of it has to be looked at; mostly empty for other verdicts
     */
    public record Held(PlaceRule rule, Verdict verdict, Optional<Finding> finding) {

        /**
         * Checks that everything is there.
         *
         * @param rule the rule, which was read
         * @param verdict what became of it
         * @param finding what the house has against it, or what of it has to be looked at; mostly empty for other verdicts
         * @throws IllegalArgumentException if nobody read the rule
         */
        public Held {
            Objects.requireNonNull(verdict, "verdict");
            Objects.requireNonNull(finding, "finding");
            if (!rule.isRead()) {
                throw new IllegalArgumentException("rule: nobody read " + rule.words());
            }
        }
    }

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param place the place
     * @param rules the rules that were read, in the order of their topics
     * @param unread the topics that matter and of which nobody read a rule of this place
     * @param vessel what the description alone shows to be wrong with a vessel, and frost
     */
    public RulesHere {
        Objects.requireNonNull(place, "place");
        rules = List.copyOf(rules);
        unread = List.copyOf(unread);
        vessel = List.copyOf(vessel);
    }

    /**
     * Looks at a house.
     *
     * @param house the house
     * @param doubts what is not known of it
     * @return the rules of its place; of a place that is not known, those of all places that state a number or ask for something
     */
    public static RulesHere of(HotWaterSystem house, Doubts doubts) {
        Place place = house.site().place();
        List<Finding> findings = Findings.of(house, doubts);
        List<Topic> topics = Arrays.stream(Topic.values())
                .filter(topic -> matters(topic, house))
                .toList();
        return new RulesHere(
                place,
                topics.stream()
                        .flatMap(topic -> place.rules(topic).stream())
                        .filter(rule -> place.isKnown()
                                || rule.limit().isPresent()
                                || rule.demand().isPresent())
                        .map(rule -> withCutOut(held(rule, house, findings)))
                        .toList(),
                topics.stream().filter(topic -> place.rules(topic).isEmpty()).toList(),
                findings.stream()
                        .filter(finding ->
                                isOfTheVessel(finding) || finding.id().equals(FrostRule.LIKELY))
                        .toList());
    }

    /**
     * The rules that the house has something against.
     *
     * @return the rules with their findings, possibly none
     */
    public List<Held> against() {
        return rules.stream().filter(held -> held.verdict() == Verdict.AGAINST).toList();
    }

    private static Held held(PlaceRule rule, HotWaterSystem house, List<Finding> findings) {
        Place place = house.site().place();
        String source = Finding.Authority.of(rule).source().text();
        boolean onlyFault = isOpen(rule) || rule.topic() == Topic.HEAT_RELIEF;
        Finding.Severity least = onlyFault ? Finding.Severity.FAULT : Finding.Severity.CAUTION;
        Optional<Finding> finding = findings.stream()
                .filter(one -> one.severity().compareTo(least) <= 0)
                .filter(one -> !one.id().equals(OverheatGuardRule.NO_CUT_OUT)
                        || house.heater().isCutOutAbsent())
                .filter(one -> one.authority().source().text().startsWith(source) || breaks(rule, one, house))
                .findFirst();
        if (!place.isKnown()) {
            return new Held(rule, Verdict.NOT_KNOWN, Optional.empty());
        }
        if (finding.isPresent()) {
            // what limits the water at a tap may be at that tap, and no description says what is there
            // what rests on a value that nobody has read is no breach yet
            boolean open = rule.topic() == Topic.TAP_TEMPERATURE || isOpen(finding.get(), house);
            return new Held(rule, open ? Verdict.ON_SITE : Verdict.AGAINST, finding);
        }
        Optional<Finding> missing =
                findings.stream().filter(one -> one.id().equals(NO_TEMPERATURE)).findFirst();
        Verdict verdict = unopposed(rule, house);
        Optional<Finding> vessel =
                findings.stream().filter(RulesHere::isOfTheVessel).findFirst();
        if (verdict == Verdict.KEPT && rule.topic() == Topic.EXPANSION_CONTROL && vessel.isPresent()) {
            // the vessel is there, but whether it takes the expansion is another matter
            return new Held(rule, Verdict.BY_A_RUN, vessel);
        }
        return verdict == Verdict.KEPT && rule.topic() == Topic.HEAT_RELIEF && missing.isPresent()
                ? new Held(rule, Verdict.ON_SITE, missing)
                : new Held(rule, verdict, Optional.empty());
    }

    /** A rule that asks for a cut-out besides the valve is not kept by the valve alone, nor by a cut-out of which no more is known. */
    private static Held withCutOut(Held held) {
        PlaceRule rule = held.rule();
        boolean asked = rule.topic() == Topic.HEAT_RELIEF && rule.place() == Place.UK;
        if (!asked || held.verdict() != Verdict.KEPT && held.verdict() != Verdict.ON_SITE) {
            return held;
        }
        return held.finding().isPresent() ? held : new Held(rule, Verdict.CUT_OUT_ON_SITE, Optional.empty());
    }

    /**
     * Whether a finding that the expansion has nowhere to go, or that a guard is lost, breaks a rule, whatever rule the finding itself
     * names.
     */
    private static boolean breaks(PlaceRule rule, Finding finding, HotWaterSystem house) {
        if (GUARDS.contains(rule.topic()) && (rule.requires() || rule.limit().isPresent())) {
            return finding.id().equals("relief-valve-missing")
                    || finding.id().equals("relief-valve-blocked") && isHeatGuardLost(house);
        }
        if (!NO_CONTROL.contains(finding.id()) || finding.severity() != Finding.Severity.FAULT) {
            return false;
        }
        return switch (rule.topic()) {
            case BYPASS -> rule.requires();
            case RELIEF_FOR_EXPANSION -> rule.requires() && opensByHeat(house);
            case PEAK_LIMIT ->
                rule.limit().isPresent()
                        && finding.limit()
                                .filter(gives -> Rule.readsAbove(
                                        gives.value(), rule.limit().getAsDouble()))
                                .isPresent();
            default -> false;
        };
    }

    private static boolean isOfTheVessel(Finding finding) {
        return finding.severity() == Finding.Severity.FAULT
                && OF_THE_VESSEL.stream().anyMatch(finding.id()::startsWith);
    }

    /** Whether a relief valve was there to open on temperature, and none of them opens any more. */
    private static boolean isHeatGuardLost(HotWaterSystem house) {
        List<ReliefValve> guards = house.reliefValves().stream()
                .filter(OverheatGuardRule::guardsAgainstHeat)
                .toList();
        return !guards.isEmpty()
                && guards.stream().allMatch(valve -> valve.condition() == ReliefFault.Condition.BLOCKED);
    }

    /** Whether the relief valve that would open first is a temperature and pressure relief valve. */
    private static boolean opensByHeat(HotWaterSystem house) {
        return new AssessmentContext(house, Optional.empty())
                .firstRelief()
                .filter(OverheatGuardRule::guardsAgainstHeat)
                .isPresent();
    }

    /** Whether the house has no expansion control for sure, so that a relief valve is its only outlet. */
    private static boolean reliesOnRelief(HotWaterSystem house) {
        AssessmentContext subject = new AssessmentContext(house, Optional.empty());
        return !subject.open() && subject.soundVessel().isEmpty();
    }

    /** Whether it would weigh more if every value of the house were known. */
    private static boolean isOpen(Finding finding, HotWaterSystem house) {
        return Findings.of(house).stream()
                .anyMatch(sure ->
                        sure.id().equals(finding.id()) && sure.severity().compareTo(finding.severity()) < 0);
    }

    /** Whether it leaves the matter open, so that only a fault is against it. */
    private static boolean isOpen(PlaceRule rule) {
        return rule.demand().filter(PlaceRule.Demand.OPTIONAL::equals).isPresent();
    }

    private static Verdict unopposed(PlaceRule rule, HotWaterSystem house) {
        Place place = house.site().place();
        Topic topic = rule.topic();
        if (!place.rules(topic).get(0).equals(rule)) {
            return besides(rule);
        }
        if (ON_EXPANSION.contains(topic) && house.supply().arrangement() == Supply.Arrangement.DIRECT) {
            return Verdict.ONCE_CLOSED;
        }
        if (isOpen(rule)) {
            return Verdict.OPEN;
        }
        if (topic == Topic.PEAK_LIMIT) {
            return Verdict.BY_A_RUN;
        }
        if (topic == Topic.RELIEF_FOR_EXPANSION && house.supply().arrangement() != Supply.Arrangement.DIRECT) {
            // a vessel may be too small, or have lost its charge
            return reliesOnRelief(house) ? Verdict.ON_SITE : Verdict.BY_A_RUN;
        }
        return JUDGED.contains(topic) && (rule.limit().isPresent() || rule.requires()) ? Verdict.KEPT : Verdict.ON_SITE;
    }

    /** What becomes of a rule beside the one that decides its topic. */
    private static Verdict besides(PlaceRule rule) {
        if (rule.isLocal()) {
            return Verdict.ELSEWHERE;
        }
        if (rule.topic() == Topic.EXPANSION_CONTROL && rule.limit().isPresent()) {
            // which heaters it is for is read in two ways
            return Verdict.ON_SITE;
        }
        return Verdict.OLDER;
    }

    private static boolean matters(Topic topic, HotWaterSystem house) {
        boolean closed = house.supply().arrangement() != Supply.Arrangement.DIRECT;
        boolean relief = !house.reliefValves().isEmpty();
        boolean byHeat =
                house.reliefValves().stream().map(ReliefValve::setTemperature).anyMatch(at -> at.isPresent());
        return switch (topic) {
            case BYPASS -> house.supply().reducingValve().isPresent();
            case VESSEL -> closed || house.vessel().isPresent();
            case RELIEF_TEMPERATURE, RELIEF_PRESSURE -> byHeat;
            case RELIEF_FOR_EXPANSION, RELIEF_CAPACITY, SUPPLY_TO_RELIEF, FULL_FLOW, DISCHARGE_PIPE, VALVES_BETWEEN ->
                relief;
            case EXPANSION_CONTROL,
                    EXPANSION_MEANS,
                    TAP_TEMPERATURE,
                    STORAGE_TEMPERATURE,
                    STATIC_LIMIT,
                    PEAK_LIMIT,
                    HEAT_RELIEF,
                    UPKEEP,
                    WHO_MAY_WORK -> true;
        };
    }
}
