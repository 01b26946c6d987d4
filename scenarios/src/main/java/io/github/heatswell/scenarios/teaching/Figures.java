package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
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

    /** A figure without a unit. */
    private static final Kind NONE = null;

    /** How a figure is worked out. */
    interface Body {
        double of(House house, double... numbers);
    }

    private static final Map<String, Figure> ALL = Map.ofEntries(
            // Numbers and properties of water; temperatures in kelvin.
            number(NONE, "abs", 1, n -> Math.abs(n[0])),
            number(NONE, "near", 3, n -> Math.abs(n[0] / n[1] - 1) < n[2] ? 1 : 0),
            number(NONE, "expansivity", 1, n -> WaterFacts.expansivity(n[0])),
            number(NONE, "waterGrowth", 2, n -> WaterFacts.growth(n[0], n[1])),
            number(NONE, "growthFlow", 2, n -> WaterFacts.growthFlow(n[0], n[1])),
            number(Kind.PRESSURE_DIFFERENCE, "boilingPressure", 1, n -> Saturation.pressureAbsolute(n[0])),
            number(Kind.PRESSURE_DIFFERENCE, "rigidAbsolute", 3, n -> WaterFacts.rigidAbsolute(n[0], n[1], n[2])),
            number(NONE, "yearlyLoss", 0, n -> PrechargeLoss.USUAL),
            number(NONE, "highYearlyLoss", 0, n -> PrechargeLoss.HIGH),
            number(Kind.VOLUME, "drop", 0, n -> DripFigures.DROP),
            // The house as it is described.
            run(Kind.PRESSURE_DIFFERENCE, "atmosphere", RunFigures::atmosphere),
            run(Kind.GAUGE_PRESSURE, "supply", RunFigures::supply),
            run(Kind.PRESSURE_DIFFERENCE, "absoluteSupply", run -> run.supply() + run.atmosphere()),
            run(Kind.GAUGE_PRESSURE, "mains", RunFigures::mains),
            run(Kind.GAUGE_PRESSURE, "reducerSet", RunFigures::reducerSet),
            run(Kind.PRESSURE_DIFFERENCE, "lockUp", run -> run.reducer().lockUpRise()),
            run(Kind.GAUGE_PRESSURE, "reliefSet", RunFigures::reliefSet),
            run(Kind.GAUGE_PRESSURE, "reseat", RunFigures::reseat),
            run(
                    Kind.TEMPERATURE,
                    "setTemperature",
                    run -> run.relief().setTemperature().orElseThrow()),
            run(
                    Kind.TEMPERATURE,
                    "reseatTemperature",
                    run -> run.relief().reseatTemperature().orElseThrow()),
            run(NONE, "fullFlow", run -> run.relief().fullFlow()),
            run(Kind.GAUGE_PRESSURE, "workingPressure", RunFigures::workingPressure),
            result(Kind.VOLUME, "tankVolume", run -> run.system().tank().volume()),
            result(NONE, "steelGrowth", run -> run.system().tank().shell().thermalGrowth()),
            result(NONE, "softness", run -> run.system().piping().get(0).compliance()),
            run(Kind.SHARE, "stretchedPart", RunFigures::stretchedPart),
            run(Kind.TEMPERATURE, "cold", RunFigures::cold),
            run(Kind.TEMPERATURE, "setPoint", RunFigures::setPoint),
            result(Kind.POWER, "heaterOutput", run -> run.system().heater().output()),
            vessel(Kind.VOLUME, "vesselVolume", VesselFigures::volume),
            vessel(Kind.SHARE, "acceptance", vessel -> vessel.vessel().acceptance()),
            vessel(Kind.GAUGE_PRESSURE, "precharge", VesselFigures::precharge),
            vessel(Kind.SHARE, "factor", VesselFigures::factor),
            vessel(NONE, "gasOverWater", VesselFigures::gasOverWater),
            vessel(Kind.VOLUME, "formulaVolume", VesselFigures::formulaVolume),
            // The course of the run.
            result(Kind.TIME, "end", RunResult::end),
            run(Kind.GAUGE_PRESSURE, "peak", RunFigures::peak),
            run(Kind.PRESSURE_DIFFERENCE, "rise", RunFigures::rise),
            run(Kind.GAUGE_PRESSURE, "lowest", RunFigures::lowest),
            run(Kind.TEMPERATURE, "turn", RunFigures::turn),
            run(Kind.TEMPERATURE, "hottest", RunFigures::hottest),
            run(NONE, "earlySlope", RunFigures::earlySlope),
            run(NONE, "lateSlope", RunFigures::lateSlope),
            run(Kind.PRESSURE_DIFFERENCE, "warmAbsolute", RunFigures::warmAbsolute),
            run(Kind.PRESSURE_DIFFERENCE, "warmRise", RunFigures::warmRise),
            at(Kind.GAUGE_PRESSURE, "gaugeAt", Channel.GAUGE_READING),
            at(Kind.TEMPERATURE, "temperatureAt", Channel.WATER_MEAN),
            at(Kind.TEMPERATURE, "topAt", Channel.WATER_TOP),
            at(Kind.TEMPERATURE, "bottomAt", Channel.WATER_BOTTOM),
            at(Kind.VOLUME, "relievedAt", Channel.RELIEVED_TOTAL),
            at(Kind.VOLUME, "returnedAt", Channel.RETURNED_TOTAL),
            at(Kind.VOLUME, "vesselWaterAt", Channel.VESSEL_WATER),
            at(Kind.FLOW, "dripAt", Channel.RELIEF_FLOW),
            when("whenGauge", Channel.GAUGE_READING),
            when("whenTemperature", Channel.WATER_MEAN),
            run(Kind.TIME, "heating", RunFigures::heating),
            is("hazard", run -> run.run().hazard().isPresent()),
            is("vapour", run -> run.happens(Event.Kind.VAPOUR_FORMS)),
            run(Kind.GAUGE_PRESSURE, "vapourPressure", run -> run.pressureAt(Event.Kind.VAPOUR_FORMS)),
            is("cutOutTripped", run -> run.happens(Event.Kind.CUT_OUT_TRIPPED)),
            is("staysCool", RunFigures::staysCool),
            // Where the water goes.
            is("opened", RunFigures::opened),
            is("bypassOpened", run -> run.happens(Event.Kind.BYPASS_OPENED)),
            run(Kind.TIME, "opening", RunFigures::opening),
            run(Kind.TIME, "reseating", run -> run.time(Event.Kind.RELIEF_RESEATED)),
            run(Kind.TIME, "backAtSupply", run -> run.time(Event.Kind.SUPPLY_OPENED)),
            run(Kind.TEMPERATURE, "warmthAtOpening", run -> run.at(Channel.WATER_MEAN, run.opening())),
            run(Kind.VOLUME, "relieved", RunFigures::relieved),
            result(Kind.VOLUME, "returned", run -> run.totals().returned()),
            result(Kind.VOLUME, "leaked", run -> run.totals().leaked()),
            result(Kind.VOLUME, "drawn", run -> run.totals().drawn()),
            run(Kind.TIME, "drawEnd", run -> run.time(Event.Kind.DRAW_ENDED)),
            run(Kind.TEMPERATURE, "afterDraw", RunFigures::afterDraw),
            run(Kind.VOLUME, "surplus", RunFigures::surplus),
            drip(Kind.VOLUME, "heatUpGrowth", DripFigures::growth),
            drip(Kind.VOLUME, "metal", DripFigures::metal),
            drip(Kind.VOLUME, "stretch", DripFigures::stretch),
            drip(Kind.VOLUME, "leftOver", DripFigures::leftOver),
            drip(Kind.SHARE, "metalShare", DripFigures::metalShare),
            // How it drips.
            result(NONE, "openings", run -> run.totals().relief().get(0).openings()),
            drip(Kind.VOLUME, "daily", DripFigures::daily),
            drip(NONE, "lastFlow", DripFigures::lastFlow),
            drip(Kind.POWER, "heat", DripFigures::heat),
            drip(NONE, "flow", DripFigures::flow),
            drip(NONE, "netFlow", DripFigures::netFlow),
            drip(NONE, "dropsASecond", drip -> drip.flow() / DripFigures.DROP),
            drip(NONE, "fastest", DripFigures::fastest),
            drip(Kind.VOLUME, "fullestHour", DripFigures::fullestHour),
            dripIs("drySoFar", DripFigures::drySoFar),
            dripIs("dripsAboveReseat", DripFigures::dripsAboveReseat),
            dripIs("dripsJustAboveReseat", DripFigures::dripsJustAboveReseat),
            dripIs("dripsUnheated", DripFigures::dripsUnheated),
            dripIs("fallsFast", DripFigures::fallsFast),
            // What the vessel does.
            result(Kind.VOLUME, "most", run -> run.extremes().mostVesselWater().value()),
            vessel(Kind.SHARE, "fullAtStart", VesselFigures::fullAtStart),
            vessel(Kind.GAUGE_PRESSURE, "gas", VesselFigures::gasAtStart),
            run(Kind.GAUGE_PRESSURE, "lifted", run -> run.pressureAt(Event.Kind.VESSEL_LIFTED)),
            run(Kind.GAUGE_PRESSURE, "stopped", run -> run.pressureAt(Event.Kind.VESSEL_BOTTOMED_OUT)),
            vessel(NONE, "boyle", VesselFigures::boyle),
            vessel(Kind.PRESSURE_DIFFERENCE, "lostInAYear", VesselFigures::lostInAYear),
            house(NONE, "years", 1, (house, n) -> new VesselFigures(house).years(n[0])),
            vessel(Kind.PRESSURE_DIFFERENCE, "saving", VesselFigures::saving),
            vessel(NONE, "eachLitreSavesLess", vessel -> vessel.eachLitreSavesLess() ? 1 : 0),
            vessel(Kind.VOLUME, "smallestDry", VesselFigures::smallestDry),
            vessel(Kind.VOLUME, "wholeLitres", VesselFigures::wholeLitres),
            vessel(Kind.GAUGE_PRESSURE, "dryPeak", VesselFigures::dryPeak));

    private Figures() {}

    static Optional<Figure> named(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    static Set<String> names() {
        return ALL.keySet();
    }

    private static Entry<String, Figure> number(Kind kind, String name, int count, ToDoubleFunction<double[]> value) {
        return Map.entry(
                name,
                new Figure(Optional.ofNullable(kind), false, count, (house, numbers) -> value.applyAsDouble(numbers)));
    }

    private static Entry<String, Figure> house(Kind kind, String name, int count, Body value) {
        return Map.entry(name, new Figure(Optional.ofNullable(kind), true, count, value));
    }

    private static Entry<String, Figure> result(Kind kind, String name, ToDoubleFunction<RunResult> value) {
        return house(kind, name, 0, (house, numbers) -> value.applyAsDouble(house.run()));
    }

    private static Entry<String, Figure> run(Kind kind, String name, ToDoubleFunction<RunFigures> value) {
        return result(kind, name, run -> value.applyAsDouble(new RunFigures(run)));
    }

    private static Entry<String, Figure> drip(Kind kind, String name, ToDoubleFunction<DripFigures> value) {
        return result(kind, name, run -> value.applyAsDouble(new DripFigures(run)));
    }

    private static Entry<String, Figure> vessel(Kind kind, String name, ToDoubleFunction<VesselFigures> value) {
        return house(kind, name, 0, (house, numbers) -> value.applyAsDouble(new VesselFigures(house)));
    }

    private static Entry<String, Figure> is(String name, Predicate<RunFigures> value) {
        return run(NONE, name, run -> value.test(run) ? 1 : 0);
    }

    private static Entry<String, Figure> dripIs(String name, Predicate<DripFigures> value) {
        return drip(NONE, name, run -> value.test(run) ? 1 : 0);
    }

    private static Entry<String, Figure> at(Kind kind, String name, Channel channel) {
        return house(kind, name, 1, (house, time) -> new RunFigures(house.run()).at(channel, time[0]));
    }

    private static Entry<String, Figure> when(String name, Channel channel) {
        return house(Kind.TIME, name, 1, (house, value) -> new RunFigures(house.run()).timeWhen(channel, value[0]));
    }
}
