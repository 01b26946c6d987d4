package io.github.heatswell.assessment;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The values of a description on which findings rest and which somebody could read or measure. */
enum Input {
    ARRANGEMENT(
            "supply.arrangement",
            "what sits in the cold feed",
            "Look at the cold pipe between the water meter and the heater"),
    SUPPLY("supply.pressure", "the supply pressure", Ways.GAUGE),
    REDUCED("supply.reducing-valve.set", "the setting of the reducing valve", Ways.GAUGE),
    LOCK_UP("supply.reducing-valve.lock-up-rise", "the lock-up rise of the reducing valve", Ways.GAUGE),
    BYPASS(
            "supply.reducing-valve.bypass-opens",
            "the bypass pressure of the reducing valve",
            "Ask the maker of the valve"),
    COLD("supply.water", "the temperature of the cold water", "Hold a thermometer under a cold tap"),
    TANK_VOLUME("tank.volume", "the volume of the tank", Ways.TANK),
    WORKING_PRESSURE("tank.working-pressure", "the working pressure of the tank", Ways.TANK),
    MATERIAL("tank.material", "the material of the tank", Ways.TANK),
    ENERGY("heater.energy", "what heats the water", "Look at the heater"),
    HEATER_INPUT("heater.input", "the input of the heater", "Read the heater's plate"),
    SET_POINT("heater.set-point", "the set point of the thermostat", Ways.HOT),
    UPPER_SET_POINT("heater.upper.set-point", "the set point of the upper thermostat", Ways.HOT),
    CUT_OUT("heater.cut-out", "the temperature of the cut-out", "Read the heater's papers"),
    MIXED_TO("heater.mixed-to", "the setting of the mixing valve", Ways.HOT),
    SET_PRESSURE("relief.opens", "the set pressure of a relief valve", Ways.RELIEF),
    RESEAT_PRESSURE("relief.reseats", "the reseat pressure of a relief valve", "Watch a gauge as the valve closes"),
    SET_TEMPERATURE("relief.opens-at", "the set temperature of a relief valve", Ways.RELIEF),
    RATED_INPUT("relief.rated-input", "the rated input of a relief valve", Ways.RELIEF),
    VESSEL("vessel", "the expansion vessel", "Look for a vessel on the cold pipe of the heater"),
    VESSEL_VOLUME("vessel.volume", "the volume of the vessel", Ways.VESSEL),
    PRECHARGE(Findings.PRECHARGE, "the precharge of the vessel", "Measure it with the vessel drained"),
    ACCEPTANCE("vessel.acceptance", "the share of the vessel that water can fill", Ways.VESSEL),
    VESSEL_RATING("vessel.rating", "the rating of the vessel", Ways.VESSEL);

    /** How several values are found out. */
    private static final class Ways {
        private static final String GAUGE = "Read a gauge on a cold tap with no water running";
        private static final String TANK = "Read the tank's plate";
        private static final String RELIEF = "Read the relief valve's plate";
        private static final String VESSEL = "Read the vessel's plate";
        private static final String HOT = "Measure the water at the nearest hot tap; it may scald";
    }

    private final String field;
    final String words;
    final String check;

    Input(String field, String words, String check) {
        this.field = field;
        this.words = words;
        this.check = check;
    }

    /** What a field of a description is, if it is one of these. */
    static Optional<Input> of(String field) {
        String plain = field.replaceAll("\\[\\d*]", "");
        return Arrays.stream(values())
                .filter(input -> plain.equals(input.field)
                        || input == SUPPLY && plain.equals("supply.pressure.pressure")
                        || input == COLD && plain.startsWith("supply.water."))
                .findFirst();
    }

    /** What decides how high the supply stands. */
    static final Set<Input> STATIC = with(EnumSet.of(ARRANGEMENT, SUPPLY, REDUCED), LOCK_UP);

    /** What decides how far a heat-up drives the pressure of a house without a vessel. */
    static final Set<Input> HEAT_UP =
            with(STATIC, VESSEL, COLD, TANK_VOLUME, MATERIAL, SET_POINT, UPPER_SET_POINT, SET_PRESSURE);

    /** The same with a vessel. */
    static final Set<Input> CUSHIONED = with(HEAT_UP, VESSEL_VOLUME, PRECHARGE, ACCEPTANCE);

    /** What decides how hot the water gets, and what a run comes to with it. */
    static final Set<Input> HEAT =
            with(HEAT_UP, ENERGY, HEATER_INPUT, SET_TEMPERATURE, CUT_OUT, VESSEL_VOLUME, PRECHARGE);

    /** What can turn the answer whether a relief valve opens, and how high the pressure climbs. */
    static final Set<Input> DECIDING = with(
            EnumSet.of(ARRANGEMENT),
            SUPPLY,
            REDUCED,
            COLD,
            TANK_VOLUME,
            SET_POINT,
            UPPER_SET_POINT,
            SET_PRESSURE,
            SET_TEMPERATURE,
            VESSEL,
            VESSEL_VOLUME,
            PRECHARGE);

    private static Set<Input> with(Set<Input> some, Input... more) {
        Set<Input> all = EnumSet.copyOf(some);
        all.addAll(List.of(more));
        return Collections.unmodifiableSet(all);
    }

    /** Another house, not another number: whatever a run shows, it stays open with these. */
    boolean decides() {
        return this == ARRANGEMENT || this == VESSEL;
    }
}
