package io.github.heatswell.reference;

import io.github.heatswell.plant.ReliefValve;

/**
 * The flow of one relief valve: {@code lift * fullFlow * sqrt((p - p_air)/(p_full - p_air))}, with
 * {@code lift = (p - reseat)/(p_full - reseat)} up to 1 for a modulating valve and 1 for a snap-acting one.
 */
final class ReliefPort {

    private final String name;
    private final double opens;
    private final double reseats;
    private final double fullLift;
    private final double air;
    private final double fullFlow;
    private final boolean snaps;

    /**
     * A valve on its site.
     *
     * @param valve the valve
     * @param air the pressure of the air (Pa, absolute)
     */
    ReliefPort(ReliefValve valve, double air) {
        name = valve.name();
        opens = valve.opens().absolute(air);
        reseats = valve.reseats().absolute(air);
        fullLift = valve.fullLift().absolute(air);
        fullFlow = valve.fullFlow();
        snaps = valve.character() == ReliefValve.Character.SNAP;
        this.air = air;
    }

    String name() {
        return name;
    }

    /** {@return the absolute pressure (Pa) at which it opens} */
    double opens() {
        return opens;
    }

    /** {@return the absolute pressure (Pa) at which it closes} */
    double reseats() {
        return reseats;
    }

    /** {@return the absolute pressure (Pa) of full lift} */
    double fullLift() {
        return fullLift;
    }

    /** {@return whether it is fully lifted from opening to reseating} */
    boolean snaps() {
        return snaps;
    }

    /** {@return what it does right after it opened} */
    Mode.Lift whenOpened() {
        return snaps || opens >= fullLift ? Mode.Lift.FULL : Mode.Lift.PARTIAL;
    }

    /** {@return the volume flow (m3/s) at an absolute pressure (Pa)} */
    double flow(double p, Mode.Lift lift) {
        double share = switch (lift) {
            case CLOSED -> 0;
            case PARTIAL -> (p - reseats) / (fullLift - reseats);
            case FULL -> 1;
        };
        return share == 0 ? 0 : share * fullFlow * Math.sqrt(Math.max(p - air, 0) / (fullLift - air));
    }
}
