package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.narrative.DiagnosisStory;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The command that goes on from an answer, on the way from the drip to its cause, the vessel, its charge, the check and its
 * upkeep.
 *
 * @param command the command, such as {@code size}
 * @param changes what it changes about the house beside what was changed already
 * @param about of several houses, which it is about, from 0
 * @param cause of a diagnosis, the cause it decided on; empty if it decided on none, or of other answers
 */
public record NextStep(String command, List<Change> changes, int about, Optional<Cause> cause) {

    /** What is wrong with the pressure, and a vessel of the right size and precharge puts right. */
    private static final Set<String> CURED_BY_A_VESSEL = Set.of(
            "bypass-opens-too-late",
            "dripping-hides-expansion",
            "expansion-control-missing",
            "expansion-valve-works",
            "peak-above-code-limit",
            "peak-near-relief",
            "precharge-above-static",
            "precharge-below-static",
            "precharge-unknown",
            "relief-valve-controls-expansion",
            "vessel-bottomed-out",
            "vessel-isolated",
            "vessel-too-small",
            "vessel-upstream-of-check",
            "vessel-waterlogged");

    /** A supply that has to come down, for which a sizing finds the setting and the vessel that goes with it. */
    private static final Set<String> LOWERED_FIRST =
            Set.of("relief-reseats-below-supply", "supply-near-relief-set", "supply-opens-relief-valve");

    /** What drives the pressure beyond a limit whatever vessel and supply. */
    private static final Set<String> DRIVES_THE_PEAK = Set.of("reducing-valve-creeps", "thermostat-stuck");

    /** What makes a relief valve drip whatever vessel and supply. */
    private static final Set<String> MENDED_FIRST =
            Set.of("reducing-valve-creeps", "relief-valve-seat-leaks", "relief-valve-stuck-open", "thermostat-stuck");

    private static final Set<Cause> OF_THE_VESSEL = Set.of(
            Cause.AS_DESCRIBED,
            Cause.PRECHARGE_LOW,
            Cause.PRECHARGE_HIGH,
            Cause.VESSEL_SMALL,
            Cause.VESSEL_WATERLOGGED);

    /**
     * Copies the list.
     *
     * @param command the command
     * @param changes what it changes about the house
     * @param about of several houses, which it is about
     * @param cause the cause that was decided on, if any
     */
    public NextStep {
        Objects.requireNonNull(command, "command");
        changes = List.copyOf(changes);
        Objects.requireNonNull(cause, "cause");
    }

    /**
     * A command about the only house, or the first.
     *
     * @param command the command
     * @param changes what it changes about the house
     */
    public NextStep(String command, List<Change> changes) {
        this(command, changes, 0, Optional.empty());
    }

    /**
     * A command about the same house.
     *
     * @param command the command
     * @return the step
     */
    public static NextStep to(String command) {
        return new NextStep(command, List.of());
    }

    /** Where people may be hurt, whoever mends it needs to know what the code asks for. */
    static NextStep afterHazard() {
        return to("rules");
    }

    /** After a look at many vessels or houses: the size to take, where the house needs one. */
    static NextStep toSize(HotWaterSystem house) {
        return to(isClosed(house) ? "size" : "run");
    }

    /**
     * After a run: a vessel or a lower supply where that would help; what the code asks of whatever is to be mended; the years of the
     * vessel where there is one; and otherwise how sure all this is.
     */
    static NextStep afterRun(HotWaterSystem house, List<Finding> found) {
        boolean driven = isAny(DRIVES_THE_PEAK, found);
        List<Finding> cured = found.stream()
                .filter(finding -> !(driven && finding.id().startsWith("peak-")))
                .toList();
        if (isClosed(house) && isAny(CURED_BY_A_VESSEL, cured)) {
            return to("size");
        }
        if (isAny(MENDED_FIRST, found)) {
            return to("rules");
        }
        if (isClosed(house) && isAny(LOWERED_FIRST, found)) {
            return to("size");
        }
        return to(works(house) ? "outlook" : "spread");
    }

    private static boolean isAny(Set<String> ids, List<Finding> found) {
        return found.stream().anyMatch(finding -> ids.contains(finding.id()));
    }

    /**
     * After the rules: the run of the house with its faulty devices mended, which shows what is left; the sizing where a vessel or a
     * lower supply is the cure; otherwise the run.
     */
    static NextStep afterRules(HotWaterSystem house, List<Finding> found) {
        List<Change> mended = mended(house);
        if (!mended.isEmpty()) {
            return new NextStep("run", mended);
        }
        boolean sized = isAny(CURED_BY_A_VESSEL, found)
                || isAny(LOWERED_FIRST, found)
                || found.stream().anyMatch(finding -> finding.severity() == Finding.Severity.HAZARD);
        return to(isClosed(house) && sized ? "size" : "run");
    }

    /** What makes sound devices of those that are not. */
    private static List<Change> mended(HotWaterSystem house) {
        List<Change> mended = new ArrayList<>();
        for (int i = 0; i < house.reliefValves().size(); i++) {
            if (house.reliefValves().get(i).condition() != ReliefFault.Condition.SOUND) {
                mended.add(new Change("relief[" + i + "].fault", "none"));
            }
        }
        if (house.heater().thermostatStuck()) {
            mended.add(new Change("heater.thermostat", "working"));
        }
        if (house.supply().seatLeakage() > 0) {
            mended.add(new Change("supply.seat-leakage", "none"));
        }
        return mended;
    }

