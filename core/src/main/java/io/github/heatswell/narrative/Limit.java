package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pressure that a run should stay below, and how far it stayed away from it.
 *
 * @param name what sets the limit
 * @param gauge the limit (Pa, gauge)
 * @param margin the limit less the highest pressure of the run (Pa, difference): what was left, or below 0 by how much it was
 *     passed
 */
public record Limit(String name, double gauge, double margin) {

    /** So close (Pa) to a limit a run ends where it is held at the limit. */
    private static final double ROUNDING = 1e-3;

    /** Pressures closer than this (Pa) are one and the same: events are located to about this. */
    private static final double SAME = 1;

    /** Ratings that belong together lie no further apart than this (-), as in the findings: 150 psi are 3 % above 10 bar. */
    private static final double APART = 1.05;

    /**
     * The set pressure of the working relief valve that opens first, as seen at the drain cock; empty without one: a blocked
     * valve limits nothing.
     *
     * @param result the run
     * @return the limit
     */
    public static Optional<Limit> reliefSet(RunSummary result) {
        return result.system().reliefValves().stream()
                .filter(ReliefValve::relieves)
                .map(valve -> of(valve.name(), setPressure(valve, result.system()), result))
                .min(Comparator.comparingDouble(Limit::gauge));
    }

    /**
     * The lowest set pressure of the working relief valves of a house, as seen at the drain cock.
     *
     * @param house the house
     * @return the pressure (Pa, gauge), or empty without a working valve
     */
    public static OptionalDouble reliefSetGauge(HotWaterSystem house) {
        return firstRelief(house).stream()
                .mapToDouble(valve -> setPressure(valve, house))
                .findFirst();
    }

    /**
     * The working relief valve of a house that opens first.
     *
     * @param house the house
     * @return the valve with the lowest set pressure as seen at the drain cock, or empty without a working one
     */
    public static Optional<ReliefValve> firstRelief(HotWaterSystem house) {
        return house.reliefValves().stream()
                .filter(ReliefValve::relieves)
                .min(Comparator.comparingDouble(valve -> setPressure(valve, house)));
    }

    /**
     * The relief valve of a house that opens last: all that is left when the others have failed, so that everything on the same water
     * must be made for its setting.
     *
     * @param house the house
     * @return the valve with the highest set pressure as seen at the drain cock, or empty without any
     */
    public static Optional<ReliefValve> lastRelief(HotWaterSystem house) {
        return house.reliefValves().stream().max(Comparator.comparingDouble(valve -> setPressure(valve, house)));
    }

    /**
     * The relief valve of a house that lets the pressure rise above what a plate allows.
     *
     * @param rating the pressure on the plate of a vessel
     * @param house the house
     * @return the valve that opens last, where it opens clearly above that
     */
    public static Optional<ReliefValve> opensAbove(Pressure rating, HotWaterSystem house) {
        double atmosphere = house.site().atmosphere();
        return lastRelief(house)
                .filter(valve -> valve.setPressure().gauge(atmosphere) > APART * rating.gauge(atmosphere));
    }

    /**
     * The highest set pressure of the relief valves of a house, as seen at the drain cock.
     *
     * @param house the house
     * @return the pressure (Pa, gauge), or empty without a valve
     */
    public static OptionalDouble lastReliefGauge(HotWaterSystem house) {
        return lastRelief(house).stream()
                .mapToDouble(valve -> setPressure(valve, house))
                .findFirst();
    }

    /** The gauge pressure (Pa) at the drain cock at which a valve opens: a valve above it sees less. */
    private static double setPressure(ReliefValve valve, HotWaterSystem system) {
        return system.atDrainCock(valve.setPressure(), valve.height())
                .gauge(system.site().atmosphere());
    }

    /**
     * The working pressure of the tank.
     *
     * @param result the run
     * @return the limit
     */
    public static Limit workingPressure(RunSummary result) {
        double air = result.system().site().atmosphere();
        return of("tank", result.system().tank().workingPressure().gauge(air), result);
    }

    /**
     * What the working pressure of a tank is called.
     *
     * @param house the house
     * @return that it is assumed, where nobody has read the plate
     */
    public static String workingPressureName(HotWaterSystem house) {
        return house.tank().workingPressureGiven() ? "tank working pressure" : "assumed working pressure";
    }

    /**
     * The moment at which a tank's working pressure is exceeded.
     *
     * @param house the house
     * @return such as {@code assumed working pressure exceeded}
     */
    public static String workingPressureExceeded(HotWaterSystem house) {
        String what = Event.Kind.WORKING_PRESSURE_EXCEEDED.description();
        return house.tank().workingPressureGiven() ? what : "assumed " + what;
    }

    /**
     * The test pressure of the tank, where the model ends.
     *
     * @param result the run
     * @return the limit
     */
    public static Limit testPressure(RunSummary result) {
        double air = result.system().site().atmosphere();
        return of("tank", result.system().tank().testPressureAbsolute(air) - air, result);
    }

    /**
     * What to show in place of a set pressure where no valve limits the pressure.
     *
     * @param house the house
     * @return that there is no relief valve, or none that works
     */
    public static String withoutRelief(HotWaterSystem house) {
        return house.reliefValves().isEmpty() ? "no relief valve" : "no working relief valve";
    }

    /**
     * How much room the run left below the limit.
     *
     * @return such as {@code 1.2 bar left}, {@code reached} or {@code exceeded by 0.3 bar}
     */
    public Statement room() {
        if (passed()) {
            return Statement.of("exceeded by {}", new Measure(Measure.Kind.PRESSURE_DIFFERENCE, -margin));
        }
        return reached()
                ? Statement.plain("reached")
                : Statement.of("{} left", new Measure(Measure.Kind.PRESSURE_DIFFERENCE, margin));
    }

    /**
     * The same for a limit that a relief valve sets; one that is stuck open limits nothing.
     *
     * @param result the run
     * @return such as {@code 1.2 bar left} or {@code stuck open}
     */
    public Statement room(RunSummary result) {
        return result.system().reliefValves().stream()
                        .anyMatch(valve ->
                                valve.name().equals(name) && valve.condition() == ReliefFault.Condition.STUCK_OPEN)
                ? Statement.plain("stuck open")
                : room();
    }

    private static Limit of(String name, double gauge, RunSummary result) {
        double margin = gauge - result.peak().value();
        return new Limit(name, gauge, Math.abs(margin) < ROUNDING ? 0 : margin);
    }

    /**
     * Whether a pressure lies beyond another by more than the rounding of a run.
     *
     * @param pressure the pressure (Pa, gauge, or absolute as the limit is)
     * @param limit the limit (Pa, gauge, or absolute as the pressure is)
     * @return true if it does
     */
    public static boolean passes(double pressure, double limit) {
        return pressure - limit > SAME;
    }

    /**
     * Whether the run came up to the limit.
     *
     * @return true if it did, and if it went beyond it
     */
    public boolean reached() {
        return margin <= SAME;
    }

    /**
     * Whether the run went beyond the limit.
     *
     * @return true if it did
     */
    public boolean passed() {
        return margin < -SAME;
    }
}
