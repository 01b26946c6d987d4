package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Plain;
import io.github.heatswell.scenarios.generated.Part.Quantity;
import io.github.heatswell.scenarios.generated.Part.Several;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes a file in the making: as YAML with one key a line, or as JSON. */
final class Layout {

    private Layout() {}

    static String yaml(Keyed file) {
        StringBuilder text = new StringBuilder();
        block(file, "", text);
        return text.toString();
    }

    static String json(Part part) {
        if (part instanceof Keyed keyed) {
            return keyed.values().entrySet().stream()
                    .map(entry -> quoted(entry.getKey()) + ": " + json(entry.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (part instanceof Several several) {
            return several.items().stream().map(Layout::json).collect(Collectors.joining(",\n ", "[", "]"));
        }
        return quoted(text(part));
    }

    private static void block(Keyed keyed, String indent, StringBuilder text) {
        String blanks = indent.replace('-', ' ');
        String before = indent;
        for (Map.Entry<String, Part> entry : keyed.values().entrySet()) {
            text.append(before).append(entry.getKey()).append(':');
            value(entry.getValue(), blanks, text);
            before = blanks;
        }
    }

    private static void value(Part part, String blanks, StringBuilder text) {
        if (part instanceof Keyed keyed && !keyed.values().isEmpty()) {
            text.append('\n');
            block(keyed, blanks + "  ", text);
        } else if (part instanceof Several several && !several.items().isEmpty()) {
            text.append('\n');
            several.keyed().forEach(item -> block(item, blanks + "  - ", text));
        } else {
            text.append(' ')
                    .append(part instanceof Keyed ? "{}" : part instanceof Several ? "[]" : scalar(part))
                    .append('\n');
        }
    }

    private static String scalar(Part part) {
        String text = text(part);
        return part instanceof Quantity || text.matches("[a-z][a-z-]*|[0-9][0-9.:]*") ? text : quoted(text);
    }

    private static String text(Part part) {
        return part instanceof Quantity quantity ? quantity.text() : ((Plain) part).text();
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
