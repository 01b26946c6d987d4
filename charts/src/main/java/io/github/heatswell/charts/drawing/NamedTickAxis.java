package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Tick;
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

/** A scale whose ticks stand at named places: clock times and months are no multiples of anything. */
final class NamedTickAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;

    private final double[] places;
    private final String[] names;

    NamedTickAxis(String label, List<Tick> ticks) {
        super(label);
        places = ticks.stream().mapToDouble(Tick::at).toArray();
        names = ticks.stream().map(Tick::name).toArray(String[]::new);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        return IntStream.range(0, names.length)
                .mapToObj(i -> new NumberTick(places[i], names[i], TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0))
                .toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NamedTickAxis axis
                && super.equals(other)
                && Arrays.equals(places, axis.places)
                && Arrays.equals(names, axis.names);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + Arrays.hashCode(names);
    }
}
