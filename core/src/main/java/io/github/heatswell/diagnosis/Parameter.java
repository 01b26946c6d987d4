package io.github.heatswell.diagnosis;

import java.util.function.ObjDoubleConsumer;

/**
 * A number of the house that a diagnosis may change to match the readings. Values are in SI units.
 */
public enum Parameter {
    /** Static supply pressure at the start of the run (Pa, gauge). */
    SUPPLY_PRESSURE(
            "static pressure of the supply", "Pa", Scale.EVEN, SiteCheck.COLD_STATIC, SuspectHouse::supplyPressure),
    /** The heat that reaches the water, against that of the description (-). */
    HEATING_RATE("heating rate relative to the description", "", Scale.RATIO, null, SuspectHouse::heatingRate),
    /** The water when the heater came on, if that was before the log (K). */
    START_TEMPERATURE(
            "water temperature at the start of the heat-up", "K", Scale.EVEN, null, SuspectHouse::startTemperature),
    /** When the heater came on, in the time of the log (s). */
    START_OF_HEATING("start of the heat-up", "s", Scale.EVEN, null, (house, value) -> {}),
    /** The temperature at which the thermostat switches off (K). */
    SET_POINT("temperature the water is heated to", "K", Scale.EVEN, SiteCheck.HOT_TAP, SuspectHouse::setPoint),
    /** The volume of the tank against that of the description (-). */
    TANK_VOLUME("volume of the tank relative to the description", "", Scale.RATIO, null, SuspectHouse::tankVolume),
    /** How far tank and pipes together give way to pressure, against the description (-). */
    COMPLIANCE(
            "stretch of tank and pipes relative to the description", "", Scale.RATIO, null, SuspectHouse::compliance),
    /** The standing loss of the tank against that of the description (-). */
    STANDING_LOSS(
            "standing loss of the tank relative to the description", "", Scale.RATIO, null, SuspectHouse::standingLoss),
    /** The gas pressure of the vessel with its water side empty (Pa, gauge). */
    PRECHARGE("precharge of the vessel", "Pa", Scale.RATIO, SiteCheck.TYRE_GAUGE, SuspectHouse::precharge),
    /** The largest share of the vessel that water can fill (-). */
    ACCEPTANCE("share of the vessel that water can fill", "", Scale.EVEN, null, SuspectHouse::acceptance),
    /** The room of the vessel, gas and water together, that takes part (m3). */
    VESSEL_VOLUME(
            "effective volume of the vessel", "m3", Scale.RATIO, SiteCheck.TYRE_GAUGE, SuspectHouse::vesselVolume),
    /** Air in the piping, at the pressure the run starts from (m3). */
    TRAPPED_AIR("air in the piping", "m3", Scale.RATIO, SiteCheck.COLD_STATIC, SuspectHouse::trappedAir),
    /** Leakage of the closed check valve or reducing valve at a pressure difference of 1 bar (m3/s). */
    SEAT_LEAKAGE(
            "flow through the closed seat at one bar",
            "m3/s",
            Scale.RATIO,
            SiteCheck.NEXT_MORNING,
            SuspectHouse::seatLeakage),
    /** The pressure at which a relief valve opens (Pa, gauge). */
    OPENING_PRESSURE(
            "set pressure of the relief valve",
            "Pa",
            Scale.RATIO,
            SiteCheck.HEAT_UP_MAXIMUM,
            SuspectHouse::openingPressure),
    /** The reseat pressure of a relief valve as a share of its opening pressure, both gauge (-). */
    RESEAT_SHARE(
            "reseat pressure relative to the set pressure",
            "",
            Scale.EVEN,
            SiteCheck.CAUGHT_VOLUME,
            SuspectHouse::reseatShare),
    /** Seat leakage of a relief valve at its set pressure (m3/s). */
    SEAT_WEEP(
            "flow through the closed seat of the relief valve",
            "m3/s",
            Scale.RATIO,
            SiteCheck.CAUGHT_VOLUME,
            SuspectHouse::seatWeep),
    /** The set pressure of the relief valves against that of their plates, where no cause says more of it (-). */
    SET_PRESSURE_SHARE(
            "set pressure of the relief valve relative to its plate",
            "",
            Scale.EVEN,
            SiteCheck.HEAT_UP_MAXIMUM,
            SuspectHouse::setPressureShare),
    /** What the gauge shows where there is no pressure (Pa, difference). */
    GAUGE_ZERO("zero error of the gauge", "Pa", Scale.EVEN, null, (house, value) -> {}),
    /** What the gauge shows of a pressure, its zero error apart (-). */
    GAUGE_SCALE("reading of the gauge relative to the pressure", "", Scale.EVEN, null, (house, value) -> {}),
    /** How much more than the water the thermometer of a log shows (K, difference). */
    THERMOMETER_ERROR("error of the thermometer", "K", Scale.EVEN, null, (house, value) -> {}),
    /** Pressure above which the seat of a relief valve leaks (Pa, gauge). */
    WEEPS_FROM(
            "pressure above which the seat of the relief valve leaks",
            "Pa",
            Scale.EVEN,
            SiteCheck.NEXT_MORNING,
            SuspectHouse::weepsFrom),
    /** The lift at which a relief valve is stuck (-). */
    STUCK_LIFT(
            "lift at which the relief valve is stuck",
            "",
            Scale.RATIO,
            SiteCheck.CAUGHT_VOLUME,
            SuspectHouse::stuckLift),
    /** What the first draw took that the log notes or shows (m3). */
    DRAWN_FIRST("water drawn where the log first shows it", "m3", Scale.EVEN, null, (house, value) -> {}),
    /** What the second such draw took (m3). */
    DRAWN_SECOND(
            "water drawn where the log shows it for the second time", "m3", Scale.EVEN, null, (house, value) -> {}),
    /** What the third such draw took (m3). */
    DRAWN_THIRD("water drawn where the log shows it for the third time", "m3", Scale.EVEN, null, (house, value) -> {}),
    /** What is lost by a leak at the static pressure of the supply (m3/s). */
    LEAK("flow that is lost", "m3/s", Scale.RATIO, SiteCheck.METER_AT_REST, SuspectHouse::leak);

