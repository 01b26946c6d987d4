package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Contributions.Outlet;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.Supply;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The cold feed as a boundary condition in absolute pressures: static pressure, flow resistance, and return flow. Its
 * mode says whether what passes through it, its seat included, goes back to the mains.
 */
final class SupplyBoundary extends Device<Boolean> {

    /** Half the gap (Pa) between the two thresholds of a check valve. */
    private static final double PRESSURE_GAP = 1e-4;
    /** Half the gap (kg/s) between the two thresholds of a flow that only turns round: rounding. */
    private static final double NO_FLOW = 1e-13;

    /**
     * Flow resistance (Pa s/m3) of the service line: 0.3 bar at 20 L/min. It matters only in the seconds in which a
     * system fills to supply pressure. Own choice; common practice, no source.
     */
    static final double SERVICE_LINE = 0.3e5 / (20e-3 / 60);
    /** Below this difference (Pa) the flow through a leaking seat is taken as proportional to it. */
    private static final double SMALL_DIFFERENCE = 100;

    /**
     * A bypass opens at least this far (Pa) above the mains, a centimetre of water: its disc has weight, and opening
     * and closing need two thresholds.
     */
    private static final double MIN_BYPASS = 100;

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

    /** The flow from the mains turns round; nothing else changes. */
    final UnaryOperator<Modes> turn = modes -> modes.changed(this, outward -> !outward);

    private final double seatLeakage;

    /**
     * Prepares a feed.
     *
     * @param slots gives out the places in the state
     * @param supply its description
     * @param atmosphere air pressure (Pa, absolute)
     * @param serviceLine flow resistance of the service line (Pa s/m3)
     */
    SupplyBoundary(StateVector.Slots slots, Supply supply, double atmosphere, double serviceLine) {
        super(slots);
        open = supply.arrangement() == Supply.Arrangement.DIRECT;
        ReducingValve reducing = supply.reducingValve().orElse(null);
        bypass = reducing != null && reducing.bypassOpens().isPresent();
        bypassOpens = bypass ? Math.max(MIN_BYPASS, reducing.bypassOpens().getAsDouble()) : 0;
        lockUp = reducing == null
                ? Double.POSITIVE_INFINITY
                : reducing.set().absolute(atmosphere) + reducing.lockUpRise();
        droop = reducing == null ? 0 : (reducing.lockUpRise() + reducing.droop()) / reducing.ratedFlow();
        resistance = droop > 0 ? droop : serviceLine;
        seatLeakage = supply.seatLeakage() / Math.sqrt(1e5);
    }

    @Override
    Boolean resting() {
        return false;
    }

    @Override
    boolean contributes(Modes modes, Conditions now) {
        return leaks() && now.supplyOpen();
    }

    @Override
    void contribute(double[] y, Modes modes, Contributions to) {
        double p = y[StateVector.PRESSURE];
        double mains = y[StateVector.MAINS];
        double density = to.density(false);
        to.pass(Outlet.SUPPLY, false, -1, -density * throughSeat(p, mains), density * seatSlope(p, mains));
    }

    /** Adds what ends the pressure regime, what turns the flow round, and what opens the closed supply. */
    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        PressureRegime rule = now.modes().rule;
        rule.addEnds(to, now, this);
        boolean connected = now.conditions().supplyOpen();
        if (open || leaks() && connected) {
            double side = now.modes().of(this) ? -1 : 1;
            Balance balance = now.balance();
            to.add(EventDetector.ofFlows(turn, y -> side * balance.fromMains() + NO_FLOW));
        }
        if (leaks() && connected && rule == PressureRegime.SETTLED && followsMains(now.start()[StateVector.MAINS])) {
            // a settled pressure may stand a pascal off its equilibrium, and its flow be past its turning before it is
            Balance balance = now.balance();
            to.add(EventDetector.ofFlows(EventDetector.FREED, y -> PressureRegime.FLOW_GAP - balance.fromMains()));
        }
        boolean shut = rule == PressureRegime.FREE || rule == PressureRegime.SETTLED;
        if (shut && connected) {
            to.add(EventDetector.silent(EventDetector.FREED, y -> aboveFeed(y) + PRESSURE_GAP));
            if (bypass) {
                to.add(EventDetector.silent(EventDetector.FREED, y -> PRESSURE_GAP - aboveBypass(y)));
            }
        }
    }

    private double aboveFeed(double[] y) {
        return y[StateVector.PRESSURE] - standing(y[StateVector.MAINS]);
    }

    private double aboveBypass(double[] y) {
        return y[StateVector.PRESSURE] - y[StateVector.MAINS] - bypassOpens;
    }

    /** The feed closes where it would have to take water back. */
    void addEndOfHeld(List<EventDetector> to, Segment now) {
        Balance balance = now.balance();
        if (!open) {
            to.add(EventDetector.ofFlows(EventDetector.FREED, y -> balance.supplyFlow() + PressureRegime.FLOW_GAP));
        }
        if (lockUp < Double.POSITIVE_INFINITY) {
            addReducingValve(to, now);
        }
    }

    /** The bypass closes where the mains would have to give water. */
    void addEndOfReturning(List<EventDetector> to, Segment now) {
        Balance balance = now.balance();
        to.add(EventDetector.ofFlows(EventDetector.FREED, y -> PressureRegime.FLOW_GAP - balance.supplyFlow()));
    }

    /** The pressure has come to the feed's, or passed it. */
    void addEndOfFilling(List<EventDetector> to, Segment now) {
        boolean down = returns(now.start()[StateVector.PRESSURE], now.start()[StateVector.MAINS]);
        to.add(EventDetector.ofFlows(
                droop > 0 && !down ? EventDetector.FOLLOW : EventDetector.FREED,
                now.balance().response()::distanceFromFilled));
        if (!open && aboveFeed(now.start()) < PRESSURE_GAP) {
            to.add(EventDetector.silent(EventDetector.FREED, y -> PRESSURE_GAP - aboveFeed(y)));
        } else if (down) {
            to.add(EventDetector.silent(EventDetector.FREED, y -> aboveBypass(y) + PRESSURE_GAP));
        }
    }

    /**
     * A reducing valve stops regulating when the mains pressure falls below its outlet pressure, and resumes above it.
     * Its outlet starts to follow the flow above a small droop, and stops well below it.
     */
    private void addReducingValve(List<EventDetector> to, Segment now) {
        PressureResponse response = now.balance().response();
        double side = followsMains(now.start()[StateVector.MAINS]) ? 1 : -1;
        to.add(EventDetector.silent(EventDetector.FREED, y -> side * (lockUp - y[StateVector.MAINS]) + PRESSURE_GAP));
        if (response.droops(now.start())) {
            to.add(EventDetector.silent(
                    EventDetector.FREED, y -> -aboveFeed(y) - ReducingValveOutlet.LITTLE_DROOP / 2));
        } else if (droop > 0) {
            to.add(EventDetector.ofFlows(
                    EventDetector.FREED, y -> 1.01 * ReducingValveOutlet.LITTLE_DROOP - response.droopOfFlow()));
        }
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
    @Override
    boolean leaks() {
        return seatLeakage > 0;
    }
}
