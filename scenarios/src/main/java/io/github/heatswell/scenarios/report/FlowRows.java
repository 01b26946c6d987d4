package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.DrawCount;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** The rows of a report on what went in and out. */
final class FlowRows {

    private final RunSummary summary;
    private final QuantityFormat shown;
    private final List<Row> rows = new ArrayList<>();

    private FlowRows(RunSummary summary, QuantityFormat shown) {
        this.summary = summary;
        this.shown = shown;
    }

    /** A row: what, how much, and a remark. */
    record Row(String label, String value, String remark) {}

    static List<Row> of(RunFindings findings, QuantityFormat shown) {
        FlowRows rows = new FlowRows(findings.summary(), shown);
        rows.relieved();
        rows.others();
        return rows.rows;
    }

    private void relieved() {
        List<ReliefTotal> totals = summary.totals().relief();
        for (int i = 0; i < totals.size(); i++) {
            ReliefValve valve = summary.system().reliefValves().get(i);
            ReliefTotal total = totals.get(i);
            add("relieved", total.volume(), valve.name() + ", " + state(valve, total));
        }
    }

    private void others() {
        Totals totals = summary.totals();
        if (!summary.system().draws().draws().isEmpty()) {
            long draws = DrawCount.started(summary.events());
            add("drawn", totals.drawn(), "hot water, " + draws + (draws == 1 ? " draw" : " draws"));
            rows.add(new Row("delivered", shown.energy(totals.heatDelivered()), "heat at the taps, above cold water"));
        }
        if (!summary.system().leaks().isEmpty()) {
            add("leaked", totals.leaked(), "by taps that drip and other leaks");
        }
        if (totals.returned() > 0) {
            add("went back", totals.returned(), "to the mains");
        }
        add("let in", totals.letIn(), "from the supply");
    }

    private void add(String label, double volume, String remark) {
        rows.add(new Row(label, shown.volume(volume), remark));
    }

    private static String state(ReliefValve valve, ReliefTotal total) {
        return switch (valve.condition()) {
            case BLOCKED -> "which is blocked";
            case STUCK_OPEN -> "which is stuck open";
            case LEAKING_SEAT -> total.openings() == 0 ? "by its worn seat" : "worn, " + openings(total.openings());
            case SOUND -> openings(total.openings());
        };
    }

    private static String openings(int count) {
        return switch (count) {
            case 0 -> "stayed shut";
            default -> "opened " + QuantityFormat.times(count);
        };
    }
}
