package io.github.heatswell.narrative;

import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.HotWaterSystem;

/** Says in words what a bound of a target is. */
public final class Bounds {

    private Bounds() {}

    public static String name(SizingTarget.Bound bound, HotWaterSystem house) {
        return switch (bound.rule()) {
            case RELIEF_RESEAT -> "reseat pressure of '" + bound.device() + "', less 3 % of its set pressure";
            case CODE_CAP -> "80 psi, the cap of a model code (UPC 608.2)";
            case VESSEL_RATING -> "rating of the vessel";
            case WORKING_PRESSURE ->
                house.tank().workingPressureGiven()
                        ? "working pressure of the tank"
                        : "working pressure assumed for the tank: read its plate";
            case OWN -> "limit asked for";
        };
    }
}
