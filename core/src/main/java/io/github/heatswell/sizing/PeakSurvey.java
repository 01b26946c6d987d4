package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.simulation.Workers;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * Runs the worst heat-up with vessels of many volumes and precharges, and puts the peaks on a {@link PeakMap}.
 *
 * <p>The heat-up is that of {@link VesselSizing}: the tank full of cold water, on the day of the year when the supply is
 * densest and with the mains at its highest of the day, heated to the set point with every tap closed, the relief valves
 * taken out so that none hides a peak, the vessel sound. Relief valves count by their nominal set pressure, whatever their
 * condition. Immutable.
 */
public final class PeakSurvey {

    private static final int MAX_THREADS = 256;

    private final PeakMap.Setting setting;
    private final PeakEvaluator lab;
    private final MapAxes axes;
    private final int threads;
    private final Workers.Progress progress;

    private PeakSurvey(Builder from) {
        lab = new PeakEvaluator(
                HeatUpCase.coldFill(from.system),
                new VesselType(from.pattern).chargedInTheRoom(),
                new Balances.Count());
        setting = lab.setting(from.system, from.target);
        axes = new MapAxes(
                from.volumes == null ? MapAxes.chosenVolumes(lab.vesselToShow(setting)) : from.volumes,
                from.precharges == null
                        ? MapAxes.chosenPrecharges(
                                setting.staticAtVesselGauge(),
                                from.system.tank().workingPressure().gauge(lab.atmosphere()),
                                lab.presentPrecharge(from.system).orElse(Double.NaN))
                        : from.precharges);
        threads = from.threads;
        progress = from.progress;
    }

    /**
     * Starts a survey; a vessel type must be set unless the house has a vessel.
     *
     * @param system the house
     * @return a builder with volumes and precharges chosen by the survey and a thread for every processor
     */
    public static Builder builder(HotWaterSystem system) {
        return new Builder(system);
    }

    /**
     * Simulates every vessel. The map does not depend on the number of threads.
     *
     * @return the map
     * @throws IllegalArgumentException if a run ends in a hazard other than too much pressure
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     * @throws java.util.concurrent.CancellationException if the calling thread is interrupted
     */
    public PeakMap map() {
        int rows = axes.volumes().length;
        int columns = axes.precharges().length;
        Workers workers = Workers.of(threads).telling(progress, (rows + 1) * columns);
        HeatUpCase.Peak[][] peaks = new HeatUpCase.Peak[rows][columns];
        workers.each(rows * columns, cell -> {
            int row = cell / columns;
            int column = cell % columns;
            peaks[row][column] = lab.peak(axes.volumes()[row], axes.precharges()[column]);
        });
        PeakMap.Column[] lines = new PeakMap.Column[columns];
        workers.each(columns, column -> {
            HeatUpCase.Peak[] own = Arrays.stream(peaks).map(row -> row[column]).toArray(HeatUpCase.Peak[]::new);
            lines[column] = new PeakColumn(lab, axes.precharges()[column], axes.volumes(), own)
                    .lines(setting.reliefSetGauge(), setting.targetGauge());
        });
        Optional<PeakMap.Point> present = lab.present(setting.system());
        return new PeakMap(setting, axes, peaks, lines, present, lab.count().sum());
    }

    /** Builds a {@link PeakSurvey}. */
    public static final class Builder {
        private final HotWaterSystem system;
        private ExpansionVessel pattern;
        private SizingTarget target;
        private double[] volumes;
        private double[] precharges;
        private int threads = Runtime.getRuntime().availableProcessors();
        private Workers.Progress progress = (done, total) -> {};

        private Builder(HotWaterSystem system) {
            this.system = Objects.requireNonNull(system, "system");
            pattern = system.vessel().orElse(null);
        }

        /**
         * Sets the vessel type: acceptance limit, height and gas are taken from this vessel; volume, precharge and
         * faults are not. By default, the vessel of the house is used.
         *
         * @param value the pattern
         * @return this builder
         */
        public Builder vesselLike(ExpansionVessel value) {
            pattern = Objects.requireNonNull(value, "vessel");
            return this;
        }

        /**
         * Sets what the peak should stay below; the map then has a line for it too.
         *
         * @param value the target
         * @return this builder
         */
        public Builder target(SizingTarget value) {
            target = Objects.requireNonNull(value, "target");
            return this;
        }

        /**
         * Sets the volumes. Without them there are 40 in equal ratios from 1 L to about three times the vessel of the
         * house or the smallest that keeps the relief valve shut, whichever is larger.
         *
         * @param unit the unit of the volumes
         * @param values 2 to 60 volumes in this unit, rising, 0.1 L to 5 m3
         * @return this builder
         * @throws IllegalArgumentException if there are too few or too many, if one is outside its range or does not rise
         */
        public Builder volumes(VolumeUnit unit, double... values) {
            volumes = MapAxes.checked(
                    Limits.between("volumes", VesselType.MIN_VOLUME, VesselType.MAX_VOLUME), unit, values);
            return this;
        }

        /**
         * Sets the precharges. Without them there are 30 in equal steps from 0.3 to 1.6 times the static pressure at the
         * vessel, not above the working pressure of the tank, and wider if the present precharge lies outside; the one
         * nearest to the static pressure is moved onto it.
         *
         * @param unit the unit of the precharges
         * @param values 2 to 60 precharges in this unit (gauge), rising, 1 Pa to 16 bar
         * @return this builder
         * @throws IllegalArgumentException if there are too few or too many, if one is outside its range or does not rise
         */
        public Builder precharges(PressureUnit unit, double... values) {
            precharges = MapAxes.checked(Limits.between("precharges", 1, MapAxes.MAX_PRECHARGE), unit, values);
            return this;
        }

        /**
         * Sets how many threads simulate.
         *
         * @param value the number, 1 to 256
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder threads(int value) {
            threads = Limits.whole("threads", value, 1, MAX_THREADS);
            return this;
        }

        /**
         * Sets the progress listener.
         *
         * @param value the listener
         * @return this builder
         */
        public Builder progress(Workers.Progress value) {
            progress = Objects.requireNonNull(value, "progress");
            return this;
        }

        /**
         * Completes the description and chooses what was left open, for which it may run a few heat-ups.
         *
         * @return the survey
         * @throws IllegalArgumentException if there is no vessel type, or if the thermostat is stuck: then there is no
         *     set point to heat to, and no vessel helps
         */
        public PeakSurvey build() {
            if (pattern == null) {
                throw new IllegalArgumentException(
                        "vessel: is missing; give vesselLike(...), a vessel of the type to look for");
            }
            if (system.heater().thermostatStuck()) {
                throw new IllegalArgumentException(
                        "thermostat: is stuck; repair it, since no vessel helps against" + " that");
            }
            return new PeakSurvey(this);
        }
    }
}
