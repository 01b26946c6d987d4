package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Yes or no to a question that asks whether the vessel of the house is good enough: questions of that one kind begin
 * with their answer. Others have too many forms to be understood for sure, and the headline answers them.
 */
final class VesselVerdict {

    private static final Pattern ASKED = Pattern.compile(
            "(?is)\\s*(is|are|will|would|does|do|can)\\b.*\\b(vessel|expansion tank)\\b.*\\b(enough|adequate|sufficient|suffice)\\b.*");

    /** A question turned round, or two in one, is not answered in one word. */
    private static final Pattern TURNED =
            Pattern.compile("(?is).*(\\b(not|no|without|too|or|why|how|which|what)\\b|n't).*");

    /** What is told before a question: whole sentences, none of which asks anything. */
    private static final Pattern BEFORE =
            Pattern.compile("(?s)\\A(?:[^?]*?[.!]\\s+)+(?=[^?.!]*(?:\\.\\d[^?.!]*)*\\?\\s*\\z)");

    /** What is wrong with a vessel, by finding, in the order in which it is stated. */
    private static final Map<String, String> AGAINST = new LinkedHashMap<>();

    /** What else speaks against it, told where nothing is found to be wrong with it and no hazard drives the pressure. */
    private static final Map<String, String> PASSED = new LinkedHashMap<>();

    /** What is put right with a pump, and says nothing against the size. */
    private static final List<String> CHARGE = List.of("its precharge is too low", "its precharge is too high");

    static {
        AGAINST.put("vessel-isolated", "its isolating valve is closed");
        AGAINST.put("vessel-waterlogged", "it has lost its gas");
        AGAINST.put("vessel-upstream-of-check", "it sits on the wrong side of the supply valve");
        AGAINST.put("vessel-above-supply", "the supply hardly reaches it");
        AGAINST.put("precharge-below-static", CHARGE.get(0));
        AGAINST.put("precharge-above-static", CHARGE.get(1));
        AGAINST.put("vessel-too-small", "it is too small");
        AGAINST.put("vessel-bottomed-out", "it fills completely");
        PASSED.put("vessel-rating-exceeded", "the pressure goes above its rating");
        PASSED.put("working-pressure-exceeded", "the pressure goes above the tank's working pressure");
        PASSED.put("peak-above-code-limit", "the pressure goes above what US model codes allow");
        PASSED.put("peak-near-relief", "the peak comes too close to the relief valve's setting");
    }

    private VesselVerdict() {}

    /** Whether somebody asks if the vessel of a house is good enough. */
    private static boolean isAsked(String question, HotWaterSystem house) {
        String last = BEFORE.matcher(question).replaceFirst("");
        return house.vessel().isPresent()
                && ASKED.matcher(last).matches()
                && !TURNED.matcher(last).matches();
    }

    /** The answer that a run gives, such as {@code No: it is too small.}; empty if that was not asked. */
    static Optional<String> of(String question, RunSummary run, Doubts doubts) {
        HotWaterSystem house = run.system();
        if (!isAsked(question, house)) {
            return Optional.empty();
        }
        List<Finding> found = Findings.of(run, doubts);
        boolean hazard = found.stream().anyMatch(finding -> finding.severity() == Severity.HAZARD);
        List<String> wrong = told(AGAINST, found);
        List<String> against = wrong.isEmpty() && !hazard ? told(PASSED, found) : wrong;
        if (!against.isEmpty()) {
            return Optional.of(
                    CHARGE.containsAll(against)
                            ? "Not as it is charged: " + against.get(0) + "."
                            : "No: " + String.join(", and ", against) + ".");
        }
        boolean works =
                house.vessels().stream().anyMatch(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND);
        if (hazard || !works) {
            return Optional.of("That cannot be answered until the hazard above is dealt with.");
        }
        return ReliefWords.of(run).cause() != ReliefWords.Cause.NONE
                ? Optional.of("No: in this run the relief valve discharges.")
                : Optional.of("Yes: in this run it keeps the pressure within every limit checked.");
    }

    private static List<String> told(Map<String, String> words, List<Finding> found) {
        return words.entrySet().stream()
                .filter(entry -> found.stream().anyMatch(finding -> finding.id().equals(entry.getKey())))
                .map(Map.Entry::getValue)
                .toList();
    }

