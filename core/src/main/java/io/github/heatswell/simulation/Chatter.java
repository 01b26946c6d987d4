package io.github.heatswell.simulation;

import java.util.HashMap;
import java.util.Map;

/**
 * Detects chatter: with the feed above its reseat pressure, a snap-acting valve opens and closes as fast as the pipes
 * fill. What follows depends on spring and mass, which the model does not include.
 */
final class Chatter {

    /** This many openings in a row */
    private static final int OPENINGS = 500;
    /** within this average time (s) each are chatter, */
    private static final double MIN_CYCLE = 1;
    /**
     * or within this (s) where the feed stands above the reseat pressure: the feed drives the valve then, not
     * expansion, as long as the supply is open.
     */
    private static final double MIN_CYCLE_FED = 5;

    private final Map<String, Row> rows = new HashMap<>();

    private static final class Row {
        private double began;
        private int openings;
    }

    /**
     * Records an opening.
     *
     * @param time when (s)
     * @param valve the name of the valve
     * @param fed whether the feed stands above its reseat pressure
     * @return whether the valve chatters
     */
    boolean seen(double time, String valve, boolean fed) {
        Row row = rows.computeIfAbsent(valve, name -> new Row());
        if (time - row.began > row.openings * (fed ? MIN_CYCLE_FED : MIN_CYCLE)) {
            row.began = time;
            row.openings = 0;
        }
        row.openings++;
        return row.openings > OPENINGS;
    }
}
