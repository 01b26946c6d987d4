package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
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
}
