package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.teaching.LessonRun.House;
import io.github.heatswell.water.Saturation;
import java.util.Map;
import java.util.Map.Entry;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** The figures that lessons can name, one a line. SI units; pressures as a gauge shows them unless their name says otherwise. */
final class Figures {

    /**
     * A figure.
     *
     * @param kind what it measures, if it has a unit
     * @param ofHouse whether it is one of a house
     * @param numbers how many numbers it wants besides
     * @param value how to work it out
     */
    record Figure(Optional<Kind> kind, boolean ofHouse, int numbers, Body value) {}

    /** How a figure is worked out. */
    interface Body {
        double of(House house, double... numbers);
    }

    private static final Map<String, Figure> ALL = Map.ofEntries(
            // Numbers and properties of water; temperatures in kelvin.
            number("abs", 1, n -> Math.abs(n[0])),
            number("near", 3, n -> Math.abs(n[0] / n[1] - 1) < n[2] ? 1 : 0),
            number("expansivity", 1, n -> WaterFacts.expansivity(n[0])),
            number("waterGrowth", 2, n -> WaterFacts.growth(n[0], n[1])),
            number("growthFlow", 2, n -> WaterFacts.growthFlow(n[0], n[1])),
            number(Kind.PRESSURE_DIFFERENCE, "boilingPressure", 1, n -> Saturation.pressureAbsolute(n[0])),
            number(Kind.PRESSURE_DIFFERENCE, "rigidAbsolute", 3, n -> WaterFacts.rigidAbsolute(n[0], n[1], n[2])),
            number("yearlyLoss", 0, n -> PrechargeLoss.USUAL),
            number("highYearlyLoss", 0, n -> PrechargeLoss.HIGH),
            number(Kind.VOLUME, "drop", 0, n -> DripMetrics.DROP),
            // The house as it is described.
            run(Kind.PRESSURE_DIFFERENCE, "atmosphere", RunMetrics::atmosphere),
            run(Kind.GAUGE_PRESSURE, "supply", RunMetrics::supply),
            run(Kind.PRESSURE_DIFFERENCE, "absoluteSupply", run -> RunMetrics.supply(run) + RunMetrics.atmosphere(run)),
            run(Kind.GAUGE_PRESSURE, "mains", run -> run.gauge(run.trace().value(Channel.MAINS_ABSOLUTE, 0))),
            run(
                    Kind.GAUGE_PRESSURE,
                    "reducerSet",
                    run -> RunMetrics.reducer(run).set().gauge(RunMetrics.atmosphere(run))),
            run(
                    Kind.PRESSURE_DIFFERENCE,
                    "lockUp",
                    run -> RunMetrics.reducer(run).lockUpRise()),
            run(Kind.GAUGE_PRESSURE, "reliefSet", RunMetrics::reliefSet),
            run(Kind.GAUGE_PRESSURE, "reseat", RunMetrics::reseat),
            run(
                    Kind.TEMPERATURE,
                    "setTemperature",
                    run -> RunMetrics.relief(run).setTemperature().orElseThrow()),
            run(
                    Kind.TEMPERATURE,
                    "reseatTemperature",
                    run -> RunMetrics.relief(run).reseatTemperature().orElseThrow()),
            run("fullFlow", run -> RunMetrics.relief(run).fullFlow()),
            run(
                    Kind.GAUGE_PRESSURE,
                    "workingPressure",
                    run -> run.system().tank().workingPressure().gauge(RunMetrics.atmosphere(run))),
            run(Kind.VOLUME, "tankVolume", run -> run.system().tank().volume()),
            run("steelGrowth", run -> run.system().tank().shell().thermalGrowth()),
            run("softness", run -> run.system().piping().get(0).compliance()),
            run(Kind.SHARE, "stretchedPart", RunMetrics::stretchedPart),
            run(Kind.TEMPERATURE, "cold", RunMetrics::cold),
            run(Kind.TEMPERATURE, "setPoint", RunMetrics::setPoint),
            run(Kind.POWER, "heaterOutput", run -> run.system().heater().output()),
            run(Kind.VOLUME, "vesselVolume", run -> VesselMetrics.vessel(run).volume()),
            run(Kind.SHARE, "acceptance", run -> VesselMetrics.vessel(run).acceptance()),
            run(Kind.GAUGE_PRESSURE, "precharge", VesselMetrics::precharge),
            run(Kind.SHARE, "factor", VesselMetrics::factor),
            run("gasOverWater", VesselMetrics::gasOverWater),
            run(Kind.VOLUME, "formulaVolume", VesselMetrics::formulaVolume),
            // The course of the run.
            run(Kind.TIME, "end", RunResult::end),
            run(Kind.GAUGE_PRESSURE, "peak", RunMetrics::peak),
            run(Kind.PRESSURE_DIFFERENCE, "rise", run -> RunMetrics.peak(run) - RunMetrics.supply(run)),
            run(
                    Kind.GAUGE_PRESSURE,
                    "lowest",
                    run -> run.gauge(run.extremes().lowestPressure().value())),
            run(
                    Kind.TEMPERATURE,
                    "turn",
                    run -> RunMetrics.at(
                            run,
                            Channel.WATER_MEAN,
                            run.extremes().lowestPressure().time())),
            run(
                    Kind.TEMPERATURE,
                    "hottest",
                    run -> run.extremes().highestTemperature().value()),
            run("earlySlope", run -> RunMetrics.slope(run, RunMetrics.cold(run))),
            run(
                    "lateSlope",
                    run -> RunMetrics.slope(
                            run, run.extremes().highestTemperature().value() - RunMetrics.SLOPE)),
            run(Kind.PRESSURE_DIFFERENCE, "warmAbsolute", RunMetrics::warmAbsolute),
            run(
                    Kind.PRESSURE_DIFFERENCE,
                    "warmRise",
                    run -> RunMetrics.warmAbsolute(run) - RunMetrics.supply(run) - RunMetrics.atmosphere(run)),
            at(Kind.GAUGE_PRESSURE, "gaugeAt", Channel.GAUGE_READING),
            at(Kind.TEMPERATURE, "temperatureAt", Channel.WATER_MEAN),
            at(Kind.TEMPERATURE, "topAt", Channel.WATER_TOP),
            at(Kind.TEMPERATURE, "bottomAt", Channel.WATER_BOTTOM),
            at(Kind.VOLUME, "relievedAt", Channel.RELIEVED_TOTAL),
            at(Kind.VOLUME, "vesselWaterAt", Channel.VESSEL_WATER),
            at(Kind.FLOW, "dripAt", Channel.RELIEF_FLOW),
            house(
                    Kind.TIME,
                    "whenGauge",
                    1,
                    (house, n) -> RunMetrics.timeWhen(house.run(), Channel.GAUGE_READING, n[0])),
            house(
                    Kind.TIME,
                    "whenTemperature",
                    1,
                    (house, n) -> RunMetrics.timeWhen(house.run(), Channel.WATER_MEAN, n[0])),
            run(
                    Kind.TIME,
                    "heating",
                    run -> RunMetrics.time(run, EventKind.HEATER_OFF) - RunMetrics.time(run, EventKind.HEATER_ON)),
            is("hazard", run -> run.hazard().isPresent()),
            is("vapour", run -> run.first(EventKind.VAPOUR_FORMS).isPresent()),
            run(Kind.GAUGE_PRESSURE, "vapourPressure", run -> RunMetrics.pressureAt(run, EventKind.VAPOUR_FORMS)),
            is("cutOutTripped", run -> run.first(EventKind.CUT_OUT_TRIPPED).isPresent()),
            is("staysCool", RunMetrics::staysCool),
            // Where the water goes.
            is("opened", RunMetrics::opened),
            is("bypassOpened", run -> run.first(EventKind.BYPASS_OPENED).isPresent()),
            run(Kind.TIME, "opening", RunMetrics::opening),
            run(Kind.TIME, "reseating", run -> RunMetrics.time(run, EventKind.RELIEF_RESEATED)),
            run(Kind.TIME, "backAtSupply", run -> RunMetrics.time(run, EventKind.SUPPLY_OPENED)),
            run(
                    Kind.TEMPERATURE,
                    "warmthAtOpening",
                    run -> RunMetrics.at(run, Channel.WATER_MEAN, RunMetrics.opening(run))),
            run(Kind.VOLUME, "relieved", RunMetrics::relieved),
            run(Kind.VOLUME, "returned", run -> run.totals().returned()),
            run(Kind.VOLUME, "leaked", run -> run.totals().leaked()),
            run(Kind.VOLUME, "drawn", run -> run.totals().drawn()),
            run(Kind.TIME, "drawEnd", run -> RunMetrics.time(run, EventKind.DRAW_ENDED)),
            run(Kind.TEMPERATURE, "afterDraw", RunMetrics::afterDraw),
            run(Kind.VOLUME, "surplus", RunMetrics::surplus),
            run(Kind.VOLUME, "heatUpGrowth", run -> new HeatUp(run).growth()),
            run(Kind.VOLUME, "metal", run -> new HeatUp(run).metal()),
            run(Kind.VOLUME, "stretch", run -> new HeatUp(run).stretch(RunMetrics.reseat(run))),
            run(Kind.VOLUME, "leftOver", run -> new HeatUp(run).released()),
            run(Kind.SHARE, "metalShare", DripMetrics::metalShare),
            // How it drips.
            run("openings", run -> run.totals().relief().get(0).openings()),
            run(Kind.VOLUME, "daily", run -> RunMetrics.relieved(run) / run.end() * 86400),
            run("lastFlow", DripMetrics::lastFlow),
            run(Kind.POWER, "heat", DripMetrics::heat),
            run("flow", DripMetrics::flow),
            run("netFlow", DripMetrics::netFlow),
            run("dropsASecond", run -> DripMetrics.flow(run) / DripMetrics.DROP),
            run("fastest", DripMetrics::fastest),
            run(Kind.VOLUME, "fullestHour", DripMetrics::fullestHour),
            is("drySoFar", DripMetrics::drySoFar),
            is("dripsAboveReseat", DripMetrics::dripsAboveReseat),
            is("dripsJustAboveReseat", DripMetrics::dripsJustAboveReseat),
            is("dripsUnheated", DripMetrics::dripsUnheated),
            is("fallsFast", DripMetrics::fallsFast),
            // What the vessel does.
            run(Kind.VOLUME, "most", run -> run.extremes().mostVesselWater().value()),
            run(Kind.SHARE, "fullAtStart", VesselMetrics::fullAtStart),
            run(Kind.GAUGE_PRESSURE, "lifted", run -> RunMetrics.pressureAt(run, EventKind.VESSEL_LIFTED)),
            run(Kind.GAUGE_PRESSURE, "gas", VesselMetrics::gasAtStart),
            run("boyle", VesselMetrics::boyle),
            run(Kind.PRESSURE_DIFFERENCE, "lostInAYear", VesselMetrics::lostInAYear),
            house("years", 1, (house, n) -> VesselMetrics.years(house.run(), n[0])),
            house(Kind.PRESSURE_DIFFERENCE, "saving", 0, (house, n) -> VesselMetrics.saving(house)),
            house("eachLitreSavesLess", 0, (house, n) -> VesselMetrics.eachLitreSavesLess(house) ? 1 : 0),
            house(Kind.VOLUME, "smallestDry", 0, (house, n) -> VesselMetrics.smallestDry(house)),
            house(Kind.VOLUME, "wholeLitres", 0, (house, n) -> VesselMetrics.wholeLitres(house)),
            house(
                    Kind.GAUGE_PRESSURE,
                    "dryPeak",
                    0,
                    (house, n) -> RunMetrics.peak(VesselMetrics.with(house, VesselMetrics.wholeLitres(house)))));