    /** The answer of a sizing, also unasked: whether the vessel that is there will do, and first what keeps it from working. */
    static Optional<Statement> of(String question, SizeAdvice advice) {
        if (advice.stuckOpen().isPresent() || advice.sizing().outcome() != SizingResult.Outcome.SIZED) {
            return Optional.empty();
        }
        Optional<ExpansionVessel> idle = advice.house()
                .vessel()
                .filter(only -> !advice.house().hasSeveralVessels())
                .filter(only -> only.condition() != ExpansionVessel.Condition.SOUND);
        if (idle.isPresent()) {
            return Optional.of(idle(isAsked(question, advice.house()) ? "No: the " : "The ", idle.get(), advice));
        }
        if (advice.house().hasSeveralVessels()) {
            String word = isAsked(question, advice.house()) ? "No: together " : "Together ";
            String names = advice.house().vesselNames().stream()
                    .map(name -> "“" + name + "”")
                    .collect(Collectors.joining(" and "));
            return Optional.of(Statement.plain(word + names + ", as they are, are too small."));
        }
        return sound(advice.house()).map(vessel -> {
            boolean enough = isEnough(vessel, advice.sizing());
            boolean sure = advice.kept().isPresent();
            String word = isAsked(question, advice.house()) ? enough ? "Yes: the " : "No: the " : "The ";
            boolean large = sure || advice.madeFor().isPresent() && isLarge(vessel, advice);
            String how = large ? "large enough" : "just large enough by the best estimates";
            return Statement.plain(word)
                    .then(Measure.volume(vessel.volume()))
                    .then(" vessel of this house is "
                            + (enough
                                    ? how + charge(advice, sure)
                                    : "too small"
                                            + (advice.lower()
                                                            .filter(SizeAdvice.LowerSupply::owned)
                                                            .isPresent()
                                                    ? " at the present supply."
                                                    : ".")));
        });
    }

    /** That the only vessel would not do even with the right charge; empty if it would by the best estimates. */
    static Optional<Statement> tooSmall(SizingResult sizing, HotWaterSystem house) {
        return house.vessel()
                .filter(only -> !house.hasSeveralVessels() && sizing.outcome() == SizingResult.Outcome.SIZED)
                .filter(only -> !isEnough(only, sizing))
                .map(
                        only -> Statement.plain("The ")
                                .then(Measure.volume(only.volume()))
                                .then(
                                        " vessel of this house is too small at the present supply: even with the right charge, a heat-up"
                                                + " from a cold fill would exceed the limit of ")
                                .then(Measure.gauge(sizing.target().gauge()))
                                .then(
                                        ". Before anybody charges it, let 'heatswell size' name a larger one or a lower supply."));
    }

    /** That no vessel on sale would do before the supply is lowered; empty where one would, or the house has one. */
    static Optional<Statement> noneOnSale(SizingResult sizing, HotWaterSystem house) {
        return sizing.outcome() != SizingResult.Outcome.SIZED
                        || !house.vessels().isEmpty()
                        || sizing.smallestOnSale().isPresent()
                ? Optional.empty()
                : Optional.of(Statement.plain("At the present supply, up to ")
                        .then(Measure.gauge(
                                sizing.supplyStatic().gauge(house.site().atmosphere())))
                        .then(", no vessel on the list keeps a heat-up below the limit of ")
                        .then(Measure.gauge(sizing.target().gauge()))
                        .then(
                                sizing.lowerSupplyTo().isEmpty()
                                        ? ", and no lower supply was found at which one does. 'heatswell size' says how large it has to be."
                                        : (house.supply().reducingValve().isPresent()
                                                        ? ". First have the reducing valve set lower: 'heatswell size' says how low"
                                                        : ". First have a reducing valve fitted: 'heatswell size' says how to set it")
                                                + ", and which vessel to fit then."));
    }

    /** Which of several vessels do not work, without a full stop; empty where all do, or there is only one. */
    static Optional<Statement> outOfService(HotWaterSystem house) {
        return Optional.of(outOfServiceNamed(house))
                .filter(told -> house.hasSeveralVessels() && !told.isEmpty())
                .map(told -> Statement.plain("Not all the vessels work: " + String.join(", and ", told)));
    }

    /** Each vessel that does not work, by its name where there are several, and why; such as {@code “vessel 1” has lost its gas}. */
    static List<String> outOfServiceNamed(HotWaterSystem house) {
        return IntStream.range(0, house.vessels().size())
                .boxed()
                .flatMap(i -> fault(house.vessels().get(i).condition())
                        .map(fault -> (house.hasSeveralVessels()
                                        ? "“" + house.vesselNames().get(i) + "” "
                                        : "the expansion vessel ")
                                + fault)
                        .stream())
                .toList();
    }

