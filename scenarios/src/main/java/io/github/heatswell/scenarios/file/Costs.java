package io.github.heatswell.scenarios.file;

import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
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

    private static final String CURRENCY = "EUR";
    private static final BigDecimal WATER = new BigDecimal("4.50");
    /** Invented: so much for a vessel without volume, and so much for every litre. */
    private static final BigDecimal BASE = new BigDecimal("28");

    private static final BigDecimal LITRE = new BigDecimal("2");

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
     * Invented prices: 4.50 EUR for a cubic metre of water; for vessels of the common sizes 28 EUR and 2 EUR for every
     * litre.
     *
     * @return the invented prices
     */
    public static Costs invented() {
        return new Builder().build();
    }

    private static List<NominalSize> inventedVessels(String currency) {
        return NominalSize.common().stream()
                .map(size -> size.at(
                        BASE.add(LITRE.multiply(BigDecimal.valueOf(Math.round(size.volume() * 1000)))), currency))
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

        private String currency = CURRENCY;
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

        Costs build() {
            List<NominalSize> vessels = sizes.stream()
                    .map(size -> size.price == null ? size.size : size.size.at(size.price, currency))
                    .sorted(Comparator.comparingDouble(NominalSize::volume))
                    .toList();
            return new Costs(
                    currency,
                    water == null ? WATER : water,
                    water == null,
                    vessels.isEmpty() ? inventedVessels(currency) : vessels,
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
