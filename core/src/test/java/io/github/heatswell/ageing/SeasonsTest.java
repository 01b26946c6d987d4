package io.github.heatswell.ageing;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.study.Houses;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which days of a year are looked at, and what the charge of a vessel is held against. */
class SeasonsTest {

    private static HotWaterSystem house(int dayOfYear) {
        HotWaterSystem house = Parts.lodge(4, 58).vessel(Houses.vessel(18, 4)).build();
        return house.toBuilder()
                .supply(house.supply().toBuilder()
                        .water(SupplyTemperature.seasonal(
                                10, TemperatureUnit.CELSIUS, 20, TemperatureDifferenceUnit.KELVIN))
                        .build())
                .start(Start.builder().dayOfYear(dayOfYear).build())
                .build();
    }

    /** The mains is highest for a moment between two full hours; ten metres up, 0.98 bar of that are missing. */
    @Test
    void highestMomentOfTheDayCounts() {
        HotWaterSystem plain = house(1);
        HotWaterSystem peaked = plain.toBuilder()
                .supply(plain.supply().toBuilder()
                        .mains(MainsPressure.daily(
                                Map.of(0.0, Pressure.gauge(4, BAR), 3.5 * 3600, Pressure.gauge(6, BAR))))
                        .build())
                .build();
        assertEquals(6e5, new Seasons(peaked, 0).staticAt(peaked.vessel().orElseThrow()), 1e-6); // rounding
        HotWaterSystem roof = peaked.toBuilder()
                .vessel(Houses.vessel(18, 4).toBuilder()
                        .height(10, LengthUnit.METRE)
                        .build())
                .build();
        // the published density of water at 10 degC is rounded to 0.05 kg/m3
        assertEquals(
                6e5 - 999.7 * 9.80665 * 10,
                new Seasons(roof, 0).staticAt(roof.vessel().orElseThrow()),
                5);
    }

    /** In every month the day with the coldest water is looked at, and no day of the month is colder. */
    @Test
    void worstDayOfAMonthHasItsColdestWater() {
        for (int start : new int[] {1, 100, 300}) {
            HotWaterSystem house = house(start);
            SupplyTemperature water = house.supply().water();
            Seasons seasons = new Seasons(house, 0);
            double coldestOfAll = Double.POSITIVE_INFINITY;
            int monthOfIt = -1;
            for (int month = 0; month < 12; month++) {
                int worst = seasons.dayOfYear(month);
                int from = month * 365 / 12;
                int to = (month + 1) * 365 / 12;
                boolean inside = false;
                for (int after = from; after < to; after++) {
                    int day = 1 + (start - 1 + after) % 365;
                    assertTrue(water.on(day) >= water.on(worst), "day " + day + " against " + worst);
                    inside |= day == worst && Math.abs(seasons.yearsUntil(month) - after / 365.0) < 1e-12;
                }
                assertTrue(inside, "month " + month + " from day " + start + " has its own day");
                assertEquals(worst, seasons.worstDay(month).start().dayOfYear());
                if (water.on(worst) < coldestOfAll) {
                    coldestOfAll = water.on(worst);
                    monthOfIt = month;
                }
            }
            assertEquals(monthOfIt, seasons.coldestMonth());
        }
    }

    /** The mains swings with the water: half of the swing above on the coldest day of a year, half of it below opposite. */
    @Test
    void mainsIsHighestOnTheColdestDay() {
        HotWaterSystem house = house(1);
        Seasons seasons = new Seasons(house, 1e5);
        double highest = Double.NEGATIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        for (int month = 0; month < 12; month++) {
            HotWaterSystem day = seasons.worstDay(month);
            double gauge = day.supplyAtStart().gauge(day.site().atmosphere());
            highest = Math.max(highest, gauge);
            lowest = Math.min(lowest, gauge);
        }
        assertEquals(4.5e5, highest, 1); // Pa; the very day is among them
        assertEquals(3.5e5, lowest, 0.04e5); // the worst day of the warmest month lies up to a month beside the warmest
    }

    /** Where the water is as cold all the year, the mains decides: it is highest on the first day, lowest in the middle. */
    @Test
    void highestMainsDecidesWhereTheWaterDoesNot() {
        HotWaterSystem even = Parts.lodge(4, 58).vessel(Houses.vessel(18, 4)).build();
        Seasons seasons = new Seasons(even, 1e5);
        int start = even.start().dayOfYear();
        for (int month = 0; month < 12; month++) {
            int first = 1 + (start - 1 + month * 365 / 12) % 365;
            int last = 1 + (start - 2 + (month + 1) * 365 / 12) % 365;
            double onFirst = Math.cos(2 * Math.PI * (first - 1) / 365);
            double onLast = Math.cos(2 * Math.PI * (last - 1) / 365);
            boolean turns = first > last; // the new year lies inside
            assertEquals(turns ? 1 : onFirst > onLast ? first : last, seasons.dayOfYear(month), "month " + month);
        }
    }

    /** A swing that takes the mains out of its range is refused by name, upwards and downwards. */
    @ParameterizedTest
    @ValueSource(doubles = {60e5, -60e5, 9e5, -9e5})
    void swingOutsideTheMainssRangeIsRefused(double swing) {
        Seasons seasons = new Seasons(house(1), swing);
        String message =
                assertThrows(IllegalArgumentException.class, seasons::check).getMessage();
        assertTrue(message.startsWith("mains-swing: with it, the mains' "), message);
    }
}
