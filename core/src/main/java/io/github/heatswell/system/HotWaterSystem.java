package io.github.heatswell.system;

import io.github.heatswell.units.Gravity;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The whole installation as its owner would describe it: one storage tank, what heats it, its cold feed, the piping that
 * shares its pressure, its relief valves, at most one expansion vessel, and where a run starts. Immutable; may be
 * simulated by any number of threads at once.
 */
public final class HotWaterSystem {

    private static final Limits GAUGE_HEIGHT = Limits.between("height", -30, 30);

    /** Two pressures this close (Pa) are one: sums of the same numbers in another order differ by rounding. */
    private static final double SAME_PRESSURE = 1e-6;

    /** What a change of units may cost (-). */
    private static final double ROUNDING = 1e-9;

    /**
     * The most (-) a tank may grow from empty to its working pressure. The volume follows the pressure in a straight line, which
     * would leave a tank beyond it without any volume where the pressure is lost. Own choice.
     */
    static final double MAX_STRETCH = 0.75;

    private final Site site;
    private final Supply supply;
    private final Tank tank;
    private final Heater heater;
    private final List<PipeRun> piping;
    private final List<ReliefValve> reliefValves;
    private final ExpansionVessel vessel;
    private final TrappedAir trappedAir;
    private final List<Leak> leaks;
    private final DrawProfile draws;
    private final double gaugeHeight;
    private final Start start;

    private HotWaterSystem(Builder from) {
        site = from.site;
        supply = from.supply;
        tank = from.tank;
        heater = from.heater;
        piping = List.copyOf(from.piping);
        reliefValves = List.copyOf(from.reliefValves);
        vessel = from.vessel;
        trappedAir = from.trappedAir;
        leaks = List.copyOf(from.leaks);
        draws = from.draws;
        gaugeHeight = from.gaugeHeight;
        start = from.start;
    }

    /**
     * Starts a description; site, supply, tank and heater must be set.
     *
     * @return a builder with no piping, no relief valve, no vessel, and the cold fill as its start
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this system holds
     */
    public Builder toBuilder() {
        Builder builder = new Builder()
                .site(site)
                .supply(supply)
                .tank(tank)
                .heater(heater)
                .start(start);
        builder.piping.addAll(piping);
        builder.reliefValves.addAll(reliefValves);
        builder.vessel = vessel;
        builder.trappedAir = trappedAir;
        builder.leaks.addAll(leaks);
        builder.draws = draws;
        builder.gaugeHeight = gaugeHeight;
        return builder;
    }

    /**
     * Where the heater stands.
     *
     * @return the site
     */
    public Site site() {
        return site;
    }

    /**
     * The cold feed.
     *
     * @return the supply
     */
    public Supply supply() {
        return supply;
    }

    /**
     * The storage tank.
     *
     * @return the tank
     */
    public Tank tank() {
        return tank;
    }

    /**
     * What heats the tank.
     *
     * @return the heater
     */
    public Heater heater() {
        return heater;
    }

    /**
     * The piping that shares the tank's pressure.
     *
     * @return the runs of pipe, possibly none
     */
    public List<PipeRun> piping() {
        return piping;
    }

    /**
     * The relief valves.
     *
     * @return the valves, possibly none, in the order they were added
     */
    public List<ReliefValve> reliefValves() {
        return reliefValves;
    }

    /**
     * The expansion vessel.
     *
     * @return the vessel, or empty if there is none
     */
    public Optional<ExpansionVessel> vessel() {
        return Optional.ofNullable(vessel);
    }

    /**
     * Air caught in the piping.
     *
     * @return the air, or empty if there is none
     */
    public Optional<TrappedAir> trappedAir() {
        return Optional.ofNullable(trappedAir);
    }

    /**
     * Taps that drip and other small holes.
     *
     * @return the leaks, possibly none
     */
    public List<Leak> leaks() {
        return leaks;
    }

    /**
     * When hot water is drawn.
     *
     * @return the draws of every day, possibly none
     */
    public DrawProfile draws() {
        return draws;
    }

    /**
     * Height of the owner's gauge above the tank's drain cock.
     *
     * @return the height (m), negative below it
     */
    public double gaugeHeight() {
        return gaugeHeight;
    }

    /**
     * Where a run starts.
     *
     * @return the start
     */
    public Start start() {
        return start;
    }

    /**
     * The pressure the supply stands at when a run starts: that of the mains, or what a reducing valve locks up at.
     *
     * @return the static pressure
     */
    public Pressure supplyAtStart() {
        double atmosphere = site.atmosphere();
        return Pressure.gauge(supply.staticAbsolute(start.timeOfDay(), atmosphere) - atmosphere, PressureUnit.PASCAL);
    }

