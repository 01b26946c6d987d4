package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Points;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where values on a grid reach a level. Each cell is cut into four triangles about its middle, over which the value is
 * taken as straight; the parts at or above the level are put together to patches by letting the rims cancel that two
 * parts share.
 */
final class Contours {

    private final double[] across;
    private final double[] up;
    private final double[][] values;
    private final int corners;

    /**
     * Values on a grid.
     *
     * @param across the places to the right, rising
     * @param up the places upwards, rising
     * @param values the values, by place upwards and then to the right
     */
    Contours(double[] across, double[] up, double[][] values) {
        this.across = across;
        this.up = up;
        this.values = values;
        corners = across.length * up.length;
    }

    /** The rims of everything at or above a level. */
    List<Points> patches(double level) {
        return rings(level).stream().map(ring -> trail(ring, level)).toList();
    }

    /** The lines along which the level is passed, without the rim of the grid. */
    List<Points> lines(double level) {
        List<Points> lines = new ArrayList<>();
        for (List<Long> ring : rings(level)) {
            int size = ring.size();
            int start = 0;
            while (start < size && isCrossing(ring.get(start))) {
                start++;
            }
            List<Long> line = new ArrayList<>();
            for (int i = 0; i <= size; i++) {
                long vertex = ring.get((start + i) % size);
                if (isCrossing(vertex)) {
                    line.add(vertex);
                } else if (!line.isEmpty()) {
                    lines.add(trail(line, level));
                    line.clear();
                }
            }
            if (!line.isEmpty()) {
                lines.add(trail(line, level));
            }
        }
        return lines;
    }

    private List<List<Long>> rings(double level) {
        Map<Long, List<Long>> edges = new HashMap<>();
        for (int row = 0; row + 1 < up.length; row++) {
            for (int column = 0; column + 1 < across.length; column++) {
                int low = row * across.length + column;
                int high = low + across.length;
                int middle = corners + low;
                addPart(edges, level, low, low + 1, middle);
                addPart(edges, level, low + 1, high + 1, middle);
                addPart(edges, level, high + 1, high, middle);
                addPart(edges, level, high, low, middle);
            }
        }
        return chained(edges);
    }

    /** The part of a triangle at or above the level. */
    private void addPart(Map<Long, List<Long>> edges, double level, int... triangle) {
        List<Long> part = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int here = triangle[i];
            int next = triangle[(i + 1) % 3];
            boolean in = value(here) >= level;
            if (in) {
                part.add(vertex(here, here));
            }
            if (in != value(next) >= level) {
                part.add(vertex(Math.min(here, next), Math.max(here, next)));
            }
        }
        for (int i = 0; i < part.size(); i++) {
            addEdge(edges, part.get(i), part.get((i + 1) % part.size()));
        }
    }

    private static void addEdge(Map<Long, List<Long>> edges, Long from, Long to) {
        List<Long> back = edges.get(to);
        if (back == null || !back.remove(from)) {
            edges.computeIfAbsent(from, key -> new ArrayList<>()).add(to);
        }
    }

    private static List<List<Long>> chained(Map<Long, List<Long>> edges) {
        List<List<Long>> rings = new ArrayList<>();
        for (Long start : edges.keySet().stream().sorted().toList()) {
            while (!edges.get(start).isEmpty()) {
                List<Long> ring = new ArrayList<>();
                Long at = start;
                do {
                    ring.add(at);
                    at = edges.get(at).remove(0);
                } while (!at.equals(start));
                rings.add(ring);
            }
        }
        return rings;
    }

    private Points trail(List<Long> vertices, double level) {
        double[] xs = new double[vertices.size()];
        double[] ys = new double[vertices.size()];
        for (int i = 0; i < xs.length; i++) {
            int first = (int) (vertices.get(i) / (2L * corners));
            int second = (int) (vertices.get(i) % (2L * corners));
            double share = first == second ? 0 : (level - value(first)) / (value(second) - value(first));
            xs[i] = x(first) + share * (x(second) - x(first));
            ys[i] = y(first) + share * (y(second) - y(first));
        }
        return new Points(xs, ys);
    }

    /** A corner of the grid, the middle of a cell, or where the level is passed between two of them. */
    private long vertex(int first, int second) {
        return 2L * corners * first + second;
    }

    private boolean isCrossing(long vertex) {
        return vertex / (2L * corners) != vertex % (2L * corners);
    }

    private double value(int point) {
        if (point < corners) {
            return values[point / across.length][point % across.length];
        }
        int row = (point - corners) / across.length;
        int column = (point - corners) % across.length;
        return (values[row][column] + values[row + 1][column] + values[row][column + 1] + values[row + 1][column + 1])
                / 4;
    }

    private double x(int point) {
        int column = point % across.length;
        return point < corners ? across[column] : (across[column] + across[column + 1]) / 2;
    }

    private double y(int point) {
        int row = (point < corners ? point : point - corners) / across.length;
        return point < corners ? up[row] : (up[row] + up[row + 1]) / 2;
    }
}