    /** After a sizing: the house with the vessel, whose report says how to charge it and what the gauge should then read. */
    static NextStep afterSizing(VesselAnswer answer) {
        QuantityFormat shown = CommandResult.onScreen(answer.scenario().units());
        HotWaterSystem house = answer.scenario().system();
        if (house.hasSeveralVessels()) {
            return SeveralVessels.next(answer, shown);
        }
        if (answer.proposed().isEmpty() && answer.advice().kept().isPresent()) {
            return to("outlook"); // nothing is to be changed
        }
        if (answer.sizing().outcome() == SizingResult.Outcome.NONE_NEEDED
                && answer.proposed().isEmpty()) {
            return to("spread");
        }
        if (answer.proposed().isEmpty() || answer.recommended().isEmpty()) {
            return answer.supplies()
                    .cheapest()
                    .map(lower -> new NextStep("run", changes(house, lower, shown)))
                    .orElseGet(() -> to("rules"));
        }
        return new NextStep(
                "run",
                answer.proposed().orElseThrow().system().vessel().stream()
                        .flatMap(vessel -> changes(answer, vessel, shown))
                        .toList());
    }

    /** The lower supply with the vessel that goes with it. */
    private static List<Change> changes(HotWaterSystem house, SizeAdvice.LowerSupply lower, QuantityFormat shown) {
        double air = house.site().atmosphere();
        String setting = shut(shown.pressure(lower.supply().valve().gauge(air)));
        List<Change> changes = new ArrayList<>();
        if (lower.supply().fitted()) {
            changes.add(new Change("supply.arrangement", "reducing-valve"));
            changes.add(new Change("supply.reducing-valve", "{ set: " + setting + " }"));
        } else {
            changes.add(new Change("supply.reducing-valve.set", setting));
        }
        if (!lower.owned()) {
            changes.add(new Change(NamedValue.VESSEL_VOLUME.field(), shut(shown.volume(lower.volume()))));
        }
        changes.add(new Change(
                NamedValue.PRECHARGE.field(),
                shut(shown.pressure(lower.precharge().gauge(air)))));
        return changes;
    }

    private static Stream<Change> changes(VesselAnswer answer, ExpansionVessel vessel, QuantityFormat shown) {
        HotWaterSystem house = answer.scenario().system();
        List<Change> changes = new ArrayList<>();
        Optional<ExpansionVessel> idle =
                house.vessel().filter(present -> present.condition() != ExpansionVessel.Condition.SOUND);
        idle.ifPresent(present -> changes.add(new Change("vessel.condition", "sound")));
        boolean kept = answer.advice().kept().isPresent();
        if (!kept) {
            changes.add(new Change(NamedValue.VESSEL_VOLUME.field(), shut(shown.volume(vessel.volume()))));
            answer.advice()
                    .madeFor()
                    .ifPresent(least ->
                            changes.add(new Change(NamedValue.VESSEL_RATING.field(), shut(shown.pressure(least)))));
        }
        if (kept && answer.advice().isCharged()) {
            return changes.stream();
        }
        changes.add(new Change(
                NamedValue.PRECHARGE.field(),
                shut(shown.pressure(vessel.precharge().gauge(house.site().atmosphere())))));
        // a charge is read where the vessel stands, and not as cold as the present one was when it was charged
        OptionalDouble described =
                house.vessel().map(ExpansionVessel::chargedAt).orElse(OptionalDouble.empty());
        vessel.chargedAt().ifPresent(charged -> {
            if (!vessel.chargedAt().equals(described)) {
                changes.add(new Change("vessel.charged-at", shut(shown.temperature(charged))));
            }
        });
        return changes.stream();
    }

    static String shut(String quantity) {
        return quantity.replace(" ", "");
    }

    /** After a study of what is uncertain. */
    static NextStep afterSpread(SpreadAnswer answer) {
        HotWaterSystem house = answer.scenario().system();
        if (isClosed(house) && answer.dripping().count() > 0) {
            return to("size");
        }
        return to(works(house) ? "outlook" : "rules");
    }

    /**
     * After a diagnosis: the run, whose sheet says what to read and when, where the cause is open or none explains the readings; the
     * size, where a vessel is the answer whatever the cause.
     */
    static NextStep afterDiagnosis(HotWaterSystem house, DiagnosisResult result, DiagnosisStory story) {
        boolean decided = !result.misfit() && result.isDecided();
        boolean full = decided && result.best().cause() == Cause.VESSEL_WATERLOGGED && !house.hasSeveralVessels();
        if (isClosed(house) && (story.failsVessel() || full)) {
            return new NextStep(
                    "size",
                    List.of(new Change("vessel.condition", "waterlogged")),
                    0,
                    full ? Optional.of(Cause.VESSEL_WATERLOGGED) : Optional.empty());
        }
        if (result.misfit() || !result.isDecided() || result.best().also().isPresent()) {
            return to(story.asksForVessel() ? "size" : "run"); // the same command again would give the same answer
        }
        Cause cause = result.best().cause();
        return new NextStep(
                isClosed(house) && (OF_THE_VESSEL.contains(cause) || story.asksForVessel()) ? "size" : "run",
                List.of(),
                0,
                Optional.of(cause));
    }

    /** The same, of a house of which more is known than its file says. */
    NextStep knowing(List<Change> more) {
        return new NextStep(
                command, Stream.concat(more.stream(), changes.stream()).toList(), about, cause);
    }

    /** Whether a vessel has a precharge to lose in the years ahead. */
    private static boolean works(HotWaterSystem house) {
        return house.vessels().stream().anyMatch(one -> one.condition() == ExpansionVessel.Condition.SOUND);
    }

    private static boolean isClosed(HotWaterSystem house) {
        return house.supply().arrangement() != Supply.Arrangement.DIRECT;
    }
}
