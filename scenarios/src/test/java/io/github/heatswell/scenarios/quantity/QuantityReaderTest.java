package io.github.heatswell.scenarios.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("changes the language of the whole Java machine")
class QuantityReaderTest {

    private static final Map<String, Kind<?>> KINDS = Map.of(
            "temperature", Kind.TEMPERATURE,
            "difference", Kind.TEMPERATURE_DIFFERENCE,
            "volume", Kind.VOLUME,
            "flow", Kind.FLOW,
            "power", Kind.POWER,
            "length", Kind.LENGTH,
            "loss", Kind.CONDUCTANCE,
            "time", Kind.DURATION,
            "ratio", Kind.RATIO);

    /** Values follow from the definitions of the units; the last digit is that of a double. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            temperature | 9 degC              | 282.15
            temperature | 58\u00b0C           | 331.15
            temperature | 58 \u00baC          | 331.15
            temperature | 58 \u2103           | 331.15
            temperature | 58 Degrees Celsius  | 331.15
            temperature | 58 deg C            | 331.15
            temperature | -10 C               | 263.15
            temperature | \u221210 C          | 263.15
            temperature | 140 degF            | 333.15
            temperature | 32 \u00b0F          | 273.15
            temperature | 300 K               | 300
            difference  | 6 K                 | 6
            difference  | 9 degF              | 5
            difference  | 6 \u00b0C           | 6
            volume      | 230 L               | 0.23
            volume      | 230 l               | 0.23
            volume      | 230 litres          | 0.23
            volume      | 0.23 m3             | 0.23
            volume      | .23 m\u00b3         | 0.23
            volume      | 1 gal               | 0.003785411784
            volume      | 1 US gallon         | 0.003785411784
            flow        | 60 L/min            | 0.001
            flow        | 60 l / min          | 0.001
            flow        | 1 gal/min           | 0.0000630901964
            power       | 11.2 kW             | 11200
            power       | 11.2e3 W            | 11200
            power       | 3600 Btu/h          | 1055.05585262
            power       | 3600 BTU/hr         | 1055.05585262
            length      | 22 mm               | 0.022
            length      | 1 in                | 0.0254
            length      | 1"                  | 0.0254
            length      | 1 ft                | 0.3048
            length      | 310m                | 310
            loss        | 2.4 W/K             | 2.4
            loss        | 1 Btu/h/degF        | 0.527527926310
            time        | 30 s                | 30
            time        | 10s                 | 10
            time        | 4 h                 | 14400
            time        | 1 min               | 60
            time        | 1.5 d               | 129600
            ratio       | 78 %                | 0.78
            ratio       | 78%                 | 0.78
            ratio       | 100 percent         | 1
            """)
    void quantitiesAreReadExactly(String kind, String text, double si) {
        Amount<?> amount = QuantityReader.read(text, KINDS.get(kind));
        assertEquals(si, amount.unit().toSi(amount.value()), 1e-12 * Math.abs(si));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4.2 bar           | 420000     | GAUGE
            4.2bar            | 420000     | GAUGE
            4.2 BAR           | 420000     | GAUGE
            4.2 bar gauge     | 420000     | GAUGE
            4.2 barg          | 420000     | GAUGE
            4.2 bar(g)        | 420000     | GAUGE
            420 kPa           | 420000     | GAUGE
            420 kpa           | 420000     | GAUGE
            0.42 MPa          | 420000     | GAUGE
            5.2 bar abs       | 520000     | ABSOLUTE
            5.2 bar absolute  | 520000     | ABSOLUTE
            5.2 bara          | 520000     | ABSOLUTE
            520 kPa abs       | 520000     | ABSOLUTE
            1 psi             | 6894.757293168361 | GAUGE
            1 psig            | 6894.757293168361 | GAUGE
            1 psia            | 6894.757293168361 | ABSOLUTE
            """)
    void pressuresKeepTheirReference(String text, double pascals, Pressure.Reference reference) {
        Pressure pressure = QuantityReader.pressure(text);
        assertEquals(pascals, pressure.value(), 1e-10);
        assertEquals(reference, pressure.reference());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            4.2           | '4.2' has no unit; give a pressure in bar, kPa, MPa, psi or Pa
            4,2 bar       | '4,2 bar' has a comma in the number; use a decimal point: 4.2 bar
            1,200 kPa     | '1,200 kPa' has a comma in the number; write 1.200 kPa or 1200 kPa, whichever you mean
            1.200,5 kPa   | '1.200,5 kPa' has a comma in the number; use a decimal point and no thousands separator
            1 20 kPa      | '1 20 kPa' has a mark or a space between the digits; write the digits without gaps
            1 2000 kPa    | '1 2000 kPa' has a mark or a space between the digits; write the digits without gaps
            1'200 kPa     | '1'200 kPa' has a mark or a space between the digits; write 1200 kPa
            1_000 kPa     | '1_000 kPa' has a mark or a space between the digits; write 1000 kPa
            1_00 kPa      | '1_00 kPa' has a mark or a space between the digits; write the digits without gaps
            NaN bar       | 'NaN bar' is not a finite number
            .nan          | '.nan' is not a finite number
            -.inf bar     | '-.inf bar' is not a finite number
            Infinity bar  | 'Infinity bar' is not a finite number
            1e999 bar     | '1e999 bar' is not a finite number
            warm          | 'warm' does not start with a number; write a number and a unit
            bar 4         | 'bar 4' does not start with a number; write a number and a unit
            4 degC        | 'degC' is a unit of temperature or temperature difference; give a pressure in {pressures}
            4 brr         | 'brr' is not a known unit; give a pressure in {pressures}; did you mean bar?
            4 atm         | 'atm' is not a known unit; give a pressure in {pressures}
            4-5 bar       | '-5 bar' is not a known unit; give a pressure in {pressures}
            0x10 bar      | 'x10 bar' is not a known unit; give a pressure in {pressures}
            """)
    void whatIsNoPressureSaysHowToWriteOne(String text, String message) {
        assertEquals(message.replace("{pressures}", Kind.PRESSURE.symbols()), refusal(text));
    }

    /** As reports write large numbers, and as American labels do. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            40 000 Btu/h    | 40000
            40\u00a0000 Btu/h | 40000
            40,000 Btu/h    | 40000
            40,000.5 Btu/h  | 40000.5
            1 234 567.5 W   | 1234567.5
            """)
    void groupsOfThreeDigitsAreRead(String text, double number) {
        assertEquals(number, QuantityReader.read(text, Kind.POWER).value());
    }

    @Test
    void aBareNumberIsNoRatio() {
        String message = assertThrows(IllegalArgumentException.class, () -> QuantityReader.read("0.78", Kind.RATIO))
                .getMessage();
        assertEquals("'0.78' has no unit; give a ratio in %", message);
    }

    @Test
    void endlessTextsAreCutInMessages() {
        String message = refusal("1".repeat(100_000));
        assertEquals("'" + "1".repeat(37) + "...' is too long for a number and a unit", message);
    }

    @Test
    void theLanguageOfTheMachineDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(new Pressure(4.2e5, Pressure.Reference.GAUGE), QuantityReader.pressure("4.2 BAR"));
                assertEquals(1.0, QuantityReader.read("1 MIN", Kind.DURATION).value());
                assertEquals(2.5, QuantityReader.read("2.5 IN", Kind.LENGTH).value());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everySpellingStandsForItsOwnUnit() {
        for (Kind<?> kind : Kind.all()) {
            kind.units()
                    .forEach(unit -> unit.spellings()
                            .forEach(spelling ->
                                    assertEquals(unit, kind.unit(spelling).orElseThrow(), spelling)));
        }
    }

    private static String refusal(String text) {
        return assertThrows(IllegalArgumentException.class, () -> QuantityReader.pressure(text))
                .getMessage();
    }

    /** Regression: two valves set to 6 and 7 bar were one at 0.857 bar. */
    @ParameterizedTest
    @ValueSource(strings = {"6/7 bar", "18/24 bar", "4/3 bar"})
    void twoValuesAreNoFraction(String text) {
        assertTrue(refusal(text).contains("is not a known unit"), refusal(text));
    }

    /** Pipes and vessels are sold in halves and quarters. */
    @ParameterizedTest
    @CsvSource({
        "1/2 in, 0.0127",
        "3/4in, 0.01905",
        "1½ in, 0.0381",
        "1\u00be in, 0.04445",
        "1 1/2 in, 0.0381",
        "1-1/4 in, 0.03175"
    })
    void fractionsAreNumbers(String text, double metres) {
        Amount<LengthUnit> amount = QuantityReader.read(text, Kind.LENGTH);
        assertEquals(metres, amount.unit().toSi(amount.value()), 1e-12);
    }
}
