package io.github.heatswell.sizing;

import java.util.List;

/**
 * Net expansion of a system, the water's expansion minus the container's, as the handbook writes it:
 * {@code Vs [(v2/v1 - 1) - 3 a dT]}. It is the excess volume of <em>hot</em> water; the volume entering a cold vessel
 * is smaller by {@code v1/v2}.
 *
 * @param systemVolume Vs, the volume of water (m3), 1 mL to 10 000 m3
 * @param coldSpecificVolume v1, specific volume of the cold water (m3/kg), 0.9e-3 to 1.2e-3
 * @param hotSpecificVolume v2, specific volume of the hot water (m3/kg), v1 to 1.2e-3
 * @param linearExpansion a, linear thermal expansion of the container (1/K), 0 to 1e-3
 * @param warming dT, hot less cold temperature (K), 0 to 150
 */
public record NetExpansion(
        double systemVolume,
        double coldSpecificVolume,
        double hotSpecificVolume,
        double linearExpansion,
        double warming) {

    /** Linear expansion of steel as the handbook rounds it, 6.5e-6 per degree Fahrenheit (1/K); from memory. */
    public static final double HANDBOOK_STEEL = 6.5e-6 * 1.8;
    /** Linear expansion of copper as the handbook rounds it, 9.5e-6 per degree Fahrenheit (1/K); from memory. */
    public static final double HANDBOOK_COPPER = 9.5e-6 * 1.8;

    /**
     * Checks every number.
     *
     * @param systemVolume Vs, the volume of water (m3), 1 mL to 10 000 m3
     * @param coldSpecificVolume v1, specific volume of the cold water (m3/kg), 0.9e-3 to 1.2e-3
     * @param hotSpecificVolume v2, specific volume of the hot water (m3/kg), v1 to 1.2e-3
     * @param linearExpansion a, linear thermal expansion of the container (1/K), 0 to 1e-3
     * @param warming dT, hot less cold temperature (K), 0 to 150
     * @throws IllegalArgumentException if a number is outside its range, or if the container outgrows the water
     */
    public NetExpansion {
        Ranges.check("Vs", systemVolume, " m3", 1e-6, 1e4);
        Ranges.check("v1", coldSpecificVolume, " m3/kg", 0.9e-3, 1.2e-3);
        Ranges.check("v2", hotSpecificVolume, " m3/kg", coldSpecificVolume, 1.2e-3);
        Ranges.check("a", linearExpansion, " 1/K", 0, 1e-3);
        Ranges.check("dT", warming, " K", 0, 150);
        if (hotSpecificVolume / coldSpecificVolume - 1 < 3 * linearExpansion * warming) {
            throw new IllegalArgumentException("a: the container expands more than the water; no vessel is needed");
        }
    }

    /**
     * Growth of the water less that of the container, for each volume of cold water.
     *
     * @return {@code (v2/v1 - 1) - 3 a dT} (-), 0 or more
     */
    public double relative() {
        return hotSpecificVolume / coldSpecificVolume - 1 - 3 * linearExpansion * warming;
    }

    /**
     * Growth of the water less that of the container.
     *
     * @return the net expansion (m3), 0 or more
     */
    public double volume() {
        return systemVolume * relative();
    }

    List<FormulaInput> inputs() {
        return List.of(
                FormulaInput.given("Vs", systemVolume, "m3", "volume of water"),
                FormulaInput.given("v1", coldSpecificVolume, "m3/kg", "specific volume of the cold water"),
                FormulaInput.given("v2", hotSpecificVolume, "m3/kg", "specific volume of the hot water"),
                FormulaInput.given("a", linearExpansion, "1/K", "linear thermal expansion of the container"),
                FormulaInput.given("dT", warming, "K", "hot less cold temperature"));
    }
}
