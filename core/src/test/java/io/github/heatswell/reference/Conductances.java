package io.github.heatswell.reference;

/**
 * How easily water moves, everywhere linear in the pressure difference. Expansion moves about a gram a second, so the
 * values of {@link #ample()} keep every pressure difference it causes at a few pascal and still leave the equations
 * finite; nothing here is tuned to give one common pressure.
 *
 * @param supply from the mains to the cold branch (kg/(s Pa)), above 0
 * @param tank between the cold branch and the tank (kg/(s Pa)), above 0
 * @param mixing between a layer of the tank and a colder one above it (W/K), above 0
 */
record Conductances(double supply, double tank, double mixing) {

    /**
     * With less mixing, the hot end of a tank heated from below lags by millikelvins, and a device that opens by
     * temperature by tenths of a second each time.
     */
    private static final double MIXING = 2e7;

    /** With the usual mixing. */
    Conductances(double supply, double tank) {
        this(supply, tank, MIXING);
    }

    /** {@return ten times as easily everywhere} */
    Conductances finer() {
        return new Conductances(10 * supply, 10 * tank, 10 * mixing);
    }

    /** {@return conductances at which losses are far below what is compared} */
    static Conductances ample() {
        return new Conductances(1e-3, 1e-2);
    }

    /** {@return a real house: 0.3 bar at 20 L/min through the feed, 0.01 bar at 20 L/min to the tank} */
    static Conductances household() {
        return new Conductances(20.0 / 60 / 0.3e5, 20.0 / 60 / 0.01e5);
    }
}
