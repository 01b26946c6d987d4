package io.github.heatswell.diagnosis;

/**
 * A reading that can be taken on site with simple means. All but the last two need nothing that is not found in a
 * household; none needs more than a gauge, a measuring jug and a watch.
 */
public enum SiteCheck {
    /** What the gauge shows right after water was drawn, with the heater off (Pa, gauge). */
    COLD_STATIC("the gauge right after cold water was drawn, with the heater off", "Pa", 0.1e5, 1),
    /** The highest reading while the tank is heated from cold, by a maximum pointer or by watching (Pa, gauge). */
    HEAT_UP_MAXIMUM("the highest reading of the gauge while the tank heats up from cold", "Pa", 0.15e5, 2),
    /** What the gauge shows twelve hours after the heat-up began, no water drawn in between (Pa, gauge). */
    NEXT_MORNING("the gauge twelve hours after the heat-up from cold began, no water drawn meanwhile", "Pa", 0.1e5, 3),
    /** What the relief pipe gives off while the tank is heated from cold and in the twelve hours from then (m3). */
    CAUGHT_VOLUME("the water that came out of the relief pipe in these twelve hours", "m3", 0.1e-3, 3),
    /** The temperature of the water at the nearest hot tap after a heat-up, behind the mixing valve if there is one (K). */
    HOT_TAP("the temperature of the water at the nearest hot tap after a heat-up", "K", 2, 1),
    /** What the water meter counts in an hour with every tap shut and the heater off (m3). */
    METER_AT_REST("what the water meter counts in an hour with every tap shut and the heater off", "m3", 0.1e-3, 2),
    /** What a tyre gauge shows at the vessel's gas valve with the heater cold and the water side empty (Pa, gauge). */
    TYRE_GAUGE(
            "a tyre gauge at the gas valve of the vessel, heater off and cold, water side relieved and empty",
            "Pa",
            0.1e5,
            4);

    private final String words;
    private final String unit;
    private final double uncertainty;
    private final int effort;

    SiteCheck(String words, String unit, double uncertainty, int effort) {
        this.words = words;
        this.unit = unit;
        this.uncertainty = uncertainty;
        this.effort = effort;
    }

    /**
     * What to read.
     *
     * @return the reading in words, without article at the end or full stop
     */
    public String words() {
        return words;
    }

    /**
     * The SI unit of the reading; pressures are gauge.
     *
     * @return the unit
     */
    public String unit() {
        return unit;
    }

    /**
     * The standard uncertainty taken for a reading that comes without one: what careful reading of household instruments
     * gives, common practice, no source.
     *
     * @return the uncertainty (in the {@link #unit() unit} of the check; of a pressure, a difference)
     */
    public double usualUncertainty() {
        return uncertainty;
    }

    /** How much work the check is, 1 being the least. */
    int effort() {
        return effort;
    }
}
