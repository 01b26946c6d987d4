package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.ExpansionUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A kind of quantity and its permitted units.
 *
 * @param <U> its units
 */
public final class Kind<U extends Unit> {

    /** Pressures and pressure differences. */
    public static final Kind<PressureUnit> PRESSURE = new Kind<>(
            "pressure",
            List.of(
                    PressureUnit.BAR,
                    PressureUnit.KILOPASCAL,
                    PressureUnit.MEGAPASCAL,
                    PressureUnit.PSI,
                    PressureUnit.PASCAL));
    /** Temperatures on a thermometer. */
    public static final Kind<TemperatureUnit> TEMPERATURE = new Kind<>(
            "temperature", List.of(TemperatureUnit.CELSIUS, TemperatureUnit.FAHRENHEIT, TemperatureUnit.KELVIN));
    /** Differences of temperatures. */
    public static final Kind<TemperatureDifferenceUnit> TEMPERATURE_DIFFERENCE =
            new Kind<>("temperature difference", List.of(TemperatureDifferenceUnit.values()));
    /** Volumes. */
    public static final Kind<VolumeUnit> VOLUME = new Kind<>(
            "volume",
            List.of(
                    VolumeUnit.LITRE,
                    VolumeUnit.MILLILITRE,
                    VolumeUnit.CUBIC_METRE,
                    VolumeUnit.US_GALLON,
                    VolumeUnit.US_QUART,
                    VolumeUnit.US_PINT));
    /** Volume flows. */
    public static final Kind<FlowUnit> FLOW = new Kind<>(
            "flow",
            List.of(
                    FlowUnit.LITRE_PER_MINUTE,
                    FlowUnit.MILLILITRE_PER_MINUTE,
                    FlowUnit.LITRE_PER_HOUR,
                    FlowUnit.US_GALLON_PER_MINUTE,
                    FlowUnit.CUBIC_METRE_PER_SECOND));
    /** Heating power. */
    public static final Kind<PowerUnit> POWER =
            new Kind<>("power", List.of(PowerUnit.KILOWATT, PowerUnit.WATT, PowerUnit.BTU_PER_HOUR));
    /** Heat and other energy. */
    public static final Kind<EnergyUnit> ENERGY = new Kind<>(
            "energy", List.of(EnergyUnit.KILOWATT_HOUR, EnergyUnit.MEGAJOULE, EnergyUnit.JOULE, EnergyUnit.BTU));
    /** Lengths. */
    public static final Kind<LengthUnit> LENGTH =
            new Kind<>("length", List.of(LengthUnit.MILLIMETRE, LengthUnit.METRE, LengthUnit.INCH, LengthUnit.FOOT));
    /** Masses. */
    public static final Kind<MassUnit> MASS = new Kind<>("mass", List.of(MassUnit.KILOGRAM, MassUnit.POUND));
    /** Thermal conductances. */
    public static final Kind<ConductanceUnit> CONDUCTANCE =
            new Kind<>("heat loss per degree", List.of(ConductanceUnit.values()));
    /** Compliances: how much a volume grows with pressure. */
    public static final Kind<ComplianceUnit> COMPLIANCE = new Kind<>(
            "volume per pressure",
            List.of(
                    ComplianceUnit.MILLILITRE_PER_BAR,
                    ComplianceUnit.LITRE_PER_BAR,
                    ComplianceUnit.US_FLUID_OUNCE_PER_PSI));
    /** Linear expansions with heat. */
    public static final Kind<ExpansionUnit> EXPANSION = new Kind<>(
            "linear expansion",
            List.of(
                    ExpansionUnit.MILLIONTH_PER_KELVIN,
                    ExpansionUnit.MILLIMETRE_PER_METRE_KELVIN,
                    ExpansionUnit.MILLIONTH_PER_FAHRENHEIT));
    /** Elapsed times. */
    public static final Kind<DurationUnit> DURATION = new Kind<>("time", List.of(DurationUnit.values()));
    /** Pure ratios. They need a percent sign: of 78 and 0.78 both look right, and only one is. */
    public static final Kind<RatioUnit> RATIO = new Kind<>("ratio", List.of(RatioUnit.PERCENT));

    private static final List<Kind<?>> ALL = List.of(
            PRESSURE,
            TEMPERATURE,
            TEMPERATURE_DIFFERENCE,
            VOLUME,
            FLOW,
            POWER,
            ENERGY,
            LENGTH,
            MASS,
            CONDUCTANCE,
            COMPLIANCE,
            EXPANSION,
            DURATION,
            RATIO);

    private final String noun;
    private final List<U> units;
    private final Map<String, Optional<U>> exact;
    private final Map<String, Optional<U>> folded;

    private Kind(String noun, List<U> units) {
        this.noun = noun;
        this.units = List.copyOf(units);
        exact = bySpelling(spelling -> spelling);
        folded = bySpelling(spelling -> spelling.toLowerCase(Locale.ROOT));
    }

    /**
     * All kinds.
     *
     * @return every kind once
     */
    public static List<Kind<?>> all() {
        return ALL;
    }

    /**
     * The kind in words.
     *
     * @return such as {@code pressure}, without an article
     */
    public String noun() {
        return noun;
    }

    /**
     * The units a quantity of this kind may be written in.
     *
     * @return the units
     */
    public List<U> units() {
        return units;
    }

    /**
     * The written forms of the units.
     *
     * @return the preferred spelling of each, such as {@code kW, W or Btu/h}
     */
    public String symbols() {
        List<String> symbols = units.stream().map(Unit::symbol).toList();
        int last = symbols.size() - 1;
        return last == 0 ? symbols.get(0) : String.join(", ", symbols.subList(0, last)) + " or " + symbols.get(last);
    }

    /** The unit a text stands for, if it is one of this kind: exactly as written, or ignoring case if that is unambiguous. */
    Optional<U> unit(String text) {
        String unspaced = text.replace(" ", "");
        return exact.getOrDefault(unspaced, folded.getOrDefault(unspaced.toLowerCase(Locale.ROOT), Optional.empty()));
    }

    /** The units by their spellings without blanks; none for what two of them are called. */
    private Map<String, Optional<U>> bySpelling(UnaryOperator<String> form) {
        Map<String, Optional<U>> found = new HashMap<>();
        for (U unit : units) {
            for (String spelling : unit.spellings()) {
                found.merge(
                        form.apply(spelling.replace(" ", "")),
                        Optional.of(unit),
                        (one, other) -> one.equals(other) ? one : Optional.empty());
            }
        }
        return found;
    }
}
