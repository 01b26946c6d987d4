package io.github.heatswell.system;

import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A value of a house that can be read or measured on site: its field in a file, its name in a sentence, how to find it out,
 * and, where it may be known only within limits, how a house is changed that has more or less of it.
 */
public enum NamedValue {
    /** What sits in the cold feed; a choice. */
    ARRANGEMENT(
            "supply.arrangement",
            "what sits in the cold feed",
            "Look at the cold pipe between the water meter and the heater"),
    /** The pressure of the mains, off by the same amount at all hours. */
    SUPPLY(
            "supply.pressure",
            "the supply pressure",
            "supply pressure",
            Ways.GAUGE,
            new Change(
                    "Pa",
                    (house, pascal) -> house.changeSupply(supply -> supply.toBuilder()
                            .mains(supply.mains().raisedBy(pascal, PressureUnit.PASCAL))
                            .build()))),
    /** What a reducing valve is set to. */
    REDUCED(
            "supply.reducing-valve.set",
            "the setting of the reducing valve",
            "reducing valve's set pressure",
            Ways.RUNNING,
            new Change(
                    "Pa",
                    (house, pascal) -> house.changeSupply(supply -> supply.reducingValve()
                            .map(valve -> supply.toBuilder()
                                    .reducingValve(valve.toBuilder()
                                            .set(raised(valve.set(), pascal))
                                            .build())
                                    .build())
                            .orElse(supply)))),
    /** How far a reducing valve stands above its setting without flow. */
    LOCK_UP("supply.reducing-valve.lock-up-rise", "the lock-up rise of the reducing valve", Ways.GAUGE),
    /** The pressure above the mains at which a reducing valve lets water back. */
    BYPASS(
            "supply.reducing-valve.bypass-opens",
            "the bypass of the reducing valve",
            "Find out from the marking or the manufacturer of the reducing valve whether it has a bypass, and where it opens"),
    /** The temperature of the cold water, off by the same amount on all days. */
    COLD(
            "supply.water",
            "the temperature of the cold water",
            "cold water temperature",
            "Hold a thermometer under a cold tap",
            new Change(
                    "K",
                    (house, kelvin) -> house.changeSupply(supply -> supply.toBuilder()
                            .water(supply.water().warmerBy(kelvin, TemperatureDifferenceUnit.KELVIN))
                            .build()))),
    /** The volume of the tank. */
    TANK_VOLUME(
            "tank.volume",
            "the volume of the tank",
            "tank volume",
            Ways.TANK,
            new Change(
                    "",
                    (house, share) -> house.changeTank(tank -> tank.toBuilder()
                            .volume(VolumeUnit.LITRE.fromSi(tank.volume() * (1 + share)), VolumeUnit.LITRE)
                            .build()))),
    /** By how much the tank grows with pressure; a rigid one never changes. */
    COMPLIANCE(
            "tank.compliance",
            "the compliance of the tank",
            "stretch of the tank",
            "Pump a measured volume into the closed, full tank and read a gauge",
            new Change(
                    "",
                    (house, share) -> house.changeTank(tank -> share == 0 || tank.compliance() == 0
                            ? tank
                            : tank.toBuilder()
                                    .compliance(tank.compliance() * (1 + share), ComplianceUnit.CUBIC_METRE_PER_PASCAL)
                                    .build()))),
    /** Air under the top of the tank, in parts of its volume. */
    TANK_AIR(
            "tank.air",
            "the air under the top of the tank",
            "air in the tank",
            "Run a hot tap until no air comes",
            new Change(
                    "",
                    (house, share) -> house.changeTank(tank -> share == 0
                            ? tank
                            : tank.toBuilder()
                                    .air(tank.air().orElse(0) + share * tank.volume(), VolumeUnit.CUBIC_METRE)
                                    .build()))),
    /** By how much plastic pipe grows with pressure. */
    PLASTIC_PIPE(
            "piping.loaded-for",
            "the stiffness of plastic pipe",
            "stretch of plastic pipe",
            "Ask the manufacturer of the pipe",
            new Change("", (house, share) -> house.changePiping(pipe -> pipe.softer(1 + share)))),
    /** The working pressure of the tank. */
    WORKING_PRESSURE("tank.working-pressure", "the working pressure of the tank", Ways.TANK),
    /** What the tank is made of; a choice. */
    MATERIAL("tank.material", "the material of the tank", Ways.TANK),
    /** Gas or electricity; a choice. */
    ENERGY("heater.energy", "what heats the water", "Look at the heater"),
    /** The power input of the heater. */
    HEATER_INPUT("heater.input", "the heater input", "Read the heater's plate"),
    /** The share of the heater's input that reaches the water; never above all of it. */
    RECOVERY_EFFICIENCY(
            "heater.recovery-efficiency",
            "the recovery efficiency of the heater",
            "recovery efficiency",
            "Read the heater's papers",
            new Change(
                    "",
                    (house, share) -> house.changeHeater(heater -> heater.toBuilder()
                            .recoveryEfficiency(
                                    100 * Math.min(1, heater.recoveryEfficiency() * (1 + share)), RatioUnit.PERCENT)
                            .build()))),
    /** Where the thermostat switches off; changed, where all of them do. */
    SET_POINT(
            "heater.set-point",
            "the set point of the thermostat",
            "set point",
            Ways.HOT,
            new Change(
                    "K",
                    (house, kelvin) -> house.changeHeater(heater -> heater.withElements(element -> element.toBuilder()
                            .setPoint(element.setPoint() + kelvin, TemperatureUnit.KELVIN)
                            .build())))),
    /** Where the upper thermostat switches off. */
    UPPER_SET_POINT("heater.upper.set-point", "the set point of the upper thermostat", Ways.HOT),
    /** Where the cut-out switches everything off. */
    CUT_OUT("heater.cut-out", "the temperature of the cut-out", "Read the heater's papers"),
    /** What the mixing valve after the tank delivers. */
    MIXED_TO("heater.mixed-to", "the setting of the mixing valve", Ways.HOT),
    /** The set pressure of a relief valve; changed, of all of them, with their full-lift and reseat pressures. */
    SET_PRESSURE(
            "relief.opens",
            "the set pressure of a relief valve",
            "relief set pressure",
            Ways.RELIEF,
            new Change(
                    "",
                    (house, share) -> house.changeReliefValves(valve -> valve.scaled(1 + share, house.atmosphere())))),
    /** Where a relief valve closes again. */
    RESEAT_PRESSURE("relief.reseats", "the reseat pressure of a relief valve", "Watch a gauge as the valve closes"),
    /** The temperature at which a relief valve opens, which says whether it is a T&amp;P; also a choice. */
    SET_TEMPERATURE("relief.opens-at", "the set temperature of a relief valve", Ways.RELIEF),
    /** The heater input a relief valve is made for. */
    RATED_INPUT("relief.rated-input", "the rated input of a relief valve", Ways.RELIEF),
    /** Whether there is a vessel; a choice. */
    VESSEL("vessel", "the expansion vessel", "Look for a vessel on the cold pipe of the heater"),
    /** The volume of the vessel. */
    VESSEL_VOLUME("vessel.volume", "the volume of the vessel", "vessel volume", Ways.VESSEL, null),
    /** The precharge of the vessel. */
    PRECHARGE(
            "vessel.precharge",
            "the precharge of the vessel",
            "vessel's precharge",
            "Measure it with the vessel drained",
            new Change(
                    "Pa",
                    (house, pascal) -> house.changeVesselIfAny(vessel -> vessel.toBuilder()
                            .precharge(raised(vessel.precharge(), pascal))
                            .build()))),
    /** The share of the vessel that water can fill. */
    ACCEPTANCE("vessel.acceptance", "the share of the vessel that water can fill", Ways.VESSEL),
    /** The rating of the vessel. */
    VESSEL_RATING("vessel.rating", "the rating of the vessel", Ways.VESSEL);

