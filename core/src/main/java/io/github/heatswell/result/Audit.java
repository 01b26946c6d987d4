package io.github.heatswell.result;

/**
 * Balance check of a run: inflow minus outflow minus change of inventory, for mass and for energy. The inventory is
 * recomputed from temperature and pressure at both ends, while the flows are integrated along the way, so an error in
 * either shows.
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
     * Smallest mass (kg) that a residual is compared with. A run that ends where it starts moves nothing, and rounding
     * of the tank's inventory cannot be a fraction of nothing. A residual of a milligram, a fiftieth of a drop, is
     * acceptable in any run.
     */
    public static final double MIN_MASS = 1;

    /**
     * Smallest energy (J) that a residual is compared with, for the same reason. A residual of one joule, which warms a
     * glass of water by a thousandth of a kelvin, is acceptable in any run.
     */
    public static final double MIN_ENERGY = 1e6;

    /**
     * Mass residual as a fraction of the mass moved, or of {@link #MIN_MASS} if less moved.
     *
     * @return the fraction (-)
     */
    public double massFraction() {
        return Math.abs(massResidual) / Math.max(massMoved, MIN_MASS);
    }

    /**
     * Energy residual as a fraction of the energy moved, or of {@link #MIN_ENERGY} if less moved.
     *
     * @return the fraction (-)
     */
    public double energyFraction() {
        return Math.abs(energyResidual) / Math.max(energyMoved, MIN_ENERGY);
    }

    /**
     * Whether both fractions lie within {@link #BOUND}.
     *
     * @return true if both balances close
     */
    public boolean closes() {
        return massFraction() <= BOUND && energyFraction() <= BOUND;
    }
}
