package io.github.heatswell.diagnosis;

/**
 * Possible faults of a system, including none. Each is one change of the described house.
 */
public enum Cause {
    /** Everything is as described. If the valve opens all the same, the design itself lacks a cushion. */
    AS_DESCRIBED("everything is as described"),
    /** The vessel's gas charge is lower than described. */
    PRECHARGE_LOW("the vessel has lost part of its precharge"),
    /** The vessel's gas charge is higher than described. */
    PRECHARGE_HIGH("the vessel is charged too high"),
    /** The vessel gives less room than described. */
    VESSEL_SMALL("the vessel takes less water than described"),
    /** The vessel is full of water. */
    VESSEL_WATERLOGGED("the vessel is full of water"),
    /** A closed valve cuts the vessel off. */
    VESSEL_ISOLATED("the vessel is behind a closed isolating valve"),
    /** There is air in the piping. */
    TRAPPED_AIR("air is trapped in the piping"),
    /** The pressure of mains or reducing valve differs from the description. */
    SUPPLY_PRESSURE("the supply pressure differs from the description"),
    /** The seat of the reducing valve lets the mains' pressure creep in. */
    REDUCING_VALVE_CREEPS("the reducing valve does not close tight, so the mains pressure creeps in"),
    /** The check valve lets water back to the mains. */
    CHECK_VALVE_PASSES("the check valve leaks water back to the mains"),
    /** A relief valve opens below its set pressure. */
    RELIEF_OPENS_LOW("the relief valve opens at a lower pressure than described"),
    /** A relief valve opens above its set pressure, or not at all as far as readings show. A hazard. */
    RELIEF_OPENS_HIGH("the relief valve opens at a higher pressure than described"),
    /** The closed seat of a relief valve leaks. */
    RELIEF_SEAT_WEEPS("the seat of the relief valve leaks"),
    /** A relief valve does not close. */
    RELIEF_STUCK_OPEN("the relief valve is stuck open a little"),
    /** The water gets hotter than described. */
    WATER_TOO_HOT("the heater heats the water hotter than described"),
    /** The mixing valve after the tank passes water hotter than it is set to. A hazard. Only a reading at a tap can show it. */
    MIXING_VALVE_PASSES("the mixing valve delivers hotter water to the taps than its setting"),
    /** A tap drips or water is lost elsewhere. */
    LEAK("water is lost at a tap or elsewhere"),
    /** The gauge shows the same whatever the pressure. Looked at only where a log does not move. */
    GAUGE_STUCK("the gauge does not move: its cock is shut, it is clogged, or it is broken");

    private final String words;

    Cause(String words) {
        this.words = words;
    }

    /**
     * The cause as a statement.
     *
     * @return a sentence without full stop, in lower case
     */
    public String words() {
        return words;
    }

    /** What a cause is a fault of; two causes of the same thing exclude each other. */
    enum Thing {
        /** An expansion vessel. */
        VESSEL,
        /** A relief valve. */
        RELIEF_VALVE,
        /** Mains or reducing valve, and what they are set to. */
        SUPPLY,
        /** The closed seat of check valve or reducing valve. */
        SUPPLY_SEAT,
        /** The thermostat. */
        THERMOSTAT,
        /** The pipes. */
        PIPES,
        /** A tap or whatever else loses water. */
        TAP,
        /** No fault of the closed system, or none beside which another could be seen. */
        NONE
    }

    /** What it is a fault of. */
    Thing thing() {
        return switch (this) {
            case PRECHARGE_LOW, PRECHARGE_HIGH, VESSEL_SMALL, VESSEL_WATERLOGGED, VESSEL_ISOLATED -> Thing.VESSEL;
            case RELIEF_OPENS_LOW, RELIEF_OPENS_HIGH, RELIEF_SEAT_WEEPS, RELIEF_STUCK_OPEN -> Thing.RELIEF_VALVE;
            case SUPPLY_PRESSURE -> Thing.SUPPLY;
            case REDUCING_VALVE_CREEPS, CHECK_VALVE_PASSES -> Thing.SUPPLY_SEAT;
            case WATER_TOO_HOT -> Thing.THERMOSTAT;
            case TRAPPED_AIR -> Thing.PIPES;
            case LEAK -> Thing.TAP;
            case AS_DESCRIBED, MIXING_VALVE_PASSES, GAUGE_STUCK -> Thing.NONE;
        };
    }

    /**
     * Whether it concerns a vessel; where there are several, one of them.
     *
     * @return true for all that keeps a vessel from taking up what it should
     */
    public boolean isOfVessel() {
        return thing() == Thing.VESSEL;
    }

    /**
     * Whether heated water has nowhere to go while this lasts. A vessel that fails altogether leaves it no room; air, a way back to the
     * mains and
     * a relief valve that stays open give the water room. A seat or a tap that loses water counts as none where the pressure rises all
     * the same: our own judgement. Of several vessels, one that fails leaves the others.
     *
     * @param shut whether it has nowhere to go in the house as described
     * @return true if it has nowhere to go
     */
    public boolean shutsIn(boolean shut) {
        return switch (this) {
            case VESSEL_WATERLOGGED, VESSEL_ISOLATED -> true;
            case TRAPPED_AIR, CHECK_VALVE_PASSES, RELIEF_STUCK_OPEN -> false;
            default -> shut;
        };
    }

    /**
     * Whether people may be hurt while this lasts.
     *
     * @return true if the cause is a hazard that comes before everything else
     */
    public boolean isHazard() {
        return this == RELIEF_OPENS_HIGH || this == WATER_TOO_HOT || this == MIXING_VALVE_PASSES;
    }
}
