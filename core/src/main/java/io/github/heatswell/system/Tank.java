package io.github.heatswell.system;

import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.ExpansionUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A storage tank, always full of water.
 */
public final class Tank {

    /** Test pressure over working pressure: 300 psi for 150 psi (ANSI Z21.10.1 and UL 174, from memory). */
    private static final double TEST_PRESSURE_RATIO = 2.0;

    /** The highest working pressure (Pa, gauge) that tanks of houses are rated for: from memory, no source. */
    public static final double MAX_WORKING_PRESSURE = 12.5e5;

    private static final Limits VOLUME = Limits.between("volume", 1e-3, 20.0);
    private static final Limits STANDING_LOSS = Limits.between("standingLoss", 0, 100);
    private static final Limits WORKING_PRESSURE = Limits.between("workingPressure", 0.5e5, MAX_WORKING_PRESSURE);

    /**
     * Range of the compliance (m3/Pa): from less than the thickest wall of stainless steel gives a litre (0.005 mL/bar) to three
     * times what a usual wall gives the largest tank (20 m3: 3.3 L/bar).
     */
    private static final Limits COMPLIANCE = Limits.between("compliance", 1e-14, 1e-7);

    private static final Limits EXPANSION = Limits.between("expansion", 0, 300e-6);

    /** From below the flattest heads of ASME VIII-1, appendix 1-4 (3:1, from memory), to a hemisphere. */
    private static final Limits HEADS = Limits.between("heads", 0.33, 1);

    private static final Limits FLUE = Limits.between("flue", 0.02, 1);

    private static final Limits AIR = Limits.above("air", 0, 0.1);

    private static final Limits HEIGHT = Limits.between("height", 0.1, 10);
    private static final int MAX_LAYERS = 50;
    private static final Limits INLET_MIXING = Limits.between("inletMixing", 0, 1);

    private final double volume;
    private final Shell shell;
    /** The compliance (m3/Pa) as given; null if it follows from the shell. */
    private final Double compliance;
    /** The linear expansion (1/K) as given; null if it is that of the shell's material. */
    private final Double expansion;
    /** The depth of the heads (-, of the radius), 0 for flat ends; null if not given. */
    private final Double heads;
    /** The diameter of the flue (m); null if not given. */
    private final Double flue;

    private final double standingLoss;
    private final Pressure workingPressure;
    private final boolean workingPressureGiven;
    private final boolean neverFails;
    /** Volume of the air (m3), 0 for none. */
    private final double air;

    private final int layers;
    private final double height;
    private final double inletMixing;

    private Tank(Builder from) {
        volume = from.volume;
        shell = from.completeShell();
        compliance = from.compliance;
        expansion = from.expansion;
        heads = from.heads;
        flue = from.flue;
        standingLoss = from.standingLoss;
        workingPressure = from.workingPressure;
        workingPressureGiven = from.workingPressureGiven;
        neverFails = from.neverFails;
        air = from.air;
        layers = from.layers;
        height = from.height == null ? 0 : from.height;
        inletMixing = from.inletMixing;
    }