    /** How several values are found out. */
    private static final class Ways {
        private static final String GAUGE = "Read a gauge on a cold tap with no water running";
        private static final String RUNNING =
                "Read a gauge on a cold tap downstream of the valve while a little water runs";
        private static final String TANK = "Read the tank's plate";
        private static final String RELIEF = "Read the relief valve's plate";
        private static final String VESSEL = "Read the vessel's plate";
        private static final String HOT = "Measure the water at the nearest hot tap; it may scald";
    }

    /** How a house comes to have more or less of a value. */
    private record Change(String unit, Raise raise) {}

    /** Gives a house more of a value. */
    @FunctionalInterface
    private interface Raise {
        void by(HotWaterSystem.Builder house, double amount);
    }

    /** The place in a list. */
    private static final Pattern PLACE = Pattern.compile("\\[\\d*]");

    private static final String FURTHER = "vessels.";

    private final String field;
    private final String words;
    private final String label;
    private final String check;
    private final Optional<Change> change;

    NamedValue(String field, String words, String check) {
        this(field, words, words.replaceFirst("^the ", ""), check, null);
    }

    NamedValue(String field, String words, String label, String check, Change change) {
        this.field = field;
        this.words = words;
        this.label = label;
        this.check = check;
        this.change = Optional.ofNullable(change);
    }

