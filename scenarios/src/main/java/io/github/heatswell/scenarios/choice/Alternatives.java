package io.github.heatswell.scenarios.choice;

import io.github.heatswell.place.Customs;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.NominalSize.Price;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.math.BigDecimal;
import java.util.Optional;

/** A relief valve that takes the expansion before that of the tank: what it would discharge, and what it costs. */
final class Alternatives {

    /** Invented prices, in the currency of the scenario; they illustrate the arithmetic and are not a market survey. */
    private static final BigDecimal REDUCING_VALVE = new BigDecimal("90.00");

    private static final BigDecimal COLD_RELIEF = new BigDecimal("45.00");
    private static final BigDecimal SAFETY_GROUP = new BigDecimal("60.00");

    /** Where a usual valve closes again, as a share of its set pressure: as where a file leaves it out. */
    private static final double RESEATS = 0.8;
    /** Where one made to take the expansion may be had to close, as a share of its set pressure; from memory. */
    private static final double RESEATS_SOON = 0.9;
    /** Full lift at 110 % of the set pressure, as where a file leaves it out. */
    private static final double FULL_LIFT = 1.1;
    /** The usual setting of a safety group (Pa, gauge); from memory. */
    private static final double GROUP = 7e5;

    private static final double FULL_FLOW = 20;

    /** What the valve is called in the run. */
    private static final String ADDED = "added";
    /** A volume (m3) below this counts as none. */
    private static final double DROP = 1e-6;

    private final Scenario scenario;
    private final SizingResult sizing;
    private final Balances.Count count;
    private final double air;

    Alternatives(Scenario scenario, SizingResult sizing, Balances.Count count) {
        this.scenario = scenario;
        this.sizing = sizing;
        this.count = count;
        this.air = scenario.system().site().atmosphere();
    }

    /** What a reducing valve costs. */
    static Price reducingValve(Scenario scenario) {
        return new Price(REDUCING_VALVE, scenario.costs().currency());
    }

    /** A relief valve on the cold pipe that opens below the limit; none where it would not close again above the supply's pressure. */
    Optional<DischargingValve> coldRelief() {
        if (isMoot()) {
            return Optional.empty();
        }
        double step = scenario.units().settingStep();
        double setting = step * Math.floor(sizing.target().gauge() / FULL_LIFT / step + 1e-6);
        return valve(DischargingValve.Kind.COLD_RELIEF, setting, COLD_RELIEF);
    }

    /** A safety group, at which dripping is normal, that opens no later than the valve of the house; none where that takes the expansion too. */
    Optional<DischargingValve> safetyGroup() {
        double most = scenario.system().tank().workingPressure().gauge(air) / FULL_LIFT;
        double first = scenario.system().reliefValves().stream()
                .filter(ReliefValve::relieves)
                .mapToDouble(valve -> valve.setPressure().gauge(air))
                .min()
                .orElse(GROUP);
        UnitSystem trade =
                scenario.system().site().place().customs().map(Customs::units).orElse(scenario.units());
        boolean there = scenario.system().reliefValves().stream()
                .anyMatch(valve -> valve.kind().takesExpansion() && valve.relieves());
        return isMoot() || there || trade == UnitSystem.US
                ? Optional.empty()
                : valve(DischargingValve.Kind.SAFETY_GROUP, Math.min(Math.min(GROUP, first), most), SAFETY_GROUP);
    }

    /** A house that needs no such valve, that may have one only besides a vessel, or whose own runs whatever is fitted beside it. */
    private boolean isMoot() {
        boolean besides = scenario.system()
                .site()
                .place()
                .demand(Topic.EXPANSION_MEANS)
                .filter(PlaceRule::requires)
                .isPresent();
        return besides
                || scenario.system().reliefValves().stream()
                        .anyMatch(valve -> valve.condition() == ReliefFault.Condition.STUCK_OPEN)
                || scenario.system().supply().arrangement() == Supply.Arrangement.DIRECT
                || scenario.system().hasSeveralVessels()
                || sizing.outcome() == SizingResult.Outcome.NONE_NEEDED;
    }

    /** A valve that would run on once it has opened is no choice. */
    private Optional<DischargingValve> valve(DischargingValve.Kind kind, double setting, BigDecimal price) {
        double supply = sizing.supplyStatic().gauge(air);
        boolean usual = RESEATS * setting > supply;
        double reseat = (usual ? RESEATS : RESEATS_SOON) * setting;
        if (reseat <= supply) {
            return Optional.empty();
        }
        RunSummary run = run(setting, reseat);
        return Optional.of(new DischargingValve(
                kind,
                Pressure.gauge(setting, PressureUnit.PASCAL),
                usual ? Optional.empty() : Optional.of(Pressure.gauge(reseat, PressureUnit.PASCAL)),
                new Price(price, scenario.costs().currency()),
                YearlyWater.ofNormalLife(run, scenario.doubts()),
                work(run)));
    }

    private static DischargingValve.Work work(RunSummary with) {
        double own = with.totals().relief().stream()
                .filter(relief -> relief.name().equals(ADDED))
                .mapToDouble(Totals.Relief::volume)
                .sum();
        if (own <= 0) {
            return DischargingValve.Work.STAYS_SHUT;
        }
        return with.totals().relieved() - own > DROP
                ? DischargingValve.Work.DRIPS_TOO
                : DischargingValve.Work.DRIPS_ALONE;
    }

    /** A run of the house as it is, with the valve. */
    private RunSummary run(double setting, double reseat) {
        HotWaterSystem house = scenario.system().toBuilder()
                .addReliefValve(ReliefValve.builder()
                        .name(ADDED)
                        .setPressure(Pressure.gauge(setting, PressureUnit.PASCAL))
                        .fullLiftPressure(Pressure.gauge(FULL_LIFT * setting, PressureUnit.PASCAL))
                        .reseatPressure(Pressure.gauge(reseat, PressureUnit.PASCAL))
                        .fullFlow(FULL_FLOW, FlowUnit.LITRE_PER_MINUTE)
                        .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                        .location(ReliefValve.Location.BRANCH)
                        .build())
                .build();
        return count.add(Simulation.of(house, scenario.duration()).summary());
    }
}
