package io.github.heatswell.units;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A consistent choice of units for showing results. Pressures are shown as gauge readings unless said otherwise.
 */
public enum UnitSystem {
    /** Bar, degrees Celsius, litres, kilowatts, kilograms. */
    SI(
            TemperatureUnit.CELSIUS,
            TemperatureDifferenceUnit.KELVIN,
            VolumeUnit.LITRE,
            FlowUnit.LITRE_PER_MINUTE,
            PowerUnit.KILOWATT,
            MassUnit.KILOGRAM,
            MomentUnit.NEWTON_METRE,
            new Pressures(PressureUnit.BAR, 2, 0.5)),
    /** Pounds per square inch, degrees Fahrenheit, US gallons, Btu an hour, pounds. */
    US(
            TemperatureUnit.FAHRENHEIT,
            TemperatureDifferenceUnit.FAHRENHEIT_DEGREE,
            VolumeUnit.US_GALLON,
            FlowUnit.US_GALLON_PER_MINUTE,
            PowerUnit.BTU_PER_HOUR,
            MassUnit.POUND,
            MomentUnit.POUND_FORCE_FOOT,
            new Pressures(PressureUnit.PSI, 1, 5)),
    /** As {@link #SI}, with pressures in kilopascals, as gauges of Australia and New Zealand show them. */
    KPA(SI, new Pressures(PressureUnit.KILOPASCAL, 0, 50));

    /**
     * How pressures are shown.
     *
     * @param unit their unit
     * @param decimals how many decimals tell two readings of a gauge apart
     * @param step to what a reducing valve is set by hand, in the unit
     */
    private record Pressures(PressureUnit unit, int decimals, double step) {}

    private final Pressures pressures;
    private final TemperatureUnit temperature;
    private final TemperatureDifferenceUnit temperatureDifference;
    private final VolumeUnit volume;
    private final FlowUnit flow;
    private final PowerUnit power;
    private final MassUnit mass;
    private final MomentUnit moment;

    UnitSystem(
            TemperatureUnit temperature,
            TemperatureDifferenceUnit temperatureDifference,
            VolumeUnit volume,
            FlowUnit flow,
            PowerUnit power,
            MassUnit mass,
            MomentUnit moment,
            Pressures pressures) {
        this.temperature = temperature;
        this.temperatureDifference = temperatureDifference;
        this.volume = volume;
        this.flow = flow;
        this.power = power;
        this.mass = mass;
        this.moment = moment;
        this.pressures = pressures;
    }

    UnitSystem(UnitSystem other, Pressures pressures) {
        this(
                other.temperature,
                other.temperatureDifference,
                other.volume,
                other.flow,
                other.power,
                other.mass,
                other.moment,
                pressures);
    }

    /** Units of both systems, so that using one says nothing. */
    private static final Set<Unit> OF_BOTH =
            Set.of(PowerUnit.WATT, PowerUnit.KILOWATT, EnergyUnit.KILOWATT_HOUR, RatioUnit.PERCENT, RatioUnit.ONE);

    /** Words of the trade that another place has another word for; keys of files and what is quoted are passed over. */
    private static final Pattern BRITISH = Pattern.compile(
            "\\u201c[^\\u201d]*\\u201d|\"[^\"]*\"|(?<!\\w)'[^'\\n]*'(?!\\w)"
                    + "|(?<![\\w.-])(?:([Aa])n? )?(expansion vessel|vessel|tyre|"
                    + "(?<=\\b(?:to|into|towards)\\s)the mains(?! pressure)|mains|isolating valve|"
                    + "(?:hose|garden|drain) tap|drain cock|tap(?! water)|cold feed|local authority|"
                    + "gas cock|fitter|fitted(?! (?:to|as)\\b)|fit(?= (?:an?|it|one|then)\\b)|colour|neighbour|vapour|judgement|millilitre|litre|metre|licence|labelled|enamelled|modelled)(?=s?(?![\\w\\[-]|\\.\\w))",
            Pattern.CASE_INSENSITIVE);

    private static final Map<String, String> AMERICAN = Map.ofEntries(
            Map.entry("expansion vessel", "expansion tank"),
            Map.entry("vessel", "expansion tank"),
            Map.entry("tyre", "tire"),
            Map.entry("the mains", "the water main"),
            Map.entry("mains", "city water"),
            Map.entry("isolating valve", "shutoff valve"),
            Map.entry("hose tap", "hose bibb"),
            Map.entry("garden tap", "hose bibb"),
            Map.entry("drain tap", "drain valve"),
            Map.entry("drain cock", "drain valve"),
            Map.entry("tap", "faucet"),
            Map.entry("cold feed", "cold supply"),
            Map.entry("local authority", "local building department"),
            Map.entry("gas cock", "gas valve"),
            Map.entry("fitter", "installer"),
            Map.entry("fitted", "installed"),
            Map.entry("fit", "install"),
            Map.entry("colour", "color"),
            Map.entry("vapour", "vapor"),
            Map.entry("judgement", "judgment"),
            Map.entry("neighbour", "neighbor"),
            Map.entry("enamelled", "enameled"),
            Map.entry("modelled", "modeled"),
            Map.entry("millilitre", "milliliter"),
            Map.entry("litre", "liter"),
            Map.entry("metre", "meter"),
            Map.entry("licence", "license"),
            Map.entry("labelled", "labeled"));

