package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The peak of the worst heat-up over vessel volume and precharge, and where a relief valve begins to drip.
 *
 * <p>All pressures are at drain-cock height except the precharges, which are gas pressures at room temperature. Volumes
 * and precharges are numbered from 0, in rising order. Immutable.
 */
public final class PeakMap {

    private final Setting setting;
    private final double[] volumes;
    private final double[] precharges;
    private final HeatUpCase.Peak[][] peaks;
    private final Column[] columns;
    private final Optional<Point> present;
    private final Balances balances;

    PeakMap(
            Setting setting,
            MapAxes axes,
            HeatUpCase.Peak[][] peaks,
            Column[] columns,
            Optional<Point> present,
            Balances balances) {
        this.setting = setting;
        this.volumes = axes.volumes();
        this.precharges = axes.precharges();
        this.peaks = peaks;
        this.columns = columns;
        this.present = present;
        this.balances = balances;
    }

    /** {@return how many vessels it looks at: {@code peaks of 30 volumes at 40 precharges}} */
    @Override
    public String toString() {
        return "peaks of " + volumes.length + " volumes at " + precharges.length + " precharges";
    }

    /**
     * Reference pressures of the map.
     *
     * @param system the house as given
     * @param staticGauge the highest static pressure of the supply (Pa, gauge)
     * @param staticAtVesselGauge the same at the height of the vessel, where the precharge is set (Pa, gauge)
     * @param reliefSetGauge the lowest pressure at which a relief valve opens (Pa, gauge), or empty without one that
     *     works
     * @param targetGauge what the peak should stay below (Pa, gauge), or empty if nothing was asked
     */
    public record Setting(
            HotWaterSystem system,
            double staticGauge,
            double staticAtVesselGauge,
            OptionalDouble reliefSetGauge,
            OptionalDouble targetGauge) {}

    /**
     * One vessel and its peak.
     *
     * @param volume the whole volume (m3)
     * @param prechargeGauge the precharge (Pa, gauge), read at the temperature of the room
     * @param peakGauge the highest pressure of the heat-up (Pa, gauge)
     * @param atLeast whether the run ended there at the test pressure of the tank, so that it would have risen further
     */
    public record Point(double volume, double prechargeGauge, double peakGauge, boolean atLeast) {}

    /**
     * The lines at a precharge: the smallest volume (m3) that stays below the relief valve, the target and the test pressure, each NaN
     * for none; and the peaks (Pa, gauge) of all volumes (m3) looked at, infinite where the run ended early.
     */
    record Column(double drip, double target, double ended, double[] volumes, double[] peaks) {}

    /**
     * Reference pressures of the map.
     *
     * @return the house and its pressures
     */
    public Setting setting() {
        return setting;
    }

    /**
     * How many volumes there are.
     *
     * @return the number, 2 to 60
     */
    public int volumeCount() {
        return volumes.length;
    }

    /**
     * A volume.
     *
     * @param index its number
     * @return the whole volume of the vessel (m3)
     */
    public double volume(int index) {
        return volumes[index];
    }

    /**
     * How many precharges there are.
     *
     * @return the number, 2 to 60
     */
    public int prechargeCount() {
        return precharges.length;
    }

    /**
     * A precharge.
     *
     * @param index its number
     * @return the precharge (Pa, gauge)
     */
    public double prechargeGauge(int index) {
        return precharges[index];
    }

    /**
     * The highest pressure of the heat-up with a vessel.
     *
     * @param volume the number of the volume
     * @param precharge the number of the precharge
     * @return the peak (Pa, gauge); where {@link #isAtLeast} holds, the test pressure at which the run ended
     */
    public double peakGauge(int volume, int precharge) {
        return peaks[volume][precharge].absolute() - setting.system().site().atmosphere();
    }

    /**
     * Whether the run ended at the test pressure of the tank, so that the peak is at least what is given.
     *
     * @param volume the number of the volume
     * @param precharge the number of the precharge
     * @return true if it would have risen further
     */
    public boolean isAtLeast(int volume, int precharge) {
        return peaks[volume][precharge].atLeast();
    }

    /**
     * Whether the peak reaches the pressure at which the first relief valve opens.
     *
     * @param volume the number of the volume
     * @param precharge the number of the precharge
     * @return true if it does; false also where the run ended before, at a test pressure below that
     */
    public boolean drips(int volume, int precharge) {
        return setting.reliefSetGauge().isPresent()
                && peakGauge(volume, precharge) >= setting.reliefSetGauge().getAsDouble();
    }

    /**
     * The smallest volume at which the first relief valve stays shut, found by simulation, accurate to 1e-5.
     *
     * @param precharge the number of the precharge
     * @return the volume (m3): the smallest of the range if even that does, empty if none in the range does or if there
     *     is no relief valve
     */
    public OptionalDouble dripVolume(int precharge) {
        return known(columns[precharge].drip());
    }

    /**
     * The smallest volume at which the peak stays below the target, found by simulation, accurate to 1e-5.
     *
     * @param precharge the number of the precharge
     * @return the volume (m3): the smallest of the range if even that does, empty if none in the range does or if there
     *     is no target
     */
    public OptionalDouble targetVolume(int precharge) {
        return known(columns[precharge].target());
    }

    /**
     * The smallest volume with which the run does not end at the tank's test pressure, accurate to 0.5 %.
     *
     * @param precharge the number of the precharge
     * @return the volume (m3): the smallest of the range if even that does not, empty if the runs of all end there
     */
    public OptionalDouble endedVolume(int precharge) {
        return known(columns[precharge].ended());
    }

    /**
     * The smallest volume at which the peak stays below a pressure: between the volumes that were simulated, which lie closer
     * where the peak rises steeply, the peak is taken as straight over the logarithm of volume.
     *
     * @param precharge the number of the precharge
     * @param gauge the pressure (Pa, gauge), below the test pressure of the tank
     * @return the volume (m3): the smallest of the range if even that does, empty if none in the range does
     */
    public OptionalDouble volumeBelow(int precharge, double gauge) {
        Column column = columns[precharge];
        int place = 0;
        while (place < column.peaks().length && column.peaks()[place] >= gauge) {
            place++;
        }
        if (place == 0 || place == column.peaks().length) {
            return place == 0 ? OptionalDouble.of(column.volumes()[0]) : OptionalDouble.empty();
        }
        double low = column.volumes()[place - 1];
        double above = column.peaks()[place - 1];
        if (above == Double.POSITIVE_INFINITY) {
            low = column.ended();
            double atmosphere = setting.system().site().atmosphere();
            above = setting.system().tank().testPressureAbsolute(atmosphere) - atmosphere;
        }
        double share = Math.max(0, Math.min(1, (above - gauge) / (above - column.peaks()[place])));
        return OptionalDouble.of(low * Math.pow(column.volumes()[place] / low, share));
    }

    /**
     * The vessel the house has, taken as sound, its precharge corrected from the temperature at which it was read to that
     * of the room.
     *
     * @return the vessel with its peak, or empty if the house has none
     */
    public Optional<Point> present() {
        return present;
    }

    /**
     * The balances of the runs behind the map: its points, its lines and the present vessel.
     *
     * @return how many there are, and how many do not close
     */
    public Balances balances() {
        return balances;
    }

    private static OptionalDouble known(double volume) {
        return Double.isNaN(volume) ? OptionalDouble.empty() : OptionalDouble.of(volume);
    }
}
