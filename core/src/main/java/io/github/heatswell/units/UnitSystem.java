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
            PressureUnit.BAR,
            TemperatureUnit.CELSIUS,
            TemperatureDifferenceUnit.KELVIN,
            VolumeUnit.LITRE,
            FlowUnit.LITRE_PER_MINUTE,
            PowerUnit.KILOWATT,
            MassUnit.KILOGRAM,
            MomentUnit.NEWTON_METRE),
    /** Pounds per square inch, degrees Fahrenheit, US gallons, Btu an hour, pounds. */
    US(
            PressureUnit.PSI,
            TemperatureUnit.FAHRENHEIT,
            TemperatureDifferenceUnit.FAHRENHEIT_DEGREE,
            VolumeUnit.US_GALLON,
            FlowUnit.US_GALLON_PER_MINUTE,
            PowerUnit.BTU_PER_HOUR,
            MassUnit.POUND,
            MomentUnit.POUND_FORCE_FOOT);

    private final PressureUnit pressure;
    private final TemperatureUnit temperature;
    private final TemperatureDifferenceUnit temperatureDifference;
    private final VolumeUnit volume;
    private final FlowUnit flow;
    private final PowerUnit power;
    private final MassUnit mass;
    private final MomentUnit moment;

    UnitSystem(
            PressureUnit pressure,
            TemperatureUnit temperature,
            TemperatureDifferenceUnit temperatureDifference,
            VolumeUnit volume,
            FlowUnit flow,
            PowerUnit power,
            MassUnit mass,
            MomentUnit moment) {
        this.pressure = pressure;
        this.temperature = temperature;
        this.temperatureDifference = temperatureDifference;
        this.volume = volume;
        this.flow = flow;
        this.power = power;
        this.mass = mass;
        this.moment = moment;
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
     * Words as they are said and spelled where these units are used: in the US a tyre is a tire, an expansion vessel an expansion
     * tank, the mains are city water, a way to them leads to the water main, an isolating valve is a shutoff valve, a tap a faucet,
     * the local authority the building department, and what is fitted is installed. Keys of files, such as {@code tyre-gauge} or
     * {@code vessel.volume}, and quoted names stay.
     *
     * @param words British words
     * @return the same in the words of the place
     */
    public String spelled(String words) {
        if (this == SI) {
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
     * The system of somebody who uses certain units.
     *
     * @param units the units, as often as each was used
     * @return US if more of them are of that system than of the other, SI otherwise
     */
    public static UnitSystem ofMost(List<Unit> units) {
        int balance = units.stream()
                .flatMap(unit -> of(unit).stream())
                .mapToInt(system -> system == US ? 1 : -1)
                .sum();
        return balance > 0 ? US : SI;
    }

    /**
     * The other system of the two.
     *
     * @return US for SI, and SI for US
     */
    public UnitSystem other() {
        return this == SI ? US : SI;
    }

    /**
     * The unit for pressures.
     *
     * @return bar or psi
     */
    public PressureUnit pressure() {
        return pressure;
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
