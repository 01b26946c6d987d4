package io.github.heatswell.scenarios.report;

import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.Evidence;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.InstalledCheck;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What readings say of a house, for reading on a terminal of 80 columns. What may hurt somebody comes first.
 */
public final class DiagnosisReport {

    private static final int MAX_CAUSES = 6;

    private final DiagnosisAnswer answer;
    private final DiagnosisResult result;
    private final QuantityFormat shown;
    private final DiagnosisWords words;
    private final StringBuilder text = new StringBuilder();

    private DiagnosisReport(DiagnosisAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = QuantityFormat.ascii(units);
        this.words = new DiagnosisWords(answer, shown);
    }

    /**
     * The answer.
     *
     * @param answer what was found
     * @param units the units of report, table and picture; the JSON is in SI units always
     * @return with the files diagnosis.json and, with a log, readings.csv, readings.png and readings.svg; report.html
     */
    public static Answer answer(DiagnosisAnswer answer, UnitSystem units) {
        return Answer.of(DiagnosisFiles.of(answer, units), of(answer, units));
    }

    /** The report alone. */
    static Report of(DiagnosisAnswer answer, UnitSystem units) {
        DiagnosisReport report = new DiagnosisReport(answer, units);
        return new Report(report.said(), report.isHazard(), answer.balances());
    }

    private String said() {
        hazards();
        text.append(OpenBalance.lines(answer.balances()));
        line(answer.scenario().title() + ": what do the readings say?");
        text.append('\n').append(Doubtful.lines(answer.scenario()));
        line(words.answer());
        words.start().ifPresent(this::line);
        result.check().ifPresent(check -> line(words.check(check)));
        words.notRuledOut().ifPresent(this::line);
        text.append('\n');
        answer.installed().ifPresent(this::installed);
        causes();
        numbers();
        evidence();
        remarks();
        return text.toString();
    }

    private void hazards() {
        words.hazard()
                .ifPresent(hazard -> text.append(Wrapped.lines(Printable.line("HAZARD: " + hazard), "", "        "))
                        .append('\n'));
        text.append(Alarms.lines(Alarms.of(answer.scenario(), shown), " as described"));
    }

    private boolean isHazard() {
        return words.hazard().isPresent() || Hazards.in(answer.scenario());
    }

    private void installed(InstalledCheck check) {
        text.append(check.asPlanned() ? "Readings on site, all as described:\n" : "Readings on site:\n");
        for (InstalledCheck.Line line : check.lines()) {
            bullet(line.check().words() + ": read "
                    + words.value(line.check(), line.reading().value()) + ", described "
                    + words.value(line.check(), line.planned()) + (line.agrees() ? ", agrees" : ", DIFFERS"));
        }
        text.append('\n');
    }

    private void causes() {
        text.append("Causes, the likeliest first:\n");
        for (HypothesisFit fit :
                result.fits().subList(0, Math.min(MAX_CAUSES, result.fits().size()))) {
            bullet(words.weight(fit) + "  " + DiagnosisWords.cause(fit) + words.standing(fit));
        }
        text.append('\n');
    }

    private void numbers() {
        text.append("Numbers, with the likeliest cause:\n");
        for (Estimate estimate : result.best().estimates()) {
            bullet(words.estimate(estimate));
        }
        text.append('\n');
    }

    private void evidence() {
        List<HypothesisFit> others = result.fits().stream()
                .skip(1)
                .filter(fit -> fit.evidence().stream().anyMatch(Evidence::against))
                .limit(MAX_CAUSES - 1)
                .toList();
        if (others.isEmpty()) {
            return;
        }
        text.append("What speaks against the others:\n");
        for (HypothesisFit fit : others) {
            String parts = fit.evidence().stream()
                    .filter(Evidence::against)
                    .map(part ->
                            part.part().words() + " (off by " + shown.pressure(part.meanDifference()) + " in the mean)")
                    .collect(Collectors.joining(", "));
            bullet(fit.cause().words() + ": " + parts);
        }
        text.append('\n');
    }

    private void remarks() {
        bulletList("About the log:", answer.readings().remarks());
        String good = answer.log().isPresent() && Double.isFinite(result.uncertainty())
                ? ", those of the log each taken as good to " + shown.pressureDifference(result.uncertainty())
                : "";
        line(result.readings() + " readings" + good + "; " + answer.balances().runs() + " runs.");
    }

    private void bulletList(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append(heading).append('\n');
            lines.forEach(this::bullet);
            text.append('\n');
        }
    }

    private void bullet(String content) {
        text.append(Wrapped.lines(Printable.line(content), "  ", "    "));
    }

    private void line(String content) {
        text.append(Wrapped.lines(Printable.line(content), "", ""));
    }
}
