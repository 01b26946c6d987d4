package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Expansion as the answer to readings that show no fault of a part: in words, with what to do. Immutable. */
final class OrdinaryExpansion {

    /** The findings that say why heated water has nowhere to go, of a house without any vessel and of one with. */
    private static final Set<String> NO_VESSEL = Set.of("expansion-control-missing", "bypass-opens-too-late");

    private static final Set<String> IDLE_VESSEL =
            Set.of("vessel-isolated", "vessel-upstream-of-check", "vessel-waterlogged");

    /** The findings that the supply leaves the expansion too little room below a relief valve. */
    private static final Set<String> HIGH_SUPPLY = Set.of("supply-near-relief-set", "supply-opens-relief-valve");

    private final HotWaterSystem house;
    private final Set<SiteCheck> read;
    private final boolean heated;
    private final Set<String> found;

    OrdinaryExpansion(HotWaterSystem house, Doubts doubts, Optional<PressureLog> log, Set<SiteCheck> read) {
        this.house = house;
        this.read = read;
        this.heated = log.filter(PressureLog::showsHeatUp).isPresent()
                || read.contains(SiteCheck.HEAT_UP_MAXIMUM)
                || read.contains(SiteCheck.PEAK_AFTER_DRAW)
                || read.contains(SiteCheck.CAUGHT_VOLUME);
        this.found = Findings.of(house, doubts).stream().map(Finding::id).collect(Collectors.toUnmodifiableSet());
    }

    /** Whether the readings show a heat-up. */
    boolean isHeated() {
        return heated;
    }

    /** Whether it explains what a house as described does when heated. */
    boolean isAnswer() {
        return !reason().isEmpty();
    }

    /** Why the valve drips where nothing is wrong but that no vessel takes up the water, and what to do; nothing where that is not so. */
    String answer() {
        String reason = reason();
        return reason.isEmpty() ? "" : reason + cure() + " ";
    }

    /** Why the valve drips, without what to do and without a full stop. */
    String reason() {
        if (heated && isFound(NO_VESSEL)) {
            return "Ordinary expansion: the heated water has nowhere to go";
        }
        if (heated && isFound(IDLE_VESSEL)) {
            return "Ordinary expansion: the heated water has "
                    + (house.vessels().stream().allMatch(one -> one.condition() != ExpansionVessel.Condition.SOUND)
                            ? "nowhere to go"
                            : "too little room");
        }
        return heated && isFound(Set.of("expansion-valve-provided"))
                ? "Ordinary expansion, which the valve on the cold inlet is there to discharge"
                : "";
    }

    /** What follows the words on expansion: what to do. */
    private String cure() {
        if (isFound(NO_VESSEL)) {
            return isUndescribed()
                    ? " in the house as described."
                    : isFound(HIGH_SUPPLY)
                            ? ". First have the supply pressure lowered, then fit an expansion vessel."
                            : ". Fit an expansion vessel.";
        }
        return isFound(IDLE_VESSEL)
                ? ", because " + String.join(", and ", VesselVerdict.outOfServiceNamed(house))
                        + (isShutOff()
                                ? ". With the heater off and the water cool, open that valve and secure it."
                                : ". Have that fixed.")
                : ". An expansion vessel would end that.";
    }

    private boolean isFound(Set<String> ids) {
        return found.stream().anyMatch(ids::contains);
    }

    /** Whether a vessel was read where none is described: then nobody is told to fit one. */
    boolean isUndescribed() {
        return house.vessels().isEmpty() && read.stream().anyMatch(SiteCheck::isOfVessel);
    }

    /** Whether a closed valve is all that keeps the only vessel from working. */
    boolean isShutOff() {
        return house.vessels().size() == 1 && house.vessels().get(0).condition() == ExpansionVessel.Condition.ISOLATED;
    }
}
