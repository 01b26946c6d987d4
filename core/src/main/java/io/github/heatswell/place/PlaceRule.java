package io.github.heatswell.place;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A rule of a place on one topic, with its clause and how far it was checked.
 *
 * @param place where it holds
 * @param topic what it is about
 * @param demand whether it asks for something or leaves it open; empty if it is neither
 * @param limit its number, in the SI unit of the topic; empty if it has none
 * @param words what it says, as half a sentence; of a rule nobody found, what was looked for
 * @param source its clause, and how far it was checked; empty if it was looked for and not found
 * @param edition of which edition that clause is; empty if nothing that has one was read
 * @param quotation its own words, at most {@value #MAX_WORDS}; empty if they were not read
 * @param seenAt where they were read; empty if they were not
 */
public record PlaceRule(
        Place place,
        Topic topic,
        Optional<Demand> demand,
        OptionalDouble limit,
        String words,
        Optional<Citation> source,
        String edition,
        String quotation,
        String seenAt) {

    /** The most words a quotation may have. */
    public static final int MAX_WORDS = 25;

    private static final Map<String, Unit> UNITS = Map.of(
            "psi", PressureUnit.PSI,
            "kPa", PressureUnit.KILOPASCAL,
            "bar", PressureUnit.BAR,
            "degF", TemperatureUnit.FAHRENHEIT,
            "degC", TemperatureUnit.CELSIUS,
            "L", VolumeUnit.LITRE,
            "%", RatioUnit.PERCENT);

    private static final int COLUMNS = 9;

    private static final String NOT_SHOWN = "not shown";

    /** Who quotes a clause, behind it. */
    private static final Pattern QUOTED = Pattern.compile("(|, (?:quoted|by an?|by the) .*)$");

    /** What a rule can be about. */
    public enum Topic {
        /** The highest static pressure in a building (Pa, gauge). */
        STATIC_LIMIT("static pressure"),
        /** The highest pressure in a building while water is heated (Pa, gauge). */
        PEAK_LIMIT("pressure while the water heats"),
        /** Whether expansion control is asked for, and where; of a rule for small heaters, below which volume (m3). */
        EXPANSION_CONTROL("expansion control"),
        /** What a bypass of the reducing valve changes about that. */
        BYPASS("bypass of a reducing valve"),
        /** Which means of expansion control are accepted. */
        EXPANSION_MEANS("accepted means"),
        /** Whether a relief valve may discharge the expansion. */
        RELIEF_FOR_EXPANSION("relief valve for expansion"),
        /** Whether a temperature and pressure relief valve is asked for. */
        HEAT_RELIEF("guard against boiling"),
        /** The highest temperature at which a temperature and pressure relief valve acts (K). */
        RELIEF_TEMPERATURE("temperature of a T&P valve"),
        /** The highest set pressure of a temperature and pressure relief valve (Pa, gauge). */
        RELIEF_PRESSURE("set pressure of a T&P valve"),
        /** How much a relief valve must discharge. */
        RELIEF_CAPACITY("relief capacity"),
        /** The largest static supply pressure, as a share of a relief valve's set pressure (-). */
        SUPPLY_TO_RELIEF("supply against relief setting"),
        /** The hottest water at the taps (K). */
        TAP_TEMPERATURE("water at the taps"),
        /** The coolest that water is stored (K). */
        STORAGE_TEMPERATURE("storage temperature"),
        /** The pressure at full flow above the set pressure, as a share of it (-). */
        FULL_FLOW("relief valve at full flow"),
        /** The discharge pipe of a relief valve. */
        DISCHARGE_PIPE("discharge pipe"),
        /** Valves that must not stand between tank and relief valve. */
        VALVES_BETWEEN("valves before a relief valve"),
        /** How an expansion vessel is fitted, and what pressure its plate must allow (Pa, gauge). */
        VESSEL("expansion vessel"),
        /** What is tested how often. */
        UPKEEP("tests"),
        /** Who may do the work. */
        WHO_MAY_WORK("who may do the work");

        private final String label;

        Topic(String label) {
            this.label = label;
        }

        /** {@return what it is called, as a heading within a sentence} */
        public String label() {
            return label;
        }
    }

    /** Whether a rule asks for something. */
    public enum Demand {
        /** It does. */
        REQUIRED,
        /** It leaves it open. */
        OPTIONAL
    }

    /**
     * Checks that everything is there.
     *
     * @param place where it holds
     * @param topic what it is about
     * @param demand whether it asks for something or leaves it open; empty if it is neither
     * @param limit its number, in the SI unit of the topic; empty if it has none
     * @param words what it says, as half a sentence; of a rule nobody found, what was looked for
     * @param source its clause, and how far it was checked; empty if it was looked for and not found
     * @param edition of which edition that clause is; empty if nothing that has one was read
     * @param quotation its own words, at most {@value #MAX_WORDS}; empty if they were not read
     * @param seenAt where they were read; empty if they were not
     * @throws IllegalArgumentException if the quotation is too long, one is given of a rule that nobody read, or nothing is said of
     *     the edition of a code that was read
     */
    public PlaceRule {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(edition, "edition");
        Objects.requireNonNull(quotation, "quotation");
        Objects.requireNonNull(seenAt, "seenAt");
        if (quotation.split("\\s+").length > MAX_WORDS) {
            throw new IllegalArgumentException("quotation: has more than " + MAX_WORDS + " words: " + quotation);
        }
        if (read(source) && code(source) && edition.isEmpty()) {
            throw new IllegalArgumentException("edition: say of which it is, or that none was shown: " + words);
        }
        if (!read(source) && !(quotation.isEmpty() && seenAt.isEmpty() && limit.isEmpty() && demand.isEmpty())) {
            throw new IllegalArgumentException("source: a rule that nobody read asks for nothing: " + words);
        }
    }

    /**
     * Whether the rule was read, in its own text or quoted by somebody else. Nothing else may decide anything, or be shown to an
     * authority.
     *
     * @return true if it was read
     */
    public boolean isRead() {
        return read(source);
    }

    /**
     * Whether it asks for something.
     *
     * @return true if it does; false if it leaves it open, or is about something else
     */
    public boolean requires() {
        return demand.filter(Demand.REQUIRED::equals).isPresent();
    }

    /**
     * Whether it holds in a smaller region alone, which it names first.
     *
     * @return true of a text such as that of a city
     */
    public boolean isLocal() {
        return words.startsWith("in ");
    }

    /**
     * Its clause.
     *
     * @return such as {@code EN 806-2, 16.1}; empty if it was not found
     */
    public String clause() {
        return source.map(Citation::text).orElse("");
    }

    /**
     * Its clause with the edition, or that nobody knows it who read the clause, for a paper whose reader has to find it.
     *
     * @return such as {@code UPC 608.2 (2024)} or {@code EN 806-2, 16.1 (2005), quoted in a trade journal}; empty if it was not found
     */
    public String cited() {
        if (edition.isEmpty()) {
            return clause();
        }
        // the edition is the clause's, not that of who quotes it
        return QUOTED.matcher(clause())
                .replaceFirst(" (" + (edition.equals(NOT_SHOWN) ? "edition not known" : edition) + ")$1");
    }

    /**
     * Whether it stands in a code, a standard or an official guide.
     *
     * @return false if the trade or a maker says so
     */
    public boolean isCode() {
        return code(source);
    }

    private static boolean code(Optional<Citation> source) {
        return source.map(Citation::text)
                .filter(clause -> !clause.isEmpty() && Character.isUpperCase(clause.charAt(0)))
                .isPresent();
    }

    private static boolean read(Optional<Citation> source) {
        return source.map(Citation::standing)
                .filter(standing -> standing == Citation.Standing.SEEN || standing == Citation.Standing.SECOND_HAND)
                .isPresent();
    }

    /**
     * Reads a row of the data file.
     *
     * @param row its columns
     * @return the rule
     * @throws IllegalArgumentException if the row is not sound; the message says why
     */
    static PlaceRule of(String... row) {
        if (row.length != COLUMNS) {
            throw new IllegalArgumentException(
                    "a row has " + COLUMNS + " columns, not " + row.length + ": " + String.join(" | ", row));
        }
        String value = row[2];
        Optional<Demand> demand = Arrays.stream(Demand.values())
                .filter(known -> known.name().toLowerCase(Locale.ROOT).equals(value))
                .findFirst();
        return new PlaceRule(
                Place.of(row[0]),
                Topic.valueOf(row[1].toUpperCase(Locale.ROOT).replace('-', '_')),
                demand,
                value.isEmpty() || demand.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(si(value)),
                row[3],
                source(row[4], row[6]),
                row[5],
                row[7],
                row[8]);
    }

    private static double si(String value) {
        String[] parts = value.split(" ");
        return Objects.requireNonNull(UNITS.get(parts[1]), value).toSi(Double.parseDouble(parts[0]));
    }

    private static Optional<Citation> source(String clause, String standing) {
        return switch (standing) {
            case "read" -> Optional.of(new Citation(clause, Citation.Standing.SEEN));
            case "second-hand" -> Optional.of(new Citation(clause, Citation.Standing.SECOND_HAND));
            case "memory" -> Optional.of(new Citation(clause, Citation.Standing.FROM_MEMORY));
            case "not-found" -> Optional.empty();
            default -> throw new IllegalArgumentException("standing: " + standing + " is none");
        };
    }
}
