package io.github.heatswell.scenarios.report;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.OutlookTable;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.OutlookStory;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Report on the years ahead.
 */
public final class OutlookReport {

    private final OutlookAnswer answer;
    private final OutlookResult result;
    private final Narrative narrative;
    private final Chart chart;

    private OutlookReport(OutlookAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.narrative = answer.yardstick()
                .map(yardstick -> Narrative.of(result, answer.scenario().system(), yardstick))
                .orElseGet(() -> Narrative.of(result, answer.scenario().system()));
        this.chart =
                Chart.of(result, answer.scenario().system(), units).below(AlarmNote.ofHouse(answer.scenario()), units);
    }

    /**
     * The answer.
     *
     * @param answer what was found
     * @param units the units of screen, table and picture; the JSON is in SI units always
     * @return with the files outlook.csv, outlook.json, outlook.png, outlook.svg and report.html
     */
    public static CommandResult answer(OutlookAnswer answer, UnitSystem units) {
        OutlookReport report = new OutlookReport(answer, units);
        return CommandResult.of(
                        report::content,
                        answer.balances(),
                        units,
                        List.of(
                                ResultFile.ofText(
                                        "outlook.csv", out -> OutlookTable.write(answer.result(), units, out)),
                                OutlookJson.of(answer).file("outlook.json")),
                        CommandResult.pictures("outlook", report.chart))
                .then(NextStep.to("run"));
    }

    private Document content(QuantityFormat shown) {
        String basis = OutlookStory.basis(answer.fading()).text(shown)
                + (answer.fading().equals(PrechargeLoss.Range.usual()) ? " Give the result with --fade." : "");
        List<Finding> found =
                Findings.of(answer.scenario().system(), answer.scenario().doubts());
        String title = answer.scenario().title() + ": the next " + (result.years() == 1 ? "year" : years());
        return Document.of(
                        title,
                        answer.scenario().name(),
                        alarms(shown),
                        List.of(
                                Document.answer(
                                        "",
                                        narrative.headline().text(shown) + ".",
                                        Document.withDoubts(answer.scenario(), shown, remarks(shown))),
                                Document.pictures(List.of(Block.Picture.ofYears(chart)), List.of()),
                                new Document.Section(
                                                "The numbers",
                                                List.of(
                                                        years(shown),
                                                        vessels(shown),
                                                        new Block.Paragraph(basis, Block.Tone.PLAIN).onScreen()))
                                        .inAppendix(),
                                PageFindings.section(found, shown).onPageInAppendix(),
                                PageBasis.ofYears(answer.scenario(), shown).inAppendix(),
                                PageMethods.ofYears(basis).inAppendix()),
                        shown)
                .printedFor(answer.scenario().system());
    }

    /** What is only assumed, before what follows from it. */
    private List<String> remarks(QuantityFormat shown) {
        return Stream.concat(
                        answer.scenario().doubts().assumed().map(said -> said.text(shown)).stream(),
                        narrative.remarkTexts(shown).stream())
                .toList();
    }

    private List<AlarmNote> alarms(QuantityFormat shown) {
        List<AlarmNote> alarms = new ArrayList<>(AlarmNote.of(answer.scenario(), shown));
        alarms.addAll(AlarmNote.notes(narrative.alarms(), "", shown));
        alarms.addAll(AlarmNote.open(answer.balances(), shown));
        return alarms;
    }

    private Grid years(QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        OutlookCourse course = result.expected();
        for (int year = 0; year < result.years(); year++) {
            OutlookCourse.Month last = course.months().get((year + 1) * OutlookCourse.Month.MONTHS_OF_YEAR - 1);
            rows.add(List.of(
                    String.valueOf(year + 1),
                    shown.pressure(last.prechargeGauge()),
                    shown.pressure(course.highestInYear(year)),
                    shown.volume(course.relievedInYear(year)),
                    PageSizes.money(answer.cost(course, year), costs().currency(), shown)));
        }
        return new Grid(
                "Year by year at the expected loss of precharge, gauge pressures. Every day counts as the worst of its"
                        + " month"
                        + (Narrative.runsEveryDay(answer.scenario().system())
                                ? "."
                                : ", so the true discharge is less."),
                List.of(
                        "Year",
                        "Precharge" + whose() + " at the end of the year",
                        "Highest peak",
                        "Discharge",
                        "Cost of that water"),
                rows);
    }

    /** Whose precharge is reported where there are several vessels. */
    private String whose() {
        HotWaterSystem house = answer.scenario().system();
        return house.hasSeveralVessels()
                ? " of “"
                        + house.vesselNames().get(PrechargeTarget.leading(house).orElseThrow()) + "”"
                : "";
    }

    private Grid vessels(QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        String present = shown.volume(result.expected().vesselVolume());
        rows.add(vessel(present + ", expected loss", result.expected(), shown));
        if (!result.slow().loss().equals(result.fast().loss())) {
            rows.add(vessel(present + ", slowest loss", result.slow(), shown));
            rows.add(vessel(present + ", fastest loss", result.fast(), shown));
        }
        result.larger()
                .forEach(course ->
                        rows.add(vessel(shown.volume(course.vesselVolume()) + ", expected loss", course, shown)));
        return new Grid(
                (result.larger().isEmpty()
                                ? "What the rate of loss would change. Water costs "
                                : "What a larger vessel with the same precharge would change. Water costs ")
                        + PageSizes.ofWater(costs(), shown)
                        + (costs().waterInvented() ? ", an invented price." : "."),
                List.of("Vessel", "Drips from", "Discharge in all the years", "Cost of that water"),
                rows);
    }

    private List<String> vessel(String name, OutlookCourse course, QuantityFormat shown) {
        return List.of(
                name,
                course.firstDripping()
                        .map(OutlookStory::month)
                        .orElse(relieves() ? "not within " + years() : "no working relief valve"),
                shown.volume(course.relieved()),
                PageSizes.money(answer.cost(course), costs().currency(), shown));
    }

    private String years() {
        return result.years() == 1 ? "1 year" : result.years() + " years";
    }

    private boolean relieves() {
        return answer.scenario().system().reliefValves().stream().anyMatch(ReliefValve::relieves);
    }

    private Costs costs() {
        return answer.scenario().costs();
    }
}
