package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel.Level;
import java.awt.BasicStroke;

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
    static final BasicStroke HALO = solid(2.6f);
    static final BasicStroke HATCH = solid(1.0f);

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
            default -> RUNS[role.ordinal() - Curve.Role.RUN_1.ordinal()];
        };
    }

    /** What lies under a line so that it shows on dark and light patches alike. */
    static BasicStroke halo(Curve.Role role) {
        return solid(of(role).getLineWidth() + 2.4f);
    }

    static BasicStroke of(Level.Kind kind) {
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
