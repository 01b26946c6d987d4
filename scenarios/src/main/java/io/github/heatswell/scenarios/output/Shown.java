package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;

/**
 * Quantities as a report shows them, in one unit system, with as many digits as a reader can use.
 *
 * @param units the unit system
 */
record Shown(UnitSystem units) {

    /** A gauge pressure or a pressure difference (Pa). */
    String pressure(double value) {
        return number(value, units.pressure(), units == UnitSystem.SI ? 2 : 1);
    }

    /** A temperature (K). */
    String temperature(double value) {
        return number(value, units.temperature(), 1);
    }

    /** A volume (m3). */
    String volume(double value) {
        return number(value, units.volume(), 2);
    }

    /** A volume (m3) as water bills have it. */
    String largeVolume(double value) {
        return units == UnitSystem.SI
                ? number(value, VolumeUnit.CUBIC_METRE, 2)
                : number(value, VolumeUnit.US_GALLON, 0);
    }

    /** An amount of heat (J). */
    String energy(double value) {
        return units == UnitSystem.SI ? number(value, EnergyUnit.KILOWATT_HOUR, 2) : number(value, EnergyUnit.BTU, 0);
    }

    /** A time since the start (s), in the two largest units that are worth saying. */
    static String time(double seconds) {
        long whole = Math.round(seconds);
        if (whole < 60) {
            return whole + " s";
        }
        if (whole < 3_600) {
            return parts(whole / 60, "min", whole % 60, "s");
        }
        long minutes = Math.round(seconds / 60);
        if (minutes < 48 * 60) {
            return parts(minutes / 60, "h", minutes % 60, "min");
        }
        long hours = Math.round(seconds / 3_600);
        return parts(hours / 24, "d", hours % 24, "h");
    }

    private static String parts(long large, String largeUnit, long small, String smallUnit) {
        return large + " " + largeUnit + (small == 0 ? "" : " " + small + " " + smallUnit);
    }

    private static String number(double value, Unit unit, int decimals) {
        return Digits.fixed(unit.fromSi(value), decimals) + " " + unit.symbol();
    }
}
