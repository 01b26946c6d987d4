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
 * Units that stand below the names of the columns: in a row or a column of their own, or behind every number.
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
                .map(name -> withUnitApart(name, names, row))
                .toList();
        boolean digits = row.stream().anyMatch(cell -> cell.chars().anyMatch(Character::isDigit));
        return new UnitsBelow(complete, !digits && !complete.equals(names));
    }

    /** A column of pressures whose unit stands in every row, in a column of its own. */
    private static String withUnitApart(String name, List<String> names, List<String> row) {
        boolean open = LogHeading.of(name)
                .filter(found ->
                        found.quantity() == Quantity.PRESSURE && found.unit().isEmpty())
                .isPresent();
        return IntStream.range(0, open ? Math.min(names.size(), row.size()) : 0)
                .filter(i -> LogHeading.of(names.get(i))
                        .filter(found -> found.quantity() == Quantity.UNIT)
                        .isPresent())
                .mapToObj(i -> row.get(i).strip())
                .filter(unit -> LogHeading.isPressure(unit.toLowerCase(Locale.ROOT)))
                .findFirst()
                .map(unit -> name + " (" + unit + ")")
                .orElse(name);
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
