package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.plant.Heater;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import java.util.ArrayList;
import java.util.List;

/** When the burner or element was on, from the located switchings. */
final class HeaterSpans {

    private final RunResult result;
    private final TimeScale scale;

    HeaterSpans(RunResult result, TimeScale scale) {
        this.result = result;
        this.scale = scale;
    }

    /** The stretches of heating and how long they were in all. */
    Bands bands() {
        List<Bands.Span> spans = new ArrayList<>();
        boolean on = result.trace().value(Channel.HEATER_POWER, 0) > 0;
        double since = 0;
        double total = 0;
        for (Event event : result.events()) {
            if (event.kind() == EventKind.HEATER_ON && !on) {
                on = true;
                since = event.time();
            } else if (event.kind() == EventKind.HEATER_OFF && on) {
                on = false;
                total += event.time() - since;
                spans.add(new Bands.Span(scale.of(since), scale.of(event.time())));
            }
        }
        if (on) {
            total += result.end() - since;
            spans.add(new Bands.Span(scale.of(since), scale.of(result.end())));
        }
        return new Bands(label(spans.size(), total), spans);
    }

    private String label(int count, double seconds) {
        String what = result.system().heater().energy() == Heater.Energy.GAS ? "burner on" : "element on";
        return switch (count) {
            case 0 -> "";
            case 1 -> what + " for " + Times.span(seconds);
            default -> what + " " + Openings.times(count) + ", " + Times.span(seconds) + " in all";
        };
    }
}
