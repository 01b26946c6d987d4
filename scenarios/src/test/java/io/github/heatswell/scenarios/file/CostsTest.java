package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a file says of prices, and what is invented where it says nothing. */
class CostsTest {

    @Test
    void pricesAreTakenAsWritten() {
        Costs costs = costs("{ currency: GBP, water: 3.10 per m3, vessels: [{ volume: 24 L, price: 71 },"
                + " { volume: 8 L, price: 39.95 }, { volume: 12 L }] }");
        assertEquals("GBP", costs.currency());
        assertEquals(0, new BigDecimal("3.10").compareTo(costs.water()));
        assertFalse(costs.waterInvented() || costs.vesselsInvented());
        assertEquals(
                List.of(0.008, 0.012, 0.024),
                costs.vessels().stream().map(NominalSize::volume).toList());
        assertEquals(
                new NominalSize.Price(new BigDecimal("39.95"), "GBP"),
                costs.vessels().get(0).price().orElseThrow());
        assertEquals(Optional.empty(), costs.vessels().get(1).price());
        assertEquals(6.2, costs.ofWater(2), 1e-12);
    }

    /** A US gallon is 3.785411784 L by definition. */
    @ParameterizedTest
    @CsvSource({"4.5 per m3, 4.5", "4.5/m3, 4.5", "0.0045 per L, 4.5", "0.01 per gal, 2.641720523581484", "0 per m3, 0"
    })
    void aPriceOfWaterMayBeWrittenForAnyVolume(String text, double perCubicMetre) {
        assertEquals(perCubicMetre, costs("{ water: " + text + " }").water().doubleValue(), 1e-12);
    }

    @Test
    void whatIsLeftOutIsInventedAndSaysSo() {
        Costs none = Costs.invented(UnitSystem.SI, Place.NOT_KNOWN);
        assertEquals(none, ScenarioReader.read("house", Sources.LEAST).costs());
        assertTrue(none.waterInvented() && none.vesselsInvented());
        Costs currency = costs("{ currency: USD }");
        assertTrue(currency.waterInvented() && currency.vesselsInvented());
        assertTrue(currency.vessels().stream()
                .allMatch(size -> size.price().orElseThrow().currency().equals("USD")));
    }

    /** The prices are invented; that shops of the US sell whole and half gallons is common practice. */
    @Test
    void aFileInUsUnitsIsToldUsSizesAndDollars() {
        Scenario house = ScenarioReader.read("house", Sources.LEAST).in(UnitSystem.US);
        Costs costs = house.costs();
        assertEquals("USD", costs.currency());
        assertEquals(17, costs.ofWater(3.785411784), 1e-12);
        assertEquals(
                List.of(1.0, 2.0, 3.0, 4.5, 6.0, 8.0, 10.0, 14.0, 20.0),
                costs.vessels().stream()
                        .map(size -> VolumeUnit.US_GALLON.fromSi(size.volume()))
                        .toList());
        assertEquals(
                new NominalSize.Price(new BigDecimal("70.5"), "USD"),
                costs.vessels().get(3).price().orElseThrow());
        Scenario changed = house.with(List.of(Change.of("costs.water=0.01 per gal")));
        assertEquals("USD", changed.costs().currency());
        assertEquals(costs, house.sampledEvery(Duration.ofMinutes(1)).costs());
    }

    /** Regression: the place decides units, currency and sizes on sale; asking for other units changes the units alone. */
    @ParameterizedTest
    @CsvSource({
        "us-upc, US, USD, 3.785411784",
        "uk, SI, GBP, 2",
        "en, SI, EUR, 2",
        "au-nz, SI, AUD, 2",
        "not-known, SI, EUR, 2"
    })
    void aPlaceDecidesUnitsCurrencyAndSizes(String place, UnitSystem units, String currency, double smallest) {
        Scenario house = ScenarioReader.read("house", Sources.LEAST + "site: { place: " + place + " }\n");
        assertEquals(units, house.units());
        assertEquals(currency, house.costs().currency());
        assertEquals(
                smallest, VolumeUnit.LITRE.fromSi(house.costs().vessels().get(0).volume()), 1e-9);
        if (house.system().site().place().isKnown()) {
            assertEquals(house.costs(), house.in(units.other()).costs());
        }
        assertEquals(units.other(), house.in(units.other()).units());
        Scenario moved = house.with(List.of(Change.of("site.place=us-ipc")));
        assertEquals("USD", moved.costs().currency());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            { water: 4.5 }                       | costs.water: '4.5' does not give the amount of water; write, for example, 4.50 per m3
            { water: 4.5 per year }              | costs.water: 'year' is not a known unit of volume; write the price per {volumes}
            { water: -4.5 per m3 }               | costs.water: '-4.5' is not an amount of money; write digits and a decimal point, such as 52.50
            { water: NaN per m3 }                | costs.water: 'NaN' is not an amount of money; write digits and a decimal point, such as 52.50
            { currency: Groats and crowns }      | costs.currency: has 17 characters; up to 8 are allowed
            { vessels: [] }                      | costs.vessels: needs at least one size
            { vessels: [{ price: 3 }] }          | costs.vessels[0].volume: is missing; write, for example, 'volume: 12 L'
            { vessels: [{ volume: 9 m3 }] }      | costs.vessels[0].volume: 9 m3 is outside the allowed range, 0.0001 m3 to 5 m3
            { vessels: [{ volume: 8 L, price: 39.95 EUR }] } | costs.vessels[0].price: '39.95 EUR' is not an amount of money; write digits and a decimal point, such as 52.50
            { vessels: [{ volume: 8 L, price: 1e3 }] } | costs.vessels[0].price: '1e3' is not an amount of money; write digits and a decimal point, such as 52.50
            { tax: 20 % }                        | costs.tax: is not a known key here; the known keys are currency, water, vessels
            """)
    void whatMakesNoSenseIsRefused(String costs, String message) {
        InvalidScenarioException refusal = assertThrows(InvalidScenarioException.class, () -> costs(costs));
        assertEquals(1, refusal.faults().size());
        assertEquals(
                message.replace("{volumes}", Kind.VOLUME.symbols()),
                refusal.faults().get(0).message());
    }

    private static Costs costs(String text) {
        return ScenarioReader.read("house", Sources.LEAST + "costs: " + text + "\n")
                .costs();
    }
}
