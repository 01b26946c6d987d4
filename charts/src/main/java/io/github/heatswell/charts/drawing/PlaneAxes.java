package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Tick;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** The two scales of a plane: ticks with their numbers, the rim, the names of the axes and, if wanted, a grid. */
final class PlaneAxes {

    /** The room below the plot for numbers and the name of the axis. */
    static final double BELOW = 46;

    private static final double TICK = 5;
    private static final double GAP = 4;

    private final Frame frame;

    PlaneAxes(Frame frame) {
        this.frame = frame;
    }

    /** The room left of the plot for the numbers. */
    static double leftOf(Axis up) {
        return ticks(up).stream()
                        .mapToDouble(tick -> Type.width(tick.name(), Type.TICK))
                        .max()
                        .orElse(0)
                + TICK
                + 2 * GAP;
    }

    void drawGrid(Graphics2D g) {
        g.setPaint(Ink.GRID);
        g.setStroke(Strokes.HAIR);
        for (Tick tick : ticks(frame.time())) {
            double x = frame.x(tick.at());
            g.draw(new Line2D.Double(x, frame.area().y(), x, frame.area().bottom()));
        }
        for (Tick tick : ticks(frame.values())) {
            double y = frame.y(tick.at());
            g.draw(new Line2D.Double(frame.area().x(), y, frame.area().right(), y));
        }
    }

    void drawScales(Graphics2D g) {
        Box area = frame.area();
        g.setPaint(Ink.FOOT);
        g.setStroke(Strokes.HAIR);
        g.draw(area.shape());
        double row = Type.lineHeight(Type.TICK);
        for (Tick tick : ticks(frame.time())) {
            double x = frame.x(tick.at());
            g.setPaint(Ink.FOOT);
            g.draw(new Line2D.Double(x, area.bottom(), x, area.bottom() + TICK));
            double half = Type.width(tick.name(), Type.TICK) / 2;
            write(g, tick.name(), x - half, area.bottom() + TICK + 2);
        }
        for (Tick tick : ticks(frame.values())) {
            double y = frame.y(tick.at());
            g.setPaint(Ink.FOOT);
            g.draw(new Line2D.Double(area.x() - TICK, y, area.x(), y));
            write(g, tick.name(), area.x() - TICK - GAP - Type.width(tick.name(), Type.TICK), y - row / 2);
        }
        TextBlock across = TextBlock.of(frame.time().label(), Type.HEADING, area.width());
        across.draw(g, area.centreX() - across.width() / 2, area.bottom() + TICK + row + 6, Ink.TEXT);
    }

    private static void write(Graphics2D g, String number, double x, double y) {
        TextBlock.of(number, Type.TICK, Double.MAX_VALUE).draw(g, x, y, Ink.QUIET_TEXT);
    }

    static List<Tick> ticks(Axis axis) {
        if (!axis.named().isEmpty()) {
            return axis.named();
        }
        List<Tick> ticks = new ArrayList<>();
        int decimals =
                Math.max(0, BigDecimal.valueOf(axis.tick()).stripTrailingZeros().scale());
        double slack = 1e-9 * axis.tick();
        for (long i = (long) Math.ceil((axis.from() - slack) / axis.tick());
                i * axis.tick() <= axis.to() + slack;
                i++) {
            BigDecimal at = BigDecimal.valueOf(i * axis.tick()).setScale(decimals, RoundingMode.HALF_UP);
            ticks.add(new Tick(i * axis.tick(), at.toPlainString()));
        }
        return ticks;
    }
}
