package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Fields.amount;
import static io.github.heatswell.scenarios.file.Fields.pressure;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Leak;
import java.util.List;

/** What stands at the top of a file and belongs to the system as a whole: air, leaks, draws and the gauge. */
final class UseSections {

    private static final int MAX_LEAKS = 50;
    private static final int MAX_DRAWS = 500;

    private static final Section<Leak.Builder, Leak> LEAK = new Section<>(
            "leaks",
            Leak::builder,
            Leak.Builder::build,
            List.of(
                    amount("flow", "leakage flow", "40 mL/min", Kind.FLOW, Leak.Builder::flow),
                    pressure("at", "pressure at which that flow is stated", "4 bar", Leak.Builder::at)));

    private static final Section<Draw.Builder, Draw> DRAW = new Section<>(
            "draws",
            Draw::builder,
            Draw.Builder::build,
            List.of(
                    new Field<>(
                            "at",
                            "time of day at which the tap opens",
                            "07:00",
                            Forms.clock((Draw.Builder draw, String clock) -> draw.at(ClockTime.read(clock)))),
                    amount(
                                    "volume",
                                    "volume drawn at the tap",
                                    "40 L",
                                    Kind.VOLUME,
                                    Draw.Builder::volume)
                            .needed("unless energy is", given -> !given.containsKey("energy"))
                            .checkedAgainst("flow", "energy"),
                    amount(
                                    "energy",
                                    "heat drawn, above cold water; instead of volume",
                                    "1.4 kWh",
                                    Kind.ENERGY,
                                    Draw.Builder::energy)
                            .leftOutFreely()
                            .checkedAgainst("volume"),
                    amount("flow", "flow at the tap", "6 L/min", Kind.FLOW, Draw.Builder::flow),
                    amount(
                                    "mixed",
                                    "temperature at the tap, reached by mixing in cold water; unmixed if left out",
                                    "40 degC",
                                    Kind.TEMPERATURE,
                                    Draw.Builder::mixed)
                            .leftOutFreely()));

    private static final Section<Extras.Gauge, Double> GAUGE = new Section<>(
            "gauge",
            Extras.Gauge::new,
            Extras.Gauge::end,
            List.of(amount(
                    "height",
                    "height of the owner's gauge above the tank's drain cock",
                    "1.5 m",
                    Kind.LENGTH,
                    Extras.Gauge::height)));

    static final Section<Extras, Extras> EXTRAS = new Section<>(
            "",
            Extras::new,
            extras -> extras,
            List.of(
                    amount(
                                    "trapped-air",
                                    "air trapped in the piping, at the starting pressure; no more than the piping"
                                            + " holds",
                                    "0.5 L",
                                    Kind.VOLUME,
                                    Extras::trappedAir)
                            .leftOutFreely()
                            .checkedAgainst("piping"),
                    Field.of(
                                    "leaks",
                                    "taps that drip and other small holes",
                                    "[{ flow: 40 mL/min, at: 4 bar }]",
                                    Nested.list(LEAK, MAX_LEAKS, Extras::leaks))
                            .leftOutFreely(),
                    new Field<>(
                                    "draws",
                                    "daily hot-water use: a published profile or a timetable",
                                    "eu-m",
                                    Forms.profile(Extras::draws))
                            .or(Nested.list(
                                    DRAW,
                                    MAX_DRAWS,
                                    (Extras extras, List<Draw> draws) -> extras.draws(
                                            draws.isEmpty() ? DrawProfile.none() : DrawProfile.of("own", draws))))
                            .leftOutFreely(),
                    Field.of(
                                    "gauge",
                                    "where the owner's gauge sits; at the drain cock if left out",
                                    "{ height: 1.5 m }",
                                    Nested.one(GAUGE, Extras::gaugeHeight))
                            .leftOutFreely()));

    private UseSections() {}
}
