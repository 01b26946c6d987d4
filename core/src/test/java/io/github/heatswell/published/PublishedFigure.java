package io.github.heatswell.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * One row of {@code published_figures.tsv}, whose head says what its columns mean.
 *
 * @param id its name
 * @param quantity what was published
 * @param conditions under which conditions, as far as the source states them
 * @param printed the figure as printed
 * @param numbers the same as numbers, in the unit given; empty if the row is not compared
 * @param unit the unit of figure and tolerance
 * @param reason where the tolerance comes from
 * @param kind what kind of source, without names
 * @param source the source
 * @param address where it was read, or empty
 * @param standing how it was read: primary, second-hand or from memory
 * @param use {@code compared}, {@code test Class#method} or {@code not compared: reason}
 */
record PublishedFigure(
        String id,
        String quantity,
        String conditions,
        String printed,
        List<Value> numbers,
        String unit,
        String reason,
        String kind,
        String source,
        String address,
        String standing,
        String use) {

    static final String COLUMNS = "id\tquantity\tconditions\tprinted\tnumbers\tunit\ttolerance\treason\tkind\tsource"
            + "\taddress\tstanding\tuse";

    /**
     * A published number or range.
     *
     * @param low its lower end
     * @param high its upper end, the same for a single number
     * @param tolerance how far both may be off
     * @param atMost whether the source gives an upper bound
     */
    record Value(double low, double high, double tolerance, boolean atMost) {

        private static Value of(String text, double tolerance) {
            if (text.startsWith("<=")) {
                double bound = Double.parseDouble(text.substring(2));
                return new Value(bound, bound, tolerance, true);
            }
            int dots = text.indexOf("..");
            double low = Double.parseDouble(dots < 0 ? text : text.substring(0, dots));
            double high = dots < 0 ? low : Double.parseDouble(text.substring(dots + 2));
            return new Value(low, high, tolerance, false);
        }
    }

    boolean compared() {
        return use.equals("compared");
    }

    static List<PublishedFigure> read() {
        List<String> lines =
                lines().stream().filter(line -> !line.startsWith("#")).toList();
        if (!lines.get(0).equals(COLUMNS)) {
            throw new IllegalStateException("columns " + lines.get(0));
        }
        return lines.stream().skip(1).map(PublishedFigure::of).toList();
    }

    private static PublishedFigure of(String line) {
        String[] f = line.split("\t", -1);
        if (f.length != 13) {
            throw new IllegalStateException(f.length + " fields: " + line);
        }
        List<Value> numbers = f[4].isEmpty()
                ? List.of()
                : Arrays.stream(f[4].split(";"))
                        .map(text -> Value.of(text, Double.parseDouble(f[6])))
                        .toList();
        return new PublishedFigure(f[0], f[1], f[2], f[3], numbers, f[5], f[7], f[8], f[9], f[10], f[11], f[12]);
    }

    private static List<String> lines() {
        try (InputStream stream = PublishedFigure.class.getResourceAsStream("published_figures.tsv")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
