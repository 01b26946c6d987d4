package io.github.heatswell.units;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.function.Function;

/**
 * Quantities as people read them, on a screen, on a page and in a picture alike. The digits depend on the quantity and
 * its unit alone; only the characters of the units differ ({@link Symbols}). Immutable.
 *
 * <p>Every number is rounded half up ({@link Decimals}) and has no zeros behind its last digit:
 *
 * <ul>
 * <li>pressures and their differences: at most two decimals in bar; in psi whole from 20 psi on, as gauges can be read
 * and vessels charged, and at most one decimal below. A pressure in exact tenths of a psi was given so, and stays;
 * <li>temperatures: at most one decimal in degrees Celsius, none in Fahrenheit;
 * <li>differences of temperatures and moments: at most one decimal; masses also three significant digits;
 * <li>volumes and energies: three significant digits and at most two decimals;
 * <li>flows, powers and lengths: three significant digits; two in US units below 0.1 gal/min or 0.1 in;
 * <li>shares: whole percents, two digits below 10 %, and at most two decimals;
 * <li>times: the two largest units.
 * </ul>
 *
 * <p>From 10 000 on, digits stand in groups of three. A volume, a share or a difference of pressures too small to show
 * is called "under 0.01 L", or "above -0.01 L" below zero, so that a small value never reads as zero.
 *
 * @param units the unit system, or the one that comes first
 * @param symbols which characters units are written in
 * @param both whether the other unit system follows in brackets, as in {@code 7 bar (102 psi)}
 */
public record QuantityFormat(UnitSystem units, Symbols symbols, boolean both) {

    private static final int THREE = 3;
    private static final int ANY = Decimals.ANY;

    /** What is less (psi) is shown in tenths. */
    private static final double SMALL_PSI = 19.95;

    /** What is less (in or gal/min) is shown to two significant digits. */
    private static final double SMALL_US = 0.0995;

    /** So close to a number of tenths (tenths of a psi) a pressure comes out of a run or a file that gave tenths. */
    private static final double AS_GIVEN = 1e-7;

    /**
     * Checks that unit system and symbols are there.
     *
     * @param units the unit system, or the one that comes first
     * @param symbols which characters units are written in
     * @param both whether the other unit system follows in brackets
     */
    public QuantityFormat {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(symbols, "symbols");
    }

    /**
     * A format for terminals, in one unit system.
     *
     * @param units the unit system
     * @return the format
     */
    public static QuantityFormat ascii(UnitSystem units) {
        return new QuantityFormat(units, Symbols.ASCII, false);
    }

    /**
     * A format for pictures and for texts that other programs take, in one unit system.
     *
     * @param units the unit system
     * @return the format
     */
    public static QuantityFormat unicode(UnitSystem units) {
        return new QuantityFormat(units, Symbols.UNICODE, false);
    }

    /**
     * A format for pages, in one unit system.
     *
     * @param units the unit system
     * @return the format
     */
    public static QuantityFormat printed(UnitSystem units) {
        return new QuantityFormat(units, Symbols.PRINTED, false);
    }

    /**
     * The same format with the other unit system behind the first, in brackets.
     *
     * @return the format; a quantity that reads alike in both is written once
     */
    public QuantityFormat inBoth() {
        return new QuantityFormat(units, symbols, true);
    }

    /**
     * The same format for one unit system alone.
     *
     * @param system the unit system
     * @return the format
     */
    public QuantityFormat only(UnitSystem system) {
        return new QuantityFormat(system, symbols, false);
    }

    /**
     * A pressure.
     *
     * @param pascal the pressure (Pa, gauge or absolute: it is not said here which)
     * @return such as {@code 4.01 bar} or {@code 58 psi}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String pressure(double pascal) {
        return shown(system -> pressure(pascal, system));
    }

    /**
     * A pressure beside another that it would read like.
     *
     * @param pascal the pressure (Pa, gauge or absolute: it is not said here which)
     * @return as {@link #pressure} has it, but with a decimal in psi, such as {@code 80.3 psi}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String pressureInTenths(double pascal) {
        return shown(system -> number(pascal, system.pressure(), Math.max(1, system.pressureDecimals()), ANY));
    }

    /**
     * A pressure where its unit stands elsewhere, as in the caption of a table: in one unit system.
     *
     * @param pascal the pressure (Pa, gauge or absolute: it is not said here which)
     * @return such as {@code 4.01}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String pressureNumber(double pascal) {
        return withoutUnit(pressure(pascal, units), units);
    }

    private String withoutUnit(String pressure, UnitSystem system) {
        return pressure.substring(
                0,
                pressure.length() - symbols.behind(system.pressure().symbol()).length());
    }

    /**
     * A range of pressures.
     *
     * @param lowest its lower end (Pa, gauge or absolute as the upper one)
     * @param highest its upper end (Pa, gauge or absolute as the lower one)
     * @return such as {@code 4.04 to 4.36 bar}; one pressure if both ends read alike
     * @throws IllegalArgumentException if an end is NaN or infinite
     */
    public String pressures(double lowest, double highest) {
        return shown(system -> {
            String from = pressure(lowest, system);
            String to = pressure(highest, system);
            return from.equals(to) ? to : withoutUnit(from, system) + " to " + to;
        });
    }

