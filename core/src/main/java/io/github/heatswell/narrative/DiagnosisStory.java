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
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What readings say about a house, what they cannot say, and what to check next. Immutable. */
public final class DiagnosisStory {

    private static final int MAX_NAMED = 3;

    /** Weights are about equal down to this share of the greatest; our own judgement. */
    private static final double ABOUT_EQUAL = 0.9;

    /** From these weights on a cause is called settled, or likely; our own judgement. */
    private static final double SETTLED = 0.9;

    private static final double LIKELY = 0.75;
    private static final double EVEN = 0.5;

    /** The findings that say why heated water has nowhere to go, of a house without any vessel and of one with. */
    private static final Set<String> NO_VESSEL = Set.of("expansion-control-missing", "bypass-opens-too-late");

    private static final Set<String> IDLE_VESSEL =
            Set.of("vessel-isolated", "vessel-upstream-of-check", "vessel-waterlogged");

    /** An assumed reseat pressure so much (share of the set pressure) from what fits decides something; our own judgement. */
    private static final double DECIDES = 0.05;
    /** Less water (m3) is no draw. */
    private static final double MIN_DRAW = 0.5e-3;
    /** A heat-up that began less than this (s) before the first reading began with it: clocks are read to the minute. */
    private static final double BEFORE = 60;

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Doubts doubts;
    private final Optional<PressureLog> log;
    private final Set<SiteCheck> read;
    private final boolean doubted;
    private final ReadingHazards hazards;
    private final NextReading nextReading;

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
        this.doubted = false;
        this.hazards = new ReadingHazards(result, house, log);
        this.nextReading = new NextReading(result, house, log, this.read, hazards);
    }

    private DiagnosisStory(DiagnosisStory same, boolean doubted) {
        this.result = same.result;
        this.house = same.house;
        this.doubts = same.doubts;
        this.log = same.log;
        this.read = same.read;
        this.hazards = same.hazards;
        this.nextReading = same.nextReading;
        this.doubted = doubted;
    }

    /**
     * The same story where it is open whether the readings mean what they were taken for.
     *
     * @param open whether it is
     * @return a story that calls nothing settled if so
     */
    public DiagnosisStory doubting(boolean open) {
        return new DiagnosisStory(this, open);
    }

    /**
     * What the readings say, in a sentence or two.
     *
     * @return whole sentences
     */
    public Statement verdict() {
        if (isHazardByReading()) {
            return plain(hazards.whateverTheCause());
        }
        if (isUnmoved()) {
            return plain(
                    "The gauge did not move while the tank was heated. Either it is dead or shut off, or the water has a way back"
                            + " to the mains: these readings can't tell which.");
        }
        if (result.isUnexplained()) {
            return plain("Open. These readings don't settle it: none of the causes considered explains them.");
        }
        if (asDescribed()) {
            return plain((!heated() ? "Open. " : standing()) + ordinary() + agreeing());
        }
        String shared = shared();
        if (isSettled() || isLikely()) {
            return plain(shared
                    + standing()
                    + (isSettled() ? "The cause is this: " : "The cause that fits best is this: ")
                    + result.best().inWords() + ".");
        }
        if (!shared.isEmpty()) {
            return plain(shared + (doubted ? standing() : "") + "Which one it is remains open.");
        }
        int alike = result.alike().size();
        int untested = result.untested().size();
        return plain("Open. These readings don't settle it: " + alike + " causes would explain them"
                + (untested == 0 ? "." : ", " + untested + " of them hardly tested."));
    }

    /**
     * The verdict in short, for a title: what was found, and not what to do.
     *
     * @return whole sentences, two lines at most
     */
    public Statement headline() {
        if (isUnmoved() && !isHazardByReading()) {
            return plain("The gauge did not move while the tank was heated.");
        }
        if (isHazardByReading() || result.isUnexplained()) {
            return verdict();
        }
        String expansion = expansion().isEmpty() ? "" : expansion() + ". ";
        if (asDescribed()) {
            return plain((doubted || !heated() ? "Open. " : standing())
                    + (expansion.isEmpty() ? agreeing() : expansion.strip()));
        }
        if (isSettled() || isLikely()) {
            return plain((doubted ? "Open. " : standing()) + "Best fit: "
                    + result.best().inWords() + ".");
        }
        return plain("Open. " + (isShared() ? expansion : "") + result.alike().size()
                + " causes would explain these readings.");
    }

    private String agreeing() {
        return (result.misfit() ? "All readings but one agree" : "The readings agree")
                + " with the house as described.";
    }

    /** How sure the answer is. */
    private String standing() {
        return doubted ? "Open until you have checked the points below. " : isSettled() ? "Settled. " : "Likely. ";
    }

    private boolean isSettled() {
        return !doubted && result.isDecided() && result.best().weight() >= SETTLED;
    }

    /** Whether one cause stands out: it is likelier than all others together, or far likelier if others explain the readings too. */
    private boolean isLikely() {
        return result.best().weight() > (result.tested().size() == 1 ? EVEN : LIKELY);
    }

    /** What several causes that would explain the readings have in common, as far as the readings test them; else nothing. */
    private String shared() {
        return !isShared()
                ? ""
                : (ordinary().isEmpty()
                                ? "The heated water has nowhere to go: the expansion vessel takes none. "
                                : ordinary())
                        + "That is true of each of the " + result.tested().size()
                        + " causes these readings point to. ";
    }

    /** Whether several causes would explain the readings, and heated water has nowhere to go in any. */
    private boolean isShared() {
        return result.tested().size() > 1 && isShut();
    }

    /** Whether heated water has nowhere to go in any of the causes that would explain the readings. */
    private boolean isShut() {
        boolean described = !ordinary().isEmpty();
        boolean alone = house.vessels().size() == 1 && house.supply().arrangement() != Supply.Arrangement.DIRECT;
        return heated() && (described || alone) && result.tested().stream().allMatch(fit -> fit.shutsIn(described));
    }

    /**
     * Whether the answer, whatever the cause, is a vessel for a house in which heated water has nowhere to go.
     *
     * @return true if it has nowhere to go in the house as described, nor in any cause that would explain the readings
     */
    public boolean asksForVessel() {
        return !isHazardByReading()
                && !doubted
                && !isUndescribed()
                && !isUnmoved()
                && !result.isUnexplained()
                && !opened()
                && !ordinary().isEmpty()
                && (asDescribed() || isShut());
    }

    /**
     * What stands behind the verdict: the causes it is about, readings that are not explained, and what was not tested.
     *
     * @return whole sentences, possibly none
     */
    public Statement details() {
        List<Statement> all = new ArrayList<>();
        List<HypothesisFit> tested = result.tested();
        if (isUnmoved()) {
            return plain("");
        }
        if (asDescribed() && log.isPresent() && !heated()) {
            all.add(plain("They show no heat-up, so they say nothing about one."));
        }
        if (result.isUnexplained()) {
            all.add(plain(closest(tested)));
            result.best()
                    .misfit()
                    .filter(misfit -> misfit.systematic() > misfit.tolerated())
                    .ifPresent(misfit -> all.add(plain("Over a stretch of the log it is at least ")
                            .then(new Measure(Measure.Kind.PRESSURE_DIFFERENCE, misfit.systematic()))
                            .then(" off.")));
            all.add(plain(
                    "A value in the description may be wrong, water may have been drawn without a note, or the cause may be one not"
                            + " considered here."));
        } else if (!asDescribed() && !isSettled()) {
            List<HypothesisFit> others = isLikely() ? tested.subList(1, tested.size()) : tested;
            String said = isLikely()
                    ? "These would explain the readings too: "
                    : tested.size() == 1 ? "The likeliest is this: " : "The likeliest are these: ";
            others.stream().findFirst().ifPresent(any -> all.add(plain(said + named(others) + ".")));
        }
        strays().ifPresent(all::add);
        if (!result.isUnexplained() && asDescribed() && tested.size() > 1) {
            all.add(plain("They would not show a slight case of one of these: "
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
        List<HypothesisFit> alike = tested.stream()
                .filter(fit -> fit.weight() >= ABOUT_EQUAL * tested.get(0).weight())
                .toList();
        if (alike.size() > 1) {
            return "These fit best, about equally: " + named(alike) + ".";
        }
        return tested.get(0).cause() == Cause.AS_DESCRIBED
                ? "The house as described fits best."
                : "This one fits best: " + name(tested.get(0)) + ".";
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
                .map(share -> plain("The best fit depends on a reseat pressure that nobody looked up: assumed ")
                        .then(new Measure(Measure.Kind.SHARE, assumed))
                        .then(" of the set pressure, fitted as ")
                        .then(new Measure(Measure.Kind.SHARE, share))
                        .then(" here. If the manufacturer gives it, add it as reseats."));
    }

    /** How much water was drawn in the best explanation, as far as the log notes or shows that it was. */
    private Optional<Statement> drawn() {
        List<Estimate> draws = result.best().estimates().stream()
                .filter(one -> one.parameter().isDrawn() && one.value() > MIN_DRAW)
                .toList();
        double all = draws.stream().mapToDouble(Estimate::value).sum();
        return draws.isEmpty()
                ? Optional.empty()
                : Optional.of(plain(
                                "This assumes that water was drawn where the pressure fell to the supply's or your notes say so: about ")
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
            return plain("The highest reading that was used is not explained: ").then(missed(highest.get()));
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
                || result.tested().stream()
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
                        fit -> result.isUnexplained() || !asDescribed() || fit.cause() != Cause.AS_DESCRIBED))
                .toList();
    }

    /** Why the valve drips where nothing is wrong but that no vessel takes up the water, and what to do; nothing where that is not so. */
    private String ordinary() {
        String expansion = expansion();
        return expansion.isEmpty() ? "" : expansion + cure() + " ";
    }

    /** The same without what to do, and without a full stop. */
    private String expansion() {
        if (heated() && isFound(NO_VESSEL)) {
            return "Ordinary expansion: the heated water has nowhere to go";
        }
        if (heated() && isFound(IDLE_VESSEL)) {
            return "Ordinary expansion: the heated water has "
                    + (house.vessels().stream().allMatch(one -> one.condition() != ExpansionVessel.Condition.SOUND)
                            ? "nowhere to go"
                            : "too little room");
        }
        return heated() && isFound(Set.of("expansion-valve-provided"))
                ? "Ordinary expansion, which the valve on the cold inlet is there to discharge"
                : "";
    }

    /** What follows the words on expansion: what to do. */
    private String cure() {
        if (isFound(NO_VESSEL)) {
            return isUndescribed() ? " in the house as described." : ". Fit an expansion vessel.";
        }
        return isFound(IDLE_VESSEL)
                ? ", because " + String.join(", and ", VesselVerdict.outOfServiceNamed(house))
                        + (opened()
                                ? ". With the heater off and the water cool, open that valve and secure it."
                                : ". Have that fixed.")
                : ". An expansion vessel would end that.";
    }

    private boolean isFound(Set<String> ids) {
        return Findings.of(house, doubts).stream().map(Finding::id).anyMatch(ids::contains);
    }

    /** Whether a vessel was read where none is described: then nobody is told to fit one. */
    private boolean isUndescribed() {
        return house.vessels().isEmpty() && read.stream().anyMatch(SiteCheck::isOfVessel);
    }

    /** Whether the gauge of a house that is shut in rests although the log says that the tank was heated. */
    private boolean isUnmoved() {
        return house.supply().arrangement() != Supply.Arrangement.DIRECT
                && log.filter(PressureLog::restsWhileHeated).isPresent();
    }

    /** Whether a closed valve is all that keeps the only vessel from working. */
    private boolean opened() {
        return house.vessels().size() == 1 && house.vessels().get(0).condition() == ExpansionVessel.Condition.ISOLATED;
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
                                " is not known: it was assumed cold, or warmer where that fits better. For a surer answer, take"
                                        + " readings starting from a cold tank, or write into the file how warm it was"
                                        + " (start.water)."));
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
        return isUnmoved() && !isHazardByReading()
                ? Optional.of(nextReading.otherGauge())
                : nextReading.words(asDescribed());
    }

    /**
     * Who is to do a check that takes heating while somebody may come to harm by it.
     *
     * @param check the check
     * @return a sentence with a space before it; empty if anybody may do it
     */
    public String heating(SeparatingCheck check) {
        return nextReading.heating(check.check());
    }

    /**
     * What the readings say may hurt somebody, and what to do.
     *
     * @return whole sentences; empty if they speak for no hazard
     */
    public Optional<Statement> hazard() {
        return hazards.hazard();
    }

    /**
     * Whether a reading alone shows a hazard, so that nobody may be told to heat the tank.
     *
     * @return true if one lies beyond what the plates, the thermostat or the mixing valve allow
     */
    public boolean isHazardByReading() {
        return hazards.isByReading();
    }

    /**
     * What readings above a plate or a setting say that are no hazard by themselves.
     *
     * @return whole sentences; empty if there are none
     */
    public Optional<Statement> beyondLimit() {
        return hazards.beyond();
    }

    /**
     * What is said where the readings show no hazard: never flatly where one stands beyond a limit.
     *
     * @return whole sentences
     */
    public Statement calm() {
        return hazards.calm();
    }

    /**
     * What could hurt somebody and is not ruled out, with what to check.
     *
     * @return whole sentences; empty if nothing is left
     */
    public Optional<Statement> notRuledOut() {
        return hazards.notRuledOut();
    }
}
