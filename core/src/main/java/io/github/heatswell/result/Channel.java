package io.github.heatswell.result;

/**
 * A quantity followed over time. Values are in the SI unit named here; pressures are absolute unless the channel's own words say gauge.
 */
public enum Channel {
    /** Mean temperature of the water in the tank, weighted by volume (K). */
    WATER_MEAN("T", "K", "mean water temperature"),
    /** Pressure of the system at the height of the tank's drain cock (Pa, absolute). */
    PRESSURE_ABSOLUTE("p", "Pa", "pressure, absolute"),
    /** Water held by the expansion vessel (m3); 0 without a vessel. */
    VESSEL_WATER("V_w", "m3", "water in the vessel"),
    /** Flow through all relief valves together (m3/s), as cold water. */
    RELIEF_FLOW("q_r", "m3/s", "relief flow"),
    /** Volume discharged by all relief valves since the start (m3), as cold water. */
    RELIEVED_TOTAL("V_r", "m3", "discharged since the start"),
    /**
     * Volume taken in from the supply since the start (m3), as cold water; water returned is not subtracted.
     */
    INFLOW_TOTAL("V_in", "m3", "supplied since the start"),
    /** Power input of the burner or elements (W). */
    HEATER_POWER("P", "W", "heater input"),
    /** Temperature of the hottest water, at the top of the tank (K). */
    WATER_TOP("T_top", "K", "water temperature at the top"),
    /** Temperature of the coldest water, at the bottom of the tank (K). */
    WATER_BOTTOM("T_bottom", "K", "water temperature at the bottom"),
    /** Flow of hot water drawn from the tank (m3/s), as cold water. */
    DRAW_FLOW("q_d", "m3/s", "hot water flow to the taps"),
    /** Volume of hot water drawn from the tank since the start (m3), as cold water. */
    DRAWN_TOTAL("V_d", "m3", "hot water drawn since the start"),
    /** Volume returned to the mains since the start (m3), as cold water. */
    RETURNED_TOTAL("V_out", "m3", "returned to the mains since the start"),
    /** Pressure of the mains (Pa, absolute). */
    MAINS_ABSOLUTE("p_s", "Pa", "mains pressure, absolute"),
    /** Reading of the owner's gauge at its height (Pa, gauge). */
    GAUGE_READING("p_g", "Pa", "reading of the gauge"),
    /** Temperature of the hot water at the taps (K): that in the hot branch, or else in a loop, or else at the top of the tank where none is described. */
    WATER_AT_TAP("T_tap", "K", "hot water temperature at the taps"),
    /** Temperature of the water in a circulation loop (K), or at the top of the tank where none is described. */
    WATER_IN_LOOP("T_loop", "K", "water temperature in the loop");

    private final String symbol;
    private final String unit;
    private final String description;

    Channel(String symbol, String unit, String description) {
        this.symbol = symbol;
        this.unit = unit;
        this.description = description;
    }

    /**
     * The letter that stands for the quantity in formulas.
     *
     * @return the symbol
     */
    public String symbol() {
        return symbol;
    }

    /**
     * The SI unit of the values.
     *
     * @return the unit, such as {@code Pa}
     */
    public String unit() {
        return unit;
    }

    /**
     * The quantity in words.
     *
     * @return a short description in lower case
     */
    public String description() {
        return description;
    }
}
