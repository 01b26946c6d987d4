package io.github.heatswell.scenarios.wording;

import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Objects;

/**
 * Quantities as a report shows them, with as many digits as a reader can use: for a terminal in one unit system, for
 * paper in both, such as {@code 4.20 bar (60.9 psi)}.
 *
 * @param units the unit system, or the one that comes first
 * @param both whether the other unit system follows in brackets
 */
public record Shown(UnitSystem units, boolean both) {

    private static final char NO_BREAK_SPACE = '\u00a0';

    /**
     * Checks that the unit system is there.
     *
     * @param units the unit system, or the one that comes first
     * @param both whether the other unit system follows in brackets
     */
    public Shown {
        Objects.requireNonNull(units, "units");
    }

    /**
     * Quantities in one unit system, in characters that every terminal can show.
     *
     * @param units the unit system
     */
    public Shown(UnitSystem units) {
        this(units, false);
    }

    /**
     * Quantities in both unit systems.
     *
     * @param units the one that comes first
     * @return the other follows in brackets
     */
    public static Shown inBoth(UnitSystem units) {
        return new Shown(units, true);
    }

    /**
     * A pressure.
     *
     * @param value the gauge pressure or the pressure difference (Pa)
     * @return such as {@code 4.20 bar}
     */
    public String pressure(double value) {
        return beside(pressure(value, units), pressure(value, other()));
    }

    /**
     * A range of pressures.
     *
     * @param lowest its lower end (Pa, gauge)
     * @param highest its upper end (Pa, gauge)
     * @return such as {@code 4.04 to 4.36 bar}
     */
    public String pressures(double lowest, double highest) {
        return beside(pressures(lowest, highest, units), pressures(lowest, highest, other()));
    }

    /**
     * A temperature.
     *
     * @param value the temperature (K)
     * @return such as {@code 58.0 degC}
     */
    public String temperature(double value) {
        return beside(number(value, units.temperature(), 1), number(value, other().temperature(), 1));
    }

    /**
     * A volume.
     *
     * @param value the volume (m3)
     * @return such as {@code 3.14 L}
     */
    public String volume(double value) {
        return beside(volume(value, units), volume(value, other()));
    }

    /**
     * A volume as water bills have it.
     *
     * @param value the volume (m3)
     * @return such as {@code 1.24 m3}
     */
    public String largeVolume(double value) {
        return beside(largeVolume(value, units), largeVolume(value, other()));
    }

    /**
     * An amount of heat.
     *
     * @param value the heat (J)
     * @return such as {@code 17.54 kWh}
     */
    public String energy(double value) {
        return beside(energy(value, units), energy(value, other()));
    }

    /**
     * A time since the start, in the two largest units that are worth saying.
     *
     * @param seconds the time (s), 0 or more
     * @return such as {@code 1 h 30 min}
     */
    public static String time(double seconds) {
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

    private UnitSystem other() {
        return units == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
    }

    private String pressure(double value, UnitSystem system) {
        return number(value, system.pressure(), system == UnitSystem.SI ? 2 : 1);
    }

    private String pressures(double lowest, double highest, UnitSystem system) {
        String from = pressure(lowest, system);
        return from.substring(0, from.length() - system.pressure().symbol().length() - 1) + " to "
                + pressure(highest, system);
    }

    private String volume(double value, UnitSystem system) {
        double size = Math.abs(system.volume().fromSi(value));
        int decimals = !both || size < 9.995 ? 2 : size < 99.95 ? 1 : 0;
        return number(value, system.volume(), decimals);
    }

    private String largeVolume(double value, UnitSystem system) {
        return system == UnitSystem.SI
                ? number(value, VolumeUnit.CUBIC_METRE, 2)
                : number(value, VolumeUnit.US_GALLON, 0);
    }

    private String energy(double value, UnitSystem system) {
        return system == UnitSystem.SI ? number(value, EnergyUnit.KILOWATT_HOUR, 2) : number(value, EnergyUnit.BTU, 0);
    }

    private String beside(String first, String second) {
        return both ? first + " (" + second + ")" : first;
    }

    private String number(double value, Unit unit, int decimals) {
        double number = unit.fromSi(value);
        return both
                ? readable(number, decimals) + NO_BREAK_SPACE + unit.symbol().replace("deg", "\u00b0")
                : Digits.fixed(number, decimals) + " " + unit.symbol();
    }

    /** Large numbers with fewer decimals, and in groups of three digits that stay together. */
    private static String readable(double number, int decimals) {
        double size = Math.abs(number);
        StringBuilder digits = new StringBuilder(
                Digits.fixed(number, size >= 1_000 ? 0 : size >= 100 ? Math.min(decimals, 1) : decimals));
        if (size >= 10_000) {
            for (int at = digits.length() - 3; at > (number < 0 ? 1 : 0); at -= 3) {
                digits.insert(at, NO_BREAK_SPACE);
            }
        }
        return digits.toString();
    }
}
