package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Bounds;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.FormulaAnswer;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Which vessel to buy, for reading on a terminal of 80 columns. Hazards of the house as it is come first.
 */
public final class SizingReport {

    /** A difference that moves the vessel by less than this (m3) is not worth a line. */
    private static final double WORTH_SAYING = 0.005e-3;

    private static final String SIZE_ROW = "  %1s %12s  %14s  %12s  %12s";

    private final VesselAnswer answer;
    private final SizingResult sizing;
    private final Balances balances;
    private final double atmosphere;
    private final QuantityFormat shown;
    private final StringBuilder text = new StringBuilder();

    private SizingReport(VesselAnswer answer, Balances balances, UnitSystem units) {
        this.answer = answer;
        this.sizing = answer.sizing();
        this.balances = balances;
        this.atmosphere = answer.scenario().system().site().atmosphere();
        this.shown = QuantityFormat.ascii(units);
    }

    /**
     * The answer. The check sheet of the printed report is simulated here.
     *
     * @param answer what was found
     * @param units the units of report, table and pictures; the JSON is in SI units always
     * @return with the files sizing.csv, sizing.json, before-after.png, before-after.svg, report.html and, where there are
     *     sizes to show, sizes.png and sizes.svg
     */
    public static Answer answer(VesselAnswer answer, UnitSystem units) {
        SizingPage page = SizingPage.of(answer, units);
        SizingReport report = new SizingReport(answer, page.balances(), units);
        return Answer.of(
                SizingFiles.of(answer, page, units), new Report(report.said(), report.isHazard(), page.balances()));
    }

    /**
     * The hazards of a house for which no vessel can be sized.
     *
     * @param house the house as it is
     * @param units the units to show them in
     * @return paragraphs, each ended by an empty line; empty if there is no hazard
     */
    public static String hazards(Scenario house, UnitSystem units) {
        return Alarms.lines(Alarms.of(house, QuantityFormat.ascii(units)), " as it is");
    }

    /** What a run of the house as it is came to, and that with the vessel if a hazard ended it. */
    static List<AlarmNote> alarms(VesselAnswer answer, QuantityFormat shown) {
        Doubts doubts = answer.scenario().doubts();
        List<AlarmNote> notes = new ArrayList<>(
                Alarms.notes(Narrative.of(answer.asItIs().summary(), doubts).alarms(), " as it is", shown));
        answer.proposed()
                .filter(run -> run.hazard().isPresent())
                .map(run ->
                        Narrative.of(run.summary(), doubts.without("vessel")).alarms())
                .ifPresent(alarms -> notes.addAll(Alarms.notes(alarms.subList(0, 1), " also with the vessel", shown)));
        return notes;
    }

    private boolean isHazard() {
        return alarms(answer, shown).stream().anyMatch(note -> note.word().startsWith(Alarm.Level.HAZARD.word()));
    }

    private String said() {
        text.append(Alarms.lines(alarms(answer, shown), ""));
        text.append(OpenBalance.lines(balances));
        text.append(Wrapped.lines(answer.scenario().title() + ": which vessel?", "", ""))
                .append('\n')
                .append(Doubtful.lines(answer.scenario()))
                .append(Wrapped.lines(new SizingWords(answer, shown).answer(), "", ""))
                .append('\n');
        limits();
        sizes();
        formulas();
        water();
        prices();
        return text.toString();
    }

    private void limits() {
        row("supply", shown.pressure(sizing.supplyStatic().gauge(atmosphere)), "static pressure, at its highest");
        String label = "limit";
        for (SizingTarget.Bound bound : sizing.target().bounds()) {
            row(
                    label,
                    shown.pressure(bound.absolute() - atmosphere),
                    Bounds.name(bound, answer.scenario().system()));
            label = "";
        }
        sizing.smallest()
                .ifPresent(least -> row("smallest", shown.volume(least.volume()), "just enough by the best estimates"));
    }

    private void sizes() {
        if (sizing.outcome() != SizingResult.Outcome.SIZED
                && answer.recommended().isEmpty()) {
            return;
        }
        text.append('\n')
                .append(String.format(Locale.ROOT, SIZE_ROW, "", "size", "peak", "to the limit", "price"))
                .append('\n');
        double bought = answer.recommended().map(SizedVessel::volume).orElse(Double.NaN);
        for (SizedVessel size : sizing.nominal()) {
            text.append(String.format(
                                    Locale.ROOT,
                                    SIZE_ROW,
                                    size.volume() == bought ? ">" : "",
                                    shown.volume(size.volume()),
                                    (size.higher() ? "over " : "") + shown.pressure(size.peakAbsolute() - atmosphere),
                                    size.higher() ? "" : shown.pressureDifference(size.margin()),
                                    size.price().map(Money::of).orElse("-"))
                            .stripTrailing())
                    .append('\n');
        }
    }

    private void formulas() {
        text.append("\nFormulas beside it:\n");
        for (FormulaAnswer formula : answer.formulas()) {
            String volume =
                    formula.result().map(found -> shown.volume(found.volume())).orElse("-");
            text.append(Wrapped.lines(
                    String.format(Locale.ROOT, "%-54s %12s", formula.name(), volume)
                            .replace(' ', '\u00a0'),
                    "  ",
                    "    "));
            if (!formula.remark().isEmpty()) {
                text.append(Wrapped.lines(formula.remark(), "    ", "    "));
            }
            formula.differences().ifPresent(this::differences);
        }
    }

    private void differences(SizingReconciliation differences) {
        differences.terms().stream()
                .filter(term -> Math.abs(term.volume()) >= WORTH_SAYING)
                .forEach(term -> text.append(String.format(
                                Locale.ROOT,
                                "    %-52s %12s",
                                term.effect().description(),
                                (term.volume() < 0 ? "" : "+") + shown.volume(term.volume())))
                        .append('\n'));
        text.append(String.format(
                        Locale.ROOT, "    %-52s %12s", "by simulation", shown.volume(differences.simulated())))
                .append('\n');
    }

    private void water() {
        Costs costs = answer.scenario().costs();
        text.append('\n');
        answer.waterAsItIs()
                .ifPresent(water ->
                        row("discharged", yearly(water, costs), "a year, as it is" + PageCosts.whatever(answer)));
        answer.waterProposed().ifPresent(water -> row("", yearly(water, costs), "a year, with the vessel"));
    }

    private String yearly(YearlyWater water, Costs costs) {
        return shown.largeVolume(water.volume()) + ", " + Money.of(costs.ofWater(water.volume()), costs.currency());
    }

    private void prices() {
        Costs costs = answer.scenario().costs();
        String invented = costs.waterInvented() && costs.vesselsInvented()
                ? "Prices of water and vessels are invented"
                : costs.waterInvented() ? "The price of water is invented" : "The prices of vessels are invented";
        if (costs.waterInvented() || costs.vesselsInvented()) {
            text.append('\n').append(Wrapped.lines(invented + "; give your own under 'costs'.", "", ""));
        }
    }

    private void row(String label, String value, String remark) {
        String first = String.format(Locale.ROOT, "  %-10s  %13s  ", label, value);
        text.append(Wrapped.lines(remark, first, " ".repeat(first.length())));
    }
}
