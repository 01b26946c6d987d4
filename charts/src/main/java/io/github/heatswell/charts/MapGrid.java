package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
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
        String label = units.spelled(NamedValue.PRECHARGE.label()) + " (gauge, "
                + units.pressure().symbol() + ")";
        return new Axis(label, left(), right(), ValueScale.roundStep((right() - left()) / ACROSS_TICKS));
    }

    Axis volumes() {
        return volumes(units, foot(), top());
    }

    /** An axis of vessel volumes, in the unit of the reader. */
    static Axis volumes(UnitSystem units, double from, double to) {
        String label = units.spelled(NamedValue.VESSEL_VOLUME.label()) + " ("
                + units.volume().symbol() + ", logarithmic scale)";
        return Axis.logarithmic(label, from, to);
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

    /**
     * The line on a map above which peaks stay below a limit: as found at each precharge and straight in between. Where it
     * leaves the map at the top or the foot, it does so where the peak along that edge passes the limit.
     */
    static final class Threshold {

        private final MapGrid grid;
        private final double limit;
        private final List<double[]> points = new ArrayList<>();

        /**
         * The line of a map.
         *
         * @param grid the map
         * @param heights the height of the line at each precharge, infinite where no volume of the map is enough
         * @param limit the limit, in the unit of the map
         */
        Threshold(MapGrid grid, double[] heights, double limit) {
            this.grid = grid;
            this.limit = limit;
            for (int j = 0; j < heights.length; j++) {
                if (j > 0) {
                    addExit(heights[j - 1], heights[j], j);
                }
                points.add(new double[] {grid.across[j], Math.min(heights[j], grid.top())});
            }
        }

        private void addExit(double before, double after, int column) {
            if (before > grid.top() != after > grid.top()) {
                points.add(new double[] {crossing(grid.peaks.length - 1, column), grid.top()});
            } else if (before <= grid.foot() != after <= grid.foot()) {
                points.add(new double[] {crossing(0, column), grid.foot()});
            }
        }

        private double crossing(int row, int column) {
            double before = grid.peaks[row][column - 1];
            double after = grid.peaks[row][column];
            double share = before == after ? 0.5 : Math.max(0, Math.min(1, (limit - before) / (after - before)));
            return grid.across[column - 1] + share * (grid.across[column] - grid.across[column - 1]);
        }

        /** The pieces of the line within the map. */
        List<Points> lines() {
            List<Points> lines = new ArrayList<>();
            List<double[]> piece = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                if (i > 0 && onEdge(points.get(i - 1), points.get(i))) {
                    end(piece, lines);
                }
                piece.add(points.get(i));
            }
            end(piece, lines);
            return lines;
        }

        private boolean onEdge(double[] a, double[] b) {
            return a[1] == b[1] && (a[1] == grid.top() || a[1] == grid.foot());
        }

        private static void end(List<double[]> piece, List<Points> lines) {
            if (piece.size() > 1) {
                lines.add(trail(piece));
            }
            piece.clear();
        }

        /** The rim of everything below the line; empty if nothing is. */
        List<Points> below() {
            if (points.stream().allMatch(point -> point[1] <= grid.foot())) {
                return List.of();
            }
            List<double[]> rim = new ArrayList<>(points);
            rim.add(new double[] {grid.right(), grid.foot()});
            rim.add(new double[] {grid.left(), grid.foot()});
            return List.of(trail(rim));
        }

        private static Points trail(List<double[]> corners) {
            double[] xs = new double[corners.size()];
            double[] ys = new double[corners.size()];
            for (int i = 0; i < xs.length; i++) {
                xs[i] = corners.get(i)[0];
                ys[i] = corners.get(i)[1];
            }
            return new Points(xs, ys);
        }
    }
}
