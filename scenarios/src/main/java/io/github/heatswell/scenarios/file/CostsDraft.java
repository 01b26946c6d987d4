package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Price;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What things cost, while being read. */
final class CostsDraft {

    private static final int MAX_CURRENCY = 8;

    private String currency = Costs.invented().currency();
    private BigDecimal water;
    private List<Vessel> vessels = List.of();

    void currency(String text) {
        if (text.length() > MAX_CURRENCY) {
            throw new IllegalArgumentException("has " + text.length() + " characters; up to 8 are allowed");
        }
        currency = text;
    }

    void water(String text) {
        water = Price.perVolume(text);
    }

    void vessels(List<Vessel> values) {
        if (values.isEmpty()) {
            throw new IllegalArgumentException("needs at least one size");
        }
        vessels = List.copyOf(values);
    }

    Costs end() {
        Costs invented = Costs.invented(currency);
        List<NominalSize> sizes = new ArrayList<>();
        vessels.forEach(vessel -> sizes.add(vessel.in(currency)));
        sizes.sort(Comparator.comparingDouble(NominalSize::volume));
        return new Costs(
                currency,
                water == null ? invented.water() : water,
                water == null,
                sizes.isEmpty() ? invented.vessels() : sizes,
                sizes.isEmpty());
    }

    /** A size on sale, while being read; without a price if none was given. */
    static final class Vessel {
        private NominalSize size;
        private BigDecimal price;

        void volume(double value, VolumeUnit unit) {
            ExpansionVessel.builder().volume(value, unit);
            size = NominalSize.of(value, unit);
        }

        void price(String text) {
            price = Price.of(text);
        }

        Vessel end() {
            return this;
        }

        private NominalSize in(String currency) {
            return price == null ? size : size.at(price, currency);
        }
    }
}
