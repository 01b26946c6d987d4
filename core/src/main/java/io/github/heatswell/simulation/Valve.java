package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.simulation.Contributions.Outlet;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/** A relief valve in pressures (Pa, absolute) at the height of the drain cock. */
final class Valve extends Device<Valve.Lift> {

    /** Half the gap (Pa) between the two thresholds of a seat that leaks. */
    private static final double PRESSURE_GAP = 1e-4;
    /**
     * A modulating valve this close (Pa) to its reseat pressure passes a drop an hour and counts as closed; otherwise
     * it would approach the reseat pressure forever.
     */
    static final double RESEAT_GAP = 1e-2;
    /** This close (Pa) to air pressure an opening takes in air instead of discharging water. */
    static final double AT_ATMOSPHERE = MainsPressure.MIN_GAUGE;

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
    private final boolean higher;
    final boolean stuckOpen;
    final boolean blocked;

    private final double fullLiftPressure;
    private final ReliefValve.LiftCurve curve;
    /** Whether it is one of our own, which has a value everywhere. */
    private final boolean known;

    /** Pressure of the air (Pa, absolute), likewise at the height of the drain cock. */
    final double atmosphere;

    private final double fullFlow;
    private final double stuckLift;
    /** Pressure (Pa, absolute) from which the closed seat leaks. */
    final double leaksFrom;

    /** The slot of what it has discharged (kg). */
    final int relieved;

    private final double leakage;

    Valve(StateVector.Slots slots, ReliefValve described, double air, double offset) {
        super(slots);
        relieved = slots.discharge();
        name = described.name();
        atmosphere = air + offset;
        higher = offset > 0;
        setPressure = described.setPressure().absolute(air) + offset;
        reseatPressure = described.reseatPressure().absolute(air) + offset;
        fullLiftPressure = described.fullLiftPressure().absolute(air) + offset;
        opensAt = described.setTemperature().orElse(Double.POSITIVE_INFINITY);
        reseatsAt = described.reseatTemperature().orElse(Double.POSITIVE_INFINITY);
        onTank = described.location() == ReliefValve.Location.TANK_TOP;
        curve = described.liftCurve();
        known = described.liftCharacteristic().isPresent();
        fullFlow = described.fullFlow();
        stuckOpen = described.condition() == ReliefFault.Condition.STUCK_OPEN;
        blocked = described.condition() == ReliefFault.Condition.BLOCKED;
        stuckLift = described.fault().stuckLift();
        leakage = described.fault().leakage();
        leaksFrom =
                described.fault().leaksFrom().map(p -> p.absolute(air) + offset).orElse(setPressure);
    }

    @Override
    Lift resting() {
        return Lift.CLOSED;
    }

    @Override
    Modes atStart(Modes modes, double[] y) {
        return stuckOpen ? modes.with(this, Lift.PRESSURE) : modes;
    }

    /** A closed valve leaks above a pressure and is tight below it. */
    @Override
    Modes adapted(Modes modes, double[] y) {
        return modes.of(this).isOpen() ? modes : modes.with(this, onSeat(y[StateVector.PRESSURE]));
    }

    @Override
    boolean releases(Lift lift) {
        return lift.isOpen();
    }

    @Override
    boolean leaks() {
        return leakage > 0;
    }

    @Override
    boolean contributes(Modes modes, Conditions now) {
        return modes.of(this) != Lift.CLOSED;
    }

