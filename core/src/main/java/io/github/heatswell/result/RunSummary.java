package io.github.heatswell.result;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Everything a run found except its course, sample by sample. Immutable.
 *
 * @param system what was simulated
 * @param end the time (s) the run covers, 0 or more, shorter than requested if a hazard ended it
 * @param events what happened, in the order of time
 * @param extremes the largest and smallest values, from the continuous solution
 * @param totals what crossed the boundary
 * @param audit the check of mass and energy
 * @param numerics how the run was integrated
 * @param initially what was already under way when the run started, and so has no starting event, with its devices as in
 *     {@link Event#device()}
 */
public record RunSummary(
        HotWaterSystem system,
        double end,
        List<Event> events,
        Extremes extremes,
        Totals totals,
        Audit audit,
        Numerics numerics,
        Map<Interval.Phase, Set<String>> initially) {

    /** A valve that the supply feeds for less than this (s) has not run on it. */
    private static final double MIN_FED = 60;

    /**
     * Checks that everything is there and copies the events.
     *
     * @param system what was simulated
     * @param end the time (s) the run covers, 0 or more, shorter than requested if a hazard ended it
     * @param events what happened, in the order of time
     * @param extremes the largest and smallest values, from the continuous solution
     * @param totals what crossed the boundary
     * @param audit the check of mass and energy
     * @param numerics how the run was integrated
     * @param initially what was already under way when the run started, and so has no starting event, with its devices as in
     *     {@link Event#device()}
     * @throws IllegalArgumentException if the end is negative, NaN or infinite
     */
    public RunSummary {
        if (!(end >= 0 && end < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("end: " + end + " s is outside the allowed range, 0 or more");
        }
        Objects.requireNonNull(system, "system");
        Objects.requireNonNull(extremes, "extremes");
        Objects.requireNonNull(totals, "totals");
        Objects.requireNonNull(audit, "audit");
        Objects.requireNonNull(numerics, "numerics");
        initially = Map.copyOf(Objects.requireNonNull(initially, "initially"));
        events = List.copyOf(Objects.requireNonNull(events, "events"));
    }

    /**
     * The hazard at which the run ended before its time.
     *
     * @return the last event if the model ended there, else empty
     */
    public Optional<Event> hazard() {
        return events.stream().filter(event -> event.kind().endsRun()).findFirst();
    }

    /**
     * Whether the heater heats at any time.
     *
     * @return false if no burner or element ever switches on
     */
    public boolean heats() {
        return totals.heaterInput() > 0 || first(Event.Kind.HEATER_ON).isPresent();
    }

    /**
     * Whether the run ends in the middle of its first heat-up: what it discharged is then part of what a heat-up does.
     *
     * @return true if a burner or element switched on, none ever switched off, and no hazard ended the run
     */
    public boolean isUnfinished() {
        return first(Event.Kind.HEATER_ON).isPresent()
                && first(Event.Kind.HEATER_OFF).isEmpty()
                && hazard().isEmpty();
    }

    /**
     * The first event of a kind.
     *
     * @param kind what to look for
     * @return the event, or empty if it never happened
     */
    public Optional<Event> first(Event.Kind kind) {
        Objects.requireNonNull(kind, "kind");
        return events.stream().filter(event -> event.kind() == kind).findFirst();
    }

    /**
     * How often something happened.
     *
     * @param kind what to look for
     * @return the number of its events, 0 or more
     */
    public long count(Event.Kind kind) {
        Objects.requireNonNull(kind, "kind");
        return events.stream().filter(event -> event.kind() == kind).count();
    }

    /**
     * When and why a relief valve opened, as {@link Totals.Relief#openings()} counts it: each time it left its seat.
     *
     * @param valve its name
     * @return the {@link Event.Kind#RELIEF_OPENED} of this valve, in the order of time
     * @throws IllegalArgumentException if the system has no valve of this name
     */
    public Stream<Event> openings(String valve) {
        return eventsOf(valve).filter(event -> event.kind() == Event.Kind.RELIEF_OPENED);
    }

    /**
     * When hot water opened a relief valve, from its seat or fully after pressure had lifted it. The latter does not
     * count as another opening.
     *
     * @param valve its name
     * @return the events of this valve of which {@link Event#openedByTemperature()} holds, in the order of time
     * @throws IllegalArgumentException if the system has no valve of this name
     */
    public Stream<Event> openedByTemperature(String valve) {
        return eventsOf(valve).filter(Event::openedByTemperature);
    }

    private Stream<Event> eventsOf(String device) {
        List<String> known =
                system.reliefValves().stream().map(ReliefValve::name).toList();
        if (!known.contains(Objects.requireNonNull(device, "valve"))) {
            throw new IllegalArgumentException("valve: '" + device + "' is no relief valve of this system, which has "
                    + (known.isEmpty() ? "none" : "'" + String.join("', '", known) + "'"));
        }
        return events.stream().filter(event -> event.device().equals(device));
    }

    /**
     * When something lasted, device by device. What was under way at the start begins at 0; what was not over
     * by the end of the run ends there.
     *
     * @param phase what lasted, such as an open relief valve
     * @return the intervals in the order of their beginnings, possibly none
     */
    public List<Interval> intervals(Interval.Phase phase) {
        Objects.requireNonNull(phase, "phase");
        List<Interval> intervals = new ArrayList<>();
        Map<String, Double> running = new LinkedHashMap<>();
        initially.getOrDefault(phase, Set.of()).forEach(device -> running.put(device, 0.0));
        for (Event event : events) {
            if (event.kind() == phase.begins()) {
                running.putIfAbsent(event.device(), event.time());
            } else if (phase.endsWith(event.kind()) && running.containsKey(event.device())) {
                intervals.add(new Interval(running.remove(event.device()), event.time(), event.device()));
            }
        }
        running.forEach((device, since) -> intervals.add(new Interval(since, end, device)));
        intervals.sort(Comparator.comparingDouble(Interval::from));
        return List.copyOf(intervals);
    }

    /**
     * When something lasted with any device; overlapping or touching intervals are merged.
     *
     * @param phase what lasted
     * @return the intervals in the order of time, apart from each other, without a device
     */
    public List<Interval> joined(Interval.Phase phase) {
        return Interval.joined(intervals(phase));
    }

    /**
     * When a relief valve ran on water from the supply: not the growth of heated water kept it open, but a supply above the
     * pressure at which it closes. An opening that hot water held counts as none, even while the supply fed it.
     *
     * @return the openings that the supply fed for a minute or more, each of one valve, in the order of time
     */
    public List<Interval> fedRelief() {
        // a year has thousands of both, few of them long enough
        List<Interval> feeding = intervals(Interval.Phase.SUPPLY_FEEDING).stream()
                .filter(feed -> feed.length() >= MIN_FED)
                .toList();
        List<Event> hot = events.stream().filter(Event::openedByTemperature).toList();
        return intervals(Interval.Phase.RELIEF_OPEN).stream()
                .filter(open -> open.length() >= MIN_FED)
                .filter(open -> feeding.stream().anyMatch(feed -> open.overlap(feed) >= MIN_FED))
                .filter(open -> hot.stream()
                        .noneMatch(event -> event.device().equals(open.device()) && open.contains(event.time())))
                .toList();
    }

    /**
     * Whether the supply alone opened a relief valve, rather than only holding open one that heating had opened.
     *
     * @return true if one of {@link #fedRelief()} began while the supply was feeding
     */
    public boolean supplyOpenedRelief() {
        List<Interval> feeding = intervals(Interval.Phase.SUPPLY_FEEDING);
        return fedRelief().stream().anyMatch(open -> feeding.stream().anyMatch(feed -> feed.contains(open.from())));
    }

    /**
     * The highest pressure of the run at the tank's drain cock, from between the samples too.
     *
     * @return the pressure, against the air at the site
     */
    public Pressure peak() {
        return Pressure.gauge(gauge(extremes.highestPressure().value()), PressureUnit.PASCAL);
    }

    /**
     * When the pressure was first at its {@link #peak()}.
     *
     * @return the time since the start of the run (s)
     */
    public double peakTime() {
        return extremes.highestPressure().time();
    }

    /**
     * Converts an absolute pressure of this run to gauge pressure at the same height: a pressure at the tank's drain
     * cock becomes the reading of a gauge there. The owner's gauge, at {@link HotWaterSystem#gaugeHeight() its height},
     * is the channel {@link Channel#GAUGE_READING}.
     *
     * @param absolute the pressure (Pa, absolute)
     * @return the pressure (Pa, gauge)
     */
    public double gauge(double absolute) {
        return absolute - system.site().atmosphere();
    }

    /**
     * How a run was integrated.
     *
     * @param method the integration method
     * @param relativeTolerance the relative tolerance of a step (-)
     * @param evaluations how often the equations were evaluated
     * @param steps how many steps were taken
     * @param segments how many times the integration was started, once for each regime or change of mode
     */
    public record Numerics(String method, double relativeTolerance, long evaluations, long steps, int segments) {

        /**
         * Checks that the method is there.
         *
         * @param method the integration method
         * @param relativeTolerance the relative tolerance of a step (-)
         * @param evaluations how often the equations were evaluated
         * @param steps how many steps were taken
         * @param segments how many times the integration was started, once for each regime or change of mode
         */
        public Numerics {
            Objects.requireNonNull(method, "method");
        }
    }

    /**
     * The largest and smallest values of a run, taken from the continuous solution between the samples. Pressures are those
     * at the tank's drain cock; a device higher up sees less ({@link io.github.heatswell.system.HotWaterSystem#head}).
     *
     * @param highestPressure the highest pressure at the tank's drain cock (Pa, absolute)
     * @param lowestPressure the lowest pressure at the tank's drain cock (Pa, absolute)
     * @param highestTemperature the highest temperature of the hottest water (K)
     * @param mostVesselWater the most water the vessels held together (m3); 0 without a vessel
     */
    public record Extremes(
            Extreme highestPressure, Extreme lowestPressure, Extreme highestTemperature, Extreme mostVesselWater) {

        /** A pressure that moves less than this (Pa) is steady: our own judgement. */
        private static final double STEADY = 5_000;

        /**
         * Checks that everything is there.
         *
         * @param highestPressure the highest pressure at the tank's drain cock (Pa, absolute)
         * @param lowestPressure the lowest pressure at the tank's drain cock (Pa, absolute)
         * @param highestTemperature the highest temperature of the hottest water (K)
         * @param mostVesselWater the most water the vessels held together (m3); 0 without a vessel
         */
        public Extremes {
            Objects.requireNonNull(highestPressure, "highestPressure");
            Objects.requireNonNull(lowestPressure, "lowestPressure");
            Objects.requireNonNull(highestTemperature, "highestTemperature");
            Objects.requireNonNull(mostVesselWater, "mostVesselWater");
        }

        /**
         * Whether the pressure hardly moves: a gauge would not show it.
         *
         * @return true if it stays within 0.05 bar
         */
        public boolean isSteady() {
            return highestPressure.value() - lowestPressure.value() < STEADY;
        }
    }

    /**
     * Balance check of a run: inflow minus outflow minus change of inventory, for mass and for energy. The inventory is
     * recomputed from temperature and pressure at both ends, while the flows are integrated along the way, so an error in
     * either shows.
     *
     * <p>Mass moved is what crossed the boundary plus what the warming water displaced from the tank; energy moved is the
     * heat that reached the water, plus the heat lost, plus the enthalpy carried by flows relative to cold water.
     *
     * @param massResidual the mass unaccounted for (kg)
     * @param massMoved the mass that moved (kg)
     * @param energyResidual the energy unaccounted for (J)
     * @param energyMoved the energy that moved (J)
     */
    public record Audit(double massResidual, double massMoved, double energyResidual, double energyMoved) {

        /** The largest fraction a sound run may leave unaccounted for (-). */
        public static final double BOUND = 1e-6;

        /**
         * Smallest mass (kg) that a residual is compared with. A run that ends where it starts moves nothing, and rounding
         * of the tank's inventory cannot be a fraction of nothing. A residual of a milligram, a fiftieth of a drop, is
         * acceptable in any run.
         */
        public static final double MIN_MASS = 1;

        /**
         * Smallest energy (J) that a residual is compared with, for the same reason. A residual of one joule, which warms a
         * glass of water by a thousandth of a kelvin, is acceptable in any run.
         */
        public static final double MIN_ENERGY = 1e6;

        /**
         * Mass residual as a fraction of the mass moved, or of {@link #MIN_MASS} if less moved.
         *
         * @return the fraction (-)
         */
        public double massFraction() {
            return Math.abs(massResidual) / Math.max(massMoved, MIN_MASS);
        }

        /**
         * Energy residual as a fraction of the energy moved, or of {@link #MIN_ENERGY} if less moved.
         *
         * @return the fraction (-)
         */
        public double energyFraction() {
            return Math.abs(energyResidual) / Math.max(energyMoved, MIN_ENERGY);
        }

        /**
         * Whether both fractions lie within {@link #BOUND}.
         *
         * @return true if both balances close
         */
        public boolean closes() {
            return massFraction() <= BOUND && energyFraction() <= BOUND;
        }
    }

    /**
     * The largest or smallest value a quantity took in a run, and when. Taken from the continuous solution, so it may lie
     * between two samples.
     *
     * @param value the value, in the SI unit of the quantity
     * @param time since the start of the run (s) at which it was first taken
     */
    public record Extreme(double value, double time) {}
}
