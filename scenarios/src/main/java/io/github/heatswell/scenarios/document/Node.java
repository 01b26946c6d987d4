package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.fault.Location;
import java.util.List;

/**
 * A part of a text in YAML.
 */
public sealed interface Node {

    /**
     * Where the part begins.
     *
     * @return the place of its first character
     */
    Location at();

    /**
     * What kind of part this is, for messages.
     *
     * @return such as {@code a list}
     */
    String kind();

    /**
     * A single value, always as text: YAML's own guesses at numbers, dates and truth values are not used.
     *
     * @param text the value, without quotes and surrounding blanks
     * @param at where it begins
     */
    record Scalar(String text, Location at) implements Node {
        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "a single value";
        }
    }

    /**
     * A list.
     *
     * @param items its items in order
     * @param at where it begins
     */
    record Items(List<Node> items, Location at) implements Node {
        /**
         * Copies the items.
         *
         * @param items its items in order
         * @param at where it begins
         */
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /**
     * Keys and their values.
     *
     * @param entries keys and values in the order of the text, each key once
     * @param at where it begins
     */
    record Mapping(List<Entry> entries, Location at) implements Node {
        /**
         * Copies the entries.
         *
         * @param entries keys and values in the order of the text, each key once
         * @param at where it begins
         */
        public Mapping {
            entries = List.copyOf(entries);
        }

        @Override
        public String kind() {
            return "keys and values";
        }
    }

    /**
     * A key and its value.
     *
     * @param key the key
     * @param value the value
     */
    record Entry(Scalar key, Node value) {}
}
