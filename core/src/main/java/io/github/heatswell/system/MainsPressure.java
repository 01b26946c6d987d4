package io.github.heatswell.system;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.time.LocalTime;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;

/**
 * The static pressure of the mains over a day, the same every day: constant, or a timetable with linear interpolation.
 * It is usually higher at night, when demand is low.
 */
public final class MainsPressure {

    private static final double DAY = 86_400;
    /** A run takes a pressure this close (Pa) to that of the air for lost: no supply stands as low. */
    public static final double MIN_GAUGE = 10;

    private static final Limits PRESSURE = Limits.above("pressure", 0, 25e5);

    private final NavigableMap<Double, Pressure> entries;

    private MainsPressure(NavigableMap<Double, Pressure> entries) {
        this.entries = entries;
    }

    /**
     * The same pressure at all times.
     *
     * @param value the pressure, above 0 to 25 bar
     * @return the pressure of the mains
     * @throws IllegalArgumentException if the pressure is outside its range
     */
    public static MainsPressure constant(Pressure value) {
        return daily(Map.of(0.0, Objects.requireNonNull(value, "pressure")));
    }

    /**
     * A timetable of the day in seconds, linearly interpolated, including from a day's last entry to the next day's first.
     * {@link #byClock} takes times such as half past six.
     *
     * @param entries the pressure (above 0 to 25 bar) at clock times (s since midnight, 0 to less than 86 400), at
     *     least one
     * @return the pressure of the mains
     * @throws IllegalArgumentException if there is no entry, or a time or a pressure is outside its range
     */
    public static MainsPressure daily(Map<Double, Pressure> entries) {
        if (Objects.requireNonNull(entries, "pressure: its timetable").isEmpty()) {
            throw new IllegalArgumentException("pressure: a timetable needs at least one entry");
        }
        entries.forEach((time, pressure) -> {
            if (!(time >= 0 && time < DAY)) {
                throw new IllegalArgumentException(
                        "at: " + time + " s is outside the allowed range, 00:00 to 23:59:59");
            }
            PRESSURE.check(pressure);
        });
        return new MainsPressure(new TreeMap<>(entries));
    }

    /**
     * A timetable of the day by the clock, as {@link #daily}: {@code byClock(Map.of(LocalTime.of(6, 0), morning, LocalTime.of(22, 0), night))}.
     *
     * @param entries the pressure (above 0 to 25 bar) at times of the day, at least one
     * @return the pressure of the mains
     * @throws IllegalArgumentException if there is no entry, or a pressure is outside its range
     */
    public static MainsPressure byClock(Map<LocalTime, Pressure> entries) {
        Map<Double, Pressure> seconds = new TreeMap<>();
        Objects.requireNonNull(entries, "pressure: its timetable")
                .forEach((time, pressure) -> seconds.put(time.toSecondOfDay() + time.getNano() / 1e9, pressure));
        return daily(seconds);
    }

    /**
     * The same timetable, shifted by a pressure difference.
     *
     * @param difference how much higher, in {@code unit}, negative for lower
     * @param unit the unit of the difference
     * @return the pressure of the mains
     * @throws IllegalArgumentException if a pressure leaves its range
     */
    public MainsPressure raisedBy(double difference, PressureUnit unit) {
        double pascal = Objects.requireNonNull(unit, "difference: its unit").toSi(difference);
        Map<Double, Pressure> raised = new TreeMap<>();
        entries.forEach(
                (time, pressure) -> raised.put(time, new Pressure(pressure.value() + pascal, pressure.reference())));
        return daily(raised);
    }

    /**
     * Whether the pressure is the same at all times.
     *
     * @return true if there is one entry only
     */
    public boolean isConstant() {
        return entries.size() == 1;
    }

    /**
     * The timetable.
     *
     * @return the pressures by clock time (s since midnight), in the order of time, a copy
     */
    public NavigableMap<Double, Pressure> entries() {
        return new TreeMap<>(entries);
    }

    /**
     * The pressure at a moment of the day.
     *
     * @param timeOfDay the clock time (s since midnight); times of other days are taken modulo a day
     * @param atmosphere the absolute pressure (Pa) of the surrounding air
     * @return the pressure (Pa, absolute)
     */
    public double absolute(double timeOfDay, double atmosphere) {
        double time = timeOfDay - DAY * Math.floor(timeOfDay / DAY);
        Map.Entry<Double, Pressure> before = entries.floorEntry(time);
        Map.Entry<Double, Pressure> after = entries.higherEntry(time);
        double from = before == null ? entries.lastKey() - DAY : before.getKey();
        double to = after == null ? entries.firstKey() + DAY : after.getKey();
        double low = (before == null ? entries.lastEntry() : before).getValue().absolute(atmosphere);
        double high = (after == null ? entries.firstEntry() : after).getValue().absolute(atmosphere);
        return low + (high - low) * (time - from) / (to - from);
    }
}
