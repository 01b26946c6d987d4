package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.Sighting;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** What readings say about a house, what they cannot say, and what to check next. Immutable. */
public final class DiagnosisStory {

    /** A heat-up that began less than this (s) before the first reading began with it: clocks are read to the minute. */
    private static final double BEFORE = 60;

    private static final double DAY = 86_400;

    /** A relief valve stays shut below this share of its set pressure; common practice, no source. */
    private static final double BELOW = 0.9;

    private static final String BESIDES = "Besides, water is lost at a tap or elsewhere.";

    /** What tells most about a vessel in a moment, before any reading; common practice, no source. */
    private static final String PIN =
            "Before anything else, press the pin of its air valve for a moment. Water means that it has failed:"
                    + " replace it. Nothing means that it is flat. Air means that it holds a charge: read it, and see"
                    + " that no valve shuts it off.";

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Optional<PressureLog> log;
    private final OrdinaryExpansion expansion;
    private final Conclusion conclusion;
    private final boolean doubted;
    private final ReadingHazards hazards;
    private final NextReading nextReading;
    private final RestReadings rest;

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
        this.log = Objects.requireNonNull(log, "log");
        this.expansion = new OrdinaryExpansion(house, Objects.requireNonNull(doubts, "doubts"), log, Set.copyOf(read));
        this.doubted = false;
        this.conclusion = new Conclusion(result, house, log, expansion, doubted);
        this.hazards = new ReadingHazards(result, house, log);
        this.nextReading = new NextReading(result, house, log, Set.copyOf(read), hazards);
        this.rest = new RestReadings(house, log);
    }

    private DiagnosisStory(DiagnosisStory same, boolean doubted) {
        this.result = same.result;
        this.house = same.house;
        this.log = same.log;
        this.expansion = same.expansion;
        this.doubted = doubted;
        this.conclusion = new Conclusion(result, house, log, expansion, doubted);
        this.hazards = same.hazards;
        this.nextReading = same.nextReading;
        this.rest = same.rest;
    }

    /**
     * The same story where the readings may not mean what they were taken for.
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
        if (conclusion.isUnmoved()) {
            return plain(
                    "The gauge did not move while the tank was heated. Either it is dead or shut off, or the water has a way back"
                            + " to the mains: these readings can't tell which.");
        }
        String pin = failsVessel() ? " " + PIN : "";
        if (result.isUnexplained() && failsVessel()) {
            return headline().then(pin);
        }
        if (result.isUnexplained()) {
            return plain("Open. These readings don't settle it: none of the causes considered explains them.");
        }
        if (conclusion.isAsDescribed()) {
            return isDry()
                    ? dry().then(" The readings agree with the house as described.")
                    : plain((!expansion.isHeated() ? "Open. " : standing()) + expansion.answer() + agreeing());
        }
        String shared = shared();
        if (result.misfit()) {
            return plain("Open. The cause that comes closest leaves one reading unexplained: "
                    + result.best().inWords() + "." + pin);
        }
        if (conclusion.isSettled() || conclusion.isLikely()) {
            return losesBesides()
                    ? plain((shared.isEmpty() ? expansion.answer() : shared) + standing() + BESIDES
                            + " That lowers the pressure afterwards; it makes no relief valve drip.")
                    : plain(shared
                            + standing()
                            + (conclusion.isSettled() ? "The cause is this: " : "The cause that fits best is this: ")
                            + result.best().inWords() + "." + pin);
        }
        if (!shared.isEmpty()) {
            return plain(shared + (doubted ? standing() : "") + "Which one remains open." + pin);
        }
        if (failsVessel()) {
            return plain(
                    "The expansion vessel does not work as it should: nearly every cause that would explain the readings says so."
                            + pin);
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
        if (conclusion.isUnmoved() && !isHazardByReading()) {
            return plain("The gauge did not move while the tank was heated.");
        }
        if (result.isUnexplained() && failsVessel()) {
            return plain(
                    "The expansion vessel does not work as it should: the causes that come closest all say so, though none explains"
                            + " the readings.");
        }
        if (isHazardByReading() || result.isUnexplained()) {
            return verdict();
        }
        String reason = expansion.isAnswer() ? expansion.reason() + ". " : "";
        if (conclusion.isAsDescribed() && isDry()) {
            return plain("As far as these readings show, the expansion vessel does its work.");
        }
        if (conclusion.isAsDescribed()) {
            return plain((doubted || !expansion.isHeated() ? "Open. " : standing())
                    + (reason.isEmpty() ? agreeing() : reason.strip()));
        }
        if (result.misfit()) {
            return plain("Open. Closest, though it leaves one reading unexplained: "
                    + result.best().inWords() + ".");
        }
        if (conclusion.isSettled() || conclusion.isLikely()) {
            return plain((doubted ? "Open. " : standing())
                    + (losesBesides()
                            ? reason + BESIDES
                            : "Best fit: " + result.best().inWords() + "."));
        }
        return plain("Open. " + (conclusion.isShared() ? reason : "")
                + result.alike().size() + " causes would explain these readings.");
    }

    /**
     * Whether the answer is that the vessel does not work, whatever the reason.
     *
     * @return true if nearly all that comes close says so, and the cause itself is not settled
     */
    public boolean failsVessel() {
        return !isHazardByReading() && !conclusion.isUnmoved() && conclusion.isOfVessel();
    }

    /** Whether the best cause loses water from a house in which heated water has nowhere to go: no leak makes a relief valve drip. */
    private boolean losesBesides() {
        HypothesisFit best = result.best();
        return best.cause() == Cause.LEAK && best.also().isEmpty() && expansion.isAnswer();
    }

    private String agreeing() {
        return (result.misfit() ? "All readings but one agree" : "The readings agree")
                + " with the house as described"
                + (expansion.isHeated()
                                && !doubted
                                && !result.misfit()
                                && !conclusion.isSettled()
                                && !conclusion.isLikely()
                        ? ", but don't settle it."
                        : ".");
    }

    /** Whether the best explanation is a vessel that takes up the expansion, and nothing speaks of a relief valve that opened. */
    private boolean isDry() {
        double set = house.reliefValves().stream()
                .mapToDouble(valve -> valve.setPressure().gauge(house.site().atmosphere()))
                .min()
                .orElse(Double.NEGATIVE_INFINITY);
        return !doubted
                && expansion.isHeated()
                && !expansion.isAnswer()
                && !house.vessels().isEmpty()
                && !result.misfit()
                && result.best().cause() == Cause.AS_DESCRIBED
                && log.filter(one -> one.highest() < BELOW * set && !sees(one, Sighting.Kind.DRIPS))
                        .isPresent();
    }

    private static boolean sees(PressureLog log, Sighting.Kind kind) {
        return log.sightings().stream().anyMatch(seen -> seen.kind() == kind);
    }

    /** What shows that a vessel takes up the expansion, whichever slight fault the readings would not show. */
    private Statement dry() {
        PressureLog shown = log.orElseThrow();
        return plain("As far as these readings show, the expansion vessel does its work: the highest is ")
                .then(Measure.gauge(shown.highest()))
                .then(", where ")
                .then(Measure.gauge(Collections.max(result.best().gauge())))
                .then(" was expected" + (sees(shown, Sighting.Kind.DRY) ? ", and the relief pipe stayed dry." : "."));
    }

    /** How sure the answer is. */
    private String standing() {
        return doubted
                ? "Open until you have checked the points below. "
                : conclusion.isSettled() ? "Settled. " : conclusion.isLikely() ? "Likely. " : "Open. ";
    }

    /** What several causes that would explain the readings have in common, as far as the readings test them; else nothing. */
    private String shared() {
        return !conclusion.isShared()
                ? ""
                : (!expansion.isAnswer()
                                ? "The heated water has nowhere to go: the expansion vessel takes none. "
                                : expansion.answer())
                        + "That holds whichever of the " + result.tested().size()
                        + " possible causes it is. ";
    }

    /**
     * Whether the answer, whatever the cause, is a vessel for a house in which heated water has nowhere to go.
     *
     * @return true if it has nowhere to go in the house as described, nor in any cause that would explain the readings
     */
    public boolean asksForVessel() {
        return !isHazardByReading()
                && !doubted
                && !expansion.isUndescribed()
                && !conclusion.isUnmoved()
                && !result.isUnexplained()
                && !expansion.isShutOff()
                && expansion.isAnswer()
                && (conclusion.isAsDescribed() || conclusion.isShut());
    }

    /**
     * What stands behind the verdict: the causes it is about, readings that are not explained, and what was not tested.
     *
     * @return whole sentences, possibly none
     */
    public Statement details() {
        return new FitDetails(result, house, conclusion).words();
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

    /**
     * The causes as they are to be listed: the likeliest first, but where the house as described explains the readings that goes before
     * any fault.
     *
     * @return all fits
     */
    public List<HypothesisFit> listed() {
        return result.fits().stream()
                .sorted(Comparator.comparing(fit ->
                        result.isUnexplained() || !conclusion.isAsDescribed() || fit.cause() != Cause.AS_DESCRIBED))
                .toList();
    }

    /**
     * What was assumed about the beginning of the log, and what to do where it is wrong.
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
                        .then(Measure.about(-start))
                        .then(" before the first reading,"))
                .orElse(plain("at the first reading"));
    }

    /**
     * How much was used of a log that holds more draws than can be left open.
     *
     * @param whole the log as it was read
     * @return a whole sentence; empty if all of it was used, or its first two days
     */
    public Optional<Statement> used(PressureLog whole) {
        return log.map(PressureLog::end)
                .filter(end -> end < DAY && whole.end() > end + DAY / 24)
                .map(end -> plain("Used of the log: its first ")
                        .then(Measure.time(end))
                        .then(" of ")
                        .then(Measure.time(whole.end()))
                        .then(
                                end < 0.99 * DAY
                                        ? ". A fourth draw begins there, and no more than three of unknown size can be told apart. A log of a"
                                                + " quiet time says more."
                                        : ", since it shows draws."));
    }

    /**
     * Whether the reducing valve closes, as far as readings at rest show it, or which reading tells.
     *
     * @return whole sentences; empty if there is none, or nobody need ask
     */
    public Optional<Statement> reducingValve() {
        return isHazardByReading() || doubted || conclusion.isUnmoved()
                ? Optional.empty()
                : rest.ofReducingValve(result);
    }

    /**
     * The lowest reading that was taken at rest: with the heater off or no water drawn, and hours after any heating.
     *
     * @return the pressure (Pa, gauge); empty if there is no such reading
     */
    public OptionalDouble atRest() {
        return rest.lowest();
    }

    /**
     * What to read or log next.
     *
     * @return whole sentences, with who is to do it; empty if nothing is left to tell
     */
    public Optional<Statement> next() {
        return conclusion.isUnmoved() && !isHazardByReading()
                ? Optional.of(nextReading.otherGauge())
                : nextReading.words(conclusion.isAsDescribed());
    }

    /**
     * Who is to do a check that needs heating where heating may hurt somebody.
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
     * What readings above a plate or a setting mean where they are not yet a hazard.
     *
     * @return whole sentences; empty if there are none
     */
    public Optional<Statement> beyondLimit() {
        return hazards.beyond();
    }

    /**
     * What to say where the readings show no hazard; never a flat all-clear where one lies beyond a limit.
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
        return hazards.notRuledOut(!doubted && !conclusion.isAsDescribed() && conclusion.isLikely());
    }
}
