package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.NamedValue;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where the values of a file come from, as far as the file says so. Immutable. */
public final class Origins {

    static final Origins NONE = new Origins(Map.of());

    private static final String PLACE = "site.place";

    /** The fields of which an origin may be said. */
    static final Set<String> FIELDS = Stream.concat(
                    Stream.of(PLACE, "draws"),
                    Arrays.stream(NamedValue.values()).map(NamedValue::field))
            .collect(Collectors.toCollection(TreeSet::new));

    private final Map<Kind, List<String>> fields;

    private Origins(Map<Kind, List<String>> fields) {
        this.fields = fields;
    }

    /** Where a value comes from. */
    public enum Kind {
        /** Somebody gave it. */
        GIVEN("given"),
        /** Somebody gave it for one answer, from outside the file. */
        CHANGED("given for this answer"),
        /** Somebody gave it within a range, or with how far it may be off. */
        RANGE("given within a range"),
        /** Somebody gave it, and how far it may be off is what such readings usually are. */
        USUAL_ACCURACY("given; how far it may be off is common practice, no source"),
        /** Somebody gave it roughly, or as a guess. */
        GUESSED("given roughly or as a guess"),
        /** The code of a place, from a state or a country that somebody named. */
        ASSUMED_CODE("assumed from the state or country named: ask the authority which code holds"),
        /** Nobody gave it. */
        TYPICAL("not given: typical, common practice, no source"),
        /** A choice that nobody has looked at. */
        NOT_KNOWN("assumed: nobody has looked");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * The key under which a file names the fields that have it.
         *
         * @return such as {@code usual-accuracy}
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /**
         * The origin in words.
         *
         * @return such as {@code given roughly or as a guess}
         */
        public String words() {
            return words;
        }
    }

    /** What the file says of a field; given, if it says nothing. */
    Kind of(String field) {
        String named = NamedValue.of(field).map(NamedValue::field).orElse(field);
        return fields.entrySet().stream()
                .filter(entry -> entry.getValue().contains(named))
                .map(Map.Entry::getKey)
                .findFirst()
                .map(kind -> kind == Kind.GUESSED && named.equals(PLACE) ? Kind.ASSUMED_CODE : kind)
                .orElse(Kind.GIVEN);
    }

    /** Takes the origins kind by kind, as a file has them. */
    static final class Builder {
        private final Map<Kind, List<String>> fields = new EnumMap<>(Kind.class);

        void guessed(List<String> values) {
            fields.put(Kind.GUESSED, values);
        }

        void typical(List<String> values) {
            fields.put(Kind.TYPICAL, values);
        }

        void usualAccuracy(List<String> values) {
            fields.put(Kind.USUAL_ACCURACY, values);
        }

        Origins build() {
            return new Origins(Collections.unmodifiableMap(new EnumMap<>(fields)));
        }
    }
}
