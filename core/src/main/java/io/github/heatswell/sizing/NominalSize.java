package io.github.heatswell.sizing;

import io.github.heatswell.place.Customs;
import io.github.heatswell.place.Place;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A vessel size on sale.
 *
 * @param volume the whole volume (m3), 0.1 L to 5 m3
 * @param price its price, or empty if unknown
 */
public record NominalSize(double volume, Optional<Price> price) {

    private static final Limits VOLUME = Limits.between("volume", VesselType.MIN_VOLUME, VesselType.MAX_VOLUME);

    /**
     * Checks the volume.
     *
     * @param volume the whole volume (m3), 0.1 L to 5 m3
     * @param price its price, or empty if unknown
     * @throws IllegalArgumentException if the volume is outside its range
     */
    public NominalSize {
        volume = VOLUME.check(VolumeUnit.LITRE.fromSi(volume), VolumeUnit.LITRE);
        Objects.requireNonNull(price, "price");
    }

    /**
     * An amount of money.
     *
     * @param amount how much, 0 or more
     * @param currency its currency, as the caller writes it
     */
    public record Price(BigDecimal amount, String currency) {

        /**
         * Checks the amount.
         *
         * @param amount how much, 0 or more
         * @param currency its currency, as the caller writes it
         * @throws IllegalArgumentException if the amount is negative or the currency blank
         */
        public Price {
            Objects.requireNonNull(currency, "currency");
            if (Objects.requireNonNull(amount, "price").signum() < 0) {
                throw new IllegalArgumentException("price: " + amount + " must not be negative");
            }
            if (currency.isBlank()) {
                throw new IllegalArgumentException("currency: must not be blank");
            }
        }
    }

    /**
     * A size without a price.
     *
     * @param value the volume, 0.1 L to 5 m3
     * @param unit its unit
     * @return the size
     * @throws IllegalArgumentException if the volume is outside its range
     */
    public static NominalSize of(double value, VolumeUnit unit) {
        return new NominalSize(VOLUME.check(value, unit), Optional.empty());
    }

    /**
     * The same size with a price.
     *
     * @param amount how much, 0 or more
     * @param currency its currency, as the caller writes it
     * @return the size with that price
     * @throws IllegalArgumentException if the amount is negative or the currency blank
     */
    public NominalSize at(BigDecimal amount, String currency) {
        return new NominalSize(volume, Optional.of(new Price(amount, currency)));
    }

    /**
     * Common sizes for houses, without prices: 2, 3, 5, 8, 12, 18, 24, 35, 50 and 80 L; in the US 1, 2, 3, 4.5, 6, 8, 10, 14 and 20 gal.
     * Common practice, from no source; shops differ.
     *
     * @param units the unit system of the shop
     * @return the sizes, the smallest first
     */
    public static List<NominalSize> common(UnitSystem units) {
        return common((units.isMetric() ? Place.EN : Place.US_IPC).customs().orElseThrow());
    }

    /**
     * Sizes that are common at a place.
     *
     * @param customs what is usual there
     * @return the sizes, the smallest first, without prices
     */
    public static List<NominalSize> common(Customs customs) {
        return customs.sizes().stream()
                .map(size -> of(size, customs.units().volume()))
                .toList();
    }
}
