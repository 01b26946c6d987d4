package io.github.heatswell.system;

import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a tank's volume depends on pressure and temperature:
 * {@code V(T,p) = V_n [1 + 3 alpha (T - T_ref) + C (p - p_ref)]}, where {@code V_n} is the volume at the cold fill.
 */
public final class Shell {

    /** Relative difference (-) below which two lengths in different units count as equal. */
    private static final double ROUNDING = 1e-9;

    private static final Limits DIAMETER = Limits.between("diameter", 0.05, 3.0);
    private static final Limits WALL = Limits.between("wall", 0.2e-3, 50e-3);
    private static final Shell RIGID = new Shell(0, 0, new CylinderBuilder());

    private final double compliance;
    private final double thermalGrowth;
    private final CylinderBuilder dimensions;

    private Shell(double compliance, double thermalGrowth, CylinderBuilder dimensions) {
        this.dimensions = dimensions;
        this.compliance = compliance;
        this.thermalGrowth = thermalGrowth;
    }

    /**
     * A shell that never changes its volume: the textbook limit, in which pressure rises by {@code beta/kappa} per
     * kelvin.
     *
     * @return the rigid shell
     */
    public static Shell rigid() {
        return RIGID;
    }

    /**
     * A closed thin-walled cylinder, whose compliance is {@code (D/(E e)) (5/4 - nu)}: hoop stretch counted twice and
     * axial stretch once (the form {@code (2.5 - 2 nu) d/(2 E w)} of API 521 is the same).
     *
     * @param material what it is made of
     * @param diameter the diameter of the cylinder, 50 mm to 3 m
     * @param wall the thickness of its wall, 0.2 mm to 50 mm and at most a tenth of the diameter
     * @param unit the unit of both
     * @return the shell
     * @throws IllegalArgumentException if a dimension is outside its range
     */
    public static Shell cylinder(Material material, double diameter, double wall, LengthUnit unit) {
        return cylinder()
                .material(material)
                .diameter(diameter, unit)
                .wall(wall, unit)
                .build();
    }

    /** A shell whose relative growth with pressure (1/Pa) is known as a whole; it grows with heat as its material does. */
    static Shell ofCompliance(Material material, double compliance) {
        return new Shell(compliance, 3 * material.linearExpansion(), cylinder().material(material));
    }

    /**
     * Starts the description of a closed thin-walled cylinder; everything must be set.
     *
     * @return an empty builder
     * @see #cylinder(Material, double, double, LengthUnit)
     */
    public static CylinderBuilder cylinder() {
        return new CylinderBuilder();
    }

    /** The same shell with another linear expansion (1/K). */
    Shell expanding(double linearExpansion) {
        return new Shell(compliance, 3 * linearExpansion, dimensions);
    }

    /** The shell of a tank of this volume (m3) whose wall is this cylinder's, with heads this deep (-, of the radius) and a flue (m). */
    Shell shaped(double volume, double depth, double flue) {
        double stretch = shape(depth, flue).stretch(volume, dimensions.material.poissonRatio());
        double relative = stretch / (volume * dimensions.material.youngsModulus() * dimensions.wall);
        return new Shell(relative, thermalGrowth, dimensions);
    }

    /** The shape of a tank of this cylinder's diameter, with heads this deep (-, of the radius) and a flue (m). */
    TankShape shape(double depth, double flue) {
        return new TankShape(dimensions.diameter, depth * dimensions.diameter / 2, flue);
    }

    /** How high (m) a tank of this volume (m3) and shape is, as {@link #shape} takes it; empty if the diameter is not known. */
    OptionalDouble height(double volume, double depth, double flue) {
        return dimensions.diameter == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(shape(depth, flue).height(volume));
    }

    /** A builder with what is known of material and dimensions of this cylinder; empty for a rigid shell. */
    CylinderBuilder toBuilder() {
        return dimensions.copy();
    }

    /**
     * What it is made of.
     *
     * @return the material; empty for a rigid shell
     */
    public Optional<Material> material() {
        return Optional.ofNullable(dimensions.material);
    }

    /**
     * Relative growth of the volume with pressure.
     *
     * @return the compliance C (1/Pa), 0 for a rigid shell
     */
    public double compliance() {
        return compliance;
    }

    /**
     * Relative growth of the volume with temperature.
     *
     * @return three times the linear expansion (1/K), 0 for a rigid shell
     */
    public double thermalGrowth() {
        return thermalGrowth;
    }

    /** Builds the shell of a cylinder from dimensions that may come in different units. */
    public static final class CylinderBuilder {
        private Material material;
        private Double diameter;
        private Double wall;

        private CylinderBuilder() {}

        boolean isEmpty() {
            return material == null && diameter == null && wall == null;
        }

        /** The material, or null if it is not set. */
        Material material() {
            return material;
        }

        private CylinderBuilder copy() {
            CylinderBuilder copy = new CylinderBuilder();
            copy.material = material;
            copy.diameter = diameter;
            copy.wall = wall;
            return copy;
        }

        /**
         * Sets what the cylinder is made of.
         *
         * @param value the material
         * @return this builder
         */
        public CylinderBuilder material(Material value) {
            material = Objects.requireNonNull(value, "material");
            return this;
        }

        /**
         * Sets the diameter.
         *
         * @param value the diameter, 50 mm to 3 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the diameter is outside its range
         */
        public CylinderBuilder diameter(double value, LengthUnit unit) {
            diameter = DIAMETER.check(value, unit);
            return this;
        }

        /**
         * Sets the thickness of the wall.
         *
         * @param value the thickness, 0.2 mm to 50 mm and at most a tenth of the diameter
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the thickness is outside its range
         */
        public CylinderBuilder wall(double value, LengthUnit unit) {
            wall = WALL.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the shell
         * @throws InvalidDescriptionException if something is missing, or if the wall is too thick for the thin-wall
         *     formula
         */
        public Shell build() {
            Requirements requirements = new Requirements()
                    .present("material", material)
                    .present("diameter", diameter)
                    .present("wall", wall);
            if (requirements.met()) {
                requirements.rule(wall <= diameter / 10 * (1 + ROUNDING), "wall", this::tooThick);
            }
            requirements.orThrow();
            double compliance = diameter / (material.youngsModulus() * wall) * (1.25 - material.poissonRatio());
            return new Shell(compliance, 3 * material.linearExpansion(), copy());
        }

        private String tooThick() {
            LengthUnit unit = LengthUnit.MILLIMETRE;
            return Limits.quantity(unit.fromSi(wall), unit) + " is more than a tenth of the diameter of "
                    + Limits.quantity(unit.fromSi(diameter), unit) + "; the thin-wall formula does not apply";
        }
    }
}
