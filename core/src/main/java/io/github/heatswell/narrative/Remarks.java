package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.RunSummary;
import java.util.ArrayList;
import java.util.List;

/** What must be said of a run besides its headline: where discharged water came from, and draws that fell short. */
final class Remarks {

    /** Less than this share of what was discharged is not worth a remark (-). */
    private static final double SHARE = 0.05;

    /** Less than this (m3) is not worth a remark. */
    private static final double VOLUME = 0.1e-3;

    private Remarks() {}

    static List<Statement> of(RunSummary run, Observed observed) {
        List<Statement> remarks = new ArrayList<>();
        double relieved = run.totals().relieved();
        double fed = Math.min(relieved, observed.relievedWhileFed());
        if (fed > VOLUME && fed > SHARE * relieved) {
            remarks.add(plain("The valve runs on water fed by the supply: ")
                    .then(volume(fed))
                    .then(" of the ")
                    .then(volume(relieved))
                    .then(" discharged came in while it ran."));
        }
        int cut = run.totals().drawsCutShort();
        long cool = observed.drawsTooCool();
        if (cut > 0) {
            remarks.add(
                    plain(draws(cut) + " not fully served: the next draw began before the heat asked for had come."));
        }
        if (cool > 0) {
            remarks.add(plain(draws(cool) + " not fully served: the water was cooler than wanted at the tap."));
        }
        String profile = run.system().draws().name();
        if (profile.startsWith("us-")) {
            remarks.add(plain("The hours of the draws are those of a test, " + profile
                    + ", begun at midnight: no household draws at these times of day."));
        }
        return remarks;
    }

    private static String draws(long count) {
        return count == 1 ? "1 draw was" : count + " draws were";
    }
}
