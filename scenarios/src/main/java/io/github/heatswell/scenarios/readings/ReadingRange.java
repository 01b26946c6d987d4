package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;

/**
 * What a reading can be at all, so that a slip of the pen or the number a broken sensor sends is not taken for one, and how well it
 * must be known to say anything. The limits are beyond what a house has; no source.
 *
 * @param low the least value, in the unit
 * @param high the greatest value, in the unit
 * @param unit the unit in which the range is told; pressures are gauge
 * @param rough the standard uncertainty (in the unit) that any reading may have, however small it is
 */
record ReadingRange(int low, int high, Unit unit, double rough) {

    /** For a logger, which also writes what its sensor sends on the way to a reading. */
    static final ReadingRange LOGGED_PRESSURE = new ReadingRange(-10_000, 10_000, PressureUnit.BAR, 0);

    /** The same for a thermometer. */
    static final ReadingRange LOGGED_TEMPERATURE = new ReadingRange(-250, 1_000, TemperatureUnit.CELSIUS, 0);

    private static final ReadingRange SUPPLY_OR_CHARGE = new ReadingRange(0, 25, PressureUnit.BAR, 0.5);
    private static final ReadingRange HEATED = new ReadingRange(0, 50, PressureUnit.BAR, 0.5);
    private static final ReadingRange TEMPERATURE = new ReadingRange(0, 110, TemperatureUnit.CELSIUS, 10);
    private static final ReadingRange CAUGHT = new ReadingRange(0, 1_000, VolumeUnit.LITRE, 1);
    private static final ReadingRange METERED = new ReadingRange(0, 2_000, VolumeUnit.LITRE, 1);

    /** More than this share of a reading (-) may not be uncertain. */
    private static final double MAX_SHARE = 0.5;

    /** The range of a reading on site. */
    static ReadingRange of(SiteCheck check) {
        return switch (check) {
            case COLD_STATIC, TYRE_GAUGE -> SUPPLY_OR_CHARGE;
            case HEAT_UP_MAXIMUM, NEXT_MORNING -> HEATED;
            case HOT_TAP -> TEMPERATURE;
            case CAUGHT_VOLUME -> CAUGHT;
            case METER_AT_REST -> METERED;
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
        if (Limits.between("reading", unit.toSi(low), unit.toSi(high)).contains(value)) {
            return value;
        }
        throw new IllegalArgumentException(Printable.quote(text) + " is outside the allowed range, " + low + " "
                + unit.symbol() + " to " + high + " " + unit.symbol() + advice);
    }

    /**
     * Lets an uncertainty pass beside which the reading still says something.
     *
     * @param uncertainty the standard uncertainty (SI, a difference)
     * @param text how it is written
     * @param value the reading (SI, pressure gauge)
     * @param reading how that is written
     * @throws IllegalArgumentException if it is not above 0 or swamps the reading
     */
    double uncertainty(double uncertainty, String text, double value, String reading) {
        if (!(uncertainty > 0)) {
            throw new IllegalArgumentException(
                    "the uncertainty " + Printable.quote(text) + " must be above 0; leave it out if there is none");
        }
        double aboveZero = unit instanceof TemperatureUnit ? 0 : value;
        if (uncertainty <= Math.max(rough * unit.factor(), MAX_SHARE * aboveZero)) {
            return uncertainty;
        }
        throw new IllegalArgumentException(
                "the uncertainty " + Printable.quote(text) + " swamps the reading of " + Printable.quote(reading)
                        + ", so that nothing follows from it; take the reading more closely, or leave it out");
    }
}