    private Figures() {}

    static Optional<Figure> named(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    static Set<String> names() {
        return ALL.keySet();
    }

    private static Entry<String, Figure> number(String name, int count, ToDoubleFunction<double[]> value) {
        return Map.entry(
                name, new Figure(Optional.empty(), false, count, (house, numbers) -> value.applyAsDouble(numbers)));
    }

    private static Entry<String, Figure> number(Kind kind, String name, int count, ToDoubleFunction<double[]> value) {
        return Map.entry(
                name, new Figure(Optional.of(kind), false, count, (house, numbers) -> value.applyAsDouble(numbers)));
    }

    private static Entry<String, Figure> house(String name, int count, Body value) {
        return Map.entry(name, new Figure(Optional.empty(), true, count, value));
    }

    private static Entry<String, Figure> house(Kind kind, String name, int count, Body value) {
        return Map.entry(name, new Figure(Optional.of(kind), true, count, value));
    }

    private static Entry<String, Figure> run(String name, ToDoubleFunction<RunResult> value) {
        return house(name, 0, (house, numbers) -> value.applyAsDouble(house.run()));
    }

    private static Entry<String, Figure> run(Kind kind, String name, ToDoubleFunction<RunResult> value) {
        return house(kind, name, 0, (house, numbers) -> value.applyAsDouble(house.run()));
    }

    private static Entry<String, Figure> is(String name, Predicate<RunResult> value) {
        return run(name, run -> value.test(run) ? 1 : 0);
    }

    private static Entry<String, Figure> at(Kind kind, String name, Channel channel) {
        return house(kind, name, 1, (house, time) -> RunMetrics.at(house.run(), channel, time[0]));
    }
}
