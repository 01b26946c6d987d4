package io.github.heatswell.diagnosis;

import io.github.heatswell.system.Element;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.Saturation;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Water hotter than the thermostat or the mixing valve should allow. It counts whatever cause fits the readings. Immutable.
 *
 * @param level what follows from it
 * @param exceeded which of the two failed to hold it
 * @param reading the hottest reading (K)
 * @param set what that is set to (K)
 * @param boils whether such water flashes to steam where it gets out
 */
public record Overheat(Level level, Device exceeded, double reading, double set, boolean boils) implements BeyondLimit {

    /**
     * Short draws may leave the water at the top this much (K) hotter than the thermostat is set: 30 degF, which ANSI Z21.10.1 allows,
     * quoted second-hand by Plumbing Engineer, June 2011.
     */
    private static final double STACKS = 30 / 1.8;
    /** A dial is off by as much (K): our own judgement. */
    private static final double DIAL = 5;
    /** A sound mixing valve is off its setting by no more than this (K): our own judgement. */
    private static final double MIXES_WITHIN = 10;
    /** So many standard uncertainties a reading may be off. */
    private static final double SURE = 2;
    /** Water of this temperature (K) or of the boiling point of the place boils in the open, as far as thermometers tell. */
    private static final double BOILING = TemperatureUnit.CELSIUS.toSi(99);
    /** Neighbours of a lone reading differ by no more than this share of its height above them (-); own choice. */
    private static final double GOES_ON = 0.25;

    /**
     * Checks that level and device are there.
     *
     * @param level what follows from it
     * @param exceeded which of the two failed to hold it
     * @param reading the hottest reading (K)
     * @param set what that is set to (K)
     * @param boils whether such water flashes to steam where it gets out
     */
    public Overheat {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(exceeded, "exceeded");
    }

    /** What a reading so hot means. */
    public enum Level {
        /** Hotter than the thermostat is set to, but by no more than short draws may leave at the top. */
        ABOVE_SET,
        /** Hotter than it may be, in one reading of a log that its neighbours do not bear out. */
        LONE_READING,
        /** Hotter than it may be. */
        HAZARD
    }

    /** What keeps water from getting too hot. */
    public enum Device {
        /** The thermostat of the heater. */
        THERMOSTAT,
        /** The mixing valve behind the tank. */
        MIXING_VALVE
    }

    /**
     * Judges readings by what is set.
     *
     * @param house the house as described
     * @param log the log, whole, whose temperatures are those of the tank
     * @param spots the readings on site, one of which may be of a hot tap
     * @return the gravest, that of the tank before that of a mixing valve; empty if no water was hotter than it may be
     */
    public static Optional<Overheat> of(HotWaterSystem house, Optional<PressureLog> log, SpotReadings spots) {
        double open = Math.min(BOILING, Saturation.temperature(house.site().atmosphere()));
        double set = house.heater().elements().stream()
                .mapToDouble(Element::setPoint)
                .max()
                .orElseThrow();
        double guarded = DoubleStream.concat(
                        house.heater().cutOut().stream(),
                        house.reliefValves().stream().flatMapToDouble(valve -> valve.setTemperature().stream()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        Limit tank = new Limit(Device.THERMOSTAT, set, Math.max(set, Math.min(set + STACKS, guarded)), open);
        OptionalDouble mixed = house.heater().mixedTo();
        Optional<SpotReading> tap = Optional.ofNullable(spots.all().get(SiteCheck.HOT_TAP));
        return Stream.of(
                        tap.flatMap(read -> tank.judge(read.value(), read.uncertainty(), false)),
                        log.flatMap(tank::inLog),
                        tap.filter(read -> mixed.isPresent())
                                .flatMap(read -> new Limit(
                                                Device.MIXING_VALVE,
                                                mixed.getAsDouble(),
                                                mixed.getAsDouble() + MIXES_WITHIN,
                                                open)
                                        .judge(read.value(), read.uncertainty(), false)))
                .flatMap(Optional::stream)
                .reduce((first, next) -> next.level.compareTo(first.level) > 0 ? next : first);
    }

    @Override
    public boolean isHazard() {
        return level == Level.HAZARD;
    }

    @Override
    public boolean standsAlone() {
        return level == Level.LONE_READING;
    }

    @Override
    public String inWords() {
        return exceeded == Device.THERMOSTAT
                ? "the water was far hotter than the thermostat setting"
                : "the water at the tap was far hotter than the mixing valve setting";
    }

    /** What is set (K), the hottest that a sound device may let water get (K), and where it boils in the open (K). */
    private record Limit(Device device, double set, double hottest, double open) {

        Optional<Overheat> judge(double reading, double uncertainty, boolean lone) {
            double least = reading - SURE * uncertainty;
            boolean boils = reading >= open;
            boolean grave = least > hottest || boils && least > set;
            return grave || least > set + DIAL && !lone
                    ? Optional.of(new Overheat(
                            !grave ? Level.ABOVE_SET : lone ? Level.LONE_READING : Level.HAZARD,
                            device,
                            reading,
                            set,
                            boils))
                    : Optional.empty();
        }

        Optional<Overheat> inLog(PressureLog log) {
            int[] known = IntStream.range(0, log.count())
                    .filter(i -> log.temperature(i).isPresent())
                    .toArray();
            double[] kelvin = IntStream.of(known)
                    .mapToDouble(i -> log.temperature(i).orElseThrow())
                    .toArray();
            return IntStream.range(0, kelvin.length)
                    .mapToObj(i -> judge(kelvin[i], SiteCheck.HOT_TAP.usualUncertainty(), standsAlone(kelvin, i)))
                    .flatMap(Optional::stream)
                    .reduce((one, other) -> isGraver(other, one) ? other : one);
        }

        private static boolean isGraver(Overheat one, Overheat other) {
            int levels = one.level.compareTo(other.level);
            return levels > 0 || levels == 0 && one.reading > other.reading;
        }

        /** The course goes on about the reading, as though it had not been. */
        private boolean standsAlone(double[] kelvin, int i) {
            if (i == 0 || i == kelvin.length - 1) {
                return false;
            }
            double higher = Math.max(kelvin[i - 1], kelvin[i + 1]);
            return higher < hottest && Math.abs(kelvin[i + 1] - kelvin[i - 1]) < GOES_ON * (kelvin[i] - higher);
        }
    }
}
