package io.github.heatswell.diagnosis;

import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A logger's record: pressure over time, possibly with the temperature of the water and whether the heater was on. The log begins at rest,
 * in the state the described house starts from. It may be of any length, but a {@link Diagnosis} uses only its first two days. Immutable.
 */
public final class PressureLog {

    /**
     * The pressures a log may hold (Pa, gauge): as low as a vacuum less the error of a sensor, and not so high that only a broken sensor
     * would send it.
     */
    public static final Limits PRESSURES = Limits.between("pressure", -1.2e5, 1e9);

    /** The same for temperatures (K). */
    public static final Limits TEMPERATURES = Limits.between("temperature", 23.15, 1_273.15);

    private static final int SHOWN_DIGITS = 3;
    private static final int MIN_READINGS = 3;
    /** A log in which no pressure reaches this (Pa, gauge) is from an unpressurised system, or not in pascal. */
    private static final double MIN_PRESSURE = 1e3;
    /** A log in which no temperature reaches this (K) is in degC: a single reading may be a fault of the thermometer. */
    private static final double COLD = 200;
    /** A fall of so many standard uncertainties is none of a hundred scattered readings. */
    private static final double CLEAR_FALL = 6;

    /** A log that rises by this (Pa) shows a heat-up; our own judgement. */
    private static final double HEAT_UP = 0.5e5;

    /** A rise (Pa) that more than a gauge's own wandering shows, and so many steps of it (-); our own judgement. */
    private static final double SMALL_RISE = 0.1e5;

    private static final double RISEN_STEPS = 1.5;
    /** So long (s) nobody draws water. */
    private static final double WHILE = 1_200;

    /**
     * A gauge that moves less (Pa, difference) while water gets so much warmer (K), or the heater is on so long (s), does not move; our
     * own judgement.
     */
    private static final double UNMOVED = 0.05e5;

    private static final double MUCH_WARMER = 20;
    private static final double LONG_HEATED = 3_600;
    /** Heated water reads no more than this (K) below what the thermostat is set to: our own judgement. */
    private static final double NEARLY_HEATED = 5;

    /** So long (s) after the last reading what was seen still counts. */
    private static final double AFTER = 12 * 3_600.0;

    private static final double HALF = 0.5;
    /** How well the time of a reading by hand is known (s), one standard deviation: clocks on walls differ; common practice, no source. */
    static final double BY_HAND = 60;

    /**
     * How much more uncertain (Pa, difference, one standard deviation) a reading is that was written down as "about"; our own judgement.
     */
    public static final double ROUGH = 0.15e5;

    /** So much of a long log is used (s), and so many readings. */
    private static final double USED = 2 * 86_400.0;

    private static final int MAX_USED = 3_000;

    private final double[] times;
    private final double[] gauge;
    private final double[] temperature;
    private final boolean[] burner;
    private final Double timeOfDay;
    private final LogNoise noise;
    private final Double given;
    private final boolean[] rough;
    private final boolean[] drawn;
    private final List<Sighting> seen;
    private final ReadingWeights weights;

    private PressureLog(Builder from) {
        times = from.times;
        gauge = from.gauge;
        temperature = from.temperature;
        burner = from.burner;
        timeOfDay = from.timeOfDay;
        noise = from.noise == null ? LogNoise.of(times, gauge) : from.noise;
        given = from.uncertainty;
        rough = from.rough == null ? new boolean[times.length] : from.rough;
        drawn = from.drawn == null ? new boolean[times.length] : from.drawn;
        seen = List.copyOf(
                from.seen.stream().filter(one -> one.until() <= end() + AFTER).toList());
        weights = new ReadingWeights(this, noise, given, rough);
    }

    /**
     * Starts a log.
     *
     * @param times when each reading was taken (s), from 0, each later than the one before; at least 3
     * @param gauge the readings (Pa, gauge), one for each time
     * @return a builder with nothing but the pressure
     * @throws IllegalArgumentException if there are too few readings, their numbers differ, a pressure is outside {@link #PRESSURES}, none
     *     reaches 0.01 bar, or time does not run forward from 0
     */
    public static Builder builder(double[] times, double[] gauge) {
        return new Builder(times, gauge);
    }

