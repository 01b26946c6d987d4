package io.github.heatswell.charts;

import io.github.heatswell.charts.DailyFigures.Day;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** What a run over weeks or years found: on how many days valves discharged water, and when most. */
final class DaysHeadline {

    /** A volume (m3) below this on a day counts as none. */
    private static final double DROP = 1e-6;

    private final RunSummary summary;
    private final List<Day> days;
    private final QuantityFormat amounts;
    private final Dates dates;

    DaysHeadline(RunSummary summary, DailyFigures figures, QuantityFormat amounts) {
        this.summary = summary;
        this.days = figures.days();
        this.amounts = amounts;
        this.dates = Dates.of(summary.system(), summary.end());
    }

    String sentence() {
        int most = 0;
        int wet = 0;
        for (int day = 0; day < days.size(); day++) {
            wet += days.get(day).relieved() > DROP ? 1 : 0;
            most = days.get(day).relieved() > days.get(most).relieved() ? day : most;
        }
        Circumstances circumstances = new Circumstances(summary, amounts);
        boolean own = summary.hazard().isPresent()
                || wet == 0
                || circumstances.openedHot().isPresent()
                || circumstances.cutOut().isPresent();
        return own ? Headline.of(summary, amounts.units()) : Headline.capitalised(wetDays(wet, most));
    }

    private String wetDays(int wet, int most) {
        PeakWords peak = new PeakWords(summary, amounts);
        String over = peak.exceedsWorkingPressure() ? peak.overWorkingPressure() + "; " : "";
        String often = wet == days.size() ? "every one of " + wet + " days" : wet + " of " + days.size() + " days";
        return over + why() + " water on " + often + ", "
                + amounts.volume(summary.totals().relieved()) + " in all, most " + dates.on(most) + ": "
                + amounts.volume(days.get(most).relieved());
    }

    private String why() {
        boolean one = summary.system().reliefValves().size() == 1;
        FedRelief fed = new FedRelief(summary);
        if (fed.stretches().isEmpty()) {
            return one ? "relief valve discharges" : "relief valves discharge";
        }
        String where = summary.system().supply().reducingValve().isPresent() ? "supply" : "mains";
        String against = fed.supplyOpensAValve() ? "set" : "reseat";
        return where + " pressure above the relief " + against + ": "
                + (one ? "the valve discharges" : "the valves discharge");
    }
}
