package io.github.heatswell.scenarios.file;

import java.util.List;

/** Finds which other fields a field is checked against once all values are there. */
final class Related {

    private Related() {}

    /**
     * The related fields.
     *
     * @param path a field, such as {@code relief[0].reseats}
     * @return the paths of the fields it is checked against, such as {@code relief[0].opens}
     */
    static List<String> to(String path) {
        int dot = path.lastIndexOf('.');
        if (dot < 0) {
            return List.of();
        }
        String place = path.substring(0, dot);
        String section = place.replaceAll("\\[\\d+]", "");
        String key = path.substring(dot + 1);
        return Schema.sections().stream()
                .filter(candidate -> candidate.name().equals(section))
                .flatMap(candidate -> candidate.fields().stream())
                .filter(field -> field.key().equals(key))
                .flatMap(field -> field.related().stream())
                .map(other -> other.contains(".") ? other : place + "." + other)
                .toList();
    }
}
