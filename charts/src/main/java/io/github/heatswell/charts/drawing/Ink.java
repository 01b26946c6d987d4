package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import java.awt.BasicStroke;
import java.awt.Color;

/**
 * Colours and lines. The colours differ in lightness too, and none of them carries a meaning alone: dashes, widths, shapes
 * and words do, so a grey print says the same. Levels differ in their dashes, the graver the heavier; runs differ in dash
 * and width, the first the widest, so that runs on top of each other can still be seen.
 */
final class Ink {

    static final Color PAPER = Color.WHITE;
    static final Color TEXT = new Color(0x1f2d36);
    static final Color QUIET_TEXT = new Color(0x52626c);
    static final Color GRID = new Color(0xe8ecee);
    static final Color HATCH = new Color(0xb9c2c7);
    /** Lines from words to what they are about. */
    static final Color LEADER = new Color(0x7b858b);

    static final Color FOOT = new Color(0x8a979f);

    static final Color PRESSURE = new Color(0x17506b);
    static final Color TEMPERATURE = new Color(0xa65a1a);
    static final Color ALARM = new Color(0x8c1c13);
    static final Color RELIEF = new Color(0xb0402f);
    static final Color SUPPLY = new Color(0x5b7030);
    static final Color PRECHARGE = new Color(0x6f4a86);

    static final Color TEMPERATURE_WASH = new Color(0xe9, 0xcf, 0xb4, 0x90);
    static final Color PRESSURE_WASH = new Color(0x8f, 0xb4, 0xc5, 0x90);

    static final Color RELIEF_WASH = new Color(0xd0938a);

    private static final Color[] RUNS = {
        new Color(0x5f93ab),
        new Color(0xc2571a),
        new Color(0x4d7a35),
        new Color(0x7a3f7d),
        new Color(0x2d3338),
        new Color(0x9a7a12)
    };

    private static final Color[] BANDS = {
        new Color(0xf6f3e6),
        new Color(0xcfe2d2),
        new Color(0x93c0bf),
        new Color(0x5692ab),
        new Color(0x35648e),
        new Color(0x233a66)
    };

    static final BasicStroke HAIR = solid(0.8f);
    static final BasicStroke LEADER_LINE = solid(0.8f);
    static final BasicStroke WASH = solid(6);
    static final BasicStroke RIM = solid(1.4f);
    static final BasicStroke END = solid(2.4f);
    static final BasicStroke HALO = solid(2.6f);
    static final BasicStroke HATCH_LINE = solid(1.0f);

    private static final BasicStroke[] RUN_LINES = {
        solid(4.2f),
        dashed(2.6f, 11, 4),
        dashed(2.6f, 2.5f, 3),
        solid(1.5f),
        dashed(2.1f, 14, 3.5f, 2.5f, 3.5f),
        dashed(1.5f, 5, 3.5f)
    };

    private Ink() {}

    static Color of(Curve.Role role) {
        return switch (role) {
            case PRESSURE, DAY_EDGE, CURVE -> PRESSURE;
            case SLOW_FADING, FAST_FADING, CONTOUR, TARGET, WORKING_PRESSURE -> TEXT;
            case TEMPERATURE, HOT_BRANCH, LOOP -> TEMPERATURE;
            case MAINS, STATIC -> SUPPLY;
            case DRIP, RELIEF_SET -> RELIEF;
            case GUIDE -> FOOT;
            default -> RUNS[role.ordinal() - Curve.Role.RUN_1.ordinal()];
        };
    }

    static Color of(Area area) {
        return switch (area.role()) {
            case LAYERS -> TEMPERATURE_WASH;
            case UNCERTAIN, PRESSURE_RANGE, DRAWN -> PRESSURE_WASH;
            case GIVEN_OFF -> RELIEF_WASH;
            case BAND -> band(area.shade());
            case DRIPS, ENDED_EARLY -> RELIEF;
        };
    }

