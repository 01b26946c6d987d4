package io.github.heatswell.system;

import java.util.Map;

/** What a builder calls a field of a scenario file, for messages to programs: {@code standing-loss} is {@code standingLoss}. */
final class Property {

    /** Those that are not called as the file calls them. */
    private static final Map<String, String> OTHERWISE = Map.of(
            "opens", "setPressure",
            "full-lift", "fullLiftPressure",
            "reseats", "reseatPressure",
            "character", "liftCharacteristic",
            "relief", "reliefValves");

    private Property() {}

    /** {@return what builders call a field, part by part of its path} */
    static String of(String field) {
        StringBuilder path = new StringBuilder();
        for (String part : field.split("\\.")) {
            int index = part.indexOf('[');
            String key = index < 0 ? part : part.substring(0, index);
            path.append(path.length() == 0 ? "" : ".")
                    .append(OTHERWISE.getOrDefault(key, joined(key)))
                    .append(part.substring(key.length()));
        }
        return path.toString();
    }

    private static String joined(String key) {
        StringBuilder name = new StringBuilder();
        for (String word : key.split("-")) {
            name.append(name.length() == 0 ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return name.toString();
    }
}
