package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Bars;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Mark;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import java.util.ArrayList;
import java.util.List;

/** A text description of a picture, for screen readers. */
final class Description {

    private Description() {}

    /** What the picture shows. */
    static String of(Picture picture) {
        String shown = picture.key()
                .map(key -> withKey(picture, key))
                .orElseGet(() -> " Two charts over the " + picture.across().label() + "." + named(picture.upper())
                        + named(picture.lower()));
        return (picture.caption().subtitle() + shown).strip();
    }

    private static String named(Panel panel) {
        List<String> parts = new ArrayList<>();
        for (Curve curve : panel.curves()) {
            if (!curve.name().isEmpty()) {
                parts.add(curve.name() + (curve.label().isEmpty() ? "" : ", " + curve.label()));
            }
        }
        panel.areas().stream().map(Area::name).forEach(parts::add);
        for (Level level : panel.levels()) {
            parts.add(level.name() + " " + level.amount());
        }
        panel.marks().stream().map(Mark::label).forEach(parts::add);
        panel.bands().stream().map(Bands::label).forEach(parts::add);
        parts.removeIf(String::isEmpty);
        return " The " + panel.axis().label() + (parts.isEmpty() ? "." : ": " + String.join("; ", parts) + ".");
    }

    private static String withKey(Picture picture, Picture.Key key) {
        Panel panel = picture.upper();
        List<String> parts = new ArrayList<>();
        List<String> bands = panel.areas().stream()
                .filter(area -> area.role() == Area.Role.BAND && !area.name().isEmpty())
                .map(Area::name)
                .toList();
        if (!bands.isEmpty()) {
            parts.add("bands of " + key.measured() + ": " + String.join(", ", bands));
        }
        panel.areas().stream()
                .filter(area -> area.role() != Area.Role.BAND)
                .map(Area::name)
                .forEach(parts::add);
        panel.curves().stream()
                .filter(line -> line.role() != Curve.Role.CONTOUR)
                .map(line -> line.name().isEmpty() ? line.label() : line.name())
                .forEach(parts::add);
        panel.marks().stream().map(Mark::label).forEach(parts::add);
        parts.removeIf(String::isEmpty);
        return " A chart of the " + panel.axis().label() + " over the "
                + picture.across().label() + "."
                + (parts.isEmpty() ? "" : " " + String.join("; ", parts) + ".")
                + key.bars().map(Description::listed).orElse("");
    }

    private static String listed(Bars bars) {
        List<String> parts = bars.bars().stream()
                .map(bar -> bar.name() + " " + BarList.signed(bar.value()))
                .toList();
        return " " + bars.heading() + ": " + String.join("; ", parts) + ". " + bars.note();
    }
}