    /**
     * A difference of two pressures, such as a margin.
     *
     * @param pascal the difference (Pa)
     * @return such as {@code 0.3 bar}; {@code under 0.01 bar} if it is too small to show and not zero
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String pressureDifference(double pascal) {
        return shown(system -> small(pascal, system.pressure(), pressureDecimals(pascal, system), ANY));
    }

    /**
     * By how much a pressure rises with each degree.
     *
     * @param pascalPerKelvin the rise (Pa/K)
     * @return such as {@code 0.36 bar/K} or {@code 2.9 psi/degF}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String pressurePerDegree(double pascalPerKelvin) {
        return shown(system -> {
            double degree = system.temperatureDifference().toSi(1);
            double risen = system.pressure().fromSi(pascalPerKelvin * degree);
            return symbols.digits(Decimals.rounded(Decimals.exact(risen), system.pressureDecimals(), THREE))
                    + symbols.behind(system.pressure().symbol() + "/"
                            + system.temperatureDifference().symbol());
        });
    }

    /**
     * A pressure to which a reducing valve is set by hand.
     *
     * @param pascal the highest pressure that will do (Pa, gauge), 0 or more
     * @return that pressure rounded down to 0.5 bar or 5 psi, such as {@code 5 bar} or {@code 75 psi}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String setting(double pascal) {
        return shown(system -> {
            double step = system.pressure().fromSi(system.settingStep());
            double steps = Math.floor(system.pressure().fromSi(pascal) / step + 1e-9);
            return given(steps * step, system.pressure(), 4);
        });
    }

    /**
     * Tells whether a difference of two pressures shows in the unit system that comes first.
     *
     * @param pascal the difference (Pa)
     * @return true if it rounds to something else than zero
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public boolean shows(double pascal) {
        BigDecimal exact = Decimals.exact(units.pressure().fromSi(pascal));
        return Decimals.rounded(exact, pressureDecimals(pascal, units), ANY).signum() != 0;
    }

    /**
     * A temperature on a thermometer.
     *
     * @param kelvin the temperature (K)
     * @return such as {@code 58 degC}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String temperature(double kelvin) {
        return shown(system -> number(kelvin, system.temperature(), system.isMetric() ? 1 : 0, ANY));
    }

    /**
     * A difference of two temperatures.
     *
     * @param kelvin the difference (K)
     * @return such as {@code 6 K} or {@code 10.8 degF}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String temperatureDifference(double kelvin) {
        return shown(system -> number(kelvin, system.temperatureDifference(), 1, ANY));
    }

    /**
     * A volume.
     *
     * @param cubicMetres the volume (m3)
     * @return such as {@code 3.15 L}; {@code under 0.01 L} if it is too small to show and not zero
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String volume(double cubicMetres) {
        return shown(system -> small(cubicMetres, system.volume(), 2, THREE));
    }

    /**
     * A volume as water bills have it.
     *
     * @param cubicMetres the volume (m3)
     * @return such as {@code 1.24 m3} or {@code 328 gal}; {@code under 0.01 m3} if it is too small to show and not zero
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String largeVolume(double cubicMetres) {
        return shown(system ->
                small(cubicMetres, system.isMetric() ? VolumeUnit.CUBIC_METRE : VolumeUnit.US_GALLON, 2, THREE));
    }

    /**
     * A volume flow.
     *
     * @param cubicMetresPerSecond the flow (m3/s)
     * @return such as {@code 12 L/min} or {@code 3.17 gal/min}; below 0.1 L/min in {@code mL/min}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String flow(double cubicMetresPerSecond) {
        return shown(system -> {
            boolean drips = system.isMetric()
                    && cubicMetresPerSecond != 0
                    && Math.abs(FlowUnit.LITRE_PER_MINUTE.fromSi(cubicMetresPerSecond)) < 0.09995;
            FlowUnit unit = drips ? FlowUnit.MILLILITRE_PER_MINUTE : system.flow();
            return number(cubicMetresPerSecond, unit, ANY, significant(unit.fromSi(cubicMetresPerSecond), system));
        });
    }

    /**
     * A heating power.
     *
     * @param watt the power (W)
     * @return such as {@code 2.4 kW} or {@code 8190 Btu/h}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String power(double watt) {
        return shown(system -> number(watt, system.power(), ANY, THREE));
    }

    /**
     * An amount of heat.
     *
     * @param joule the heat (J)
     * @return such as {@code 17.5 kWh} or {@code 59 800 Btu}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String energy(double joule) {
        return shown(system -> number(joule, system.isMetric() ? EnergyUnit.KILOWATT_HOUR : EnergyUnit.BTU, 2, THREE));
    }

    /**
     * A mass.
     *
     * @param kilogram the mass (kg)
     * @return such as {@code 13.4 kg}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String mass(double kilogram) {
        return shown(system -> number(kilogram, system.mass(), 1, THREE));
    }

    /**
     * How heavy a thing is that somebody carries.
     *
     * @param kilogram the mass (kg)
     * @return such as {@code 53 kg}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String weight(double kilogram) {
        return shown(system -> number(kilogram, system.mass(), 0, ANY));
    }

    /**
     * A length.
     *
     * @param metre the length (m)
     * @return such as {@code 1.23 m} or {@code 48.6 in}; in the US from 10 ft on in feet
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String length(double metre) {
        return shown(system -> {
            LengthUnit unit = lengthUnit(metre, system);
            return number(metre, unit, ANY, significant(unit.fromSi(metre), system));
        });
    }

    /** A third digit of a thousandth of a US unit is more than a rule or a measuring cup tells. */
    private static int significant(double value, UnitSystem system) {
        return system == UnitSystem.US && Math.abs(value) < SMALL_US ? 2 : THREE;
    }

