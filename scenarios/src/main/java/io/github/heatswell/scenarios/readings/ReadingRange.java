package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;

/**
 * Plausible range of a number in a file of readings. The ranges of readings on site are those of {@link SiteCheck};
 * those of loggers only reject the output of broken sensors, no source.
 *
 * @param limits the range; pressures are gauge
 * @param unit the unit in which it is given
 */
record ReadingRange(Limits limits, Unit unit) {

    /** For a logger, which also writes what its sensor sends on the way to a reading. */
    static final ReadingRange LOGGED_PRESSURE = new ReadingRange(PressureLog.PRESSURES, PressureUnit.BAR);

    /** The same for a thermometer. */
    static final ReadingRange LOGGED_TEMPERATURE = new ReadingRange(PressureLog.TEMPERATURES, TemperatureUnit.CELSIUS);

    /** The range of a reading on site. */
    static ReadingRange of(SiteCheck check) {
        return new ReadingRange(check.limits(), check.customaryUnit());
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
        if (limits.contains(value)) {
            return value;
        }
        throw new IllegalArgumentException(Printable.quote(text) + " is outside the allowed range, "
                + Limits.quantity(unit.fromSi(limits.low()), unit) + " to "
                + Limits.quantity(unit.fromSi(limits.high()), unit) + advice);
    }
}
