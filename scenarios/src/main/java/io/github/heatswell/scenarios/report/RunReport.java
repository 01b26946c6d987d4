package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Severity;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Assumption;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;

/**
 * What a run found, for reading on a terminal of 80 columns. Hazards come first.
 */
final class RunReport {

    private final Scenario scenario;
    private final RunFindings findings;
    private final RunSummary result;
    private final Narrative narrative;
    private final Balances advice;
    private final UnitSystem units;
    private final QuantityFormat shown;
    private final StringBuilder text = new StringBuilder();

    private RunReport(Scenario scenario, RunFindings findings, Balances advice, UnitSystem units) {
        this.scenario = scenario;
        this.findings = findings;
        this.result = findings.summary();
        this.narrative = findings.narrative(scenario.doubts());
        this.advice = advice;
        this.units = units;
        this.shown = QuantityFormat.ascii(units);
    }

    /**
     * The report of a run.
     *
     * @param scenario what was run
     * @param findings what the run found
     * @param advice the runs behind the check sheet and the sizes of its page
     * @param units the units to show it in
     */
    static Report of(Scenario scenario, RunFindings findings, Balances advice, UnitSystem units) {
        RunReport report = new RunReport(scenario, findings, advice, units);
        return new Report(
                report.said(),
                report.narrative.isHazard(),
                Balances.of(findings.summary()).and(advice));
    }

    private String said() {
        text.append(Alarms.lines(Alarms.notes(narrative.alarms(), "", shown), ""));
        text.append(Alarms.lines(OpenBalance.ofAdvice(advice), ""));
        text.append(Wrapped.lines(scenario.title(), "", ""));
        if (!scenario.question().isEmpty()) {
            text.append(Wrapped.lines(scenario.question(), "  ", "  "));
        }
        text.append('\n');
        text.append(Doubtful.lines(scenario));
        text.append(Wrapped.lines(Sentence.of(narrative.headline().text(shown)), "", ""))
                .append('\n');
        remarks();
        text.append(FindingRows.of(
                narrative.findings().stream()
                        .filter(finding -> finding.severity() != Severity.HAZARD)
                        .toList(),
                units));
        RunRows.of(findings, shown).forEach(row -> row(row.label(), row.value(), row.remark()));
        changes();
        assumptions();
        return text.toString();
    }

    private void remarks() {
        List<Statement> remarks = narrative.remarks();
        remarks.forEach(remark -> text.append(Wrapped.lines(remark.text(shown), "", "")));
        if (!remarks.isEmpty()) {
            text.append('\n');
        }
    }

    private void changes() {
        if (!scenario.changes().isEmpty()) {
            text.append("\nChanged from outside the file:\n");
            scenario.changes()
                    .forEach(change -> text.append(Wrapped.lines(Printable.line(change.toString()), "  ", "    ")));
        }
        if (!scenario.uncertain().isEmpty()) {
            text.append("\nKnown only so well; this run took the best estimates:\n");
            scenario.uncertain()
                    .forEach(field -> text.append(Wrapped.lines(
                            field.field() + "  " + Printable.line(field.text()) + ", taken as " + field.centre(),
                            "  ",
                            "    ")));
        }
    }

    private void assumptions() {
        if (scenario.assumptions().isEmpty()) {
            return;
        }
        text.append("\nAssumed, since the file does not say (summary.json gives the reasons):\n");
        int width = scenario.assumptions().stream()
                .mapToInt(assumption -> assumption.field().length())
                .max()
                .orElse(0);
        for (Assumption assumption : scenario.assumptions()) {
            text.append("  ")
                    .append(assumption.field())
                    .append(" ".repeat(width + 2 - assumption.field().length()))
                    .append(assumption.value().equals("[]") ? "none" : assumption.value())
                    .append('\n');
        }
    }

    private void row(String label, String value, String remark) {
        text.append(String.format(Locale.ROOT, "  %-10s  %13s  %s", label, value, remark))
                .append('\n');
    }
}
