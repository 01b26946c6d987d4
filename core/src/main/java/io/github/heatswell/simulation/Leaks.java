package io.github.heatswell.simulation;

/**
 * What the cold branch loses through a hole, and gains through the closed but leaking seat of its feed, by their
 * curves.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class Leaks {

    private final CompiledSystem plant;
    private double seatFlow;
    private double seatSlope;
    private double leakFlow;
    private double leakSlope;

    Leaks(CompiledSystem plant) {
        this.plant = plant;
    }

    /**
     * Evaluates the flows.
     *
     * @param p pressure of the system (Pa, absolute)
     * @param mains pressure of the mains (Pa, absolute)
     * @param density of the cold water (kg/m3)
     * @param supplyOpen whether the supply is open
     */
    void prepare(double p, double mains, double density, boolean supplyOpen) {
        seatFlow = 0;
        seatSlope = 0;
        if (plant.feed.leaks() && supplyOpen) {
            seatFlow = density * plant.feed.throughSeat(p, mains);
            seatSlope = density * plant.feed.seatSlope(p, mains);
        }
        leakFlow = 0;
        leakSlope = 0;
        if (plant.leakage > 0 && p > plant.atmosphere) {
            leakFlow = density * plant.leakage * Math.sqrt(p - plant.atmosphere);
            leakSlope = leakFlow / (2 * (p - plant.atmosphere));
        }
    }

    /** Takes the flows at a pressure this much (Pa) higher, along their slopes. */
    void shift(double higher) {
        leakFlow += higher * leakSlope;
        seatFlow -= higher * seatSlope;
    }

    /** Mass flow (kg/s) out of the hole. */
    double out() {
        return leakFlow;
    }

    /** Slope (kg/s/Pa) with which {@link #out} grows with pressure. */
    double outSlope() {
        return leakSlope;
    }

    /** Mass flow (kg/s) in through the feed's seat; negative if water goes back. */
    double in() {
        return seatFlow;
    }

    /** Slope (kg/s/Pa) with which {@link #in} falls with pressure. */
    double inSlope() {
        return seatSlope;
    }
}
