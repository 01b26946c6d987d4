package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;

/**
 * Finds the smallest expansion vessel, and the precharge that goes with it, by simulation.
 *
 * <p>The criterion is the peak of the worst heat-up: the tank full of cold water, on the day of the year when the
 * supply is densest and with the mains at its highest of the day, heated to the set point with every tap closed. If
 * asked for, the run as given counts too, with its draws and layers; the higher peak decides. In both the relief valves
 * are removed, so that none hides a peak, and the vessel is intact. Leaks and trapped air count only in the run as
 * given.
 *
 * <p>The peak falls as the vessel grows, so the smallest volume between 0.1 L and 5 m3 is found by bracketing, to a
 * relative accuracy of 1e-8, on the side where the target is met. Immutable; may be asked by any number of threads.
 */
public final class VesselSizing {

    /** A zero precharge cannot be described; this one (Pa, gauge) is as good as none. */
    private static final double HARDLY_ANY = 1000;
    /** How closely (Pa) a precharge is found. */
    private static final double CLOSE = 100;

    private final SizingProblem setup;
    private final SizingTarget target;
    private final List<NominalSize> sizes;

    private VesselSizing(SizingProblem setup, SizingTarget target, List<NominalSize> sizes) {
        this.setup = setup;
        this.target = target;
        this.sizes = List.copyOf(sizes);
    }

    /**
     * Starts a sizing; the precharge rule must be set, and a vessel type unless the house has a vessel.
     *
     * @param system the house; where it has several vessels, one more beside them is sized
     * @param target what the peak must stay below
     * @return a builder with the sizes of {@link NominalSize#common} in litres
     */
    public static Builder builder(HotWaterSystem system, SizingTarget target) {
        return new Builder(system, target);
    }

    SizingProblem setup() {
        return setup;
    }

    /**
     * Simulates until the answer is known.
     *
     * @return the smallest vessel and what the sizes on sale would do, or why no vessel can
     * @throws IllegalArgumentException if a run ends in a hazard other than too much pressure, or if the precharge by the
     *     rule is not above the surrounding air and within the tank's working pressure
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public SizingResult size() {
        VesselSearch search = new VesselSearch();
        OptionalDouble found = search.smallest(setup);
        if (found.isEmpty()) {
            return noVesselCan(search);
        }
        double volume = found.getAsDouble();
        List<SizingResult.Vessel> nominal =
                sizes.stream().map(size -> search.tried(setup, size)).toList();
        Optional<SizingResult.Vessel> smallest = volume == 0
                ? Optional.empty()
                : Optional.of(search.tried(setup, new NominalSize(volume, Optional.empty())));
        boolean onSale = volume == 0 || nominal.stream().anyMatch(SizingResult.Vessel::suffices);
        return new SizingResult(
                volume == 0 ? SizingResult.Outcome.NONE_NEEDED : SizingResult.Outcome.SIZED,
                target,
                supplyStatic(),
                smallest,
                nominal,
                onSale ? Optional.empty() : lowerSupply(search),
                largest(),
                search.balances());
    }

    /**
     * A vessel of the answer as it can be put into a house: like the pattern, sound, with this volume and precharge.
     *
     * @param sized a vessel of the answer
     * @return its description
     */
    public ExpansionVessel vessel(SizingResult.Vessel sized) {
        Objects.requireNonNull(sized, "sized");
        return setup.type().with(sized.volume(), sized.precharge());
    }

    /**
     * A vessel of any volume as it can be put into a house: like the pattern, sound, with the precharge of the answer.
     *
     * @param volume its volume (m3), 0.1 L to 5 m3
     * @return its description
     */
    public ExpansionVessel vessel(double volume) {
        return setup.type().with(volume, setup.precharge());
    }

