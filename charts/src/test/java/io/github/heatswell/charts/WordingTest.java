package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {

    private static final Amounts SI = new Amounts(UnitSystem.SI);
    private static final Amounts US = new Amounts(UnitSystem.US);

    @ParameterizedTest
    @CsvSource({
        "0, at the start",
        "0.4, at the start",
        "42.3, after 42 s",
        "119.4, after 119 s",
        "120, after 2 min",
        "276, after 4.6 min",
        "596, after 9.9 min",
        "597, after 10 min",
        "4440, after 74 min",
        "5969, after 99 min",
        "5970, after 1 h 40 min",
        "7200, after 2 h",
        "8100, after 2 h 15 min",
        "172799, after 2 d",
        "280800, after 3 d 6 h",
        "3456000, after 40 d",
        "94672800, after 3.0 years"
    })
    void saysTimesAsPeopleDo(double seconds, String words) {
        assertEquals(words, Times.after(seconds));
    }

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
        assertEquals(tick, axis.tick());
    }

    @Test
    void hasAScaleForARunOfNoLength() {
        assertEquals(1, TimeScale.to(0, 10).axis().to());
    }

    @Test
    void keepsTheDigitsAChosenPressureWasGivenWith() {
        assertEquals("7.0 bar", SI.chosenPressure(7e5));
        assertEquals("6.95 bar", SI.chosenPressure(6.95e5));
        assertEquals("150 psi", US.chosenPressure(150 * 6894.757293168));
        assertEquals("60.9 psi", US.chosenPressure(4.2e5));
    }

    @Test
    void givesFoundVolumesTwoDigits() {
        assertEquals("0 L", SI.foundVolume(0));
        assertEquals("less than 0.01 L", SI.foundVolume(4e-6));
        assertEquals("0.42 L", SI.foundVolume(0.42e-3));
        assertEquals("1.0 L", SI.foundVolume(0.996e-3));
        assertEquals("3.1 L", SI.foundVolume(3.14e-3));
        assertEquals("123 L", SI.foundVolume(0.1234));
        assertEquals("0.83 gal", US.foundVolume(3.14e-3));
    }

    @Test
    void givesChosenVolumesAsChosen() {
        assertEquals("190 L", SI.chosenVolume(0.19));
        assertEquals("18 L", SI.chosenVolume(0.018));
        assertEquals("2.5 L", SI.chosenVolume(0.0025));
        assertEquals("50.2 gal", US.chosenVolume(0.19));
    }

    @Test
    void endsScalesOnRoundNumbers() {
        Axis axis = ValueScale.around("x", new ValueScale.Range(4.2, 7), 0.06, 0.12);
        assertEquals(0.5, axis.tick());
        assertEquals(4.0, axis.from(), 1e-12);
        assertEquals(7.5, axis.to(), 1e-12);
        Axis zero = ValueScale.fromZero("x", 2.8);
        assertEquals(0, zero.from());
        assertEquals(3, zero.to(), 1e-12);
    }
}
