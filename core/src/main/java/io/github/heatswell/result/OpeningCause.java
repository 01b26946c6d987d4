package io.github.heatswell.result;

import java.util.Locale;

/**
 * What opened a relief valve. The simulation states it with the event because it knows which limit was reached; where
 * both are close, pressure and temperature at that moment cannot tell.
 */
public enum OpeningCause {
    /**
     * The pressure at the height of the valve reached its set pressure. At the tank's drain cock, where {@link Event} gives it,
     * it is then {@link io.github.heatswell.system.HotWaterSystem#atDrainCock more by the column of water between}: a valve 8 m up
     * that is set to 7 bar opens at about 7.78 bar there.
     */
    PRESSURE,
    /** The hottest water reached the temperature at which the valve opens fully. */
    TEMPERATURE,
    /** Both limits were reached at the same moment, as in a run that starts beyond them. */
    BOTH;

    /**
     * Whether the pressure had reached the set pressure.
     *
     * @return true for {@link #PRESSURE} and {@link #BOTH}
     */
    public boolean byPressure() {
        return this != TEMPERATURE;
    }

    /**
     * Whether the water had reached the temperature at which the valve opens: the heater did not stop in time.
     *
     * @return true for {@link #TEMPERATURE} and {@link #BOTH}
     */
    public boolean byTemperature() {
        return this != PRESSURE;
    }

    /**
     * The cause as files write it.
     *
     * @return the name in lower case
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