    @Override
    void contribute(double[] y, Modes modes, Contributions to) {
        Lift lift = modes.of(this);
        double p = y[StateVector.PRESSURE];
        double density = to.density(onTank);
        boolean open = lift.isOpen();
        to.pass(
                open ? Outlet.VALVE : Outlet.SEAT,
                onTank,
                relieved,
                density * flow(p, lift),
                density * (open ? flowSlope(p, lift) : seatLeakageSlope(lift)));
    }

    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        Lift lift = now.modes().of(this);
        if (!stuckOpen && !blocked) {
            if (lift.isOpen()) {
                addClosing(to, lift);
            } else {
                addOpening(to);
            }
        }
        if (seatLeaks()) {
            boolean leaks = lift.isOpen() ? now.start()[StateVector.PRESSURE] > leaksFrom : lift == Lift.SEEPING;
            double side = leaks ? -1 : 1;
            to.add(EventDetector.silent(
                    EventDetector.SAME, y -> side * (leaksFrom - y[StateVector.PRESSURE]) + PRESSURE_GAP));
        }
        if (lift.isOpen() && higher) {
            // it reaches air pressure before the tank does
            to.add(EventDetector.of(
                    Event.Kind.ATMOSPHERE_REACHED,
                    name,
                    EventDetector.SAME,
                    y -> y[StateVector.PRESSURE] - atmosphere - AT_ATMOSPHERE));
        }
    }

    private UnaryOperator<Modes> becoming(Lift lift) {
        return modes -> modes.with(this, lift);
    }

    private double belowSet(double[] y) {
        return setPressure - y[StateVector.PRESSURE];
    }

    private double belowHot(double[] y) {
        return opensAt - StateVector.top(y);
    }

    private void addOpening(List<EventDetector> to) {
        Event.Kind opened = Event.Kind.RELIEF_OPENED;
        UnaryOperator<Modes> hot = becoming(Lift.TEMPERATURE);
        if (opensAt < Double.POSITIVE_INFINITY) {
            to.add(EventDetector.opening(
                    opened, name, Event.OpeningCause.BOTH, hot, y -> Math.max(belowSet(y), belowHot(y))));
            to.add(EventDetector.opening(opened, name, Event.OpeningCause.TEMPERATURE, hot, this::belowHot));
        }
        to.add(EventDetector.opening(
                opened, name, Event.OpeningCause.PRESSURE, becoming(Lift.PRESSURE), this::belowSet));
    }

    private void addClosing(List<EventDetector> to, Lift lift) {
        UnaryOperator<Modes> closed = becoming(Lift.CLOSED);
        if (lift == Lift.TEMPERATURE) {
            to.add(EventDetector.of(
                    Event.Kind.RELIEF_RESEATED,
                    name,
                    closed,
                    y -> Math.max(StateVector.top(y) - reseatsAt, -belowSet(y))));
            return;
        }
        to.add(EventDetector.of(
                Event.Kind.RELIEF_RESEATED, name, closed, y -> y[StateVector.PRESSURE] - reseatPressure - RESEAT_GAP));
        if (opensAt < Double.POSITIVE_INFINITY) {
            to.add(EventDetector.opening(
                    Event.Kind.RELIEF_OPENED_FULLY,
                    name,
                    Event.OpeningCause.TEMPERATURE,
                    becoming(Lift.TEMPERATURE),
                    this::belowHot));
        }
    }

    /**
     * Flow of the valve. Open, it is the lift times the full flow, scaled with the square root of the pressure
     * difference to the air, as for any orifice; a worn seat lets pass what it leaks beside that, so that nothing jumps where the
     * valve comes to rest on it. Below the reseat pressure, where a modulating valve has closed, and
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
            double beside = seatLeaks() ? Math.max(0, leakage(pressure)) : 0;
            return lift(pressure, by) * throughFull(pressure) + beside;
        }
        return by == Lift.SEEPING ? leakage(pressure) : 0;
    }

    private double leakage(double pressure) {
        return leakage * (pressure - leaksFrom) / (setPressure - leaksFrom);
    }

    /** Slope of the open valve's flow with pressure (m3/s/Pa); 0 for a closed one. */
    double flowSlope(double pressure, Lift by) {
        if (pressure <= atmosphere || !by.isOpen()) {
            return 0;
        }
        double slope =
                by == Lift.TEMPERATURE || stuckOpen ? 0 : slope(share(pressure)) / (fullLiftPressure - reseatPressure);
        double beside = seatLeaks() && pressure > leaksFrom ? seatLeakageSlope(Lift.SEEPING) : 0;
        return throughFull(pressure) * (slope + lift(pressure, by) / (2 * (pressure - atmosphere))) + beside;
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
        return by == Lift.TEMPERATURE ? 1 : lift(share(pressure));
    }

    /**
     * Lift (-) at a share: the curve, full above it, and a straight line below it. A trial state of the solver may have no share
     * (NaN), and then has no lift.
     */
    private double lift(double share) {
        if (share >= 1) {
            return 1;
        }
        return share >= 0 ? Math.min(1, askedLift(share)) : askedLift(0) + share * askedSlope(0);
    }

    private double slope(double share) {
        if (share >= 1) {
            return 0;
        }
        return askedSlope(share >= 0 ? share : 0);
    }

    private double askedLift(double share) {
        return known ? curve.lift(share) : defined(curve::lift, share);
    }

    private double askedSlope(double share) {
        return known ? curve.slope(share) : defined(curve::slope, share);
    }

    private double defined(DoubleUnaryOperator part, double share) {
        return UndefinedCurveException.defined(
                () -> part.applyAsDouble(share),
                () -> "the lift curve of '" + name + "' at " + share + " between reseat (0) and full lift (1)");
    }

    /** Where a pressure stands between reseat (0) and full lift (1). */
    private double share(double pressure) {
        return (pressure - reseatPressure) / (fullLiftPressure - reseatPressure);
    }

    private double throughFull(double pressure) {
        return fullFlow * Math.sqrt((pressure - atmosphere) / (fullLiftPressure - atmosphere));
    }
}
