package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Mark;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunResult;
import java.util.ArrayList;
import java.util.List;

/** The moments marked on the pressure of one run. Where they would cover each other some are left out, and it is said. */
final class Marks {

    private final RunResult result;
    private final Amounts amounts;
    private final TimeScale scale;
    private final double leastDistance;

    Marks(RunResult result, Amounts amounts, TimeScale scale, double leastDistance) {
        this.result = result;
        this.amounts = amounts;
        this.scale = scale;
        this.leastDistance = leastDistance;
    }

    /** All marks, the gravest first, so that its words find their place before all others. */
    List<Mark> all() {
        List<Mark> marks = new ArrayList<>();
        result.hazard()
                .ifPresent(hazard -> marks.add(mark(
                        Mark.Kind.HAZARD,
                        hazard,
                        hazard.kind().description() + " " + Times.after(hazard.time()) + ": the run ends")));
        marks.addAll(repeated(
                events(EventKind.WORKING_PRESSURE_EXCEEDED, ""),
                Mark.Kind.WORKING_PRESSURE_EXCEEDED,
                "working pressure exceeded"));
        for (ReliefValve valve : result.system().reliefValves()) {
            String whose = result.system().reliefValves().size() == 1 ? "" : valve.name() + " ";
            marks.addAll(
                    repeated(events(EventKind.RELIEF_OPENED, valve.name()), Mark.Kind.RELIEF_OPENED, whose + "opens"));
            List<Event> reseats = events(EventKind.RELIEF_RESEATED, valve.name());
            marks.addAll(repeated(reseats, Mark.Kind.RELIEF_RESEATED, reseats.size() == 1 ? whose + "reseats" : ""));
        }
        marks.addAll(repeated(events(EventKind.VESSEL_BOTTOMED_OUT, ""), Mark.Kind.VESSEL_FULL, "vessel full"));
        addHighest(marks);
        return marks;
    }

    private List<Event> events(EventKind kind, String device) {
        return result.events().stream()
                .filter(event -> event.kind() == kind && event.device().equals(device))
                .toList();
    }

    private List<Mark> repeated(List<Event> events, Mark.Kind kind, String what) {
        List<Event> drawn = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Event event : events) {
            if (scale.of(event.time()) - last >= leastDistance) {
                drawn.add(event);
                last = scale.of(event.time());
            }
        }
        List<Mark> marks = new ArrayList<>();
        for (Event event : drawn) {
            String label = marks.isEmpty() && !what.isEmpty() ? label(what, events, drawn.size()) : "";
            marks.add(mark(kind, event, label));
        }
        return marks;
    }

    private static String label(String what, List<Event> events, int drawn) {
        String after = Times.after(events.get(0).time());
        if (events.size() == 1) {
            return what + " " + after;
        }
        String often = what + " " + Openings.times(events.size()) + ", first " + after;
        return drawn == events.size() ? often : often + "; " + drawn + " marked";
    }

    /** The highest pressure has words of its own unless another mark stands there and says as much. */
    private void addHighest(List<Mark> marks) {
        Extreme highest = result.extremes().highestPressure();
        boolean steady = amounts.decimalsToShow(
                        highest.value() - result.extremes().lowestPressure().value())
                != 0;
        double value = gauge(highest.value());
        double time = scale.of(highest.time());
        boolean said = marks.stream()
                .anyMatch(mark -> mark.kind().compareTo(Mark.Kind.RELIEF_OPENED) <= 0
                        && Math.abs(mark.value() - value) <= 0.005 * value);
        if (!steady && !said) {
            String label = "highest: " + amounts.foundPressure(result.gauge(highest.value())) + " "
                    + Times.after(highest.time());
            marks.add(new Mark(Mark.Kind.HIGHEST, time, value, label));
        }
    }

    private Mark mark(Mark.Kind kind, Event event, String label) {
        return new Mark(kind, scale.of(event.time()), gauge(event.pressureAbsolute()), label);
    }

    private double gauge(double absolute) {
        return amounts.units().pressure().fromSi(result.gauge(absolute));
    }
}
