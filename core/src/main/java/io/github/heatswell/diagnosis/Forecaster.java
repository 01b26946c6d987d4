package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.DoubleStream;

/** Simulates a house for as long as there are readings, and predicts each of them. */
final class Forecaster {

    private static final double FINEST = 1;
    private static final double MAX_SAMPLES = 2_400;
    /** So many samples between two readings, for an opening valve lets the pressure jump. */
    private static final double OVERSAMPLED = 4;
    /** Samples for readings by hand are no further apart than this (s): a peak seen once must not fall between two of them. */
    private static final double COARSEST = 15;

    /** So many times the steepest change between two readings of a run no pressure rises and falls again; our own judgement. */
    private static final double LONE = 3;

    /**
     * The highest reading is explained by a forecast as high within so much time (s): its height counts, and hours of heating may reach
     * it minutes apart. Own judgement.
     */
    private static final double PEAK_APART = 600;

    /** A reading missed by so many times the error of gauges is explained by nothing that is called sure; our own judgement. */
    private static final double FAR = 3;
    /** The neighbours of a slip differ by no more than this share of how far it stands out (-); our own judgement. */
    private static final double GOES_ON = 0.25;

    /** Between readings by hand so close (s) somebody stands by; our own judgement. */
    private static final double WATCHED = 1_800;

    /** A time may be off by so many standard deviations before a reading counts as missed. */
    private static final double TWO_DEVIATIONS = 2;

    private static final double MIN_RUN = 60;
    /** A run is made longer in steps of so much (s), to serve for several starts. */
    private static final double EARLIER = 1_800;

    private final PressureLog log;
    private final Set<SiteCheck> checks;
    private final Balances.Count count;
    private final Recent<Run, Course> runs;
    private HotWaterSystem lastHouse;
    private double lastStart;
    private Course last;
    private HotWaterSystem lastRead;
    private Map<SiteCheck, Double> lastSpots;
    /** What {@link #last} shows at the readings for the start asked last: other instruments need no other. */
    private Forecast atReadings;

    private double[][] choices;
    private Course lastAtReadings;
    private double lastAtReadingsStart;

    /** A forecaster for a log, which may be null, and readings on site. */
    Forecaster(PressureLog log, Set<SiteCheck> checks, Balances.Count count) {
        this(log, checks, count, new Recent<>());
    }

    private Forecaster(PressureLog log, Set<SiteCheck> checks, Balances.Count count, Recent<Run, Course> runs) {
        this.log = log;
        this.checks = checks;
        this.count = count;
        this.runs = runs;
    }

    /** One that forecasts the same and repeats no run of this one. */
    Forecaster another() {
        return new Forecaster(log, checks, count, runs);
    }

    /** What a course depends on: a house, and when its run begins, at a time (s) of the log. */
    private record Run(HotWaterSystem house, double earliest) {}

    /**
     * How a gauge shows a pressure, and a thermometer the water.
     *
     * @param zero what the gauge shows where there is no pressure (Pa)
     * @param scale what it shows of a pressure besides (-)
     * @param warmer how much more than the water the thermometer shows (K)
     */
    record Instruments(double zero, double scale, double warmer) {

        /** Instruments without error. */
        static final Instruments PERFECT = new Instruments(0, 1, 0);

        double shows(double pressure) {
            return zero + scale * pressure;
        }

        /** Pressures as the gauge shows them. */
        double[] shows(double[] pressures) {
            double[] shown = new double[pressures.length];
            for (int i = 0; i < shown.length; i++) {
                shown[i] = shows(pressures[i]);
            }
            return shown;
        }

        double pressure(double shown) {
            return (shown - zero) / scale;
        }

        /** Temperatures (K) as the thermometer shows them. */
        double[] warmed(double[] kelvin) {
            return warmer == 0
                    ? kelvin
                    : Arrays.stream(kelvin).map(k -> k + warmer).toArray();
        }
    }

