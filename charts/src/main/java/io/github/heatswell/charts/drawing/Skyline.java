package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Points;
import java.util.Arrays;

/** Where a curve runs, pixel column by pixel column: what words must keep clear of. */
final class Skyline {

    private final double left;
    private final double[] top;
    private final double[] bottom;

    Skyline(Points points, Frame frame) {
        left = frame.area().x();
        int columns = (int) Math.ceil(frame.area().width()) + 1;
        top = new double[columns];
        bottom = new double[columns];
        Arrays.fill(top, Double.POSITIVE_INFINITY);
        Arrays.fill(bottom, Double.NEGATIVE_INFINITY);
        add(points, frame);
    }

    /** How many pixel columns of a box the curve runs through. */
    int columnsThrough(Box box) {
        int first = column(box.x());
        int last = column(box.right());
        int through = 0;
        for (int i = first; i <= last; i++) {
            if (top[i] <= box.bottom() && bottom[i] >= box.y()) {
                through++;
            }
        }
        return through;
    }

    private void add(Points points, Frame frame) {
        for (int i = 0; i < points.count(); i++) {
            int before = Math.max(i - 1, 0);
            boolean onwards = points.across(before) <= points.across(i);
            int from = onwards ? before : i;
            int to = onwards ? i : before;
            double x0 = frame.x(points.across(from));
            double y0 = frame.y(points.up(from));
            double x1 = frame.x(points.across(to));
            double y1 = frame.y(points.up(to));
            int first = column(x0);
            int last = column(x1);
            for (int at = first; at <= last; at++) {
                see(at, heightAt(left + at, x0, y0, x1, y1));
                see(at, heightAt(left + at + 1, x0, y0, x1, y1));
            }
        }
    }

    private static double heightAt(double x, double x0, double y0, double x1, double y1) {
        if (x1 - x0 < 1e-9) {
            return y1;
        }
        double share = Math.min(1, Math.max(0, (x - x0) / (x1 - x0)));
        return y0 + share * (y1 - y0);
    }

    private void see(int at, double y) {
        top[at] = Math.min(top[at], y);
        bottom[at] = Math.max(bottom[at], y);
    }

    private int column(double x) {
        return Math.min(top.length - 1, Math.max(0, (int) Math.floor(x - left)));
    }
}
