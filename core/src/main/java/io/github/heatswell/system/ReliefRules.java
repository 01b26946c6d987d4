package io.github.heatswell.system;

import io.github.heatswell.units.Pressure;
import java.util.Optional;

/**
 * What the numbers of a relief valve must agree on: its pressures, and by {@link #device} the rest.
 *
 * @param set the set pressure
 * @param fullLift the pressure of full lift
 * @param reseats the reseat pressure
 * @param leaksFrom where a leaking seat begins to leak, empty for a tight one
 */
record ReliefRules(Pressure set, Pressure fullLift, Pressure reseats, Optional<Pressure> leaksFrom) {

    /** What a change of units leaves of a pressure (-). */
    private static final double ROUNDING = 1e-9;

    /** A pressure that misses another only by the rounding of a change of units is that other. */
    static Pressure notBelowByRounding(Pressure pressure, Pressure least) {
        boolean rounded = pressure.reference() == least.reference()
                && pressure.value() < least.value()
                && pressure.value() >= least.value() * (1 - ROUNDING);
        return rounded ? least : pressure;
    }

    /** Notes what contradicts itself in the temperatures, the place and the plate of a valve; what was not set is null. */
    static void device(
            Requirements requirements,
            Double opensAt,
            Double reseatsAt,
            ReliefValve.Location place,
            Double ratedInput) {
        if (opensAt != null || reseatsAt != null) {
            requirements.present("opens-at", opensAt).present("reseats-at", reseatsAt);
            requirements.rule(
                    opensAt == null || reseatsAt == null || reseatsAt < opensAt,
                    "reseats-at",
                    "must be below the temperature at which the valve opens");
            requirements.rule(
                    place == ReliefValve.Location.TANK_TOP,
                    "location",
                    "must be tank-top for a valve that opens at a temperature");
        }
        requirements.rule(
                ratedInput == null || opensAt != null,
                "rated-input",
                "needs a valve that opens at a temperature; give that temperature too");
    }

    /** Notes what contradicts itself in a valve that is made to discharge the expansion, which stands on the cold inlet. */
    static void inlet(Requirements requirements, ReliefValve.Kind kind, Double opensAt, ReliefValve.Location place) {
        requirements.rule(
                !kind.takesExpansion() || opensAt == null,
                "kind",
                "a valve that opens at a temperature is neither an expansion valve nor a safety group, which respond to pressure"
                        + " only; leave the temperature or the kind out");
        requirements.rule(
                !kind.takesExpansion() || opensAt != null || place == ReliefValve.Location.BRANCH,
                "location",
                "must be branch for an expansion valve or a safety group, which sit on the cold inlet");
    }

    /** Notes what contradicts itself whatever the air around: of pressures against one reference. */
    void alone(Requirements requirements) {
        check(requirements, "", Double.NaN);
    }

    /**
     * Notes everything that contradicts itself.
     *
     * @param requirements takes the notes
     * @param path what stands in front of each field, possibly nothing
     * @param atmosphere the absolute pressure (Pa) of the air around; NaN if it is unknown
     */
    void check(Requirements requirements, String path, double atmosphere) {
        requirements.rule(
                !(aboveSet(reseats, atmosphere) >= 0),
                path + "reseats",
                () -> compared(reseats, " must be below the set pressure of "));
        requirements.rule(
                !(reseats.gauge(atmosphere) <= 0), path + "reseats", () -> reseats + " must be above ambient pressure");
        requirements.rule(
                !(aboveSet(fullLift, atmosphere) < 0),
                path + "full-lift",
                () -> compared(fullLift, " must not be below the set pressure of "));
        leaksFrom.ifPresent(leaks -> requirements.rule(
                !(aboveSet(leaks, atmosphere) >= 0),
                path + "fault.leaks-from",
                () -> compared(leaks, " must be below the set pressure of ")));
    }

    /** How far a pressure lies above the set pressure (Pa); NaN if that takes the air around and it is unknown. */
    private double aboveSet(Pressure pressure, double atmosphere) {
        return pressure.reference() == set.reference()
                ? pressure.value() - set.value()
                : pressure.gauge(atmosphere) - set.gauge(atmosphere);
    }

    private String compared(Pressure value, String must) {
        Requirements.Compared both = Requirements.Compared.of(value, set);
        return both.one() + must + both.other();
    }
}
