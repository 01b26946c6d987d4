package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;

/** Makes the keys of the sections. */
final class Fields {

    private Fields() {}

    /** A text that may be left out. */
    static <B> Field<B> text(String key, String meaning, String example, int longest, BiConsumer<B, String> setter) {
        return new Field<>(key, meaning, example, Forms.text(longest, setter)).leftOutFreely();
    }

    /** A pressure, gauge unless it says otherwise. */
    static <B> Field<B> pressure(String key, String meaning, String example, BiConsumer<B, Pressure> setter) {
        return new Field<>(key, meaning, example, Forms.pressure(setter));
    }

    /** A number with a unit. */
    static <B, U extends Unit> Field<B> amount(
            String key, String meaning, String example, Kind<U> kind, Forms.AmountSetter<B, U> setter) {
        return new Field<>(key, meaning, example, Forms.amount(kind, setter));
    }

    /** One of a few words. */
    static <B, V> Field<B> word(
            String key, String meaning, String example, Map<String, V> words, BiConsumer<B, V> setter) {
        return new Field<>(key, meaning, example, Forms.word(words, setter));
    }

    /** Whether a key was given this word, in any spelling that is understood. */
    static boolean given(Map<String, String> given, String key, String word) {
        return Forms.folded(given.getOrDefault(key, "")).equals(word.toLowerCase(Locale.ROOT));
    }
}
