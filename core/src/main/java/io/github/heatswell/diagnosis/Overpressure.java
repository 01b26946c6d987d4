package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Tank;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A reading above what the plates of relief valve and tank allow. It counts whatever cause fits the readings. Immutable.
 *
 * @param level what follows from it
 * @param plate whose plate it exceeds
 * @param reading the highest reading (Pa, gauge)
 * @param marked what the plate says, as the gauge would show it (Pa, gauge)
 */
public record Overpressure(Level level, Plate plate, double reading, double marked) implements BeyondLimit {

    /** What an ordinary gauge is off at most (Pa): 2.5 % of a scale of 16 bar; own choice. */
    private static final double GAUGE_ERROR = 0.4e5;
    /** The same beyond that scale, as a share of the reading (-). */
    private static final double GAUGE_SHARE = 0.025;
    /** A sound valve opens this close to its set pressure (share of it): ASME VIII, from memory. */
    private static final double OPENS_WITHIN = 0.03;
    /** A T&amp;P valve is fully open this far above its set pressure (share of it): ASME and ANSI Z21.22, from memory. */
    private static final double FULL_OF_GUARD = 0.10;
    /** An expansion valve or safety group passes its full flow this far above its set pressure (share): EN 1487 to EN 1491. */
    private static final double FULL_OF_EXPANSION = 0.20;
    /** A reading this far above a plate (share of it) is none that the gauge's dial or the rounding of a page tells from it; own choice. */
    private static final double SHOWS = 0.005;
    /** Between readings so close (s) no heater lets the pressure rise past a plate and fall again; our own judgement. */
    private static final double AT_ONCE = 5;
    /** Neighbours of a lone reading differ by no more than this share of its height above them (-); own choice. */
    private static final double GOES_ON = 0.25;

    /**
     * Checks that level and plate are there.
     *
     * @param level what follows from it
     * @param plate whose plate it exceeds
     * @param reading the highest reading (Pa, gauge)
     * @param marked what the plate says, as the gauge would show it (Pa, gauge)
     */
    public Overpressure {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(plate, "plate");
    }

    /** What a reading above a plate means. */
    public enum Level {
        /** Above a plate, but no more than a sound valve may open late and an ordinary gauge may be off. */
        WITHIN_ERROR,
        /** Above the set pressure of a relief valve, but no more than it may take to open fully. */
        ABOVE_SET,
        /**
         * Above all that a sound expansion valve and an honest gauge leave, where the relief valve that guards the tank is set higher
         * and has not been passed.
         */
        GUARDED,
        /** Above all that a sound valve and an honest gauge leave, in one reading that its neighbours do not bear out. */
        LONE_READING,
        /** Above all that a sound valve and an honest gauge leave. */
        HAZARD
    }

    /** Whose plate a reading exceeds. */
    public enum Plate {
        /** The set pressure of the relief valve that opens first. */
        RELIEF_VALVE,
        /** The rated working pressure of the tank. */
        TANK
    }

    /**
     * Judges readings by the plates.
     *
     * @param house the house as described
     * @param log the log of the gauge, whole
     * @param spots the readings on site
     * @return the gravest, or empty if no reading is above a plate
     */
    public static Optional<Overpressure> of(HotWaterSystem house, Optional<PressureLog> log, SpotReadings spots) {
        return Stream.concat(
                        relief(house).flatMap(limit -> limit.judge(log, spots)),
                        tank(house).stream().flatMap(limit -> limit.judge(log, spots)))
                .max(Comparator.comparing(Overpressure::level));
    }

    /**
     * The reading from which on it is a hazard, if its neighbours bear it out.
     *
     * @param house the house as described
     * @return the least such reading (Pa, gauge); empty for a house without relief valve whose tank has no plate
     */
    public static OptionalDouble hazardFrom(HotWaterSystem house) {
        return Stream.concat(relief(house), tank(house).stream())
                .filter(limit -> limit.beyond() == Level.HAZARD)
                .mapToDouble(Limits::grave)
                .min();
    }

    @Override
    public boolean isHazard() {
        return level == Level.HAZARD;
    }

    @Override
    public boolean standsAlone() {
        return level == Level.LONE_READING;
    }

    /**
     * When the reading was taken, where it may be a slip of the pen: in a list by hand it alone lies above the plate, with readings
     * before and after it.
     *
     * @param log the log it stands in
     * @return the time (s, in the time of the log); empty where others bear it out, or a logger wrote it
     */
    public OptionalDouble maySlipAt(PressureLog log) {
        int[] above = IntStream.range(0, log.count())
                .filter(i -> log.gauge(i) > (1 + SHOWS) * marked)
                .toArray();
        return log.tellsItsScatter() || above.length != 1 || above[0] == 0 || above[0] == log.count() - 1
                ? OptionalDouble.empty()
                : OptionalDouble.of(log.time(above[0]));
    }

