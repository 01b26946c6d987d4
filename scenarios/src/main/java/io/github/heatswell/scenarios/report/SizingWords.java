package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.choice.SizeCertainty;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.Share;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.QuantityFormat;
import java.util.Optional;

/** The answer of a sizing in one or two sentences. */
final class SizingWords {

    private final VesselAnswer answer;
    private final SizingResult sizing;
    private final Optional<SizeCertainty> certainty;
    private final boolean reduced;
    private final double atmosphere;
    private final QuantityFormat shown;

    SizingWords(VesselAnswer answer, QuantityFormat shown) {
        this.answer = answer;
        this.sizing = answer.sizing();
        this.reduced = answer.scenario().system().supply().reducingValve().isPresent();
        this.certainty = answer.certainty();
        this.atmosphere = answer.scenario().system().site().atmosphere();
        this.shown = shown;
    }

    /** The answer; a valve that cannot close comes first, since no vessel cures it. */
    String answer() {
        String stuck = answer.stuckOpen()
                .map(valve ->
                        "No vessel cures this: '" + valve.name() + "' is stuck open and runs whatever the pressure."
                                + " Have it replaced first"
                                + (isLargeEnough()
                                        ? "; the " + presentVolume()
                                                + " vessel of this house is large enough, so none is to be bought. After that: "
                                        : "; what follows holds after that. "))
                .orElse("");
        return stuck + (stuck.isEmpty() ? present() : "") + size();
    }

    /** Whether the vessel that is there will do, before any other is named; nothing of one that does not work. */
    private String present() {
        return answer.scenario()
                .system()
                .vessel()
                .filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                .filter(vessel -> sizing.outcome() == SizingResult.Outcome.SIZED)
                .map(vessel -> {
                    boolean enough = sizing.smallest()
                            .filter(least -> least.volume() <= vessel.volume())
                            .isPresent();
                    boolean asked = VesselVerdict.isAsked(answer.scenario());
                    String said = (asked ? enough ? "Yes: the " : "No: the " : "The ") + presentVolume()
                            + " vessel of this house is ";
                    return enough
                            ? said + (isLargeEnough() ? "large enough" : "just large enough by the best estimates")
                                    + ", once its precharge is right. "
                            : said + "too small. ";
                })
                .orElse("");
    }

    /** Whether the house has a sound vessel no smaller than what it takes. */
    private boolean isLargeEnough() {
        return answer.scenario()
                .system()
                .vessel()
                .filter(present -> present.condition() == ExpansionVessel.Condition.SOUND)
                .filter(present -> answer.recommended()
                        .filter(wanted -> wanted.volume() <= present.volume() * (1 + 1e-9))
                        .isPresent())
                .isPresent();
    }

    private String presentVolume() {
        return shown.volume(answer.scenario().system().vessel().orElseThrow().volume());
    }

    private String size() {
        return switch (sizing.outcome()) {
            case NONE_NEEDED ->
                (doubtful() ? "By the best estimates no" : "No")
                        + " vessel is needed: without one the peak of the worst heat-up stays within the limit of "
                        + limit() + "." + (doubtful() ? " But " + fails() + " " + instead() : holds()) + bypass();
            case SIZED ->
                answer.recommended()
                        .map(this::take)
                        .or(() -> sizing.smallestOnSale().map(this::bareAlone))
                        .orElseGet(this::noneOnSale);
            case NO_VESSEL_CAN -> noVesselCan();
        };
    }

    /** Why the size to take is the one, and what speaks against the smallest; empty where nothing is uncertain. */
    String why() {
        if (certainty.isEmpty()) {
            return "";
        }
        return doubtful()
                ? "By the best estimates " + bareName() + " is enough; but " + fails()
                        + certainty
                                .flatMap(SizeCertainty::advised)
                                .map(advised -> " " + shown.volume(advised.volume()) + held(advised) + ".")
                                .orElse(" No size on the list holds in nine of ten.")
                : holds().strip();
    }

    private String take(SizedVessel vessel) {
        String said = "A vessel of " + shown.volume(vessel.volume()) + ", precharged to " + precharge(vessel)
                + ", keeps the peak of the worst heat-up at " + shown.pressure(vessel.peakAbsolute() - atmosphere)
                + ", " + room(vessel);
        if (!doubtful()) {
            return said + holds();
        }
        String smallest = sizing.smallestOnSale()
                .map(bare -> " The smallest that is enough by the best estimates, " + shown.volume(bare.volume())
                        + ", stays only " + shown.pressureDifference(bare.margin()) + " below it: ")
                .orElse("");
        return said + holds() + smallest + "in " + counted("the") + " the pressure goes above the limit.";
    }

    private String bareAlone(SizedVessel vessel) {
        return "By the best estimates a vessel of " + shown.volume(vessel.volume()) + ", precharged to "
                + precharge(vessel) + ", keeps the peak of the worst heat-up at "
                + shown.pressure(vessel.peakAbsolute() - atmosphere) + ", " + room(vessel) + " But " + fails() + " "
                + instead();
    }

    private String room(SizedVessel vessel) {
        return shown.pressureDifference(vessel.margin()) + " below the limit of " + limit() + ".";
    }

    /** In how many houses the limit is kept with what is recommended. */
    private String holds() {
        return certainty
                .flatMap(SizeCertainty::advised)
                .map(advised -> " That" + held(advised) + houses() + ".")
                .orElse("");
    }

    private static String held(SizeCertainty.Tried tried) {
        return " holds in " + (tried.above().of() - tried.above().count()) + " of "
                + tried.above().of();
    }

    /** In how many houses it is not kept with what the best estimates call for. */
    private String fails() {
        return certainty
                .map(found -> "in " + counted("") + houses() + " the pressure goes above that limit.")
                .orElse("");
    }

    private String counted(String article) {
        Share above = certainty.orElseThrow().bare().above();
        return above.count() + " of " + (article.isEmpty() ? "" : article + " ") + above.of();
    }

    private String houses() {
        return certainty.filter(SizeCertainty::usual).isPresent()
                ? " houses that differ from this one as is usual"
                : " houses within what is known of this one";
    }

    private String bareName() {
        return sizing.smallestOnSale().map(bare -> shown.volume(bare.volume())).orElse("no vessel");
    }

    /** What to do where the best estimates are not to be trusted. */
    private String instead() {
        return answer.recommended()
                .map(vessel ->
                        "A vessel of " + shown.volume(vessel.volume()) + ", precharged to " + precharge(vessel) + ","
                                + certainty
                                        .flatMap(SizeCertainty::advised)
                                        .map(SizingWords::held)
                                        .orElse("")
                                + ".")
                .orElse(
                        "No size on the list holds in nine of ten. Find out more about the house first, above all the supply"
                                + " pressure, or have it lowered.");
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
        return certainty.filter(found -> !found.bare().holds()).isPresent();
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
