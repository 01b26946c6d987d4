package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Misfit;
import io.github.heatswell.diagnosis.Overpressure;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What readings say of a house, what they cannot say, and what to check next. Immutable. */
public final class DiagnosisStory {

    private static final int MAX_NAMED = 3;
    private static final Set<SiteCheck> HEATED = Set.of(
            SiteCheck.HEAT_UP_MAXIMUM,
            SiteCheck.NEXT_MORNING,
            SiteCheck.CAUGHT_VOLUME,
            SiteCheck.PEAK_AFTER_DRAW,
            SiteCheck.MORNING_AFTER_DRAW,
            SiteCheck.HOT_TAP);

    /** The findings that say why heated water has nowhere to go, of a house without any vessel and of one with. */
    private static final Set<String> NO_VESSEL = Set.of("expansion-control-missing", "bypass-opens-too-late");

    private static final Set<String> IDLE_VESSEL =
            Set.of("vessel-isolated", "vessel-upstream-of-check", "vessel-waterlogged");

    /** Readings this close (s) leave little between them. */
    private static final double CLOSE = 150;
    /** An assumed reseat pressure so much (share of the set pressure) from what fits decides something; own judgement. */
    private static final double DECIDES = 0.05;
    /** Less water (m3) is no draw. */
    private static final double LEAST_DRAW = 0.5e-3;
    /** A heat-up that began less than this (s) before the first reading began with it: clocks are read to the minute. */
    private static final double BEFORE = 60;

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Doubts doubts;
    private final Optional<PressureLog> log;
    private final Set<SiteCheck> read;

    /**
     * The story of a diagnosis.
     *
     * @param result what was found
     * @param house the house as described
     * @param doubts what is not known of it
     * @param log the log as far as it was used
     * @param read what was read on site
     */
    public DiagnosisStory(
            DiagnosisResult result,
            HotWaterSystem house,
            Doubts doubts,
            Optional<PressureLog> log,
            Set<SiteCheck> read) {
        this.result = Objects.requireNonNull(result, "result");
        this.house = Objects.requireNonNull(house, "house");
        this.doubts = Objects.requireNonNull(doubts, "doubts");
        this.log = Objects.requireNonNull(log, "log");
        this.read = Set.copyOf(read);
    }

    /**
     * What the readings say, in a sentence or two.
     *
     * @return whole sentences
     */
    public Statement verdict() {
        List<HypothesisFit> tested = tested();
        if (isOverpressure()) {
            return plain("The pressure went above what the plates allow, whatever the cause.");
        }
        if (result.misfit()) {
            return plain("These readings don't settle it: none of the causes looked at explains them.");
        }
        if (asDescribed()) {
            return plain(ordinary() + "The readings agree with the house as described.");
        }
        return plain(
                tested.size() == 1
                        ? "The likeliest cause is this: " + result.best().inWords() + "."
                        : "These readings don't settle it: " + tested.size() + " causes would explain them.");
    }

    /**
     * What stands behind the verdict: the causes it is about, readings that are not explained, and what was not tested.
     *
     * @return whole sentences, possibly none
     */
    public Statement details() {
        List<Statement> all = new ArrayList<>();
        List<HypothesisFit> tested = tested();
        if (result.misfit()) {
            all.add(plain(closest(tested)));
            all.add(plain(
                    "Perhaps a value of the description is wrong, water was drawn and nobody noted it, or it is a cause that was"
                            + " not looked at."));
        } else if (!asDescribed() && tested.size() > 1) {
            all.add(plain("The likeliest are these: " + named(tested) + "."));
        }
        strays().ifPresent(all::add);
        if (!result.misfit() && asDescribed() && tested.size() > 1) {
            all.add(plain("They would show no difference if one of these were slight: "
                    + named(tested.stream()
                            .filter(fit -> fit.cause() != Cause.AS_DESCRIBED)
                            .toList()) + "."));
        }
        List<HypothesisFit> untested = result.untested();
        if (!untested.isEmpty()) {
            all.add(plain("Not tested by these readings: " + named(untested) + "."));
        }
        reseat().ifPresent(all::add);
        drawn().ifPresent(all::add);
        return Statement.joined(" ", all);
    }

    /**
     * Verdict and details together.
     *
     * @return whole sentences
     */
    public Statement answer() {
        return Statement.joined(
                " ",
                Stream.of(verdict(), details()).filter(one -> !one.isEmpty()).toList());
    }

    private static String closest(List<HypothesisFit> tested) {
        if (tested.size() > 1) {
            return "The weightiest, about equally: " + named(tested) + ".";
        }
        return tested.get(0).cause() == Cause.AS_DESCRIBED
                ? "The house as described is the weightiest."
                : "The weightiest is this: " + named(tested) + ".";
    }

