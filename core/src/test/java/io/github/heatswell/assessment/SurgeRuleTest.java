package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: when a surge of the mains is named, and in which words. */
class SurgeRuleTest {

    /** Mains pressure is 4 bar, and higher at 03:10, after a rise and before a fall of so many seconds. */
    private static Supply.Builder surging(double bar, double seconds) {
        Pressure low = Pressure.gauge(4, BAR);
        double top = 3 * 3600 + 600;
        return supply(4)
                .mains(MainsPressure.daily(
                        Map.of(0.0, low, top - seconds, low, top, Pressure.gauge(bar, BAR), top + seconds, low)));
    }

    /** Warm, so that the heater is not on when the surge comes. */
    private static HotWaterSystem.Builder warm(Supply.Builder supply) {
        return house().supply(supply.build())
                .start(Start.builder().water(60, TemperatureUnit.CELSIUS).build());
    }

    private static Optional<Finding> found(HotWaterSystem house, int hours) {
        List<Finding> all =
                Findings.of(Simulation.of(house, Duration.ofHours(hours)).run().summary());
        return all.stream().filter(one -> one.id().equals("surge-trapped")).findFirst();
    }

    @Test
    void itIsNamedWithItsHour() {
        Finding surge = found(warm(surging(5.2, 60)).build(), 6).orElseThrow();
        String said = surge.sentence().text(UnitSystem.SI);
        assertTrue(
                said.startsWith("A surge of the mains to 5.2 bar was trapped by the check valve at 03:10: for "), said);
        assertTrue(said.endsWith("the pressure stayed up to 1.2 bar above the supply, without any heating."), said);
        assertEquals(Finding.Severity.NOTE, surge.severity());
    }

    @Test
    void ofSeveralDaysTheFirstIsToldAndHowManyThereWere() {
        // a tap at 02:00 lets the pressure back each night
        Draw tap = Draw.ofVolume(7_200, 1, VolumeUnit.LITRE, 5, FlowUnit.LITRE_PER_MINUTE);
        HotWaterSystem house = warm(surging(5.2, 60))
                .draws(DrawProfile.of("a tap", List.of(tap)))
                .build();
        String said = found(house, 54).orElseThrow().sentence().text(UnitSystem.SI);
        assertTrue(said.contains("the check valve at 03:10: for "), said);
        assertTrue(said.endsWith("That happened 3 times in the run."), said);
    }

    /** A slow rise is the night; a small one is not worth a word; without a check valve nothing stays. */
    @ParameterizedTest
    @CsvSource({"5.2, 60, true", "5.2, 1200, true", "5.2, 7200, false", "4.29, 60, false", "4.31, 60, true"})
    void onlyAShortAndClearSurgeIsOne(double bar, double seconds, boolean named) {
        assertEquals(named, found(warm(surging(bar, seconds)).build(), 6).isPresent());
    }

    @Test
    void anOpenConnectionTrapsNothing() {
        Supply.Builder open = surging(5.2, 60).arrangement(Supply.Arrangement.DIRECT);
        assertEquals(Optional.empty(), found(warm(open).build(), 6));
    }

    /**
     * Runs written by hand: the mains stand at 4 bar, pass a top of 5 bar at 07:00 and stand at what is given from a minute later; the
     * run begins at 06:00, and at its minute 60 the check valve closes behind the top.
     */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "4, -, NOTE, 1",
                "4.5, -, NOTE, 0.5",
                "4.71, -, -, 0",
                "5, -, -, 0",
                // ten minutes make a difference, whatever ends them
                "4, DRAW_STARTED@70, NOTE, 1",
                "4, DRAW_STARTED@69, -, 0",
                "4, RELIEF_OPENED@69, -, 0",
                // what is heated or drawn meanwhile is no surge
                "4, HEATER_ON@30 HEATER_OFF@65, -, 0",
                "4, HEATER_ON@30 HEATER_OFF@59, NOTE, 1",
                "4, DRAW_STARTED@30 DRAW_ENDED@65, -, 0",
                // a valve that opens before the supply feeds again opens from there
                "4, RELIEF_OPENED@120, CAUTION, 1",
                "4, RELIEF_OPENED@30, NOTE, 1",
                "4, SUPPLY_OPENED@100 RELIEF_OPENED@120, NOTE, 1",
                "4, HEATER_ON@120, NOTE, 1"
            })
    void whatIsTrappedLastsAndStandsAbove(double after, String others, Finding.Severity severity, double above) {
        Pressure low = Pressure.gauge(4, BAR);
        Pressure later = Pressure.gauge(after, BAR);
        double top = 7 * 3600;
        HotWaterSystem house = house().start(
                        Start.builder().timeOfDay(6, DurationUnit.HOUR).build())
                .supply(supply(4)
                        .mains(MainsPressure.daily(Map.of(
                                0.0,
                                low,
                                top - 60,
                                low,
                                top,
                                Pressure.gauge(5, BAR),
                                top + 60,
                                later,
                                top + 18_000,
                                later,
                                top + 18_060,
                                low)))
                        .build())
                .build();
        String all = "SUPPLY_CLOSED@60" + (others == null ? "" : " " + others);
        Event[] events = Arrays.stream(all.split(" "))
                .map(one -> one.split("@"))
                .map(one -> at(Integer.parseInt(one[1]), Event.Kind.valueOf(one[0])))
                .sorted(Comparator.comparingDouble(Event::time))
                .toArray(Event[]::new);
        Optional<Finding> surge = Findings.of(FaultlessHouse.run(house, 5, 60, events)).stream()
                .filter(one -> one.id().equals("surge-trapped"))
                .findFirst();
        assertEquals(Optional.ofNullable(severity), surge.map(Finding::severity));
        surge.ifPresent(found -> {
            assertEquals(above * 1e5, found.found().orElseThrow().value(), 1e-6); // rounding
            boolean opened = severity == Finding.Severity.CAUTION;
            String said = found.sentence().text(UnitSystem.SI);
            assertEquals(opened, said.endsWith("Heating from there on opened a relief valve."), said);
            if (others != null && others.endsWith("@70")) {
                assertTrue(said.contains(": for 10 min "), said);
            }
        });
    }

    private static Event at(int minute, Event.Kind kind) {
        Optional<Event.OpeningCause> cause =
                kind == Event.Kind.RELIEF_OPENED ? Optional.of(Event.OpeningCause.PRESSURE) : Optional.empty();
        return new Event(60 * minute, kind, "", 5e5 + 101_325, 333.15, cause);
    }
}
