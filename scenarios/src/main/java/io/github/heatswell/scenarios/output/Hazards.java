package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.EventKind;

/** Says what a hazard means for somebody who stands next to the tank. */
final class Hazards {

    private Hazards() {}

    static String meaning(EventKind kind) {
        return switch (kind) {
            case TEST_PRESSURE_REACHED ->
                "A tank is tested up to this pressure and no further: beyond it, it may burst.";
            case VAPOUR_FORMS ->
                "The water begins to boil. If its pressure is let go, it flashes into steam at once,"
                        + " with the force of an explosion.";
            case ATMOSPHERE_REACHED ->
                "The pressure falls below that of the air: air or dirty water may be sucked in,"
                        + " and a thin tank may buckle.";
            case WATER_OUT_OF_RANGE ->
                "The water left the temperatures this model knows. Nothing is known of what" + " follows.";
            case WORKING_PRESSURE_EXCEEDED -> "The maker allows no more than this in use.";
            default -> "";
        };
    }
}
