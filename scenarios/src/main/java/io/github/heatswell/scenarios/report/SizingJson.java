package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.choice.SupplyTable;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselAnswer.FormulaAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselFormula;
import io.github.heatswell.study.SizeCertainty;
import java.util.List;
import java.util.OptionalDouble;

/** Which vessel, for other programs: {@code sizing.json}, in SI units as {@code summary.json}. */
final class SizingJson {

    private final VesselAnswer answer;
    private final double atmosphere;

    private SizingJson(VesselAnswer answer) {
        this.answer = answer;
        this.atmosphere = answer.scenario().system().site().atmosphere();
    }

    static Json of(VesselAnswer answer) {
        return new SizingJson(answer).sizing(answer.sizing());
    }

    private Json sizing(SizingResult sizing) {
        return new Json()
                .with("hazard_as_it_is", answer.asItIs().hazard().map(Event::kind))
                .with(
                        "hazard_with_vessel",
                        answer.proposed().flatMap(RunResult::hazard).map(Event::kind))
                .program(answer.scenario().name())
                .with(
                        "answer",
                        Narrative.of(answer.advice())
                                .answer()
                                .text(answer.scenario().units()))
                .with("outcome", sizing.outcome())
                .pressure("supply_static", sizing.supplyStatic().absolute(atmosphere), atmosphere)
                .with("run_counted_s", (double) answer.counted().toSeconds())
                .each("bounds", sizing.target().bounds(), this::bound)
                .with("smallest", sizing.smallest().map(this::vessel))
                .with("smallest_on_sale", sizing.smallestOnSale().map(this::vessel))
                .with("recommended", answer.recommended().map(this::vessel))
                .with("against", answer.against().map(other -> vessel(other.vessel())))
                .with("certainty", answer.certainty().map(SizingJson::certainty))
                .each("sizes", sizing.nominal(), this::vessel)
                .with(
                        "lower_supply_to",
                        sizing.lowerSupplyTo()
                                .map(supply ->
                                        new Json().pressure("pressure", supply.absolute(atmosphere), atmosphere)))
                .with("lower_supply", answer.supplies().cheapest().map(this::lower))
                .each("supplies", answer.supplies().columns(), this::column)
                .each("formulas", answer.formulas(), this::formula)
                .with("water", water(answer.scenario().costs()))
                .balances(answer.balances());
    }

    /** The lower supply that is advised, with the vessel that goes with it. */
    private Json lower(SizeAdvice.LowerSupply lower) {
        return new Json()
                .pressure("reducing_valve", lower.supply().valve().absolute(atmosphere), atmosphere)
                .with("reducing_valve_fitted", lower.supply().fitted())
                .pressure("supply_static", lower.supply().standing().absolute(atmosphere), atmosphere)
                .with("volume_m3", lower.volume())
                .pressure("precharge", lower.precharge().absolute(atmosphere), atmosphere)
                .with("present_vessel", lower.owned())
                .with("price", lower.price().map(price -> price.amount().doubleValue()))
                .with("currency", lower.price().map(NominalSize.Price::currency))
                .with(
                        "certainty",
                        answer.lowered().flatMap(VesselAnswer::certainty).map(SizingJson::certainty))
                .with(
                        "hazard_with_vessel",
                        answer.lowered()
                                .flatMap(VesselAnswer::proposed)
                                .flatMap(RunResult::hazard)
                                .map(Event::kind));
    }

    /** What the sizes would do at a supply; the present one has no setting. */
    private Json column(SupplyTable.Column column) {
        return new Json()
                .with(
                        "reducing_valve",
                        column.setting()
                                .map(setting ->
                                        new Json().pressure("pressure", setting.absolute(atmosphere), atmosphere)))
                .pressure("supply_static", column.sizing().supplyStatic().absolute(atmosphere), atmosphere)
                .known("holds_from_m3", column.sure())
                .each("sizes", column.sizing().nominal(), this::vessel);
    }

