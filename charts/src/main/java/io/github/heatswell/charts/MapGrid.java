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

    MapGrid(PeakMap map, UnitSystem units) {
        this.map = map;
        this.units = units;
        across = new double[map.prechargeCount()];
        up = new double[map.volumeCount()];
        peaks = new double[up.length][across.length];
        for (int j = 0; j < across.length; j++) {
            across[j] = pressure(map.prechargeGauge(j));
        }
        for (int i = 0; i < up.length; i++) {
            up[i] = height(map.volume(i));
            for (int j = 0; j < across.length; j++) {
                peaks[i][j] = pressure(map.peakGauge(i, j));
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
        return threshold(
                map::dripVolume, pressure(map.setting().reliefSetGauge().orElseThrow()));
    }

    /** Where the peak comes down to the target. */
    Threshold target() {
        return threshold(map::targetVolume, pressure(map.setting().targetGauge().orElseThrow()));
    }

    /** Where the peak comes down to the test pressure of the tank, at which a run ends. */
    Threshold ended() {
        return threshold(map::endedVolume, pressure(testPressure()));
    }

    /** Where the peak comes down to a pressure, in the unit of the map. */
    Threshold level(double limit) {
        double gauge = units.pressure().toSi(limit);
        return threshold(column -> map.volumeBelow(column, gauge), limit);
    }

    /** The pressure (Pa, gauge) at which a run ends. */
    double testPressure() {
        double atmosphere = map.setting().system().site().atmosphere();
        return map.setting().system().tank().testPressureAbsolute(atmosphere) - atmosphere;
    }

    private Threshold threshold(IntFunction<OptionalDouble> volumes, double limit) {
        double[] heights = new double[across.length];
        for (int j = 0; j < across.length; j++) {
            OptionalDouble volume = volumes.apply(j);
            heights[j] = volume.isPresent() ? height(volume.getAsDouble()) : Double.POSITIVE_INFINITY;
        }
        return new Threshold(this, heights, limit);
    }

    /**
     * The line on a map above which peaks stay below a limit: as found at each precharge, and in between where the peak of each
     * volume passes the limit. Where the peak jumps from one precharge to the next, the vessel is full of water; such vessels have a
     * reciprocal volume that is straight over the precharge (the gas law, for a full vessel has a fixed share of its volume left to
     * its gas), and so is the line there.
     */
    static final class Threshold {

        /** From this share of the test pressure on, a step of the peak is a jump. */
        private static final double JUMP = 0.02;

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
                    addBetween(heights, j);
                }
                points.add(new double[] {grid.across[j], Math.min(heights[j], grid.top())});
            }
        }

        /** Where the line passes the volumes of the map between two precharges, and the rim of the map. */
        private void addBetween(double[] heights, int column) {
            double before = heights[column - 1];
            double after = heights[column];
            int rows = grid.up.length;
            for (int i = 0; i < rows; i++) {
                int row = before < after ? i : rows - 1 - i;
                double up = grid.up[row];
                boolean passed = row == 0
                        ? before <= up != after <= up
                        : row == rows - 1 ? before > up != after > up : before < up != after < up;
                if (passed && !jumps(row, column)) {
                    points.add(new double[] {crossing(row, column), up});
                } else if (passed) {
                    points.add(new double[] {full(heights, column, up), up});
                }
            }
        }

        private boolean jumps(int row, int column) {
            double step = Math.abs(grid.peaks[row][column] - grid.peaks[row][column - 1]);
            return step > JUMP * grid.pressure(grid.testPressure());
        }

        private double crossing(int row, int column) {
            double before = grid.peaks[row][column - 1];
            double after = grid.peaks[row][column];
            double share = before == after ? 0.5 : Math.max(0, Math.min(1, (limit - before) / (after - before)));
            return between(column, share);
        }

        /** Where the line of full vessels passes a height before a column; halfway where too little of it is on the map. */
        private double full(double[] heights, int column, double up) {
            int far = isOnMap(heights, column - 1) && isOnMap(heights, column)
                    ? column - 1
                    : isOnMap(heights, column) ? column + 1 : column - 2;
            int near = far == column - 2 ? column - 1 : column;
            if (!isOnMap(heights, near) || !isOnMap(heights, far) || heights[near] == heights[far]) {
                return between(column, 0.5);
            }
            double share = (reciprocal(up) - reciprocal(heights[near]))
                    / (reciprocal(heights[far]) - reciprocal(heights[near]));
            double x = grid.across[near] + share * (grid.across[far] - grid.across[near]);
            return Math.max(grid.across[column - 1], Math.min(grid.across[column], x));
        }

        private boolean isOnMap(double[] heights, int column) {
            return column >= 0
                    && column < heights.length
                    && heights[column] > grid.foot()
                    && heights[column] <= grid.top();
        }

        private static double reciprocal(double height) {
            return Math.pow(10, -height);
        }

        private double between(int column, double share) {
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
