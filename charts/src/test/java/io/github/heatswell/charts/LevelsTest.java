package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The lines a pressure is read against. */
class LevelsTest {

    /** Ten metres above the tank. */
    @Test
    void aHighValvesLinesLieWhereItOpensAndReseats() {
        RunSummary run = Houses.upstairs().summary();
        List<Level> levels = new Levels(run, QuantityFormat.unicode(UnitSystem.SI)).all();
        assertEquals(bar(run, Event.Kind.RELIEF_OPENED), value(levels, Level.Kind.RELIEF_SET), 1e-8); // bar
        // a modulating valve counts as closed a hundredth of a pascal before it is
        assertEquals(bar(run, Event.Kind.RELIEF_RESEATED), value(levels, Level.Kind.RELIEF_RESEAT), 2e-7); // bar
    }

    private static double bar(RunSummary run, Event.Kind kind) {
        return run.events().stream()
                .filter(event -> event.kind() == kind && event.device().equals("attic valve"))
                .mapToDouble(Event::pressureAbsolute)
                .map(absolute -> run.gauge(absolute) / 1e5)
                .findFirst()
                .orElseThrow();
    }

    private static double value(List<Level> levels, Level.Kind kind) {
        return levels.stream()
                .filter(level -> level.kind() == kind && level.name().contains("attic valve"))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
