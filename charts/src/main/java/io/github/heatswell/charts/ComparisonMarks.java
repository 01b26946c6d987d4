package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Mark;
import io.github.heatswell.narrative.Moments;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** The few moments marked on one of several curves: the hazard, and the first opening of a relief valve. */
final class ComparisonMarks {

    private final NamedRun run;
    private final QuantityFormat amounts;
    private final TimeScale scale;
    private final Moments moments;

    ComparisonMarks(NamedRun run, QuantityFormat amounts, TimeScale scale, Moments moments) {
        this.moments = moments;
        this.run = run;
        this.amounts = amounts;
        this.scale = scale;
    }

    List<Mark> all() {
        List<Mark> marks = new ArrayList<>();
        run.result()
                .hazard()
                .ifPresent(event -> marks.add(mark(
                        Mark.Kind.HAZARD,
                        event,
                        run.name() + ": " + event.kind().description() + " "
                                + moments.at(event.time()).text(amounts))));
        run.result()
                .first(EventKind.RELIEF_OPENED)
                .ifPresent(event -> marks.add(mark(Mark.Kind.RELIEF_OPENED, event, "")));
        return marks;
    }

    private Mark mark(Mark.Kind kind, Event event, String label) {
        double gauge = run.result().gauge(event.pressureAbsolute());
        return new Mark(kind, scale.of(event.time()), amounts.units().pressure().fromSi(gauge), label);
    }
}
