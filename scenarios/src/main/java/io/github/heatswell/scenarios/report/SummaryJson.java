package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;

/**
 * Everything a run found but its trace, for other programs: {@code summary.json}. Values are in SI units, which the names
 * end in; times count from the start of the run. The fields are listed in the module's README.
 */
final class SummaryJson {

    private final Scenario scenario;
    private final RunSummary result;
    private final RunFindings findings;
    private final Narrative narrative;

    private SummaryJson(Scenario scenario, RunFindings findings) {
        this.scenario = scenario;
        this.result = findings.summary();
        this.findings = findings;
        this.narrative = findings.narrative(scenario.doubts());
    }

    static Json of(Scenario scenario, RunFindings findings) {
        return new SummaryJson(scenario, findings).summary();
    }

    private Json summary() {
        RunSummary.Extremes extremes = result.extremes();
        return new Json()
                .with(
                        "hazard",
                        result.hazard()
                                .map(event -> event(event)
                                        .with("meaning", event.kind().meaning())))
                .with("headline", narrative.headline().text(scenario.units()))
                .with(
                        "scenario",
                        new Json()
                                .with("name", scenario.name())
                                .with("title", scenario.title())
                                .with("question", scenario.question())
                                .with("expect", scenario.expectation()))
                .with("heatswell_version", Version.number())
                .with("run", run())
                .with(
                        "start",
                        pressure(findings.observed().startPressureAbsolute())
                                .with("water_temperature_k", findings.observed().startTemperature()))
                .with("highest_pressure", pressure(extremes.highestPressure()))
                .with("lowest_pressure", pressure(extremes.lowestPressure()))
                .with("highest_temperature", extreme("water_temperature_k", extremes.highestTemperature()))
                .with("most_vessel_water", extreme("volume_m3", extremes.mostVesselWater()))
                .with("relief_set", Limit.reliefSet(result).map(this::limit))
                .with("working_pressure", limit(Limit.workingPressure(result)))
                .with("test_pressure", limit(Limit.testPressure(result)))
                .findings(narrative.findings(), scenario.units())
                .with("totals", totals(result.totals()))
                .with(
                        "draws",
                        new Json()
                                .with("started", result.count(Event.Kind.DRAW_STARTED))
                                .with("cut_short", result.totals().drawsCutShort())
                                .with("too_cool", findings.observed().drawsTooCool()))
                .each("events", result.events(), this::event)
                .with("audit", audit())
                .with("numerics", numerics())
                .each(
                        "assumptions",
                        scenario.assumptions(),
                        assumption -> new Json()
                                .with("field", assumption.field())
                                .with("value", inUnits(assumption.value()))
                                .with("basis", inUnits(assumption.basis())))
                .each(
                        "changes",
                        scenario.changes(),
                        change -> new Json().with("field", change.field()).with("value", change.value()))
                .each(
                        "uncertain",
                        scenario.uncertain(),
                        field -> new Json()
                                .with("field", field.field())
                                .with("value", field.text())
                                .with("taken", field.centre())
                                .with("low", field.low())
                                .with("high", field.high()))
                .with("input", scenario.source());
    }

    private String inUnits(String words) {
        return PageWords.inUnits(words, QuantityFormat.ascii(scenario.units()));
    }

    private Json run() {
        return new Json()
                .with("asked_s", scenario.duration().toNanos() * 1e-9)
                .with("covered_s", result.end())
                .with("sample_s", scenario.sample().toNanos() * 1e-9)
                .with("samples", findings.observed().samples())
                .with("air_absolute_pa", result.system().site().atmosphere());
    }

    private Json pressure(RunSummary.Extreme extreme) {
        return pressure(extreme.value()).with("time_s", extreme.time());
    }

    private Json pressure(double absolute) {
        return new Json().pressure("pressure", absolute, result.system().site().atmosphere());
    }

    private static Json extreme(String name, RunSummary.Extreme extreme) {
        return new Json().with(name, extreme.value()).with("time_s", extreme.time());
    }

    private Json limit(Limit limit) {
        double atmosphere = result.system().site().atmosphere();
        return new Json()
                .with("of", limit.name())
                .pressure("pressure", limit.gauge() + atmosphere, atmosphere)
                .with("margin_pa", limit.margin())
                .with("reached", limit.reached());
    }

    private Json totals(Totals totals) {
        return new Json()
                .with("relieved_m3", totals.relieved())
                .with("relieved_while_fed_m3", findings.observed().relievedWhileFed())
                .with("drawn_m3", totals.drawn())
                .with("leaked_m3", totals.leaked())
                .with("let_in_m3", totals.letIn())
                .with("returned_m3", totals.returned())
                .with("heat_delivered_j", totals.heatDelivered())
                .with("heater_input_j", totals.heaterInput())
                .with("heat_to_water_j", totals.heatToWater())
                .with("heat_lost_j", totals.heatLost())
                .each(
                        "relief_valves",
                        totals.relief(),
                        valve -> new Json()
                                .with("name", valve.name())
                                .with("relieved_m3", valve.volume())
                                .with("relieved_kg", valve.mass())
                                .with("openings", valve.openings()));
    }

    private Json event(Event event) {
        return new Json()
                .with("time_s", event.time())
                .with("kind", event.kind())
                .with("description", event.kind().description())
                .with("device", event.device())
                .pressure(
                        "pressure",
                        event.pressureAbsolute(),
                        result.system().site().atmosphere())
                .with("water_temperature_k", event.waterTemperature())
                .with("opened_by", event.cause().map(Event.OpeningCause::label));
    }

    private Json audit() {
        return new Json()
                .with("closes", result.audit().closes())
                .with("warning", warning())
                .with("mass_residual_kg", result.audit().massResidual())
                .with("mass_moved_kg", result.audit().massMoved())
                .with("energy_residual_j", result.audit().energyResidual())
                .with("energy_moved_j", result.audit().energyMoved());
    }

    private String warning() {
        return narrative.alarms().stream()
                .filter(alarm -> alarm.level() == Alarm.Level.NOT_RELIABLE)
                .map(alarm -> alarm.text().text(UnitSystem.SI))
                .findFirst()
                .orElse("");
    }

    private Json numerics() {
        return new Json()
                .with("method", result.numerics().method())
                .with("relative_tolerance", result.numerics().relativeTolerance())
                .with("evaluations", result.numerics().evaluations())
                .with("steps", result.numerics().steps())
                .with("segments", result.numerics().segments());
    }
}
