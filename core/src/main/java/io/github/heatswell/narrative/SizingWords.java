package io.github.heatswell.narrative;

import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.units.QuantityFormat;

/** What a sizing found, in words and in the units of the reader. */
public final class SizingWords {

    private final SizingResult result;
    private final QuantityFormat amounts;
    private final double atmosphere;
    private final SizeAdvice advice;

    public SizingWords(SizingResult result, SizeAdvice advice, QuantityFormat amounts) {
        this.result = result;
        this.advice = advice;
        this.amounts = amounts;
        this.atmosphere = result.target().absolute() - result.target().gauge();
    }

    public double peakGauge(SizedVessel vessel) {
        return vessel.peakAbsolute() - atmosphere;
    }

    public String sentence() {
        if (result.outcome() == SizingResult.Outcome.NONE_NEEDED
                && advice.recommended().isEmpty()) {
            return "No vessel is needed: the peak stays within the target of " + target() + " without one";
        }
        return advice.recommended()
                .or(result::smallestOnSale)
                .map(vessel -> (advice.recommended().isPresent() ? "A" : "By the best estimates alone a")
                        + " vessel of " + amounts.volume(vessel.volume()) + " precharged to "
                        + precharge(vessel) + " keeps the peak at " + amounts.pressure(peakGauge(vessel)) + ", "
                        + margin(vessel))
                .orElseGet(() -> "None of the sizes is enough: it takes "
                        + amounts.volume(result.smallest().orElseThrow().volume()) + " or more");
    }

    public String facts() {
        StringBuilder words = new StringBuilder("The peak of the worst heat-up must stay below " + target() + ": "
                + bound(result.target().ruling()) + ". ");
        result.smallest()
                .ifPresent(vessel -> words.append("The smallest vessel that does it has ")
                        .append(amounts.volume(vessel.volume()))
                        .append(", precharged to ")
                        .append(precharge(vessel))
                        .append(". "));
        if (!advice.why().isEmpty()) {
            words.append(advice.why()).append(' ');
        }
        return words.append(
                        "Round marks are enough by the best estimates, hollow squares are not; each is one simulation.")
                .toString();
    }

    public String label(SizedVessel vessel) {
        return amounts.volume(vessel.volume()) + ": peak " + amounts.pressure(peakGauge(vessel)) + ", "
                + margin(vessel);
    }

    public String target() {
        return amounts.pressure(result.target().gauge());
    }

    private String margin(SizedVessel vessel) {
        return amounts.pressureDifference(vessel.margin()) + " below the target";
    }

    private String precharge(SizedVessel vessel) {
        return amounts.pressure(vessel.precharge().gauge(atmosphere));
    }

    private static String bound(SizingTarget.Bound bound) {
        return switch (bound.rule()) {
            case RELIEF_RESEAT -> "the pressure at which “" + bound.device() + "” closes again, less its margin";
            case CODE_CAP -> "the most the plumbing code allows in the building";
            case VESSEL_RATING -> "what the vessel is made for";
            case WORKING_PRESSURE -> "the working pressure of the tank";
            case OWN -> "a bound of your own";
        };
    }
}