    /**
     * What a field of a file is.
     *
     * @param field the field, such as {@code relief[0].opens}
     * @return the value; empty if it is none of these
     */
    public static Optional<NamedValue> of(String field) {
        String bare = field.indexOf('[') < 0 ? field : PLACE.matcher(field).replaceAll("");
        // further vessels have the keys of the first
        String plain = bare.startsWith(FURTHER) ? "vessel." + bare.substring(FURTHER.length()) : bare;
        return Arrays.stream(values())
                .filter(value -> plain.equals(value.field)
                        || value == SUPPLY && plain.equals("supply.pressure.pressure")
                        || value == COLD && plain.startsWith("supply.water."))
                .findFirst();
    }

    /**
     * Its field in a file.
     *
     * @return such as {@code relief.opens}, without a place in a list
     */
    public String field() {
        return field;
    }

    /**
     * Its key in a section of a file.
     *
     * @return the last part of its field, such as {@code opens}
     */
    public String key() {
        return field.substring(field.lastIndexOf('.') + 1);
    }

    /**
     * Its name in a sentence.
     *
     * @return such as {@code the set pressure of a relief valve}
     */
    public String words() {
        return words;
    }

    /**
     * Its name in a table or a picture.
     *
     * @return such as {@code relief set pressure}
     */
    public String label() {
        return label;
    }

    /**
     * How to find it out.
     *
     * @return a sentence without its full stop
     */
    public String check() {
        return check;
    }

    /**
     * Whether it is a choice: a house is described one way or the other, though nobody may have looked.
     *
     * @return true for a choice; false for a value that is only a number
     */
    public boolean isChoice() {
        return this == ARRANGEMENT || this == MATERIAL || this == ENERGY || this == SET_TEMPERATURE || this == VESSEL;
    }

    /**
     * Whether it is one of the two pressures by whose plates a relief valve is judged to suit the tank.
     *
     * @return true for the set pressure of a relief valve and the working pressure of the tank
     */
    public boolean isPressureOnPlate() {
        return this == SET_PRESSURE || this == WORKING_PRESSURE;
    }

    /**
     * The unit in which {@link #raise} takes it.
     *
     * @return Pa or K, or nothing for a share of what the house has
     * @throws IllegalArgumentException if a house cannot have more or less of it
     */
    public String raisedIn() {
        return change().unit();
    }

    /**
     * Gives a house more of it.
     *
     * @param house the house, complete; unchanged where it has nothing of the kind
     * @param amount how much more, in the unit of {@link #raisedIn}; below 0 for less
     * @throws IllegalArgumentException if a house cannot have more or less of it, or if the value leaves its range
     */
    public void raise(HotWaterSystem.Builder house, double amount) {
        change().raise().by(house, amount);
    }

    private Change change() {
        return change.orElseThrow(() -> new IllegalArgumentException(field + ": cannot be more or less"));
    }

    private static Pressure raised(Pressure pressure, double pascal) {
        return new Pressure(pressure.value() + pascal, pressure.reference());
    }
}
