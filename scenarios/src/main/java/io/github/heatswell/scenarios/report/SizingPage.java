package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.narrative.Bounds;
import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the printed report says of a sizing. */
final class SizingPage {

    private final VesselAnswer answer;
    private final SizingResult sizing;
    private final RunResult run;
    private final List<Finding> found;
    private final Check check;
    private final Balances balances;
    private final double atmosphere;
    private final QuantityFormat shown;

    private SizingPage(VesselAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.sizing = answer.sizing();
        this.atmosphere = answer.scenario().system().site().atmosphere();
        this.shown = QuantityFormat.printed(units).inBoth();
        this.run = answer.proposed().orElse(answer.asItIs());
        this.found = Findings.of(
                run.summary(),
                answer.proposed().isPresent()
                        ? answer.scenario().doubts().without("vessel")
                        : answer.scenario().doubts());
        BalanceCount count = new BalanceCount();
        this.check = PageCheck.of(run.system(), varied(), PageFindings.notBefore(found, shown), count, shown);
        this.balances = answer.balances().and(count.sum());
    }

    /** What the report says; the check sheet is simulated here. */
    static SizingPage of(VesselAnswer answer, UnitSystem units) {
        return new SizingPage(answer, units);
    }

    /** The runs behind the answer and its check sheet. */
    Balances balances() {
        return balances;
    }

    /**
     * What the report says, with the picture.
     *
     * @throws IOException if there are no fonts to draw with
     */
    Document content(Chart chart) throws IOException {
        Scenario scenario = answer.scenario();
        String sentence = new SizingWords(answer, shown).answer();
        List<String> remarks = answer.proposed().isPresent()
                ? List.of("Check sheet and findings are those of the house with the vessel.")
                : List.of();
        List<Document.Section> sections = new ArrayList<>();
        sections.add(Document.answer("", sentence, Doubtful.before(scenario, remarks), ""));
        sections.add(Document.pictures(pictures(chart, sentence), List.of(limits())));
        sections.add(check.section(shown));
        if (answer.proposed().isPresent()
                && PageFindings.notBefore(found, shown).isEmpty()) {
            Pressure precharge = run.system().vessel().orElseThrow().precharge();
            sections.add(CommissioningList.of(run.system(), precharge, shown).section());
        }
        sections.add(PageFindings.section(found, shown));
        sections.add(PageSizes.section(
                PageSizes.of(answer, atmosphere, shown),
                answer.formulas().stream()
                        .flatMap(formula -> PageFormulas.of(formula, shown).stream())
                        .toList(),
                PageCosts.of(water(), scenario.costs(), shown)));
        sections.add(PageBasis.of(scenario, !check.readings().isEmpty(), shown));
        sections.add(PageMethods.of(run.summary(), shown));
        return Document.of(scenario.title() + ": which vessel?", scenario.name(), alarms(), sections, shown);
    }

    private VariedHouse varied() {
        return answer.proposed()
                .flatMap(run -> run.system().vessel())
                .map(vessel -> VariedHouse.with(answer.scenario(), vessel))
                .orElseGet(() -> VariedHouse.of(answer.scenario()));
    }

    private List<Illustration> pictures(Chart chart, String sentence) throws IOException {
        List<Illustration> pictures = new ArrayList<>();
        pictures.add(PagePicture.ofRuns(chart, sentence));
        if (!sizing.nominal().isEmpty()) {
            pictures.add(PagePicture.ofSizes(SizingFiles.sizes(answer, shown.units())));
        }
        return pictures;
    }

    private List<AlarmNote> alarms() {
        List<AlarmNote> alarms = new ArrayList<>(SizingReport.alarms(answer, shown));
        alarms.addAll(OpenBalance.notes(balances));
        return alarms;
    }

    private Grid limits() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Supply", shown.pressure(sizing.supplyStatic().gauge(atmosphere)), "static pressure, at its highest"));
        for (SizingTarget.Bound bound : sizing.target().bounds()) {
            rows.add(List.of(
                    "Limit",
                    shown.pressure(bound.absolute() - atmosphere),
                    Bounds.name(bound, answer.scenario().system())));
        }
        sizing.smallest()
                .ifPresent(least -> rows.add(
                        List.of("Smallest vessel", shown.volume(least.volume()), "just enough by the best estimates")));
        return new Grid("What the vessel must cope with, gauge pressures", List.of("What", "Value", "Remark"), rows);
    }

    private Map<String, YearlyWater> water() {
        Map<String, YearlyWater> water = new LinkedHashMap<>();
        answer.waterAsItIs().ifPresent(asItIs -> water.put("As it is" + PageCosts.whatever(answer), asItIs));
        answer.waterProposed().ifPresent(proposed -> water.put("With the vessel", proposed));
        return water;
    }
}
