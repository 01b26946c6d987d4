package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.scenarios.spread.VariedInput;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.study.OutputSpread;
import io.github.heatswell.study.Share;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * How far an answer may be off, for reading on a terminal of 80 columns.
 */
public final class SpreadReport {

    private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};
    private static final String ROW = "  %-12s %11s %11s %11s %11s %11s";
    private static final String INPUT_ROW = "  %-36s %9s %12s  %s";

    private final SpreadAnswer answer;
    private final StudyResult result;
    private final QuantityFormat shown;
    private final StringBuilder text = new StringBuilder();

    private SpreadReport(SpreadAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = QuantityFormat.ascii(units);
    }

    /**
     * The answer.
     *
     * @param answer what was found
     * @param units the units of report, tables and picture; the JSON is in SI units always
     * @return with the files spread.csv, samples.csv, spread.json and, with two samples or more, spread.png and spread.svg
     */
    public static Answer answer(SpreadAnswer answer, UnitSystem units) {
        SpreadReport report = new SpreadReport(answer, units);
        return Answer.of(
                SpreadFiles.of(answer, units), new Report(report.said(), report.isHazard(), answer.balances()));
    }

    private boolean isHazard() {
        return answer.hazardFound().count() > 0 || Hazards.in(answer.scenario());
    }

    private String said() {
        text.append(Alarms.lines(Alarms.of(answer.scenario(), shown), ""));
        if (answer.hazardFound().count() > 0) {
            String ended = answer.hazardous().count() > 0
                    ? answer.hazardous().count() + " of the runs end in it."
                    : "no run ends in it.";
            text.append(Wrapped.lines(
                            "HAZARD in " + inWords(answer.hazardFound()) + ", each judged by its own values; " + ended,
                            "",
                            "        "))
                    .append('\n');
        }
        text.append(OpenBalance.lines(answer.balances()));
        text.append(Wrapped.lines(answer.scenario().title() + ": how sure is that?", "", ""))
                .append('\n');
        if (result.completed() < result.planned()) {
            text.append(Wrapped.lines(
                            "Stopped early: " + result.completed() + " of " + result.planned() + " samples were done.",
                            "",
                            ""))
                    .append('\n');
        }
        text.append(Wrapped.lines("A relief valve gives off water in " + inWords(answer.dripping()) + ".", "", ""))
                .append('\n');
        quantiles();
        inputs();
        failures();
        return text.toString();
    }

    private String inWords(Share share) {
        if (share.of() > 0 && (share.count() == 0 || share.count() == share.of())) {
            double bound = share.furthest();
            return share.count() == 0
                    ? "none of " + share.of() + " samples (at most about " + shown.share(bound) + ")"
                    : "all of " + share.of() + " samples (at least about " + shown.share(bound) + ")";
        }
        return share.count() + " of " + share.of() + " samples (" + shown.share(share.value()) + ", give or take "
                + shown.share(share.standardError()) + ")";
    }

    private void quantiles() {
        text.append(String.format(Locale.ROOT, ROW, "of all", "5 %", "25 %", "50 %", "75 %", "95 %"))
                .append('\n');
        quantileRow("peak up to", answer.peak(), shown::pressure);
        quantileRow("given off", answer.relieved(), shown::volume);
    }

    private void quantileRow(String label, OutputSpread spread, DoubleFunction<String> words) {
        Object[] cells = new Object[SHARES.length + 1];
        cells[0] = label;
        for (int i = 0; i < SHARES.length; i++) {
            cells[i + 1] = words.apply(spread.quantile(SHARES[i]));
        }
        text.append(String.format(Locale.ROOT, ROW, cells)).append('\n');
    }

    private void inputs() {
        text.append('\n');
        if (answer.house().usual()) {
            text.append(Wrapped.lines(
                    "The scenario gives no uncertain values. These usual ones were taken; they are common practice and"
                            + " have no source:",
                    "",
                    ""));
        }
        text.append(String.format(
                        Locale.ROOT, INPUT_ROW, "rank correlation (-1 to 1) with", "the peak", "given off", ""))
                .append('\n');
        List<VariedInput> inputs = answer.house().inputs();
        for (int i = 0; i < inputs.size(); i++) {
            VariedInput input = inputs.get(i);
            text.append(String.format(
                                    Locale.ROOT,
                                    INPUT_ROW,
                                    input.name(),
                                    signed(answer.onPeak(i)),
                                    signed(answer.onRelieved(i)),
                                    Printable.line(input.words()))
                            .stripTrailing())
                    .append('\n');
        }
    }

    private static String signed(double correlation) {
        String number = Decimals.fixed(correlation, 2);
        return number.startsWith("-") ? number : "+" + number;
    }

    private void failures() {
        if (result.failed() > 0) {
            text.append('\n')
                    .append(Wrapped.lines(
                            result.failed()
                                    + " of the samples are no houses that can be simulated and were left out, the first because of this: "
                                    + Printable.line(result.firstFailure().orElse("")),
                            "",
                            ""));
        }
    }
}
