package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What stands above everything else a report says of a run: hazards with what to do, each advice once, then a limit passed. */
final class Alarms {

    private static final String HAZARD = "HAZARD";
    private static final String EXCEEDED = "working-pressure-exceeded";

    private final List<Finding> findings;
    private final QuantityFormat shown;
    private final Set<String> advised = new LinkedHashSet<>();
    private final List<AlarmNote> notes = new ArrayList<>();

    private Alarms(List<Finding> findings, QuantityFormat shown) {
        this.findings = findings;
        this.shown = shown;
    }

    /**
     * The alarms of a run.
     *
     * @param run what the run found
     * @param findings the findings of the run
     * @param shown how quantities are written
     */
    static List<AlarmNote> of(RunSummary run, List<Finding> findings, QuantityFormat shown) {
        Alarms alarms = new Alarms(Hazards.among(findings), shown);
        run.hazard().ifPresent(event -> alarms.event(HAZARD, event, run));
        alarms.findings.stream()
                .filter(finding -> !Hazards.isEvent(finding)
                        || finding.id().equals(EXCEEDED)
                                && run.first(EventKind.WORKING_PRESSURE_EXCEEDED)
                                        .isEmpty())
                .forEach(finding -> alarms.add(HAZARD, finding.sentence().text(shown), Optional.of(finding)));
        boolean given = run.system().tank().workingPressureGiven(); // if not, a finding asks to read the plate
        run.first(EventKind.WORKING_PRESSURE_EXCEEDED).filter(event -> given).ifPresent(event -> {
            boolean hazard =
                    alarms.findings.stream().anyMatch(finding -> finding.id().equals(EXCEEDED));
            alarms.event(hazard ? HAZARD : "WARNING", event, run);
        });
        OpenBalance.of(run.audit()).ifPresent(text -> alarms.notes.add(new AlarmNote(OpenBalance.WORD, text)));
        return alarms.notes;
    }

    /**
     * The alarms of a house as described, for answers that are not about one run.
     *
     * @param scenario the house, with what is not known of it
     * @param shown how quantities are written
     */
    static List<AlarmNote> of(Scenario scenario, QuantityFormat shown) {
        Alarms alarms = new Alarms(Hazards.among(Findings.of(scenario.system(), scenario.doubts())), shown);
        alarms.findings.forEach(finding -> alarms.add(HAZARD, finding.sentence().text(shown), Optional.of(finding)));
        return alarms.notes;
    }

    /**
     * Alarms as paragraphs of a terminal.
     *
     * @param alarms what to say
     * @param when what follows the word, such as {@code " as it is"}; may be empty
     */
    static String lines(List<AlarmNote> alarms, String when) {
        StringBuilder text = new StringBuilder();
        alarms.forEach(note -> text.append(
                        Wrapped.lines(Printable.line(note.word() + when + ": " + note.text()), "", "        "))
                .append('\n'));
        return text.toString();
    }

    /** What happened, with the advice of the finding that tells of it. */
    private void event(String word, Event event, RunSummary run) {
        boolean limit = event.kind() == EventKind.WORKING_PRESSURE_EXCEEDED;
        Optional<Finding> told = findings.stream()
                .filter(Hazards::isEvent)
                .filter(finding -> finding.id().equals(EXCEEDED) == limit)
                .findFirst();
        add(word, Alarm.of(event, run, shown), told);
    }

    private void add(String word, String what, Optional<Finding> told) {
        String advice = told.filter(finding -> finding.severity() == Severity.HAZARD)
                .map(finding -> finding.advice().text(shown))
                .filter(advised::add)
                .map(text -> " " + text)
                .orElse("");
        notes.add(new AlarmNote(word, PageWords.capitalised(what) + advice));
    }
}
