package io.github.heatswell.result;

/**
 * The check that a run closed its books: what went in, less what went out, less what the inventory changed by, once for
 * mass and once for energy. The inventory is computed afresh from temperature and pressure at both ends, the flows were
 * integrated on the way, so an error in either shows.
 *
 * <p>Mass moved is what crossed the boundary plus what the warming water displaced from the tank; energy moved is the
 * heat that reached the water, plus the heat lost, plus the enthalpy carried by flows relative to cold water.
 *
 * @param massResidual the mass unaccounted for (kg)
 * @param massMoved the mass that moved (kg)
 * @param energyResidual the energy unaccounted for (J)
 * @param energyMoved the energy that moved (J)
 */
public record Audit(double massResidual, double massMoved, double energyResidual, double energyMoved) {

    /** The largest fraction a sound run may leave unaccounted for (-). */
    public static final double BOUND = 1e-6;

    /**
     * The least mass a residual is held against (kg). A run that ends where it begins moves nothing, and what rounding leaves of
     * a tank's inventory is no fraction of that: a milligram, a fiftieth of a drop, closes the books of any run.
     */
    public static final double MIN_MASS = 1;

    /**
     * The least energy a residual is held against (J), for the same reason: one joule closes the books of any run. It warms a
     * glass of water by a thousandth of a kelvin.
     */
    public static final double MIN_ENERGY = 1e6;

    /**
     * The mass unaccounted for as a fraction of what moved, or of {@link #MIN_MASS} if less moved.
     *
     * @return the fraction (-)
     */
    public double massFraction() {
        return Math.abs(massResidual) / Math.max(massMoved, MIN_MASS);
    }

    /**
     * The energy unaccounted for as a fraction of what moved, or of {@link #MIN_ENERGY} if less moved.
     *
     * @return the fraction (-)
     */
    public double energyFraction() {
        return Math.abs(energyResidual) / Math.max(energyMoved, MIN_ENERGY);
    }

    /**
     * Whether both fractions lie within {@link #BOUND}.
     *
     * @return true if the books close
     */
    public boolean closes() {
        return massFraction() <= BOUND && energyFraction() <= BOUND;
    }
}