    /**
     * The number of readings.
     *
     * @return the number, at least 3
     */
    public int count() {
        return times.length;
    }

    /**
     * When a reading was taken.
     *
     * @param index the number of the reading, from 0
     * @return the time (s) since the first
     */
    public double time(int index) {
        return times[index];
    }

    /**
     * What the gauge showed.
     *
     * @param index the number of the reading, from 0
     * @return the pressure (Pa, gauge)
     */
    public double gauge(int index) {
        return gauge[index];
    }

    /**
     * The temperature of the water, where it was logged.
     *
     * @param index the number of the reading, from 0
     * @return the temperature (K), or empty
     */
    public OptionalDouble temperature(int index) {
        return temperature == null || Double.isNaN(temperature[index])
                ? OptionalDouble.empty()
                : OptionalDouble.of(temperature[index]);
    }

    /**
     * Whether the log has a column for the temperature.
     *
     * @return true if at least some temperatures are known
     */
    public boolean hasTemperature() {
        return temperature != null;
    }

    /**
     * Whether the log has a column for burner or element.
     *
     * @return true if {@link #burnerOn} tells something
     */
    public boolean hasBurner() {
        return burner != null;
    }

    /**
     * Whether the heater was on.
     *
     * @param index the number of the reading, from 0
     * @return true if it was on; false if it was off or is not known
     */
    public boolean burnerOn(int index) {
        return burner != null && burner[index];
    }

    /**
     * The clock time of the first reading.
     *
     * @return the time (s since midnight), or empty if the log has no clock times
     */
    public OptionalDouble timeOfDay() {
        return timeOfDay == null ? OptionalDouble.empty() : OptionalDouble.of(timeOfDay);
    }

    /**
     * The length of the log.
     *
     * @return the time (s) of the last reading
     */
    public double end() {
        return times[times.length - 1];
    }

    /**
     * The standard uncertainty of one reading: as given, or else found from scatter and steps of the log itself.
     *
     * @return the uncertainty (Pa, difference)
     */
    public double uncertainty() {
        return given == null ? noise.uncertainty() : given;
    }

    /**
     * Whether the log has enough readings to show how far they scatter; if not, the uncertainty is that of a gauge read by hand.
     *
     * @return true from 30 readings on
     */
    public boolean tellsItsScatter() {
        return noise.measured();
    }

    /**
     * The step between the marks or digits that the readings fall on.
     *
     * @return the step (Pa, difference), 0 if none shows
     */
    public double step() {
        return noise.step();
    }

    /**
     * The highest reading.
     *
     * @return the pressure (Pa, gauge)
     */
    public double highest() {
        return Arrays.stream(gauge).max().orElseThrow();
    }

    /**
     * Whether the pressure rises as it does when water is heated: by half a bar; or, as where a vessel takes most of it, by less, if a
     * logger
     * shows it for a third of an hour or somebody saw the heater on. Our own judgement.
     *
     * @return true if it does
     */
    public boolean showsHeatUp() {
        boolean small = tellsItsScatter()
                ? risesBy(Math.max(SMALL_RISE, RISEN_STEPS * step()))
                : highest() > gauge[0] + SMALL_RISE && !Double.isNaN(new BurnerColumn(this).firstSeenOn());
        return small || highest() > gauge[0] + HEAT_UP;
    }

    /** Whether what a logger shows for a while is so much (Pa) above what it showed for a while before; draws are shorter. */
    private boolean risesBy(double least) {
        int length = Math.max(MIN_READINGS, (int) Math.round(WHILE / interval()));
        double lowest = Double.POSITIVE_INFINITY;
        for (int from = 0; from + length <= count(); from += length) {
            double middle = Arrays.stream(gauge, from, from + length).sorted().toArray()[length / 2];
            if (middle > lowest + least) {
                return true;
            }
            lowest = Math.min(lowest, middle);
        }
        return false;
    }

