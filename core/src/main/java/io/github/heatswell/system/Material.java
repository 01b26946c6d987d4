package io.github.heatswell.system;

import java.util.Objects;

/**
 * Elastic and thermal constants of a tank or pipe material.
 *
 * <p>The named metals carry handbook values from memory of the usual tables (Callister, Materials Science and Engineering,
 * appendix B; ASHRAE for the expansion), within 10 %. Plastics scatter by 50 % or more. Their modulus is that of a short test
 * at 23 degC; it falls with the time under load and with temperature, see {@link #modulus}.
 *
 * @param name what the material is called in scenario files
 * @param youngsModulus Young's modulus (Pa), of a plastic in a test of ten seconds at 23 degC; above 0 and finite
 * @param poissonRatio Poisson's ratio (-), 0 to 0.5
 * @param linearExpansion linear thermal expansion (1/K), 0 to less than 0.01
 * @param creep exponent (-) with which the modulus falls with the time under load, 0 to 0.3; 0 for metals
 * @param softening fraction of the modulus lost with each kelvin (1/K), 0 to 0.05; 0 for metals
 */
public record Material(
        String name,
        double youngsModulus,
        double poissonRatio,
        double linearExpansion,
        double creep,
        double softening) {

    /** Carbon steel: 200 GPa, 0.30, 12e-6 1/K. */
    public static final Material STEEL = new Material("steel", 200e9, 0.30, 12e-6);
    /** Austenitic stainless steel (304): 193 GPa, 0.30, 17.2e-6 1/K. */
    public static final Material STAINLESS_STEEL = new Material("stainless-steel", 193e9, 0.30, 17.2e-6);
    /** Copper: 117 GPa, 0.34, 17e-6 1/K. */
    public static final Material COPPER = new Material("copper", 117e9, 0.34, 17e-6);
    /**
     * Cross-linked polyethylene (PEX): 0.6 GPa, 0.45, 140e-6 1/K; the modulus is 0.6 to 0.9 GPa at 20 degC and 0.3 to 0.35 GPa
     * at 80 degC (makers' data, from memory). Its creep is taken to be that of PE, without a source.
     */
    public static final Material PEX = new Material("pex", 0.6e9, 0.45, 140e-6, 0.075, 0.014);
    /**
     * High-density polyethylene (PE): 0.8 GPa, 0.46, 130e-6 1/K; the modulus is 0.7 to 1.08 GPa at 20 degC. Creep by the
     * Handbook of PE Pipe of the Plastics Pipe Institute, table B.1.1, PE3XXX: 538 MPa after half an hour, 414 MPa after 12 h, 193 MPa
     * after 50 years (page seen); softening by its table of multipliers, 0.58 at 120 degF and 0.43 at 140 degF (from memory).
     */
    public static final Material PE = new Material("pe", 0.8e9, 0.46, 130e-6, 0.075, 0.0215);
    /**
     * Random copolymer of polypropylene (PP-R): 0.8 GPa, 0.45, 150e-6 1/K (makers' data by ISO 178, ISO 527 and DIN 53752, pages
     * seen). Creep from a maker's ratio of 3 in two years by ISO 9967 (page seen, block copolymer); softening as PE, without a source.
     */
    public static final Material PPR = new Material("pp-r", 0.8e9, 0.45, 150e-6, 0.086, 0.0215);
    /**
     * Polybutene (PB): 0.45 GPa, 0.45, 130e-6 1/K (modulus by ISO 178 and expansion by ASTM D696 of a makers' association, page seen;
     * Poisson's ratio from memory). Creep and softening are taken to be those of PEX, without a source.
     */
    public static final Material PB = new Material("pb", 0.45e9, 0.45, 130e-6, 0.075, 0.014);
    /**
     * Chlorinated polyvinyl chloride (PVC-C): 2.6 GPa, 0.36, 70e-6 1/K; 1.38 GPa at 90 degC (a maker's data by ASTM D638 and D696,
     * page seen). Creep without a source.
     */
    public static final Material PVCC = new Material("pvc-c", 2.62e9, 0.36, 70e-6, 0.03, 0.0096);

    /** Temperature (K) and duration (s) of the test that gives a plastic's modulus. */
    static final double TESTED_AT = 296.15;

    static final double TESTED_FOR = 10;

    /**
     * Checks the constants.
     *
     * @param name what the material is called in scenario files
     * @param youngsModulus Young's modulus (Pa), above 0 and finite
     * @param poissonRatio Poisson's ratio (-), 0 to 0.5
     * @param linearExpansion linear thermal expansion (1/K), 0 to less than 0.01
     * @param creep exponent of creep (-), 0 to 0.3
     * @param softening fraction of the modulus lost with each kelvin (1/K), 0 to 0.05
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
        require(creep >= 0 && creep <= 0.3, "creep: " + creep, "0 to 0.3");
        require(softening >= 0 && softening <= 0.05, "softening: " + softening + " 1/K", "0 to 0.05 1/K");
    }

    /**
     * A material whose modulus depends on neither time nor temperature, as that of metals.
     *
     * @param name what the material is called in scenario files
     * @param youngsModulus Young's modulus (Pa), above 0 and finite
     * @param poissonRatio Poisson's ratio (-), 0 to 0.5
     * @param linearExpansion linear thermal expansion (1/K), 0 to less than 0.01
     * @throws IllegalArgumentException if a constant is not a number or outside its range
     */
    public Material(String name, double youngsModulus, double poissonRatio, double linearExpansion) {
        this(name, youngsModulus, poissonRatio, linearExpansion, 0, 0);
    }

    /**
     * Whether the modulus depends on time under load or on temperature, as that of plastics.
     *
     * @return false for metals
     */
    public boolean yields() {
        return creep > 0 || softening > 0;
    }

    /**
     * The modulus under a load that lasts: {@code E (t/10 s)^-creep exp(-softening (T - 23 degC))}. A power of time follows the
     * published values of PE from half an hour to 50 years within 3 %.
     *
     * @param temperature the temperature of the material (K)
     * @param loaded the time under load (s), above 0
     * @return the apparent modulus (Pa)
     */
    public double modulus(double temperature, double loaded) {
        return youngsModulus * Math.pow(loaded / TESTED_FOR, -creep) * Math.exp(-softening * (temperature - TESTED_AT));
    }

    private static void require(boolean holds, String given, String range) {
        if (!holds) {
            throw new IllegalArgumentException(given + " is outside the allowed range, " + range);
        }
    }
}
