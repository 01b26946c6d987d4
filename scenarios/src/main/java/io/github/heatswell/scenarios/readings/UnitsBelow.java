package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.readings.LogHeading.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Units that stand below the names of the columns: in a row of their own, or behind every number.
 *
 * @param names the names of the columns, with these units
 * @param ownRow whether the row holds nothing else
 */
record UnitsBelow(List<String> names, boolean ownRow) {

    private static final Pattern BEHIND =
            Pattern.compile("(?:[-+]?[\\d.,]+)?\\s*[(\\[]?(?<unit>[\\p{L}\u00b0][\\p{L}\u00b0/\u00b2]*)\\b.*");

    /**
     * Looks for them.
     *
     * @param names the names of the columns
     * @param row the row below them
     */
    static UnitsBelow of(List<String> names, List<String> row) {
        List<String> complete = IntStream.range(0, names.size())
                .mapToObj(
                        i -> i < row.size() ? complete(names.get(i), row.get(i).strip()) : names.get(i))
                .toList();
        boolean digits = row.stream().anyMatch(cell -> cell.chars().anyMatch(Character::isDigit));
        return new UnitsBelow(complete, !digits && !complete.equals(names));
    }

    private static String complete(String name, String cell) {
        Optional<LogHeading> heading =
                LogHeading.of(name).filter(found -> found.unit().isEmpty());
        Matcher behind = BEHIND.matcher(cell);
        if (heading.isEmpty() || !behind.matches()) {
            return name;
        }
        String unit = behind.group("unit");
        Quantity quantity = heading.get().quantity();
        Kind<?> kind = quantity == Quantity.PRESSURE
                ? Kind.PRESSURE
                : quantity == Quantity.TEMPERATURE ? Kind.TEMPERATURE : Kind.DURATION;
        boolean measured = kind != Kind.DURATION || quantity == Quantity.TIME;
        return measured && LogHeading.is(unit.toLowerCase(Locale.ROOT), kind) ? name + " (" + unit + ")" : name;
    }
}