    /**
     * Whether a thermometer saw water as hot as the heater makes it, set to so much (K): the hottest reading comes close, and another
     * follows.
     */
    boolean showsHeatedTo(double set) {
        int[] known = IntStream.range(0, count())
                .filter(i -> temperature(i).isPresent())
                .toArray();
        return Arrays.stream(known)
                .limit(Math.max(0, known.length - 1))
                .mapToDouble(i -> temperature(i).orElseThrow())
                .filter(kelvin -> kelvin >= set - NEARLY_HEATED)
                .anyMatch(
                        kelvin -> kelvin >= temperature(known[known.length - 1]).orElseThrow());
    }

    /**
     * Whether the gauge rests although temperatures, burner or sightings say that the tank was heated; our own judgement.
     *
     * @return true if no reading differs by 0.05 bar while the water gets 20 K warmer, or the heater is on for an hour in all
     */
    public boolean restsWhileHeated() {
        double[] kelvin = IntStream.range(0, count())
                .filter(i -> temperature(i).isPresent())
                .mapToDouble(i -> temperature(i).orElseThrow())
                .toArray();
        double warmer = kelvin.length == 0 ? 0 : Arrays.stream(kelvin).max().orElseThrow() - kelvin[0];
        double heated = IntStream.range(1, count())
                .filter(i -> burnerOn(i - 1))
                .mapToDouble(i -> time(i) - time(i - 1))
                .sum();
        return rests() && (warmer >= MUCH_WARMER || heated + new BurnerColumn(this).seenHeating() >= LONG_HEATED);
    }

    /** Whether no reading differs by 0.05 bar from another. */
    boolean rests() {
        return highest() - Arrays.stream(gauge).min().orElseThrow() < UNMOVED;
    }