    /** The reseat pressure that was only assumed, where the likeliest cause rests on another. */
    private Optional<Statement> reseat() {
        HypothesisFit best = result.best();
        if (house.reliefValves().isEmpty()
                || best.own().stream().anyMatch(own -> own.parameter() == Parameter.RESEAT_SHARE)) {
            return Optional.empty();
        }
        double atmosphere = house.site().atmosphere();
        ReliefValve valve = house.reliefValves().get(0);
        double assumed =
                valve.reseatPressure().gauge(atmosphere) / valve.setPressure().gauge(atmosphere);
        return best.estimate(Parameter.RESEAT_SHARE)
                .map(Estimate::value)
                .filter(share -> Math.abs(share - assumed) > DECIDES)
                .map(share -> plain("What fits best rests on a reseat pressure that nobody looked up: assumed ")
                        .then(new Measure(Measure.Kind.SHARE, assumed))
                        .then(" of the set pressure, taken as ")
                        .then(new Measure(Measure.Kind.SHARE, share))
                        .then(" here. If the maker gives it, add it as reseats."));
    }

    /** How much water was drawn in the best explanation, as far as the log notes or shows that it was. */
    private Optional<Statement> drawn() {
        List<Estimate> draws = result.best().estimates().stream()
                .filter(one -> one.parameter().isDrawn() && one.value() > LEAST_DRAW)
                .toList();
        double all = draws.stream().mapToDouble(Estimate::value).sum();
        return draws.isEmpty()
                ? Optional.empty()
                : Optional.of(plain(
                                "This takes it that water was drawn where the pressure fell to the supply's or your notes say so, about ")
                        .then(Measure.volume(all))
                        .then(" in all."));
    }

    /** The readings that even the best explanation does not explain. */
    private Optional<Statement> strays() {
        return result.best()
                .misfit()
                .filter(misfit -> !misfit.strays().isEmpty())
                .map(DiagnosisStory::strays);
    }

    private static Statement strays(Misfit misfit) {
        Optional<Misfit.Stray> highest =
                misfit.strays().stream().filter(Misfit.Stray::highest).findFirst();
        if (highest.isPresent()) {
            return plain("The highest reading is not explained: ").then(missed(highest.get()));
        }
        int number = misfit.strays().size();
        Misfit.Stray worst =
                Collections.max(misfit.strays(), Comparator.comparingDouble(stray -> Math.abs(stray.above())));
        return plain(
                        number == 1
                                ? "One of " + misfit.readings() + " readings is not explained: "
                                : number + " of " + misfit.readings()
                                        + " readings are not explained. The furthest off: ")
                .then(missed(worst));
    }

    /** Which reading, what was read, and what was expected. */
    private static Statement missed(Misfit.Stray stray) {
        return (stray.time() == 0
                        ? plain("at first")
                        : plain("").then(Measure.time(stray.time())).then(" after the first"))
                .then(" the gauge read ")
                .then(Measure.gauge(stray.read()))
                .then(", where ")
                .then(Measure.gauge(stray.expected()))
                .then(" was expected.");
    }

    /**
     * Whether the readings are explained without any fault: by the house as described, which comes first, or which explains them about
     * as well as the first and lets heated water go nowhere.
     */
    private boolean asDescribed() {
        return result.best().cause() == Cause.AS_DESCRIBED
                || tested().stream()
                                .anyMatch(fit -> fit.cause() == Cause.AS_DESCRIBED
                                        && fit.misfit()
                                                .filter(Misfit::isSerious)
                                                .isEmpty())
                        && !ordinary().isEmpty();
    }

    /**
     * The causes as they are to be listed: the likeliest first, but where the house as described explains the readings that goes before
     * any fault.
     *
     * @return all fits
     */
    public List<HypothesisFit> listed() {
        return result.fits().stream()
                .sorted(Comparator.comparing(
                        fit -> result.misfit() || !asDescribed() || fit.cause() != Cause.AS_DESCRIBED))
                .toList();
    }

    /** Why the valve drips where nothing is wrong but that no vessel takes up the water; nothing where that is not so. */
    private String ordinary() {
        Set<String> found = Findings.of(house, doubts).stream().map(Finding::id).collect(Collectors.toSet());
        if (!heated() || Stream.concat(NO_VESSEL.stream(), IDLE_VESSEL.stream()).noneMatch(found::contains)) {
            return found.contains("expansion-valve-provided") && heated()
                    ? "Ordinary expansion, which the valve on the cold inlet is made to discharge. An expansion vessel would"
                            + " end that. "
                    : "";
        }
        return NO_VESSEL.stream().anyMatch(found::contains)
                ? "Ordinary expansion: the heated water has nowhere to go. Fit an expansion vessel. "
                : "Ordinary expansion: the heated water has nowhere to go, because the expansion vessel takes none. Have the"
                        + " vessel put right. ";
    }

