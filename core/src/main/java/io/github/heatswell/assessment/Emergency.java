package io.github.heatswell.assessment;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;

/** What to do beside a tank that nobody should go near. */
final class Emergency {

    private static final String STAY_AWAY =
            "Stay away from the tank. If you can do it safely from elsewhere, trip the heater's breaker"
                    + " or shut the gas at the meter. Leave and call for help. Do not lift the relief valve or open a tap.";

    /** For water that boils in the tank, and for pressure beyond what a tank is tested to. */
    static final String LET_NOTHING_IN = STAY_AWAY + " Let no cold water in.";

    /** For hot water that is still held: the cold feed replaces what a valve discharges, and cools the tank. */
    static final String LEAVE_THE_FEED = STAY_AWAY + " Leave the cold feed as it is: what comes in cools the tank.";

    private Emergency() {}

    /** What to do about water hotter than boils in the open: one answer for all findings of a case. */
    static String advice(AssessmentContext subject) {
        boolean lost = subject.run
                .flatMap(RunSummary::hazard)
                .filter(event -> event.kind() == Event.Kind.VAPOUR_FORMS
                        || event.kind() == Event.Kind.TEST_PRESSURE_REACHED
                        || event.kind() == Event.Kind.WATER_OUT_OF_RANGE)
                .isPresent();
        return lost ? LET_NOTHING_IN : LEAVE_THE_FEED;
    }
}
