package io.github.heatswell.charts;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** The moments marked on the pressure of one run. Marks that would overlap are left out, with a note. */
final class Marks {

    /** With more openings than this, reseats are shown only by the reseat level. */
    private static final int MAX_WITH_RESEATS = 20;

    private final RunResult result;
    private final QuantityFormat amounts;
    private final TimeScale scale;
    private final Moments moments;
    private final double leastDistance;

    Marks(RunResult result, QuantityFormat amounts, TimeScale scale, double leastDistance) {
        this.result = result;
        this.amounts = amounts;
        this.scale = scale;
        this.moments = Moments.of(result.system(), result.end());
        this.leastDistance = leastDistance;
    }

    /** All marks, the gravest first, so that its words find their place before all others. */
    List<Mark> all() {
        List<Mark> marks = new ArrayList<>();
        result.hazard()
                .ifPresent(hazard -> marks.add(mark(
                        Mark.Kind.HAZARD,
                        hazard,
                        hazard.kind().description() + " " + at(hazard.time()) + ": the run ends",
                        0)));
        marks.addAll(repeated(
                events(Event.Kind.WORKING_PRESSURE_EXCEEDED, ""),
                Mark.Kind.WORKING_PRESSURE_EXCEEDED,
                Limit.workingPressureExceeded(result.system()),
                0));
        List<ReliefValve> valves = result.system().reliefValves();
        for (int device = 0; device < valves.size(); device++) {
            addValve(marks, valves.get(device).name(), device, valves.size() == 1);
        }
        for (String vessel : result.system().vesselNames()) {
            marks.addAll(repeated(
                    events(Event.Kind.VESSEL_BOTTOMED_OUT, vessel),
                    Mark.Kind.VESSEL_FULL,
                    amounts.units().spelled(vessel.isEmpty() ? "vessel full" : "vessel “" + vessel + "” full"),
                    0));
        }
        addHighest(marks);
        return marks;
    }

    /**
     * Openings by temperature, for the temperature panel, where they mark the limit they held.
     */
    List<Mark> byTemperature() {
        List<Mark> marks = new ArrayList<>();
        result.events().stream()
                .filter(event -> event.kind() == Event.Kind.CUT_OUT_TRIPPED)
                .map(event -> onTemperature(
                        Mark.Kind.CUT_OUT_TRIPPED,
                        event,
                        "cut-out trips " + at(event.time()) + ", heater off until reset",
                        0))
                .forEach(marks::add);
        List<ReliefValve> valves = result.system().reliefValves();
        for (int device = 0; device < valves.size(); device++) {
            String name = valves.get(device).name();
            List<Event> hot = result.summary().openedByTemperature(name).toList();
            List<Event> drawn = thinned(hot);
            for (Event event : drawn) {
                String label = event == drawn.get(0) ? label(name + " opens fully", hot, drawn.size()) : "";
                marks.add(onTemperature(Mark.Kind.RELIEF_OPENED_HOT, event, label, device));
            }
        }
        return marks;
    }

    private void addValve(List<Mark> marks, String name, int device, boolean alone) {
        String whose = alone ? "" : name + " ";
        List<Event> openings = new ArrayList<>();
        List<Event> reseatPressure = new ArrayList<>();
        boolean hot = false;
        for (Event event : result.events()) {
            boolean own = event.device().equals(name);
            if (own && event.kind().hasCause()) {
                hot = event.openedByTemperature();
            }
            if (own && !hot && event.kind() == Event.Kind.RELIEF_OPENED) {
                openings.add(event);
            } else if (own && !hot && event.kind() == Event.Kind.RELIEF_RESEATED) {
                reseatPressure.add(event);
            }
        }
        List<Mark> opened = repeated(openings, Mark.Kind.RELIEF_OPENED, whose + "opens", device);
        marks.addAll(opened);
        if (opened.size() <= MAX_WITH_RESEATS) {
            String what = reseatPressure.size() == 1 ? whose + "reseats" : "";
            marks.addAll(repeated(reseatPressure, Mark.Kind.RELIEF_RESEATED, what, device));
        }
    }

    private List<Event> events(Event.Kind kind, String device) {
        return result.events().stream()
                .filter(event -> event.kind() == kind && event.device().equals(device))
                .toList();
    }

    private List<Mark> repeated(List<Event> events, Mark.Kind kind, String what, int device) {
        List<Event> drawn = thinned(events);
        List<Mark> marks = new ArrayList<>();
        for (Event event : drawn) {
            String label = marks.isEmpty() && !what.isEmpty() ? label(what, events, drawn.size()) : "";
            marks.add(mark(kind, event, label, device));
        }
        return marks;
    }

    /** Those that stand far enough from the one before. */
    private List<Event> thinned(List<Event> events) {
        List<Event> drawn = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Event event : events) {
            if (scale.of(event.time()) - last >= leastDistance) {
                drawn.add(event);
                last = scale.of(event.time());
            }
        }
        return drawn;
    }

    private String label(String what, List<Event> events, int drawn) {
        String first = at(events.get(0).time());
        if (events.size() == 1) {
            return what + " " + first;
        }
        String often = what + " " + QuantityFormat.times(events.size()) + ", first " + first;
        return drawn == events.size() ? often : often + "; " + drawn + " marked";
    }

    /** The highest pressure is labelled unless another mark there says so. */
    private void addHighest(List<Mark> marks) {
        RunSummary.Extreme highest = result.extremes().highestPressure();
        boolean steady = result.extremes().isSteady();
        double value = gauge(highest.value());
        double time = scale.of(highest.time());
        boolean said = marks.stream()
                .anyMatch(mark -> mark.kind().compareTo(Mark.Kind.RELIEF_OPENED) <= 0
                        && Math.abs(mark.up() - value) <= 0.005 * value);
        if (!steady && !said) {
            String label = "highest: " + amounts.pressure(result.gauge(highest.value())) + " " + at(highest.time());
            marks.add(new Mark(Mark.Kind.HIGHEST, time, value, label));
        }
    }

    private Mark mark(Mark.Kind kind, Event event, String label, int device) {
        return new Mark(kind, scale.of(event.time()), gauge(event.pressureAbsolute()), label, device);
    }

    private Mark onTemperature(Mark.Kind kind, Event event, String label, int device) {
        double value = amounts.units().temperature().fromSi(event.waterTemperature());
        return new Mark(kind, scale.of(event.time()), value, label, device);
    }

    private double gauge(double absolute) {
        return amounts.units().pressure().fromSi(result.gauge(absolute));
    }

    private String at(double seconds) {
        return moments.at(seconds).text(amounts);
    }
}
