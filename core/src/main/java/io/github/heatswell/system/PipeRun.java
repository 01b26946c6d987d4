package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Objects;

/**
 * A run of pipe that shares the tank's pressure. Its wall stretches under pressure, which for plastic pipe matters as much as the
 * tank. Cold pipe keeps the temperature of the cold feed; a hot branch is filled from the tank by each draw and cools to the room; a
 * pump fills a circulation loop, see {@link Circulation}.
 */
public final class PipeRun {

    private static final Limits OUTSIDE_DIAMETER = Limits.between("outsideDiameter", 3e-3, 0.2);
    private static final Limits WALL = Limits.between("wall", 0.1e-3, 20e-3);
    private static final Limits LENGTH = Limits.above("length", 0, 5_000);
    private static final Limits INSULATION = Limits.between("insulation", 0, 0.2);
    private static final Limits STIFFNESS_AT = Limits.between("stiffnessAt", 273.15, 368.15);
    private static final Limits LOADED_FOR = Limits.between("loadedFor", 360, 3.6e6);

    /** Conductivity of pipe insulation at about 40 degC (W/(m K)): foamed plastic and mineral wool; common practice, no source. */
    private static final double INSULATES = 0.04;
    /**
     * Heat given off by a surface indoors, convection and radiation together (W/(m2 K)): the rounded value in use for still air with the
     * rules of ISO 12241; common practice, from secondary pages.
     */
    private static final double SURFACE = 10;

    private final Material material;
    private final double outsideDiameter;
    private final double wall;
    private final double length;
    private final double modulus;
    private final Carries carries;
    private final double insulation;

    private PipeRun(Builder from) {
        material = from.material;
        outsideDiameter = from.outsideDiameter;
        wall = from.wall;
        length = from.length;
        carries = from.carries;
        insulation = from.insulation == null ? 0 : from.insulation;
        modulus = material.modulus(
                from.stiffnessAt == null ? Material.TESTED_AT : from.stiffnessAt,
                from.loadedFor == null ? Material.TESTED_FOR : from.loadedFor);
    }

    private PipeRun(PipeRun from, double modulus) {
        material = from.material;
        outsideDiameter = from.outsideDiameter;
        wall = from.wall;
        length = from.length;
        carries = from.carries;
        insulation = from.insulation;
        this.modulus = modulus;
    }

    /** What water a pipe carries. */
    public enum Carries {
        /** That of the cold branch, at the temperature of the cold feed. */
        COLD,
        /** That of a hot branch, from the top of the tank to the taps: all hot runs together are the way to the tap that is open. */
        HOT,
        /** That of a circulation loop, flow and return: all its runs together are the loop. */
        LOOP
    }

    /** The same pipe, giving way by a factor more if it is plastic. */
    PipeRun softer(double factor) {
        return material.yields() && factor != 1 ? new PipeRun(this, modulus / factor) : this;
    }

    /**
     * Starts a description; material, outside diameter, wall and length must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * What the pipe is made of.
     *
     * @return the material
     */
    public Material material() {
        return material;
    }

    /**
     * The volume of water in the pipe at the cold fill.
     *
     * @return the volume (m3)
     */
    public double volume() {
        double inside = outsideDiameter - 2 * wall;
        return Math.PI / 4 * inside * inside * length;
    }

    /**
     * Relative growth of the inner volume with pressure, by the thick-walled (Lame) closed-end cylinder:
     * {@code [3 (1 - 2 nu) a^2 + 2 (1 + nu) b^2] / [E (b^2 - a^2)]} with the inner radius a and the outer radius b. It
     * approaches the thin-wall formula for thin walls and is well above it for plastic pipe.
     *
     * @return the compliance (1/Pa)
     */
    public double compliance() {
        double b = outsideDiameter / 2;
        double a = b - wall;
        double nu = material.poissonRatio();
        return (3 * (1 - 2 * nu) * a * a + 2 * (1 + nu) * b * b) / (modulus * (b * b - a * a));
    }

    /**
     * What water it carries.
     *
     * @return cold unless said otherwise
     */
    public Carries carries() {
        return carries;
    }

