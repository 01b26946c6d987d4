package io.github.heatswell.scenarios.choice;

import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.narrative.SizeAdvice.LowerSupply;
import io.github.heatswell.narrative.SizeAdvice.Setting;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.SupplyTable.Column;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.NominalSize.Price;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/** Looks at lower supplies: those that a reducing valve gives in round steps. */
final class LowerSupplies {

    /** Settings looked at. */
    private static final int MAX_SETTINGS = 6;
    /** How far a small valve that is yet to be bought stands above its setting (Pa): as where a file leaves it out. */
    private static final double NEW_LOCK_UP = 0.3e5;
    /** How far the pressure behind it falls while water runs (Pa): as where a file leaves it out. */
    private static final double NEW_DROOP = 0.7e5;

    private final Scenario scenario;
    private final SizingResult present;
    private final Function<Scenario, VesselSizing> sizings;
    private final boolean mayKeep;
    private final Balances.Count count;
    private final UnitSystem units;
    private final double air;

    /**
     * The lower supplies of a house.
     *
     * @param scenario the house
     * @param present the sizing at the supply as it is
     * @param sizings asks the same about a house with another supply
     * @param mayKeep whether the vessel of the house may be kept; not where another was bought in its place
     * @param count counts the runs
     */
    LowerSupplies(
            Scenario scenario,
            SizingResult present,
            Function<Scenario, VesselSizing> sizings,
            boolean mayKeep,
            Balances.Count count) {
        this.scenario = scenario;
        this.present = present;
        this.sizings = sizings;
        this.mayKeep = mayKeep;
        this.count = count;
        units = scenario.units();
        air = scenario.system().site().atmosphere();
    }

    /**
     * The table; of nothing where a vessel is no answer, a seat leaks, the house has no text to change, or several vessels, each of
     * which a lower supply would ask for another precharge.
     */
    SupplyTable table(Optional<SizeCertainty> certainty) {
        Supply supply = scenario.system().supply();
        if (supply.arrangement() == Supply.Arrangement.DIRECT
                || supply.seatLeakage() > 0
                || scenario.source().isEmpty()
                || scenario.system().hasSeveralVessels()
                || present.outcome() == SizingResult.Outcome.NONE_NEEDED) {
            return SupplyTable.NONE;
        }
        List<Column> lower =
                settings().stream().flatMap(setting -> column(setting).stream()).toList();
        if (lower.isEmpty()) {
            return SupplyTable.NONE;
        }
        OptionalDouble sure = certainty
                .flatMap(SizeCertainty::advised)
                .map(one -> OptionalDouble.of(one.volume()))
                .orElse(OptionalDouble.empty());
        List<Column> all = new ArrayList<>(List.of(new Column(Optional.empty(), present, sure)));
        Optional<LowerSupply> cheapest = lower.stream()
                .flatMap(column -> way(column).stream())
                .min(Comparator.comparing(way -> way.price().map(Price::amount).orElse(BigDecimal.ZERO)));
        all.addAll(lower);
        return new SupplyTable(all, cheapest, droop());
    }

    private Optional<ReducingValve> valve() {
        return scenario.system().supply().reducingValve();
    }

    private double droop() {
        return valve().map(ReducingValve::droop).orElse(NEW_DROOP);
    }

    /** The next settings in steps of 5 psi or 0.5 bar below what stands now and must not be passed, as far as a shower has enough. */
    private List<Pressure> settings() {
        double step = units.settingStep();
        double standing =
                Math.min(present.supplyStatic().gauge(air), present.target().gauge());
        double top = valve().map(valve ->
                        Math.min(valve.set().gauge(air), present.target().gauge() - valve.lockUpRise()))
                .orElse(standing - NEW_LOCK_UP);
        double first = step * (Math.ceil(top / step - 1e-6) - 1);
        return Stream.iterate(first, setting -> setting - step)
                .limit(MAX_SETTINGS)
                .filter(setting -> SupplyTable.atShower(setting, droop()) >= SupplyTable.LEAST_AT_SHOWER)
                .map(setting -> Pressure.gauge(setting, PressureUnit.PASCAL))
                .toList();
    }

