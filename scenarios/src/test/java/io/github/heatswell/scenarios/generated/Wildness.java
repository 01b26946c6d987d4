package io.github.heatswell.scenarios.generated;

/** How far from everyday houses those of a file are. */
enum Wildness {
    /** Houses that somebody could have. */
    TAME(0.01, 0, 0.35),
    /** Houses with something odd about them. */
    MIXED(0.05, 0.25, 0.5),
    /** Houses that nobody has, but that the format allows. */
    WILD(0.2, 0.9, 0.6);

    private final double limits;
    private final double anywhere;
    private final double optional;

    Wildness(double limits, double anywhere, double optional) {
        this.limits = limits;
        this.anywhere = anywhere;
        this.optional = optional;
    }

    /** How often a number is a limit of its range. */
    double limits() {
        return limits;
    }

    /** How often a number is drawn out of its whole range, not around its example. */
    double anywhere() {
        return anywhere;
    }

    /** How often a key is given that need not be. */
    double optional() {
        return optional;
    }
}
