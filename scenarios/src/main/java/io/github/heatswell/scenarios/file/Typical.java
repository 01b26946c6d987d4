package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value that a file may omit because a typical one is known. It is common practice, not from any standard or maker;
 * give the real value if you know it.
 *
 * @param value the value as a file would write it, such as {@code 10 bar}, or the rule it follows: {@code 110 % of opens}
 * @param basis what it is typical of
 * @param range the ends between which usual values lie, as a file would write them; empty if that is not known
 * @param needs the keys of the same section that the value depends on, and with their section those of others
 * @param rule makes the value from what else the section says; gives nothing where there is no usual value
 */
record Typical(
        String value,
        String basis,
        List<String> range,
        List<String> needs,
        Function<Map<String, String>, Optional<String>> rule) {

    /** The same value always. */
    static Typical of(String value, String basis) {
        return new Typical(value, basis, List.of(), List.of(), given -> Optional.of(value));
    }

    /** The same, which follows from other keys of the section. */
    Typical from(Function<Map<String, String>, Optional<String>> derivation, String... keys) {
        return new Typical(value, basis, range, List.of(keys), derivation);
    }

    /** The same with a range of usual values, by our own judgement. */
    Typical between(String low, String high) {
        return new Typical(value, basis, List.of(low, high), needs, rule);
    }

    /** The value as a file would write it, given the rest of the section; empty if there is no usual one. */
    Optional<String> text(Map<String, String> given) {
        return rule.apply(given);
    }

    /** The usual make of a tank, from what is known of it. All values are sound texts of their fields. */
    static final class Tank {

        /** Height over diameter of a storage tank (-). */
        private static final double SLENDERNESS = 3;
        /** Diameter over wall thickness (-). */
        private static final Map<String, Double> THINNESS =
                Map.of("steel", 200.0, "stainless-steel", 350.0, "copper", 250.0);
        /** No sheet is thinner (mm). */
        private static final double THINNEST_WALL = 0.5;
        /** Standing loss (W/K) of an insulated tank without a flue, of 200 L. */
        private static final double LOSS = 2;
        /**
         * The same with a gas flue through it, whose draught carries heat off also between burns. It is 10.3 Btu/h/degF for 40
         * US gallons (5.4 W/K for 151 L) with a burner of 40 000 Btu/h, energy factor 0.60 and recovery efficiency 0.78, by
         * the equation of the Home Energy Saver documentation (Lawrence Berkeley National Laboratory), after US DOE (1993).
         */
        private static final double LOSS_WITH_FLUE = 6.5;
        /** No tank may lose more (W/K). */
        private static final double MAX_LOSS = 100;

        /** What heats the tank stands in another section. */
        static final String ENERGY = NamedValue.ENERGY.field();

        private Tank() {}

        /** The usual marking of the country, which the unit of the volume tells. */
        static Optional<String> workingPressure(Map<String, String> given) {
            return Optional.of(
                    UnitSystem.ofMost(QuantityReader.units(given.get("volume"))) == UnitSystem.US
                            ? "150 psi"
                            : "10 bar");
        }

        static Optional<String> diameter(Map<String, String> given) {
            double metres = Math.cbrt(4 * volume(given) / (Math.PI * SLENDERNESS));
            return Optional.of(10 * Math.round(LengthUnit.MILLIMETRE.fromSi(metres) / 10) + " mm");
        }

        static Optional<String> wall(Map<String, String> given) {
            Double thinness = THINNESS.get(given.get("material").toLowerCase(Locale.ROOT));
            if (thinness == null) {
                return Optional.empty();
            }
            Amount<LengthUnit> diameter = QuantityReader.read(given.get("diameter"), Kind.LENGTH);
            double millimetres = LengthUnit.MILLIMETRE.fromSi(diameter.unit().toSi(diameter.value())) / thinness;
            return Optional.of(Decimals.significant(Math.round(10 * Math.max(millimetres, THINNEST_WALL)) / 10.0, 6)
                    + " mm");
        }

        static Optional<String> standingLoss(Map<String, String> given) {
            double at200 = "gas".equalsIgnoreCase(given.get(ENERGY)) ? LOSS_WITH_FLUE : LOSS;
            double loss = Math.min(MAX_LOSS, at200 * Math.pow(volume(given) / 0.2, 2.0 / 3));
            return Optional.of(Decimals.significant(loss, 2) + " W/K");
        }

        /** Whether the water is divided into layers, which alone need a height. */
        static boolean layered(Map<String, String> given) {
            return !List.of("", "1").contains(given.getOrDefault("layers", ""));
        }

        static Optional<String> height(Map<String, String> given) {
            if (!given.containsKey("diameter")) {
                return Optional.empty();
            }
            Amount<LengthUnit> diameter = QuantityReader.read(given.get("diameter"), Kind.LENGTH);
            double metres = diameter.unit().toSi(diameter.value());
            double height = 4 * volume(given) / (Math.PI * metres * metres);
            return Optional.of(10 * Math.round(LengthUnit.MILLIMETRE.fromSi(height) / 10) + " mm");
        }

        private static double volume(Map<String, String> given) {
            Amount<VolumeUnit> volume = QuantityReader.read(given.get("volume"), Kind.VOLUME);
            return volume.unit().toSi(volume.value());
        }
    }

    /** The usual pressures of a relief valve, from its set pressure. */
    static final class Relief {

        /** Digits of a value that is the same in every unit: only words round it. */
        private static final int EXACT = 12;

        /** How far below its opening temperature a combined valve closes again (K). */
        private static final double TEMPERATURE_BLOWDOWN = 11;

        /** The lowest temperature (K) at which a combined valve may close again. */
        private static final double MIN_RESEATS_AT = 313.15;
        /** The highest pressure of full lift (Pa, gauge). */
        private static final double MAX_FULL_LIFT = 27.5e5;

        private Relief() {}

        /** A share of the set pressure, in the unit it is written in; of a gauge pressure only, since air is no part of it. */
        static Optional<String> share(String setPressure, double share) {
            Pressure set = QuantityReader.pressure(setPressure);
            if (set.reference() == Pressure.Reference.ABSOLUTE) {
                return Optional.empty();
            }
            PressureUnit unit =
                    setPressure.toLowerCase(Locale.ROOT).contains("psi") ? PressureUnit.PSI : PressureUnit.BAR;
            double part = Math.min(share * set.value(), MAX_FULL_LIFT);
            return Optional.of(Decimals.significant(unit.fromSi(part), EXACT) + " " + unit.symbol());
        }

        /** The usual temperature at which a combined valve closes again, in the unit the opening temperature is written in. */
        static Optional<String> reseatsAt(String opensAt) {
            Amount<TemperatureUnit> setPressure = QuantityReader.read(opensAt, Kind.TEMPERATURE);
            TemperatureUnit unit = setPressure.unit();
            double reseatPressure = Math.max(MIN_RESEATS_AT, unit.toSi(setPressure.value()) - TEMPERATURE_BLOWDOWN);
            return Optional.of(Decimals.significant(unit.fromSi(reseatPressure), EXACT) + " " + unit.symbol());
        }
    }

    /** The usual sampling of a run, from its length. */
    static final class Run {

        /** Runs above this length (s) are sampled once an hour. */
        private static final double LONG = 60 * 86_400.0;

        private Run() {}

        static Optional<String> sample(String duration) {
            Amount<DurationUnit> length = QuantityReader.read(duration, Kind.DURATION);
            double seconds = length.unit().toSi(length.value());
            if (seconds < 60) {
                return Optional.of(duration);
            }
            return Optional.of(seconds > LONG ? "1 h" : "1 min");
        }
    }
}
