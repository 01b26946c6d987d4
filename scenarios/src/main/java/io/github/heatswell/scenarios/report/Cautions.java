package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** The cautions of every report. */
final class Cautions {

    /** Above this temperature (K) water scalds within seconds. */
    private static final double SCALDS = 333.15;

    private Cautions() {}

    static List<String> of(QuantityFormat shown) {
        return List.of(
                "Hot water scalds. Above " + degrees(shown) + " it does so within seconds.",
                "Before any work turn the heater off, let it cool, shut the cold feed and relieve the pressure at a tap.",
                "Never plug, cap or downsize a relief valve, and never use a temperature and pressure relief valve as the"
                        + " means of expansion control. A heater whose relief is missing, blocked or too small can"
                        + " explode.",
                "Gas and electricity kill. Work on them is for people licensed for it.",
                "Local code and a licensed professional decide what may be built and who may build it. What stands here"
                        + " comes from a model and decides nothing.");
    }

    private static String degrees(QuantityFormat shown) {
        return shown.temperature(SCALDS);
    }
}
