package io.github.heatswell.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: the digits that people read, rounded half up by hand. */
class QuantityFormatTest {

    private static final QuantityFormat SI = QuantityFormat.ascii(UnitSystem.SI);
    private static final QuantityFormat US = QuantityFormat.ascii(UnitSystem.US);

    @ParameterizedTest
    @CsvSource({
        "0, 0 bar",
        "-0.0, 0 bar",
        "-0.004, 0 bar",
        "-0.005, -0.01 bar",
        "0.0049, 0 bar",
        "0.005, 0.01 bar",
        "4.2, 4.2 bar",
        "4.005, 4.01 bar",
        "4.015, 4.02 bar",
        "4.00499999999, 4 bar",
        "4.00499999999999, 4.01 bar",
        "7, 7 bar",
        "9.995, 10 bar",
        "9.994, 9.99 bar",
        "10.125, 10.13 bar",
        "12345.678, 12 345.68 bar",
        "-12345.678, -12 345.68 bar"
    })
    void pressuresHaveTwoDecimalsInBar(double bar, String text) {
        assertEquals(text, SI.pressure(PressureUnit.BAR.toSi(bar)));
    }

    @ParameterizedTest
    @CsvSource({
        "75, 75 psi",
        "62.351, 62 psi",
        "62.499, 62 psi",
        "62.501, 63 psi",
        "62.5, 62.5 psi",
        "19.949, 19.9 psi",
        "19.951, 20 psi",
        "4.351, 4.4 psi",
        "0.05, 0.1 psi",
        "-0.04, 0 psi",
        "150, 150 psi",
        "99.51, 100 psi",
        "-62.351, -62 psi"
    })
    void pressuresAreWholeFromTwentyPsiOn(double psi, String text) {
        assertEquals(text, US.pressure(PressureUnit.PSI.toSi(psi)));
    }

    /** One kilopascal is a hundredth of a bar, as fine as bars are shown. */
    @Test
    void pressuresAreWholeInKilopascals() {
        QuantityFormat shown = QuantityFormat.ascii(UnitSystem.KPA);
        assertEquals("584 kPa", shown.pressure(584_400));
        assertEquals("585 kPa", shown.pressure(584_500));
        assertEquals("39 kPa", shown.pressureDifference(38_900));
        assertEquals("584.4 kPa", shown.pressureInTenths(584_400));
        assertEquals("550 kPa", shown.setting(599_000));
        assertEquals("24 L", shown.volume(0.024));
        assertEquals("505 to 584 kPa", shown.pressures(505_000, 584_400));
        assertEquals("584 kPa (85 psi)", shown.inBoth().pressure(584_400));
        assertEquals("a tap on the mains", UnitSystem.KPA.spelled("a tap on the mains"));
    }

    /** Contract: the system of a list of units is that of most of them; minutes and kilowatts count for none. */
    @Test
    void theSystemIsThatOfMostUnits() {
        List<Unit> units = List.of(
                VolumeUnit.US_GALLON, PressureUnit.PSI, DurationUnit.MINUTE, PowerUnit.KILOWATT, VolumeUnit.LITRE);
        assertEquals(UnitSystem.US, UnitSystem.ofMost(units));
        assertEquals(UnitSystem.SI, UnitSystem.ofMost(units.subList(1, 5)), "one of each");
        assertEquals(UnitSystem.SI, UnitSystem.ofMost(units.subList(2, 4)), "none of either");
        assertEquals(
                List.of(Optional.of(UnitSystem.US), Optional.empty(), Optional.empty(), Optional.of(UnitSystem.SI)),
                units.subList(1, 5).stream().map(UnitSystem::of).toList());
        assertTrue(UnitSystem.US.uses(DurationUnit.MINUTE) && UnitSystem.SI.uses(PowerUnit.KILOWATT));
        assertFalse(UnitSystem.US.uses(VolumeUnit.LITRE) || UnitSystem.SI.uses(VolumeUnit.US_GALLON));
    }

    /** By hand: 0.36 bar/K are 36 kPa in 1.8 degF, 2.9 psi/degF. A kilogram is 2.2 lb (exactly 0.45359237 kg). */
    @Test
    void whatHasNoTableOfItsOwn() {
        assertEquals("0.36 bar/K", SI.pressurePerDegree(0.36e5));
        assertEquals("2.9 psi/degF", US.pressurePerDegree(0.36e5));
        assertEquals("18 kg", SI.weight(18));
        assertEquals("40 lb", US.weight(18));
    }

