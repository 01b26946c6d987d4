package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.quantity.DayOfYear;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ObjDoubleConsumer;
import java.util.function.ObjIntConsumer;
import java.util.regex.Pattern;

/**
 * How a value is written, and where it goes.
 *
 * @param <B> the builder that takes the value
 */
interface Form<B> {

    /** What may stand between the parts of a word. */
    Pattern BETWEEN_WORDS = Pattern.compile("[ _]+");

    /** Blanks of any kind. */
    Pattern BLANKS = Pattern.compile("\\s+");

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

    /** Hands a number and its unit to a builder. */
    @FunctionalInterface
    interface AmountSetter<B, U> {
        void set(B target, double value, U unit);
    }

    /** A number with a unit of one kind. */
    static <B, U extends Unit> Form<B> amount(Kind<U> kind, AmountSetter<B, U> setter) {
        return quantity(kind, text -> {
            Amount<U> amount = QuantityReader.read(text, kind);
            return target -> setter.set(target, amount.value(), amount.unit());
        });
    }

    /** The same, or the word for there being none. */
    default Form<B> orNone(Consumer<B> setter) {
        return or(Map.of(Change.NONE, true), (target, none) -> setter.accept(target));
    }

    /** Whether the word for there being none says more than leaving the key out does. */
    default boolean saysNone() {
        return false;
    }

    /** The same, or one of a few words. */
    default <V> Form<B> or(Map<String, V> words, BiConsumer<B, V> setter) {
        Form<B> given = this;
        return new Form<>() {
            @Override
            public Consumer<B> read(String text) {
                V value = words.get(folded(text));
                if (value == null && text.matches("[a-zA-Z].*")) {
                    throw new IllegalArgumentException(Printable.quote(text) + " is neither a number with a unit nor "
                            + (words.size() > 1 ? "one of " : "") + String.join(", ", words.keySet())
                            + Nearest.hint(text, words.keySet()));
                }
                return value == null ? given.read(text) : target -> setter.accept(target, value);
            }

            @Override
            public Optional<Kind<?>> kind() {
                return given.kind();
            }

            @Override
            public boolean saysNone() {
                return words.containsKey(Change.NONE);
            }

            @Override
            public String words() {
                return given.words() + ", or " + String.join(", ", words.keySet());
            }
        };
    }

    /** A pressure, gauge unless it says otherwise. */
    static <B> Form<B> pressure(BiConsumer<B, Pressure> setter) {
        return quantity(Kind.PRESSURE, text -> {
            Pressure pressure = QuantityReader.pressure(text);
            return target -> setter.accept(target, pressure);
        });
    }

    /** One of a few words. */
    static <B, V> Form<B> word(Map<String, V> words, BiConsumer<B, V> setter) {
        String choice = String.join(", ", words.keySet());
        return form("one of " + choice, text -> {
            V value = words.get(folded(text));
            if (value == null) {
                throw new IllegalArgumentException(
                        Printable.quote(text) + " is not one of " + choice + Nearest.hint(text, words.keySet()));
            }
            return target -> setter.accept(target, value);
        });
    }

    /** A word as the tables of words have it. */
    static String folded(String text) {
        return BETWEEN_WORDS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("-");
    }

    /** A whole number. */
    static <B> Form<B> whole(ObjIntConsumer<B> setter) {
        return form("whole number", text -> {
            if (!text.matches("-?\\d{1,15}")) {
                throw new IllegalArgumentException(Printable.quote(text) + " is not a whole number");
            }
            // A number too long for an int is as far out of any range as the largest.
            int value = (int) Math.min(Integer.MAX_VALUE, Long.parseLong(text));
            return target -> setter.accept(target, value);
        });
    }

    /** A time of day (s since midnight). */
    static <B> Form<B> clock(ObjDoubleConsumer<B> setter) {
        return form("time of day", text -> {
            double seconds = ClockTime.read(text);
            return target -> setter.accept(target, seconds);
        });
    }

    /** A day of the year. */
    static <B> Form<B> day(ObjIntConsumer<B> setter) {
        return form("date or number of the day, 1 to 366", text -> {
            int day = DayOfYear.read(text);
            return target -> setter.accept(target, day);
        });
    }

    /** The name of a published draw profile. */
    static <B> Form<B> profile(BiConsumer<B, DrawProfile> setter) {
        return word(DrawProfile.published(), setter);
    }

    /** A text in plain words. */
    static <B> Form<B> text(int longest, BiConsumer<B, String> setter) {
        return form("text of up to " + longest + " characters", text -> {
            String line = BLANKS.matcher(text).replaceAll(" ");
            if (line.length() > longest) {
                throw new IllegalArgumentException(
                        "has " + line.length() + " characters; up to " + longest + " are allowed");
            }
            if (!Printable.shows(line)) {
                throw new IllegalArgumentException("contains invisible characters; write plain text");
            }
            return target -> setter.accept(target, line);
        });
    }

    /** An amount of money. */
    static <B> Form<B> price(String words, Function<String, BigDecimal> reading, BiConsumer<B, BigDecimal> setter) {
        return form(words, text -> {
            BigDecimal price = reading.apply(text);
            return target -> setter.accept(target, price);
        });
    }

    private static <B> Form<B> quantity(Kind<?> kind, Function<String, Consumer<B>> reading) {
        return new Form<>() {
            @Override
            public Consumer<B> read(String text) {
                return reading.apply(text);
            }

            @Override
            public Optional<Kind<?>> kind() {
                return Optional.of(kind);
            }

            @Override
            public String words() {
                return kind.noun() + " in " + kind.symbols();
            }
        };
    }

    /** Some of a few words, with commas between them. */
    static <B> Form<B> words(Set<String> words, BiConsumer<B, List<String>> setter) {
        return words(words, "one or more of " + String.join(", ", words), setter);
    }

    /** Some of many words, which a table describes instead of naming them. */
    static <B> Form<B> words(Set<String> words, String which, BiConsumer<B, List<String>> setter) {
        String choice = String.join(", ", words);
        return form(which + ", with commas between", text -> {
            List<String> some =
                    Arrays.stream(text.split(",")).map(String::strip).distinct().toList();
            some.stream().filter(word -> !words.contains(word)).findFirst().ifPresent(word -> {
                throw new IllegalArgumentException(
                        Printable.quote(word) + " is not one of " + choice + Nearest.hint(word, words));
            });
            return target -> setter.accept(target, some);
        });
    }

    private static <B> Form<B> form(String words, Function<String, Consumer<B>> reading) {
        return new Form<>() {
            @Override
            public Consumer<B> read(String text) {
                return reading.apply(text);
            }

            @Override
            public String words() {
                return words;
            }
        };
    }
}
