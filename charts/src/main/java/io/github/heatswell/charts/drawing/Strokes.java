package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import java.awt.BasicStroke;
import java.awt.Color;

/**
 * How lines are drawn. Levels differ in their dashes, the graver the heavier; runs differ in dash and width, the first
 * the widest, so that runs on top of each other can still be seen.
 */
final class Strokes {

    static final BasicStroke HAIR = solid(0.8f);
    static final BasicStroke LEADER = solid(0.8f);
    static final BasicStroke WASH = solid(6);
    static final BasicStroke RIM = solid(1.4f);
    static final BasicStroke END = solid(2.4f);

    private static final BasicStroke[] RUNS = {
        solid(4.2f),
        dashed(2.6f, 11, 4),
        dashed(2.6f, 2.5f, 3),
        solid(1.5f),
        dashed(2.1f, 14, 3.5f, 2.5f, 3.5f),
        dashed(1.5f, 5, 3.5f)
    };

    private Strokes() {}

    static BasicStroke of(Curve.Role role) {
        return switch (role) {
            case PRESSURE -> solid(2.3f);
            case TEMPERATURE -> solid(2.1f);
            case MAINS -> dashed(1.7f, 1.7f, 3.2f);
            case DAY_EDGE -> solid(1.1f);
            case SLOW_FADING -> dashed(1.3f, 1.5f, 2);
            case FAST_FADING -> dashed(1.3f, 9, 2.5f, 1.5f, 2.5f);
            default -> RUNS[role.ordinal() - Curve.Role.RUN_1.ordinal()];
        };
    }

    static Color color(Curve.Role role) {
        return switch (role) {
            case PRESSURE, DAY_EDGE -> Ink.PRESSURE;
            case SLOW_FADING, FAST_FADING -> Ink.TEXT;
            case TEMPERATURE -> Ink.TEMPERATURE;
            case MAINS -> Ink.SUPPLY;
            default -> Ink.run(role.ordinal() - Curve.Role.RUN_1.ordinal());
        };
    }

    static Color color(Area.Role role) {
        return switch (role) {
            case LAYERS -> Ink.TEMPERATURE_WASH;
            case PRESSURE_RANGE -> Ink.PRESSURE_WASH;
            case GIVEN_OFF -> Ink.RELIEF_WASH;
            case DRAWN -> Ink.PRESSURE_WASH;
        };
    }

    static BasicStroke of(Level.Kind kind) {
        return switch (kind) {
            case TEST_PRESSURE -> solid(2.4f);
            case WORKING_PRESSURE -> dashed(1.7f, 18, 5);
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

    static Color color(Level.Kind kind) {
        return switch (kind) {
            case TEST_PRESSURE -> Ink.ALARM;
            case WORKING_PRESSURE -> Ink.TEXT;
            case RELIEF_SET, RELIEF_RESEAT, RELIEF_TEMPERATURE -> Ink.RELIEF;
            case CUT_OUT -> Ink.TEXT;
            case SUPPLY, MAINS -> Ink.SUPPLY;
            case PRECHARGE -> Ink.PRECHARGE;
            case SET_POINT -> Ink.TEMPERATURE;
        };
    }

    private static BasicStroke solid(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed(float width, float... pattern) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }
}
