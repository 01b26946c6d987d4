package io.github.heatswell.place;

import io.github.heatswell.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What is usual at a place: common practice, no source.
 *
 * @param place the place
 * @param title its name
 * @param units the units that people use
 * @param currency the sign of its money, such as {@code USD}
 * @param paper the paper that people print on: {@code letter} or {@code A4}
 * @param halfDays whether people write times with am and pm
 * @param usWords whether the trade speaks as in the United States
 * @param sizes the sizes that expansion vessels for houses usually come in, in the unit for volumes, the smallest first
 */
public record Customs(
        Place place,
        String title,
        UnitSystem units,
        String currency,
        String paper,
        boolean halfDays,
        boolean usWords,
        List<Double> sizes) {

    /**
     * Checks that everything is there and copies the sizes.
     *
     * @param place the place
     * @param title its name
     * @param units the units that people use
     * @param currency the sign of its money, such as {@code USD}
     * @param paper the paper that people print on: {@code letter} or {@code A4}
     * @param halfDays whether people write times with am and pm
     * @param usWords whether the trade speaks as in the United States
     * @param sizes the sizes that expansion vessels for houses usually come in, in the unit for volumes, the smallest first
     */
    public Customs {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(paper, "paper");
        sizes = List.copyOf(sizes);
    }

    static Customs of(String... row) {
        return new Customs(
                Place.of(row[0]),
                row[1],
                UnitSystem.valueOf(row[2].toUpperCase(Locale.ROOT)),
                row[3],
                row[4],
                row[5].equals("12"),
                row[6].equals("us"),
                Arrays.stream(row[7].split(" ")).map(Double::valueOf).toList());
    }
}
