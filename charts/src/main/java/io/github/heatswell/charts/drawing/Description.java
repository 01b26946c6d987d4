package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Caption;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Mark;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;

/** A picture in words, for those who cannot see it. */
final class Description {

    private Description() {}

    /** What the picture is called: the hazard, if there is one, and the finding. */
    static String name(Caption caption) {
        return caption.hazard().isEmpty() ? caption.title() : caption.hazard() + " " + caption.title();
    }

    /** What the picture shows. */
    static String of(Picture picture) {
        StringBuilder words = new StringBuilder(picture.caption().subtitle());
        words.append(" Two charts over the ").append(picture.time().label()).append('.');
        add(words, picture.upper());
        add(words, picture.lower());
        return words.toString().strip();
    }

    private static void add(StringBuilder words, Panel panel) {
        words.append(" The ").append(panel.axis().label()).append(':');
        for (Curve curve : panel.curves()) {
            if (!curve.name().isEmpty()) {
                String finding = curve.finding().isEmpty() ? "" : ", " + curve.finding();
                words.append(' ').append(curve.name()).append(finding).append(';');
            }
        }
        for (Area area : panel.areas()) {
            if (!area.name().isEmpty()) {
                words.append(' ').append(area.name()).append(';');
            }
        }
        for (Level level : panel.levels()) {
            words.append(' ')
                    .append(level.name())
                    .append(' ')
                    .append(level.amount())
                    .append(';');
        }
        for (Mark mark : panel.marks()) {
            if (!mark.label().isEmpty()) {
                words.append(' ').append(mark.label()).append(';');
            }
        }
        for (Bands bands : panel.bands()) {
            words.append(' ').append(bands.label()).append(';');
        }
        words.setCharAt(words.length() - 1, '.');
    }
}