    /** The samples of one run. */
    private record Course(
            double step,
            double[] gauge,
            double[] bottom,
            double[] top,
            Trace.Regime[] regimes,
            int count,
            SeenRun seen,
            RunSummary summary) {

        double between(double[] values, double time) {
            double place = Math.max(0, time / step);
            int before = (int) Math.min(place, count - 1.0);
            if (before >= count - 1) {
                return values[count - 1];
            }
            double share = Math.min(1, place - before);
            return values[before] + share * (values[before + 1] - values[before]);
        }

        /** How far a reading lies above (or, negative, below) all that the gauge shows around a time (Pa). */
        double beyond(double reading, double time, double around) {
            DoubleSummaryStatistics shown =
                    samples(time - around, time + around).summaryStatistics();
            openings().subMap(time - around, true, time + around, true).values().forEach(shown::accept);
            return reading > shown.getMax() ? reading - shown.getMax() : Math.min(0, reading - shown.getMin());
        }

        /**
         * The pressures that readings by hand may be of, some for each; none of a logger. Where a valve opens within the minute to which a clock
         * is read, those are all that the gauge shows within it: nobody knows whether it was read before or after.
         */
        double[][] choices(PressureLog log, double start) {
            TreeMap<Double, Double> openings = log.tellsItsScatter() ? new TreeMap<>() : openings();
            double[][] choices = new double[openings.isEmpty() ? 0 : log.count()][];
            for (int i = 0; i < choices.length; i++) {
                double time = log.time(i) - start;
                double from = time - PressureLog.BY_HAND;
                double until = time + PressureLog.BY_HAND;
                DoubleStream near = openings.subMap(from, true, until, true).values().stream()
                        .mapToDouble(opening -> opening);
                choices[i] = openings.subMap(from, true, until, true).isEmpty()
                        ? new double[] {between(gauge, time)}
                        : DoubleStream.concat(near, samples(from, until)).toArray();
            }
            return choices;
        }

        /** What the gauge shows from one time to another, sample by sample. */
        private DoubleStream samples(double from, double until) {
            int first = (int) Math.max(0, Math.min(Math.floor(from / step), count - 1.0));
            int last = (int) Math.max(0, Math.min(Math.ceil(until / step), count - 1.0));
            return Arrays.stream(gauge, first, last + 1);
        }

        /** When valves open and what the gauge shows then: a stiff house climbs to its valve and falls at once, between two samples. */
        private TreeMap<Double, Double> openings() {
            HotWaterSystem house = summary.system();
            double offset = house.site().atmosphere() + house.head(house.gaugeHeight());
            TreeMap<Double, Double> openings = new TreeMap<>();
            for (Event event : summary.events()) {
                if (event.kind() == Event.Kind.RELIEF_OPENED) {
                    openings.merge(event.time(), event.pressureAbsolute() - offset, Math::max);
                }
            }
            return openings;
        }

        Trace.Regime regime(double time) {
            return regimes[(int) Math.max(0, Math.min(time / step, count - 1.0))];
        }

        /** What instruments without error show at the times of a log if the run starts at one of them (s); no readings on site. */
        Forecast at(PressureLog log, double start) {
            int readings = log.count();
            double[] shown = new double[readings];
            // a log without temperatures asks for none, and it is searched thousands of times
            double[] bottoms = new double[log.hasTemperature() ? readings : 0];
            double[] tops = new double[bottoms.length];
            for (int i = 0; i < readings; i++) {
                double time = log.time(i) - start;
                shown[i] = between(gauge, time);
                if (bottoms.length > 0) {
                    bottoms[i] = between(bottom, time);
                    tops[i] = between(top, time);
                }
            }
            return new Forecast(
                    shown,
                    bottoms,
                    tops,
                    i -> log.time(i) < start ? Trace.Regime.FED : regime(log.time(i) - start),
                    Forecaster.firstBurn(summary),
                    seen.residuals(log.sightings(), start),
                    Map.of());
        }
    }

