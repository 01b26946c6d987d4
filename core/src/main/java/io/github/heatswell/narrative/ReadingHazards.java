package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Overheat;
import io.github.heatswell.diagnosis.Overpressure;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.Sighting;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What readings say of hazards: what they show, what they leave open, and what to do. Immutable. */
final class ReadingHazards {

    private static final String SWITCH_OFF =
            "Turn the heater off now, at its gas cock or breaker, if you can do that safely.";
    private static final String REPLACE = "replace the relief valve and look at the tank";
    private static final String NEVER_PLUG = "Never plug or cap the valve.";

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Optional<PressureLog> log;

    ReadingHazards(DiagnosisResult result, HotWaterSystem house, Optional<PressureLog> log) {
        this.result = result;
        this.house = house;
        this.log = log;
    }

    /** What one reading of the gauge (Pa) says may hurt somebody, and what to do; empty where it is no hazard. */
    static Optional<Statement> ofOne(HotWaterSystem house, double gauge) {
        return Overpressure.of(
                        house,
                        Optional.empty(),
                        SpotReadings.none()
                                .with(
                                        SiteCheck.HEAT_UP_MAXIMUM,
                                        new SpotReading(gauge, SiteCheck.HEAT_UP_MAXIMUM.usualUncertainty())))
                .filter(Overpressure::isHazard)
                .map(over -> either(over)
                        .then(". " + SWITCH_OFF + " Do not heat again. Have a licensed professional " + REPLACE + ". "
                                + NEVER_PLUG));
    }

