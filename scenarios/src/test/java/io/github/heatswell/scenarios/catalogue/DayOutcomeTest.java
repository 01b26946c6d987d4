package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.scenarios.catalogue.Runs.count;
import static io.github.heatswell.scenarios.catalogue.Runs.litres;
import static io.github.heatswell.scenarios.catalogue.Runs.peak;
import static io.github.heatswell.scenarios.catalogue.Runs.relieved;
import static io.github.heatswell.scenarios.catalogue.Runs.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import org.junit.jupiter.api.Test;

/** How days go by. */
class DayOutcomeTest {

    @Test
    void theValveOpensAfterTheLargerDraws() {
        RunResult result = run("weir-house-day");
        long draws = count(result, Event.Kind.DRAW_STARTED);
        long openings = count(result, Event.Kind.RELIEF_OPENED);
        assertEquals(23, draws);
        assertTrue(openings >= 4 && openings < draws / 2, openings + " openings");
        assertEquals(5.845, result.totals().heatDelivered() / 3.6e6, 0.06); // the profile's energy, to 1 %
    }

    @Test
    void mixingTakesLessFromTheTank() {
        RunResult result = run("weir-house-timetable");
        double drawn = litres(result.totals().drawn());
        assertTrue(drawn > 60 && drawn < 100, drawn + " L for more than 115 L at the taps");
    }

    @Test
    void aLayeredTankDrivesOutLessThanAMixedOne() {
        double layered = relieved(run("weir-house-layers"));
        double mixed = relieved(run("weir-house-mixed"));
        assertEquals(0.965, layered, 0.01);
        assertTrue(mixed > 1.05 * layered, mixed + " L against " + layered + " L");
    }

    @Test
    void twoElementsTakeTurns() {
        RunResult result = run("weir-house-two-elements");
        Trace trace = result.trace();
        for (int i = 0; i < trace.count(); i++) {
            assertTrue(trace.value(Channel.HEATER_POWER, i) <= 3_000);
        }
        assertTrue(result.events().stream().anyMatch(event -> event.device().equals("upper element")));
        assertTrue(trace.value(Channel.WATER_TOP, 90) > trace.value(Channel.WATER_BOTTOM, 90) + 20);
    }

    @Test
    void aSmallVesselIsEnoughForADayOfMediumUse() {
        RunResult result = run("birch-street-day");
        assertEquals(0, relieved(result));
        assertTrue(peak(result) < 10);
        assertEquals(208, litres(result.totals().drawn()), 3); // 55 gal
    }
}
