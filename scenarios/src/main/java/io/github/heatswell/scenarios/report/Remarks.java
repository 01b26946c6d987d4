package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** What must be said of a run besides its headline: where relieved water came from, and draws that fell short. */
final class Remarks {

    /** Less than this share of what was relieved is not worth a remark (-). */
    private static final double SHARE = 0.05;

    /** Less than this (m3) is not worth a remark. */
    private static final double VOLUME = 0.1e-3;

    private Remarks() {}

    static List<String> of(RunFindings findings, QuantityFormat shown) {
        List<String> remarks = new ArrayList<>();
        double relieved = findings.summary().totals().relieved();
        double fed = Math.min(relieved, findings.observed().relievedWhileFed());
        if (fed > VOLUME && fed > SHARE * relieved) {
            remarks.add("The valve runs on water fed by the supply: " + shown.volume(fed) + " of the "
                    + shown.volume(relieved) + " given off came in while it ran.");
        }
        long cut = findings.summary().totals().drawsCutShort();
        long cool = findings.observed().drawsTooCool();
        if (cut > 0) {
            remarks.add(draws(cut) + " not fully served: the next draw began before the heat asked for had come.");
        }
        if (cool > 0) {
            remarks.add(draws(cool) + " not fully served: the water was cooler than wanted at the tap.");
        }
        String profile = findings.summary().system().draws().name();
        if (profile.startsWith("us-")) {
            remarks.add("The hours of the draws are those of a test, " + profile
                    + ", begun at midnight: no household draws at these times of day.");
        }
        return remarks;
    }

    private static String draws(long count) {
        return count == 1 ? "1 draw was" : count + " draws were";
    }
}
