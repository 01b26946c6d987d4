package io.github.heatswell.scenarios.choice;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The question which vessel to buy for the house of a scenario.
 *
 * <p>The target is the lowest of: the reseat pressure of each relief valve less its margin, the limit of the place, the
 * rating of the vessel, the working pressure of the tank, and a custom limit. The vessel is like that of the house
 * where it has one; otherwise its diaphragm takes 60 % of its volume, which is common practice. Beside the heat-up from
 * a cold fill the first week of the scenario's own run counts.
 */
public final class VesselChoice {

    /** The cost of every trial grows with the run's length, and a week contains every draw of a day. */
    private static final Duration MAX_COUNTED = Duration.ofDays(7);

    /** Common markings of vessels; no source. */
    private static final Pressure METRIC_RATING = Pressure.gauge(10, PressureUnit.BAR);

    private static final Pressure US_RATING = Pressure.gauge(150, PressureUnit.PSI);

    private static final double USUAL_ACCEPTANCE = 60;
    private static final int MAP_VOLUMES = 40;
    /** How much larger than the vessel the house has or needs a map reaches. */
    private static final double SHOWN_ABOVE = 2.5;

    /** A plate and a setting this close are the same: 150 psi are sold as 10 bar. */
    private static final double SAME_PLATE = 1.05;

    /** The warmest gas (K) that can be described as charged. */
    private static final double WARMEST_CHARGED = TemperatureUnit.CELSIUS.toSi(60);

    /** Volumes this close (-) are the same size in different units or digits. */
    private static final double SAME_SIZE = 1e-3;

    private static final double MARGIN_BELOW = 0.8;
    private static final long MAX_SAMPLES = 20_000;

    private final Scenario scenario;
    private final VesselSizing.Precharge rule;
    private final Pressure rating;
    private final Pressure limit;
    private final boolean codeCap;
    private final Optional<NominalSize> against;
    private final boolean bought;
    private final Optional<Pressure> charged;
    private final boolean mayLower;

    private VesselChoice(Builder builder) {
        scenario = builder.scenario;
        rule = builder.rule;
        rating = builder.rating;
        limit = builder.limit;
        codeCap = builder.codeCap;
        against = builder.against;
        bought = builder.bought;
        charged = builder.charged;
        mayLower = builder.mayLower;
    }

    /**
     * Starts the question.
     *
     * @param scenario the house, its run, and what vessels cost
     * @return a builder with the static pressure as precharge, the rating of the vessel it has, or else 10 bar or 150 psi by the units of the
     *     scenario, and the limit of the place
     */
    public static Builder of(Scenario scenario) {
        return new Builder(scenario);
    }

    /**
     * Simulates until the answer is known.
     *
     * @return which vessel, the formulas beside it, and the run before and after
     * @throws IllegalArgumentException if no vessel is an answer to what is described, such as a thermostat that is stuck
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public VesselAnswer answer() {
        HotWaterSystem house = scenario.system();
        VesselSizing sizing = sizing();
        SizingResult found = sizing.size();
        Optional<SizeCertainty> certainty = certainty(sizing, found);
        Balances.Count more = new Balances.Count();
        LowerSupplies lower = new LowerSupplies(scenario, found, this::forColdFill, !bought, more);
        SupplyTable supplies = mayLower ? lower.table(certainty) : SupplyTable.NONE;
        Alternatives alternatives = new Alternatives(scenario, found, more);
        List<DischargingValve> valves = mayLower
                ? Stream.of(alternatives.coldRelief(), alternatives.safetyGroup())
                        .flatMap(Optional::stream)
                        .toList()
                : List.of();
        SizeAdvice advice = new SizeAdvice(found, house, certainty, supplies.cheapest(), scenario.doubts());
        return new VesselAnswer(
                scenario,
                found,
                counted(),
                new Formulas(house, sizing, found).all(),
                run(house),
                proposed(advice, sizing)
                        .map(vessel -> run(house.toBuilder().fitVessel(vessel).build())),
                certainty,
                supplies,
                valves,
                yardstick(),
                against.map(size -> against(size, sizing, found, more)),
                advice.recommended().isPresent()
                        ? Optional.empty()
                        : supplies.cheapest().flatMap(way -> at(way, lower)),
                more.sum());
    }

    /**
     * Simulates until it is known which vessel to take at the supply as it is, and how sure that is: the same as {@link #answer} says,
     * without anything else that may be done.
     *
     * @return the advice
     * @throws IllegalArgumentException if no vessel is an answer to what is described, such as a thermostat that is stuck
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public SizeAdvice advice() {
        VesselSizing sizing = sizing();
        SizingResult found = sizing.size();
        return new SizeAdvice(found, scenario.system(), certainty(sizing, found), Optional.empty(), scenario.doubts());
    }

    private Duration counted() {
        return scenario.duration().compareTo(MAX_COUNTED) > 0 ? MAX_COUNTED : scenario.duration();
    }

    private VesselSizing sizing() {
        return VesselSizing.builder(scenario.system(), target())
                .precharge(rule)
                .vesselLike(pattern())
                .alsoRun(counted())
                .sizes(sizes())
                .build();
    }

    /** Those on sale, and the present vessel's where it may be kept: whether it is enough is tried, not told from its neighbours. */
    private List<NominalSize> sizes() {
        List<NominalSize> onSale = scenario.costs().vessels();
        return SizeAdvice.fit(scenario.system(), target(), scenario.doubts())
                .map(present -> NominalSize.of(present.volume(), VolumeUnit.CUBIC_METRE))
                .filter(own -> !bought
                        && onSale.stream().noneMatch(size -> Math.abs(size.volume() / own.volume() - 1) < SAME_SIZE))
                .map(own -> Stream.concat(onSale.stream(), Stream.of(own))
                        .sorted(Comparator.comparingDouble(NominalSize::volume))
                        .toList())
                .orElse(onSale);
    }

