package io.github.heatswell.simulation;

import java.util.HashMap;
import java.util.Map;

/**
 * Notices a valve that hammers: with a feed that stands above its reseat pressure, a snap-acting valve opens and closes as
 * fast as the pipes fill. What it does then depends on its spring and its mass, which the model does not know.
 */
final class Chatter {

    /** So many openings in a row */
    private static final int OPENINGS = 500;
    /** within this time (s) on average for each are chatter. */
    private static final double SHORTEST_CYCLE = 1;

    private final Map<String, Row> rows = new HashMap<>();

    private static final class Row {
        private double began;
        private int openings;
    }

    /** Enters an opening; says whether the valve chatters. */
    boolean seen(double time, String valve) {
        Row row = rows.computeIfAbsent(valve, name -> new Row());
        if (time - row.began > row.openings * SHORTEST_CYCLE) {
            row.began = time;
            row.openings = 0;
        }
        row.openings++;
        return row.openings > OPENINGS;
    }
}
