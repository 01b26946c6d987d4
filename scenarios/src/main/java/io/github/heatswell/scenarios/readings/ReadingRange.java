package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;

/**
 * What a reading can be at all, so that a slip of the pen or the number a broken sensor sends is not taken for one. The limits
 * are far beyond what a house has; no source.
 *
 * @param low the least value, in the unit
 * @param high the greatest value, in the unit
 * @param unit the unit in which the range is told; pressures are gauge
 */
record ReadingRange(int low, int high, Unit unit) {

    /** For a logger, which also writes what its sensor sends on the way to a reading. */
    static final ReadingRange LOGGED_PRESSURE = new ReadingRange(-10_000, 10_000, PressureUnit.BAR);

    /** The same for a thermometer. */
    static final ReadingRange LOGGED_TEMPERATURE = new ReadingRange(-250, 1_000, TemperatureUnit.CELSIUS);

    private static final ReadingRange PRESSURE = new ReadingRange(-1, 100, PressureUnit.BAR);
    private static final ReadingRange TEMPERATURE = new ReadingRange(0, 150, TemperatureUnit.CELSIUS);
    private static final ReadingRange VOLUME = new ReadingRange(0, 100_000, VolumeUnit.LITRE);

    /** The range of a reading on site. */
    static ReadingRange of(SiteCheck check) {
        return switch (check.unit()) {
            case "Pa" -> PRESSURE;
            case "K" -> TEMPERATURE;
            default -> VOLUME;
        };
    }

    /**
     * Lets a reading pass that can be one.
     *
     * @param value the reading (SI, pressure gauge)
     * @param text how it is written
     * @param advice what to do if it is none, possibly nothing
     * @throws IllegalArgumentException if it is outside the range
     */
    double checked(double value, String text, String advice) {
        if (value >= unit.toSi(low) && value <= unit.toSi(high)) {
            return value;
        }
        throw new IllegalArgumentException(Printable.quote(text) + " is outside the allowed range, " + low + " "
                + unit.symbol() + " to " + high + " " + unit.symbol() + advice);
    }
}
