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
     * The mass unaccounted for as a fraction of what moved.
     *
     * @return the fraction (-), 0 if nothing moved
     */
    public double massFraction() {
        return fraction(massResidual, massMoved);
    }

    /**
     * The energy unaccounted for as a fraction of what moved.
     *
     * @return the fraction (-), 0 if nothing moved
     */
    public double energyFraction() {
        return fraction(energyResidual, energyMoved);
    }

    /**
     * Whether both fractions lie within {@link #BOUND}.
     *
     * @return true if the books close
     */
    public boolean closes() {
        return massFraction() <= BOUND && energyFraction() <= BOUND;
    }

    private static double fraction(double residual, double moved) {
        return moved > 0 ? Math.abs(residual) / moved : Math.abs(residual);
    }
}
