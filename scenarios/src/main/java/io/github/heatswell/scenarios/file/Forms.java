package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;

/** The ways in which the values of a scenario file are written. */
final class Forms {

    private Forms() {}

    /** Hands a number and its unit to a builder. */
    @FunctionalInterface
    interface AmountSetter<B, U> {
        void set(B target, double value, U unit);
    }

    /** A number with a unit of one kind. */
    static <B, U extends Unit> Form<B> amount(Kind<U> kind, AmountSetter<B, U> setter) {
        return form(kind.noun() + " in " + kind.symbols(), (target, text) -> {
            Amount<U> amount = QuantityReader.read(text, kind);
            setter.set(target, amount.value(), amount.unit());
        });
    }

    /** A pressure, gauge unless it says otherwise. */
    static <B> Form<B> pressure(BiConsumer<B, Pressure> setter) {
        return form(
                Kind.PRESSURE.noun() + " in " + Kind.PRESSURE.symbols(),
                (target, text) -> setter.accept(target, QuantityReader.pressure(text)));
    }

    /** One of a few words. */
    static <B, V> Form<B> word(Map<String, V> words, BiConsumer<B, V> setter) {
        String choice = String.join(", ", words.keySet());
        return form("one of " + choice, (target, text) -> {
            V value = words.get(text.toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-"));
            if (value == null) {
                throw new IllegalArgumentException(
                        Printable.quote(text) + " is not one of " + choice + Nearest.hint(text, words.keySet()));
            }
            setter.accept(target, value);
        });
    }

    /** A text in plain words. */
    static <B> Form<B> text(int longest, BiConsumer<B, String> setter) {
        return form("text of up to " + longest + " characters", (target, text) -> {
            String line = text.replaceAll("\\s+", " ");
            if (line.length() > longest) {
                throw new IllegalArgumentException(
                        "has " + line.length() + " characters; up to " + longest + " are allowed");
            }
            if (!Printable.shows(line)) {
                throw new IllegalArgumentException("holds characters that do not show; write plain text");
            }
            setter.accept(target, line);
        });
    }

    private static <B> Form<B> form(String words, BiConsumer<B, String> binding) {
        return new Form<>() {
            @Override
            public void bind(B target, String text) {
                binding.accept(target, text);
            }

            @Override
            public String words() {
                return words;
            }
        };
    }
}