    private Optional<Column> column(Pressure setting) {
        Scenario lowered;
        try {
            lowered = at(setting);
        } catch (InvalidScenarioException e) {
            return Optional.empty();
        }
        VesselSizing sizing = sizings.apply(lowered);
        SizingResult found = sizing.size();
        count.add(found.balances());
        return Optional.of(new Column(Optional.of(setting), found, sure(lowered, sizing, found)));
    }

    /** The house with its reducing valve set lower, or with one that is set so. */
    Scenario at(Pressure setting) {
        return scenario.with(changes(setting));
    }

    private List<Change> changes(Pressure setting) {
        double amount = units.pressure().fromSi(setting.gauge(air));
        String text = Decimals.significant(amount, 4) + " " + units.pressure().symbol();
        return valve().isPresent()
                ? List.of(Change.of("supply.reducing-valve.set=" + text))
                : List.of(
                        Change.of("supply.arrangement=reducing-valve"),
                        Change.of("supply.reducing-valve={ set: " + text + " }"));
    }

    private OptionalDouble sure(Scenario lowered, VesselSizing sizing, SizingResult found) {
        List<Double> sizes = found.nominal().stream()
                .map(SizingResult.Vessel::volume)
                .sorted()
                .toList();
        SampledHouses houses = new SampledHouses(
                lowered, found.target().gauge(), volume -> house -> fitted(house, volume, sizing), count);
        int bare = found.smallestOnSale()
                .map(size -> sizes.indexOf(size.volume()))
                .orElse(found.outcome() == SizingResult.Outcome.NONE_NEEDED ? 0 : -1);
        OptionalInt place = bare < 0 || !houses.isPossible() ? OptionalInt.empty() : houses.sure(sizes, bare);
        return place.isPresent() ? OptionalDouble.of(sizes.get(place.getAsInt())) : OptionalDouble.empty();
    }

    /** A house with a vessel of a volume (m3), charged as the best estimates say, or without one for 0. */
    static HotWaterSystem fitted(HotWaterSystem house, double volume, VesselSizing sizing) {
        return volume == 0
                ? house.hasSeveralVessels()
                        ? house
                        : house.toBuilder().withoutVessel().build()
                : house.toBuilder().fitVessel(sizing.vessel(volume)).build();
    }

    /** What is to be done at a supply; empty if nothing on sale will do, or it has no price. */
    private Optional<LowerSupply> way(Column column) {
        boolean weak = new SizeAdvice(present, scenario.system(), Optional.empty())
                .madeFor()
                .isPresent();
        Optional<ExpansionVessel> own = scenario.system()
                .vessel()
                .filter(vessel -> mayKeep && !weak)
                .filter(vessel ->
                        vessel.condition() == ExpansionVessel.Condition.SOUND && column.holds(vessel.volume()));
        Pressure setting = column.setting().orElseThrow();
        Optional<Price> valve =
                valve().isPresent() ? Optional.empty() : Optional.of(Alternatives.reducingValve(scenario));
        if (own.isPresent()) {
            Pressure precharge = column.sizing().nominal().get(0).precharge();
            return Optional.of(new LowerSupply(
                    new Setting(setting, column.sizing().supplyStatic(), valve.isPresent()),
                    own.get().volume(),
                    precharge,
                    true,
                    valve));
        }
        return column.sizing().nominal().stream()
                .filter(size -> column.holds(size.volume()) && size.price().isPresent())
                .min(Comparator.comparingDouble(SizingResult.Vessel::volume))
                .map(size -> new LowerSupply(
                        new Setting(setting, column.sizing().supplyStatic(), valve.isPresent()),
                        size.volume(),
                        size.precharge(),
                        false,
                        Optional.of(sum(size.price().get(), valve))));
    }

    private static Price sum(Price vessel, Optional<Price> valve) {
        return valve.map(more -> new Price(vessel.amount().add(more.amount()), vessel.currency()))
                .orElse(vessel);
    }
}
