package io.github.heatswell.diagnosis;

/** A reading beyond what a plate or a setting of the house allows. It counts whatever cause fits the readings. */
public sealed interface BeyondLimit extends Hazard permits Overpressure, Overheat {

    /**
     * Whether this is a hazard.
     *
     * @return true if the heater must stay off
     */
    boolean isHazard();

    /**
     * Whether it is a single reading that its neighbours do not bear out, so that it may be a slip.
     *
     * @return true if it has to be looked up first
     */
    boolean standsAlone();
}
