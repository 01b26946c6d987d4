package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.file.Assumption;
import io.github.heatswell.scenarios.file.FormatKey;
import io.github.heatswell.scenarios.file.FormatKey.Single;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Plain;
import io.github.heatswell.scenarios.generated.Part.Quantity;
import io.github.heatswell.scenarios.generated.Part.Several;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.ExpansionUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes a file in the units of another country, as its owner would, with the values that it leaves out. */
final class Rewriting {

    private static final Map<Kind<?>, Unit> US = Map.ofEntries(
            Map.entry(Kind.PRESSURE, PressureUnit.PSI),
            Map.entry(Kind.TEMPERATURE, TemperatureUnit.FAHRENHEIT),
            Map.entry(Kind.TEMPERATURE_DIFFERENCE, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE),
            Map.entry(Kind.VOLUME, VolumeUnit.US_GALLON),
            Map.entry(Kind.FLOW, FlowUnit.US_GALLON_PER_MINUTE),
            Map.entry(Kind.POWER, PowerUnit.BTU_PER_HOUR),
            Map.entry(Kind.ENERGY, EnergyUnit.BTU),
            Map.entry(Kind.LENGTH, LengthUnit.FOOT),
            Map.entry(Kind.MASS, MassUnit.POUND),
            Map.entry(Kind.CONDUCTANCE, ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT),
            Map.entry(Kind.EXPANSION, ExpansionUnit.MILLIONTH_PER_FAHRENHEIT),
            Map.entry(Kind.COMPLIANCE, ComplianceUnit.US_FLUID_OUNCE_PER_PSI));

    private Rewriting() {}

    /** The file with everything in it that its reader assumes; what is assumed is rounded in the unit at hand. */
    static Keyed complete(RandomScenario file) {
        Keyed whole = (Keyed) file.file().copy();
        Scenario read = file.scenario();
        for (Assumption assumption : read.assumptions()) {
            give(whole, Format.TOP, assumption.field().split("\\."), 0, assumption.value());
        }
        return whole;
    }

    private static void give(Keyed part, List<FormatKey> keys, String[] path, int at, String value) {
        String name = path[at].replaceFirst("\\[.*", "");
        FormatKey key =
                keys.stream().filter(k -> k.name().equals(name)).findFirst().orElseThrow();
        if (at == path.length - 1) {
            if (!value.equals("[]")) {
                part.put(name, value(key.single().orElseThrow(), value));
            }
        } else if (path[at].endsWith("]")) {
            int index = Integer.parseInt(path[at].replaceAll("\\D", ""));
            give(part.items(name).get(index), key.inner(), path, at + 1, value);
        } else {
            if (!part.has(name)) {
                part.put(name, new Keyed());
            }
            give(part.keyed(name), key.inner(), path, at + 1, value);
        }
    }

    private static Part value(Single single, String text) {
        boolean isWord = text.indexOf(' ') < 0; // such as none
        if (single.kind().isEmpty() || isWord) {
            return new Plain(text);
        }
        String symbol = text.substring(text.indexOf(' ') + 1);
        Unit unit = single.kind().get().units().stream()
                .filter(u -> u.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
        return new Quantity(new BigDecimal(text.substring(0, text.indexOf(' '))), unit, "");
    }

    /** The file in the units of the table of keys, which are metric. */
    static Keyed metric(Keyed file) {
        return rewritten(file, Format.TOP, Optional.empty());
    }

    /** The file in the units of the United States. */
    static Keyed us(Keyed file) {
        return rewritten(file, Format.TOP, Optional.of(US));
    }

    private static Keyed rewritten(Keyed part, List<FormatKey> keys, Optional<Map<Kind<?>, Unit>> units) {
        Keyed other = new Keyed();
        for (FormatKey key : keys) {
            Part value = part.values().get(key.name());
            if (value instanceof Keyed inner) {
                other.put(key.name(), rewritten(inner, key.inner(), units));
            } else if (value instanceof Several several) {
                Several items = new Several();
                several.keyed().forEach(item -> items.items().add(rewritten(item, key.inner(), units)));
                other.put(key.name(), items);
            } else if (value instanceof Quantity quantity) {
                Single single = key.single().orElseThrow();
                Unit unit = units.flatMap(
                                all -> Optional.ofNullable(all.get(single.kind().orElseThrow())))
                        .orElseGet(() -> Numbers.exampleUnit(single));
                other.put(key.name(), Numbers.in(unit, quantity));
            } else if (value != null) {
                other.put(key.name(), value);
            }
        }
        return other;
    }
}