    /** Units of the United States. */
    private static final Set<Unit> OF_THE_US = Set.of(
            PressureUnit.PSI,
            TemperatureUnit.FAHRENHEIT,
            TemperatureDifferenceUnit.FAHRENHEIT_DEGREE,
            VolumeUnit.US_GALLON,
            VolumeUnit.US_QUART,
            VolumeUnit.US_PINT,
            FlowUnit.US_GALLON_PER_MINUTE,
            PowerUnit.BTU_PER_HOUR,
            EnergyUnit.BTU,
            ComplianceUnit.US_FLUID_OUNCE_PER_PSI,
            ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT,
            ExpansionUnit.MILLIONTH_PER_FAHRENHEIT,
            MassUnit.POUND,
            MomentUnit.POUND_FORCE_FOOT,
            LengthUnit.INCH,
            LengthUnit.FOOT);

    /**
     * Words as people say and spell them where these units are used: in the US a tyre is a tire, an expansion vessel an expansion
     * tank, the mains are city water, a way to them leads to the water main, an isolating valve is a shutoff valve, a tap a faucet,
     * the local authority the building department, and what is fitted is installed. Keys of files, such as {@code tyre-gauge} or
     * {@code vessel.volume}, and quoted names stay.
     *
     * @param words British words
     * @return the same in the words of the place
     */
    public String spelled(String words) {
        if (isMetric()) {
            return words;
        }
        StringBuilder spelled = new StringBuilder();
        int from = 0;
        for (Matcher found = BRITISH.matcher(words); found.find(); from = found.end()) {
            spelled.append(words, from, found.start()).append(american(found));
        }
        return spelled.append(words, from, words.length()).toString();
    }

    private static String american(MatchResult found) {
        String british = found.group(2);
        if (british == null) {
            return found.group();
        }
        String word = AMERICAN.get(british.toLowerCase(Locale.ROOT));
        String article =
                found.group(1) == null ? "" : found.group(1) + ("ei".indexOf(word.charAt(0)) >= 0 ? "n " : " ");
        boolean capital = Character.isUpperCase(british.charAt(0));
        return article + (capital ? Character.toUpperCase(word.charAt(0)) + word.substring(1) : word);
    }

    /**
     * The system a unit belongs to.
     *
     * @param unit the unit
     * @return its system; empty for a unit that both use, such as the minute or the kilowatt
     */
    public static Optional<UnitSystem> of(Unit unit) {
        if (OF_THE_US.contains(unit)) {
            return Optional.of(US);
        }
        return unit instanceof DurationUnit || OF_BOTH.contains(unit) ? Optional.empty() : Optional.of(SI);
    }

    /**
     * Whether a reader of these units knows another unit, so that a quantity written in it can stay.
     *
     * @param unit the unit
     * @return true for a unit of both systems or of this one; of the metric units of pressure, kilopascals are read by those who use them
     */
    public boolean uses(Unit unit) {
        boolean kilopascal = unit == PressureUnit.KILOPASCAL;
        return of(unit).map(system -> system.isMetric() == isMetric()).orElse(true)
                && (!(unit instanceof PressureUnit) || kilopascal == (this == KPA));
    }

    /**
     * The system that fits the units somebody uses.
     *
     * @param units the units, as often as each was used
     * @return US if more of them are of that system than of the other; otherwise SI, or KPA if most pressures are in kilopascals
     */
    public static UnitSystem ofMost(List<Unit> units) {
        int balance = units.stream()
                .flatMap(unit -> of(unit).stream())
                .mapToInt(system -> system == US ? 1 : -1)
                .sum();
        return balance > 0 ? US : SI.withPressuresOf(units);
    }

    /**
     * The same units, with pressures in the metric unit that somebody uses.
     *
     * @param units the units used, as often as each was
     * @return US for US; else KPA if more pressures are in kilopascals than in other units, and SI if not
     */
    public UnitSystem withPressuresOf(List<Unit> units) {
        int balance = units.stream()
                .filter(PressureUnit.class::isInstance)
                .mapToInt(unit -> unit == PressureUnit.KILOPASCAL ? 1 : -1)
                .sum();
        return this == US ? US : balance > 0 ? KPA : SI;
    }

    /**
     * Whether these units are metric, whatever that of pressure.
     *
     * @return false for US
     */
    public boolean isMetric() {
        return this != US;
    }

    /**
     * The system of those who use the other units.
     *
     * @return US for metric units, and SI for US
     */
    public UnitSystem other() {
        return isMetric() ? US : SI;
    }

    /**
     * The unit for pressures.
     *
     * @return bar, psi or kPa
     */
    public PressureUnit pressure() {
        return pressures.unit();
    }

    /**
     * How many decimals of that unit tell two readings of a gauge apart.
     *
     * @return such as 2 for bar
     */
    public int pressureDecimals() {
        return pressures.decimals();
    }

    /**
     * The steps in which a reducing valve is set by hand.
     *
     * @return 0.5 bar or 5 psi (Pa, difference)
     */
    public double settingStep() {
        return pressures.unit().toSi(pressures.step());
    }

    /**
     * The unit for temperatures.
     *
     * @return degrees Celsius or Fahrenheit
     */
    public TemperatureUnit temperature() {
        return temperature;
    }

    /**
     * The unit for temperature differences.
     *
     * @return kelvin or Fahrenheit degrees
     */
    public TemperatureDifferenceUnit temperatureDifference() {
        return temperatureDifference;
    }

    /**
     * The unit for volumes.
     *
     * @return litres or US gallons
     */
    public VolumeUnit volume() {
        return volume;
    }

    /**
     * The unit for volume flows.
     *
     * @return litres or US gallons a minute
     */
    public FlowUnit flow() {
        return flow;
    }

    /**
     * The unit for heating power.
     *
     * @return kilowatts or Btu an hour
     */
    public PowerUnit power() {
        return power;
    }

    /**
     * The unit for masses.
     *
     * @return kilograms or pounds
     */
    public MassUnit mass() {
        return mass;
    }

    /**
     * The unit for bending moments.
     *
     * @return newton metres or pound-force feet
     */
    public Unit moment() {
        return moment;
    }
}
