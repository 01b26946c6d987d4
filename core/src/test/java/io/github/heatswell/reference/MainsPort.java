package io.github.heatswell.reference;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.Supply;

/**
 * The way between mains and branch.
 *
 * <p>A reducing valve has a conductance of its own: its outlet is at its lock-up pressure, or at that of the mains if
 * this is lower, and falls by lock-up rise and droop together at the rated flow. In series with it lies the piping, as
 * ample as everywhere. A bypass is piping behind a spring.
 */
final class MainsPort {

    /** The pressure difference (Pa) a seat's leakage is measured at. */
    private static final double ONE_BAR = 1e5;
    /** Below this difference (Pa) a leak flows laminarly, so its flow goes through zero with a finite slope. */
    private static final double LAMINAR = 100;

    private final Supply supply;
    private final double air;
    private final double clock;
    private final double piping;
    private final double inward;
    private final double spring;

    /**
     * The way into a house.
     *
     * @param system the house
     * @param density of cold water (kg/m3)
     * @param piping the conductance of everything but the reducing valve (kg/(s Pa))
     */
    MainsPort(HotWaterSystem system, double density, double piping) {
        supply = system.supply();
        air = system.site().atmosphere();
        clock = system.start().timeOfDay();
        this.piping = piping;
        double resistance = supply.reducingValve()
                .map(v -> (v.lockUpRise() + v.droop()) / v.ratedFlow() / density)
                .orElse(0.0);
        inward = 1 / (1 / piping + resistance);
        spring = supply.reducingValve()
                .map(ReducingValve::bypassOpens)
                .map(d -> d.orElse(0))
                .orElse(0.0);
    }

    /** {@return whether nothing hinders water from going back} */
    boolean direct() {
        return supply.arrangement() == Supply.Arrangement.DIRECT;
    }

    /** {@return whether water can go back through a bypass} */
    boolean hasBypass() {
        return supply.reducingValve().filter(v -> v.bypassOpens().isPresent()).isPresent();
    }

    /** {@return the pressure (Pa, absolute) up to which water comes in at a time (s)} */
    double feed(double time) {
        return supply.staticAbsolute(clock + time, air);
    }

    /** {@return the pressure (Pa, absolute) from which water goes back at a time (s), where it can} */
    double back(double time) {
        return supply.mains().absolute(clock + time, air) + spring;
    }

    /** {@return the mass flow (kg/s) into a house with water of a density (kg/m3), negative if it goes back} */
    double flow(double time, double p, double density, Mode mode) {
        if (mode.day().cutOff()) {
            return 0;
        }
        double seat = density * leakage(supply.mains().absolute(clock + time, air) - p);
        return switch (mode.mains()) {
            case IN -> inward * (feed(time) - p) + seat;
            case BACK -> piping * (back(time) - p) + seat;
            case SHUT -> seat;
        };
    }

    /** The volume flow (m3/s) through the seat. */
    private double leakage(double difference) {
        double share = difference / Math.sqrt(ONE_BAR) / Math.sqrt(Math.abs(difference) + LAMINAR);
        return supply.seatLeakage() * share;
    }
}