    /**
     * The temperature of the cold water when a run starts.
     *
     * @return the temperature (K)
     */
    public double coldAtStart() {
        return supply.water().on(start.dayOfYear());
    }

    /**
     * How much less static pressure there is at a height than at the tank's drain cock: what a column of water between the two
     * weighs on each square metre. Everything here that compares pressures at two heights, the simulation included, takes this
     * number. The water is the cold feed's on the day a run starts, at the pressure of the air; hot water in the column would
     * weigh up to 4 % less.
     *
     * @param height the height above the drain cock (m), negative below it
     * @return the difference of pressure (Pa), negative below the drain cock
     */
    public double head(double height) {
        return GibbsPolynomialWater.instance().density(coldAtStart(), site.atmosphere()) * Gravity.STANDARD * height;
    }

    /**
     * The pressure at the tank's drain cock, where pressures of a run are taken, while a device at a height is under a given
     * pressure.
     *
     * @param seen the pressure at the device
     * @param height the height of the device above the drain cock (m), negative below it
     * @return the pressure at the drain cock, against the air at the site
     */
    public Pressure atDrainCock(Pressure seen, double height) {
        return Pressure.gauge(
                Objects.requireNonNull(seen, "seen").gauge(site.atmosphere()) + head(height), PressureUnit.PASCAL);
    }

    /** Builds a {@link HotWaterSystem}. */
    public static final class Builder {
        private Site site;
        private Supply supply;
        private Tank tank;
        private Heater heater;
        private final List<PipeRun> piping = new ArrayList<>();
        private final List<ReliefValve> reliefValves = new ArrayList<>();
        private ExpansionVessel vessel;
        private TrappedAir trappedAir;
        private final List<Leak> leaks = new ArrayList<>();
        private DrawProfile draws = DrawProfile.none();
        private double gaugeHeight;
        private Start start = Start.coldFill();

        private Builder() {}

        /**
         * Sets where the heater stands.
         *
         * @param value the site
         * @return this builder
         */
        public Builder site(Site value) {
            site = Objects.requireNonNull(value, "site");
            return this;
        }

        /**
         * Sets the cold feed.
         *
         * @param value the supply
         * @return this builder
         */
        public Builder supply(Supply value) {
            supply = Objects.requireNonNull(value, "supply");
            return this;
        }

        /**
         * Sets the storage tank.
         *
         * @param value the tank
         * @return this builder
         */
        public Builder tank(Tank value) {
            tank = Objects.requireNonNull(value, "tank");
            return this;
        }

        /**
         * Sets what heats the tank.
         *
         * @param value the heater
         * @return this builder
         */
        public Builder heater(Heater value) {
            heater = Objects.requireNonNull(value, "heater");
            return this;
        }

        /**
         * Adds a run of pipe.
         *
         * @param value the run of pipe
         * @return this builder
         */
        public Builder addPipe(PipeRun value) {
            piping.add(Objects.requireNonNull(value, "piping"));
            return this;
        }

        /**
         * Adds a relief valve.
         *
         * @param value the valve
         * @return this builder
         */
        public Builder addReliefValve(ReliefValve value) {
            reliefValves.add(Objects.requireNonNull(value, "relief"));
            return this;
        }

        /**
         * Takes all relief valves away, to add others in their place.
         *
         * @return this builder
         */
        public Builder withoutReliefValves() {
            reliefValves.clear();
            return this;
        }

        /**
         * Sets the expansion vessel.
         *
         * @param value the vessel
         * @return this builder
         */
        public Builder vessel(ExpansionVessel value) {
            vessel = Objects.requireNonNull(value, "vessel");
            return this;
        }

        /**
         * Takes the expansion vessel away.
         *
         * @return this builder
         */
        public Builder withoutVessel() {
            vessel = null;
            return this;
        }

        /**
         * Puts air into the piping.
         *
         * @param value the air
         * @return this builder
         */
        public Builder trappedAir(TrappedAir value) {
            trappedAir = Objects.requireNonNull(value, "trapped-air");
            return this;
        }

        /**
         * Adds a leak.
         *
         * @param value the leak
         * @return this builder
         */
        public Builder addLeak(Leak value) {
            leaks.add(Objects.requireNonNull(value, "leaks"));
            return this;
        }

        /**
         * Sets when hot water is drawn.
         *
         * @param value the draws of every day
         * @return this builder
         */
        public Builder draws(DrawProfile value) {
            draws = Objects.requireNonNull(value, "draws");
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
            gaugeHeight = GAUGE_HEIGHT.check(value, unit);
            return this;
        }