    private static LengthUnit lengthUnit(double metre, UnitSystem system) {
        if (system.isMetric()) {
            return LengthUnit.METRE;
        }
        return Math.abs(LengthUnit.FOOT.fromSi(metre)) < 9.995 ? LengthUnit.INCH : LengthUnit.FOOT;
    }

    /**
     * A bending moment.
     *
     * @param newtonMetre the moment (N m)
     * @return such as {@code 58.8 N m}
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String moment(double newtonMetre) {
        return shown(system -> number(newtonMetre, system.moment(), 1, ANY));
    }

    /**
     * A duration, in its two largest useful units.
     *
     * @param seconds the time (s)
     * @return such as {@code 8.4 s}, {@code 10 min 16 s}, {@code 3 d 2 h} or {@code 2.3 years} of 365.25 days
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String time(double seconds) {
        String text = DurationUnit.twoLargest(seconds);
        return text.replace(' ', symbols.space());
    }

    /**
     * A share of a whole.
     *
     * @param share the share (-)
     * @return such as {@code 60 %}, {@code 3.5 %} or {@code 0.35 %}; {@code under 0.01 %} if it is too small to show and not zero
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public String share(double share) {
        BigDecimal percent = Decimals.exact(100 * share);
        int before = percent.precision() - percent.scale();
        return symbols.small(percent, 2, Math.max(2, before)) + symbols.behind("%");
    }

    /**
     * How often something happened.
     *
     * @param count the number, 0 or more
     * @return {@code once}, {@code twice} or such as {@code 71 times}
     */
    public static String times(long count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }

    /**
     * A quantity in a unit that somebody chose, to so many significant digits.
     *
     * @param number the number, in the unit
     * @param unit the unit
     * @param significant how many digits count, at least 1
     * @return such as {@code 0.045 in}
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public String given(double number, Unit unit, int significant) {
        String digits = symbols.digits(Decimals.rounded(Decimals.exact(number), ANY, significant));
        return unit.symbol().isEmpty() ? digits : digits + symbols.behind(unit.symbol());
    }

    /**
     * A unit as it stands behind its numbers.
     *
     * @param unit the unit
     * @return such as {@code bar}, and {@code degC} or {@code °C}
     */
    public String symbol(Unit unit) {
        return symbols.written(unit.symbol());
    }

    private String shown(Function<UnitSystem, String> one) {
        String first = one.apply(units);
        String second = both ? one.apply(units.other()) : first;
        return first.equals(second) ? first : first + " (" + second + ")";
    }

    private String pressure(double pascal, UnitSystem system) {
        return number(pascal, system.pressure(), pressureDecimals(pascal, system), ANY);
    }

    private static int pressureDecimals(double pascal, UnitSystem system) {
        if (system.isMetric()) {
            return system.pressureDecimals();
        }
        double psi = PressureUnit.PSI.fromSi(pascal);
        boolean given = Math.abs(10 * psi - Math.round(10 * psi)) < AS_GIVEN;
        return given || Math.abs(psi) < SMALL_PSI ? 1 : 0;
    }

    private String number(double si, Unit unit, int decimals, int significant) {
        BigDecimal exact = Decimals.exact(unit.fromSi(si));
        return symbols.digits(Decimals.rounded(exact, decimals, significant)) + symbols.behind(unit.symbol());
    }

    private String small(double si, Unit unit, int decimals, int significant) {
        return symbols.small(Decimals.exact(unit.fromSi(si)), decimals, significant) + symbols.behind(unit.symbol());
    }
}
