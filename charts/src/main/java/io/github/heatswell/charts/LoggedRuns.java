package io.github.heatswell.charts;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Gauge readings and the runs that may explain them.
 *
 * @param found what was found, in short, with a full stop: the title
 * @param title what the house is called
 * @param house the house, for the pressures that its readings are compared with
 * @param log when the gauge was read, and what it showed
 * @param runs the runs, the best first, at most two
 */
public record LoggedRuns(
        Statement found, String title, HotWaterSystem house, PressureLog log, List<NamedReadings> runs) {

    /** So many runs are told apart beside the readings. */
    public static final int MAX_RUNS = 2;

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
     * Copies the list.
     *
     * @param found what was found, in short, with a full stop: the title
     * @param title what the house is called
     * @param house the house, for the pressures that its readings are compared with
     * @param log when the gauge was read, and what it showed
     * @param runs the runs, the best first, at most two
     * @throws IllegalArgumentException if there is no run or more than two, or if one has more or fewer readings than the log
     */
    public LoggedRuns {
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(house, "house");
        Objects.requireNonNull(log, "log");
        runs = List.copyOf(Objects.requireNonNull(runs, "runs"));
        if (runs.isEmpty() || runs.size() > MAX_RUNS) {
            throw new IllegalArgumentException(
                    "runs: " + runs.size() + " is outside the allowed range, 1 to " + MAX_RUNS);
        }
        if (runs.stream().anyMatch(run -> run.gauge().size() != log.count())) {
            throw new IllegalArgumentException("runs: there must be one reading for each of the log");
        }
    }

    /**
     * When the gauge was read.
     *
     * @return the times (s), rising
     */
    public List<Double> times() {
        return IntStream.range(0, log.count()).mapToObj(log::time).toList();
    }

    /**
     * What the gauge showed.
     *
     * @return the readings (Pa, gauge)
     */
    public List<Double> readings() {
        return IntStream.range(0, log.count()).mapToObj(log::gauge).toList();
    }
}