    @Override
    public String inWords() {
        return plate == Plate.TANK
                ? "the gauge read more than the tank is rated for"
                : "the gauge read more than the relief valve's plate allows";
    }

    /** Whether another relief valve than this one, which is to discharge the expansion, guards the tank. */
    static boolean isGuardedWithout(HotWaterSystem house, ReliefValve valve) {
        return valve.kind().takesExpansion() && guard(house).isPresent();
    }

    private static Optional<ReliefValve> guard(HotWaterSystem house) {
        return house.reliefValves().stream()
                .filter(valve -> !valve.kind().takesExpansion())
                .min(Comparator.comparingDouble(valve -> set(house, valve)));
    }

    private static Optional<ReliefValve> first(HotWaterSystem house) {
        return house.reliefValves().stream().min(Comparator.comparingDouble(valve -> set(house, valve)));
    }

    private static double set(HotWaterSystem house, ReliefValve valve) {
        return house.atDrainCock(valve.setPressure(), valve.height())
                        .gauge(house.site().atmosphere())
                - house.head(house.gaugeHeight());
    }

    /** Of the valve that opens first; and where that one only discharges the expansion, of the one that guards the tank. */
    private static Stream<Limits> relief(HotWaterSystem house) {
        Optional<ReliefValve> first = first(house);
        return Stream.concat(first.stream(), guard(house).stream()).distinct().map(valve -> limits(house, valve));
    }

    private static Limits limits(HotWaterSystem house, ReliefValve valve) {
        double set = set(house, valve);
        double air = house.site().atmosphere();
        double usual = valve.kind().takesExpansion() ? FULL_OF_EXPANSION : FULL_OF_GUARD;
        double full = valve.fullLiftPressure().gauge(air) - valve.setPressure().gauge(air);
        return new Limits(
                Plate.RELIEF_VALVE,
                set,
                beyondGauge(set * (1 + OPENS_WITHIN)),
                beyondGauge(set + Math.max(usual * set, full)),
                isGuardedWithout(house, valve) ? Level.GUARDED : Level.HAZARD);
    }

    /** A valve on a tank of the same rating may open as late as its tolerance lets it; a higher one excuses nothing. */
    private static Optional<Limits> tank(HotWaterSystem house) {
        return Optional.of(house.tank()).filter(Tank::workingPressureGiven).map(tank -> {
            double rated = tank.workingPressure().gauge(house.site().atmosphere()) - house.head(house.gaugeHeight());
            double opens = first(house).map(valve -> set(house, valve)).orElse(0.0);
            double excused = opens <= rated ? Math.max(rated, opens * (1 + OPENS_WITHIN)) : rated;
            return new Limits(Plate.TANK, rated, beyondGauge(excused), beyondGauge(excused), Level.HAZARD);
        });
    }

    private static double beyondGauge(double pressure) {
        return pressure + Math.max(GAUGE_ERROR, GAUGE_SHARE * pressure);
    }

    /**
     * What a plate says (Pa, gauge), from which reading on the gauge's error does not explain it, and from which on it is graver, and how
     * much.
     */
    private record Limits(Plate plate, double marked, double noted, double grave, Level beyond) {

        Stream<Overpressure> judge(Optional<PressureLog> log, SpotReadings spots) {
            return Stream.concat(
                    log.stream().flatMap(this::inLog),
                    spots.all().entrySet().stream()
                            .filter(spot -> spot.getKey().byLoggedGauge())
                            .map(spot -> spot.getValue().value())
                            .flatMap(value -> ofReading(value, false)));
        }

        private Stream<Overpressure> inLog(PressureLog log) {
            List<Integer> above = IntStream.range(0, log.count())
                    .filter(i -> log.gauge(i) > grave)
                    .boxed()
                    .toList();
            boolean wild = log.interval() <= AT_ONCE && above.size() <= Misfit.WILD * log.count();
            boolean lone = (above.size() == 1 || wild) && above.stream().allMatch(i -> standsAlone(log, i));
            return ofReading(log.highest(), lone);
        }

        /** The course goes on about the reading, below the plate, as though it had not been. */
        private boolean standsAlone(PressureLog log, int i) {
            if (i == 0 || i == log.count() - 1) {
                return false;
            }
            double before = log.gauge(i - 1);
            double after = log.gauge(i + 1);
            double higher = Math.max(before, after);
            return higher < marked && Math.abs(after - before) < GOES_ON * (log.gauge(i) - higher);
        }

        private Stream<Overpressure> ofReading(double reading, boolean lone) {
            if (!(reading > (1 + SHOWS) * marked)) {
                return Stream.empty();
            }
            return Stream.of(new Overpressure(level(reading, lone), plate, reading, marked));
        }

        private Level level(double reading, boolean lone) {
            if (reading <= grave) {
                return reading <= noted ? Level.WITHIN_ERROR : Level.ABOVE_SET;
            }
            return lone ? Level.LONE_READING : beyond;
        }
    }
}