    /**
     * Whether the log shows that a valve opens: the pressure fell while burner or element were on. Heating alone raises it. A
     * draw lets it fall to the supply, so a fall counts only where it leaves more than half of the rise; our own judgement.
     *
     * @return true if it did; false too if the log does not say when the heater was on
     */
    public boolean fellWhileHeating() {
        double least = CLEAR_FALL * uncertainty();
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; hasBurner() && i < count(); i++) {
            highest = burner[i] ? Math.max(highest, gauge[i]) : Double.NEGATIVE_INFINITY;
            double fall = highest - gauge[i];
            if (burner[i] && fall > least && fall < HALF * (highest - gauge[0])) {
                return true;
            }
        }
        return false;
    }

    /** How much each reading tells. */
    ReadingWeights weights() {
        return weights;
    }

    /** How far the readings scatter about a smooth course (Pa), whatever uncertainty was given. */
    double scatter() {
        return noise.scatter();
    }

    /** The usual distance (s) of two readings: half of them are closer. */
    double interval() {
        double[] distances = new double[times.length - 1];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = times[i + 1] - times[i];
        }
        Arrays.sort(distances);
        return distances[distances.length / 2];
    }

    /**
     * The same log, some of whose readings were only written down as "about": each may be off by {@link #ROUGH} besides.
     *
     * @param which true for those, one for each reading
     * @return the log
     * @throws IllegalArgumentException if their number differs from that of the readings
     */
    public PressureLog roughened(boolean... which) {
        Builder same = every(1, count());
        same.sameNumber(which.length, "marks");
        same.rough = which.clone();
        return same.build();
    }

    /**
     * The same log with notes of hot-water use: water was drawn between the reading before and each of those that are marked.
     *
     * @param which true for those, one for each reading
     * @return the log
     * @throws IllegalArgumentException if their number differs from that of the readings
     */
    public PressureLog drawn(boolean... which) {
        Builder same = every(1, count());
        same.sameNumber(which.length, "marks");
        same.drawn = which.clone();
        return same.build();
    }

    /**
     * The same log with what was seen beside the gauge.
     *
     * @param sightings what was seen, in the time of the log; what was seen more than twelve hours after its last reading is left
     *     out
     * @return the log
     */
    public PressureLog seen(List<Sighting> sightings) {
        Builder same = every(1, count());
        same.seen = List.copyOf(Objects.requireNonNull(sightings, "sightings"));
        return same.build();
    }

    /**
     * What was seen beside the gauge.
     *
     * @return the sightings, possibly none
     */
    public List<Sighting> sightings() {
        return seen;
    }

    /** When the last reading was taken, or something was seen after that (s). */
    double lastSeen() {
        return Math.max(end(), seen.stream().mapToDouble(Sighting::until).max().orElse(0));
    }

    /** Whether a draw between the reading before and this one was noted. */
    boolean isDrawnBefore(int index) {
        return drawn[index];
    }

    /** Whether somebody knows that no water was drawn between the reading before and this one. */
    boolean isShutBefore(int index) {
        return isShut(time(index - 1), time(index));
    }

    /** Whether somebody knows that no water was drawn in a time (s), as well as clocks on walls are read. */
    boolean isShut(double from, double until) {
        return seen.stream()
                .anyMatch(one -> one.kind() == Sighting.Kind.TAPS_SHUT
                        && one.from() - BY_HAND <= from
                        && one.until() + BY_HAND >= until);
    }

    /** What a diagnosis can use of a long log: its first days, and not more readings than tell something. */
    PressureLog thinned() {
        int within = 0;
        while (within < count() && time(within) <= USED) {
            within++;
        }
        int stride = (within + MAX_USED - 1) / MAX_USED;
        return within == count() && stride == 1 || within < MIN_READINGS
                ? this
                : every(stride, (within + stride - 1) / stride).build();
    }

    /** Its first readings, at least as many as a log needs. */
    PressureLog first(int count) {
        return count >= count() ? this : every(1, Math.max(MIN_READINGS, count)).build();
    }

    private Builder every(int stride, int count) {
        double[] at = new double[count];
        double[] read = new double[count];
        double[] kelvin = new double[count];
        boolean[] on = new boolean[count];
        boolean[] about = new boolean[count];
        boolean[] used = new boolean[count];
        for (int i = 0; i < count; i++) {
            about[i] = rough[i * stride];
            at[i] = time(i * stride);
            read[i] = gauge(i * stride);
            kelvin[i] = temperature(i * stride).orElse(Double.NaN);
            on[i] = burnerOn(i * stride);
            for (int j = Math.max(0, (i - 1) * stride + 1); j <= i * stride; j++) {
                used[i] |= drawn[j];
            }
        }
        PressureLog.Builder builder = PressureLog.builder(at, read);
        builder.noise = noise.of(count);
        builder.uncertainty = given;
        builder.rough = about;
        builder.drawn = used;
        double last = at[count - 1];
        builder.seen = last < end() && count * (long) stride < count()
                ? seen.stream().filter(one -> one.until() <= last).toList()
                : seen;
        builder.timeOfDay = timeOfDay;
        builder.temperature = temperature == null ? null : kelvin;
        builder.burner = burner == null ? null : on;
        return builder;
    }

    /** {@return the number of readings, the length and the highest, in one line} */
    @Override
    public String toString() {
        return count() + " readings over " + Decimals.significant(end() / 3_600, SHOWN_DIGITS) + " h, highest "
                + Decimals.significant(highest() / 1e5, SHOWN_DIGITS) + " bar gauge";
    }

    /** Builds a {@link PressureLog}. */
    public static final class Builder {
        private final double[] times;
        private final double[] gauge;
        private double[] temperature;
        private boolean[] burner;
        private Double timeOfDay;
        private Double uncertainty;
        private boolean[] rough;
        private boolean[] drawn;
        private List<Sighting> seen = List.of();
        /** What is known of the scatter from a longer log, or null. */
        private LogNoise noise;

        private Builder(double[] times, double[] gauge) {
            this.times = Objects.requireNonNull(times, "times").clone();
            this.gauge = Objects.requireNonNull(gauge, "gauge").clone();
            if (times.length < MIN_READINGS) {
                throw new IllegalArgumentException(
                        "a log needs at least " + MIN_READINGS + " readings, not " + times.length);
            }
            sameNumber(gauge.length, "pressures");
            for (int i = 0; i < times.length; i++) {
                boolean forward = i == 0 ? times[0] == 0 : times[i] > times[i - 1];
                if (!forward || !(times[i] < Double.POSITIVE_INFINITY)) {
                    throw new IllegalArgumentException("reading " + (i + 1)
                            + ": time must begin at 0 s and run forward, but here it is " + times[i] + " s");
                }
                if (!PRESSURES.contains(gauge[i])) {
                    throw new IllegalArgumentException(
                            "reading " + (i + 1) + ": " + PRESSURES.complaint(gauge[i] / 1e5, PressureUnit.BAR));
                }
            }
            if (Arrays.stream(gauge).max().orElseThrow() < MIN_PRESSURE) {
                throw new IllegalArgumentException(
                        "no pressure in the log reaches 0.01 bar (1000 Pa, gauge); either the unit is wrong,"
                                + " or there is nothing to diagnose");
            }
        }

        private void sameNumber(int count, String what) {
            if (count != times.length) {
                throw new IllegalArgumentException(
                        "a log of " + times.length + " times needs as many " + what + ", not " + count);
            }
        }

        /**
         * Adds the temperature of the water in the tank, at whatever height: any value between the coldest and the hottest
         * layer agrees with a house.
         *
         * @param values the temperatures (K), one for each time; NaN where none was read
         * @return this builder
         * @throws IllegalArgumentException if their number differs from that of the times, one is outside {@link #TEMPERATURES}, or if
         * none reaches
         *     200 K
         */
        public Builder temperature(double... values) {
            Objects.requireNonNull(values, "temperature");
            sameNumber(values.length, "temperatures");
            double highest =
                    Arrays.stream(values).filter(Double::isFinite).max().orElse(COLD);
            if (highest < COLD) {
                throw new IllegalArgumentException(
                        "no temperature of the log reaches " + COLD + " K; temperatures are given in K, not in degC");
            }
            for (int i = 0; i < values.length; i++) {
                if (!Double.isNaN(values[i]) && !TEMPERATURES.contains(values[i])) {
                    throw new IllegalArgumentException(
                            "reading " + (i + 1) + ": " + TEMPERATURES.complaint(values[i], TemperatureUnit.KELVIN));
                }
            }
            temperature = values.clone();
            return this;
        }

        /**
         * Adds whether burner or element were on.
         *
         * @param values true for on, one for each time
         * @return this builder
         * @throws IllegalArgumentException if their number differs from that of the times
         */
        public Builder burner(boolean... values) {
            Objects.requireNonNull(values, "burner");
            sameNumber(values.length, "burner states");
            burner = values.clone();
            return this;
        }

        /**
         * Sets the clock time of the first reading.
         *
         * @param seconds the time since midnight (s), 0 to less than a day
         * @return this builder
         * @throws IllegalArgumentException if the time is outside its range
         */
        public Builder timeOfDay(double seconds) {
            if (!(seconds >= 0 && seconds < 86_400)) {
                throw new IllegalArgumentException(
                        "the clock time of a log is 0 s to less than 86400 s, not " + seconds + " s");
            }
            timeOfDay = seconds;
            return this;
        }

        /**
         * Sets the standard uncertainty of a reading, instead of having it found from the log.
         *
         * @param pascal the uncertainty (Pa, difference), above 0
         * @return this builder
         * @throws IllegalArgumentException if it is not above 0
         */
        public Builder uncertainty(double pascal) {
            if (!(pascal > 0 && pascal < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "the uncertainty of a log must be above 0 Pa, not " + pascal + " Pa");
            }
            uncertainty = pascal;
            return this;
        }

        /**
         * Ends the log.
         *
         * @return the log
         */
        public PressureLog build() {
            return new PressureLog(this);
        }
    }
}
