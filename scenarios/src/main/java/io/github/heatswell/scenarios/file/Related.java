package io.github.heatswell.scenarios.file;

import java.util.List;

/** Finds which other fields a field is checked against once all values are there. */
final class Related {

    /** In front of a key of the section around. */
    private static final String OUTSIDE = "../";

    private Related() {}

    /**
     * The related fields.
     *
     * @param path a field, such as {@code relief[0].reseats}
     * @return the paths of the fields it is checked against, such as {@code relief[0].opens}
     */
    static List<String> to(String path) {
        int dot = path.lastIndexOf('.');
        String place = path.substring(0, Math.max(0, dot));
        String section = place.replaceAll("\\[\\d+]", "");
        String key = path.substring(dot + 1);
        return Schema.allSections().stream()
                .filter(candidate -> candidate.name().equals(section))
                .flatMap(candidate -> candidate.fields().stream())
                .filter(field -> field.key().equals(key))
                .flatMap(field -> field.related().stream())
                .map(other -> path(place, other))
                .toList();
    }

    private static String path(String place, String other) {
        if (other.startsWith(OUTSIDE)) {
            return place.substring(0, place.lastIndexOf('.') + 1) + other.substring(OUTSIDE.length());
        }
        return other.contains(".") || place.isEmpty() ? other : place + "." + other;
    }
}
