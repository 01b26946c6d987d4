package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;

/**
 * Where the data of a panel lie on the sheet.
 *
 * @param area the plot without scale and names
 * @param time the time axis, from the left edge to the right
 * @param values the axis of the values, from the lower edge to the upper
 */
record Frame(Box area, Axis time, Axis values) {

    double x(double at) {
        return area.x() + (at - time.from()) / (time.to() - time.from()) * area.width();
    }

    double y(double value) {
        return area.bottom() - (value - values.from()) / (values.to() - values.from()) * area.height();
    }
}
