package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.units.Pressure;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One line of a timetable of the mains' pressure.
 *
 * @param at the clock time (s since midnight)
 * @param pressure the pressure at that time
 */
record MainsEntry(double at, Pressure pressure) {

    /** The timetable; between its times the pressure goes evenly from one to the next. */
    static MainsPressure timetable(List<MainsEntry> entries) {
        Map<Double, Pressure> times = new TreeMap<>();
        for (MainsEntry entry : entries) {
            if (times.put(entry.at(), entry.pressure()) != null) {
                throw new IllegalArgumentException("gives two pressures for the same time of day");
            }
        }
        if (times.isEmpty()) {
            throw new IllegalArgumentException("is an empty timetable; give at least one time with a pressure");
        }
        return MainsPressure.daily(times);
    }

    /** An entry while being read. */
    static final class Draft {
        private double at;
        private Pressure pressure;

        void at(String clock) {
            at = ClockTime.read(clock);
        }

        void pressure(Pressure value) {
            MainsPressure.constant(value);
            pressure = value;
        }

        MainsEntry end() {
            return new MainsEntry(at, pressure);
        }
    }
}
