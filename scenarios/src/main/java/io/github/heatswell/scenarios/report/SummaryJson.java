package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.scenarios.file.Assumption;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.UncertainField;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * Everything a run found but its trace, for other programs: {@code summary.json}. Values are in SI units, which the names
 * end in; times count from the start of the run. The fields are listed in the module's README.
 */
final class SummaryJson {

    private final Scenario scenario;
    private final RunSummary result;
    private final RunFindings findings;
    private final Narrative narrative;
    private final Json json;

    private SummaryJson(Scenario scenario, RunFindings findings, Json json) {
        this.scenario = scenario;
        this.result = findings.summary();
        this.findings = findings;
        this.narrative = findings.narrative(scenario.doubts());
        this.json = json;
    }

    static void write(Scenario scenario, RunFindings findings, OutputStream out) throws IOException {
        try (Json json = new Json(out)) {
            new SummaryJson(scenario, findings, json).write();
        }
    }

    private void write() throws IOException {
        json.object(() -> {
            hazard();
            json.text("headline", narrative.headline().text(UnitSystem.SI));
            scenario();
            run();
            extremes(result.extremes());
            limits();
            FindingsJson.write(narrative.findings(), json);
            totals(result.totals());
            draws();
            events();
            audit();
            numerics();
            assumptions();
            changes();
            uncertain();
            json.text("input", scenario.source());
        });
    }

    private void hazard() throws IOException {
        Optional<Event> hazard = result.hazard();
        if (hazard.isEmpty()) {
            json.nothing("hazard");
            return;
        }
        json.object("hazard", () -> {
            event(hazard.get());
            json.text("meaning", hazard.get().kind().meaning());
        });
    }

    private void scenario() throws IOException {
        json.object(
                "scenario",
                () -> json.text("name", scenario.name())
                        .text("title", scenario.title())
                        .text("question", scenario.question())
                        .text("expect", scenario.expectation()));
        json.text("heatswell_version", Version.number());
    }

    private void run() throws IOException {
        json.object(
                "run",
                () -> json.number("asked_s", scenario.duration().toNanos() * 1e-9)
                        .number("covered_s", result.end())
                        .number("sample_s", scenario.sample().toNanos() * 1e-9)
                        .count("samples", findings.observed().samples())
                        .number("air_absolute_pa", result.system().site().atmosphere()));
        json.object("start", () -> {
            pressure("pressure", findings.observed().startPressureAbsolute());
            json.number("water_temperature_k", findings.observed().startTemperature());
        });
    }

    private void extremes(Extremes extremes) throws IOException {
        json.object("highest_pressure", () -> pressure(extremes.highestPressure()));
        json.object("lowest_pressure", () -> pressure(extremes.lowestPressure()));
        json.object(
                "highest_temperature",
                () -> json.number(
                                "water_temperature_k",
                                extremes.highestTemperature().value())
                        .number("time_s", extremes.highestTemperature().time()));
        json.object(
                "most_vessel_water",
                () -> json.number("volume_m3", extremes.mostVesselWater().value())
                        .number("time_s", extremes.mostVesselWater().time()));
    }

    private void pressure(Extremes.Extreme extreme) throws IOException {
        pressure("pressure", extreme.value());
        json.number("time_s", extreme.time());
    }

    private void pressure(String name, double absolute) throws IOException {
        json.number(name + "_gauge_pa", result.gauge(absolute)).number(name + "_absolute_pa", absolute);
    }

    private void limits() throws IOException {
        Optional<Limit> reliefSet = Limit.reliefSet(result);
        if (reliefSet.isPresent()) {
            limit("relief_set", reliefSet.get());
        } else {
            json.nothing("relief_set");
        }
        limit("working_pressure", Limit.workingPressure(result));
        limit("test_pressure", Limit.testPressure(result));
    }