    /** Scale on which differences of a number are measured. */
    enum Scale {
        /** Linear: equal differences count equally. */
        EVEN,
        /** Logarithmic: equal ratios count equally. */
        RATIO
    }

    private final String words;
    private final String unit;
    private final Scale scale;
    private final SiteCheck settledBy;
    private final ObjDoubleConsumer<SuspectHouse> setter;

    Parameter(String words, String unit, Scale scale, SiteCheck settledBy, ObjDoubleConsumer<SuspectHouse> setter) {
        this.words = words;
        this.unit = unit;
        this.scale = scale;
        this.settledBy = settledBy;
        this.setter = setter;
    }

    /**
     * The number in words.
     *
     * @return a description without article or unit
     */
    public String words() {
        return words;
    }

    /**
     * The SI unit of the values; pressures are gauge.
     *
     * @return the unit, empty for a bare number
     */
    public String unit() {
        return unit;
    }

    /** The reading on site that would fix the number, or null if there is no simple one. */
    SiteCheck settledBy() {
        return settledBy;
    }

    /**
     * Whether the number is one of the house: when the heater came on and how the instruments err are none, and other values of these
     * need no other run.
     */
    boolean isOfHouse() {
        return this != START_OF_HEATING && !isOfInstrument();
    }

    /** Whether the number is how gauge or thermometer err. */
    boolean isOfInstrument() {
        return this == GAUGE_ZERO || this == GAUGE_SCALE || this == THERMOMETER_ERROR;
    }

    /**
     * Whether the values are differences, so that one in K is no temperature and one in Pa no reading of a gauge.
     *
     * @return true for the errors that gauge and thermometer make everywhere
     */
    public boolean isDifference() {
        return this == GAUGE_ZERO || this == THERMOMETER_ERROR;
    }

    /**
     * Whether the number is how much water was drawn at a time that the log notes or shows.
     *
     * @return true for the volumes of draws
     */
    public boolean isDrawn() {
        return this == DRAWN_FIRST || this == DRAWN_SECOND || this == DRAWN_THIRD;
    }

    /** Puts the number of a house to a value; it changes nothing if it is none {@linkplain #isOfHouse() of the house}. */
    void set(SuspectHouse house, double value) {
        setter.accept(house, value);
    }

    /** The value on the scale on which differences count the same everywhere. */
    double toScale(double value) {
        return scale == Scale.RATIO ? Math.log(value) : value;
    }

    /** The value from that scale. */
    double fromScale(double position) {
        return scale == Scale.RATIO ? Math.exp(position) : position;
    }
}
