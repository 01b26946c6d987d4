package io.github.heatswell.reference;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is known of a run beforehand to happen at a time: taps that open, the supply shut off, turns of the timetable. */
final class Agenda {

    private static final double DAY = 86_400;

    private final List<Entry> entries = new ArrayList<>();

    /** What happens. */
    enum Kind {
        /** A tap opens. */
        DRAW,
        /** The supply is shut off. */
        SHUT_OFF,
        /** The supply is opened again. */
        RESTORED,
        /** The mains' pressure begins to change at another rate. */
        MAINS,
        /** The pump of a circulation loop starts. */
        PUMP_ON,
        /** It stops. */
        PUMP_OFF
    }

    /**
     * One entry.
     *
     * @param time since the start of the run (s)
     * @param kind what happens
     * @param draw the draw that begins, or null
     * @param heatBefore the heat (J) that the draws ended by heat before this one delivered; each ends exactly
     */
    record Entry(double time, Kind kind, Draw draw, double heatBefore) {}

    /**
     * The agenda of a run.
     *
     * @param system what is run
     * @param days how many days it may last at most
     */
    Agenda(HotWaterSystem system, int days) {
        List<Entry> unsorted = new ArrayList<>();
        double clock = system.start().timeOfDay();
        for (int day = 0; day <= days; day++) {
            double midnight = day * DAY - clock;
            for (Draw draw : system.draws().draws()) {
                unsorted.add(new Entry(midnight + draw.timeOfDay(), Kind.DRAW, draw, 0));
            }
            system.circulation().stream().flatMap(loop -> loop.hours().stream()).forEach(hours -> {
                unsorted.add(new Entry(midnight + hours.from(), Kind.PUMP_ON, null, 0));
                unsorted.add(new Entry(midnight + hours.to(), Kind.PUMP_OFF, null, 0));
            });
            if (!system.supply().mains().isConstant()) {
                for (double time : system.supply().mains().entries().keySet()) {
                    unsorted.add(new Entry(midnight + time, Kind.MAINS, null, 0));
                }
            }
        }
        for (Supply.Outage outage : system.supply().outages()) {
            unsorted.add(new Entry(outage.from(), Kind.SHUT_OFF, null, 0));
            unsorted.add(new Entry(outage.to(), Kind.RESTORED, null, 0));
        }
        unsorted.removeIf(entry -> entry.time() < 0);
        unsorted.sort(Comparator.comparingDouble(Entry::time));
        double heat = 0;
        for (Entry entry : unsorted) {
            entries.add(new Entry(entry.time(), entry.kind(), entry.draw(), heat));
            heat += entry.draw() == null ? 0 : entry.draw().heat().orElse(0);
        }
    }

    int count() {
        return entries.size();
    }

    Entry entry(int place) {
        return entries.get(place);
    }
}