    private void limit(String name, Limit limit) throws IOException {
        json.object(name, () -> {
            json.text("of", limit.name());
            pressure("pressure", limit.gauge() + result.system().site().atmosphere());
            json.number("margin_pa", limit.margin()).flag("reached", limit.reached());
        });
    }

    private void totals(Totals totals) throws IOException {
        json.object("totals", () -> {
            json.number("relieved_m3", totals.relieved())
                    .number("relieved_while_fed_m3", findings.observed().relievedWhileFed())
                    .number("drawn_m3", totals.drawn())
                    .number("leaked_m3", totals.leaked())
                    .number("let_in_m3", totals.letIn())
                    .number("returned_m3", totals.returned())
                    .number("heat_delivered_j", totals.heatDelivered())
                    .number("heater_input_j", totals.heaterInput())
                    .number("heat_to_water_j", totals.heatToWater())
                    .number("heat_lost_j", totals.heatLost());
            json.array("relief_valves", () -> {
                for (Totals.Relief valve : totals.relief()) {
                    json.object(() -> json.text("name", valve.name())
                            .number("relieved_m3", valve.volume())
                            .number("relieved_kg", valve.mass())
                            .count("openings", valve.openings()));
                }
            });
        });
    }

    private void draws() throws IOException {
        json.object(
                "draws",
                () -> json.count("started", result.count(Event.Kind.DRAW_STARTED))
                        .count("cut_short", result.totals().drawsCutShort())
                        .count("too_cool", findings.observed().drawsTooCool()));
    }

    private void events() throws IOException {
        json.array("events", () -> {
            for (Event event : result.events()) {
                json.object(() -> event(event));
            }
        });
    }

    private void event(Event event) throws IOException {
        json.number("time_s", event.time())
                .text("kind", event.kind().name().toLowerCase(Locale.ROOT))
                .text("description", event.kind().description())
                .text("device", event.device());
        pressure("pressure", event.pressureAbsolute());
        json.number("water_temperature_k", event.waterTemperature());
        if (event.cause().isPresent()) {
            json.text("opened_by", event.cause().get().label());
        } else {
            json.nothing("opened_by");
        }
    }

    private void audit() throws IOException {
        json.object(
                "audit",
                () -> json.flag("closes", result.audit().closes())
                        .text("warning", warning())
                        .number("mass_residual_kg", result.audit().massResidual())
                        .number("mass_moved_kg", result.audit().massMoved())
                        .number("energy_residual_j", result.audit().energyResidual())
                        .number("energy_moved_j", result.audit().energyMoved()));
    }

    private String warning() {
        return narrative.alarms().stream()
                .filter(alarm -> alarm.level() == Alarm.Level.NOT_RELIABLE)
                .map(alarm -> alarm.text().text(UnitSystem.SI))
                .findFirst()
                .orElse("");
    }

    private void numerics() throws IOException {
        json.object(
                "numerics",
                () -> json.text("method", result.numerics().method())
                        .number("relative_tolerance", result.numerics().relativeTolerance())
                        .count("evaluations", result.numerics().evaluations())
                        .count("steps", result.numerics().steps())
                        .count("segments", result.numerics().segments()));
    }

    private void assumptions() throws IOException {
        json.array("assumptions", () -> {
            for (Assumption assumption : scenario.assumptions()) {
                json.object(() -> json.text("field", assumption.field())
                        .text("value", assumption.value())
                        .text("basis", assumption.basis()));
            }
        });
    }

    private void changes() throws IOException {
        json.array("changes", () -> {
            for (Change change : scenario.changes()) {
                json.object(() -> json.text("field", change.field()).text("value", change.value()));
            }
        });
    }

    private void uncertain() throws IOException {
        json.array("uncertain", () -> {
            for (UncertainField field : scenario.uncertain()) {
                json.object(() -> json.text("field", field.field())
                        .text("value", field.text())
                        .text("taken", field.centre())
                        .text("low", field.low())
                        .text("high", field.high()));
            }
        });
    }
}
