package io.github.heatswell.scenarios.report;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.choice.FormulaAnswer;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselFormula;
import io.github.heatswell.study.SizeCertainty;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which vessel, for other programs: {@code sizing.json}, in SI units as {@code summary.json}. */
final class SizingJson {

    private final VesselAnswer answer;
    private final SizingResult sizing;
    private final double atmosphere;
    private final Json json;

    private SizingJson(VesselAnswer answer, Json json) {
        this.answer = answer;
        this.sizing = answer.sizing();
        this.atmosphere = answer.scenario().system().site().atmosphere();
        this.json = json;
    }

    static void write(VesselAnswer answer, OutputStream out) throws IOException {
        try (Json json = new Json(out)) {
            new SizingJson(answer, json).write();
        }
    }

    private void write() throws IOException {
        json.object(() -> {
            hazard("hazard_as_it_is", Optional.of(answer.asItIs()));
            hazard("hazard_with_vessel", answer.proposed());
            json.text("scenario", answer.scenario().name()).text("heatswell_version", Version.number());
            json.text("outcome", lower(sizing.outcome()));
            pressure("supply_static", sizing.supplyStatic().absolute(atmosphere));
            json.number("run_counted_s", answer.counted().toSeconds());
            json.array("bounds", this::bounds);
            optional("smallest", sizing.smallest());
            optional("smallest_on_sale", sizing.smallestOnSale());
            optional("recommended", answer.recommended());
            certainty();
            json.array("sizes", () -> {
                for (SizingResult.Vessel size : sizing.nominal()) {
                    json.object(() -> vessel(size));
                }
            });
            lowerSupply();
            json.array("formulas", () -> {
                for (FormulaAnswer formula : answer.formulas()) {
                    json.object(() -> formula(formula));
                }
            });
            json.object("water", this::water);
            OpenBalance.write(answer.balances(), json);
        });
    }

    private void hazard(String name, Optional<RunResult> run) throws IOException {
        Optional<String> kind = run.flatMap(RunResult::hazard).map(event -> lower(event.kind()));
        if (kind.isPresent()) {
            json.text(name, kind.get());
        } else {
            json.nothing(name);
        }
    }

    private void bounds() throws IOException {
        for (SizingTarget.Bound bound : sizing.target().bounds()) {
            json.object(() -> {
                json.text("rule", lower(bound.rule())).text("device", bound.device());
                pressure("pressure", bound.absolute());
                source(bound.source());
            });
        }
    }

    private void certainty() throws IOException {
        if (answer.certainty().isEmpty()) {
            json.nothing("certainty");
            return;
        }
        SizeCertainty found = answer.certainty().get();
        json.object("certainty", () -> {
            json.flag("usual_uncertainties", found.usual()).number("share_above_allowed", SizeCertainty.HOLDS);
            json.array("tried", () -> {
                for (SizeCertainty.Tried tried : found.tried()) {
                    json.object(() -> json.number("volume_m3", tried.volume())
                            .count("above_limit", tried.above().count())
                            .count("of", tried.above().of())
                            .flag("holds", tried.holds()));
                }
            });
        });
    }

    private void optional(String name, Optional<SizingResult.Vessel> vessel) throws IOException {
        if (vessel.isPresent()) {
            json.object(name, () -> vessel(vessel.get()));
        } else {
            json.nothing(name);
        }
    }

    private void vessel(SizingResult.Vessel vessel) throws IOException {
        json.number("volume_m3", vessel.volume());
        pressure("precharge", vessel.precharge().absolute(atmosphere));
        pressure("peak", vessel.peakAbsolute());
        json.number("margin_pa", vessel.margin())
                .flag("peak_or_higher", vessel.higher())
                .flag("enough", vessel.suffices());
        if (vessel.price().isPresent()) {
            json.number("price", vessel.price().get().amount().doubleValue())
                    .text("currency", vessel.price().get().currency());
        } else {
            json.nothing("price").nothing("currency");
        }
    }

    private void lowerSupply() throws IOException {
        if (sizing.lowerSupplyTo().isPresent()) {
            json.object(
                    "lower_supply_to",
                    () -> pressure("pressure", sizing.lowerSupplyTo().get().absolute(atmosphere)));
        } else {
            json.nothing("lower_supply_to");
        }
    }

    private void formula(FormulaAnswer formula) throws IOException {
        json.text("name", formula.name()).text("remark", formula.remark());
        if (formula.result().isPresent()) {
            json.object("result", () -> result(formula.result().get()));
        } else {
            json.nothing("result");
        }
        json.array("differences", () -> {
            for (SizingReconciliation.Term term :
                    formula.differences().map(SizingReconciliation::terms).orElse(List.of())) {
                json.object(() -> json.text("effect", lower(term.effect()))
                        .text("description", term.effect().description())
                        .number("volume_m3", term.volume()));
            }
        });
    }

    private void result(VesselFormula.Result result) throws IOException {
        json.text("expression", result.expression()).number("volume_m3", result.volume());
        pressure("precharge", result.precharge().absolute(atmosphere));
        source(result.source());
        json.array("inputs", () -> {
            for (VesselFormula.Input input : result.inputs()) {
                json.object(() -> {
                    json.text("symbol", input.symbol())
                            .number("value", input.value())
                            .text("unit", input.unit())
                            .text("meaning", input.meaning());
                    source(input.source());
                });
            }
        });
    }

    private void source(Citation source) throws IOException {
        json.text("source", source.text()).text("source_standing", lower(source.standing()));
    }

    private void water() throws IOException {
        Costs costs = answer.scenario().costs();
        json.text("currency", costs.currency())
                .number("price_per_m3", costs.water().doubleValue())
                .flag("price_invented", costs.waterInvented())
                .flag("vessel_prices_invented", costs.vesselsInvented());
        yearly("as_it_is", answer.waterAsItIs(), costs);
        yearly("with_vessel", answer.waterProposed(), costs);
    }

    private void yearly(String name, Optional<YearlyWater> water, Costs costs) throws IOException {
        if (water.isPresent()) {
            double volume = water.get().volume();
            json.object(
                    name,
                    () -> json.number("given_off_yearly_m3", volume).number("price_yearly", costs.ofWater(volume)));
        } else {
            json.nothing(name);
        }
    }

    private void pressure(String name, double absolute) throws IOException {
        json.number(name + "_gauge_pa", absolute - atmosphere).number(name + "_absolute_pa", absolute);
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
