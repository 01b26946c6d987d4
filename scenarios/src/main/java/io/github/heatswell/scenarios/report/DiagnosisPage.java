package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the printed report says of a diagnosis. */
final class DiagnosisPage {

    private final DiagnosisAnswer answer;
    private final DiagnosisResult result;
    private final QuantityFormat shown;
    private final DiagnosisWords words;

    private DiagnosisPage(DiagnosisAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = QuantityFormat.printed(units).inBoth();
        this.words = new DiagnosisWords(answer, shown);
    }

    /**
     * What the report says.
     *
     * @param answer what was found
     * @param chart the log with the likeliest causes; empty without a log
     * @param units the units that come first
     * @throws IOException if there are no fonts to draw with
     */
    static Document of(DiagnosisAnswer answer, Optional<Chart> chart, UnitSystem units) throws IOException {
        return new DiagnosisPage(answer, units).content(chart);
    }

    private Document content(Optional<Chart> chart) throws IOException {
        List<Finding> found =
                Findings.of(answer.scenario().system(), answer.scenario().doubts());
        String title = answer.scenario().title() + ": what do the readings say?";
        List<Illustration> pictures =
                chart.isPresent() ? List.of(PagePicture.ofDiagnosis(chart.get(), words.answer())) : List.of();
        List<String> remarks = Stream.of(
                        answer.scenario().doubts().sentence(),
                        words.start(),
                        result.check().map(words::check))
                .flatMap(Optional::stream)
                .toList();
        return Document.of(
                title,
                answer.scenario().name(),
                alarms(),
                List.of(
                        Document.answer("", words.answer(), remarks, ""),
                        Document.pictures(pictures, figures()),
                        PageFindings.section(found, shown),
                        PageBasis.of(answer.scenario(), false, shown),
                        PageMethods.ofDiagnosis(answer.balances().runs())),
                shown);
    }

    private List<AlarmNote> alarms() {
        List<AlarmNote> alarms = new ArrayList<>();
        words.hazard().ifPresent(text -> alarms.add(new AlarmNote("HAZARD", PageWords.capitalised(text))));
        Alarms.of(answer.scenario(), shown)
                .forEach(note -> alarms.add(new AlarmNote(note.word() + " as described", note.text())));
        alarms.addAll(OpenBalance.notes(answer.balances()));
        if (words.hazard().isEmpty()) {
            alarms.add(new AlarmNote(
                    "CAUTION",
                    words.notRuledOut().map(left -> left + " ").orElse("")
                            + "The readings show no hazard. Whether the house is safe, readings of a gauge"
                            + " cannot say."));
        }
        return alarms;
    }

    private List<Grid> figures() {
        DiagnosisTables tables = new DiagnosisTables(answer, shown);
        List<Grid> figures = new ArrayList<>();
        figures.add(tables.causes());
        tables.evidence().ifPresent(figures::add);
        figures.addAll(tables.estimates());
        tables.check().ifPresent(figures::add);
        tables.installed().ifPresent(figures::add);
        figures.add(tables.readings());
        return figures;
    }
}