    /**
     * Heat that its length loses for each degree above the room, {@code pi L / [ln(D/d)/(2 lambda) + 1/(h D)]} with the outside diameters
     * d of the pipe and D of its insulation, lambda = 0.04 W/(m K) and h = 10 W/(m2 K). The resistance of the pipe's own wall is left out.
     * The formula is that of ISO 12241 for a pipe, read on secondary pages; the two constants are common practice.
     *
     * @return the conductance (W/K)
     */
    public double heatLoss() {
        double outer = outsideDiameter + 2 * insulation;
        return Math.PI * length / (Math.log(outer / outsideDiameter) / (2 * INSULATES) + 1 / (SURFACE * outer));
    }

    /** Builds a {@link PipeRun}. */
    public static final class Builder {
        private static final String METAL = "makes no difference for metal; remove it";

        private Material material;
        private Double outsideDiameter;
        private Double wall;
        private Double length;
        private Double stiffnessAt;
        private Double loadedFor;
        private Carries carries = Carries.COLD;
        private Double insulation;

        private Builder() {}

        /**
         * Sets the material of the pipe.
         *
         * @param value the material
         * @return this builder
         */
        public Builder material(Material value) {
            material = Objects.requireNonNull(value, "material");
            return this;
        }

        /**
         * Sets the outside diameter.
         *
         * @param value the diameter, 3 mm to 200 mm
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the diameter is outside its range
         */
        public Builder outsideDiameter(double value, LengthUnit unit) {
            outsideDiameter = OUTSIDE_DIAMETER.check(value, unit);
            return this;
        }

        /**
         * Sets the thickness of the wall.
         *
         * @param value the thickness, 0.1 mm to 20 mm
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the thickness is outside its range
         */
        public Builder wall(double value, LengthUnit unit) {
            wall = WALL.check(value, unit);
            return this;
        }

        /**
         * Sets the length.
         *
         * @param value the length, above 0 to 5000 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the length is outside its range
         */
        public Builder length(double value, LengthUnit unit) {
            length = LENGTH.check(value, unit);
            return this;
        }

        /**
         * Sets the temperature at which the stiffness of a plastic wall counts: 23 degC if not set.
         *
         * @param value the temperature, 0 degC to 95 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder stiffnessAt(double value, TemperatureUnit unit) {
            stiffnessAt = STIFFNESS_AT.check(value, unit);
            return this;
        }

        /**
         * Sets how long a rise of pressure loads a plastic wall, which creeps meanwhile: as long as a short test if not set.
         *
         * @param value the time, 0.1 h to 1000 h
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the time is outside its range
         */
        public Builder loadedFor(double value, DurationUnit unit) {
            loadedFor = LOADED_FOR.check(value, unit);
            return this;
        }

        /**
         * Sets what water the pipe carries: cold if not set.
         *
         * @param value what it carries
         * @return this builder
         */
        public Builder carries(Carries value) {
            carries = Objects.requireNonNull(value, "carries");
            return this;
        }

        /**
         * Sets how thick the insulation around a pipe that carries hot water is: bare if not set.
         *
         * @param value the thickness, 0 to 200 mm
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the thickness is outside its range
         */
        public Builder insulation(double value, LengthUnit unit) {
            insulation = INSULATION.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the run of pipe
         * @throws InvalidDescriptionException if something is missing, or if the wall leaves no bore
         */
        public PipeRun build() {
            Requirements requirements = new Requirements()
                    .present("material", material)
                    .present("outside-diameter", outsideDiameter)
                    .present("wall", wall)
                    .present("length", length);
            if (requirements.met()) {
                requirements.rule(
                        2 * wall < 0.98 * outsideDiameter,
                        "wall",
                        () -> Limits.quantity(LengthUnit.MILLIMETRE.fromSi(wall), LengthUnit.MILLIMETRE)
                                + " leaves no bore in a pipe of "
                                + Limits.quantity(LengthUnit.MILLIMETRE.fromSi(outsideDiameter), LengthUnit.MILLIMETRE)
                                + " outside diameter");
            }
            if (requirements.met() && !material.yields()) {
                requirements.rule(stiffnessAt == null, "stiffness-at", METAL);
                requirements.rule(loadedFor == null, "loaded-for", METAL);
            }
            requirements.rule(
                    insulation == null || carries != Carries.COLD,
                    "insulation",
                    "makes no difference for a pipe that carries cold water; remove it, or say 'carries: hot' or 'carries: loop'");
            requirements.orThrow();
            return new PipeRun(this);
        }
    }
}