    /**
     * Starts a description; volume, standing loss, working pressure and the shell must be set, the shell by its material,
     * diameter and wall, by its material and compliance, as rigid, or as a whole.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this tank holds
     */
    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.volume = volume;
        builder.shell(shell);
        if (compliance != null) {
            builder.shell = null;
            builder.compliance = compliance;
        }
        if (heads != null || flue != null) {
            builder.shell = null;
            builder.heads = heads;
            builder.flue = flue;
        }
        builder.expansion = expansion;
        builder.standingLoss = standingLoss;
        builder.workingPressure = workingPressure;
        builder.workingPressureGiven = workingPressureGiven;
        builder.neverFails = neverFails;
        builder.air = air;
        builder.layers = layers;
        builder.height = height > 0 ? height : null;
        builder.inletMixing = inletMixing;
        return builder;
    }

    /** {@return volume and working pressure in a line} */
    @Override
    public String toString() {
        return QuantityFormat.ascii(UnitSystem.SI).volume(volume) + " tank, rated for " + workingPressure;
    }

    /**
     * The volume of the tank at the cold fill.
     *
     * @return the volume (m3)
     */
    public double volume() {
        return volume;
    }

    /**
     * How the volume depends on pressure and temperature.
     *
     * @return the shell
     */
    public Shell shell() {
        return shell;
    }

    /**
     * By how much the water space grows with pressure: the compliance of the shell for the whole tank.
     *
     * @return the compliance (m3/Pa), 0 for a rigid shell
     */
    public double compliance() {
        return compliance == null ? shell.compliance() * volume : compliance;
    }

    /**
     * Whether the compliance was given, such as a measured one, rather than calculated from the dimensions of the shell.
     *
     * @return false if it follows from the shell
     */
    public boolean complianceGiven() {
        return compliance != null;
    }

    boolean hasFlue() {
        return flue != null;
    }

    /**
     * Heat loss to the room per kelvin of temperature difference.
     *
     * @return the standing loss (W/K)
     */
    public double standingLoss() {
        return standingLoss;
    }

    /**
     * Maximum working pressure stated by the maker.
     *
     * @return the working pressure
     */
    public Pressure workingPressure() {
        return workingPressure;
    }

    /**
     * Whether the working pressure is this tank's own, rather than a typical value.
     *
     * @return false if it is assumed
     */
    public boolean workingPressureGiven() {
        return workingPressureGiven;
    }

    /**
     * Whether it is a textbook tank that no pressure harms, so that a run goes on beyond the test pressure. No real tank is.
     *
     * @return false for a real tank
     */
    public boolean neverFails() {
        return neverFails;
    }

    /**
     * Air under the top of the tank.
     *
     * @return its volume (m3) at the cold fill, or empty if there is none
     */
    public OptionalDouble air() {
        return air > 0 ? OptionalDouble.of(air) : OptionalDouble.empty();
    }

    /**
     * Into how many layers of equal volume the water is divided, from the bottom up, as described. A simulation
     * resolves none thinner than half a litre, or than 0.05 L for each kilowatt of the strongest burner or element.
     *
     * @return the number, 1 for a fully mixed tank
     */
    public int layers() {
        return layers;
    }

    /**
     * The height of the water in the tank.
     *
     * @return the height (m), or empty if it was not given and is not needed
     */
    public OptionalDouble height() {
        return height > 0 ? OptionalDouble.of(height) : OptionalDouble.empty();
    }

    /**
     * How high the tank stands, for a drawing: as high as its water is given, or else as its volume makes a shell of this diameter.
     *
     * @return the height (m), or empty if neither is known
     */
    public OptionalDouble builtHeight() {
        return height > 0 ? height() : shell.height(volume, heads == null ? 0 : heads, flue == null ? 0 : flue);
    }

    /**
     * How far the jet of incoming cold water reaches.
     *
     * @return the part (-) of the tank, from the bottom up; 0 for no more than the lowest layer
     */
    public double inletMixing() {
        return inletMixing;
    }

    /**
     * Test pressure before sale: twice the working pressure (gauge). Beyond it nothing is known about the tank, so the
     * model ends there.
     *
     * @param atmosphere the absolute pressure (Pa) of the surrounding air
     * @return the test pressure (Pa, absolute)
     */
    public double testPressureAbsolute(double atmosphere) {
        return TEST_PRESSURE_RATIO * workingPressure.gauge(atmosphere) + atmosphere;
    }

    /** The ends of a tank in their usual shapes. How far each changes the compliance is in {@link Builder#heads(Heads)}. */
    public enum Heads {
        /** Ends that do not give way: the whole tank counts as a cylinder. */
        FLAT(0),
        /**
         * A crown as wide as the tank with a knuckle of a tenth of that: 39 % of the radius deep (Kloepper head, DIN 28011, from
         * memory; the depth follows). Taken as an ellipsoid as deep.
         */
        TORISPHERICAL(0.3875),
        /** An ellipsoid half as deep as its radius, 2:1. */
        ELLIPSOIDAL(0.5),
        /** A hemisphere. */
        HEMISPHERICAL(1);

        private final double depth;

        Heads(double depth) {
            this.depth = depth;
        }

        /**
         * How deep one end is.
         *
         * @return its depth as a share (-) of the radius of the tank
         */
        public double depth() {
            return depth;
        }
    }

    /** Builds a {@link Tank}. */
    public static final class Builder {
        private Double volume;
        /** The complete shell, or null if its dimensions are given. */
        private Shell shell;

        private Shell.CylinderBuilder cylinder = Shell.cylinder();
        /** The compliance (m3/Pa), or null if the shell gives it. */
        private Double compliance;
        /** The linear expansion (1/K), or null if the material gives it. */
        private Double expansion;
        /** The depth of the heads (-, of the radius), 0 for flat ends; null if not given. */
        private Double heads;
        /** The diameter of the flue (m); null if not given. */
        private Double flue;

        private Double standingLoss;
        private Pressure workingPressure;
        private boolean workingPressureGiven = true;
        private boolean neverFails;
        private double air;
        private int layers = 1;
        private Double height;
        private double inletMixing;

        private Builder() {}

        /**
         * Sets the volume.
         *
         * @param value the volume, 1 L to 20 m3
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the volume is outside its range
         */
        public Builder volume(double value, VolumeUnit unit) {
            volume = VOLUME.check(value, unit);
            return this;
        }

        /**
         * Sets how the volume depends on pressure and temperature.
         *
         * @param value the shell
         * @return this builder
         */
        public Builder shell(Shell value) {
            shell = Objects.requireNonNull(value, "shell");
            cylinder = value.toBuilder();
            compliance = null;
            expansion = null;
            heads = null;
            flue = null;
            return this;
        }

        /**
         * Makes the shell rigid: its volume never changes.
         *
         * @return this builder
         */
        public Builder rigid() {
            return shell(Shell.rigid());
        }

        /**
         * Sets the material of the shell. It sets how the shell grows with heat and, unless the compliance is given, with pressure.
         *
         * @param value the material
         * @return this builder
         */
        public Builder material(Material value) {
            cylinder.material(value);
            shell = null;
            return this;
        }

        /**
         * Sets the diameter of the shell, a closed thin-walled cylinder, in place of a compliance.
         *
         * @param value the diameter, 50 mm to 3 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the diameter is outside its range
         */
        public Builder diameter(double value, LengthUnit unit) {
            cylinder.diameter(value, unit);
            shell = null;
            compliance = null;
            return this;
        }

        /**
         * Sets the thickness of the shell, a closed thin-walled cylinder, in place of a compliance.
         *
         * @param value the thickness, 0.2 mm to 50 mm and at most a tenth of the diameter
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the thickness is outside its range
         */
        public Builder wall(double value, LengthUnit unit) {
            cylinder.wall(value, unit);
            shell = null;
            compliance = null;
            return this;
        }

        /**
         * Sets by how much the water space of the tank grows with pressure, in place of the diameter and wall of its shell. The
         * compression of the water is not part of it.
         *
         * @param value the compliance, 0.001 mL/bar to 10 L/bar
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the compliance is outside its range
         */
        public Builder compliance(double value, ComplianceUnit unit) {
            compliance = COMPLIANCE.check(value, unit);
            Material material = cylinder.material();
            cylinder = material == null ? Shell.cylinder() : Shell.cylinder().material(material);
            shell = null;
            heads = null;
            flue = null;
            return this;
        }

        /**
         * Sets the shape of both ends, in place of a compliance. A tank three times as high as wide stretches with hemispherical
         * heads by 10 % less than if it were a cylinder as a whole, with ellipsoidal ones (2:1) by 10 % more, with torispherical ones by
         * 39 % more.
         *
         * @param value the shape; if none is set, the tank is a cylinder as a whole
         * @return this builder
         */
        public Builder heads(Heads value) {
            return depthOfHeads(value.depth());
        }

        /**
         * Sets how deep both ends are, taken as ellipsoids, in place of a compliance.
         *
         * @param depth the depth of one as a share of the radius of the tank, 33 to 100 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the depth is outside its range
         */
        public Builder heads(double depth, RatioUnit unit) {
            return depthOfHeads(HEADS.check(depth, unit));
        }

        private Builder depthOfHeads(double depth) {
            heads = depth;
            compliance = null;
            shell = null;
            return this;
        }

        /**
         * Sets the diameter of the flue of a gas heater, a tube through the water from end to end and as thick as the shell, in place
         * of a compliance.
         *
         * @param value the diameter, 20 mm to 1 m and at most half of the tank's
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the diameter is outside its range
         */
        public Builder flue(double value, LengthUnit unit) {
            flue = FLUE.check(value, unit);
            compliance = null;
            shell = null;
            return this;
        }

        /**
         * Sets by how much the shell grows with heat in place of the usual value of its material.
         *
         * @param value the linear expansion, 0 to 300 ppm/K; 12 ppm/K for steel, 17 ppm/K for stainless steel and copper
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the expansion is outside its range
         */
        public Builder expansion(double value, ExpansionUnit unit) {
            expansion = EXPANSION.check(value, unit);
            return this;
        }

        /**
         * Sets the standing loss.
         *
         * @param value the loss, 0 to 100 W/K
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the loss is outside its range
         */
        public Builder standingLoss(double value, ConductanceUnit unit) {
            standingLoss = STANDING_LOSS.check(value, unit);
            return this;
        }

        /**
         * Sets the working pressure.
         *
         * @param value the pressure, 0.5 bar to 12.5 bar, so that the test pressure stays inside the range of the water
         *     properties
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder workingPressure(Pressure value) {
            workingPressure = WORKING_PRESSURE.check(value);
            workingPressureGiven = true;
            return this;
        }

        /**
         * Sets a typical working pressure in place of an unknown one. Exceeding it is never reported as a hazard.
         *
         * @param value the pressure, 0.5 bar to 12.5 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder assumedWorkingPressure(Pressure value) {
            workingPressure(value);
            workingPressureGiven = false;
            return this;
        }

        /**
         * Sets how much air stands under the top of the tank. It warms with the water there and holds its vapour, and water takes
         * up the rest of the tank. A run ends where vapour makes up nine tenths of its pressure, or where cold water that comes
         * in would condense as much as it takes room, so that the air collapses: the heat that evaporation takes is left out.
         *
         * @param value the volume at the cold fill, under the supply's pressure and at its temperature: above 0 to 100 L
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the volume is outside its range
         */
        public Builder air(double value, VolumeUnit unit) {
            air = AIR.check(value, unit);
            return this;
        }

        /**
         * Takes out the air under the top of the tank.
         *
         * @return this builder
         */
        public Builder withoutAir() {
            air = 0;
            return this;
        }

        /**
         * Makes it a textbook tank that no pressure harms: a run ends at 1000 bar instead of the test pressure. For
         * teaching and for comparison with formulas; no real tank survives that.
         *
         * @param yes whether no pressure harms it; false if not set
         * @return this builder
         */
        public Builder neverFails(boolean yes) {
            neverFails = yes;
            return this;
        }

        /**
         * Divides the water into layers; by default the tank is fully mixed. A simulation resolves none thinner
         * than half a litre, or than 0.05 L for each kilowatt of the strongest burner or element. Five and more move with the water that a
         * tap takes and do not mix with what
         * flows in: after a draw, the reheated water expands by what it would below a sharp front of cold water, within half a per
         * cent. Fewer, and all under air, stand still: there ten layers mix so much that a draw of a third of the tank expands by about 18
         * %
         * more.
         *
         * @param number the number of layers, 1 to 50
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder layers(int number) {
            layers = Limits.whole("layers", number, 1, MAX_LAYERS);
            return this;
        }

        /**
         * Sets the height of the water, over which heat is conducted from layer to layer.
         *
         * @param value the height, 0.1 m to 10 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside its range
         */
        public Builder height(double value, LengthUnit unit) {
            height = HEIGHT.check(value, unit);
            return this;
        }

        /**
         * Sets how much of the tank the jet of cold water mixes: what flows in spreads evenly over this part, however slowly it
         * flows. It depends on the inlet and on the flow: in a tank 24 cm wide, a baffle
         * above the inlet changed nothing until the water rose by 11 cm/min (J. Sol. Energy Eng. 131, 011011, 2009, abstract). We
         * found no published figure for the tanks of houses; 20 % is a guess for a strong flow straight up.
         *
         * @param value the part of the tank, from the bottom up: 0 to 100 %, and more than one of its layers; 0 if not set
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the part is outside its range
         */
        public Builder inletMixing(double value, RatioUnit unit) {
            inletMixing = INLET_MIXING.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the tank
         * @throws InvalidDescriptionException if something is missing; the height only if there are layers
         */
        public Tank build() {
            Requirements requirements = new Requirements()
                    .present("volume", volume)
                    .present("shell", shell == null && compliance == null && cylinder.isEmpty() ? null : cylinder)
                    .present("standing-loss", standingLoss)
                    .present("working-pressure", workingPressure);
            if (layers > 1) {
                requirements.present("height", height);
            }
            if (compliance != null) {
                requirements.present("material", cylinder.material());
            } else if (shell == null && !cylinder.isEmpty()) {
                requirements.absorb(cylinder::build);
                if (requirements.met()) {
                    checkShape(requirements, shape());
                }
            }
            requirements.rule(
                    expansion == null || shell == null || shell.material().isPresent(),
                    "expansion",
                    "does not apply to a rigid shell");
            if (inletMixing > 0) {
                requirements.rule(inletMixing * layers > 1, "inlet-mixing", tooCoarse());
            }
            requirements.orThrow();
            return new Tank(this);
        }

        private TankShape shape() {
            return cylinder.build().shape(heads == null ? 0 : heads, flue == null ? 0 : flue);
        }

        private void checkShape(Requirements requirements, TankShape shape) {
            requirements.rule(
                    shape.flue() <= shape.diameter() / 2,
                    "flue",
                    () -> millimetres(shape.flue()) + " is more than half of the tank's diameter of "
                            + millimetres(shape.diameter()));
            requirements.rule(
                    shape.inHeads() <= volume,
                    "heads",
                    () -> "heads as deep as " + millimetres(shape.depth()) + " alone hold more than the tank of "
                            + Limits.quantity(VolumeUnit.LITRE.fromSi(volume), VolumeUnit.LITRE)
                            + "; check its diameter");
        }

        private static String millimetres(double length) {
            return Limits.quantity(LengthUnit.MILLIMETRE.fromSi(length), LengthUnit.MILLIMETRE);
        }

        /** Water inside one layer is mixed anyway. */
        private String tooCoarse() {
            String share = Limits.quantity(RatioUnit.PERCENT.fromSi(inletMixing), RatioUnit.PERCENT);
            double enough = Math.floor(1 / inletMixing) + 1;
            return layers == 1
                    ? "needs layers; a tank without layers is mixed as a whole"
                    : share + " of the tank is not more than one of its " + layers + " layers, which is mixed anyway; "
                            + (enough > MAX_LAYERS
                                    ? "leave it out"
                                    : "give it " + (int) enough + " layers, or leave this out");
        }

        private Shell completeShell() {
            return expansion == null ? plainShell() : plainShell().expanding(expansion);
        }

        private Shell plainShell() {
            if (compliance != null) {
                return Shell.ofCompliance(cylinder.material(), compliance / volume);
            }
            if (shell != null) {
                return shell;
            }
            Shell plain = cylinder.build();
            return heads == null && flue == null
                    ? plain
                    : plain.shaped(volume, heads == null ? 0 : heads, flue == null ? 0 : flue);
        }
    }
}