    private Json bound(SizingTarget.Bound bound) {
        return new Json()
                .with("rule", bound.rule())
                .with("device", bound.device())
                .pressure("pressure", bound.absolute(), atmosphere)
                .source(bound.source());
    }

    private static Json certainty(SizeCertainty found) {
        return new Json()
                .with("usual_uncertainties", found.usual())
                .with("share_above_allowed", SizeCertainty.HOLDS)
                .each(
                        "tried",
                        found.tried(),
                        tried -> new Json()
                                .with("volume_m3", tried.volume())
                                .with("above_limit", tried.above().count())
                                .with("of", tried.above().of())
                                .with("holds", tried.holds()))
                .with("needed", found.needed().map(SizingJson::needed));
    }

    private static Json needed(SizeCertainty.Range range) {
        return range(range.least(), range.most())
                .with("vague", range.isVague())
                .with(
                        "reading",
                        range.reading()
                                .map(reading ->
                                        range(reading.least(), reading.most()).with("name", reading.name())));
    }

    private static Json range(double least, OptionalDouble most) {
        return new Json().with("least_m3", least).known("most_m3", most);
    }

    private Json vessel(SizingResult.Vessel vessel) {
        return new Json()
                .with("volume_m3", vessel.volume())
                .pressure("precharge", vessel.precharge().absolute(atmosphere), atmosphere)
                .pressure("peak", vessel.peakAbsolute(), atmosphere)
                .with("margin_pa", vessel.margin())
                .with("peak_or_higher", vessel.higher())
                .with("would_drip", wouldDrip(vessel))
                .with("enough", vessel.suffices())
                .with("price", vessel.price().map(price -> price.amount().doubleValue()))
                .with("currency", vessel.price().map(price -> price.currency()));
    }

    /** Whether a relief valve opens before that peak. */
    private boolean wouldDrip(SizingResult.Vessel vessel) {
        return vessel.peakAbsolute() - atmosphere
                >= Limit.reliefSetGauge(answer.scenario().system()).orElse(Double.POSITIVE_INFINITY);
    }

    private Json formula(FormulaAnswer formula) {
        return new Json()
                .with("name", formula.name())
                .with("remark", formula.remark())
                .with("result", formula.result().map(this::result))
                .each(
                        "differences",
                        formula.differences().map(SizingReconciliation::terms).orElse(List.of()),
                        term -> new Json()
                                .with("effect", term.effect())
                                .with("description", term.effect().description())
                                .with("volume_m3", term.volume()));
    }

    private Json result(VesselFormula.Result result) {
        return new Json()
                .with("expression", said(result.expression()))
                .with("volume_m3", result.volume())
                .pressure("precharge", result.precharge().absolute(atmosphere), atmosphere)
                .source(result.source())
                .each(
                        "inputs",
                        result.inputs(),
                        input -> new Json()
                                .with("symbol", input.symbol())
                                .with("value", input.value())
                                .with("unit", input.unit())
                                .with("meaning", said(input.meaning()))
                                .source(input.source()));
    }

    /** What is said in words, in the units of the house. */
    private String said(String words) {
        return PageWords.inUnits(words, CommandResult.onScreen(answer.scenario().units()));
    }

    private Json water(Costs costs) {
        return new Json()
                .with("currency", costs.currency())
                .with("price_per_m3", costs.water().doubleValue())
                .with("price_invented", costs.waterInvented())
                .with("vessel_prices_invented", costs.vesselsInvented())
                .with("as_it_is", answer.waterAsItIs().map(water -> yearly(water, costs)))
                .with("with_vessel", answer.waterProposed().map(water -> yearly(water, costs)));
    }

    private static Json yearly(YearlyWater water, Costs costs) {
        return new Json()
                .with("discharged_yearly_m3", water.volume())
                .with("price_yearly", costs.ofWater(water.volume()));
    }
}