    /** Whoever uses kilopascals reads no bar, and the other way round; the units beside pressures are common to both. */
    @Test
    void theUnitOfPressuresIsThatOfMost() {
        List<Unit> kilopascals = List.of(PressureUnit.KILOPASCAL, PressureUnit.KILOPASCAL, PressureUnit.BAR);
        assertEquals(UnitSystem.KPA, UnitSystem.ofMost(kilopascals));
        assertEquals(UnitSystem.SI, UnitSystem.ofMost(kilopascals.subList(1, 3)));
        assertEquals(UnitSystem.US, UnitSystem.US.withPressuresOf(kilopascals));
        assertEquals(UnitSystem.SI, UnitSystem.KPA.withPressuresOf(List.of(VolumeUnit.LITRE)));
        assertTrue(UnitSystem.KPA.uses(VolumeUnit.LITRE) && UnitSystem.KPA.uses(PressureUnit.KILOPASCAL));
        assertFalse(UnitSystem.KPA.uses(PressureUnit.BAR) || UnitSystem.SI.uses(PressureUnit.KILOPASCAL));
        assertFalse(UnitSystem.KPA.uses(PressureUnit.PSI) || UnitSystem.US.uses(PressureUnit.KILOPASCAL));
    }

    @ParameterizedTest
    @CsvSource({"5.32, 5 bar, 75 psi", "5.5, 5.5 bar, 75 psi", "1.04, 1 bar, 15 psi"})
    void aSettingIsRoundedDownToWhatCanBeSet(double bar, String si, String us) {
        assertEquals(si, QuantityFormat.ascii(UnitSystem.SI).setting(PressureUnit.BAR.toSi(bar)));
        assertEquals(us, QuantityFormat.ascii(UnitSystem.US).setting(PressureUnit.BAR.toSi(bar)));
    }