    /**
     * Simulates.
     *
     * @param house the house
     * @param start the time of the log (s) at which the run starts
     * @param shown how the instruments err
     */
    Forecast of(HotWaterSystem house, double start, Instruments shown) {
        Map<SiteCheck, Double> spots = spots(house, shown);
        if (log == null) {
            return new Forecast(
                    new double[0],
                    new double[0],
                    new double[0],
                    i -> Trace.Regime.FED,
                    Double.NaN,
                    new double[0],
                    spots);
        }
        Course course = course(house, start);
        if (course != lastAtReadings || start != lastAtReadingsStart) {
            atReadings = course.at(log, start);
            choices = course.choices(log, start);
            lastAtReadings = course;
            lastAtReadingsStart = start;
        }
        Forecast real = atReadings;
        double[] gauge = shown.shows(real.gauge);
        for (int i = 0; i < choices.length; i++) {
            double read = log.gauge(i);
            gauge[i] = Arrays.stream(shown.shows(choices[i]))
                    .boxed()
                    .min(Comparator.comparingDouble(one -> Math.abs(one - read)))
                    .orElseThrow();
        }
        return new Forecast(
                gauge,
                shown.warmed(real.bottom),
                shown.warmed(real.top),
                real.regimes,
                real.firstBurn,
                real.seen,
                spots);
    }

    /** The readings on site; the gauge that was logged shows the pressures of the water too. */
    private Map<SiteCheck, Double> spots(HotWaterSystem house, Instruments shown) {
        if (checks.isEmpty()) {
            return Map.of();
        }
        if (!house.equals(lastRead)) {
            lastSpots = new Spots(house, count).read(checks);
            lastRead = house;
        }
        Map<SiteCheck, Double> spots = noSpots();
        spots.putAll(lastSpots);
        spots.replaceAll((check, value) -> check.byLoggedGauge() ? Double.valueOf(shown.shows(value)) : value);
        return spots;
    }

    /**
     * Readings of the log that a house does not show about their time, however its events fall between them: within one interval of
     * a logger, within two minutes of readings by hand, whose times are read off a clock.
     *
     * @param house the house
     * @param start the time of the log (s) at which the run starts
     * @param shown how the gauge shows the pressure
     */
    List<Misfit.Stray> strays(HotWaterSystem house, double start, Instruments shown) {
        Course course = course(house, start);
        double around =
                log.tellsItsScatter() ? log.interval() : Math.min(TWO_DEVIATIONS * PressureLog.BY_HAND, log.interval());
        double[] forecast = of(house, start, shown).gauge();
        double highest = highest(forecast);
        List<Misfit.Stray> strays = new ArrayList<>();
        for (int i = 0; i < log.count(); i++) {
            double time = log.time(i) - start;
            double pressure = shown.pressure(log.gauge(i));
            double allowed = Misfit.ASTRAY * log.weights().roughness(i) * log.uncertainty() / shown.scale();
            double beyond = course.beyond(pressure, time, around);
            if (Math.abs(beyond) > allowed && !isDroop(beyond, course, time)) {
                double missed = Math.abs(course.beyond(pressure, time, Math.max(around, PEAK_APART)));
                double gauge = Math.max(allowed, Circumstances.gaugeError(pressure));
                strays.add(new Misfit.Stray(
                        log.time(i),
                        log.gauge(i),
                        forecast[i],
                        log.gauge(i) == highest && missed > gauge,
                        missed > FAR * gauge && !isSlip(i)));
            }
        }
        return strays;
    }

