package io.github.heatswell.scenarios.output;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A diagnosis in sentences. */
final class DiagnosisWords {

    private static final int MOST_NAMED = 4;
    private static final Set<SiteCheck> HEATED =
            Set.of(SiteCheck.HEAT_UP_MAXIMUM, SiteCheck.NEXT_MORNING, SiteCheck.CAUGHT_VOLUME, SiteCheck.HOT_TAP);

    private final DiagnosisResult result;
    private final QuantityFormat shown;

    DiagnosisWords(DiagnosisResult result, QuantityFormat shown) {
        this.result = result;
        this.shown = shown;
    }

    /** What the readings say, with what they cannot say. */
    String answer() {
        String misfit = result.misfit()
                ? " But even that does not fit the readings within their uncertainty: something is not as described and not"
                        + " among the causes looked at."
                : "";
        List<HypothesisFit> tested = tested();
        if (result.best().cause() == Cause.AS_DESCRIBED && misfit.isEmpty()) {
            String slight = tested.size() == 1
                    ? ""
                    : " They would show no difference if one of these were slight: "
                            + named(tested.subList(1, tested.size())) + ".";
            return "The readings agree with the house as described." + slight + notTested();
        }
        if (tested.size() == 1) {
            return "The readings are explained best by this: " + cause(result.best()) + "." + misfit + notTested();
        }
        return "The readings cannot tell between these: " + named(tested) + "." + misfit + notTested();
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
                fits.stream().limit(MOST_NAMED).map(DiagnosisWords::cause).collect(Collectors.joining("; "));
        int others = fits.size() - MOST_NAMED;
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
                : Optional.of("the readings speak for this: "
                        + hazards.stream().map(DiagnosisWords::cause).collect(Collectors.joining("; or "))
                        + ". Turn the heater off until a licensed professional has looked at it.");
    }

    /** What could hurt somebody and is not ruled out, without any evidence of it; empty if nothing is left. */
    Optional<String> notRuledOut() {
        List<HypothesisFit> hazards = result.hazards();
        List<HypothesisFit> left = result.alike().stream()
                .filter(fit -> fit.cause().isHazard() && !hazards.contains(fit))
                .toList();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("Not ruled out by these readings, though nothing speaks for it: "
                        + left.stream().map(DiagnosisWords::cause).collect(Collectors.joining("; "))
                        + ". Have the relief valve and the thermostat checked once a year.");
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
            case AS_DESCRIBED -> words + "as described, " + value(estimate, estimate.value());
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
