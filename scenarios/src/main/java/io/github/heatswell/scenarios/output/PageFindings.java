package io.github.heatswell.scenarios.output;

import io.github.heatswell.finding.Authority;
import io.github.heatswell.finding.Finding;
import io.github.heatswell.finding.Measure;
import io.github.heatswell.finding.Severity;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.scenarios.report.AlarmNote;
import io.github.heatswell.scenarios.report.FindingNote;
import io.github.heatswell.scenarios.wording.Shown;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.function.Function;

/** Findings as the printed report shows them, in both unit systems. */
final class PageFindings {

    private final UnitSystem first;
    private final UnitSystem second;

    private PageFindings(Shown shown) {
        this.first = shown.units();
        this.second = first == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
    }

    /** All findings. */
    static List<FindingNote> notes(List<Finding> findings, Shown shown) {
        PageFindings page = new PageFindings(shown);
        return findings.stream().map(page::note).toList();
    }

    /** Whether people may be hurt. */
    static boolean hazardous(List<Finding> findings) {
        return !Hazards.among(findings).isEmpty();
    }

    /** What people may be hurt by, beyond what happened in the run. */
    static List<AlarmNote> alarms(List<Finding> findings, Shown shown) {
        PageFindings page = new PageFindings(shown);
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.HAZARD && !Hazards.isEvent(finding))
                .map(finding ->
                        new AlarmNote("HAZARD", page.text(finding.sentence()) + " " + page.text(finding.advice())))
                .toList();
    }

    /** How statements are written, in both unit systems. */
    static Function<Statement, String> words(Shown shown) {
        return new PageFindings(shown)::text;
    }

    private FindingNote note(Finding finding) {
        return new FindingNote(
                word(finding.severity()),
                text(finding.sentence()),
                finding.found().map(this::text).orElse(""),
                finding.limit().map(this::text).orElse(""),
                text(finding.advice()),
                basis(finding.authority()) + finding.authority().source().text(),
                PageFormulas.standing(finding.authority().source()),
                finding.askAuthority().map(this::text).orElse(""));
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case HAZARD -> "Hazard:";
            case FAULT -> "Fault:";
            case CAUTION -> "Caution:";
            case NOTE -> "Note:";
        };
    }

    private static String basis(Authority authority) {
        return switch (authority.basis()) {
            case CODE -> "Code or standard: ";
            case PRACTICE -> "Practice of the trade: ";
            case COMPUTATION -> "Reckoned: ";
        };
    }

    private String text(Statement statement) {
        StringBuilder text = new StringBuilder(statement.parts().get(0));
        for (int i = 0; i < statement.measures().size(); i++) {
            text.append(text(statement.measures().get(i)))
                    .append(statement.parts().get(i + 1));
        }
        return PageWords.glued(text.toString());
    }

    private String text(Measure measure) {
        String here = measure.text(first);
        String there = measure.text(second);
        return PageWords.glued(here.equals(there) ? here : here + " (" + there + ")");
    }
}
