package io.github.heatswell.charts;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.Objects;

/**
 * Gauge readings and the runs that may explain them.
 *
 * @param found what was found, in a sentence with its full stop
 * @param title what the house is called
 * @param house the house, for the pressures that its readings are compared with
 * @param times when the gauge was read (s), rising
 * @param readings what it showed (Pa, gauge)
 * @param runs the runs, the best first, at most three
 */
public record LoggedRuns(
        Statement found,
        String title,
        HotWaterSystem house,
        List<Double> times,
        List<Double> readings,
        List<NamedReadings> runs) {

    private static final int MAX_RUNS = 3;

    /**
     * What the gauge would show in a run at the times of the readings.
     *
     * @param name what the run is called
     * @param gauge the readings (Pa, gauge), as many as there are times
     * @param course what it would show between them too, which is drawn; if that is not known, the readings are
     */
    public record NamedReadings(String name, List<Double> gauge, HypothesisFit.Course course) {

        /**
         * Copies the readings.
         *
         * @param name what the run is called
         * @param gauge the readings (Pa, gauge), as many as there are times
         * @param course what it would show between them too; possibly nothing
         */
        public NamedReadings {
            Objects.requireNonNull(course, "course");
            Objects.requireNonNull(name, "name");
            gauge = List.copyOf(Objects.requireNonNull(gauge, "gauge"));
        }
    }

    /**
     * Copies the lists.
     *
     * @param found what was found, in a sentence with its full stop
     * @param title what the house is called
     * @param house the house, for the pressures that its readings are compared with
     * @param times when the gauge was read (s), rising
     * @param readings what it showed (Pa, gauge)
     * @param runs the runs, the best first, at most three
     * @throws IllegalArgumentException if there is no run or more than three, or if the numbers of readings differ
     */
    public LoggedRuns {
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(house, "house");
        times = List.copyOf(Objects.requireNonNull(times, "times"));
        readings = List.copyOf(Objects.requireNonNull(readings, "readings"));
        runs = List.copyOf(Objects.requireNonNull(runs, "runs"));
        if (runs.isEmpty() || runs.size() > MAX_RUNS) {
            throw new IllegalArgumentException("runs: " + runs.size() + " is outside the allowed range, 1 to 3");
        }
        int count = times.size();
        if (count == 0
                || readings.size() != count
                || runs.stream().anyMatch(run -> run.gauge().size() != count)) {
            throw new IllegalArgumentException(
                    "readings: there must be one for every time, of the log and of each run");
        }
    }
}
