package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.UnitSystem;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/** A map in the units and on the scales of its picture: precharge to the right, the logarithm of volume upwards. */
final class MapGrid {

    private static final int ACROSS_TICKS = 8;

    private final PeakMap map;
    private final UnitSystem units;
    final double[] across;
    final double[] up;
    final double[][] peaks;
    final double[][] ended;

    MapGrid(PeakMap map, UnitSystem units) {
        this.map = map;
        this.units = units;
        across = new double[map.prechargeCount()];
        up = new double[map.volumeCount()];
        peaks = new double[up.length][across.length];
        ended = new double[up.length][across.length];
        for (int j = 0; j < across.length; j++) {
            across[j] = pressure(map.prechargeGauge(j));
        }
        for (int i = 0; i < up.length; i++) {
            up[i] = height(map.volume(i));
            for (int j = 0; j < across.length; j++) {
                peaks[i][j] = pressure(map.peakGauge(i, j));
                ended[i][j] = map.isAtLeast(i, j) ? 1 : 0;
            }
        }
    }

    double pressure(double pascal) {
        return units.pressure().fromSi(pascal);
    }

    double height(double cubicMetres) {
        return Math.log10(units.volume().fromSi(cubicMetres));
    }

    double left() {
        return across[0];
    }

    double right() {
        return across[across.length - 1];
    }

    double foot() {
        return up[0];
    }

    double top() {
        return up[up.length - 1];
    }

    boolean holds(double x, double y) {
        return x >= left() && x <= right() && y >= foot() && y <= top();
    }

    Axis precharges() {
        String label = "precharge (gauge, " + units.pressure().symbol() + ")";
        return new Axis(label, left(), right(), ValueScale.roundStep((right() - left()) / ACROSS_TICKS));
    }

    Axis volumes() {
        String label = "vessel volume (" + units.volume().symbol() + ", logarithmic scale)";
        return Axis.logarithmic(label, foot(), top());
    }

    /** Where the valve begins to drip. */
    Threshold drip() {
        return threshold(map::dripVolume, map.setting().reliefSetGauge());
    }

    /** Where the peak comes down to the target. */
    Threshold target() {
        return threshold(map::targetVolume, map.setting().targetGauge());
    }

    private Threshold threshold(IntFunction<OptionalDouble> volumes, OptionalDouble limit) {
        double[] heights = new double[across.length];
        for (int j = 0; j < across.length; j++) {
            OptionalDouble volume = volumes.apply(j);
            heights[j] = volume.isPresent() ? height(volume.getAsDouble()) : Double.POSITIVE_INFINITY;
        }
        return new Threshold(this, heights, pressure(limit.orElseThrow()));
    }
}
