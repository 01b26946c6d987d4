package io.github.heatswell.scenarios.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.diagnosis.SpotReadings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpotReaderTest {

    private static final double AIR = 101_325;

    @TempDir
    Path folder;

    private SpotReadings read(String text) throws IOException {
        return SpotReader.read(Files.writeString(folder.resolve("readings.yaml"), text), AIR);
    }

    /** Validation: unit definitions. */
    @Test
    void readsValuesAndUncertainties() throws IOException {
        SpotReadings readings =
                read("cold-static: 4.2 bar\ntyre-gauge: 290 kPa ± 5 kPa\ncaught-volume: 1.5 L +/- 0.2 L\n"
                        + "hot-tap: 60 C\nheat-up-maximum: 8.01325 bar abs\n");
        assertEquals(4.2e5, readings.all().get(SiteCheck.COLD_STATIC).value(), 1e-6, "rounding");
        assertEquals(5e3, readings.all().get(SiteCheck.TYRE_GAUGE).uncertainty(), 1e-9, "rounding");
        assertEquals(0.2e-3, readings.all().get(SiteCheck.CAUGHT_VOLUME).uncertainty(), 1e-12, "rounding");
        assertEquals(333.15, readings.all().get(SiteCheck.HOT_TAP).value(), 1e-9, "rounding");
        assertEquals(7e5, readings.all().get(SiteCheck.HEAT_UP_MAXIMUM).value(), 1e-6, "rounding");
    }

    /** Validation: the definitions of the US quart and pint, a quarter and an eighth of 231 cubic inches (from memory). */
    @ParameterizedTest
    @CsvSource({
        "half a litre, 500 mL, 0.5e-3",
        "quarts, 2 quarts, 1.892705892e-3",
        "pint, 1 pint, 0.473176473e-3",
        "pints, 1/2 pt, 0.2365882365e-3"
    })
    void waterIsCaughtInWhatIsAtHand(String name, String text, double cubicMetres) throws IOException {
        SpotReadings readings = read("caught-volume: " + text + "\n");
        assertEquals(cubicMetres, readings.all().get(SiteCheck.CAUGHT_VOLUME).value(), 1e-12, name + ", rounding");
    }

    /** As people say it; an interview understands the same words. */
    @ParameterizedTest
    @ValueSource(strings = {"75 psi or so", "about 75 psi", "~75 psi", "roughly 75 psi, I think"})
    void aReadingMayBeRough(String said) throws IOException {
        SpotReadings readings = read("cold-static: " + said + "\n");
        assertEquals(
                75 * 6894.757293168, readings.all().get(SiteCheck.COLD_STATIC).value(), 1e-6, "rounding");
    }

    @Test
    void namesEveryFault() {
        InvalidReadingsException refused = assertThrows(
                InvalidReadingsException.class,
                () -> read("cold-statik: 4 bar\ntyre-gauge: 3\nhot-tap: [1]\nnext-morning: 4 bar ± 0 bar\n"));
        assertEquals(4, refused.faults().size(), refused.getMessage());
        assertTrue(refused.getMessage().contains("cold-static"), refused.getMessage());
        assertTrue(refused.getMessage().contains("2:13: tyre-gauge: '3' has no unit"), refused.getMessage());
        assertTrue(refused.getMessage().contains("must be above 0"), refused.getMessage());
    }

    /** Where the uncertainty swamps the reading nothing follows from it, and that is said. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "cold-static: 4.2 bar +/- 1e9 bar!1:14: cold-static: the uncertainty '1e9 bar' is too large beside"
                        + " the reading of '4.2 bar' to be of use; repeat the reading more precisely, or leave it out",
                "cold-static: 4.2 bar +/- 2.2 bar!is too large beside the reading of '4.2 bar'",
                "tyre-gauge: 0 bar +/- 0.6 bar!is too large beside the reading of '0 bar'",
                "hot-tap: 58 degC +/- 11 K!is too large beside the reading of '58 degC'",
                "caught-volume: 3 L +/- 2 L!is too large beside the reading of '3 L'",
                "caught-volume: 3 L +/- 0 L!the uncertainty '0 L' must be above 0; leave it out if there is none"
            })
    void refusesUncertaintiesThatLeaveNothing(String text, String message) {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cold-static: 0 bar",
                "cold-static: 362.5943 psi",
                "tyre-gauge: 0 bar +/- 0.5 bar",
                "tyre-gauge: 4 bar +/- 2 bar",
                "hot-tap: 230 degF +/- 18 degF",
                "cold-static: 3.9 bar +- 0.1 bar",
                "cold-static: 3.9 bar±0.1 bar",
                "caught-volume: 0.2 L +/- 1 L"
            })
    void takesWhatSaysSomething(String text) throws IOException {
        assertEquals(1, read(text).all().size());
    }

    @Test
    void anEmptyFileIsToldToHoldReadings() {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read("# nothing yet\n"));
        assertEquals(
                "1:1: the file is empty or contains only comments; it should contain readings, such as 'cold-static:"
                        + " 4.2 bar'",
                refused.getMessage());
    }

    /** A slip of the pen is not taken for a reading. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "cold-static: 420 bar!1:14: cold-static: '420 bar' is outside the allowed range, 0 bar to 25 bar",
                "cold-static: -1 bar!cold-static: '-1 bar' is outside the allowed range, 0 bar to 25 bar",
                "tyre-gauge: -4 bar!0 bar to 25 bar",
                "heat-up-maximum: 51 bar!heat-up-maximum: '51 bar' is outside the allowed range, 0 bar to 50 bar",
                "hot-tap: 600 C!hot-tap: '600 C' is outside the allowed range, 0 degC to 110 degC",
                "caught-volume: 99999 L!caught-volume: '99999 L' is outside the allowed range, 0 L to 1000 L",
                "meter-at-rest: 2001 L!meter-at-rest: '2001 L' is outside the allowed range, 0 L to 2000 L",
                "hot-tap: 60 K!0 degC to 110 degC",
                "caught-volume: -1 L +/- 0.1 L!caught-volume: '-1 L' is outside the allowed range, 0 L to 1000 L"
            })
    void refusesWhatNoReadingCanBe(String text, String message) {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
    }

    /** Of a vessel words will do; what is neither water nor gas is asked for again. */
    @Test
    void aVesselIsDescribedInWords() throws IOException {
        assertEquals(
                "[0.9, 1.0] [0.6, 0.0]",
                values("vessel-full: heavy\ngas-valve: water\n") + " " + values("vessel-full: 60 %\ngas-valve: gas\n"));
        InvalidReadingsException refused =
                assertThrows(InvalidReadingsException.class, () -> read("gas-valve: rusty\nvessel-full: 120 %\n"));
        assertTrue(
                refused.getMessage().contains("'rusty' is not known here; write water, or gas"), refused.getMessage());
        assertTrue(refused.getMessage().contains("2:14: vessel-full: '120 %' is outside"), refused.getMessage());
    }

    private List<Double> values(String text) throws IOException {
        return read(text).all().values().stream().map(SpotReading::value).toList();
    }
}
