package io.github.heatswell.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as a reader sees them: rounded by hand, in both systems of units. */
class MeasureTest {

    /** Pressures by 1 psi = 6894.757 Pa, lengths by 1 in = 25.4 mm, volumes by 1 gal = 3.785412 L. */
    @ParameterizedTest
    @CsvSource({
        "GAUGE_PRESSURE, 700000, 7 bar, 102 psi",
        "GAUGE_PRESSURE, 712345, 7.12 bar, 103 psi",
        "PRESSURE_DIFFERENCE, -30000, -0.3 bar, -4.4 psi",
        "TEMPERATURE, 333.15, 60 °C, 140 °F",
        "TEMPERATURE, 310.93, 37.8 °C, 100 °F",
        "TEMPERATURE_DIFFERENCE, 5, 5 K, 9 °F",
        "VOLUME, 0, 0 L, 0 gal",
        "VOLUME, 0.000004, under 0.01 L, under 0.01 gal",
        "VOLUME, 0.00012, 0.12 L, 0.03 gal",
        "VOLUME, 0.0009, 0.9 L, 0.24 gal",
        "VOLUME, 0.00432, 4.32 L, 1.14 gal",
        "VOLUME, 0.1004, 100 L, 26.5 gal",
        "VOLUME, 0.4997, 500 L, 132 gal",
        "VOLUME, 12.345, 12 300 L, 3260 gal",
        "FLOW, 0.0001, 6 L/min, 1.59 gal/min",
        "FLOW, 0, 0 L/min, 0 gal/min",
        "POWER, 11200, 11.2 kW, 38 200 Btu/h",
        "LENGTH, 1.234, 1.23 m, 48.6 in",
        "TIME, 5400, 1 h 30 min, 1 h 30 min",
        "SHARE, 0.6, 60 %, 60 %",
        "SHARE, 0.0049, 0.49 %, 0.49 %",
        "SHARE, 0.0149, 1.5 %, 1.5 %",
        "SHARE, -0.0049, -0.49 %, -0.49 %"
    })
    void numbersHaveTheDigitsAReaderCanUse(Kind kind, double value, String metric, String us) {
        assertEquals(metric, new Measure(kind, value).text(UnitSystem.SI));
        assertEquals(us, new Measure(kind, value).text(UnitSystem.US));
    }

    /** A debugger or a log shows a sentence whole, its numbers in their places. */
    @Test
    void aSentenceTellsItsNumbers() {
        Statement sentence =
                Statement.of("gets as hot as {}, {} in the run", Measure.temperature(333.15), Measure.gauge(7e5));
        assertEquals("gets as hot as 60 degC, 7 bar in the run", sentence.toString());
    }

    /** A limit of 80 psi is passed by 80.3 psi, not by 80 psi. */
    @Test
    void pressuresThatDifferDoNotReadAlike() {
        Measure limit = Measure.gauge(PressureUnit.PSI.toSi(80));
        assertEquals(
                "80.3 psi against 80 psi",
                Statement.of("{} against {}", Measure.gauge(PressureUnit.PSI.toSi(80.32)), limit)
                        .text(UnitSystem.US));
        assertEquals(
                "83 psi against 80 psi",
                Statement.of("{} against {}", Measure.gauge(PressureUnit.PSI.toSi(83.32)), limit)
                        .text(UnitSystem.US));
        assertEquals(
                "80 psi against 80 psi",
                Statement.of("{} against {}", Measure.gauge(PressureUnit.PSI.toSi(80.03)), limit)
                        .text(UnitSystem.US));
    }

    /** Regression: a check sheet said "4 min 57 s", and a diagnosis "48 min 59 s", of times nobody can tell so closely. */
    @Test
    void aTimeIsToldAsCloselyAsPeopleTellIt() {
        assertEquals("5 min", Measure.about(297).text(UnitSystem.SI).replace('\u00a0', ' '));
        assertEquals("1 min 40 s", Measure.about(98).text(UnitSystem.SI).replace('\u00a0', ' '));
        assertEquals("0 s", Measure.about(-3).text(UnitSystem.SI).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void measureIsFinite(double value) {
        assertThrows(IllegalArgumentException.class, () -> new Measure(Kind.TIME, value));
    }
}
