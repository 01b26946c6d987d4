package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sorts out which keys of a part of the file are known. */
final class Keys {

    private Keys() {}

    /** The known keys with their values; every other key is noted as a fault. */
    static Map<String, Node> known(Mapping mapping, List<String> known, Place place, Findings findings) {
        Map<String, Node> found = new LinkedHashMap<>();
        for (Entry entry : mapping.entries()) {
            String key = key(entry);
            if (known.contains(key)) {
                found.put(key, entry.value());
                findings.stands(place.of(key), position(entry));
            }
        }
        for (Entry entry : mapping.entries()) {
            if (!known.contains(key(entry)) && findings.crowded()) {
                findings.oneMore();
            } else if (!known.contains(key(entry))) {
                Optional<String> meant = Nearest.to(key(entry), known);
                unknown(entry.key(), meant, known, place, findings);
                // What was meant is then not missing as well.
                meant.filter(near -> !found.containsKey(near)).ifPresent(near -> findings.unsound(place.of(near)));
            }
        }
        return found;
    }

    /** A value is pointed at itself; a section by its key, below which it may begin lines later. */
    private static Location position(Entry entry) {
        return entry.value() instanceof Scalar scalar && !scalar.text().isEmpty()
                ? scalar.at()
                : entry.key().at();
    }

    private static void unknown(
            Scalar key, Optional<String> meant, List<String> known, Place place, Findings findings) {
        findings.wrong(
                place.of(Printable.line(shortened(key.text()))), key.at(), explanation(key.text(), meant, known));
    }

    private static String explanation(String key, Optional<String> meant, List<String> known) {
        if (key.indexOf(':') > 0) {
            return "is not a key; put a space after the colon";
        }
        return "is not a known key here; "
                + meant.map(near -> "did you mean " + near + "?")
                        .orElse("the known keys are " + String.join(", ", known));
    }

    private static String shortened(String key) {
        return key.length() > 40 ? key.substring(0, 40) + "..." : key;
    }

    private static String key(Entry entry) {
        return entry.key().text();
    }
}
