package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value that a file may omit because a typical one is known. It is common practice, not from any standard or maker;
 * give the real value if you know it.
 */
final class Typical {

    private static final List<Typical> ALL = List.of(
            fixed("site.altitude", "0 m", "sea level; gauge pressures hardly depend on it"),
            fixed("site.room", "20 degC", "a heated room"),
            fixed("supply.water", "10 degC", "mains water for most of the year in a temperate climate"),
            fixed("supply.reducing-valve.lock-up-rise", "0.3 bar", "a small valve with an undamaged seat"),
            fixed("supply.reducing-valve.droop", "0.7 bar", "a small valve at its rated flow"),
            fixed("supply.reducing-valve.rated-flow", "20 L/min", "a valve for one household"),
            derived(
                            "tank.diameter",
                            "from the volume: height three times the diameter",
                            "usual proportions of a storage tank, to 10 mm")
                    .from(Tank::diameter, "volume"),
            derived(
                            "tank.wall",
                            "diameter over 200 (steel), 350 (stainless-steel) or 250 (copper)",
                            "usual sheet thickness for 6 to 10 bar, to 0.1 mm; no usual value for other materials")
                    .from(Tank::wall, "diameter", "material"),
            derived(
                            "tank.standing-loss",
                            "2 W/K at 200 L, proportional to the surface",
                            "a tank with foamed insulation")
                    .from(Tank::standingLoss, "volume"),
            fixed("tank.working-pressure", "10 bar", "a common marking, close to 150 psi; read the plate"),
            derived(
                            "tank.height",
                            "volume divided by cross-section; only with layers",
                            "water fills the shell; rounded to 10 mm; no usual value for a rigid tank")
                    .from(Tank::height, "volume", "diameter", "layers"),
            derived(
                            "heater.recovery-efficiency",
                            "78 % (gas), 98 % (electric)",
                            "a burner under the tank; an immersed element")
                    .from(given -> energyEfficiency(given.get("energy")), "energy"),
            fixed("heater.differential", "5 K", "a thermostat on the tank"),
            fixed("heater.upper.differential", "5 K", "a thermostat on the tank"),
            fixed("piping", "[]", "no piping: pipes would only soften the system, so pressures err on the high side"),
            fixed("relief", "[]", "no relief valve: none is described"),
            fixed("relief.name", "relief valve", "what it is"),
            derived("relief.full-lift", "110 % of opens", "full lift at 10 % above the set pressure")
                    .from(given -> Relief.share(given.get("opens"), 1.1), "opens"),
            derived("relief.reseats", "80 % of opens", "a blowdown of 20 %; no usual value if opens is absolute")
                    .from(given -> Relief.share(given.get("opens"), 0.8), "opens"),
            fixed("relief.full-flow", "20 L/min", "far above the expansion flow, so it hardly matters"),
            fixed("relief.character", "modulating", "small spring-loaded valves dribble before they lift"),
            derived(
                            "relief.reseats-at",
                            "11 K below opens-at, but not below 40 degC; none without opens-at",
                            "a T&P valve: 99 and 88 degC")
                    .from(given -> Relief.reseatsAt(given.get("opens-at")), "opens-at"),
            derived("relief.location", "tank-top with opens-at, else branch", "its probe must be in the hottest water")
                    .from(given -> Optional.of("tank-top"), "opens-at"),
            fixed("vessel.acceptance", "60 %", "a diaphragm in a small vessel"),
            fixed("run.duration", "24 h", "the first heat-up and some cycles"),
            derived(
                            "run.sample",
                            "1 min; 1 h in runs above 60 d",
                            "fine enough for the charts; never longer than" + " the run")
                    .from(given -> Run.sample(given.get("duration")), "duration"));

    private final String field;
    private final String value;
    private final String basis;
    private final List<String> needs;
    private final Function<Map<String, String>, Optional<String>> rule;

    private Typical(
            String field,
            String value,
            String basis,
            List<String> needs,
            Function<Map<String, String>, Optional<String>> rule) {
        this.field = field;
        this.value = value;
        this.basis = basis;
        this.needs = needs;
        this.rule = rule;
    }

    /**
     * All values that a file may leave out.
     *
     * @return the table, in the order of the format
     */
    static List<Typical> all() {
        return ALL;
    }

    /** The typical value of a field, if there is one. */
    static Optional<Typical> of(String field) {
        return ALL.stream().filter(typical -> typical.field.equals(field)).findFirst();
    }

    /**
     * The field.
     *
     * @return section and key, such as {@code relief.full-lift}
     */
    String field() {
        return field;
    }

    /**
     * The value, as a file would write it, or the rule it follows.
     *
     * @return such as {@code 10 bar} or {@code 110 % of opens}
     */
    String value() {
        return value;
    }

    /**
     * Why this value.
     *
     * @return what it is typical of
     */
    String basis() {
        return basis;
    }

    /** The keys of the same section that the value depends on. */
    List<String> needs() {
        return needs;
    }

    /** The value as a file would write it, given the rest of the section; empty if there is no usual one. */
    Optional<String> text(Map<String, String> given) {
        return rule.apply(given);
    }

    private static Typical fixed(String field, String value, String basis) {
        return new Typical(field, value, basis, List.of(), given -> Optional.of(value));
    }

    private static Typical derived(String field, String value, String basis) {
        return new Typical(field, value, basis, List.of(), given -> Optional.empty());
    }

    private Typical from(Function<Map<String, String>, Optional<String>> derivation, String... keys) {
        return new Typical(field, value, basis, List.of(keys), derivation);
    }

    private static Optional<String> energyEfficiency(String energy) {
        return Optional.of(energy.equalsIgnoreCase("gas") ? "78 %" : "98 %");
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
        /** Standing loss (W/K) at {@link #REFERENCE_VOLUME}. */
        private static final double REFERENCE_LOSS = 2;
        /** Volume (m3) to which {@link #REFERENCE_LOSS} belongs. */
        private static final double REFERENCE_VOLUME = 0.2;

        private Tank() {}

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
            double loss = REFERENCE_LOSS * Math.pow(volume(given) / REFERENCE_VOLUME, 2.0 / 3);
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
            String rounded = Decimals.significant(unit.fromSi(part), 4);
            boolean beyond = unit.toSi(Double.parseDouble(rounded)) > MAX_FULL_LIFT;
            return Optional.of((beyond ? Decimals.significant(unit.fromSi(part), 12) : rounded) + " " + unit.symbol());
        }

        /** The usual temperature at which a combined valve closes again, in the unit the opening temperature is written in. */
        static Optional<String> reseatsAt(String opensAt) {
            Amount<TemperatureUnit> setPressure = QuantityReader.read(opensAt, Kind.TEMPERATURE);
            TemperatureUnit unit = setPressure.unit();
            double reseatPressure = Math.max(MIN_RESEATS_AT, unit.toSi(setPressure.value()) - TEMPERATURE_BLOWDOWN);
            return Optional.of(Decimals.significant(unit.fromSi(reseatPressure), 5) + " " + unit.symbol());
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
