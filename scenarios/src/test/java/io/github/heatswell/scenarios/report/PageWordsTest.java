package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageWordsTest {

    /** On a page in bar; what is written in one of its units keeps its digits. */
    @ParameterizedTest
    @CsvSource({
        "10 bar, 10_bar",
        "500 kPa, 5_bar",
        "20 degC, 20_°C",
        "5 K, 5_K",
        "165 psi, 11.38_bar",
        "440 mm, 440_mm",
        "0.875 in, 22.2_mm",
        "66 ft, 20.1_m",
        "4.5 gal, 17_L",
        "1.5 gpm, 5.68_L/min",
        "58 psi +- 4 psi, 4_bar ± 0.28_bar",
        "140 degF +- 9 degF, 60_°C ± 5_K",
        "76000 Btu/h, 22.3_kW",
        "78 %, 78 %",
        "modulating, modulating"
    })
    void valuesAreShownInUnitsOfThePage(String value, String shown) {
        assertEquals(
                shown,
                PageWords.inUnits(value, QuantityFormat.printed(UnitSystem.SI)).replace('\u00a0', '_'));
    }

    /** On a screen in its own units, ranges and reasons too; what has none there stays as it is. */
    @ParameterizedTest
    @CsvSource({
        "20 degC, 68 degF",
        "430 mm, 16.9 in",
        "0 m, 0 ft",
        "20 m, 65.6 ft",
        "0.3 bar, 4.4 psi",
        "0 bar to 0.6 bar, 0 psi to 8.7 psi",
        "+- 0.15 bar, +- 2.2 psi",
        "+- 2 K, +- 3.6 degF",
        "up to 10 degC hotter than 50 degC, up to 18 degF hotter than 122 degF",
        "500 kPa, 73 psi",
        "5.2 bar abs, 75 psi abs",
        "20 L/min, 5.28 gal/min",
        "2 W/K, 3.79 Btu/h/degF",
        "usual sheet thickness for 6 to 10 bar, usual sheet thickness for 87 psi to 145 psi",
        "a T&P valve: 99 and 88 degC, a T&P valve: 210 degF and 190 degF",
        "165 psi, 165 psi",
        "12 draws in 3 h, 12 draws in 3 h",
        "DIN 4807-5, DIN 4807-5",
        "78 %, 78 %"
    })
    void valuesAreShownInUnitsOfTheScreen(String value, String shown) {
        assertEquals(shown, PageWords.inUnits(value, QuantityFormat.ascii(UnitSystem.US)));
    }

    /** Nobody gave a typical value, so no digit of a conversion counts in it. */
    @ParameterizedTest
    @CsvSource({
        "20 L/min, 5.3 gal/min",
        "0.7 bar, 10 psi",
        "0.3 bar, 4.4 psi",
        "430 mm, 17 in",
        "2.2 mm, 0.087 in",
        "6.3 W/K, 12 Btu/h/degF",
        "10 bar, 145 psi",
        "190.2 degF, 190 degF",
        "20 degC, 68 degF",
        "5 K, 9 degF",
        "0 m, 0 ft",
        "165 psi, 165 psi",
        "modulating, modulating"
    })
    void typicalValuesHaveTheDigitsTheyDeserve(String value, String shown) {
        assertEquals(shown, PageWords.typical(value, QuantityFormat.ascii(UnitSystem.US)));
    }

    @ParameterizedTest
    @CsvSource({
        "39, USD, US, false, $39.00",
        "39, USD, SI, true, $39.00",
        "4.5, GBP, SI, true, \u00a34.50",
        "4.5, GBP, SI, false, 4.50 GBP",
        "4.5, EUR, SI, true, \u20ac4.50",
        "4.5, AUD, SI, true, 4.50 AUD"
    })
    void moneyHasTheSignOfItsCountry(double amount, String currency, UnitSystem units, boolean page, String shown) {
        assertEquals(
                shown,
                PageSizes.money(amount, currency, page ? QuantityFormat.printed(units) : QuantityFormat.ascii(units)));
    }

    /** Regression: a page whose every clock said "11 pm" gave the beginning of its run as 22:00. */
    @ParameterizedTest
    @CsvSource({"us-ipc, 10 pm", "uk, 22:00"})
    void timesOfDayAreToldAsAtThePlace(String place, String told) {
        Scenario night = Catalogue.read("orchard-lodge")
                .with(List.of(new Change("site.place", place), new Change("run.begins", "22:00")));
        String given =
                PageInputs.of(night, QuantityFormat.printed(UnitSystem.SI)).toString();
        assertTrue(given.contains("begins " + told), given);
    }
}
