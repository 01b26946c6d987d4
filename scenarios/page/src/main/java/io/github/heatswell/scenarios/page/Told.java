package io.github.heatswell.scenarios.page;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/** A run as the page takes it: numbers for trace and drawing, and the sentences that the command prints about the same run. */
final class Told {

    /** The words for a regime: a trace has one at every sample. */
    private static final Map<Trace.Regime, String> REGIMES = Arrays.stream(Trace.Regime.values())
            .collect(Collectors.toMap(
                    regime -> regime, Described::word, (one, same) -> one, () -> new EnumMap<>(Trace.Regime.class)));

    private final Scenario scenario;
    private final RunResult run;
    private final QuantityFormat format;

    Told(Scenario scenario, RunResult run) {
        this.scenario = scenario;
        this.run = run;
        format = QuantityFormat.unicode(scenario.units());
    }

    Values values() {
        return new Values()
                .with("trace", trace())
                .each("events", run.events(), this::event)
                .with("peak", run.peak().value())
                .with("peakTime", run.summary().peakTime())
                .with("discharged", run.totals().relieved())
                .with("openings", run.totals().openings())
                .each("relief", run.totals().relief(), Told::relief)
                .each("limits", Limit.reliefSet(run.summary()).stream().toList(), this::limit)
                .with("working", limit(Limit.workingPressure(run.summary())))
                .with("said", said());
    }

    private static Values relief(Totals.Relief valve) {
        return new Values().with("name", valve.name()).with("discharged", valve.volume());
    }

    private Values trace() {
        Trace trace = run.trace();
        Values columns = new Values();
        for (Channel channel : Channel.values()) {
            columns.with(channel.name(), trace.values(channel));
        }
        return new Values()
                .with("step", trace.grid().step())
                .with("end", trace.grid().end())
                .with("count", trace.count())
                .with("atmosphere", scenario.system().site().atmosphere())
                .with("begins", scenario.system().start().timeOfDay())
                .with(
                        "byClock",
                        Moments.of(scenario.system(), trace.grid().end()).byClock())
                .texts("regimes", trace.regimes().stream().map(REGIMES::get).toList())
                .with("columns", columns);
    }

    private Values event(Event event) {
        return new Values()
                .with("time", event.time())
                .with("kind", event.kind().name())
                .with("words", spelled(event.kind().description()))
                .with("device", event.device())
                .with("pressure", run.gauge(event.pressureAbsolute()))
                .with("temperature", event.waterTemperature())
                .with("endsRun", event.kind().endsRun());
    }

    private Values limit(Limit limit) {
        return new Values()
                .with("name", limit.name())
                .with("pressure", limit.gauge())
                .with("reached", limit.reached())
                .with("room", text(limit.room(run.summary())));
    }

    private Values said() {
        Narrative narrative = Narrative.of(run.summary(), scenario.doubts());
        return new Values()
                .with(
                        "verdict",
                        Narrative.verdict(scenario.question(), run.summary(), scenario.doubts())
                                .map(this::spelled)
                                .map(Told::onPage)
                                .orElse(""))
                .with("headline", text(narrative.headline()))
                .each("alarms", narrative.alarms(), this::alarm)
                .texts(
                        "remarks",
                        narrative.remarkTexts(format).stream().map(Told::onPage).toList())
                .with("facts", text(Narrative.factsBesideRemarks(run.summary())))
                .each("findings", narrative.findings(), this::finding);
    }

    private Values alarm(Alarm alarm) {
        return new Values()
                .with("word", alarm.level().word())
                .with("what", text(alarm.what()))
                .with("advice", alarm.advice().map(this::text).orElse(""));
    }

    private Values finding(Finding finding) {
        return new Values()
                .with("severity", Described.word(finding.severity()))
                .with("sentence", text(finding.sentence()))
                .with("advice", text(finding.advice()))
                .with("source", spelled(finding.authority().source().text()));
    }

    private String text(Statement statement) {
        return onPage(statement.text(format));
    }

    /** Whoever holds the page has no command at hand: what it would say stands further down. */
    private static String onPage(String words) {
        return words.replace("'heatswell size'", "“Which vessel?” on this page");
    }

    private String spelled(String words) {
        return scenario.units().spelled(words);
    }
}