    /**
     * How far (Pa, difference) the gauge shows more than valve and tank allow between two readings that are both below that, no more than
     * {@link #WATCHED} apart; 0 if it does not. A list of readings bounds a peak only loosely. But whoever reads every few minutes would
     * have seen or heard a valve that is passed by its full lift, as one that opened; so it counts like a reading missed by as much.
     *
     * @param house the house
     * @param start the time of the log (s) at which the run starts
     * @param shown how the gauge shows the pressure
     */
    double unseen(HotWaterSystem house, double start, Instruments shown) {
        Course course = course(house, start);
        double limit = Overpressure.hazardFrom(house).orElse(Double.POSITIVE_INFINITY);
        double unseen = 0;
        int next = 1;
        for (int i = 0; i < course.count; i++) {
            double time = start + i * course.step;
            while (next < log.count() - 1 && log.time(next) < time) {
                next++;
            }
            double beyond = shown.shows(course.gauge[i]) - limit;
            if (beyond > unseen
                    && time >= log.time(next - 1)
                    && time <= log.time(next)
                    && log.time(next) - log.time(next - 1) <= WATCHED
                    && Math.max(log.gauge(next - 1), log.gauge(next)) < limit) {
                unseen = beyond;
            }
        }
        return unseen;
    }

    /** Whether a gauge shows as little less than the supply's pressure as it does while a tap runs, though none was known to. */
    private static boolean isDroop(double beyond, Course course, double time) {
        return beyond < 0 && beyond > -2 * Target.DROOP && (time < 0 || course.regime(time) == Trace.Regime.FED);
    }

    /** Whether a logger went on after a reading as though it had not been. */
    private boolean isSlip(int i) {
        if (i == 0 || i == log.count() - 1 || !log.tellsItsScatter()) {
            return false;
        }
        double before = log.gauge(i - 1);
        double after = log.gauge(i + 1);
        double high = Math.max(before, after);
        double low = Math.min(before, after);
        double out = Math.max(log.gauge(i) - high, low - log.gauge(i));
        return high - low < GOES_ON * out;
    }

