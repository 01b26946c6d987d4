package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.wording.Shown;

/** A hazard, or a limit passed, in a sentence or two: what, when, and what it means. */
final class Alarm {

    private Alarm() {}

    static String of(Event hazard, RunSummary result, Shown shown) {
        return hazard.kind().description() + " after " + Shown.time(hazard.time()) + ", at "
                + shown.pressure(result.gauge(hazard.pressureAbsolute())) + " and "
                + shown.temperature(hazard.waterTemperature()) + ". " + Hazards.meaning(hazard.kind())
                + (hazard.kind().endsRun() ? " The run ends here." : "");
    }
}