    static Color of(Level.Kind kind) {
        return switch (kind) {
            case TEST_PRESSURE -> ALARM;
            case WORKING_PRESSURE, PLACE_LIMIT, CUT_OUT -> TEXT;
            case RELIEF_SET, RELIEF_RESEAT, RELIEF_TEMPERATURE -> RELIEF;
            case SUPPLY, MAINS -> SUPPLY;
            case PRECHARGE -> PRECHARGE;
            case SET_POINT -> TEMPERATURE;
        };
    }

    static Color of(Bands.Kind kind) {
        return switch (kind) {
            case HEATER -> TEMPERATURE;
            case DRAWS -> PRESSURE;
            case BYPASS -> SUPPLY;
            case RELIEF -> RELIEF;
            case SUPPLY_OFF -> TEXT;
        };
    }

    /** The colour of a band whose darkness is 0 to 1: the higher, the darker, so that they can be told apart in grey. */
    static Color band(double shade) {
        double place = Math.max(0, Math.min(1, shade)) * (BANDS.length - 1);
        int below = (int) Math.min(BANDS.length - 2, Math.floor(place));
        float rest = (float) (place - below);
        float[] from = BANDS[below].getRGBColorComponents(null);
        float[] to = BANDS[below + 1].getRGBColorComponents(null);
        return new Color(mix(from[0], to[0], rest), mix(from[1], to[1], rest), mix(from[2], to[2], rest));
    }

    private static float mix(float from, float to, float share) {
        return from + share * (to - from);
    }

    /** How a curve is dashed, and how wide it is. */
    static BasicStroke line(Curve.Role role) {
        return switch (role) {
            case PRESSURE -> solid(2.3f);
            case TEMPERATURE -> solid(2.1f);
            case HOT_BRANCH -> dashed(1.6f, 6, 3);
            case LOOP -> dashed(1.6f, 1.7f, 2.4f);
            case MAINS -> dashed(1.7f, 1.7f, 3.2f);
            case DAY_EDGE -> solid(1.1f);
            case SLOW_FADING -> dashed(1.3f, 1.5f, 2);
            case FAST_FADING -> dashed(1.3f, 9, 2.5f, 1.5f, 2.5f);
            case CONTOUR -> solid(0.9f);
            case DRIP -> solid(3.6f);
            case TARGET -> dashed(2.2f, 10, 4);
            case STATIC -> dashed(2.0f, 2, 3.5f);
            case RELIEF_SET -> dashed(2.0f, 9, 4);
            case WORKING_PRESSURE -> dashed(1.9f, 18, 5);
            case CURVE -> solid(2.4f);
            case GUIDE -> dashed(0.9f, 2, 3);
            default -> RUN_LINES[role.ordinal() - Curve.Role.RUN_1.ordinal()];
        };
    }

    /** What lies under a line so that it shows on dark and light patches alike. */
    static BasicStroke halo(Curve.Role role) {
        return solid(line(role).getLineWidth() + 2.4f);
    }

    /** How a level is dashed, and how wide it is. */
    static BasicStroke line(Level.Kind kind) {
        return switch (kind) {
            case TEST_PRESSURE -> solid(2.4f);
            case WORKING_PRESSURE -> dashed(1.7f, 18, 5);
            case PLACE_LIMIT -> dashed(2.2f, 10, 4);
            case RELIEF_SET -> dashed(1.7f, 9, 4);
            case RELIEF_RESEAT -> dashed(1.2f, 9, 3, 2, 3);
            case SUPPLY -> dashed(1.6f, 1.6f, 3.4f);
            case MAINS -> dashed(1.6f, 1.6f, 6.5f);
            case PRECHARGE -> dashed(1.4f, 4.5f, 4.5f);
            case SET_POINT -> dashed(1.2f, 9, 4);
            case RELIEF_TEMPERATURE -> dashed(1.7f, 9, 4);
            case CUT_OUT -> dashed(1.7f, 14, 3, 3, 3);
        };
    }

    private static BasicStroke solid(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed(float width, float... pattern) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }
}
