package io.github.heatswell.reference;

/**
 * How easily water moves, everywhere linear in the pressure difference. Expansion moves about a gram a second, so the
 * values of {@link #ample()} keep every pressure difference it causes at a few pascal and still leave the equations
 * finite; nothing here is tuned to give one common pressure.
 *
 * @param supply from the street to the cold branch (kg/(s Pa)), above 0
 * @param tank between the cold branch and the tank (kg/(s Pa)), above 0
 */
record Conductances(double supply, double tank) {

    /** {@return conductances at which losses are far below what is compared} */
    static Conductances ample() {
        return new Conductances(1e-3, 1e-2);
    }

    /** {@return a real house: 0.3 bar at 20 L/min through the feed, 0.01 bar at 20 L/min to the tank} */
    static Conductances household() {
        return new Conductances(20.0 / 60 / 0.3e5, 20.0 / 60 / 0.01e5);
    }
}