    /**
     * The peak of the worst heat-up of a house with the vessels it has or without one, its relief valves taken out: the tank full
     * of cold water, heated with every tap closed.
     *
     * @param house the house
     * @param count counts the run
     * @return the peak at the height of the drain cock (Pa, gauge); where the test pressure of the tank is reached, that
     * @throws IllegalArgumentException if the run ends in a hazard other than too much pressure
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public static double worstPeak(HotWaterSystem house, Balances.Count count) {
        HeatUpCase trial = HeatUpCase.coldFill(Objects.requireNonNull(house, "house"));
        Optional<ExpansionVessel> only = house.hasSeveralVessels() ? Optional.empty() : house.vessel();
        return trial.peak(only, count).absolute() - house.site().atmosphere();
    }

    /**
     * The lowest precharge at which the only vessel of a house keeps the worst heat-up within a limit, with its other numbers as
     * described; to 100 Pa, on the side where the limit is kept.
     *
     * @param house the house, with one vessel that works
     * @param limitGauge what the peak must not exceed (Pa, gauge)
     * @param highest the precharge that matches the supply (Pa, gauge), above which the peak rises again
     * @param count counts the runs
     * @return the precharge (Pa, gauge), 0 if hardly any will do; empty if even the highest does not keep the limit
     * @throws IllegalArgumentException if a run ends in a hazard other than too much pressure
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public static OptionalDouble leastPrecharge(
            HotWaterSystem house, double limitGauge, double highest, Balances.Count count) {
        DoublePredicate keeps = gauge -> worstPeak(
                        house.toBuilder()
                                .changeVessel(
                                        0,
                                        one -> one.toBuilder()
                                                .precharge(Pressure.gauge(gauge, PressureUnit.PASCAL))
                                                .build())
                                .build(),
                        count)
                <= limitGauge;
        if (!(highest > HARDLY_ANY) || !keeps.test(highest)) {
            return OptionalDouble.empty();
        }
        if (keeps.test(HARDLY_ANY)) {
            return OptionalDouble.of(0);
        }
        double low = HARDLY_ANY;
        double high = highest;
        while (high - low > CLOSE) {
            double middle = (low + high) / 2;
            if (keeps.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalDouble.of(high);
    }

    /**
     * What one size would do, whether it is on sale or not.
     *
     * @param size the size
     * @param count counts the runs
     * @return the vessel with its peak and its room below the limit
     * @throws IllegalArgumentException if a run ends in a hazard other than too much pressure
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public SizingResult.Vessel tried(NominalSize size, Balances.Count count) {
        VesselSearch search = new VesselSearch();
        SizingResult.Vessel tried = search.tried(setup, Objects.requireNonNull(size, "size"));
        count.add(search.balances());
        return tried;
    }

    private Optional<Pressure> lowerSupply(VesselSearch search) {
        double now = setup.staticAbsolute() - setup.atmosphere();
        OptionalDouble found = search.highestSupply(setup, largest());
        return found.isPresent() && found.getAsDouble() < now
                ? Optional.of(Pressure.gauge(found.getAsDouble(), PressureUnit.PASCAL))
                : Optional.empty();
    }

    private SizingResult noVesselCan(VesselSearch search) {
        return new SizingResult(
                SizingResult.Outcome.NO_VESSEL_CAN,
                target,
                supplyStatic(),
                Optional.empty(),
                List.of(),
                lowerSupply(search),
                largest(),
                search.balances());
    }

    private double largest() {
        return sizes.stream().mapToDouble(NominalSize::volume).max().orElseThrow();
    }

    private Pressure supplyStatic() {
        return Pressure.gauge(setup.staticAbsolute() - setup.atmosphere(), PressureUnit.PASCAL);
    }

    /**
     * Rule for the precharge, from the static supply pressure at the height of the vessel.
     */
    public enum Precharge {
        /** The static pressure itself: the rule of the trade in the United States; from memory. */
        STATIC(0),
        /**
         * The static pressure minus 0.2 bar, so that the vessel holds a little water at the cold fill: DIN 4807-5 as quoted
         * by a trade page, second-hand.
         */
        STATIC_LESS_FIFTH_BAR(0.2e5);

        /** Precharge below the static pressure (Pa, difference). */
        private final double below;

        Precharge(double below) {
            this.below = below;
        }

