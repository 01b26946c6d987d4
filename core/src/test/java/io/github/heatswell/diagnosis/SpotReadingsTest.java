package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Regression: what no gauge on a house can show is refused wherever a reading comes from. */
class SpotReadingsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            COLD_STATIC     | 420e5    | cold-static: 420 bar is outside the allowed range, 0 bar to 25 bar
            COLD_STATIC     | 4200     |
            COLD_STATIC     | -1e5     | cold-static: -1 bar is outside the allowed range, 0 bar to 25 bar
            TYRE_GAUGE      | 26e5     | tyre-gauge: 26 bar is outside the allowed range, 0 bar to 25 bar
            HEAT_UP_MAXIMUM | 51e5     | heat-up-maximum: 51 bar is outside the allowed range, 0 bar to 50 bar
            NEXT_MORNING    | 51e5     | next-morning: 51 bar is outside the allowed range, 0 bar to 50 bar
            HOT_TAP         | 58       | hot-tap: -215.15 degC is outside the allowed range, 0 degC to 110 degC
            HOT_TAP         | 331.15   |
            CAUGHT_VOLUME   | 3        | caught-volume: 3000 L is outside the allowed range, 0 L to 1000 L
            METER_AT_REST   | 2.001    | meter-at-rest: 2001 L is outside the allowed range, 0 L to 2000 L
            """)
    void refusesWhatNoReadingCanBe(SiteCheck check, double value, String message) {
        if (message == null) {
            assertEquals(
                    value,
                    SpotReadings.none().with(check, value).all().get(check).value());
        } else {
            refused(check, value, check.usualUncertainty(), message);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            COLD_STATIC   | 4.2e5  | 2.2e5  | cold-static: the uncertainty 2.2 bar is too large beside the reading of 4.2 bar
            HOT_TAP       | 331.15 | 11     | hot-tap: the uncertainty 11 K is too large beside the reading of 58 degC
            CAUGHT_VOLUME | 3e-3   | 1.6e-3 | caught-volume: the uncertainty 1.6 L is too large beside the reading of 3 L
            """)
    void refusesUncertaintiesThatLeaveNothing(SiteCheck check, double value, double uncertainty, String message) {
        refused(
                check,
                value,
                uncertainty,
                message + " to be of use; repeat the reading more precisely, or leave it out");
    }

    @ParameterizedTest
    @EnumSource
    void theLimitsThemselvesAreReadings(SiteCheck check) {
        Limits limits = check.limits();
        SpotReadings.none().with(check, limits.low());
        SpotReadings.none().with(check, new SpotReading(limits.high(), check.largestUncertainty(limits.high())));
        assertThrows(
                IllegalArgumentException.class,
                () -> SpotReadings.none().with(check, Math.nextUp(1.001 * limits.high())));
    }

    /** Regression: a tyre gauge's 3.4 bar, given without its unit, was a vessel without charge. */
    @Test
    void aReadingIsGivenInPascalOrWithItsUnit() {
        SpotReadings none = SpotReadings.none();
        assertEquals(
                "tyre-gauge: 3.4 Pa is hardly a pressure; name the unit if it is not in pascal",
                assertThrows(IllegalArgumentException.class, () -> none.with(SiteCheck.TYRE_GAUGE, 3.4))
                        .getMessage());
        assertEquals(
                "tyre-gauge: degC is no unit of it; its usual one is bar",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> none.with(SiteCheck.TYRE_GAUGE, 3.4, TemperatureUnit.CELSIUS))
                        .getMessage());
        SpotReadings read = none.with(SiteCheck.TYRE_GAUGE, 3.4, PressureUnit.BAR);
        assertEquals(3.4e5, read.all().get(SiteCheck.TYRE_GAUGE).value(), 1e-9);
        assertEquals(
                0,
                none.with(SiteCheck.TYRE_GAUGE, 0)
                        .all()
                        .get(SiteCheck.TYRE_GAUGE)
                        .value());
    }

    private static void refused(SiteCheck check, double value, double uncertainty, String message) {
        SpotReading reading = new SpotReading(value, uncertainty);
        assertEquals(
                message,
                assertThrows(
                                IllegalArgumentException.class,
                                () -> SpotReadings.none().with(check, reading))
                        .getMessage());
    }

    /** Regression: the highest reading of a log, given once more as a reading on site, counted twice. */
    @Test
    void whatALogSaysAlreadyIsNoOtherReading() {
        double[] times = {0, 60, 120, 180, 240, 300, 360, 420};
        double[] gauge = {3e5, 3.1e5, 3.3e5, 3.5e5, 3.7e5, 3.9e5, 4.1e5, 4.3e5};
        PressureLog log = PressureLog.builder(times, gauge).build();
        SpotReadings tap = SpotReadings.none().with(SiteCheck.HOT_TAP, 330);
        SpotReadings same = tap.with(SiteCheck.HEAT_UP_MAXIMUM, 4.3e5);
        assertEquals(tap.all(), same.beside(log).all());
        SpotReadings higher = tap.with(SiteCheck.HEAT_UP_MAXIMUM, 5e5);
        assertEquals(higher.all(), higher.beside(log).all(), "another heat-up");
        DiagnosisResult alone = described(log, SpotReadings.none());
        DiagnosisResult twice = described(log, SpotReadings.none().with(SiteCheck.HEAT_UP_MAXIMUM, 4.3e5));
        assertEquals(alone.readings(), twice.readings());
        assertEquals(alone.best().sumOfSquares(), twice.best().sumOfSquares());
        assertEquals(alone.best().estimates(), twice.best().estimates());
    }

    private static DiagnosisResult described(PressureLog log, SpotReadings spots) {
        Diagnosis.Builder builder =
                Diagnosis.builder(Abbey.plain().build()).log(log).spots(spots).threads(1);
        EnumSet.complementOf(EnumSet.of(Cause.AS_DESCRIBED)).forEach(builder::without);
        return builder.build().run();
    }
}
