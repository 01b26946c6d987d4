package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.choice.SizeCertainty;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.Share;
import io.github.heatswell.units.QuantityFormat;
import java.util.Optional;

/** The answer of a sizing in one or two sentences. */
final class SizingWords {

    private final SizingResult sizing;
    private final Optional<SizeCertainty> certainty;
    private final boolean reduced;
    private final double atmosphere;
    private final QuantityFormat shown;

    SizingWords(VesselAnswer answer, QuantityFormat shown) {
        this.sizing = answer.sizing();
        this.reduced = answer.scenario().system().supply().reducingValve().isPresent();
        this.certainty = answer.certainty();
        this.atmosphere = answer.scenario().system().site().atmosphere();
        this.shown = shown;
    }

    String answer() {
        return switch (sizing.outcome()) {
            case NONE_NEEDED ->
                (doubtful() ? "By the best estimates no" : "No")
                        + " vessel is needed: without one the peak of the worst heat-up stays within the limit of "
                        + limit() + "." + certain() + bypass();
            case SIZED -> sizing.recommended().map(this::buy).orElseGet(this::noneOnSale);
            case NO_VESSEL_CAN -> noVesselCan();
        };
    }

    private String buy(SizedVessel vessel) {
        return (doubtful() ? "By the best estimates a" : "A") + " vessel of " + shown.volume(vessel.volume())
                + ", precharged to " + precharge(vessel)
                + ", keeps the peak of the worst heat-up at " + shown.pressure(vessel.peakAbsolute() - atmosphere)
                + ", " + shown.pressureDifference(vessel.margin()) + " below the limit of " + limit() + "." + certain();
    }

    /** Behind a reducing valve whose bypass takes the expansion, the pressure asks for no vessel and a code may. */
    private String bypass() {
        return reduced
                ? " That is the bypass of the reducing valve; model codes ask for expansion control behind it all the same,"
                        + " so ask the local authority."
                : "";
    }

    /** Whether more than one in ten houses within what is uncertain goes above the limit. */
    private boolean doubtful() {
        return certainty.filter(found -> !found.tried().get(0).holds()).isPresent();
    }

    /** How sure the answer is, and what to take if it is not. */
    private String certain() {
        if (certainty.isEmpty()) {
            return "";
        }
        SizeCertainty found = certainty.get();
        Share first = found.tried().get(0).above();
        String known = found.usual()
                ? " houses that differ from this one as is usual"
                : " houses within what is known of this one";
        if (!doubtful()) {
            return " That holds in " + (first.of() - first.count()) + " of " + first.of() + known + ".";
        }
        String above =
                " But in " + first.count() + " of " + first.of() + known + " the pressure goes above that limit: ";
        return above
                + found.advised()
                        .map(larger -> "take " + shown.volume(larger.volume()) + ", which holds in "
                                + (larger.above().of() - larger.above().count()) + " of "
                                + larger.above().of() + ".")
                        .orElse(
                                "no size on the list holds in nine of ten. Find out more about the house first, above all the"
                                        + " supply pressure, or have it lowered.");
    }

    private String noneOnSale() {
        SizedVessel least = sizing.smallest().orElseThrow();
        return "It takes a vessel of at least " + shown.volume(least.volume()) + ", precharged to " + precharge(least)
                + ", to stay within the limit of " + limit()
                + "; no size on the list is large enough. A lower supply pressure makes it smaller, and two vessels"
                + " side by side act as one of their joint volume.";
    }

    private String noVesselCan() {
        String stands = "No vessel of any size can keep the peak within the limit of " + limit()
                + ": the supply stands at "
                + shown.pressure(sizing.supplyStatic().gauge(atmosphere))
                + " and leaves no room for the water to swell into. ";
        return stands
                + sizing.lowerSupplyTo()
                        .map(lower -> "Lower the supply first, by a reducing valve, to "
                                + shown.pressure(lower.gauge(atmosphere))
                                + " or less; then the largest size on the list is enough.")
                        .orElse("No lower supply pressure was found at which the largest size on the list is enough.");
    }

    private String precharge(SizedVessel vessel) {
        return shown.pressure(vessel.precharge().gauge(atmosphere));
    }

    private String limit() {
        return shown.pressure(sizing.target().gauge());
    }
}
