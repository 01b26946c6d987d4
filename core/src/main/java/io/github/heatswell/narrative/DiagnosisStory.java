package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What readings say of a house, what they cannot say, and what to check next. Immutable. */
public final class DiagnosisStory {

    private static final int MAX_NAMED = 4;
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

    /** A log that rises by this (Pa) shows a heat-up; own judgement. */
    private static final double HEAT_UP = 0.5e5;

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
     * What the readings say, with what they cannot say.
     *
     * @return whole sentences
     */
    public String answer() {
        List<HypothesisFit> tested = tested();
        if (result.misfit()) {
            return "These readings don't settle it: none of the causes looked at explains them within their uncertainty. "
                    + (tested.size() == 1 ? "The closest is this: " : "The closest are these: ")
                    + named(tested)
                    + ". Something is not as described, or it is a cause that was not looked at."
                    + notTested();
        }
        if (result.best().cause() == Cause.AS_DESCRIBED) {
            String slight = tested.size() == 1
                    ? ""
                    : " They would show no difference if one of these were slight: "
                            + named(tested.subList(1, tested.size())) + ".";
            return ordinary() + "The readings agree with the house as described." + slight + notTested();
        }
        if (tested.size() == 1) {
            return "The readings are explained best by this: " + result.best().inWords() + "." + notTested();
        }
        return "These readings don't settle it. Each of these would explain them: " + named(tested) + "." + notTested();
    }

    /** Why the valve drips where nothing is wrong but that no vessel takes up the water; nothing where that is not so. */
    private String ordinary() {
        Set<String> found = Findings.of(house, doubts).stream().map(Finding::id).collect(Collectors.toSet());
        if (!heated() || Stream.concat(NO_VESSEL.stream(), IDLE_VESSEL.stream()).noneMatch(found::contains)) {
            return "";
        }
        return NO_VESSEL.stream().anyMatch(found::contains)
                ? "Ordinary expansion: the heated water has nowhere to go. Fit an expansion vessel. "
                : "Ordinary expansion: the heated water has nowhere to go, because the expansion vessel takes none. Have the"
                        + " vessel put right. ";
    }

    /** Whether the readings show a heat-up. */
    private boolean heated() {
        boolean rose = log.filter(log -> IntStream.range(0, log.count())
                                .mapToDouble(log::gauge)
                                .max()
                                .orElseThrow()
                        > log.gauge(0) + HEAT_UP)
                .isPresent();
        return rose
                || read.contains(SiteCheck.HEAT_UP_MAXIMUM)
                || read.contains(SiteCheck.PEAK_AFTER_DRAW)
                || read.contains(SiteCheck.CAUGHT_VOLUME);
    }

    /**
     * What was taken for granted of the beginning of the log, and what to do where it is not so.
     *
     * @return whole sentences; empty if it is known
     */
    public Optional<String> start() {
        boolean told = house.start().waterTemperature().isPresent();
        return log.filter(one -> !told && !one.hasTemperature())
                .map(one -> "The tank was taken as cold at the first reading. If it was warm, give start.water and run"
                        + " again: the answer may change.");
    }

    /** The likeliest, and those that the readings test but cannot tell from it. */
    private List<HypothesisFit> tested() {
        List<HypothesisFit> untested = result.untested();
        return result.alike().stream().filter(fit -> !untested.contains(fit)).toList();
    }

    private String notTested() {
        List<HypothesisFit> untested = result.untested();
        return untested.isEmpty() ? "" : " Not tested by these readings: " + named(untested) + ".";
    }

    private static String named(List<HypothesisFit> fits) {
        String causes =
                fits.stream().limit(MAX_NAMED).map(HypothesisFit::inWords).collect(Collectors.joining("; "));
        int others = fits.size() - MAX_NAMED;
        return causes + (others > 0 ? "; " + (others == 1 ? "one other cause" : others + " other causes") : "");
    }

    /**
     * What a check on site would show for each of the causes it separates.
     *
     * @param check the check
     * @return a sentence, and who is to do it
     */
    public Statement check(SeparatingCheck check) {
        return plain((tested().size() == 1 ? "To make sure, read " : "To tell them apart, read ")
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
        return HEATED.contains(check.check()) && hazard().isPresent()
                ? " This takes heating, and there is a hazard: leave it to a licensed professional."
                : "";
    }

    /**
     * What the readings say may hurt somebody, and what to do.
     *
     * @return whole sentences; empty if they speak for no hazard
     */
    public Optional<String> hazard() {
        List<HypothesisFit> hazards = result.hazards();
        return hazards.isEmpty()
                ? Optional.empty()
                : Optional.of("The readings speak for this: " + among(hazards)
                        + ". Turn the heater off until a licensed professional has looked at it.");
    }

    /**
     * What could hurt somebody and is not ruled out, with what to check.
     *
     * @return whole sentences; empty if nothing is left
     */
    public Optional<String> notRuledOut() {
        List<HypothesisFit> left = result.notRuledOut();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("Not ruled out by these readings: " + among(left) + ". "
                        + left.stream()
                                .map(HypothesisFit::cause)
                                .map(DiagnosisStory::toCheck)
                                .distinct()
                                .collect(Collectors.joining(" ")));
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

    private static String toCheck(Cause cause) {
        return switch (cause) {
            case RELIEF_OPENS_HIGH ->
                "Watch the gauge during a heat-up: if it passes the set pressure on the valve's plate, turn the heater"
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
