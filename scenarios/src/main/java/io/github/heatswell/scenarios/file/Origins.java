package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.NamedValue;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where the values of a file come from, as far as the file says so. Immutable. */
final class Origins {

    static final Origins NONE = new Origins(Map.of());

    private static final String PLACE = "site.place";

    /** The fields of which an origin may be said. */
    static final Set<String> FIELDS = Stream.concat(
                    Stream.of(PLACE, "draws"),
                    Arrays.stream(NamedValue.values()).map(NamedValue::field))
            .collect(Collectors.toCollection(TreeSet::new));

    private final Map<Origin, List<String>> fields;

    private Origins(Map<Origin, List<String>> fields) {
        this.fields = fields;
    }

    /** What the file says of a field; given, if it says nothing. */
    Origin of(String field) {
        String named = NamedValue.of(field).map(NamedValue::field).orElse(field);
        return fields.entrySet().stream()
                .filter(entry -> entry.getValue().contains(named))
                .map(Map.Entry::getKey)
                .findFirst()
                .map(kind -> kind == Origin.GUESSED && named.equals(PLACE) ? Origin.ASSUMED_CODE : kind)
                .orElse(Origin.GIVEN);
    }

    /** Takes the origins kind by kind, as a file has them. */
    static final class Builder {
        private final Map<Origin, List<String>> fields = new EnumMap<>(Origin.class);

        void guessed(List<String> values) {
            fields.put(Origin.GUESSED, values);
        }

        void typical(List<String> values) {
            fields.put(Origin.TYPICAL, values);
        }

        void usualAccuracy(List<String> values) {
            fields.put(Origin.USUAL_ACCURACY, values);
        }

        Origins build() {
            return new Origins(Collections.unmodifiableMap(new EnumMap<>(fields)));
        }
    }
}
