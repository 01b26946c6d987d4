package io.github.heatswell.system;

import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The whole installation as its owner would describe it: one storage tank, what heats it, its cold feed, the piping that
 * shares its pressure, its relief valves, its expansion vessels, and where a run starts. Immutable; may be simulated by any
 * number of threads at once. Equality is identity: two systems with the same parts are not equal.
 */
public final class HotWaterSystem {

    private static final Limits TRAPPED_AIR = Limits.above("trappedAir", 0, 0.1);
    private static final Limits GAUGE_HEIGHT = Limits.between("gaugeHeight", -30, 30);

    /** What it consists of: a copy that nobody else has and nothing changes. */
    private final SystemParts parts;

    private HotWaterSystem(SystemParts from) {
        parts = new SystemParts(from);
    }

    /**
     * Starts a description; site, supply, tank and heater must be set.
     *
     * @return a builder with no piping, no relief valve, no vessel, and the cold fill as its start
     */
    public static Builder builder() {
        return new Builder(new SystemParts());
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this system holds
     */
    public Builder toBuilder() {
        return new Builder(new SystemParts(parts));
    }

    /** {@return tank, heater, supply, relief valves and vessel in a line, in SI units} */
    @Override
    public String toString() {
        QuantityFormat si = QuantityFormat.ascii(UnitSystem.SI);
        return si.volume(tank().volume()) + " tank, set to " + si.temperature(heater().setPoint()) + ", "
                + supply().arrangement().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", relief valves: "
                + reliefValves().size() + ", "
                + (parts.vessels.isEmpty()
                        ? "no vessel"
                        : parts.vessels.stream().map(ExpansionVessel::toString).collect(Collectors.joining(", ")));
    }

    /** {@return where the heater stands} */
    public Site site() {
        return parts.site;
    }

    /** {@return the cold feed} */
    public Supply supply() {
        return parts.supply;
    }

    /** {@return the storage tank} */
    public Tank tank() {
        return parts.tank;
    }

    /** {@return what heats the tank} */
    public Heater heater() {
        return parts.heater;
    }

    /** {@return the runs of pipe that share the tank's pressure, possibly none} */
    public List<PipeRun> piping() {
        return Collections.unmodifiableList(parts.piping);
    }

    /**
     * The runs of pipe that carry one kind of water.
     *
     * @param what the kind of water
     * @return the runs, possibly none, in the order they were added
     */
    public List<PipeRun> piping(PipeRun.Carries what) {
        List<PipeRun> runs = new ArrayList<>();
        for (PipeRun pipe : parts.piping) {
            if (pipe.carries() == what) {
                runs.add(pipe);
            }
        }
        return Collections.unmodifiableList(runs);
    }

    /** {@return the relief valves, possibly none, in the order they were added} */
    public List<ReliefValve> reliefValves() {
        return Collections.unmodifiableList(parts.reliefValves);
    }

    /** {@return the first expansion vessel, which sizing, ageing and diagnosis are about, or empty if there is none} */
    public Optional<ExpansionVessel> vessel() {
        return parts.vessels.stream().findFirst();
    }

    /** {@return all expansion vessels, possibly none, in the order they were added} */
    public List<ExpansionVessel> vessels() {
        return Collections.unmodifiableList(parts.vessels);
    }

    /**
     * Whether there are several expansion vessels. The question which vessel to take is then about one more, with those present left as
     * they are; otherwise it is about the only one.
     *
     * @return true for two or more
     */
    public boolean hasSeveralVessels() {
        return parts.vessels.size() > 1;
    }

    /**
     * What results call each vessel.
     *
     * @return the names in the order of {@link #vessels()}: empty for the only one; of several, each one's own, or its number
     */
    public List<String> vesselNames() {
        int count = parts.vessels.size();
        return IntStream.range(0, count)
                .mapToObj(i -> count == 1 ? "" : parts.vessels.get(i).name().orElse("vessel " + (i + 1)))
                .toList();
    }

    /** {@return the water (m3) that is kept hot: that of the tank and of a circulation loop} */
    public double hotVolume() {
        return parts.tank.volume()
                + piping(PipeRun.Carries.LOOP).stream()
                        .mapToDouble(PipeRun::volume)
                        .sum();
    }

    /** {@return what drives the circulation loop, or empty if there is none} */
    public Optional<Circulation> circulation() {
        return Optional.ofNullable(parts.circulation);
    }

    /** {@return the volume (m3) of air trapped in the piping, at the starting pressure, or empty if there is none} */
    public OptionalDouble trappedAir() {
        return parts.trappedAir == null ? OptionalDouble.empty() : OptionalDouble.of(parts.trappedAir);
    }

    /** {@return taps that drip and other small holes, possibly none} */
    public List<Leak> leaks() {
        return Collections.unmodifiableList(parts.leaks);
    }

    /** {@return the hot-water draws of every day, possibly none} */
    public DrawProfile draws() {
        return parts.draws;
    }

    /** {@return the height (m) of the owner's gauge above the tank's drain cock, negative below it} */
    public double gaugeHeight() {
        return parts.gaugeHeight;
    }

    /** {@return where a run starts} */
    public Start start() {
        return parts.start;
    }

    /** {@return the static supply pressure at the start of a run: that of the mains, or the reducing valve's lock-up pressure} */
    public Pressure supplyAtStart() {
        double atmosphere = parts.site.atmosphere();
        return Pressure.gauge(
                parts.supply.staticAbsolute(parts.start.timeOfDay(), atmosphere) - atmosphere, PressureUnit.PASCAL);
    }

    /** {@return the temperature (K) of the cold water when a run starts} */
    public double coldAtStart() {
        return parts.supply.water().on(parts.start.dayOfYear());
    }

    /**
     * Temperature of a vessel's gas before any water is heated, at which its precharge is judged.
     *
     * @param vessel the vessel
     * @return that of the air around it, or of the cold water if it is built into the tank (K)
     */
    public double gasAtRest(ExpansionVessel vessel) {
        return vessel.isInTank() ? coldAtStart() : vessel.temperature().orElse(parts.site.roomTemperature());
    }

    /**
     * Static pressure difference between the tank's drain cock and a height: the weight of the water column between
     * them. Every comparison of pressures at two heights uses it, including the simulation's. The density is that of
     * the cold feed on the day a run starts, at air pressure; a column of hot water would weigh up to 4 % less.
     *
     * @param height the height above the drain cock (m), negative below it
     * @return the difference of pressure (Pa), negative below the drain cock
     */
    public double head(double height) {
        return GibbsPolynomialWater.instance().density(coldAtStart(), parts.site.atmosphere())
                * Unit.STANDARD_GRAVITY
                * height;
    }

    /**
     * Pressure at the tank's drain cock, the reference height of a run, for a given pressure at a device.
     *
     * @param seen the pressure at the device
     * @param height the height of the device above the drain cock (m), negative below it
     * @return the pressure at the drain cock, against the air at the site
     */
    public Pressure atDrainCock(Pressure seen, double height) {
        return Pressure.gauge(
                Objects.requireNonNull(seen, "seen").gauge(parts.site.atmosphere()) + head(height),
                PressureUnit.PASCAL);
    }

    /** Builds a {@link HotWaterSystem}. */
    public static final class Builder {
        private final SystemParts parts;

        private Builder(SystemParts parts) {
            this.parts = parts;
        }

        /**
         * Sets where the heater stands.
         *
         * @param value the site
         * @return this builder
         */
        public Builder site(Site value) {
            parts.site = Objects.requireNonNull(value, "site");
            return this;
        }

        /**
         * Sets the cold feed.
         *
         * @param value the supply
         * @return this builder
         */
        public Builder supply(Supply value) {
            parts.supply = Objects.requireNonNull(value, "supply");
            return this;
        }

        /**
         * Sets the storage tank.
         *
         * @param value the tank
         * @return this builder
         */
        public Builder tank(Tank value) {
            parts.tank = Objects.requireNonNull(value, "tank");
            return this;
        }

        /**
         * Sets what heats the tank.
         *
         * @param value the heater
         * @return this builder
         */
        public Builder heater(Heater value) {
            parts.heater = Objects.requireNonNull(value, "heater");
            return this;
        }

        /**
         * Adds a run of pipe.
         *
         * @param value the run of pipe
         * @return this builder
         */
        public Builder addPipe(PipeRun value) {
            parts.piping.add(Objects.requireNonNull(value, "pipe"));
            return this;
        }

        /**
         * Adds a relief valve.
         *
         * @param value the valve
         * @return this builder
         */
        public Builder addReliefValve(ReliefValve value) {
            parts.reliefValves.add(Objects.requireNonNull(value, "reliefValve"));
            return this;
        }

        /**
         * Removes all relief valves, to add others in their place.
         *
         * @return this builder
         */
        public Builder withoutReliefValves() {
            parts.reliefValves.clear();
            return this;
        }

        /**
         * Changes the supply set before.
         *
         * @param change makes the new one from the present one
         * @return this builder
         * @throws IllegalStateException if there is none
         */
        public Builder changeSupply(UnaryOperator<Supply> change) {
            return supply(changed("supply", parts.supply, change));
        }

        private static <T> T changed(String name, T part, UnaryOperator<T> change) {
            Objects.requireNonNull(change, "change");
            if (part == null) {
                throw new IllegalStateException(name + ": is not set yet, so there is none to change");
            }
            return applied(name, part, change);
        }

        private static <T> T applied(String name, T part, UnaryOperator<T> change) {
            return Objects.requireNonNull(
                    change.apply(part), () -> name + ": the change gives null instead of another");
        }

        private static <T> void applyToAll(String name, List<T> parts, UnaryOperator<T> change) {
            Objects.requireNonNull(change, "change");
            parts.replaceAll(part -> applied(name, part, change));
        }

        /**
         * Changes the tank set before.
         *
         * @param change makes the new one from the present one
         * @return this builder
         * @throws IllegalStateException if there is none
         */
        public Builder changeTank(UnaryOperator<Tank> change) {
            return tank(changed("tank", parts.tank, change));
        }

        /** The pressure of the air at the site set before (Pa). */
        double atmosphere() {
            return parts.site.atmosphere();
        }

        /**
         * Changes the heater set before.
         *
         * @param change makes the new one from the present one
         * @return this builder
         * @throws IllegalStateException if there is none
         */
        public Builder changeHeater(UnaryOperator<Heater> change) {
            return heater(changed("heater", parts.heater, change));
        }

        /**
         * Changes every run of pipe added before.
         *
         * @param change makes the new one from the present one, or returns it as it is
         * @return this builder
         */
        public Builder changePiping(UnaryOperator<PipeRun> change) {
            applyToAll("piping", parts.piping, change);
            return this;
        }

        /**
         * Changes every relief valve added before.
         *
         * @param change makes the new one from the present one, or returns it as it is
         * @return this builder
         */
        public Builder changeReliefValves(UnaryOperator<ReliefValve> change) {
            applyToAll("relief", parts.reliefValves, change);
            return this;
        }

        /**
         * Changes the first expansion vessel set before.
         *
         * @param change makes the new one from the present one
         * @return this builder
         * @throws IllegalStateException if there is none
         */
        public Builder changeVessel(UnaryOperator<ExpansionVessel> change) {
            return vessel(changed("vessel", parts.vessels.isEmpty() ? null : parts.vessels.get(0), change));
        }

        /** Changes the first expansion vessel, or leaves a house without one as it is. */
        Builder changeVesselIfAny(UnaryOperator<ExpansionVessel> change) {
            return parts.vessels.isEmpty() ? this : changeVessel(change);
        }

        /**
         * Changes one of the expansion vessels set before.
         *
         * @param index its place in their order, from 0
         * @param change makes the new one from the present one
         * @return this builder
         * @throws IndexOutOfBoundsException if there is no such vessel; it says how many there are
         */
        public Builder changeVessel(int index, UnaryOperator<ExpansionVessel> change) {
            Objects.requireNonNull(change, "change");
            int count = parts.vessels.size();
            if (index < 0 || index >= count) {
                throw new IndexOutOfBoundsException("vessel: there is none with index " + index + "; the system has "
                        + (count == 0 ? "no vessel" : count + ", counted from 0"));
            }
            parts.vessels.set(index, applied("vessel", parts.vessels.get(index), change));
            return this;
        }

        /**
         * Changes where a run starts.
         *
         * @param change makes the new start from the present one
         * @return this builder
         */
        public Builder changeStart(UnaryOperator<Start> change) {
            return start(changed("start", parts.start, change));
        }

        /**
         * Sets the first expansion vessel; others stay.
         *
         * @param value the vessel
         * @return this builder
         */
        public Builder vessel(ExpansionVessel value) {
            Objects.requireNonNull(value, "vessel");
            if (parts.vessels.isEmpty()) {
                return addVessel(value);
            }
            parts.vessels.set(0, value);
            return this;
        }

        /**
         * Adds an expansion vessel, such as one built into the tank.
         *
         * @param value the vessel
         * @return this builder
         */
        public Builder addVessel(ExpansionVessel value) {
            boolean twin = parts.vessels.contains(Objects.requireNonNull(value, "vessels"));
            // two alike are two: each has its own number
            parts.vessels.add(twin ? value.toBuilder().build() : value);
            return this;
        }

        /**
         * Fits an expansion vessel: one more where there are several, else the only one, in place of any other.
         *
         * @param value the vessel
         * @return this builder
         */
        public Builder fitVessel(ExpansionVessel value) {
            return parts.vessels.size() > 1 ? addVessel(value) : vessel(value);
        }

        /**
         * Removes all expansion vessels.
         *
         * @return this builder
         */
        public Builder withoutVessel() {
            parts.vessels.clear();
            return this;
        }

        /**
         * Sets what drives a circulation loop, whose pipes carry {@link PipeRun.Carries#LOOP}.
         *
         * @param value pump and return
         * @return this builder
         */
        public Builder circulation(Circulation value) {
            parts.circulation = Objects.requireNonNull(value, "circulation");
            return this;
        }

        /**
         * Adds air trapped in the piping.
         *
         * @param value its volume at the pressure the run starts from, above 0 to 100 L
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the volume is outside its range
         */
        public Builder trappedAir(double value, VolumeUnit unit) {
            parts.trappedAir = TRAPPED_AIR.check(value, unit);
            return this;
        }

        /**
         * Adds a leak.
         *
         * @param value the leak
         * @return this builder
         */
        public Builder addLeak(Leak value) {
            parts.leaks.add(Objects.requireNonNull(value, "leak"));
            return this;
        }

        /**
         * Sets when hot water is drawn.
         *
         * @param value the draws of every day
         * @return this builder
         */
        public Builder draws(DrawProfile value) {
            parts.draws = Objects.requireNonNull(value, "draws");
            return this;
        }

        /**
         * Sets where the owner's gauge sits.
         *
         * @param value the height above the tank's drain cock, -30 m to 30 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside its range
         */
        public Builder gaugeHeight(double value, LengthUnit unit) {
            parts.gaugeHeight = GAUGE_HEIGHT.check(value, unit);
            return this;
        }

        /**
         * Sets where a run starts.
         *
         * @param value the start
         * @return this builder
         */
        public Builder start(Start value) {
            parts.start = Objects.requireNonNull(value, "start");
            return this;
        }

        /**
         * Lets a run start at the pressure of the supply where the described start no longer fits it: where that lies below the supply's
         * pressure, or an open connection to the mains could not hold it.
         *
         * @return this builder
         */
        public Builder followSupply() {
            return start(parts.start.following(parts.supply, parts.site.atmosphere()));
        }

        /**
         * Completes the description.
         *
         * @return the system
         * @throws InvalidDescriptionException listing everything that is missing or contradictory
         */
        public HotWaterSystem build() {
            Requirements requirements = parts.present();
            if (requirements.met()) {
                new SystemRules(requirements, new HotWaterSystem(parts)).check();
            }
            requirements.orThrow();
            return new HotWaterSystem(parts);
        }
    }
}
