package io.github.heatswell.narrative;

import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** What a run over weeks or years found: on how many days valves discharged water, and when most. */
public final class DaysHeadline {

    /** A volume (m3) below this on a day counts as none. */
    private static final double DROP = 1e-6;

    private final RunSummary summary;
    private final List<Double> relieved;
    private final QuantityFormat amounts;
    private final Dates dates;

    public DaysHeadline(RunSummary summary, List<Double> relieved, QuantityFormat amounts) {
        this.summary = summary;
        this.relieved = List.copyOf(relieved);
        this.amounts = amounts;
        this.dates = Dates.of(summary.system(), summary.end());
    }

    public String sentence() {
        int most = 0;
        int wet = 0;
        for (int day = 0; day < relieved.size(); day++) {
            wet += relieved.get(day) > DROP ? 1 : 0;
            most = relieved.get(day) > relieved.get(most) ? day : most;
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
        String often =
                wet == relieved.size() ? "every one of " + wet + " days" : wet + " of " + relieved.size() + " days";
        return over + why() + " water on " + often + ", "
                + amounts.volume(summary.totals().relieved()) + " in all, most " + dates.on(most) + ": "
                + amounts.volume(relieved.get(most));
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
