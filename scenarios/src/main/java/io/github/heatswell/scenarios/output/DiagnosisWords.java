package io.github.heatswell.scenarios.output;

import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.SeparatingCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.scenarios.wording.Shown;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.stream.Collectors;

/** A diagnosis in sentences. */
final class DiagnosisWords {

    private static final double HUNDRED = 100;

    private final DiagnosisResult result;
    private final Shown shown;

    DiagnosisWords(DiagnosisResult result, Shown shown) {
        this.result = result;
        this.shown = shown;
    }

    /** What the readings say, with what they cannot say. */
    String answer() {
        String misfit = result.misfit()
                ? " But even that does not fit the readings within their uncertainty: something is not as described and not"
                        + " among the causes looked at."
                : "";
        if (result.isDecided()) {
            return "The readings are explained best by this: " + cause(result.best()) + "." + misfit;
        }
        String causes = result.alike().stream().map(DiagnosisWords::cause).collect(Collectors.joining("; or "));
        return "The readings cannot tell between these: " + causes + "." + misfit;
    }

    static String cause(HypothesisFit fit) {
        return fit.cause().words() + (fit.device().isEmpty() ? "" : " ('" + fit.device() + "')");
    }

    /** What a check on site would show for each of the causes it separates. */
    String check(SeparatingCheck check) {
        return (result.isDecided() ? "To make sure, read " : "To tell them apart, read ")
                + check.check().words() + ": "
                + value(check.check(), check.expectedFirst()) + " if "
                + check.first().words() + ", "
                + value(check.check(), check.expectedSecond()) + " if "
                + check.second().words() + ".";
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

    private String value(Estimate estimate, double value) {
        return switch (estimate.parameter().unit()) {
            case "Pa" -> shown.pressure(value);
            case "K" -> shown.temperature(value);
            case "m3" -> shown.volume(value);
            case "m3/s" -> flow(value);
            case "s" -> Digits.fixed(value / 60, 1) + " min";
            default -> Digits.fixed(HUNDRED * value, 1) + " %";
        };
    }

    private String flow(double value) {
        return shown.units() == UnitSystem.SI
                ? Digits.fixed(FlowUnit.MILLILITRE_PER_MINUTE.fromSi(value), 1) + " mL/min"
                : Digits.significant(FlowUnit.US_GALLON_PER_MINUTE.fromSi(value), 3) + " gal/min";
    }
}
