package io.github.heatswell.reference;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.Draw;
import java.util.List;

/** What clock and people change about a mode: taps that open and close, the supply shut off, turns of the timetable. */
final class DayTransitions {

    /** Where water stops being mixed, the way back lies this much higher (K), above the rounding of temperatures. */
    private static final double DEAD_BAND = 1e-8;

    private DayTransitions() {}

    /** Adds every such way to leave a mode of a system. */
    static void add(List<Transition> list, UnreducedSystem system, Mode mode) {
        Agenda agenda = system.agenda();
        Mode.Day day = mode.day();
        if (day.next() < agenda.count()) {
            list.add(next(system, mode));
        }
        if (day.tap() >= 0) {
            Agenda.Entry entry = agenda.entry(day.tap());
            list.add(Transition.of(
                    Event.Kind.DRAW_ENDED,
                    end(system, entry),
                    mode.withDay(day.withTap(-1).withMixing(false))));
            entry.draw().mixedTemperature().ifPresent(wanted -> list.add(mixing(system, mode, wanted)));
        }
    }

    private static Trigger end(UnreducedSystem system, Agenda.Entry entry) {
        Draw draw = entry.draw();
        if (draw.volume().isPresent()) {
            double end = entry.time() + draw.volume().getAsDouble() / draw.flow();
            return (t, y) -> t - end;
        }
        double heat = entry.heatBefore() + draw.heat().orElseThrow();
        int index = system.indexOf(UnreducedSystem.Integral.DELIVERED_TO_END);
        return (t, y) -> y[index] - heat;
    }

    private static Transition mixing(UnreducedSystem system, Mode mode, double wanted) {
        boolean mixing = mode.day().mixing();
        Trigger hotter = (t, y) -> system.tapTemperature(y) - wanted;
        Trigger cooler = (t, y) -> -hotter.value(t, y) - DEAD_BAND;
        return Transition.kink(mixing ? cooler : hotter, mode.withDay(mode.day().withMixing(!mixing)));
    }

    private static Transition next(UnreducedSystem system, Mode mode) {
        Agenda.Entry entry = system.agenda().entry(mode.day().next());
        Mode.Day day = mode.day();
        Mode.Day after = day.advanced();
        Trigger due = (t, y) -> t - entry.time();
        return switch (entry.kind()) {
            case PUMP_ON -> Transition.kink(due, mode.withDay(after.withPumping(true)));
            case PUMP_OFF -> Transition.kink(due, mode.withDay(after.withPumping(false)));
            case MAINS -> Transition.kink(due, mode.withDay(after));
            case SHUT_OFF ->
                Transition.of(Event.Kind.SUPPLY_SHUT_OFF, due, shut(mode).withDay(after.withCutOff(true)));
            case RESTORED -> {
                Mode.Mains way = system.mains().direct() ? Mode.Mains.IN : Mode.Mains.SHUT;
                Mode restored = mode.withMains(way).withDay(after.withCutOff(false));
                yield Transition.of(Event.Kind.SUPPLY_RESTORED, due, restored);
            }
            case DRAW ->
                Transition.of(
                        Event.Kind.DRAW_STARTED,
                        day.tap() < 0 ? due : (t, y) -> -1, // one tap at a time
                        mode.withDay(after.withTap(day.next())));
        };
    }

    private static Mode shut(Mode mode) {
        return mode.withMains(Mode.Mains.SHUT);
    }
}