    /** What the readings say may hurt somebody, and what to do. */
    Optional<Statement> hazard() {
        List<Statement> all = new ArrayList<>();
        if (isByReading()) {
            overheat().map(ReadingHazards::tooHot).ifPresent(all::add);
            overpressure().map(this::beyondPlate).ifPresent(all::add);
            all.add(plain(whatToDo()));
        }
        List<HypothesisFit> causes = result.hazardousCauses();
        if (!causes.isEmpty()) {
            all.add(plain("The readings point to this: " + among(causes) + "."
                    + (isByReading() ? "" : " Turn the heater off until a licensed professional has looked at it.")));
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(Statement.joined(" ", all));
    }

    /** Whether a reading alone shows a hazard, so that nobody may be told to heat the tank. */
    boolean isByReading() {
        return !result.hazardousReadings().isEmpty();
    }

    private Optional<Overheat> overheat() {
        return result.overheat().filter(Overheat::isHazard);
    }

    private Optional<Overpressure> overpressure() {
        return result.overpressure().filter(Overpressure::isHazard);
    }

    /** What is wrong whatever the cause, where a reading alone shows a hazard. */
    String whateverTheCause() {
        return overheat()
                        .map(hot -> hot.exceeded() == Overheat.Device.THERMOSTAT
                                ? "The water got hotter than the thermostat allows"
                                : "The taps got hotter water than the mixing valve allows")
                        .map(hot -> hot + (overpressure().isPresent() ? ", and the" : ""))
                        .orElse("The")
                + (overpressure().isPresent() ? " pressure went above what the plates allow" : "")
                + ", whatever the cause.";
    }

    /** What comes next where a reading alone shows a hazard. */
    Statement stayOff() {
        String mended = overheat().isEmpty()
                ? "the relief valve is replaced"
                : overpressure().isPresent() ? "all that is repaired" : "that is repaired";
        return plain((overheat().isEmpty() && slip().isPresent()
                        ? "Next, look up the reading that stands alone. If it is right, "
                        : "Next, ")
                + "leave the heater off and call a licensed professional. Until " + mended
                + ", heat no water to take a reading.");
    }

    private String whatToDo() {
        String now = overheat().filter(Overheat::boils).isPresent()
                ? Findings.keepAway()
                : SWITCH_OFF + (overheat().isPresent() ? " Draw no hot water: it scalds." : "");
        String valve = overpressure().isPresent() ? REPLACE : "";
        String heat = overheat()
                .map(hot -> "check "
                        + (hot.exceeded() == Overheat.Device.THERMOSTAT
                                ? "thermostat, cut-out and relief valve"
                                : "thermostat and mixing valve"))
                .orElse("");
        return now + " Do not heat again. Have a licensed professional " + heat
                + (heat.isEmpty() || valve.isEmpty() ? "" : ", ") + valve + "."
                + (valve.isEmpty() ? "" : " " + NEVER_PLUG);
    }

    private static Statement tooHot(Overheat hot) {
        return water(hot)
                .then(". Either "
                        + (hot.exceeded() == Overheat.Device.THERMOSTAT
                                ? "the thermostat does not switch the heater off"
                                : "the mixing valve has failed, or the tank is far too hot")
                        + ", or the thermometer or its unit is wrong.");
    }

    private static Statement water(Overheat hot) {
        boolean tank = hot.exceeded() == Overheat.Device.THERMOSTAT;
        return plain(tank ? "The hot water was at " : "The water at the tap was at ")
                .then(Measure.temperature(hot.reading()))
                .then(tank && hot.level() != Overheat.Level.ABOVE_SET ? ", far above the " : ", above the ")
                .then(Measure.temperature(hot.set()))
                .then(" that the " + (tank ? "thermostat" : "mixing valve") + " is set to");
    }

    private Statement beyondPlate(Overpressure over) {
        return either(over)
                .then(slip().map(
                                when -> plain(", or the reading ")
                                        .then(when)
                                        .then(
                                                " was written down wrong: no other reading is above that plate. Look at your paper now; if it is a"
                                                        + " slip, correct it in the list of readings and diagnose again. If it was real, or you can't tell, do this."))
                        .orElse(plain(".")));
    }

    /** When a single reading of a list by hand was taken that alone is the hazard, and may be a slip of the pen. */
    private Optional<Statement> slip() {
        OptionalDouble time = log.isEmpty() || overpressure().isEmpty()
                ? OptionalDouble.empty()
                : overpressure().get().maySlipAt(log.get());
        if (time.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble start = log.get().timeOfDay();
        return Optional.of(
                start.isEmpty()
                        ? plain("taken ").then(Measure.time(time.getAsDouble())).then(" after the first")
                        : plain("of "
                                + Moments.of(house, time.getAsDouble())
                                        .clock(Math.floorMod(
                                                Math.round((start.getAsDouble() + time.getAsDouble()) / 60), 1440L))));
    }

    private static Statement either(Overpressure over) {
        return gaugeRead(over)
                .then(". Either the relief valve does not "
                        + (over.plate() == Overpressure.Plate.TANK ? "guard this tank" : "open as it must")
                        + ", or the gauge is wrong");
    }

    private static Statement gaugeRead(Overpressure over) {
        return plain("The gauge read ")
                .then(Measure.gauge(over.reading()))
                .then(", above the ")
                .then(Measure.gauge(over.marked()))
                .then(
                        over.plate() == Overpressure.Plate.TANK
                                ? " that the tank is rated for"
                                : " on the relief valve's plate");
    }

    /** What readings beyond a limit say that are no hazard by themselves. */
    Optional<Statement> beyond() {
        List<Statement> all =
                Stream.of(heat(), abovePlate()).flatMap(Optional::stream).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(Statement.joined(" ", all));
    }

    private Optional<Statement> heat() {
        return result.overheat()
                .filter(hot -> !hot.isHazard())
                .map(hot -> water(hot)
                        .then(
                                hot.standsAlone()
                                        ? ". That reading stands alone, so it may be a slip of the pen or of the sensor. If it was"
                                                + " real, turn the heater off and have the thermostat checked."
                                        : hot.exceeded() == Overheat.Device.THERMOSTAT
                                                ? ". Many short draws may leave it so hot at the top; without them the heater does not"
                                                        + " switch off in time. It scalds: let nobody use it unmixed, and have the"
                                                        + " thermostat checked."
                                                : ". It may scald: have the mixing valve checked."));
    }

    private Optional<Statement> abovePlate() {
        return result.overpressure()
                .filter(one -> !one.isHazard())
                .map(one -> gaugeRead(one)
                        .then(
                                switch (one.level()) {
                                    case WITHIN_ERROR ->
                                        (one.plate() == Overpressure.Plate.TANK
                                                        ? ". The gauge is off, or the relief valve does not guard this tank."
                                                        : ". The gauge is off, or the valve opens late, as a sound one may by"
                                                                + " 3 %.")
                                                + " Check with a second gauge today. If nothing came out of the valve, turn the"
                                                + " heater off and have it replaced.";
                                    case GUARDED ->
                                        ". The expansion valve does not open as it must, or the gauge is wrong. The relief valve"
                                                + " that guards"
                                                + " the tank is set higher. Have a licensed professional replace the expansion valve.";
                                    case LONE_READING ->
                                        ". It stands alone, so it may be a slip of the pen or of the gauge. If it was"
                                                + " real, turn the heater off and have the relief valve replaced.";
                                    default ->
                                        ", though by no more than a valve may need to open fully. If nothing came out of"
                                                + " the valve, turn the heater off and have it replaced.";
                                })
                        .then(one.level() == Overpressure.Level.WITHIN_ERROR ? hazardFrom() : plain("")));
    }

    /** From which reading on the gauge shows a hazard, and why not before; a sentence with a space before it. */
    private Statement hazardFrom() {
        OptionalDouble from = Overpressure.hazardFrom(house);
        return from.isEmpty()
                ? plain("")
                : plain(" A reading above ")
                        .then(Measure.gauge(from.getAsDouble()))
                        .then(
                                " is called a hazard: below that, a sound valve and an ordinary gauge may be that far off their marks.");
    }

    /** What is said where the readings show no hazard: never flatly where one stands beyond a limit. */
    Statement calm() {
        String safe = " Gauge readings cannot say whether the house is safe.";
        return plain((beyond().isEmpty()
                        ? "The readings show no hazard."
                        : result.overpressure().isPresent()
                                ? "The highest reading is above a plate, though not far enough to be called a hazard: see the caution."
                                : "The hottest reading stands alone, so it is not called a hazard: see the caution.")
                + safe);
    }

    /**
     * What could hurt somebody and is likely or not ruled out, with what to check.
     *
     * @param likely whether the best cause is called likely
     */
    Optional<Statement> notRuledOut(boolean likely) {
        List<HypothesisFit> open = result.notRuledOut().stream()
                .filter(fit -> overpressure().isEmpty() || !fit.blames(Cause.RELIEF_OPENS_HIGH))
                .filter(fit -> !isReadTooHot() || fit.blames(Cause.RELIEF_OPENS_HIGH))
                .toList();
        Optional<Statement> hot = heatedBeyond();
        List<HypothesisFit> named = open.stream()
                .filter(fit -> fit.cause() == Cause.WATER_TOO_HOT && fit.also().isEmpty() && hot.isPresent()
                        || likely && fit == result.best())
                .toList();
        List<HypothesisFit> left =
                open.stream().filter(fit -> !named.contains(fit)).toList();
        List<Statement> all = new ArrayList<>(hot.stream().toList());
        if (hot.isEmpty() && !named.isEmpty()) {
            all.add(plain("Likely by these readings: " + among(named) + ". "
                    + toCheck(named.stream().map(HypothesisFit::cause))
                    + (named.get(0).cause() == Cause.WATER_TOO_HOT ? untilThen() : "")));
        }
        if (!left.isEmpty()) {
            all.add(plain("Not ruled out by these readings: " + among(left) + ". "
                    + toCheck(left.stream().map(HypothesisFit::cause).distinct())));
        }
        result.beyondPlates().stream().limit(1).map(this::between).forEach(all::add);
        return all.isEmpty() ? Optional.empty() : Optional.of(Statement.joined(" ", all));
    }

    /** What is said where whatever explains the readings has the water far hotter than described, even the house that is else as described. */
    private Optional<Statement> heatedBeyond() {
        double set = house.heater().setPoint();
        OptionalDouble least = result.heatedBeyond(set);
        return least.isEmpty() || isReadTooHot() || !result.hazardousCauses().isEmpty()
                ? Optional.empty()
                : Optional.of(plain("Likely by these readings: the water gets hotter than the ")
                        .then(Measure.temperature(set))
                        .then(" described. Whatever explains them has it at ")
                        .then(Measure.temperature(least.getAsDouble()))
                        .then(" or more. " + toCheck(Stream.of(Cause.WATER_TOO_HOT)) + untilThen()));
    }

    private String untilThen() {
        return house.heater().mixedTo().isPresent() ? "" : " Until then nobody should shower or bathe in it.";
    }

    /** Whether a thermometer under a tap is the reading to take, for it shows water that is too hot, which is among what is left. */
    boolean asksForThermometer() {
        return house.heater().mixedTo().isEmpty()
                && !isReadTooHot()
                && !isByReading()
                && result.notRuledOut().stream().anyMatch(fit -> fit.blames(Cause.WATER_TOO_HOT));
    }

    /** A thermometer that read too hot is not to be held under the tap once more, unless that reading may be a slip. */
    private boolean isReadTooHot() {
        return result.overheat().filter(hot -> !hot.standsAlone()).isPresent();
    }

    /** A run that goes beyond the plates where nobody read the gauge. */
    private Statement between(HypothesisFit fit) {
        return plain(
                        "Not ruled out by these readings: a pressure between two of them above what the plates allow. If this is the"
                                + " cause, the gauge reached ")
                .then(Measure.gauge(fit.beyondPlates().orElseThrow()))
                .then(": " + fit.inWords() + ". " + toCheck(Stream.of(Cause.RELIEF_OPENS_HIGH)));
    }

    private String among(List<HypothesisFit> fits) {
        return fits.stream()
                .map(fit -> fit.inWords() + (mayNotOpen(fit) ? ", or not at all" : ""))
                .collect(Collectors.joining("; or "));
    }

    /** A pressure that fell under heating has shown that a valve opens, as has who saw water come out of it. */
    private boolean mayNotOpen(HypothesisFit fit) {
        return fit.blames(Cause.RELIEF_OPENS_HIGH)
                && log.filter(one -> one.fellWhileHeating()
                                || one.sightings().stream().anyMatch(ReadingHazards::isDischarge))
                        .isEmpty();
    }

    private static boolean isDischarge(Sighting seen) {
        return seen.kind() == Sighting.Kind.DRIPS || seen.kind() == Sighting.Kind.CAUGHT && seen.volume() > 0;
    }

    private boolean passed() {
        return result.overpressure()
                .filter(over -> over.plate() == Overpressure.Plate.RELIEF_VALVE)
                .isPresent();
    }

    /** What to check; nobody draws or heats water for it where a reading alone is a hazard. */
    private String toCheck(Stream<Cause> causes) {
        return isByReading()
                ? "Have that looked at too before the heater is used again."
                : causes.map(this::toCheck).collect(Collectors.joining(" "));
    }

    private String toCheck(Cause cause) {
        return switch (cause) {
            case RELIEF_OPENS_HIGH ->
                (passed()
                                ? "The gauge has passed the set pressure on the valve's plate. If a second gauge passes it by more"
                                        + " than 3 % before anything comes out of the valve, turn the heater"
                                : "Watch the gauge during a heat-up: if it passes the set pressure on the valve's plate, turn the"
                                        + " heater")
                        + " off and have the valve replaced.";
            case WATER_TOO_HOT ->
                "Hold a thermometer, not a hand, under a hot tap: if the water is hotter than the thermostat is set to,"
                        + " turn the heater off and have the thermostat checked.";
            default ->
                "Hold a thermometer, not a hand, under the mixed tap: if the water is hotter than the mixing valve is set"
                        + " to, have the valve checked before anyone bathes.";
        };
    }
}
