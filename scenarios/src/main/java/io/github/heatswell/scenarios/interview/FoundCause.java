package io.github.heatswell.scenarios.interview;

import io.github.heatswell.diagnosis.Cause;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What readings were found to say, and what follows for the rest of the job. The remedies are common practice, no source.
 *
 * @param cause the cause on which the diagnosis decided; empty if it left that open
 * @param shut whether, the cause being open, heated water has nowhere to go in any that is left
 * @param ofVessel whether, the cause being open, nearly all that is left says that the vessel does not work
 */
record FoundCause(Optional<Cause> cause, boolean shut, boolean ofVessel) {

    private static final String OPEN = "open";
    private static final String SHUT = "shut-in";
    private static final String OF_VESSEL = "of-vessel";

    FoundCause {
        Objects.requireNonNull(cause, "cause");
    }

    /** What was remembered under a word; empty if nothing was. */
    static Optional<FoundCause> of(String word) {
        return Optional.ofNullable(word)
                .map(kept -> new FoundCause(
                        Arrays.stream(Cause.values())
                                .filter(one -> word(one).equals(kept))
                                .findFirst(),
                        kept.equals(SHUT),
                        kept.equals(OF_VESSEL)));
    }

    /** The word under which it is remembered. */
    String word() {
        return cause.map(FoundCause::word).orElse(ofVessel ? OF_VESSEL : shut ? SHUT : OPEN);
    }

    private static String word(Cause cause) {
        return cause.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What to do about it, and whether a vessel has a part in that. */
    String first(boolean closed) {
        String remedy = remedy();
        if (!isMended()) {
            return remedy;
        }
        return remedy
                + (closed
                        ? " No vessel fixes that. But water cannot flow back to the mains here, so the heated water needs room all"
                                + " the same: the next step says how much."
                        : " This house is open to the mains, so it needs no vessel. Once that is fixed, the job is done.");
    }

    private String remedy() {
        if (ofVessel) {
            return "The vessel you have does not work as it should. Press the pin of its air valve first: if air comes, have its charge"
                    + " put right, and take the readings again. If not, the next step says which vessel to put in its place.";
        }
        if (cause.isEmpty()) {
            return shut
                    ? "The readings do not settle the cause. But whichever it is, the heated water has nowhere to go. The next step"
                            + " says which vessel the house needs."
                    : "The readings leave the cause open. From here the guide uses the description of the house. A vessel helps only"
                            + " if the cause is expansion.";
        }
        return switch (cause.get()) {
            case AS_DESCRIBED ->
                "The readings agree with the description of the house. The next step says which vessel it needs.";
            case PRECHARGE_LOW, PRECHARGE_HIGH ->
                "Correct the charge of the vessel before you buy anything. The next step says what the charge should be, and"
                        + " whether the vessel is then large enough.";
            case VESSEL_SMALL -> "The vessel takes too little water. The next step says how large it must be.";
            case VESSEL_WATERLOGGED ->
                "A vessel full of water has to be replaced. The next step says what size to get.";
            case VESSEL_ISOLATED ->
                "Have the vessel's valve opened first, with the heater off and cool. Then take readings again: the vessel may be"
                        + " all that was missing.";
            case SUPPLY_PRESSURE ->
                "The supply comes first: a vessel sized for the wrong pressure is the wrong vessel. Read a gauge cold, with no"
                        + " water running. If it shows more than the local limit, a reducing valve comes before any vessel. Then"
                        + " correct the file: supply.pressure, or the setting of the reducing valve.";
            case REDUCING_VALVE_CREEPS -> "Have the reducing valve cleaned or replaced: it does not close tight.";
            case CHECK_VALVE_PASSES ->
                "The check valve leaks water back to the mains. Once it closes tight again, the pressure will rise higher. The next"
                        + " step says which vessel the house then needs.";
            case RELIEF_OPENS_LOW, RELIEF_SEAT_WEEPS, RELIEF_STUCK_OPEN ->
                "The relief valve is worn. Have it replaced with one set no higher than the tank's plate allows, with a capacity of"
                        + " at least the heater's input. Never plug or cap it.";
            case RELIEF_OPENS_HIGH ->
                "The relief valve opens too late. Turn the heater off and have the valve replaced before anything else.";
            case WATER_TOO_HOT -> "The water gets too hot. Turn the heater off and have its thermostat repaired first.";
            case MIXING_VALVE_PASSES ->
                "The taps get too hot: have the mixing valve repaired first. Until then the water scalds.";
            case TRAPPED_AIR ->
                "Bleed the air from the piping: run the taps until no more comes. Air cushions the pressure only until it dissolves.";
            case GAUGE_STUCK ->
                "The gauge does not move. Open its cock, or screw another gauge onto a hose tap, and take the readings again.";
            case LEAK -> "Find the tap or joint that loses water and have it repaired.";
        };
    }

    /** Whether it is mended without a vessel. */
    boolean isMended() {
        return cause.filter(one -> switch (one) {
                    case RELIEF_OPENS_LOW,
                            RELIEF_SEAT_WEEPS,
                            RELIEF_STUCK_OPEN,
                            REDUCING_VALVE_CREEPS,
                            TRAPPED_AIR,
                            LEAK -> true;
                    default -> false;
                })
                .isPresent();
    }

    /** Whether it has to be put right before a vessel can be sized. */
    boolean holds() {
        return cause.filter(one -> switch (one) {
                    case SUPPLY_PRESSURE,
                            VESSEL_ISOLATED,
                            RELIEF_OPENS_HIGH,
                            WATER_TOO_HOT,
                            MIXING_VALVE_PASSES,
                            GAUGE_STUCK -> true;
                    default -> false;
                })
                .isPresent();
    }

    /** What a sizing is to take for granted of the house: that what the readings speak against does not work. */
    List<String> changes() {
        return ofVessel || cause.filter(Cause.VESSEL_WATERLOGGED::equals).isPresent()
                ? List.of("--set", "vessel.condition=waterlogged")
                : List.of();
    }

    /** What is still to be done about it once there is a vessel; empty if the vessel was all. */
    Optional<String> left() {
        if (cause.isEmpty()) {
            return Optional.of(
                    (shut || ofVessel ? "The readings did not settle the cause." : "The readings left the cause open.")
                            + " If the relief valve still drips with the vessel, take readings again.");
        }
        return isMended()
                ? cause.map(one -> "Also fix what the readings found: " + one.words() + ". " + remedy())
                : Optional.empty();
    }
}