    /** Whether the readings show a heat-up. */
    private boolean heated() {
        return log.filter(PressureLog::showsHeatUp).isPresent()
                || read.contains(SiteCheck.HEAT_UP_MAXIMUM)
                || read.contains(SiteCheck.PEAK_AFTER_DRAW)
                || read.contains(SiteCheck.CAUGHT_VOLUME);
    }

    /**
     * What was taken for granted of the beginning of the log, and what to do where it is not so.
     *
     * @return whole sentences; empty if it is known
     */
    public Optional<Statement> start() {
        boolean told = house.start().waterTemperature().isPresent();
        return log.filter(one -> !told && !one.hasTemperature())
                .map(one -> plain("How warm the tank was ")
                        .then(beginning())
                        .then(
                                ", nobody said: it was taken as cold, or warmer where that fits better. Give start.water and"
                                        + " run again: the answer gets surer."));
    }

    /** What the warmth is about: where the heat-up began before the log, the water was warmer already at the first reading. */
    private Statement beginning() {
        return result.best()
                .estimate(Parameter.START_OF_HEATING)
                .map(Estimate::value)
                .filter(start -> start < -BEFORE)
                .map(start -> plain("when the heat-up began, about ")
                        .then(Measure.time(-start))
                        .then(" before the first reading"))
                .orElse(plain("at the first reading"));
    }

    /** The likeliest, and those that the readings test but cannot tell from it. */
    private List<HypothesisFit> tested() {
        List<HypothesisFit> untested = result.untested();
        return result.alike().stream().filter(fit -> !untested.contains(fit)).toList();
    }

    private static String named(List<HypothesisFit> fits) {
        // a single one more is named: its name is hardly longer than "one other"
        int named = fits.size() == MAX_NAMED + 1 ? fits.size() : MAX_NAMED;
        String causes = fits.stream().limit(named).map(DiagnosisStory::name).collect(Collectors.joining("; "));
        return causes + (fits.size() > named ? "; and " + (fits.size() - named) + " others" : "");
    }

    /** Where causes are listed, the house without a fault is one of them. */
    private static String name(HypothesisFit fit) {
        return fit.cause() == Cause.AS_DESCRIBED ? "the house as described" : fit.inWords();
    }

    /**
     * What to read or log next.
     *
     * @return whole sentences, with who is to do it; empty if nothing is left to tell
     */
    public Optional<Statement> next() {
        if (isOverpressure()) {
            return Optional.of(
                    plain("Next, leave the heater off and call a licensed professional. Until the relief valve is"
                            + " replaced, heat no water to take a reading."));
        }
        Optional<Statement> check = result.check().map(this::check);
        return result.misfit()
                ? Optional.of(plain(afresh()))
                : check.isPresent() || result.isDecided() || asDescribed()
                        ? check
                        : Optional.of(suspected()
                                .map(name -> plain("Next, read the gas valve of '" + name
                                        + "' with a tyre gauge, with the heater off and cold and the water side empty. Put the"
                                        + " reading into the description as its precharge, and diagnose again."))
                                .orElseGet(this::settling));
    }

    /** The reading that settles a number of theirs, where none tells the causes apart; of a seat, what paper shows. */
    private Statement settling() {
        String paper = result.alike().stream().noneMatch(fit -> fit.cause() == Cause.RELIEF_SEAT_WEEPS)
                ? ""
                : " Lay dry paper under the outlet of the relief valve an hour after the heater went off: if it gets wet, that"
                        + " speaks for a leaking seat.";
        return plain("No single reading tells them apart. ")
                .then(result.unsettled(read)
                        .map(one -> plain("Next, read "
                                + one.settledBy().orElseThrow().words() + ", to settle the "
                                + one.parameter().words() + ", and diagnose again with it." + paper
                                + heating(one.settledBy().orElseThrow())))
                        .orElse(plain((paper.isEmpty() ? "" : paper.strip() + " ")
                                + "Leave it to a licensed professional.")));
    }

    /** Which of several vessels the likeliest cause is about. */
    private Optional<String> suspected() {
        return Optional.of(result.best().device())
                .filter(name -> house.hasSeveralVessels())
                .filter(house.vesselNames()::contains);
    }

    /** What to do where nothing explains the readings: another log, unless this one was as close as can be. */
    private String afresh() {
        boolean close = log.filter(one -> one.showsHeatUp() && one.end() < CLOSE * (one.count() - 1))
                .isPresent();
        return close
                ? "Next, read the plates of tank, heater and relief valve again and correct the description. Note every draw,"
                        + " and give start.water if the tank was warm."
                : "Next, log one heat-up of a cold tank with every tap shut, a reading every minute or two."
                        + heating();
    }

