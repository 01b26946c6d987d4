package io.github.heatswell.diagnosis;

/** How much each reading of a log tells: what averages out of it, and which readings are looser than others. Immutable. */
final class ReadingWeights {

    private final PressureLog log;
    /** The uncertainty (Pa) that somebody gave; null if none. */
    private final Double given;

    private final boolean[] rough;
    private final double hidden;
    private final double averaging;

    ReadingWeights(PressureLog log, LogNoise noise, Double given, boolean[] rough) {
        this.log = log;
        this.given = given;
        this.rough = rough;
        hidden = noise.hidden();
        averaging = given == null ? noise.error() : given;
    }

    /**
     * How far a pressure lies beyond all that a reading may stand for, in standard deviations of what averages out.
     *
     * @param index the number of the reading, from 0
     * @param pressure the pressure (Pa, gauge)
     */
    double beyond(int index, double pressure) {
        double above = pressure - log.gauge(index);
        double beyond = Math.max(0, Math.abs(above) - hidden);
        return Math.copySign(beyond, above) / averaging;
    }

    /** The standard deviation (Pa) of a reading that averages out. */
    double averaging() {
        return averaging;
    }

    /** Whether somebody said how uncertain a reading is, which is then all there is. */
    boolean isGivenItsUncertainty() {
        return given != null;
    }

    /**
     * How much less a reading tells than one of a pressure at rest (-, at least 1): the time of a reading by hand may be a minute off, in
     * which a pressure moves that changes both before and after. A given uncertainty counts as it is.
     */
    double looseness(int index) {
        return roughness(index) * slack(index);
    }

    /** How much less a reading tells that is only about right (-, at least 1). */
    double roughness(int index) {
        return rough[index] ? Math.hypot(1, PressureLog.ROUGH / log.uncertainty()) : 1;
    }

    private double slack(int index) {
        double before = index == 0 ? Double.POSITIVE_INFINITY : slope(index);
        double after = index == log.count() - 1 ? Double.POSITIVE_INFINITY : slope(index + 1);
        double moved = Math.min(before, after) * PressureLog.BY_HAND;
        return given != null || log.tellsItsScatter() ? 1 : Math.hypot(1, moved / log.uncertainty());
    }

    /** How fast the pressure changed up to a reading (Pa/s), whichever way. */
    private double slope(int index) {
        return Math.abs(log.gauge(index) - log.gauge(index - 1)) / (log.time(index) - log.time(index - 1));
    }
}
