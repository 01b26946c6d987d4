package io.github.heatswell.scenarios.report;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookMonth;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.OutlookTable;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;

/**
 * What the years will do, for reading on a terminal of 80 columns.
 */
public final class OutlookReport {

    private static final String YEAR_ROW = "  %4s %14s %14s %14s %16s";
    private static final String VESSEL_ROW = "  %-12s %-24s %14s %16s";

    private final OutlookAnswer answer;
    private final OutlookResult result;
    private final OutlookWords words;
    private final QuantityFormat shown;
    private final StringBuilder text = new StringBuilder();

    private OutlookReport(OutlookAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = QuantityFormat.ascii(units);
        this.words = new OutlookWords(answer, shown);
    }

    /**
     * The answer.
     *
     * @param answer what was found
     * @param units the units of report, table and picture; the JSON is in SI units always
     * @return with the files outlook.csv, outlook.json, outlook.png, outlook.svg and report.html
     */
    public static Answer answer(OutlookAnswer answer, UnitSystem units) {
        OutlookReport report = new OutlookReport(answer, units);
        Chart chart = Chart.of(answer.result(), answer.scenario().system(), units);
        return Answer.of(
                ResultFile.sideBySide(List.of(
                        ResultFile.ofText("outlook.csv", out -> OutlookTable.write(answer.result(), units, out)),
                        ResultFile.of("outlook.json", out -> OutlookJson.write(answer, out)),
                        ResultFile.of("outlook.png", chart::writePng),
                        ResultFile.ofText("outlook.svg", chart::writeSvg),
                        ResultFile.ofText(
                                "report.html", out -> HtmlPage.write(OutlookPage.of(answer, chart, units), out)))),
                new Report(report.said(), report.isHazard(), answer.result().balances()));
    }

    private boolean isHazard() {
        return words.isHazard() || Hazards.in(answer.scenario());
    }

    private String said() {
        text.append(Alarms.lines(Alarms.of(answer.scenario(), shown), ""));
        words.alarm()
                .ifPresent(alarm -> text.append(
                                Wrapped.lines((words.isHazard() ? "HAZARD: " : "WARNING: ") + alarm, "", "        "))
                        .append('\n'));
        text.append(OpenBalance.lines(result.balances()));
        paragraph(
                answer.scenario().title() + ": the next " + (result.years() == 1 ? "year" : result.years() + " years"));
        text.append(Doubtful.lines(answer.scenario()));
        paragraph(words.headline());
        paragraph(words.interval());
        paragraph(words.care());
        years();
        vessels();
        paragraph(words.basis());
        return text.toString();
    }

    private void paragraph(String words) {
        text.append(Wrapped.lines(words, "", "")).append('\n');
    }

    private void years() {
        row(YEAR_ROW, "year", "charge at end", "highest peak", "given off", "water's price");
        List<OutlookMonth> months = result.expected().months();
        for (int year = 0; year < result.years(); year++) {
            row(
                    YEAR_ROW,
                    String.valueOf(year + 1),
                    shown.pressure(months.get((year + 1) * OutlookMonth.MONTHS_OF_YEAR - 1)
                            .prechargeGauge()),
                    shown.pressure(result.expected().highestInYear(year)),
                    shown.volume(result.expected().relievedInYear(year)),
                    Money.of(
                            answer.cost(result.expected(), year),
                            answer.scenario().costs().currency()));
        }
        text.append(Wrapped.lines("Every day taken to be like the worst of its month. " + price(), "  ", "  "))
                .append('\n');
    }

    private String price() {
        return "Water at "
                + Money.of(
                        answer.scenario().costs().ofWater(1),
                        answer.scenario().costs().currency())
                + " a cubic metre"
                + (answer.scenario().costs().waterInvented() ? ", a price that is invented." : ".");
    }

    private void vessels() {
        row(VESSEL_ROW, "vessel", "drips from", "given off", "water's price");
        vessel(shown.volume(result.expected().vesselVolume()), result.expected());
        if (!result.slow().loss().equals(result.fast().loss())) {
            vessel("  if slow", result.slow());
            vessel("  if fast", result.fast());
        }
        result.larger().forEach(course -> vessel(shown.volume(course.vesselVolume()), course));
        text.append('\n');
    }

    private void vessel(String name, OutlookCourse course) {
        row(
                VESSEL_ROW,
                name,
                words.begins(course),
                shown.volume(course.relieved()),
                Money.of(answer.cost(course), answer.scenario().costs().currency()));
    }

    private void row(String form, Object... cells) {
        text.append(String.format(Locale.ROOT, form, cells).stripTrailing()).append('\n');
    }
}
