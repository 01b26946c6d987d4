package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import java.awt.Color;

/**
 * The colours. They differ in lightness too, and none of them carries a meaning alone: dashes, widths, shapes and words
 * do, so a grey print says the same.
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
            case PRESSURE_RANGE, DRAWN -> PRESSURE_WASH;
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
}
