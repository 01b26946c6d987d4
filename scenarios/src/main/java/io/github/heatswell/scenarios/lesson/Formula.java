package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.citation.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The formula that matters in a lesson.
 *
 * @param text the formula in plain text
 * @param symbols what each letter means
 * @param source where it comes from
 */
public record Formula(String text, List<Symbol> symbols, Citation source) {

    /**
     * A letter in a formula.
     *
     * @param letter the letter, as it stands in the formula
     * @param meaning what it means, with its unit
     */
    public record Symbol(String letter, String meaning) {
        /**
         * Checks that both are there.
         *
         * @param letter the letter, as it stands in the formula
         * @param meaning what it means, with its unit
         * @throws IllegalArgumentException if one of them is blank
         */
        public Symbol {
            Texts.require("the letter of a symbol", letter);
            Texts.require("the meaning of " + letter, meaning);
        }
    }

    /**
     * A formula with its letters, each followed by its meaning.
     *
     * @param text the formula in plain text
     * @param source where it comes from
     * @param lettersAndMeanings a letter, its meaning, the next letter, its meaning, and so on
     * @return the formula
     * @throws IllegalArgumentException if a meaning is missing or a letter does not stand in the formula
     */
    public static Formula of(String text, Citation source, String... lettersAndMeanings) {
        if (lettersAndMeanings.length % 2 != 0) {
            throw new IllegalArgumentException("every letter needs a meaning; the last one has none");
        }
        List<Symbol> symbols = new ArrayList<>();
        for (int i = 0; i < lettersAndMeanings.length; i += 2) {
            symbols.add(new Symbol(lettersAndMeanings[i], lettersAndMeanings[i + 1]));
        }
        return new Formula(text, symbols, source);
    }

    /**
     * Checks that every letter that is explained stands in the formula.
     *
     * @param text the formula in plain text
     * @param symbols what each letter means
     * @param source where it comes from
     * @throws IllegalArgumentException if the text is blank or a letter does not stand in it
     */
    public Formula {
        Texts.require("the formula", text);
        symbols = List.copyOf(symbols);
        Objects.requireNonNull(source, "source");
        for (Symbol symbol : symbols) {
            if (!text.contains(symbol.letter())) {
                throw new IllegalArgumentException(
                        "'" + symbol.letter() + "' is explained but does not stand in '" + text + "'");
            }
        }
    }
}
