package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Severity;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;

/** Findings as lines of a report: what is wrong and what to do. Sources and limits stand in the other results. */
final class FindingRows {

    private static final String INDENT = "  ";

    private FindingRows() {}

    /** The findings, notes left out: they are for those who read on. */
    static String of(List<Finding> findings, UnitSystem units) {
        QuantityFormat shown = QuantityFormat.ascii(units);
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings) {
            if (finding.severity() != Severity.NOTE) {
                String word = finding.severity().name().toLowerCase(Locale.ROOT) + ": ";
                text.append(Wrapped.lines(
                        word + finding.sentence().text(shown) + " "
                                + finding.advice().text(shown),
                        INDENT,
                        INDENT + INDENT));
            }
        }
        return text.isEmpty() ? "" : "Findings:\n" + text + "\n";
    }
}
