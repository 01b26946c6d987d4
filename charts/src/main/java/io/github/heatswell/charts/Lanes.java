package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.narrative.Moments;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.Heater;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** The lanes of bars at the foot of the panels of one run: what was on, and for how long. */
final class Lanes {

    private final RunSummary summary;
    private final QuantityFormat amounts;
    private final TimeScale scale;
    private final Moments moments;

    Lanes(RunSummary summary, QuantityFormat amounts, TimeScale scale, Moments moments) {
        this.summary = summary;
        this.amounts = amounts;
        this.scale = scale;
        this.moments = moments;
    }

    /** Lanes that concern the pressure: an open bypass, a valve discharging supply water, the supply shut off. */
    List<Bands> underPressure() {
        List<Bands> lanes = new ArrayList<>();
        add(lanes, Bands.Kind.BYPASS, summary.joined(Interval.Phase.BYPASS_OPEN), "bypass open");
        String valve = summary.system().reliefValves().size() == 1 ? "relief valve runs" : "relief valves run";
        add(lanes, Bands.Kind.RELIEF, Interval.joined(summary.fedRelief()), valve + " on water from the supply");
        add(lanes, Bands.Kind.SUPPLY_OFF, summary.joined(Interval.Phase.SUPPLY_SHUT_OFF), "supply shut off");
        return lanes;
    }

    /** Lanes that concern the temperature: the heater, and above it the taps. */
    List<Bands> underTemperature() {
        List<Bands> lanes = new ArrayList<>();
        String what = summary.system().heater().energy() == Heater.Energy.GAS ? "burner on" : "element on";
        add(lanes, Bands.Kind.HEATER, summary.joined(Interval.Phase.HEATER_ON), what);
        List<Interval> draws = summary.intervals(Interval.Phase.DRAW);
        if (!draws.isEmpty()) {
            String label = (draws.size() == 1 ? "1 draw of " : draws.size() + " draws, ")
                    + amounts.volume(summary.totals().drawn())
                    + (draws.size() == 1 ? "" : " in all");
            lanes.add(new Bands(Bands.Kind.DRAWS, label, onScale(draws)));
        }
        return lanes;
    }

    private void add(List<Bands> lanes, Bands.Kind kind, List<Interval> stretches, String what) {
        if (!stretches.isEmpty()) {
            lanes.add(new Bands(kind, label(kind, what, stretches), onScale(stretches)));
        }
    }

    private String label(Bands.Kind kind, String what, List<Interval> stretches) {
        String length = amounts.time(Interval.total(stretches));
        if (stretches.size() > 1) {
            return what + " " + QuantityFormat.times(stretches.size()) + ", " + length + " in all";
        }
        boolean told = kind == Bands.Kind.HEATER || kind == Bands.Kind.RELIEF;
        String since = told ? "" : " " + moments.at(stretches.get(0).from()).text(amounts);
        return what + since + " for " + length;
    }

    private List<Bands.Span> onScale(List<Interval> stretches) {
        return stretches.stream()
                .map(stretch -> new Bands.Span(scale.of(stretch.from()), scale.of(stretch.to())))
                .toList();
    }
}