    /** The answer at the lower supply that is advised; empty if the whole run asks for another vessel there than the cold fill. */
    private Optional<VesselAnswer> at(SizeAdvice.LowerSupply way, LowerSupplies lower) {
        Builder same = new Builder(lower.at(way.supply().valve()));
        same.rule = rule;
        same.rating = rating;
        same.limit = limit;
        same.codeCap = codeCap;
        same.against = against;
        same.bought = bought;
        same.charged = charged;
        same.mayLower = false;
        return Optional.of(same.build().answer())
                .filter(answer -> answer.recommended()
                        .filter(wanted -> wanted.volume() <= way.volume() * (1 + 1e-9))
                        .isPresent());
    }

    private VesselAnswer.Against against(
            NominalSize size, VesselSizing sizing, SizingResult found, Balances.Count count) {
        SampledHouses houses = houses(sizing, found, count);
        SizingResult.Vessel vessel = sizing.tried(size, count);
        return new VesselAnswer.Against(
                vessel,
                bought
                        ? Optional.of(run(scenario.system().toBuilder()
                                .fitVessel(rated(sizing.vessel(vessel.volume())))
                                .build()))
                        : Optional.empty(),
                houses.isPossible() ? Optional.of(houses.tried(size.volume())) : Optional.empty(),
                charged);
    }

    /** The vessel with what was read on its plate, so that it is judged by it. */
    private ExpansionVessel rated(ExpansionVessel vessel) {
        return rating == null ? vessel : vessel.toBuilder().rating(rating).build();
    }

    private SampledHouses houses(VesselSizing sizing, SizingResult found, Balances.Count count) {
        return new SampledHouses(
                scenario,
                found.target().gauge(),
                volume -> house -> LowerSupplies.fitted(house, volume, sizing),
                count);
    }

    /** The vessel to buy, or the present one at work and with its charge put right; empty if there is nothing to change. */
    private static Optional<ExpansionVessel> proposed(SizeAdvice advice, VesselSizing sizing) {
        if (advice.kept().isEmpty()) {
            return advice.recommended().map(sizing::vessel);
        }
        return advice.kept()
                .filter(present -> !advice.isCharged() || !advice.isAtWork())
                .map(present -> advice.isCharged()
                        ? present.toBuilder()
                                .condition(ExpansionVessel.Condition.SOUND)
                                .build()
                        : sizing.vessel(present.volume()));
    }

    /** How sure the answer is; empty if there is no vessel on sale to be sure of. */
    private Optional<SizeCertainty> certainty(VesselSizing sizing, SizingResult found) {
        SampledHouses houses = houses(sizing, found, new Balances.Count());
        List<Double> sizes = new ArrayList<>(found.nominal().stream()
                .map(SizingResult.Vessel::volume)
                .sorted()
                .toList());
        if (found.outcome() == SizingResult.Outcome.NONE_NEEDED) {
            sizes.add(0, 0.0);
        }
        int bare = found.outcome() == SizingResult.Outcome.NONE_NEEDED
                ? 0
                : found.smallestOnSale()
                        .map(size -> sizes.indexOf(size.volume()))
                        .orElse(-1);
        return bare < 0 || !houses.isPossible() ? Optional.empty() : Optional.of(houses.certainty(sizes, bare));
    }

