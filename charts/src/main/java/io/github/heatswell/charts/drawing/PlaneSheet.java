package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlanePicture;
import java.awt.Graphics2D;
import java.util.Optional;

/** Draws a picture of a plane: words above, the plane at the left, bars and key at the right. */
final class PlaneSheet implements Drawn {

    private static final double BELOW_HEADER = 18;
    private static final double HEADING = 23;
    private static final double BESIDE_PLANE = 24;
    private static final double BELOW_BARS = 18;
    private static final double KEY_SHARE = 0.235;
    private static final double BARS_SHARE = 0.40;
    private static final double LEAST_KEY = 190;
    private static final double LEAST_PLANE = 300;

    private final PlanePicture picture;
    private final Header header;
    private final UprightNames names;
    private final Optional<BarList> bars;
    private final PlaneKey key;
    private final Frame frame;
    private final double height;
    private final double column;

    PlaneSheet(PlanePicture picture) {
        this.picture = picture;
        Plane plane = picture.plane();
        double inner = picture.size().width() - 2 * SheetLayout.MARGIN;
        double share = picture.bars().isPresent() ? BARS_SHARE : KEY_SHARE;
        column = Math.max(LEAST_KEY, share * inner);
        header = Header.of(picture.caption(), inner);
        bars = picture.bars().map(list -> new BarList(list, column));
        key = new PlaneKey(plane, column);
        double left = SheetLayout.MARGIN + PlaneAxes.leftOf(plane.up());
        double right = SheetLayout.MARGIN + inner - column - BESIDE_PLANE;
        Frame flat = new Frame(new Box(left, 0, right - left, 1), plane.across(), plane.up());
        double top = SheetLayout.MARGIN
                + header.height()
                + BELOW_HEADER
                + HEADING
                + UprightNames.of(plane, flat).height();
        double beside = top - HEADING + columnHeight() + SheetLayout.MARGIN;
        height = Math.ceil(Math.max(picture.size().height(), Math.max(beside, top + LEAST_PLANE + PlaneAxes.BELOW)));
        double bottom = height - SheetLayout.MARGIN / 2 - PlaneAxes.BELOW;
        frame = new Frame(new Box(left, top, right - left, bottom - top), plane.across(), plane.up());
        names = UprightNames.of(plane, frame);
    }

    private double columnHeight() {
        return bars.map(list -> list.height() + BELOW_BARS).orElse(0.0) + key.height();
    }

    /** Where the plane lies. */
    Frame frame() {
        return frame;
    }

    /** The right edge of everything drawn. */
    Box columnBox() {
        double x = frame.area().right() + BESIDE_PLANE;
        return new Box(x, frame.area().y() - names.height(), column, columnHeight());
    }

    @Override
    public double width() {
        return picture.size().width();
    }

    @Override
    public double height() {
        return height;
    }

    @Override
    public String name() {
        return Description.name(picture.caption());
    }

    @Override
    public String description() {
        return PlaneDescription.of(picture);
    }

    @Override
    public String fingerprint() {
        return Fingerprint.of(picture);
    }

    @Override
    public void draw(Graphics2D g) {
        Paper.prepare(g, width(), height());
        header.draw(g, SheetLayout.MARGIN, SheetLayout.MARGIN);
        TextBlock up = TextBlock.of(
                picture.plane().up().label(), Type.HEADING, frame.area().width());
        up.draw(g, SheetLayout.MARGIN, frame.area().y() - names.height() - HEADING, Ink.TEXT);
        new PlaneDrawing(picture.plane(), frame).draw(g);
        names.draw(g, frame);
        Box beside = columnBox();
        bars.ifPresent(list -> list.draw(g, beside.x(), beside.y()));
        double below = bars.map(list -> list.height() + BELOW_BARS).orElse(0.0);
        key.draw(g, beside.x(), beside.y() + below);
    }
}
