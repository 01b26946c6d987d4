package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Bars;
import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Spot;
import io.github.heatswell.charts.picture.Tint;
import java.util.ArrayList;
import java.util.List;

/** A picture of a plane in words, for those who cannot see it. */
final class PlaneDescription {

    private PlaneDescription() {}

    static String of(PlanePicture picture) {
        Plane plane = picture.plane();
        StringBuilder words = new StringBuilder(picture.caption().subtitle());
        words.append(" A chart of the ").append(plane.up().label());
        words.append(" over the ").append(plane.across().label()).append('.');
        List<String> parts = new ArrayList<>();
        List<String> bands = plane.tints().stream()
                .filter(tint -> tint.role() == Tint.Role.BAND && !tint.name().isEmpty())
                .map(Tint::name)
                .toList();
        if (!bands.isEmpty()) {
            parts.add("bands of " + plane.measured() + ": " + String.join(", ", bands));
        }
        plane.tints().stream()
                .filter(tint -> tint.role() != Tint.Role.BAND)
                .map(Tint::name)
                .forEach(parts::add);
        for (PlaneLine line : plane.lines()) {
            if (line.role() != PlaneLine.Role.CONTOUR) {
                parts.add(line.name().isEmpty() ? line.label() : line.name());
            }
        }
        plane.spots().stream().map(Spot::label).forEach(parts::add);
        parts.removeIf(String::isEmpty);
        if (!parts.isEmpty()) {
            words.append(' ').append(String.join("; ", parts)).append('.');
        }
        picture.bars().ifPresent(bars -> add(words, bars));
        return words.toString().strip();
    }

    private static void add(StringBuilder words, Bars bars) {
        words.append(' ').append(bars.heading()).append(": ");
        words.append(String.join(
                "; ",
                bars.bars().stream()
                        .map(bar -> bar.name() + " " + BarList.signed(bar.value()))
                        .toList()));
        words.append(". ").append(bars.note());
    }
}