    /** The highest reading (Pa) that a house can have made: a lone one far above both beside it is a logger's wild value. */
    private double highest(double[] forecast) {
        double steepest = 0;
        for (int i = 1; i < forecast.length; i++) {
            steepest = Math.max(steepest, Math.abs(forecast[i] - forecast[i - 1]));
        }
        double lone = LONE * steepest + Misfit.ASTRAY * log.uncertainty();
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < log.count(); i++) {
            double before = log.gauge(Math.max(0, i - 1));
            double after = log.gauge(Math.min(log.count() - 1, i + 1));
            boolean wild = i > 0 && i < log.count() - 1 && log.gauge(i) - Math.max(before, after) > lone;
            highest = wild ? highest : Math.max(highest, log.gauge(i));
        }
        return highest;
    }

    /** What the gauge shows from the first reading of the log to the last, with the peaks at which valves open; nothing without a log. */
    HypothesisFit.Course course(HotWaterSystem house, double start, Instruments shown) {
        if (log == null) {
            return HypothesisFit.Course.NONE;
        }
        Course course = course(house, start);
        TreeMap<Double, Double> points = new TreeMap<>();
        for (int i = 0; i < course.count; i++) {
            points.put(start + i * course.step, course.gauge[i]);
        }
        course.openings().forEach((time, pressure) -> points.put(start + time, pressure));
        points.put(0.0, course.between(course.gauge, -start));
        points.put(log.end(), course.between(course.gauge, log.end() - start));
        NavigableMap<Double, Double> during = points.subMap(0.0, true, log.end(), true);
        return new HypothesisFit.Course(
                List.copyOf(during.keySet()),
                during.values().stream().map(shown::shows).toList());
    }

    /** One run serves every start of the heat-up that it is long enough for. */
    private Course course(HotWaterSystem house, double start) {
        if (house.equals(lastHouse) && start >= lastStart) {
            return last;
        }
        double earliest = Math.floor(Math.min(0, start) / EARLIER) * EARLIER;
        last = runs.get(new Run(house, earliest), run -> run(house, Math.max(MIN_RUN, log.lastSeen() - earliest)));
        lastHouse = house;
        lastStart = earliest;
        return last;
    }

    private Course run(HotWaterSystem house, double duration) {
        double apart = log.interval() / OVERSAMPLED;
        double coarsest = log.tellsItsScatter() ? apart : Math.min(COARSEST, apart);
        double step = Math.max(FINEST, Math.max(coarsest, duration / MAX_SAMPLES));
        double used = Math.rint(Math.min(step, duration) * 1e3) / 1e3;
        int most = (int) Math.ceil(duration / used) + 2;
        double[] gauge = new double[most];
        boolean asked = log.hasTemperature();
        double[] bottom = new double[asked ? most : 0];
        double[] top = new double[asked ? most : 0];
        Trace.Regime[] regimes = new Trace.Regime[most];
        boolean looked = !log.sightings().isEmpty();
        double[] discharged = new double[looked ? most : 0];
        boolean[] heating = new boolean[looked ? most : 0];
        Set<Channel> followed = EnumSet.of(Channel.GAUGE_READING);
        if (asked) {
            followed.addAll(EnumSet.of(Channel.WATER_BOTTOM, Channel.WATER_TOP));
        }
        if (looked) {
            followed.addAll(EnumSet.of(Channel.RELIEVED_TOTAL, Channel.HEATER_POWER));
        }
        int[] count = new int[1];
        RunSummary summary = Simulation.of(house, millis(duration)).sampledEvery(millis(used)).stream(
                followed, (time, values, regime) -> {
                    int i = count[0]++;
                    gauge[i] = values[Channel.GAUGE_READING.ordinal()];
                    if (asked) {
                        bottom[i] = values[Channel.WATER_BOTTOM.ordinal()];
                        top[i] = values[Channel.WATER_TOP.ordinal()];
                    }
                    regimes[i] = regime;
                    if (looked) {
                        discharged[i] = values[Channel.RELIEVED_TOTAL.ordinal()];
                        heating[i] = values[Channel.HEATER_POWER.ordinal()] > 0;
                    }
                });
        this.count.add(summary);
        SeenRun seen = looked
                ? new SeenRun(used, Arrays.copyOf(discharged, count[0]), Arrays.copyOf(heating, count[0]))
                : SeenRun.NONE;
        return new Course(used, gauge, bottom, top, Arrays.copyOf(regimes, count[0]), count[0], seen, summary);
    }

    private static double firstBurn(RunSummary summary) {
        double on = summary.first(Event.Kind.HEATER_ON).map(e -> e.time()).orElse(0.0);
        return summary.first(Event.Kind.HEATER_OFF).map(e -> e.time() - on).orElse(Double.NaN);
    }

    static Duration millis(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1e3));
    }

    /** An empty map of checks, to be filled. */
    static Map<SiteCheck, Double> noSpots() {
        return new EnumMap<>(SiteCheck.class);
    }

    /**
     * Predicted readings of a house.
     *
     * @param gauge the gauge at the times of the log (Pa, gauge)
     * @param bottom the water at the bottom of the tank at these times as a thermometer shows it (K); nothing for a log without temperatures
     * @param top the water at the top of the tank at these times as a thermometer shows it (K); nothing for a log without temperatures
     * @param regimes what fixed the pressure at the reading of a number, which is asked of few forecasts
     * @param firstBurn how long the heater was on at first (s), NaN if it was not or did not go off
     * @param seen how far it is from each sighting of the log (standard uncertainties), as {@link SeenRun} counts them
     * @param spots the readings on site that were asked for
     */
    record Forecast(
            double[] gauge,
            double[] bottom,
            double[] top,
            IntFunction<Trace.Regime> regimes,
            double firstBurn,
            double[] seen,
            Map<SiteCheck, Double> spots) {

        /**
         * How far the water nearest to a thermometer's reading lies above it (K): 0 for a reading between bottom and top, since
         * the height of the thermometer is not given.
         */
        double warmer(int index, double reading) {
            return Math.max(Math.min(0, top[index] - reading), bottom[index] - reading);
        }
    }
}
