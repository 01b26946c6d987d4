package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A diagnosis in sentences. */
final class DiagnosisWords {

    private static final int MAX_NAMED = 4;
    private static final Set<SiteCheck> HEATED =
            Set.of(SiteCheck.HEAT_UP_MAXIMUM, SiteCheck.NEXT_MORNING, SiteCheck.CAUGHT_VOLUME, SiteCheck.HOT_TAP);

    /** From this weight on a cause is as good as sure, and below the other as good as out; nothing finer is claimed. */
    private static final double SURE = 0.95;

    private static final double HARDLY = 0.05;

    /** The findings that say why heated water has nowhere to go, of a house without any vessel and of one with. */
    private static final Set<String> NO_VESSEL = Set.of("expansion-control-missing", "bypass-opens-too-late");

    private static final Set<String> IDLE_VESSEL =
            Set.of("vessel-isolated", "vessel-upstream-of-check", "vessel-waterlogged");

    /** A log that rises by this (Pa) shows a heat-up; own judgement. */
    private static final double HEAT_UP = 0.5e5;

    private final DiagnosisAnswer answer;
    private final DiagnosisResult result;
    private final QuantityFormat shown;

    DiagnosisWords(DiagnosisAnswer answer, QuantityFormat shown) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = shown;
    }

    /** What the readings say, with what they cannot say. */
    String answer() {
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
            return "The readings are explained best by this: " + cause(result.best()) + "." + notTested();
        }
        return "The readings cannot tell between these: " + named(tested) + "." + notTested();
    }

    /** Why the valve drips where nothing is wrong but that no vessel takes up the water; nothing where that is not so. */
    private String ordinary() {
        Set<String> found = Findings.of(
                        answer.scenario().system(), answer.scenario().doubts())
                .stream()
                .map(Finding::id)
                .collect(Collectors.toSet());
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
        boolean rose = answer.log()
                .filter(log -> IntStream.range(0, log.count())
                                .mapToDouble(log::gauge)
                                .max()
                                .orElseThrow()
                        > log.gauge(0) + HEAT_UP)
                .isPresent();
        Set<SiteCheck> read = answer.readings().spots().all().keySet();
        return rose || read.contains(SiteCheck.HEAT_UP_MAXIMUM) || read.contains(SiteCheck.CAUGHT_VOLUME);
    }

    /** What was taken for granted of the beginning of the log; empty if it is known. */
    Optional<String> start() {
        return answer.startRemark();
    }

    /** How likely a cause is among those looked at. */
    String weight(HypothesisFit fit) {
        double weight = fit.weight();
        return weight > SURE
                ? "over " + shown.share(SURE)
                : weight < HARDLY ? "under " + shown.share(HARDLY) : shown.share(weight);
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
                fits.stream().limit(MAX_NAMED).map(DiagnosisWords::cause).collect(Collectors.joining("; "));
        int others = fits.size() - MAX_NAMED;
        return causes + (others > 0 ? "; " + (others == 1 ? "one other cause" : others + " other causes") : "");
    }

    /** What stands behind a cause in a list: whether the readings say anything of it. */
    String standing(HypothesisFit fit) {
        return result.untested().contains(fit) ? ", not tested by these readings" : "";
    }

    static String cause(HypothesisFit fit) {
        return fit.cause().words() + (fit.device().isEmpty() ? "" : " ('" + fit.device() + "')");
    }

    /** What a check on site would show for each of the causes it separates. */
    String check(SeparatingCheck check) {
        return (tested().size() == 1 ? "To make sure, read " : "To tell them apart, read ")
                + check.check().words() + ": "
                + value(check.check(), check.expectedFirst()) + " if "
                + check.first().words() + ", "
                + value(check.check(), check.expectedSecond()) + " if "
                + check.second().words() + "." + heating(check);
    }

    /** Who is to do a check that takes heating while somebody may come to harm by it; nothing otherwise. */
    String heating(SeparatingCheck check) {
        return HEATED.contains(check.check()) && hazard().isPresent()
                ? " This takes heating, and there is a hazard: leave it to a licensed professional."
                : "";
    }

    /** What the readings say may hurt somebody, and what to do; empty if they speak for no hazard. */
    Optional<String> hazard() {
        List<HypothesisFit> hazards = result.hazards();
        return hazards.isEmpty()
                ? Optional.empty()
                : Optional.of("the readings speak for this: " + among(hazards)
                        + ". Turn the heater off until a licensed professional has looked at it.");
    }

    /** What could hurt somebody and is not ruled out, with what to check; empty if nothing is left. */
    Optional<String> notRuledOut() {
        List<HypothesisFit> left = result.notRuledOut();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("Not ruled out by these readings: " + among(left) + ". "
                        + left.stream()
                                .map(HypothesisFit::cause)
                                .map(DiagnosisWords::toCheck)
                                .distinct()
                                .collect(Collectors.joining(" ")));
    }

    private String among(List<HypothesisFit> fits) {
        return fits.stream()
                .map(fit -> cause(fit) + (mayNotOpen(fit) ? ", or not at all" : ""))
                .collect(Collectors.joining("; or "));
    }

    /** A pressure that fell under heating has shown that a valve opens. */
    private boolean mayNotOpen(HypothesisFit fit) {
        return fit.cause() == Cause.RELIEF_OPENS_HIGH
                && answer.log().filter(PressureLog::fellWhileHeating).isEmpty();
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

    String value(SiteCheck check, double value) {
        return switch (check.unit()) {
            case "Pa" -> shown.pressure(value);
            case "K" -> shown.temperature(value);
            default -> shown.volume(value);
        };
    }

    /** An estimate with its interval, or why there is none. */
    String estimate(Estimate estimate) {
        String words = estimate.parameter().words() + ": ";
        String settled = estimate.settledBy()
                .map(check -> "; to be settled by reading " + check.words())
                .orElse("");
        return switch (estimate.standing()) {
            case CARRIED ->
                words + value(estimate, estimate.value()) + ", between " + value(estimate, estimate.low()) + " and "
                        + value(estimate, estimate.high()) + " (95 %)";
            case AS_DESCRIBED ->
                words + "between " + value(estimate, estimate.low()) + " and " + value(estimate, estimate.high())
                        + ", little better than the description";
            case NOT_CARRIED -> words + "these readings do not say" + settled;
        };
    }

    String value(Estimate estimate, double value) {
        return switch (estimate.parameter().unit()) {
            case "Pa" -> shown.pressure(value);
            case "K" -> shown.temperature(value);
            case "m3" -> shown.volume(value);
            case "m3/s" -> shown.flow(value);
            case "s" -> shown.time(value);
            default -> shown.share(value);
        };
    }
}
