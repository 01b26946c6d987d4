package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.generated.Chance;
import java.util.List;

/** What goes wrong with the file of a logger: delimiters, quotes, headings, clocks that jump, cells of another kind. */
final class LogMutations {

    private static final List<String> CELLS = List.of(
            "",
            " ",
            "\"\"",
            "\"",
            "\"1",
            "1\"",
            "\"1\"x",
            "\"1\n2\"",
            "'1'",
            "n/a",
            "-",
            "=1+1",
            "#REF!",
            "04-May",
            "1.020",
            "1,020",
            "1 020",
            "4.2%",
            "46085.25",
            "03/04/2026 06:00",
            "on",
            "OFF",
            "perhaps",
            "1 bar",
            "4,2",
            "\"4,2\"",
            "1;2",
            "24:00",
            "23:59:60",
            "0:0",
            "12:61",
            "06:30:15",
            "2026-02-30T06:00",
            "2026-03-01T06:00",
            "2026-03-01 06:00:00+01:00",
            "2026-03-01T06:00Z",
            "0000-01-01T00:00",
            "+999999999-12-31T23:59:59",
            "-999999999-01-01T00:00",
            "2026-03-01T06:00:00.123456789",
            "31.12.2026 06:00",
            "1e15",
            "-1e15",
            "1e300",
            "1e308");

    private static final List<String> HEADINGS = List.of(
            "time_s",
            "time_h",
            "time",
            "time_",
            "time ()",
            "clock",
            "date",
            "datetime",
            "time_bar",
            "pressure_bar",
            "pressure",
            "pressure (bar abs)",
            "pressure_psi",
            "pressure [kPa]",
            "pressure_s",
            "temperature_C",
            "temp (F)",
            "temperature",
            "burner",
            "temperatur_C",
            "burners",
            "pressure_mbar",
            "heater_x",
            "x",
            "",
            "\"time\n_s\"",
            "=pressure_bar",
            "PRESSURE_BAR",
            "time_s ",
            "time__((s))");

    private static final List<String> DELIMITERS = List.of(",", ";", "\t");

    /** All of them. */
    static final List<Mutation> ALL = List.of(
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.CELL, chance, chance.of(CELLS)),
            (text, chance) ->
                    TextPlaces.replaced(text, TextPlaces.CELL, chance, TextPlaces.drawn(text, TextPlaces.CELL, chance)),
            (text, chance) -> TextPlaces.replaced(text, TextPlaces.CELL, chance, chance.of(HEADINGS)),
            (text, chance) -> heading(text, chance.of(HEADINGS), chance),
            (text, chance) -> chance.oneIn(4) ? heading(text, stretchedHeading(chance), chance) : text,
            (text, chance) -> text.replace(chance.of(DELIMITERS), chance.of(List.of(",", ";", "\t", "|", " ", ""))),
            (text, chance) ->
                    TextPlaces.with(text, chance, chance.of(List.of(",", ";", "\t", "\"", "\n", ",,", "\"\n\""))),
            (text, chance) -> chance.of(List.of("\n", " \n", "\ufeff", "sep=;\n", "# log\n", ",\n", "\"\"\n")) + text,
            (text, chance) -> text.length() < 100_000 ? text + text : text,
            (text, chance) -> text.replace('.', ','),
            (text, chance) -> text.replace(',', ';').replace('.', ','),
            (text, chance) -> text.replace("\n", chance.of(List.of(",\n", ",,,\n", ";;\n", "\t\n"))),
            (text, chance) -> text + chance.of(List.of(",,,\n", ";;;\n", "\n\n\n", "\t\t\n")),
            (text, chance) ->
                    text.replaceAll("(?<!\\d)(\\d)(\\d{3})(?!\\d)", "$1" + chance.of(List.of(".", ",", " ")) + "$2"),
            (text, chance) -> text.replaceAll("(?m)^(.*)$", "\"$1\""),
            (text, chance) -> text.toUpperCase(java.util.Locale.ROOT),
            LogMutations::turned);

    private LogMutations() {}

    private static String heading(String text, String heading, Chance chance) {
        int end = Math.max(0, text.indexOf('\n'));
        return TextPlaces.replaced(text.substring(0, end), TextPlaces.CELL, chance, heading) + text.substring(end);
    }

    private static String stretchedHeading(Chance chance) {
        return TextMutations.stretched(chance.of(HEADINGS).replace("\"", ""), chance);
    }

    /** The last reading first. */
    private static String turned(String text, Chance chance) {
        List<String> lines = text.lines().toList();
        StringBuilder turned = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            turned.append(lines.get(i == 0 || chance.oneIn(20) ? i : lines.size() - i))
                    .append('\n');
        }
        return turned.toString();
    }
}
