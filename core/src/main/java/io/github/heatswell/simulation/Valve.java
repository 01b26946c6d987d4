package io.github.heatswell.simulation;

import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;

/** A relief valve in pressures (Pa, absolute) at the height of the drain cock. */
final class Valve {

    /** What lifts an open valve. */
    enum Lift {
        /** On its seat, tight. */
        CLOSED,
        /** On its seat, which leaks. */
        SEEPING,
        /** Pressure. */
        PRESSURE,
        /** Temperature: fully. */
        TEMPERATURE;

        /** Whether the valve is off its seat. */
        boolean isOpen() {
            return this == PRESSURE || this == TEMPERATURE;
        }
    }

    final String name;
    final double setPressure;
    final double reseatPressure;
    /** Temperatures (K) of a T&amp;P valve; infinite for a valve that responds to pressure only. */
    final double opensAt;

    final double reseatsAt;
    final boolean onTank;
    final boolean stuckOpen;
    final boolean blocked;

    private final double fullLiftPressure;
    private final ReliefValve.LiftCharacteristic curve;
    /** Pressure of the air (Pa, absolute), likewise at the height of the drain cock. */
    final double atmosphere;

    private final double fullFlow;
    private final double stuckLift;
    /** Pressure (Pa, absolute) from which the closed seat leaks. */
    final double leaksFrom;

    private final double leakage;

    Valve(ReliefValve described, double air, double offset) {
        name = described.name();
        atmosphere = air + offset;
        setPressure = described.setPressure().absolute(air) + offset;
        reseatPressure = described.reseatPressure().absolute(air) + offset;
        fullLiftPressure = described.fullLiftPressure().absolute(air) + offset;
        opensAt = described.setTemperature().orElse(Double.POSITIVE_INFINITY);
        reseatsAt = described.reseatTemperature().orElse(Double.POSITIVE_INFINITY);
        onTank = described.location() == ReliefValve.Location.TANK_TOP;
        curve = described.liftCharacteristic();
        fullFlow = described.fullFlow();
        stuckOpen = described.condition() == ReliefFault.Condition.STUCK_OPEN;
        blocked = described.condition() == ReliefFault.Condition.BLOCKED;
        stuckLift = described.fault().stuckLift();
        leakage = described.fault().leakage();
        leaksFrom =
                described.fault().leaksFrom().map(p -> p.absolute(air) + offset).orElse(setPressure);
    }

    /**
     * Flow of the valve. Open, it is the lift times the full flow, scaled with the square root of the pressure
     * difference to the air, as for any orifice. Below the reseat pressure, where a modulating valve has closed, and
     * below the pressure at which its seat starts to leak, the line continues to negative flows, so that a trial step
     * of the solver beyond the event meets no kink.
     *
     * @param pressure pressure (Pa, absolute)
     * @param by what it is lifted by
     * @return volume flow (m3/s)
     */
    double flow(double pressure, Lift by) {
        if (pressure <= atmosphere) {
            return 0;
        }
        if (by.isOpen() || stuckOpen) {
            return lift(pressure, by) * throughFull(pressure);
        }
        return by == Lift.SEEPING ? leakage * (pressure - leaksFrom) / (setPressure - leaksFrom) : 0;
    }

    /** Slope of the open valve's flow with pressure (m3/s/Pa); 0 for a closed one. */
    double flowSlope(double pressure, Lift by) {
        if (pressure <= atmosphere || !by.isOpen()) {
            return 0;
        }
        double slope = by == Lift.TEMPERATURE || stuckOpen
                ? 0
                : curve.slope(share(pressure)) / (fullLiftPressure - reseatPressure);
        return throughFull(pressure) * (slope + lift(pressure, by) / (2 * (pressure - atmosphere)));
    }

    /** Slope of the seat leakage with pressure (m3/s/Pa); 0 for a tight seat or an open valve. */
    double seatLeakageSlope(Lift by) {
        return by == Lift.SEEPING ? leakage / (setPressure - leaksFrom) : 0;
    }

    /** Seat state of the closed valve at a pressure (Pa, absolute). */
    Lift onSeat(double pressure) {
        return seatLeaks() && pressure > leaksFrom ? Lift.SEEPING : Lift.CLOSED;
    }

    /** Whether the closed seat leaks. */
    boolean seatLeaks() {
        return leakage > 0 && !stuckOpen;
    }

    private double lift(double pressure, Lift by) {
        if (stuckOpen) {
            return stuckLift;
        }
        return by == Lift.TEMPERATURE ? 1 : curve.lift(share(pressure));
    }

    /** Where a pressure stands between reseat (0) and full lift (1). */
    private double share(double pressure) {
        return (pressure - reseatPressure) / (fullLiftPressure - reseatPressure);
    }

    private double throughFull(double pressure) {
        return fullFlow * Math.sqrt((pressure - atmosphere) / (fullLiftPressure - atmosphere));
    }
}