        /**
         * The precharge for a static pressure.
         *
         * @param staticPressure the static pressure of the supply at the height of the vessel
         * @return the precharge, against the same reference
         */
        public Pressure at(Pressure staticPressure) {
            Objects.requireNonNull(staticPressure, "static pressure");
            return new Pressure(staticPressure.value() - below, staticPressure.reference());
        }

        /** The precharge (Pa, gauge) for a static pressure (Pa, gauge). */
        Pressure atGauge(double staticGauge) {
            return at(Pressure.gauge(staticGauge, PressureUnit.PASCAL));
        }
    }

    /** Builds a {@link VesselSizing}. */
    public static final class Builder {
        private final HotWaterSystem system;
        private final SizingTarget target;
        private Precharge rule;
        private ExpansionVessel pattern;
        private Duration run;
        private List<NominalSize> sizes = NominalSize.common(UnitSystem.SI);

        private Builder(HotWaterSystem system, SizingTarget target) {
            this.system = Objects.requireNonNull(system, "system");
            this.target = Objects.requireNonNull(target, "target");
            pattern = system.vessel().orElse(null);
        }

        /**
         * Sets how the precharge follows from the supply pressure.
         *
         * @param value the rule
         * @return this builder
         */
        public Builder precharge(Precharge value) {
            rule = Objects.requireNonNull(value, "precharge");
            return this;
        }

        /**
         * Sets the vessel type: acceptance limit, height and gas are taken from this vessel; volume, precharge and
         * faults are not. By default, the vessel of the house is used.
         *
         * @param value the pattern
         * @return this builder
         */
        public Builder vesselLike(ExpansionVessel value) {
            pattern = Objects.requireNonNull(value, "vessel");
            return this;
        }

        /**
         * Lets the run as given count too, with its draws, layers, mains and seasons.
         *
         * @param duration how long it is, above 0 to 100 years
         * @return this builder
         * @throws IllegalArgumentException if the duration is not above 0
         */
        public Builder alsoRun(Duration duration) {
            if (Objects.requireNonNull(duration, "duration").isZero() || duration.isNegative()) {
                throw new IllegalArgumentException("duration: " + duration + " must be above 0");
            }
            run = duration;
            return this;
        }

        /**
         * Sets the sizes on sale.
         *
         * @param value at least one size, in the order wanted; all prices in one currency
         * @return this builder
         * @throws IllegalArgumentException if there is no size or more than one currency
         */
        public Builder sizes(List<NominalSize> value) {
            if (Objects.requireNonNull(value, "sizes").isEmpty()) {
                throw new IllegalArgumentException("sizes: there must be at least one");
            }
            Set<String> currencies = value.stream()
                    .flatMap(size -> size.price().stream())
                    .map(NominalSize.Price::currency)
                    .collect(Collectors.toSet());
            if (currencies.size() > 1) {
                throw new IllegalArgumentException("sizes: the prices are in different currencies");
            }
            sizes = List.copyOf(value);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the sizing
         * @throws IllegalArgumentException if something is missing, or the thermostat is stuck: then there is no set
         *     point to heat to, and no vessel helps
         */
        public VesselSizing build() {
            if (rule == null) {
                throw new IllegalArgumentException(
                        "precharge: is missing; give the rule it is set by, such as Precharge.STATIC");
            }
            if (pattern == null) {
                throw new IllegalArgumentException(
                        "vessel: is missing; give vesselLike(...), a vessel of the type to look for");
            }
            if (system.heater().thermostatStuck()) {
                throw new IllegalArgumentException(
                        "thermostat: is stuck; repair it, since no vessel helps against" + " that");
            }
            List<HeatUpCase> trials = new ArrayList<>(List.of(HeatUpCase.coldFill(system)));
            if (run != null) {
                trials.add(HeatUpCase.asGiven(system, run));
            }
            SizingProblem setup =
                    new SizingProblem(List.copyOf(trials), new VesselType(pattern), rule, target.absolute());
            return new VesselSizing(setup, target, sizes);
        }
    }
}
