package io.github.heatswell.scenarios.file;

import io.github.heatswell.place.Customs;
import io.github.heatswell.place.Place;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * What water and vessels cost. Missing prices are filled in with invented ones, which illustrate the arithmetic and are
 * not a market survey.
 *
 * @param currency what the prices are in, as the scenario writes it
 * @param water the price of a cubic metre of cold water with its waste water (currency/m3), 0 or more
 * @param waterInvented whether that price is invented
 * @param vessels the sizes on sale with their prices, the smallest first
 * @param vesselsInvented whether these sizes and prices are invented
 */
public record Costs(
        String currency, BigDecimal water, boolean waterInvented, List<NominalSize> vessels, boolean vesselsInvented) {

    /** Invented prices of a market: of a cubic metre of water, of a vessel without volume, and of each unit of its volume. */
    private record Market(String currency, BigDecimal water, BigDecimal base, BigDecimal each) {

        static Market of(UnitSystem units, Place place) {
            Market market = of(units);
            return place.customs()
                    .map(customs -> new Market(customs.currency(), market.water, market.base, market.each))
                    .orElse(market);
        }

        private static Market of(UnitSystem units) {
            return units.isMetric()
                    ? new Market("EUR", new BigDecimal("4.50"), new BigDecimal("28"), new BigDecimal("2"))
                    : new Market("USD", perCubicMetre(new BigDecimal("17")), new BigDecimal("30"), new BigDecimal("9"));
        }

        /** From the price of a thousand gallons. */
        private static BigDecimal perCubicMetre(BigDecimal price) {
            return price.divide(BigDecimal.valueOf(VolumeUnit.US_GALLON.toSi(1000)), MathContext.DECIMAL64);
        }
    }

    /**
     * Checks that everything is there and copies the sizes.
     *
     * @param currency what the prices are in, as the scenario writes it
     * @param water the price of a cubic metre of cold water with its waste water (currency/m3), 0 or more
     * @param waterInvented whether that price is invented
     * @param vessels the sizes on sale with their prices, the smallest first
     * @param vesselsInvented whether these sizes and prices are invented
     */
    public Costs {
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(water, "water");
        vessels = List.copyOf(vessels);
    }

    /**
     * Invented prices: 4.50 EUR for a cubic metre of water and, for vessels of the common sizes, 28 EUR and 2 EUR for every litre;
     * in US units 17 USD for a thousand gallons, 30 USD, and 9 USD for every gallon. A place that is known decides the sizes, and
     * takes the same numbers in its own currency.
     *
     * @param units the unit system of the market, where the place is not known
     * @param place where the house stands
     * @return the invented prices
     */
    public static Costs invented(UnitSystem units, Place place) {
        return new Builder().build(units, place);
    }

    private static List<NominalSize> inventedVessels(Market market, UnitSystem units, Place place, String currency) {
        return place.customs().map(NominalSize::common).orElseGet(() -> NominalSize.common(units)).stream()
                .map(size -> size.at(
                        market.base.add(market.each.multiply(new BigDecimal(
                                Decimals.significant(units.volume().fromSi(size.volume()), 3)))),
                        currency))
                .toList();
    }

    /**
     * What an amount of water costs.
     *
     * @param volume the water (m3)
     * @return the price (-), in the currency, not rounded
     */
    public double ofWater(double volume) {
        return water.doubleValue() * volume;
    }

    /** Takes prices key by key, as a file has them. */
    static final class Builder {
        private static final int MAX_CURRENCY = 8;

        private String currency;
        private BigDecimal water;
        private List<Size> sizes = List.of();

        void currency(String text) {
            if (text.length() > MAX_CURRENCY) {
                throw new IllegalArgumentException("has " + text.length() + " characters; up to 8 are allowed");
            }
            currency = text;
        }

        void water(BigDecimal price) {
            water = price;
        }

        void vessels(List<Size> values) {
            if (values.isEmpty()) {
                throw new IllegalArgumentException("needs at least one size");
            }
            sizes = List.copyOf(values);
        }

        Costs build(UnitSystem shown, Place place) {
            UnitSystem units = place.customs().map(Customs::units).orElse(shown);
            Market market = Market.of(units, place);
            String named = currency == null ? market.currency : currency;
            List<NominalSize> vessels = sizes.stream()
                    .map(size -> size.price == null ? size.size : size.size.at(size.price, named))
                    .sorted(Comparator.comparingDouble(NominalSize::volume))
                    .toList();
            return new Costs(
                    named,
                    water == null ? market.water : water,
                    water == null,
                    vessels.isEmpty() ? inventedVessels(market, units, place, named) : vessels,
                    vessels.isEmpty());
        }
    }

    /** Takes a size on sale key by key, as a file has them. */
    static final class Size {
        private NominalSize size;
        private BigDecimal price;

        void volume(double value, VolumeUnit unit) {
            ExpansionVessel.builder().volume(value, unit);
            size = NominalSize.of(value, unit);
        }

        void price(BigDecimal amount) {
            price = amount;
        }
    }
}
