package io.github.heatswell.reference;

import io.github.heatswell.system.Leak;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import java.util.List;

/**
 * The flow of one relief valve: {@code lift * fullFlow * sqrt((p - p_air)/(p_full - p_air))}, with
 * {@code lift = (p - reseat)/(p_full - reseat)} up to 1 for a modulating valve and 1 for a snap-acting one. What a worn seat leaks
 * comes on top of that, whether the valve is open or not. The pressure is
 * that where the valve sits, so its thresholds are shifted by the column of cold water below it.
 */
final class ReliefPort {

    private final ReliefValve valve;
    private final LiftCharacteristic characteristic;
    private final double setPressure;
    private final double reseatPressure;
    private final double fullLiftPressure;
    private final double leaksFrom;
    private final double air;

    /**
     * A valve on its site.
     *
     * @param valve the valve
     * @param air the pressure of the air (Pa, absolute)
     * @param column what the water up to the valve weighs (Pa)
     */
    ReliefPort(ReliefValve valve, double air, double column) {
        this.valve = valve;
        characteristic = valve.liftCharacteristic()
                .orElseThrow(() -> new IllegalArgumentException("no lift curve was written here for " + valve.name()));
        setPressure = valve.setPressure().absolute(air) + column;
        reseatPressure = valve.reseatPressure().absolute(air) + column;
        fullLiftPressure = valve.fullLiftPressure().absolute(air) + column;
        leaksFrom = valve.fault().leaksFrom().map(q -> q.absolute(air) + column).orElse(setPressure);
        this.air = air + column;
    }

    String name() {
        return valve.name();
    }

    /** {@return the absolute pressure (Pa) of the system at which it opens} */
    double setPressure() {
        return setPressure;
    }

    /** {@return the absolute pressure (Pa) of the system at which it closes} */
    double reseatPressure() {
        return reseatPressure;
    }

    /** {@return the absolute pressure (Pa) of the system at full lift} */
    double fullLiftPressure() {
        return fullLiftPressure;
    }

    /** {@return the absolute pressure (Pa) of the system at which there is only the pressure of the air at the valve} */
    double air() {
        return air;
    }

    /** {@return whether it is fully lifted from opening to reseating} */
    boolean snaps() {
        return switch (characteristic) {
            case MODULATING -> false;
            case SNAP -> true;
        };
    }

    /** {@return whether it opens and closes at all} */
    boolean moves() {
        return valve.condition() == ReliefFault.Condition.SOUND
                || valve.condition() == ReliefFault.Condition.LEAKING_SEAT;
    }

    /** {@return whether it stands open for good} */
    boolean stuckOpen() {
        return valve.condition() == ReliefFault.Condition.STUCK_OPEN;
    }

    /** {@return whether it discharges water from the top of the tank} */
    boolean onTank() {
        return valve.location() == ReliefValve.Location.TANK_TOP;
    }

    /** {@return the temperature (K) at which it opens too, infinite if none does} */
    double opensAt() {
        return valve.setTemperature().orElse(Double.POSITIVE_INFINITY);
    }

    /** {@return the temperature (K) below which it closes after that} */
    double reseatsAt() {
        return valve.reseatTemperature().orElse(Double.POSITIVE_INFINITY);
    }

    /** {@return what it does right after it opened} */
    Mode.Lift whenOpened() {
        return snaps() || setPressure >= fullLiftPressure ? Mode.Lift.FULL : Mode.Lift.PARTIAL;
    }

    /** {@return the volume flow (m3/s) at an absolute pressure (Pa) of the system} */
    double flow(double p, Mode.Lift lift) {
        double share = switch (valve.condition()) {
            case STUCK_OPEN -> valve.fault().stuckLift();
            case BLOCKED -> 0;
            case SOUND, LEAKING_SEAT -> share(p, lift);
        };
        double orifice =
                share == 0 ? 0 : share * valve.fullFlow() * Math.sqrt(Math.max(p - air, 0) / (fullLiftPressure - air));
        return orifice + (valve.condition() == ReliefFault.Condition.LEAKING_SEAT ? leakage(p) : 0);
    }

    private double share(double p, Mode.Lift lift) {
        return switch (lift) {
            case CLOSED -> 0;
            case PARTIAL ->
                switch (characteristic) {
                    case MODULATING -> (p - reseatPressure) / (fullLiftPressure - reseatPressure);
                    case SNAP -> throw new IllegalStateException("a snap-acting valve is never partly open");
                };
            case FULL, HOT -> 1;
        };
    }

    private double leakage(double p) {
        return valve.fault().leakage() * Math.max(p - leaksFrom, 0) / (setPressure - leaksFrom);
    }

    /** {@return the volume flow (m3/s) through holes in the branch at an absolute pressure (Pa)} */
    static double leaks(List<Leak> leaks, double p, double air) {
        double sum = 0;
        for (Leak leak : leaks) {
            sum += leak.flow() * Math.sqrt(Math.max(p - air, 0) / leak.at().gauge(air));
        }
        return sum;
    }
}
