package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Wrapped;

/** The words of caution that go with every report. */
final class Caution {

    private static final String TEXT = "Caution: hot water scalds. Never plug, cap or downsize a temperature and"
            + " pressure relief valve. Before any work turn the heater off and let it cool. This is a model: local code"
            + " and a licensed professional decide.";

    private Caution() {}

    static String text() {
        return Wrapped.lines(TEXT, "", "");
    }
}