    /**
     * Sizes for the heat-up from a cold fill alone, which takes a fraction of the time.
     *
     * @return the smallest vessel, and what those on sale would do
     * @throws IllegalArgumentException if no vessel is an answer to what is described, such as a thermostat that is stuck
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public SizingResult forColdFill() {
        return forColdFill(scenario).size();
    }

    /** The same question about the house with something about its supply changed; the target is that of the house as it is. */
    private VesselSizing forColdFill(Scenario changed) {
        return VesselSizing.builder(changed.system(), target())
                .precharge(rule)
                .vesselLike(pattern())
                .sizes(sizes())
                .build();
    }

    /**
     * The volumes that a map should show: from the largest size on sale with which the relief valve drips whatever the precharge, or
     * the smallest of all, to a few times what the house has or needs, as far as there are sizes.
     *
     * @param count counts the runs
     * @return volumes in equal ratios (m3), rising; empty where no vessel is an answer
     */
    public Optional<double[]> mapVolumes(Balances.Count count) {
        SizingResult cold = forColdFill();
        count.add(cold.balances());
        if (cold.outcome() != SizingResult.Outcome.SIZED) {
            return Optional.empty();
        }
        double air = scenario.system().site().atmosphere();
        double relief = Limit.reliefSetGauge(scenario.system()).orElse(Double.POSITIVE_INFINITY);
        List<SizingResult.Vessel> sizes = cold.nominal().stream()
                .sorted(Comparator.comparingDouble(SizingResult.Vessel::volume))
                .toList();
        double present = scenario.system().vessel().map(ExpansionVessel::volume).orElse(0.0);
        double largest = sizes.get(sizes.size() - 1).volume();
        double wanted = SHOWN_ABOVE
                * Math.max(
                        present,
                        cold.smallestOnSale().map(SizingResult.Vessel::volume).orElse(largest));
        double from = sizes.stream()
                .filter(size -> size.peakAbsolute() - air >= relief)
                .mapToDouble(SizingResult.Vessel::volume)
                .max()
                .orElse(sizes.get(0).volume());
        double to = sizes.stream()
                .mapToDouble(SizingResult.Vessel::volume)
                .filter(volume -> volume >= wanted)
                .findFirst()
                .orElse(largest);
        double low = present > 0 ? Math.min(from, MARGIN_BELOW * present) : from;
        double high = Math.max(to, present / MARGIN_BELOW);
        return high > low
                ? Optional.of(IntStream.range(0, MAP_VOLUMES)
                        .mapToDouble(i -> low * Math.pow(high / low, i / (MAP_VOLUMES - 1.0)))
                        .toArray())
                : Optional.empty();
    }

    /**
     * By what the house is judged, whoever asks.
     *
     * @return the limit, and the worst heat-up with the vessel as it is; empty where there is no such heat-up, as in an open house,
     *     with a stuck thermostat, or where what leaks in past a reducing valve raises the pressure further
     */
    public Optional<Yardstick> yardstick() {
        return yardstick(false);
    }

    /**
     * The same with the precharge from which on the only vessel keeps the limit, which takes a dozen more heat-ups.
     *
     * @return the limit, the worst heat-up, and the lowest precharge that keeps it within the limit
     */
    public Optional<Yardstick> yardstickWithPrecharge() {
        return yardstick(true);
    }

    private Optional<Yardstick> yardstick(boolean withPrecharge) {
        HotWaterSystem house = scenario.system();
        if (house.supply().arrangement() == Supply.Arrangement.DIRECT
                || house.heater().thermostatStuck()
                || Findings.creeps(house)) {
            return Optional.empty();
        }
        try {
            Balances.Count count = new Balances.Count();
            double worst = VesselSizing.worstPeak(house, count);
            double limit = target().gauge();
            OptionalDouble least = withPrecharge && !house.hasSeveralVessels()
                    ? PrechargeTarget.of(house)
                            .filter(charge ->
                                    house.vessel().orElseThrow().condition() == ExpansionVessel.Condition.SOUND)
                            .map(charge -> VesselSizing.leastPrecharge(house, limit, charge.pumpToGauge(), count))
                            .orElse(OptionalDouble.empty())
                    : OptionalDouble.empty();
            return Optional.of(new Yardstick(house, limit, worst, least, count.sum()));
        } catch (IllegalArgumentException | SimulationException e) {
            return Optional.empty();
        }
    }

    /**
     * What the peak must stay below.
     *
     * @return the target with all its bounds
     * @throws IllegalArgumentException if a bound is outside its range
     */
    public SizingTarget target() {
        SizingTarget.Builder target = SizingTarget.builder(scenario.system());
        if (rating == null) {
            target.assumedVesselRating(scenario.units().isMetric() ? METRIC_RATING : US_RATING);
        } else {
            target.vesselRating(rating);
        }
        if (!codeCap) {
            target.withoutCodeCap();
        }
        if (limit != null) {
            target.own(limit);
        }
        return target.build();
    }

