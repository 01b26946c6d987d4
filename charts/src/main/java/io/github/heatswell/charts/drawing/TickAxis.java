package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A scale whose ticks stand where its picture puts them: clock times and months are no multiples of anything. */
final class TickAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;

    private final double[] places;
    private final String[] names;

    TickAxis(String label, Axis axis) {
        super(label);
        places = axis.ticks().stream().mapToDouble(Tick::at).toArray();
        names = axis.ticks().stream().map(Tick::name).toArray(String[]::new);
        setAutoRange(false);
        setRange(axis.from(), axis.to());
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        TextAnchor anchor = edge == RectangleEdge.LEFT ? TextAnchor.CENTER_RIGHT : TextAnchor.TOP_CENTER;
        return IntStream.range(0, names.length)
                .mapToObj(i -> new NumberTick(places[i], names[i], anchor, TextAnchor.CENTER, 0))
                .toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TickAxis axis
                && super.equals(other)
                && Arrays.equals(places, axis.places)
                && Arrays.equals(names, axis.names);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + Arrays.hashCode(names);
    }
}
