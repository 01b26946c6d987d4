package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.generated.Chance;
import java.util.List;

/** What goes wrong with any text: numbers, units, letters that do not show, lines that never end. */
final class TextMutations {

    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-1",
            "1e308",
            "-1e308",
            "1e999",
            "1e-400",
            "4.9e-324",
            "1e2147483648",
            "99999999999999999999",
            "2147483648",
            "0x10",
            ".5",
            "1.",
            "1..2",
            "4,2",
            "1,000",
            "1'000",
            "1_000",
            "1 000",
            "--3",
            "+5",
            "NaN",
            ".inf",
            "Infinity",
            "-Infinity",
            "\u0663",
            "\uff14",
            "\u00bd",
            "1d",
            "1f",
            "1e",
            "1e+",
            "\u22125",
            "",
            " ",
            "1/2",
            "9".repeat(400),
            "0." + "0".repeat(400) + "1",
            "=1+1");

    private static final List<String> UNITS = List.of(
            "bar",
            "psi",
            "kPa",
            "Pa",
            "bar abs",
            "bara",
            "(g)",
            "abs",
            "degC",
            "\u00b0F",
            "K",
            "L",
            "gal",
            "m3",
            "mm",
            "km",
            "s",
            "h",
            "d",
            "a",
            "W/K",
            "kW",
            "kWh",
            "Btu/h",
            "%",
            "L/min",
            "furlong",
            "BAR",
            "b ar",
            "bar bar",
            "\u00b5m",
            "\u2109",
            "m".repeat(70),
            "+- 1 bar",
            "to 9 bar",
            "\u00b1",
            "+- 500 %",
            "to",
            "+/- NaN");

    private static final List<String> LETTERS = List.of(
            "\0",
            "\u0007",
            "\u001b[31m",
            "\u007f",
            "\u0085",
            "\u00a0",
            "\u00ad",
            "\u200b",
            "\u200f",
            "\u2028",
            "\u2029",
            "\u202e",
            "\ufeff",
            "\ufffd",
            "\ufffe",
            "\ue000",
            "\ud83d\ude00",
            "\u0301",
            "\t",
            "\r",
            "\r\n",
            "\n",
            "\n\n",
            "\u000b",
            "\f",
            "\"",
            "'",
            "\\",
            "#",
            "%",
            "|",
            ">",
            "<",
            "<script>",
            "*",
            "&",
            "!",
            "?",
            "@",
            "`",
            "~",
            "=",
            ":",
            ": ",
            "- ",
            ",",
            ";",
            "[",
            "]",
            "{",
            "}",
            "\u0130",
            "\u00df",
            "$",
            "${x}",
            "%s",
            "%n",
            "null",
            "true",
            "\\u0000");

    private static final List<String> RUNS = List.of(
            " ",
            "x",
            "-",
            "(",
            ")",
            "\"",
            "'",
            "0",
            "9",
            ",",
            ";",
            "\t",
            ":",
            ": ",
            "[",
            "]",
            "{",
            "_",
            ".",
            "\n",
            " \n",
            "\r",
            "+-",
            " to ",
            "\u00e9",
            "\ud83d\ude00",
            "#",
            "\\",
            "e",
            "1 ",
            "per ",
            "/");

    /** What patterns most often have to try in many ways. */
    private static final List<String> WORST = List.of(" ", "\n", "(", " \t", "_");

    /** All of them. */
    static final List<Mutation> ALL = List.of(
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.NUMBER, chance, chance.of(NUMBERS)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.NUMBER, chance, number(chance)),
            (text, chance) -> TextPlaces.replaced(
                    text, TextPlaces.NUMBER, chance, TextPlaces.drawn(text, TextPlaces.NUMBER, chance)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.UNIT, chance, chance.of(UNITS)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.WORD, chance, chance.of(UNITS)),
            (text, chance) ->
                    TextPlaces.replaced(text, TextPlaces.WORD, chance, TextPlaces.drawn(text, TextPlaces.WORD, chance)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.LINE, chance, ""),
            (text, chance) ->
                    TextPlaces.replaced(text, TextPlaces.LINE, chance, TextPlaces.drawn(text, TextPlaces.LINE, chance)),
            (text, chance) -> TextPlaces.with(text, chance, chance.of(LETTERS)),
            (text, chance) -> TextPlaces.with(text, chance, TextPlaces.drawn(text, TextPlaces.LINE, chance)),
            TextMutations::misspelt,
            (text, chance) -> text.substring(0, chance.below(text.length() + 1)),
            (text, chance) -> text.substring(chance.below(text.length() + 1)),
            (text, chance) -> text.replace("\n", chance.of(List.of("\r\n", "\r", "\n\n", "\u2028", ""))),
            TextMutations::large,
            (text, chance) -> chance.oneIn(4) ? stretchedValue(text, chance) : text,
            (text, chance) -> chance.oneIn(4) ? stretchedCell(text, chance) : text);

    private TextMutations() {}

    private static String number(Chance chance) {
        int digits = chance.below(9) - 4;
        return (chance.below(1000) / 10.0) + (digits == 0 ? "" : "e" + digits);
    }

    private static String misspelt(String text, Chance chance) {
        if (text.isEmpty()) {
            return text;
        }
        int at = chance.below(text.length());
        char c = text.charAt(at);
        String instead = chance.of(List.of("", "" + c + c, "" + Character.toUpperCase(c), "" + (char) (c ^ 1)));
        return text.substring(0, at) + instead + text.substring(at + 1);
    }

    /** Rarely, since it takes a thousand times as long to read: something that goes on and on. */
    private static String large(String text, Chance chance) {
        if (!chance.oneIn(4)) {
            return text;
        }
        int length = chance.of(List.of(100, 3_000, 60_000, 150_000, 300_000));
        String run = chance.of(RUNS);
        String longRun = run.repeat(length / run.length());
        String line = TextPlaces.drawn(text, TextPlaces.LINE, chance);
        return switch (chance.below(4)) {
            case 0 -> TextPlaces.with(text, chance, longRun);
            case 1 -> TextPlaces.with(text, chance, line.repeat(length / Math.max(1, line.length())));
            case 2 -> TextPlaces.replaced(text, TextPlaces.WORD, chance, longRun);
            default -> TextPlaces.replaced(text, TextPlaces.LINE, chance, numbered(line, length));
        };
    }

    private static String stretchedValue(String text, Chance chance) {
        return TextPlaces.replaced(text, TextPlaces.VALUE, chance, stretched("1 bar", chance));
    }

    private static String stretchedCell(String text, Chance chance) {
        return TextPlaces.replaced(
                text, TextPlaces.CELL, chance, stretched(TextPlaces.drawn(text, TextPlaces.CELL, chance), chance));
    }

    /** In quotes, with a long run of something behind it, and more behind that. */
    static String stretched(String word, Chance chance) {
        String run = chance.of(chance.oneIn(2) ? RUNS : WORST);
        int times = chance.of(List.of(10, 300, 20_000, 40_000)) / run.length();
        return '"' + word + run.repeat(times) + "x" + run.repeat(times / 2) + chance.of(List.of("", "x", "\ny")) + '"';
    }

    /** A line again and again, its first word with a number, so that no two keys are the same. */
    private static String numbered(String line, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; text.length() < length; i++) {
            text.append(TextPlaces.WORD.matcher(line).replaceFirst("k" + i)).append('\n');
        }
        return text.toString();
    }
}
