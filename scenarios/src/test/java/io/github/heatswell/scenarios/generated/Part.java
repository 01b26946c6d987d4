package io.github.heatswell.scenarios.generated;

import io.github.heatswell.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A part of a scenario file in the making. */
sealed interface Part {

    /** The same part, which nothing done to this one changes. */
    Part copy();

    /** A value that is written as it is. */
    record Plain(String text) implements Part {
        @Override
        public Part copy() {
            return this;
        }
    }

    /**
     * A number with its unit.
     *
     * @param number the number as it is written
     * @param unit its unit
     * @param suffix what stands behind it, such as {@code  abs} or {@code  +- 1 bar}
     */
    record Quantity(BigDecimal number, Unit unit, String suffix) implements Part {

        /** What a reader makes of the number. */
        double si() {
            return unit.toSi(number.doubleValue());
        }

        String text() {
            return number.toPlainString() + " " + unit.symbol() + suffix;
        }

        @Override
        public Part copy() {
            return this;
        }
    }

    /** Items of a list. */
    record Several(List<Part> items) implements Part {

        Several() {
            this(new ArrayList<>());
        }

        List<Keyed> keyed() {
            return items.stream().map(Keyed.class::cast).toList();
        }

        @Override
        public Part copy() {
            Several copy = new Several();
            items.forEach(item -> copy.items.add(item.copy()));
            return copy;
        }
    }

    /** Keys and their values. */
    record Keyed(Map<String, Part> values) implements Part {

        Keyed() {
            this(new LinkedHashMap<>());
        }

        boolean has(String key) {
            return values.containsKey(key);
        }

        void put(String key, Part part) {
            values.put(key, part);
        }

        void remove(String... keys) {
            List.of(keys).forEach(values::remove);
        }

        /** The word or text of a key; nothing if it is not there or something else. */
        String word(String key) {
            return values.get(key) instanceof Plain plain ? plain.text() : "";
        }

        /** The quantity of a key, if it is one. */
        Optional<Quantity> quantity(String key) {
            return values.get(key) instanceof Quantity quantity ? Optional.of(quantity) : Optional.empty();
        }

        /** The value of a key in SI, or another if it is not given. */
        double si(String key, double otherwise) {
            return quantity(key).map(Quantity::si).orElse(otherwise);
        }

        /** The keys and values of a key; nothing in them if it is not there. */
        Keyed keyed(String key) {
            return values.get(key) instanceof Keyed keyed ? keyed : new Keyed();
        }

        /** The items of a key; none if it is not there. */
        List<Keyed> items(String key) {
            return values.get(key) instanceof Several several ? several.keyed() : List.of();
        }

        @Override
        public Part copy() {
            Keyed copy = new Keyed();
            values.forEach((key, part) -> copy.put(key, part.copy()));
            return copy;
        }
    }
}
