package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.charts.picture.Axis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartWordingTest {

    @ParameterizedTest
    @CsvSource({
        "60, 11, time since the start (s), 10",
        "180, 11, time since the start (s), 30",
        "3600, 11, time since the start (min), 10",
        "7200, 11, time since the start (min), 20",
        "10800, 11, time since the start (min), 20",
        "21600, 11, time since the start (h), 1",
        "86400, 11, time since the start (h), 3",
        "604800, 11, time since the start (d), 1",
        "2592000, 11, time since the start (d), 7",
        "31536000, 11, time since the start (d), 100",
        "3155760000, 11, time since the start (d), 3650"
    })
    void setsTicksAtHumanMultiples(double end, int most, String label, double tick) {
        Axis axis = TimeScale.to(end, most).axis();
        assertEquals(label, axis.label());
        assertEquals(tick, axis.ticks().get(1).at() - axis.ticks().get(0).at(), 1e-9); // rounding
    }

    @Test
    void hasAScaleForARunOfNoLength() {
        assertEquals(1, TimeScale.to(0, 10).axis().to());
    }

    @Test
    void endsScalesOnRoundNumbers() {
        Axis axis = ValueScale.around("x", new ValueScale.Range(4.2, 7), 0.06, 0.12);
        assertEquals(0.5, axis.ticks().get(1).at() - axis.ticks().get(0).at(), 1e-9); // rounding
        assertEquals(4.0, axis.from(), 1e-12);
        assertEquals(7.5, axis.to(), 1e-12);
        Axis zero = ValueScale.fromZero("x", 2.8);
        assertEquals(0, zero.from());
        assertEquals(3, zero.to(), 1e-12);
    }
}