    /** Which of several vessels that work are charged wrong, without a full stop; empty where none is, or there is only one. */
    static Optional<Statement> wronglyCharged(SizeAdvice advice) {
        HotWaterSystem house = advice.house();
        List<Statement> told = IntStream.range(
                        0, house.hasSeveralVessels() ? house.vessels().size() : 0)
                .filter(i -> house.vessels().get(i).condition() == ExpansionVessel.Condition.SOUND)
                .filter(i -> !PrechargeTarget.isMet(house, i, advice.doubts()))
                .boxed()
                .flatMap(i -> PrechargeTarget.of(house, i).filter(PrechargeTarget::isAllowed).stream()
                        .map(target -> Statement.plain("“" + house.vesselNames().get(i) + "” is charged to ")
                                .then(charged(house, house.vessels().get(i)))
                                .then(" instead of ")
                                .then(Measure.gauge(target.pumpToGauge()))))
                .toList();
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(Statement.plain("Not all the vessels have the right charge: ")
                        .then(Statement.joined(", and ", told)));
    }

    /** The charge at the temperature where a vessel stands. */
    private static Measure charged(HotWaterSystem house, ExpansionVessel vessel) {
        double air = house.site().atmosphere();
        double room = house.site().roomTemperature();
        return Measure.gauge(vessel.chargeAbsolute(air, room, house.gasAtRest(vessel)) - air);
    }

    private static Optional<String> fault(ExpansionVessel.Condition condition) {
        return switch (condition) {
            case SOUND -> Optional.empty();
            case WATERLOGGED -> Optional.of("has lost its gas");
            case ISOLATED -> Optional.of("is behind a closed isolating valve");
            case UPSTREAM_OF_CHECK -> Optional.of("sits on the wrong side of the supply valve");
        };
    }

    private static boolean isEnough(ExpansionVessel vessel, SizingResult sizing) {
        return sizing.smallest()
                .filter(least -> least.volume() <= vessel.volume())
                .isPresent();
    }

    private static String borne(SizeAdvice advice) {
        return Limit.reliefSetGauge(advice.house()).isPresent()
                ? "at which the relief valve opens"
                : "it must withstand";
    }

    private static boolean isLarge(ExpansionVessel vessel, SizeAdvice advice) {
        return advice.recommended()
                .filter(wanted -> wanted.volume() <= vessel.volume())
                .isPresent();
    }

    /** A vessel that is there and does not work is put back to work first, whatever its size. */
    private static Statement idle(String word, ExpansionVessel vessel, SizeAdvice advice) {
        boolean enough = isEnough(vessel, advice.sizing());
        String then = (advice.isCharged() ? " It is then " : " Once its precharge is right too, it is ")
                + (isLarge(vessel, advice) ? "large enough" : "just large enough by the best estimates")
                + (advice.madeFor().isPresent()
                        ? ", but rated for less than the pressure " + borne(advice) + ": read its plate."
                        : ".");
        return Statement.plain(word)
                .then(Measure.volume(vessel.volume()))
                .then(" vessel of this house takes no water that expands: "
                        + switch (vessel.condition()) {
                            case ISOLATED ->
                                "its isolating valve is closed. "
                                        + (enough
                                                ? "First, with the heater off and the water cool, open that valve and secure it."
                                                        + then
                                                : "Open, it would still be too small; secure the valve of the new one open.");
                            case UPSTREAM_OF_CHECK ->
                                "it sits on the mains side of the supply valve. "
                                        + (enough
                                                ? "First have it moved between that valve and the tank." + then
                                                : "On the tank's side it would still be too small; have the new one fitted there.");
                            default -> "it has lost its gas. Have it replaced.";
                        });
    }

    private static String charge(SizeAdvice advice, boolean sure) {
        if (advice.madeFor().isPresent()) {
            return ", but it is rated for less than the pressure " + borne(advice)
                    + ": read its plate, and have one fitted that is rated for that pressure.";
        }
        return !advice.isCharged()
                ? ", once its precharge is right."
                : sure ? " and its precharge is right: there is nothing to buy." : ", and its precharge is right.";
    }

    private static Optional<ExpansionVessel> sound(HotWaterSystem house) {
        return house.vessel().filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND);
    }
}
