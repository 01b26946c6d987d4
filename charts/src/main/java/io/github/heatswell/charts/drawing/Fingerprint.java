package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Points;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32;

/** A short name for what a picture shows: the same for the same content, whenever and wherever it is drawn. */
final class Fingerprint {

    private final CRC32 sum = new CRC32();

    private Fingerprint() {}

    /** The name, fit for the start of an XML id. */
    static String of(Picture picture) {
        Fingerprint print = new Fingerprint();
        print.add(picture.size().toString() + picture.caption() + picture.time());
        print.add(picture.upper());
        print.add(picture.lower());
        return print.name();
    }

    /** The name of a picture of a plane, whose parts all say their content in words. */
    static String of(PlanePicture picture) {
        Fingerprint print = new Fingerprint();
        print.add(picture.toString());
        return print.name();
    }

    private String name() {
        return String.format(Locale.ROOT, "hs%08x", sum.getValue());
    }

    private void add(Panel panel) {
        add(panel.axis().toString() + panel.levels() + panel.marks() + panel.bands());
        for (Curve curve : panel.curves()) {
            add(curve.name() + curve.finding());
            add(curve.points());
        }
        for (Area area : panel.areas()) {
            add(area.name());
            add(area.low());
            add(area.high());
        }
    }

    private void add(Points points) {
        for (int i = 0; i < points.count(); i++) {
            add(points.time(i) + " " + points.value(i));
        }
    }

    private void add(String text) {
        sum.update(text.getBytes(StandardCharsets.UTF_8));
    }
}
