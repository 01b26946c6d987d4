package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings as the printed report shows them. */
final class PageFindings {

    private static final String ITS_WORK = "expansion-valve-works";

    /** So many characters of findings go on the first sheet beside answer and picture. */
    private static final int MAX_FIRST = 1000;

    private static final int MAX_BESIDE_HAZARD = 400;

    private final QuantityFormat shown;

    private PageFindings(QuantityFormat shown) {
        this.shown = shown;
    }

    /** All findings, each with the rule it is compared with. */
    static Document.Section section(List<Finding> findings, QuantityFormat shown) {
        return section(findings, List.of(), shown);
    }

    /** The same, but for the advice of those that the page told already. */
    static Document.Section section(List<Finding> findings, List<Finding> told, QuantityFormat shown) {
        PageFindings page = new PageFindings(shown);
        List<Block> blocks = findings.stream()
                .filter(finding -> !isNote(finding))
                .map(finding -> page.block(finding, told.stream().anyMatch(one -> one == finding)))
                .collect(Collectors.toCollection(ArrayList::new));
        List<Block> notes = findings.stream()
                .filter(PageFindings::isNote)
                .map(finding -> page.block(finding, false))
                .toList();
        if (!notes.isEmpty()) {
            blocks.add(new Block.Folded("what else is worth knowing", notes));
        }
        if (findings.stream().anyMatch(PageFindings::isForTheScreen)) {
            blocks.add(0, new Block.Subheading("Findings").onScreen());
        }
        return new Document.Section("Findings", blocks);
    }

    /** Whether people may be hurt. */
    static boolean hazardous(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.HAZARD);
    }

    /** What to do about each hazard. */
    static Stream<String> againstHazards(List<Finding> findings, QuantityFormat shown) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.HAZARD)
                .map(finding -> finding.advice().text(shown))
                .distinct();
    }

    /** Why the house must not be heated before something is put right; empty if it may be. */
    static Optional<String> notBefore(List<Finding> findings, QuantityFormat shown) {
        return Narrative.heatingForbidden(findings).map(why -> why.text(shown));
    }

    /** Hazards stand at the top of the screen. Notes are for those who read on, but that a valve drips because it is made to. */
    private static boolean isForTheScreen(Finding finding) {
        return finding.severity() != Severity.HAZARD
                && (finding.severity() != Severity.NOTE || finding.id().equals(ITS_WORK));
    }

    private static boolean isNote(Finding finding) {
        return finding.severity() == Severity.NOTE;
    }

    /** The gravest of those that ask for work, so few that they go on the first sheet; a hazard's advice stands at the top of it. */
    static List<Finding> first(List<Finding> findings, QuantityFormat shown) {
        List<Finding> first = new ArrayList<>();
        int room = hazardous(findings) ? MAX_BESIDE_HAZARD : MAX_FIRST;
        for (Finding finding : findings) {
            if (finding.severity() == Severity.FAULT || finding.severity() == Severity.CAUTION) {
                room -= sentences(finding, shown).length();
                if (room < 0 && !first.isEmpty()) {
                    return first;
                }
                first.add(finding);
            }
        }
        return first;
    }

    /** What was found, and what to do about it. */
    static String sentences(Finding finding, QuantityFormat shown) {
        return finding.sentence().text(shown) + " " + finding.advice().text(shown);
    }

    private Block block(Finding finding, boolean told) {
        Block.FoundRule rule = note(finding, text(finding.advice()));
        if (!isForTheScreen(finding)) {
            return rule.onPage();
        }
        Block.FoundRule bare = note(finding, "");
        return (told ? bare : rule).orOnScreen(rule);
    }

    private Block.FoundRule note(Finding finding, String advice) {
        String standing = PageFormulas.standing(finding.authority().source());
        return new Block.FoundRule(
                word(finding.severity()),
                text(finding.sentence()),
                advice,
                List.of(
                        entry("Found", finding.found().map(this::text)),
                        entry("Limit", finding.limit().map(this::text)),
                        entry(
                                "Source",
                                Optional.of(basis(finding.authority())
                                        + PageWords.inUnits(
                                                finding.authority().source().text(), shown)
                                        + (standing.isBlank() ? "" : " (" + standing + ")"))),
                        entry("To ask", finding.askAuthority().map(this::text))));
    }

    private static Block.FoundRule.Entry entry(String name, Optional<String> text) {
        return new Block.FoundRule.Entry(name, text.orElse(""));
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
            case COMPUTATION -> "Calculated: ";
        };
    }

    private String text(Statement statement) {
        return statement.text(shown);
    }

    private String text(Measure measure) {
        return measure.text(shown);
    }
}
