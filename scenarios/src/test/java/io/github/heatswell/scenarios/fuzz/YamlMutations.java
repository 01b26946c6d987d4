package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.generated.Chance;
import java.util.List;

/** What goes wrong with a text in YAML: indentation, anchors and aliases, nesting, keys given twice, values of another kind. */
final class YamlMutations {

    private static final List<String> VALUES = List.of(
            "&a 1 bar",
            "*a",
            "!!str 1",
            "!x {}",
            "!!java.io.File x",
            "[]",
            "{}",
            "[1, 2]",
            "{ a: 1 }",
            "[[]]",
            "- 1",
            "null",
            "~",
            "''",
            "\"\"",
            "'x",
            "\"x",
            "\"\\x\"",
            "|\n  x",
            ">-\n  x\n  y",
            "? x",
            "<<: *a",
            "@x",
            "`x`",
            "%x",
            "yes",
            "no",
            "2026-01-01",
            "06:30",
            "1e3",
            "0o17",
            "# nothing",
            "a: b: c",
            "[1 bar",
            "{ a: 1",
            "]",
            "}",
            "-",
            ":",
            "&a [*a]",
            "&a",
            "!",
            "\"\\ud800\"",
            "\"\\0\"",
            "\"\\u202e\"");

    private static final List<String> LINES = List.of(
            "---\n",
            "...\n",
            "--- \n---\n",
            "%YAML 1.2\n---\n",
            "%TAG ! x\n",
            "<<: *a\n",
            "&a a: 1\n",
            "? [1]\n: 2\n",
            "? a\n",
            ": 1\n",
            "- 1\n",
            "'a': 1\n",
            "\"a\\nb\": 1\n",
            "\t\n",
            "  x\n",
            "#\n",
            "a:1\n",
            "{}: 1\n",
            "~: 1\n",
            "'': 1\n",
            "a: !!binary x\n",
            "tank: &t { volume: *t }\n",
            "b: [&b 1, *b]\n");

    /** All of them. */
    static final List<Mutation> ALL = List.of(
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.VALUE, chance, chance.of(VALUES)),
            (text, chance) -> TextPlaces.replaced(
                    text, TextPlaces.VALUE, chance, TextPlaces.drawn(text, TextPlaces.VALUE, chance)),
            (text, chance) ->
                    TextPlaces.replaced(text, TextPlaces.KEY, chance, TextPlaces.drawn(text, TextPlaces.KEY, chance)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.KEY, chance, chance.of(VALUES)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.LINE, chance, indented(text, chance)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.LINE, chance, chance.of(LINES)),
            (text, chance) -> chance.of(LINES) + text,
            (text, chance) -> text + chance.of(LINES),
            YamlMutations::nested,
            YamlMutations::longList,
            YamlMutations::bomb);

    private YamlMutations() {}

    private static String indented(String text, Chance chance) {
        String line = TextPlaces.drawn(text, TextPlaces.LINE, chance);
        return chance.of(List.of(" ", "  ", "\t", "    ", "- ", "\u00a0", "          ")) + line;
    }

    private static String nested(String text, Chance chance) {
        int depth = chance.of(List.of(3, 7, 8, 9, 50, 2_000));
        boolean list = chance.oneIn(2);
        String value =
                (list ? "[" : "{ a: ").repeat(depth) + "1" + (chance.oneIn(3) ? "" : (list ? "]" : "}").repeat(depth));
        return TextPlaces.replaced(text, TextPlaces.VALUE, chance, value);
    }

    /** A line again and again, as an item of a list where it is one. */
    private static String longList(String text, Chance chance) {
        String line = TextPlaces.drawn(text, TextPlaces.LINE, chance);
        int times = chance.of(List.of(3, 21, 51, 201, 301, 501, 2_000));
        return line.length() * times > 200_000
                ? text
                : TextPlaces.replaced(text, TextPlaces.LINE, chance, line.repeat(times));
    }

    private static String bomb(String text, Chance chance) {
        String lines = bomb(2 + chance.below(12));
        return chance.oneIn(2) ? lines + text : text + lines;
    }

    /** Each line ten times the one before: ten lines would be a thousand million values. */
    static String bomb(int lines) {
        StringBuilder text = new StringBuilder("a0: &a0 x\n");
        for (int i = 1; i < lines; i++) {
            String before = "*a" + (i - 1);
            text.append("a").append(i).append(": &a").append(i).append(" [");
            text.append((before + ", ").repeat(9)).append(before).append("]\n");
        }
        return text.toString();
    }
}
