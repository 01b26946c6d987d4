package io.github.heatswell.scenarios.report;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;

/** A hazard, or a limit passed, in a sentence or two: what, when, and what it means. */
final class Alarm {

    private Alarm() {}

    static String of(Event hazard, RunSummary result, QuantityFormat shown) {
        return hazard.kind().description() + " after " + shown.time(hazard.time()) + ", at "
                + shown.pressure(result.gauge(hazard.pressureAbsolute())) + " and "
                + shown.temperature(hazard.waterTemperature()) + ". " + Hazards.meaning(hazard.kind())
                + (hazard.kind().endsRun() ? " The run ends here." : "");
    }
}
