package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** The words of caution that go with every answer. */
final class Cautions {

    /** Above this temperature (K) water scalds within seconds. */
    private static final double SCALDS = 333.15;

    private static final String IN_SHORT = "Caution: hot water scalds. Never plug, cap or downsize a temperature and"
            + " pressure relief valve. Before any work turn the heater off and let it cool. This is a model: local code"
            + " and a licensed professional decide.";

    private Cautions() {}

    /** All of them, for a page. */
    static List<String> of(QuantityFormat shown) {
        return List.of(
                "Hot water scalds. Above " + shown.temperature(SCALDS) + " it does so within seconds.",
                "Before any work turn the heater off, let it cool, shut the cold feed and relieve the pressure at a tap.",
                "Never plug, cap or downsize a relief valve, and never use a temperature and pressure relief valve as the"
                        + " means of expansion control. A heater whose relief is missing, blocked or too small can"
                        + " explode.",
                "Gas and electricity kill. Work on them is for people licensed for it.",
                "Local code and a licensed professional decide what may be built and who may build it. What stands here"
                        + " comes from a model and decides nothing.");
    }

    /** In three lines, for a screen. */
    static String inShort() {
        return Wrapped.lines(IN_SHORT, "", "");
    }
}
