package io.github.heatswell.diagnosis;

import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ExpansionVessel.Condition;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.PowerUnit;
import java.time.Duration;
import java.util.Map;
import java.util.Set;

/** What the checks on site would show in a house: each is read off a run as the check is done. */
final class Spots {

    private static final Duration HOUR = Duration.ofHours(1);
    private static final double MINUTE = 60;

    private final HotWaterSystem house;
    private final double atmosphere;
    private final Balances.Count count;
    private Heating heating;
    private CheckSheet sheet;

    Spots(HotWaterSystem house, Balances.Count count) {
        this.house = house;
        this.count = count;
        atmosphere = house.site().atmosphere();
    }

    /** The heat-up from cold until the next morning. */
    private record Heating(RunSummary summary, double first, double highest, double last, double hottest) {}

    Map<SiteCheck, Double> read(Set<SiteCheck> checks) {
        Map<SiteCheck, Double> found = Forecaster.noSpots();
        checks.forEach(check -> found.put(check, value(check)));
        return found;
    }

    private double value(SiteCheck check) {
        return switch (check) {
            case COLD_STATIC -> heating().first;
            case HEAT_UP_MAXIMUM -> heating().highest;
            case NEXT_MORNING -> heating().last;
            case CAUGHT_VOLUME -> heating().summary.totals().relieved();
            case PEAK_AFTER_DRAW -> sheet(CheckSheet.Reading.Kind.PEAK);
            case MORNING_AFTER_DRAW -> sheet(CheckSheet.Reading.Kind.NEXT_MORNING);
            case HOT_TAP -> Math.min(heating().hottest, house.heater().mixedTo().orElse(Double.POSITIVE_INFINITY));
            case METER_AT_REST -> meter();
            case TYRE_GAUGE -> tyreGauge();
            case VESSEL_FULL ->
                house.vessels().stream().mapToDouble(this::full).max().orElse(0);
            case GAS_VALVE ->
                house.vessels().stream().anyMatch(vessel -> vessel.condition() == Condition.WATERLOGGED) ? 1 : 0;
        };
    }

    /** A reading as the check sheet predicts it; where a hazard prevents it, what the heat-up from cold rises to. */
    private double sheet(CheckSheet.Reading.Kind kind) {
        if (sheet == null) {
            sheet = CheckProcedure.of(house).simulate(house);
            count.add(sheet.balances());
        }
        return sheet.reading(kind).map(CheckSheet.Reading::expectedGauge).orElseGet(() -> heating().highest);
    }

    /** A cold fill is at supply pressure, so its first reading shows the gauge's height above the drain cock. */
    private Heating heating() {
        if (heating == null) {
            Duration duration = Forecaster.millis(SpotReadings.UNTIL_MORNING);
            double[] gauge = {Double.NaN, Double.NaN};
            RunSummary summary = Simulation.of(undrawn(house.heater()), duration).sampledEvery(duration).stream(
                    (time, values, regime) -> {
                        int place = Double.isNaN(gauge[0]) ? 0 : 1;
                        gauge[place] = values[Channel.GAUGE_READING.ordinal()];
                    });
            count.add(summary);
            double offset = house.supplyAtStart().gauge(atmosphere) - gauge[0];
            double highest = summary.peak().value() - offset;
            double hottest = summary.extremes().highestTemperature().value();
            heating = new Heating(summary, gauge[0], highest, gauge[1], hottest);
        }
        return heating;
    }

    /** The same house from a cold fill, without draws. */
    private HotWaterSystem undrawn(Heater heater) {
        Start cold = Start.builder()
                .timeOfDay(house.start().timeOfDay(), DurationUnit.SECOND)
                .dayOfYear(house.start().dayOfYear())
                .build();
        return house.toBuilder()
                .draws(DrawProfile.none())
                .start(cold)
                .heater(heater)
                .build();
    }

    /** The meter is read in a house that has come to rest with the heater off. */
    private double meter() {
        Heater off = house.heater()
                .withElements(element -> element.toBuilder()
                        .input(1e-6 * element.input(), PowerUnit.WATT)
                        .build());
        double[] letIn = new double[2];
        count.add(
                Simulation.of(undrawn(off), HOUR.plusSeconds((long) MINUTE)).sampledEvery(Duration.ofMinutes(1)).stream(
                        (time, values, regime) -> {
                            double total = values[Channel.INFLOW_TOTAL.ordinal()];
                            letIn[time <= MINUTE ? 0 : 1] = total;
                        }));
        return letIn[1] - letIn[0];
    }

    /** The share of a vessel that is full of water at the pressure of the supply, with the gas as warm as when it was charged. */
    private double full(ExpansionVessel vessel) {
        double supply = house.supplyAtStart().absolute(atmosphere);
        return vessel.condition() == Condition.WATERLOGGED
                ? 1
                : Math.max(0, 1 - vessel.precharge().absolute(atmosphere) / supply);
    }

    /** A vessel that is full of water for good has no gas to show. */
    private double tyreGauge() {
        return house.vessel()
                .filter(vessel -> vessel.condition() != Condition.WATERLOGGED)
                .map(ExpansionVessel::precharge)
                .map(precharge -> precharge.gauge(atmosphere))
                .orElse(0.0);
    }
}
