package io.github.heatswell.scenarios.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockAndCalendarTest {

    @ParameterizedTest
    @CsvSource({"00:00, 0", "6:05, 21900", "23:59:59, 86399", "' 12:00 ', 43200"})
    void clocksAreRead(String text, double seconds) {
        assertEquals(seconds, ClockTime.read(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "6", "24:00", "12:60", "12:00:60", "-1:00", "6.30", "06:3", "noon", "7 pm"})
    void otherTimesAreRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> ClockTime.read(text));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "366, 366", "15 Jan, 15", "1 march, 60", "July 4, 185", "31. Dec., 365", "Sept 1, 244"})
    void daysAreRead(String text, int day) {
        assertEquals(day, DayOfYear.read(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "367", "29 Feb", "31 Jun", "15 Ja", "15 Janvier", "2026-01-15", "15/1", "1.5"})
    void otherDaysAreRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> DayOfYear.read(text));
    }

    @ParameterizedTest
    @CsvSource({"7:05 am, 25500", "12:00 am, 0", "12:30 PM, 45000", "11:59 p.m., 86340"})
    void twelveHoursAreUnderstood(String text, double seconds) {
        assertEquals(seconds, ClockTime.read(text));
    }
}
