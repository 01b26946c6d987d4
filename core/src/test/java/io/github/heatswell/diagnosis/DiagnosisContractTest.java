package io.github.heatswell.diagnosis;

import static io.github.heatswell.diagnosis.DiagnosisResultTest.HOUSE;
import static io.github.heatswell.diagnosis.DiagnosisResultTest.described;
import static io.github.heatswell.diagnosis.DiagnosisResultTest.fit;
import static io.github.heatswell.diagnosis.DiagnosisResultTest.log;
import static io.github.heatswell.diagnosis.DiagnosisResultTest.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How a diagnosis is asked for, and what it refuses. */
class DiagnosisContractTest {

    /**
     * The first reading of a line through the first five temperatures, in degC here: faulty ones among them count
     * little, the first included, and the line stays within them and within what liquid water has. The heater is seen off at
     * first: without that, it may have come on before the log, and the beginning is fitted.
     */
    @Test
    void theTankStartsAsWarmAsTheLogBegins() {
        double[][] logged = {
            {20, Double.NaN, 20.1, 20.1, 90, 20.2, 95},
            {20, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN},
            {-5, -5, -5, -5, -5, 30, 30},
            {120, 120, 120, 120, 120, 30, 30},
            {20, 20, 20.1, 20.1, 20.2, 20.2, 20.3},
            {90, 20, 20.1, 20.1, 20.2, 20.2, 20.3}
        };
        double[] starts = {20, 20, 0, 99, 20, 20};
        for (int i = 0; i < logged.length; i++) {
            double[] kelvin = Arrays.stream(logged[i]).map(t -> t + 273.15).toArray();
            boolean[] on = new boolean[kelvin.length];
            on[1] = true;
            HypothesisFit fit = described(log().temperature(kelvin).burner(on).build());
            double start = fit.house().start().waterTemperature().orElseThrow();
            // K; the standard uncertainty of a logged temperature: wild ones among a few pull the start less far
            assertEquals(starts[i], TemperatureUnit.CELSIUS.fromSi(start), 1.5);
        }
        HypothesisFit untold = described(log().build());
        assertEquals(
                283.15,
                untold.house().start().waterTemperature().orElseThrow(),
                1e-9,
                "cold where no reading says else");
    }

    @Test
    void theClockOfTheLogIsThatOfTheHouse() {
        HypothesisFit fit = described(log().timeOfDay(30_000).build());
        assertEquals(30_000, fit.house().start().timeOfDay());
        assertEquals(0, described(log().build()).house().start().timeOfDay());
    }

    @Test
    void aDiagnosisShowsTheLogItUses() {
        PressureLog log = log().build();
        assertEquals(Optional.of(log), Diagnosis.builder(HOUSE).log(log).build().log());
        SpotReadings spots = SpotReadings.none().with(SiteCheck.HOT_TAP, 330);
        Diagnosis.Builder few =
                Diagnosis.builder(HOUSE).spots(spots).without(Cause.LEAK).threads(1);
        EnumSet.complementOf(EnumSet.of(Cause.AS_DESCRIBED, Cause.SUPPLY_PRESSURE, Cause.WATER_TOO_HOT))
                .forEach(few::without);
        Diagnosis spotted = few.build();
        assertEquals(Optional.empty(), spotted.log());
        DiagnosisResult result = spotted.run();
        assertTrue(result.of(Cause.LEAK).isEmpty());
        assertEquals(1, result.readings());
        assertTrue(Double.isNaN(result.uncertainty()));
        assertTrue(result.best().misfit().isEmpty());
        assertEquals(
                Optional.of(SiteCheck.HOT_TAP),
                result.best().evidence().get(0).check(),
                "a reading on site is evidence too");
        assertTrue(result.balances().runs() > 30);
        assertEquals(3, result.fits().size());
        assertEquals(
                1, result.fits().stream().mapToDouble(HypothesisFit::weight).sum(), 1e-9);
        assertEquals(0, result.best().criterion());
    }

    static Stream<Executable> misuses() {
        return Stream.of(
                () -> Diagnosis.builder(HOUSE).threads(0),
                () -> Diagnosis.builder(HOUSE).build(),
                () -> Diagnosis.builder(HOUSE).spots(SpotReadings.none()).build(),
                () -> Diagnosis.builder(HOUSE).without(Cause.AS_DESCRIBED),
                () -> result(),
                () -> SpotReadings.none().with(SiteCheck.HOT_TAP, Double.NaN),
                () -> new SpotReading(1, Double.POSITIVE_INFINITY),
                () -> new SpotReading(1, Double.NaN),
                () -> new SpotReading(1, 0));
    }

    @ParameterizedTest
    @MethodSource("misuses")
    void misuseIsRefused(Executable misuse) {
        assertThrows(IllegalArgumentException.class, misuse);
    }

    static Stream<Executable> missing() {
        return Stream.of(
                () -> Diagnosis.builder(null),
                () -> Diagnosis.builder(HOUSE).log(null),
                () -> Diagnosis.builder(HOUSE).spots(null),
                () -> Diagnosis.builder(HOUSE).without(null),
                () -> result(fit(Cause.LEAK, 0)).of(null),
                () -> fit(Cause.LEAK, 0).estimate(null),
                () -> fit(null, 0),
                () -> Fits.of(Cause.LEAK, 0, null),
                () -> new Evidence(null, Optional.empty(), 0, 0, 0, 0, false),
                () -> new DiagnosisResult(List.of(fit(Cause.LEAK, 0)), 1, 1, Balances.NONE, null, List.of()),
                () -> new DiagnosisResult(null, 1, 1, Balances.NONE, Optional.empty(), List.of()),
                () -> new Estimate(null, 1, 1, 1, Estimate.Standing.CARRIED, Optional.empty()),
                () -> new Estimate(Parameter.LEAK, 1, 1, 1, null, Optional.empty()),
                () -> new Estimate(Parameter.LEAK, 1, 1, 1, Estimate.Standing.CARRIED, null),
                () -> new SeparatingCheck(null, Cause.LEAK, 1, Cause.LEAK, 1, 1),
                () -> new SeparatingCheck(SiteCheck.HOT_TAP, null, 1, Cause.LEAK, 1, 1),
                () -> new SeparatingCheck(SiteCheck.HOT_TAP, Cause.LEAK, 1, null, 1, 1),
                () -> SpotReadings.none().with(null, 1),
                () -> SpotReadings.none().with(SiteCheck.HOT_TAP, null),
                () -> InstalledCheck.of(null, SpotReadings.none()),
                () -> InstalledCheck.of(HOUSE, null),
                () -> new InstalledCheck(null, Balances.NONE));
    }

    @ParameterizedTest
    @MethodSource("missing")
    void whatIsMissingIsNamed(Executable misuse) {
        NullPointerException refused = assertThrows(NullPointerException.class, misuse);
        assertTrue(refused.getMessage() != null && !refused.getMessage().isBlank());
    }
}
