package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;

/** Top-level keys for the system as a whole: further vessels, circulation, air, leaks, draws and the gauge. */
final class UseSections {

    private static final int MAX_VESSELS = 9;
    private static final int MAX_LEAKS = 50;
    private static final int MAX_HOURS = 24;
    private static final int MAX_DRAWS = 500;

    private static final Section<Circulation.Hours.Builder, Circulation.Hours> HOURS = new Section<>(
            "circulation.pump",
            Circulation.Hours::builder,
            Circulation.Hours.Builder::build,
            () -> List.of(
                    new Field<>(
                            "from",
                            "time of day at which it starts",
                            "06:00",
                            Form.clock(Circulation.Hours.Builder::from)),
                    new Field<>(
                                    "to",
                                    "time of day at which it stops; may be past midnight",
                                    "22:00",
                                    Form.clock(Circulation.Hours.Builder::to))
                            .checkedAgainst("from")));

    private static final Section<Circulation.Builder, Circulation> CIRCULATION = new Section<>(
            "circulation",
            Circulation::builder,
            Circulation.Builder::build,
            () -> List.of(
                    amount("flow", "flow of the pump", "3 L/min", Kind.FLOW, Circulation.Builder::flow),
                    Field.of(
                                    "pump",
                                    "hours of the day at which it runs; always if left out",
                                    "[{ from: 06:00, to: 22:00 }]",
                                    Nested.list(HOURS, MAX_HOURS, Circulation.Builder::pump))
                            .leftOutFreely(),
                    amount(
                                    "return",
                                    "height at which the water comes back into a tank in layers, as a share of the tank's height;"
                                            + " at the bottom if left out",
                                    "30 %",
                                    Kind.RATIO,
                                    Circulation.Builder::returnHeight)
                            .leftOutFreely()));

    private static final Section<Leak.Builder, Leak> LEAK = new Section<>(
            "leaks",
            Leak::builder,
            Leak.Builder::build,
            () -> List.of(
                    amount("flow", "leakage flow", "40 mL/min", Kind.FLOW, Leak.Builder::flow),
                    pressure("at", "pressure at which that flow is stated", "4 bar", Leak.Builder::at)));

    private static final Section<Draw.Builder, Draw> DRAW = new Section<>(
            "draws",
            Draw::builder,
            Draw.Builder::build,
            () -> List.of(
                    new Field<>(
                            "at",
                            "time of day at which the tap opens",
                            "07:00",
                            Form.clock((draw, seconds) -> draw.timeOfDay(seconds, DurationUnit.SECOND))),
                    amount("volume", "volume drawn at the tap", "40 L", Kind.VOLUME, Draw.Builder::volume)
                            .needed("unless energy is", given -> !given.containsKey("energy"))
                            .checkedAgainst("flow", "energy"),
                    amount(
                                    "energy",
                                    "heat drawn, above cold water; instead of volume",
                                    "1.4 kWh",
                                    Kind.ENERGY,
                                    Draw.Builder::heat)
                            .leftOutFreely()
                            .checkedAgainst("volume"),
                    amount("flow", "flow at the tap", "6 L/min", Kind.FLOW, Draw.Builder::flow),
                    amount(
                                    "mixed",
                                    "temperature at the tap, reached by mixing in cold water; unmixed if left out",
                                    "40 degC",
                                    Kind.TEMPERATURE,
                                    Draw.Builder::mixedTo)
                            .leftOutFreely()));

    private static final Section<Gauge, Double> GAUGE = new Section<>(
            "gauge",
            Gauge::new,
            gauge -> gauge.metres,
            () -> List.of(amount(
                    "height",
                    "height of the owner's gauge above the tank's drain cock",
                    "1.5 m",
                    Kind.LENGTH,
                    Gauge::height)));

    static final Section<Scenario.Builder, Scenario.Builder> EXTRAS = new Section<>(
            "",
            Scenario.Builder::new,
            scenario -> scenario,
            () -> List.of(
                    Field.of(
                                    "vessels",
                                    "further expansion vessels beside vessel, such as one built into the tank, each with the"
                                            + " keys of vessel; none if left out",
                                    "[{ volume: 8 L, precharge: 4.2 bar }]",
                                    Nested.list(
                                            VesselSections.VESSEL,
                                            MAX_VESSELS,
                                            (Scenario.Builder scenario, List<ExpansionVessel> vessels) ->
                                                    vessels.forEach(scenario.house()::addVessel)))
                            .leftOutFreely(),
                    Field.of(
                                    "circulation",
                                    "pump of a circulation loop, whose pipes are the runs of piping that carry loop; none if left out",
                                    "{ flow: 3 L/min }",
                                    Nested.one(
                                            CIRCULATION,
                                            (Scenario.Builder scenario, Circulation loop) ->
                                                    scenario.house().circulation(loop)))
                            .leftOutFreely()
                            .checkedAgainst("piping"),
                    amount(
                                    "trapped-air",
                                    "air trapped in the cold piping, at the starting pressure; no more than that holds",
                                    "0.5 L",
                                    Kind.VOLUME,
                                    (Scenario.Builder scenario, double value, VolumeUnit unit) ->
                                            scenario.house().trappedAir(value, unit))
                            .leftOutFreely()
                            .checkedAgainst("piping"),
                    Field.of(
                                    "leaks",
                                    "taps that drip and other small holes",
                                    "[{ flow: 40 mL/min, at: 4 bar }]",
                                    Nested.list(
                                            LEAK,
                                            MAX_LEAKS,
                                            (Scenario.Builder scenario, List<Leak> leaks) ->
                                                    leaks.forEach(scenario.house()::addLeak)))
                            .leftOutFreely(),
                    new Field<>(
                                    "draws",
                                    "daily hot-water use: a published profile or a timetable",
                                    "eu-m",
                                    Form.profile((Scenario.Builder scenario, DrawProfile draws) ->
                                            scenario.house().draws(draws)))
                            .or(Nested.list(
                                    DRAW,
                                    MAX_DRAWS,
                                    (Scenario.Builder scenario, List<Draw> draws) -> scenario.house()
                                            .draws(
                                                    draws.isEmpty()
                                                            ? DrawProfile.none()
                                                            : DrawProfile.of("own", draws))))
                            .leftOutFreely(),
                    Field.of(
                                    "gauge",
                                    "where the owner's gauge sits; at the drain cock if left out",
                                    "{ height: 1.5 m }",
                                    Nested.one(
                                            GAUGE,
                                            (Scenario.Builder scenario, Double metres) ->
                                                    scenario.house().gaugeHeight(metres, LengthUnit.METRE)))
                            .leftOutFreely()));

    private UseSections() {}

    /** Takes where the gauge sits (m above the drain cock). */
    private static final class Gauge {
        private double metres;

        void height(double value, LengthUnit unit) {
            HotWaterSystem.builder().gaugeHeight(value, unit);
            metres = unit.toSi(value);
        }
    }
}