        /**
         * Sets where a run starts.
         *
         * @param value the start
         * @return this builder
         */
        public Builder start(Start value) {
            start = Objects.requireNonNull(value, "start");
            return this;
        }

        /**
         * Ends the description.
         *
         * @return the system
         * @throws InvalidDescriptionException listing everything that is missing or contradictory
         */
        public HotWaterSystem build() {
            Requirements requirements = new Requirements()
                    .present("site", site)
                    .present("supply", supply)
                    .present("tank", tank)
                    .present("heater", heater);
            if (requirements.met()) {
                checkPressures(requirements, site.atmosphere());
                checkTrappedAir(requirements);
                checkShell(requirements);
            }
            requirements.orThrow();
            return new HotWaterSystem(this);
        }

        private void checkPressures(Requirements requirements, double atmosphere) {
            double test = tank.testPressureAbsolute(atmosphere);
            supply.mains()
                    .entries()
                    .values()
                    .forEach(p -> checkPressure(requirements, "supply.pressure", p, atmosphere, mainsLimit(test)));
            start.pressure().ifPresent(p -> {
                checkPressure(requirements, "start.pressure", p, atmosphere, test);
                checkStart(requirements, p, atmosphere);
            });
            if (vessel != null) {
                Pressure precharge = vessel.precharge();
                Compared compared = Compared.of(precharge, tank.workingPressure());
                requirements.rule(
                        precharge.gauge(atmosphere) > 0
                                && precharge.gauge(atmosphere)
                                        <= tank.workingPressure().gauge(atmosphere) * (1 + ROUNDING),
                        "vessel.precharge",
                        compared.one()
                                + " must lie above the surrounding air and not above the tank's working pressure of "
                                + compared.other());
            }
            Set<String> names = new HashSet<>();
            for (int i = 0; i < reliefValves.size(); i++) {
                ReliefValve valve = reliefValves.get(i);
                valve.check(requirements, "relief[" + i + "]", atmosphere);
                requirements.rule(
                        names.add(valve.name()),
                        "relief[" + i + "].name",
                        "'" + valve.name() + "' is the name of another relief valve already");
            }
        }

        /** Air that is caught in the piping takes up room there. */
        private void checkTrappedAir(Requirements requirements) {
            double room = piping.stream().mapToDouble(PipeRun::volume).sum();
            if (trappedAir != null) {
                requirements.rule(
                        trappedAir.volume() <= room,
                        "trapped-air",
                        litres(trappedAir.volume()) + " is more than the piping holds, " + litres(room));
            }
        }

        /** A wall that stretches further has torn long before. */
        private void checkShell(Requirements requirements) {
            double stretch = tank.shell().compliance() * tank.workingPressure().gauge(site.atmosphere());
            requirements.rule(
                    stretch <= MAX_STRETCH,
                    "tank.wall",
                    "so thin a wall would let the tank grow by "
                            + Limits.quantity(RatioUnit.PERCENT.fromSi(stretch), RatioUnit.PERCENT)
                            + " at its working pressure of " + tank.workingPressure() + "; at most 75 % is allowed");
        }

        private static String litres(double volume) {
            return Limits.quantity(VolumeUnit.LITRE.fromSi(volume), VolumeUnit.LITRE);
        }

        private void checkPressure(
                Requirements requirements, String field, Pressure value, double atmosphere, double test) {
            requirements.rule(
                    value.gauge(atmosphere) > 0 && value.absolute(atmosphere) < test,
                    field,
                    value + " must lie above the surrounding air and below the tank's test pressure, twice its working"
                            + " pressure of " + tank.workingPressure());
        }

        /** A reducing valve keeps the mains' pressure from the tank. */
        private double mainsLimit(double test) {
            return supply.arrangement() == Supply.Arrangement.REDUCING_VALVE ? Double.POSITIVE_INFINITY : test;
        }

        private void checkStart(Requirements requirements, Pressure begin, double atmosphere) {
            double feed = supply.staticAbsolute(start.timeOfDay(), atmosphere);
            double excess = begin.absolute(atmosphere) - feed;
            Compared both = Compared.of(begin, Pressure.gauge(feed - atmosphere, PressureUnit.PASCAL));
            requirements.rule(
                    excess >= -SAME_PRESSURE,
                    "start.pressure",
                    both.one() + " is below the supply pressure of " + both.other()
                            + ", which would fill the system at once");
            requirements.rule(
                    excess <= SAME_PRESSURE || supply.arrangement() != Supply.Arrangement.DIRECT,
                    "start.pressure",
                    both.one() + " is above the supply pressure of " + both.other()
                            + ", which an open connection to the mains cannot hold");
        }
    }
}
