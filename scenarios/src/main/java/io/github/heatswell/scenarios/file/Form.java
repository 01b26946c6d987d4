package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * How a value is written, and where it goes.
 *
 * @param <B> the builder that takes the value
 */
interface Form<B> {

    /**
     * Reads a value.
     *
     * @return hands the value to a builder, which refuses it by an {@link IllegalArgumentException}
     * @throws IllegalArgumentException if the text is not written this way
     */
    Consumer<B> read(String text);

    /**
     * Reads a value and hands it over.
     *
     * @throws IllegalArgumentException if the text is not written this way or the builder refuses the value
     */
    default void bind(B target, String text) {
        read(text).accept(target);
    }

    /** The kind of quantity it is, if it is one; such values may be given with an uncertainty. */
    default Optional<Kind<?>> kind() {
        return Optional.empty();
    }

    /** How the value is written, for the description of the format. */
    String words();
}
