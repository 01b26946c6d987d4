package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.PlaneLine;
import java.awt.BasicStroke;
import java.awt.Color;

/** How bands and lines of a plane look. Bands grow darker with their values, so that they can be told apart in grey. */
final class PlaneInk {

    private static final int[][] BANDS = {
        {0xf6, 0xf3, 0xe6},
        {0xcf, 0xe2, 0xd2},
        {0x93, 0xc0, 0xbf},
        {0x56, 0x92, 0xab},
        {0x35, 0x64, 0x8e},
        {0x23, 0x3a, 0x66}
    };

    static final BasicStroke HALO = line(2.6f);
    static final BasicStroke HATCH = line(1.0f);

    private PlaneInk() {}

    /** The colour of a band whose darkness is 0 to 1. */
    static Color band(double shade) {
        double place = Math.max(0, Math.min(1, shade)) * (BANDS.length - 1);
        int below = (int) Math.min(BANDS.length - 2, Math.floor(place));
        double rest = place - below;
        int[] mixed = new int[3];
        for (int i = 0; i < 3; i++) {
            mixed[i] = (int) Math.round(BANDS[below][i] + rest * (BANDS[below + 1][i] - BANDS[below][i]));
        }
        return new Color(mixed[0], mixed[1], mixed[2]);
    }

    static Color color(PlaneLine.Role role) {
        return switch (role) {
            case CONTOUR, TARGET, WORKING_PRESSURE -> Ink.TEXT;
            case DRIP, RELIEF_SET -> Ink.RELIEF;
            case STATIC -> Ink.SUPPLY;
            case CURVE -> Ink.PRESSURE;
            case GUIDE -> Ink.FOOT;
        };
    }

    static BasicStroke stroke(PlaneLine.Role role) {
        return switch (role) {
            case CONTOUR -> line(0.9f);
            case DRIP -> line(3.6f);
            case TARGET -> line(2.2f, 10, 4);
            case STATIC -> line(2.0f, 2, 3.5f);
            case RELIEF_SET -> line(2.0f, 9, 4);
            case WORKING_PRESSURE -> line(1.9f, 18, 5);
            case CURVE -> line(2.4f);
            case GUIDE -> line(0.9f, 2, 3);
        };
    }

    /** What lies under a line so that it shows on dark and light bands alike. */
    static BasicStroke halo(PlaneLine.Role role) {
        return line(stroke(role).getLineWidth() + 2.4f);
    }

    private static BasicStroke line(float width, float... pattern) {
        return pattern.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }
}
