package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** The numbers of a run, row by row: its course, the room left below the limits, and what went in and out. */
final class RunRows {

    private final RunFindings findings;
    private final RunSummary result;
    private final boolean byDefault;
    private final QuantityFormat shown;
    private final List<List<String>> rows = new ArrayList<>();

    private RunRows(RunFindings findings, boolean byDefault, QuantityFormat shown) {
        this.byDefault = byDefault;
        this.findings = findings;
        this.result = findings.summary();
        this.shown = shown;
    }

    /**
     * The rows of a run.
     *
     * @param findings what the run found
     * @param byDefault whether nobody said how long it should be
     * @param shown the units
     */
    static Grid of(RunFindings findings, boolean byDefault, QuantityFormat shown) {
        RunRows all = new RunRows(findings, byDefault, shown);
        all.course();
        all.limits();
        all.relieved();
        all.others();
        all.vessels(all.result.system().vessels().stream()
                .filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                .toList());
        return new Grid("What the run found, gauge pressures", List.of("What", "Value", "Remark"), all.rows, true);
    }

    private void course() {
        row(
                "start",
                gauge(findings.observed().startPressureAbsolute()),
                shown.temperature(findings.observed().startTemperature()));
        pressure("peak", result.extremes().highestPressure());
        String lowest = gauge(result.extremes().lowestPressure().value());
        if (!lowest.equals(gauge(findings.observed().startPressureAbsolute()))) {
            pressure("lowest", result.extremes().lowestPressure());
        }
        RunSummary.Extreme hottest = result.extremes().highestTemperature();
        row("hottest", shown.temperature(hottest.value()), when(hottest));
        String covered = shown.time(result.end());
        row(
                "run",
                covered,
                result.hazard().isPresent() ? "ended by the hazard" : byDefault ? "by default" : "as specified");
    }

    private void pressure(String label, RunSummary.Extreme extreme) {
        row(label, gauge(extreme.value()), when(extreme));
    }

    private void limits() {
        Limit.reliefSet(result)
                .ifPresentOrElse(
                        limit -> row(
                                "relief set",
                                shown.pressure(limit.gauge()),
                                limit.name() + seenAt(limit) + ": "
                                        + limit.room(result).text(shown)),
                        () -> row(
                                "relief set",
                                "none",
                                result.system().reliefValves().isEmpty()
                                        ? "no relief valve is described"
                                        : "no relief valve works"));
        Limit working = Limit.workingPressure(result);
        row(
                "tank limit",
                shown.pressure(working.gauge()),
                (result.system().tank().workingPressureGiven() ? "" : "assumed ") + "working pressure: "
                        + working.room().text(shown));
    }

    /** Where a valve's plate reads otherwise, since it sits higher or lower than the gauge. */
    private String seenAt(Limit limit) {
        return result.system().reliefValves().stream()
                        .filter(valve -> valve.name().equals(limit.name()))
                        .map(valve ->
                                valve.setPressure().gauge(result.system().site().atmosphere()))
                        .anyMatch(plate -> shown.pressure(plate).equals(shown.pressure(limit.gauge())))
                ? ""
                : ", as seen at the drain cock";
    }

    private void vessels(List<ExpansionVessel> vessels) {
        if (vessels.isEmpty()) {
            return;
        }
        RunSummary.Extreme most = result.extremes().mostVesselWater();
        double limit = vessels.stream()
                .mapToDouble(vessel -> vessel.acceptance() * vessel.volume())
                .sum();
        boolean full = most.value() >= limit * (1 - 1e-9);
        boolean one = vessels.size() == 1;
        row(
                one ? "vessel" : "vessels",
                shown.volume(most.value()),
                full
                        ? (one ? "all it can take, " : "all they can take, ") + when(most)
                        : "the most water " + (one ? "it" : "they") + " held");
    }

    private String when(RunSummary.Extreme extreme) {
        return Moments.of(result.system(), result.end()).at(extreme.time()).text(shown);
    }

    private String gauge(double absolute) {
        return shown.pressure(result.gauge(absolute));
    }

    private void row(String label, String value, String remark) {
        rows.add(List.of(PageWords.capitalised(label), value, remark));
    }

    private void relieved() {
        List<Totals.Relief> totals = result.totals().relief();
        for (int i = 0; i < totals.size(); i++) {
            ReliefValve valve = result.system().reliefValves().get(i);
            Totals.Relief total = totals.get(i);
            add("discharged", total.volume(), valve.name() + ", " + Narrative.did(valve, total));
        }
    }

    private void others() {
        Totals totals = result.totals();
        if (!result.system().draws().draws().isEmpty()) {
            long draws = result.count(Event.Kind.DRAW_STARTED);
            add("drawn", totals.drawn(), "hot water, " + draws + (draws == 1 ? " draw" : " draws"));
            row("delivered", shown.energy(totals.heatDelivered()), "heat at the taps, above cold water");
        }
        if (!result.system().leaks().isEmpty()) {
            add("leaked", totals.leaked(), "through dripping taps and other leaks");
        }
        if (totals.returned() > 0) {
            add("went back", totals.returned(), "to the mains");
        }
        add("supplied", totals.letIn(), "from the supply");
    }

    private void add(String label, double volume, String remark) {
        row(label, shown.volume(volume), remark);
    }
}