    private Statement check(SeparatingCheck check) {
        return plain((tested().size() == 1 ? "Next, to make sure, read " : "Next, to tell them apart, read ")
                        + check.check().words() + ": ")
                .then(reading(check.check(), check.expectedFirst()))
                .then(" if " + check.first().words() + ", ")
                .then(reading(check.check(), check.expectedSecond()))
                .then(" if " + check.second().words() + "." + heating(check));
    }

    private static Measure reading(SiteCheck check, double value) {
        return switch (check.unit()) {
            case "Pa" -> Measure.gauge(value);
            case "K" -> Measure.temperature(value);
            default -> Measure.volume(value);
        };
    }

    /**
     * Who is to do a check that takes heating while somebody may come to harm by it.
     *
     * @param check the check
     * @return a sentence with a space before it; empty if anybody may do it
     */
    public String heating(SeparatingCheck check) {
        return heating(check.check());
    }

    private String heating(SiteCheck check) {
        return HEATED.contains(check) ? heating() : "";
    }

    private String heating() {
        return hazard().isPresent()
                ? " This takes heating, and there is a hazard: leave it to a licensed professional."
                : "";
    }

    /**
     * What the readings say may hurt somebody, and what to do.
     *
     * @return whole sentences; empty if they speak for no hazard
     */
    public Optional<Statement> hazard() {
        List<HypothesisFit> hazards = result.hazardousCauses();
        List<Statement> all = new ArrayList<>();
        result.overpressure()
                .filter(Overpressure::isHazard)
                .map(DiagnosisStory::beyondPlate)
                .ifPresent(all::add);
        if (!hazards.isEmpty()) {
            all.add(plain("The readings speak for this: " + among(hazards)
                    + ". Turn the heater off until a licensed professional has looked at it."));
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(Statement.joined(" ", all));
    }

    private static Statement beyondPlate(Overpressure over) {
        return gaugeRead(over)
                .then(". "
                        + (over.plate() == Overpressure.Plate.TANK
                                ? "Either the relief valve does not guard this tank, or the gauge is wrong."
                                : "Either the relief valve does not open as it must, or the gauge is wrong.")
                        + " Turn the heater off now, at its gas cock or breaker, if you can do that safely. Do not heat"
                        + " again. Have a licensed professional replace the relief valve and look at the tank. Never plug"
                        + " or cap the valve.");
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

    /**
     * Whether a reading alone shows a hazard, so that nobody may be told to heat the tank.
     *
     * @return true if one lies beyond what the plates allow
     */
    public boolean isOverpressure() {
        return result.overpressure().filter(Overpressure::isHazard).isPresent();
    }

    /**
     * What a reading above a plate says that is no hazard by itself.
     *
     * @return whole sentences; empty if there is none
     */
    public Optional<Statement> abovePlate() {
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
                                        ". The expansion valve does not open as it must, or the gauge is wrong. The relief valve that guards"
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
                                " is called a hazard: up to there, a sound valve and an ordinary gauge may differ so much from their"
                                        + " marks.");
    }

    /**
     * What is said where the readings show no hazard: never flatly where one stands above a plate.
     *
     * @return whole sentences
     */
    public Statement calm() {
        String safe = " Whether the house is safe, readings of a gauge cannot say.";
        return plain((abovePlate().isEmpty()
                        ? "The readings show no hazard."
                        : "The highest reading stands above a plate, though it is not called a hazard: see the caution.")
                + safe);
    }

    /**
     * What could hurt somebody and is not ruled out, with what to check.
     *
     * @return whole sentences; empty if nothing is left
     */
    public Optional<Statement> notRuledOut() {
        List<HypothesisFit> left = result.notRuledOut().stream()
                .filter(fit -> !isOverpressure() || fit.cause() != Cause.RELIEF_OPENS_HIGH)
                .toList();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of(plain("Not ruled out by these readings: " + among(left) + ". "
                        + left.stream()
                                .map(HypothesisFit::cause)
                                .map(this::toCheck)
                                .distinct()
                                .collect(Collectors.joining(" "))));
    }

    private String among(List<HypothesisFit> fits) {
        return fits.stream()
                .map(fit -> fit.inWords() + (mayNotOpen(fit) ? ", or not at all" : ""))
                .collect(Collectors.joining("; or "));
    }

    /** A pressure that fell under heating has shown that a valve opens. */
    private boolean mayNotOpen(HypothesisFit fit) {
        return fit.cause() == Cause.RELIEF_OPENS_HIGH
                && log.filter(PressureLog::fellWhileHeating).isEmpty();
    }

    private boolean passed() {
        return result.overpressure()
                .filter(over -> over.plate() == Overpressure.Plate.RELIEF_VALVE)
                .isPresent();
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