    /**
     * The vessel to go by. Its charge is read, as that of every vessel to be charged, where it stands and as warm as it is there.
     *
     * @return that of the house, or one like common vessels; its volume and precharge mean nothing
     */
    public ExpansionVessel pattern() {
        return scenario.system()
                .vessel()
                .map(this::chargedInPlace)
                .orElseGet(() -> ExpansionVessel.builder()
                        .volume(12, VolumeUnit.LITRE)
                        .precharge(Pressure.gauge(1, PressureUnit.BAR))
                        .acceptance(USUAL_ACCEPTANCE, RatioUnit.PERCENT)
                        .build());
    }

    private ExpansionVessel chargedInPlace(ExpansionVessel vessel) {
        if (vessel.chargedAt().isEmpty() && vessel.temperature().isEmpty() && !vessel.isInTank()) {
            return vessel;
        }
        double stands = scenario.system().gasAtRest(vessel);
        return vessel.toBuilder()
                .chargedAt(Math.min(stands, WARMEST_CHARGED), TemperatureUnit.KELVIN)
                .build();
    }

    private RunResult run(HotWaterSystem house) {
        Duration coarsest = scenario.duration().dividedBy(MAX_SAMPLES).plusSeconds(1);
        Duration sample = scenario.sample().compareTo(coarsest) < 0 ? coarsest : scenario.sample();
        return Simulation.of(house, scenario.duration()).sampledEvery(sample).run();
    }

    /** Builds a {@link VesselChoice}. */
    public static final class Builder {
        private final Scenario scenario;
        private VesselSizing.Precharge rule = VesselSizing.Precharge.STATIC;
        private Pressure rating;
        private Pressure limit;
        private boolean codeCap = true;
        private Optional<NominalSize> against = Optional.empty();
        private boolean bought;
        private Optional<Pressure> charged = Optional.empty();
        private boolean mayLower = true;

        private Builder(Scenario scenario) {
            this.scenario = Objects.requireNonNull(scenario, "scenario");
            HotWaterSystem house = scenario.system();
            double air = house.site().atmosphere();
            // of several vessels the one that bears least, as it stands where the first one sits; a single one that
            // bears less than the relief valve lets through has to be replaced, and bounds nothing
            double first = house.vessel().map(ExpansionVessel::height).orElse(0.0);
            double opens = house.hasSeveralVessels()
                    ? 0
                    : Limit.lastRelief(house)
                            .map(valve -> valve.setPressure().gauge(air))
                            .orElse(0.0);
            rating = house.vessels().stream()
                    .flatMap(vessel -> vessel.body().rating().stream()
                            .map(plate -> plate.gauge(air) + house.head(vessel.height()) - house.head(first)))
                    .min(Comparator.naturalOrder())
                    .filter(least -> least * SAME_PLATE >= opens)
                    .map(least -> Pressure.gauge(least, PressureUnit.PASCAL))
                    .orElse(null);
        }

        /**
         * Sets how the precharge follows from the supply pressure.
         *
         * @param value the rule
         * @return this builder
         */
        public Builder precharge(VesselSizing.Precharge value) {
            rule = Objects.requireNonNull(value, "precharge");
            return this;
        }

        /**
         * Sets the pressure rating of the vessel.
         *
         * @param value the pressure, 1 Pa to 25 bar (gauge)
         * @return this builder
         */
        public Builder rating(Pressure value) {
            rating = Objects.requireNonNull(value, "rating");
            return this;
        }

        /**
         * Sets a custom limit, which governs if it is the lowest.
         *
         * @param value the pressure the peak must stay below, 1 Pa to 25 bar (gauge), or empty for none
         * @return this builder
         */
        public Builder limit(Optional<Pressure> value) {
            limit = value.orElse(null);
            return this;
        }

        /**
         * Leaves the limit of the place out.
         *
         * @return this builder
         */
        public Builder withoutCodeCap() {
            codeCap = false;
            return this;
        }

        /**
         * Sets a size that somebody else asks for, to be compared with the answer.
         *
         * @param value the size
         * @return this builder
         */
        public Builder against(NominalSize value) {
            against = Optional.of(value);
            return this;
        }

        /**
         * Sets a size that was bought: it is compared with the answer, and the papers for the work are about it.
         *
         * @param value the size
         * @return this builder
         */
        public Builder bought(NominalSize value) {
            bought = true;
            return against(value);
        }

        /**
         * Sets what the vessel that was bought was found charged to; the papers say what to bring it to.
         *
         * @param value the pressure that a tyre gauge showed with no water in the vessel
         * @return this builder
         */
        public Builder charged(Pressure value) {
            charged = Optional.of(value);
            return this;
        }

        /**
         * Builds the question.
         *
         * @return the question, ready to be answered
         */
        public VesselChoice build() {
            return new VesselChoice(this);
        }
    }
}
