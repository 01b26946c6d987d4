package io.github.heatswell.system;

import java.util.Objects;

/**
 * Elastic and thermal constants of a tank or pipe material at room temperature.
 *
 * <p>The named materials carry handbook values: metals from memory of the usual tables (Callister, Materials Science
 * and Engineering, appendix B; ASHRAE for the expansion), within 10 %; plastics scatter by 50 % or more, because they
 * depend on temperature and time under load.
 *
 * @param name what the material is called in scenario files
 * @param youngsModulus Young's modulus (Pa), above 0 and finite
 * @param poissonRatio Poisson's ratio (-), 0 to 0.5
 * @param linearExpansion linear thermal expansion (1/K), 0 to less than 0.01
 */
public record Material(String name, double youngsModulus, double poissonRatio, double linearExpansion) {

    /** Carbon steel: 200 GPa, 0.30, 12e-6 1/K. */
    public static final Material STEEL = new Material("steel", 200e9, 0.30, 12e-6);
    /** Austenitic stainless steel (304): 193 GPa, 0.30, 17.2e-6 1/K. */
    public static final Material STAINLESS_STEEL = new Material("stainless-steel", 193e9, 0.30, 17.2e-6);
    /** Copper: 117 GPa, 0.34, 17e-6 1/K. */
    public static final Material COPPER = new Material("copper", 117e9, 0.34, 17e-6);
    /** Cross-linked polyethylene (PEX): 0.6 GPa, 0.45, 140e-6 1/K; the modulus is 0.6 to 0.9 GPa at 20 degC. */
    public static final Material PEX = new Material("pex", 0.6e9, 0.45, 140e-6);
    /** High-density polyethylene (PE): 0.8 GPa, 0.46, 130e-6 1/K; the modulus is 0.7 to 1.08 GPa at 20 degC. */
    public static final Material PE = new Material("pe", 0.8e9, 0.46, 130e-6);

    /**
     * Checks the constants.
     *
     * @param name what the material is called in scenario files
     * @param youngsModulus Young's modulus (Pa), above 0 and finite
     * @param poissonRatio Poisson's ratio (-), 0 to 0.5
     * @param linearExpansion linear thermal expansion (1/K), 0 to less than 0.01
     * @throws IllegalArgumentException if a constant is not a number or outside its range
     */
    public Material {
        Objects.requireNonNull(name, "name");
        require(
                youngsModulus > 0 && youngsModulus < Double.POSITIVE_INFINITY,
                "youngsModulus: " + youngsModulus + " Pa",
                "above 0 and finite");
        require(poissonRatio >= 0 && poissonRatio <= 0.5, "poissonRatio: " + poissonRatio, "0 to 0.5");
        require(
                linearExpansion >= 0 && linearExpansion < 1e-2,
                "linearExpansion: " + linearExpansion + " 1/K",
                "0 to less than 0.01 1/K");
    }

    private static void require(boolean holds, String given, String range) {
        if (!holds) {
            throw new IllegalArgumentException(given + " is outside the allowed range, " + range);
        }
    }
}