    /** The gauge pressure is the difference of two absolute ones, which leaves 4.00499999999 in a double. */
    @ParameterizedTest
    @ValueSource(doubles = {0.97655921, 1.01325, 1.0132500001, 0.9})
    void aHalfSurvivesTheSubtractionOfTheAtmosphere(double bar) {
        double atmosphere = 1e5 * bar;
        double absolute = 400_500 + atmosphere;
        assertEquals("4.01 bar", SI.pressure(absolute - atmosphere));
        assertEquals("4.02 bar", SI.pressure(401_500 + atmosphere - atmosphere));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 L",
        "-0.004, above -0.01 L",
        "-0.005, -0.01 L",
        "0.0049, under 0.01 L",
        "0.005, 0.01 L",
        "0.125, 0.13 L",
        "3.145, 3.15 L",
        "3.135, 3.14 L",
        "9.995, 10 L",
        "31.45, 31.5 L",
        "99.95, 100 L",
        "150.4, 150 L",
        "150.5, 151 L",
        "999.4, 999 L",
        "999.6, 1000 L",
        "1245, 1250 L",
        "9994, 9990 L",
        "9995, 10 000 L",
        "123456, 123 000 L"
    })
    void volumesHaveThreeDigitsAndAtMostTwoDecimals(double litres, String text) {
        assertEquals(text, SI.volume(VolumeUnit.LITRE.toSi(litres)));
    }

    @ParameterizedTest
    @CsvSource({"4.5, 4.5 gal", "0.045, 0.05 gal", "2.1, 2.1 gal", "40, 40 gal", "119.5, 120 gal"})
    void gallonsHaveTheSameDigits(double gallons, String text) {
        assertEquals(text, US.volume(VolumeUnit.US_GALLON.toSi(gallons)));
    }

    @ParameterizedTest
    @CsvSource({"58, 58 degC", "59.95, 60 degC", "59.94, 59.9 degC", "0.05, 0.1 degC", "-0.04, 0 degC", "-5, -5 degC"})
    void temperaturesHaveOneDecimal(double celsius, String text) {
        assertEquals(text, SI.temperature(TemperatureUnit.CELSIUS.toSi(celsius)));
    }

    /** Thermostats and thermometers have whole degrees Fahrenheit, and 49 degC is 120 degF to everybody. */
    @ParameterizedTest
    @CsvSource({"120, 120 degF", "120.2, 120 degF", "52.5, 53 degF", "-0.4, 0 degF", "210.2, 210 degF"})
    void degreesFahrenheitAreWhole(double fahrenheit, String text) {
        assertEquals(text, US.temperature(TemperatureUnit.FAHRENHEIT.toSi(fahrenheit)));
    }

    /** What is typed must never read back as another number, in whichever unit it was typed. */
    @ParameterizedTest
    @ValueSource(
            doubles = {0.3, 1, 1.5, 2, 2.1, 4.4, 4.5, 10.3, 14, 20, 32, 40, 50, 52.5, 60, 75, 80, 99.5, 125, 140, 150})
    void whatIsTypedReadsBack(double number) {
        String typed = Decimals.atMost(number, 1);
        assertEquals(typed + " psi", US.pressure(PressureUnit.PSI.toSi(number)));
        assertEquals(typed + " bar", SI.pressure(PressureUnit.BAR.toSi(number)));
        assertEquals(typed + " gal", US.volume(VolumeUnit.US_GALLON.toSi(number)));
        assertEquals(typed + " L", SI.volume(VolumeUnit.LITRE.toSi(number)));
        assertEquals(typed + " degC", SI.temperature(TemperatureUnit.CELSIUS.toSi(number)));
        assertEquals(typed + " K", SI.temperatureDifference(number));
        assertEquals(typed + " kW", SI.power(PowerUnit.KILOWATT.toSi(number)));
        assertEquals(typed + " m", SI.length(number));
    }

    /** By 1 gal = 3.785412 L, 1 Btu = 1055.056 J, 1 in = 25.4 mm, 1 lb = 0.453592 kg, 1 lbf ft = 1.355818 N m. */
    @Test
    void otherQuantities() {
        assertEquals("0.045 in", US.length(LengthUnit.INCH.toSi(0.045)));
        assertEquals("0.087 in", US.length(0.0022));
        assertEquals("0.024 gal/min", US.flow(FlowUnit.MILLILITRE_PER_MINUTE.toSi(90)));
        assertEquals("117 lb", US.mass(53));
        assertEquals("119 in", US.length(LengthUnit.FOOT.toSi(9.9)));
        assertEquals("10 ft", US.length(LengthUnit.FOOT.toSi(10)));
        assertEquals("0.00114 m", SI.length(LengthUnit.INCH.toSi(0.045)));
        assertEquals("0.045 in", US.given(0.045, LengthUnit.INCH, 6));
        assertEquals("38 200 Btu/h", US.power(11_200));
        assertEquals("8190 Btu/h", US.power(2_400));
        assertEquals("12 L/min", SI.flow(0.0002));
        assertEquals("3.17 gal/min", US.flow(0.0002));
        assertEquals("3 mL/min", SI.flow(FlowUnit.MILLILITRE_PER_MINUTE.toSi(3)));
        assertEquals("99.9 mL/min", SI.flow(FlowUnit.MILLILITRE_PER_MINUTE.toSi(99.94)));
        assertEquals("0.1 L/min", SI.flow(FlowUnit.MILLILITRE_PER_MINUTE.toSi(99.96)));
        assertEquals("0.00079 gal/min", US.flow(FlowUnit.MILLILITRE_PER_MINUTE.toSi(3)));
        assertEquals("0 L/min", SI.flow(0));
        assertEquals("17.5 kWh", SI.energy(63.144e6));
        assertEquals("59 800 Btu", US.energy(63.144e6));
        assertEquals("1.24 m3", SI.largeVolume(1.2354));
        assertEquals("326 gal", US.largeVolume(1.2354));
        assertEquals("13.5 kg", SI.mass(13.45));
        assertEquals("58.8 N m", SI.moment(58.84));
        assertEquals("43.4 lbf ft", US.moment(58.84));
        assertEquals("10.8 degF", US.temperatureDifference(6));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 %",
        "-0.00004, above -0.01 %",
        "0.00004, under 0.01 %",
        "0.00005, 0.01 %",
        "0.0035, 0.35 %",
        "0.0149, 1.5 %",
        "0.0349, 3.5 %",
        "0.0996, 10 %",
        "0.125, 13 %",
        "0.6, 60 %",
        "0.995, 100 %",
        "1, 100 %",
        "1.234, 123 %"
    })
    void sharesAreWholePercentsOrTwoDigits(double share, String text) {
        assertEquals(text, SI.share(share));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "-0.01, 0 s",
        "-90, -1 min 30 s",
        "0.04, 0 s",
        "0.05, 0.1 s",
        "9.94, 9.9 s",
        "9.99, 10 s",
        "10.4, 10 s",
        "59.4, 59 s",
        "59.6, 1 min",
        "150, 2 min 30 s",
        "3540, 59 min",
        "3599.4, 59 min 59 s",
        "3599.6, 1 h",
        "5400, 1 h 30 min",
        "172740, 47 h 59 min",
        "172790, 2 d",
        "259200, 3 d",
        "266400, 3 d 2 h",
        "345599, 4 d",
        "1206000, 13 d 23 h",
        "1209600, 14 d",
        "31557600, 365 d",
        "63115200, 2 years",
        "72582480, 2.3 years"
    })
    void timesAreSaidInTwoUnits(double seconds, String text) {
        assertEquals(text, SI.time(seconds));
        assertEquals(text, US.time(seconds));
    }

    @Test
    void littleIsNotNothing() {
        assertEquals("under 0.01 bar", SI.pressureDifference(499));
        assertEquals("0.01 bar", SI.pressureDifference(500));
        assertEquals("under 0.1 psi", US.pressureDifference(300));
        assertEquals("0 bar", SI.pressureDifference(0));
        assertEquals("0 bar", SI.pressureDifference(-0.0));
        assertEquals("-0.01 bar", SI.pressureDifference(-500));
        assertEquals("above -0.01 m3", SI.largeVolume(-1e-9));
        assertEquals("above -0.01 bar", SI.pressureDifference(-499));
        assertFalse(SI.shows(499));
        assertTrue(SI.shows(-500));
        assertFalse(US.shows(300));
    }

    @Test
    void rangesNameTheUnitOnce() {
        assertEquals("4.04 to 4.36 bar", SI.pressures(404_000, 436_000));
        assertEquals("4.2 bar", SI.pressures(419_900, 420_100));
        assertEquals("4.04 to 4.36 bar (59 to 63 psi)", SI.inBoth().pressures(404_000, 436_000));
    }

    @Test
    void theOtherSystemFollowsInBrackets() {
        assertEquals("7 bar (102 psi)", SI.inBoth().pressure(7e5));
        assertEquals("102 psi (7 bar)", US.inBoth().pressure(7e5));
        assertEquals("2 h 15 min", US.inBoth().time(8_100));
        assertEquals("60 %", US.inBoth().share(0.6));
        assertEquals("7 bar", US.inBoth().only(UnitSystem.SI).pressure(7e5));
    }

    /** Screens and pages differ in characters alone, never in digits. */
    @Test
    void symbolsDifferAndDigitsDoNot() {
        assertEquals("58 degC", SI.temperature(331.15));
        assertEquals("58 \u00b0C", QuantityFormat.unicode(UnitSystem.SI).temperature(331.15));
        assertEquals("58\u00a0\u00b0C", QuantityFormat.printed(UnitSystem.SI).temperature(331.15));
        assertEquals("12\u00a0300\u00a0L", QuantityFormat.printed(UnitSystem.SI).volume(12.345));
        assertEquals("1.24\u00a0m\u00b3", QuantityFormat.printed(UnitSystem.SI).largeVolume(1.24));
        assertEquals(
                "1\u00a0h\u00a030\u00a0min",
                QuantityFormat.printed(UnitSystem.SI).time(5_400));
        List<Function<QuantityFormat, String>> all = List.of(
                format -> format.pressure(400_500),
                format -> format.pressures(400_500, 500_500),
                format -> format.pressureDifference(30),
                format -> format.temperature(331.15),
                format -> format.temperatureDifference(6),
                format -> format.volume(12.345),
                format -> format.largeVolume(12_345),
                format -> format.flow(0.0002),
                format -> format.power(11_200),
                format -> format.energy(63e6),
                format -> format.mass(13.45),
                format -> format.length(1.234),
                format -> format.moment(58.84),
                format -> format.time(5_400),
                format -> format.share(0.035),
                format -> format.given(10, TemperatureUnit.CELSIUS, 3));
        for (UnitSystem units : UnitSystem.values()) {
            for (Function<QuantityFormat, String> one : all) {
                String ascii = one.apply(QuantityFormat.ascii(units).inBoth());
                assertTrue(ascii.chars().allMatch(c -> c < 128), ascii);
                for (Symbols symbols : Symbols.values()) {
                    String text = one.apply(new QuantityFormat(units, symbols, true));
                    assertEquals(
                            ascii,
                            text.replace('\u00a0', ' ').replace("\u00b0", "deg").replace("m\u00b3", "m3"));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> SI.pressure(value));
        assertThrows(IllegalArgumentException.class, () -> SI.volume(value));
        assertThrows(IllegalArgumentException.class, () -> SI.time(value));
        assertThrows(IllegalArgumentException.class, () -> SI.share(value));
        assertThrows(IllegalArgumentException.class, () -> Decimals.fixed(value, 2));
        assertThrows(IllegalArgumentException.class, () -> Decimals.significant(value, 2));
    }

    @Test
    void bareNumbersAreRoundedTheSameWay() {
        assertEquals("4.01", Decimals.fixed(4.005, 2));
        assertEquals("7.00", Decimals.fixed(7, 2));
        assertEquals("0.00", Decimals.fixed(-0.004, 2));
        assertEquals("4.01", Decimals.atMost(4.005, 2));
        assertEquals("3.15", Decimals.significant(3.145, 3));
        assertEquals("38200", Decimals.significant(38_216, 3));
        assertEquals("0.045", Decimals.significant(0.045, 6));
        assertEquals("0", Decimals.significant(-0.0, 3));
        assertEquals("0.00000079", Decimals.significant(7.9e-7, 3));
    }
}
