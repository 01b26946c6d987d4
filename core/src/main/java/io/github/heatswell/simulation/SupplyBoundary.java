package io.github.heatswell.simulation;

import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.Supply;

/**
 * The cold feed as a boundary condition in absolute pressures: static pressure, flow resistance, and return flow.
 */
final class SupplyBoundary {

    /**
     * Flow resistance (Pa s/m3) of the service line: 0.3 bar at 20 L/min. It matters only in the seconds in which a
     * system fills to supply pressure. Own choice; common practice, no source.
     */
    private static final double SERVICE_LINE = 0.3e5 / (20e-3 / 60);
    /** Below this difference (Pa) the flow through a leaking seat is taken as proportional to it. */
    private static final double SMALL_DIFFERENCE = 100;

    /**
     * A bypass opens at least this far (Pa) above the mains, a centimetre of water: its disc has weight, and opening
     * and closing need two thresholds.
     */
    private static final double LEAST_BYPASS = 100;

    /** Whether nothing keeps water from going back. */
    final boolean open;
    /** Whether water goes back once the house exceeds the mains by {@link #bypassOpens}. */
    final boolean bypass;
    /** Lock-up pressure (Pa, absolute) of a reducing valve; infinite without one. */
    final double lockUp;
    /** Difference (Pa) at which the bypass opens. */
    final double bypassOpens;
    /** Droop per flow (Pa s/m3), 0 for a feed that holds its pressure. */
    final double droop;
    /** The same, but never 0: flow resistance while filling. */
    final double resistance;

    private final double seatLeakage;

    SupplyBoundary(Supply supply, double atmosphere) {
        open = supply.arrangement() == Supply.Arrangement.DIRECT;
        ReducingValve reducing = supply.reducingValve().orElse(null);
        bypass = reducing != null && reducing.bypassOpens().isPresent();
        bypassOpens = bypass ? Math.max(LEAST_BYPASS, reducing.bypassOpens().getAsDouble()) : 0;
        lockUp = reducing == null
                ? Double.POSITIVE_INFINITY
                : reducing.set().absolute(atmosphere) + reducing.lockUpRise();
        droop = reducing == null ? 0 : (reducing.lockUpRise() + reducing.droop()) / reducing.ratedFlow();
        resistance = droop > 0 ? droop : SERVICE_LINE;
        seatLeakage = supply.seatLeakage() / Math.sqrt(1e5);
    }

    /** Static pressure of the feed (Pa, absolute) at a mains pressure (Pa, absolute). */
    double standing(double mains) {
        return Math.min(mains, lockUp);
    }

    /** Whether the mains themselves, and not a reducing valve, limit the pressure. */
    boolean followsMains(double mains) {
        return mains <= lockUp;
    }

    /** Target pressure (Pa, absolute) of the system: the feed's from below, the bypass's from above. */
    double target(double pressure, double mains) {
        return returns(pressure, mains) ? mains + bypassOpens : standing(mains);
    }

    /**
     * Flow through {@link #resistance} into a system that is not at feed pressure; negative if water flows back.
     *
     * @param pressure pressure of the system (Pa, absolute)
     * @param mains pressure of the mains (Pa, absolute)
     * @return volume flow (m3/s)
     */
    double filling(double pressure, double mains) {
        double shortfall = standing(mains) - pressure;
        if (shortfall > 0 || open) {
            return shortfall / resistance;
        }
        double excess = pressure - mains - bypassOpens;
        return bypass && excess > 0 ? -excess / resistance : 0;
    }

    /** Whether the pressure is at or above the bypass opening pressure, within a pascal. */
    boolean returns(double pressure, double mains) {
        return bypass && pressure > mains + bypassOpens - 1;
    }

    /** Slope (m3/s/Pa) with which {@link #filling} falls with pressure. */
    double fillingSlope(double pressure, double mains) {
        boolean flows = open || pressure <= standing(mains) || bypass && pressure > mains + bypassOpens;
        return flows ? 1 / resistance : 0;
    }

    /**
     * Flow through the closed seat, from the higher to the lower side.
     *
     * @return volume flow (m3/s) into the system
     */
    double throughSeat(double pressure, double mains) {
        if (seatLeakage == 0) {
            return 0;
        }
        double difference = mains - pressure;
        return seatLeakage * difference / Math.sqrt(Math.abs(difference) + SMALL_DIFFERENCE);
    }

    /** Slope (m3/s/Pa) with which {@link #throughSeat} falls with system pressure. */
    double seatSlope(double pressure, double mains) {
        if (seatLeakage == 0) {
            return 0;
        }
        double difference = Math.abs(mains - pressure);
        double root = Math.sqrt(difference + SMALL_DIFFERENCE);
        return seatLeakage * (difference / 2 + SMALL_DIFFERENCE) / (root * root * root);
    }

    /** Whether the closed seat leaks. */
    boolean leaks() {
        return seatLeakage > 0;
    }
}
