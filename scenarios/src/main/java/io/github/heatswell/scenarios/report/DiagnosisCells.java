package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.Evidence;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.units.QuantityFormat;

/** The numbers of a diagnosis as its lists and tables show them. */
final class DiagnosisCells {

    /** From this weight on a cause is as good as sure, and below the other as good as out; nothing finer is claimed. */
    private static final double SURE = 0.95;

    private static final double HARDLY = 0.05;
    /** So many equal shares say nothing but that these causes cannot be told apart; our own judgement. */
    private static final int MANY = 4;

    private final DiagnosisResult result;
    private final QuantityFormat shown;

    DiagnosisCells(DiagnosisResult result, QuantityFormat shown) {
        this.result = result;
        this.shown = shown;
    }

    /** How likely a cause is among those looked at; of many with the same share, that none is likelier. */
    String weight(HypothesisFit fit) {
        String share = share(fit);
        long same = result.fits().stream()
                .filter(other -> share(other).equals(share))
                .count();
        return fit.weight() >= HARDLY && same >= MANY ? "not told apart" : share;
    }

    private String share(HypothesisFit fit) {
        double weight = fit.weight();
        return weight > SURE
                ? result.misfit() ? "nearly all" : "over " + shown.share(SURE)
                : weight < HARDLY ? "under " + shown.share(HARDLY) : shown.share(weight);
    }

    /** Whether hardly anything speaks for a cause. */
    boolean isHardlyLikely(HypothesisFit fit) {
        return fit.weight() < HARDLY;
    }

    /** What stands behind a cause in a list: whether the readings say anything of it, rule it out, or do without it. */
    String standing(HypothesisFit fit) {
        if (result.untested().contains(fit)) {
            return ", not tested by these readings";
        }
        if (result.misfit() || result.alike().contains(fit)) {
            return "";
        }
        if (fit.blames(Cause.WATER_TOO_HOT)
                && (!fit.isHeldAgainstTemperatures() || result.notRuledOut().contains(fit))) {
            return ", unlikely by the pressure; only a thermometer rules it out";
        }
        return isNeedless(fit) ? ", not needed to explain the readings" : ", as good as ruled out";
    }

    /** Whether no part of the readings speaks against a cause, and yet it is far less likely than one that assumes less. */
    boolean isNeedless(HypothesisFit fit) {
        return !result.misfit()
                && !result.alike().contains(fit)
                && !fit.evidence().isEmpty()
                && fit.evidence().stream().noneMatch(Evidence::against);
    }

    String value(SiteCheck check, double value) {
        return switch (check.unit()) {
            case "Pa" -> shown.pressure(value);
            case "K" -> shown.temperature(value);
            case "" -> check == SiteCheck.GAS_VALVE ? value > 0.5 ? "water" : "gas" : shown.share(value);
            default -> shown.volume(value);
        };
    }

    String value(Estimate estimate, double value) {
        if (estimate.parameter().isDifference()) {
            return "K".equals(estimate.parameter().unit())
                    ? shown.temperatureDifference(value)
                    : shown.pressureDifference(value);
        }
        return switch (estimate.parameter().unit()) {
            case "Pa" -> shown.pressure(value);
            case "K" -> shown.temperature(value);
            case "m3" -> shown.volume(value);
            case "m3/s" -> shown.flow(value);
            case "s" -> Measure.about(value).text(shown);
            default -> shown.share(value);
        };
    }
}
