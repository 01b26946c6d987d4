package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Tick;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A scale whose ticks stand at named places: clock times and months are no multiples of anything. */
final class NamedTickAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;

    // Nothing here is ever written out as a Java object; the library's axes only could be.
    private final transient List<Tick> ticks;

    NamedTickAxis(String label, List<Tick> ticks) {
        super(label);
        this.ticks = List.copyOf(ticks);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        return ticks.stream()
                .map(tick -> new NumberTick(tick.at(), tick.name(), TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0))
                .toList();
    }
}
