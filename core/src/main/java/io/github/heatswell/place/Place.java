package io.github.heatswell.place;

import io.github.heatswell.place.PlaceRule.Topic;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a house is, as far as rules differ. The rules and what is usual are in the data files beside this class. No place is
 * known by one text alone: cities and states change model codes, so that whoever enforces them has the last word.
 */
public enum Place {
    /** The United States where the International Plumbing or Residential Code holds. */
    US_IPC,
    /** The United States where the Uniform Plumbing Code holds. */
    US_UPC,
    /** The United Kingdom. */
    UK,
    /** Countries of European standards; in Germany with those of DIN. */
    EN,
    /** Australia and New Zealand. */
    AU_NZ,
    /** Nobody said where: rules of several places are compared. */
    NOT_KNOWN;

    /** The data, read when it is first asked for. */
    private static final class Data {
        private static final List<PlaceRule> RULES =
                rows("rules.txt").map(PlaceRule::of).toList();
        private static final List<Customs> CUSTOMS =
                rows("customs.txt").map(Customs::of).toList();
    }

    /**
     * The place of a name.
     *
     * @param key the name, as {@link #key} gives it
     * @return the place
     * @throws IllegalArgumentException if there is none
     */
    public static Place of(String key) {
        return Arrays.stream(values())
                .filter(place -> place.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("place: there is no " + key));
    }

    /**
     * Its name in a file.
     *
     * @return such as {@code us-ipc} or {@code not-known}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Its name in a sentence.
     *
     * @return such as {@code United Kingdom}
     */
    public String title() {
        return customs().map(Customs::title).orElse("place not known");
    }

    /** {@return whether somebody said where the house stands} */
    public boolean isKnown() {
        return this != NOT_KNOWN;
    }

    /**
     * What is usual there.
     *
     * @return units, currency and the like; empty if the place is not known
     */
    public Optional<Customs> customs() {
        return Data.CUSTOMS.stream().filter(customs -> customs.place() == this).findFirst();
    }

    /**
     * Its rules, whether they were read or not; of a place that is not known, those of all places.
     *
     * @return the rules in the order of the places and topics
     */
    public List<PlaceRule> rules() {
        return Data.RULES.stream()
                .filter(rule -> this == NOT_KNOWN || rule.place() == this)
                .toList();
    }

    /**
     * Its rules on a topic that were read; of a place that is not known, those of all places.
     *
     * @param topic the topic
     * @return the rules, that which decides before those of a smaller region; none if nobody read any
     */
    public List<PlaceRule> rules(Topic topic) {
        return rules().stream()
                .filter(rule -> rule.topic() == topic && rule.isRead())
                .toList();
    }

    /**
     * The rule that decides whether something is asked for.
     *
     * @param topic the topic
     * @return the rule; empty if nobody read one, or the place is not known
     */
    public Optional<PlaceRule> demand(Topic topic) {
        return isKnown()
                ? rules(topic).stream()
                        .filter(rule -> rule.demand().isPresent())
                        .findFirst()
                : Optional.empty();
    }

    /**
     * The limits on a topic: of a known place the one that decides, of a place that is not known one of each place that has one.
     * Of equal limits that comes first whose own text was read.
     *
     * @param topic the topic
     * @return the rules, the lowest limit first; none if nobody read any
     */
    public List<PlaceRule> limits(Topic topic) {
        return Arrays.stream(values())
                .filter(place -> place == this || this == NOT_KNOWN)
                .filter(Place::isKnown)
                .flatMap(place -> place.rules(topic).stream()
                        .filter(rule -> rule.limit().isPresent())
                        .limit(1))
                .sorted(Comparator.<PlaceRule>comparingDouble(
                                rule -> rule.limit().orElseThrow())
                        .thenComparing(rule -> rule.source().orElseThrow().standing()))
                .toList();
    }

    /**
     * The lowest of these limits.
     *
     * @param topic the topic
     * @return the rule that has it; empty if nobody read any
     */
    public Optional<PlaceRule> strictest(Topic topic) {
        return limits(topic).stream().findFirst();
    }

    /**
     * The highest of these limits.
     *
     * @param topic the topic
     * @return the rule that has it; empty if nobody read any
     */
    public Optional<PlaceRule> laxest(Topic topic) {
        List<PlaceRule> limits = limits(topic);
        return limits.isEmpty() ? Optional.empty() : Optional.of(limits.get(limits.size() - 1));
    }

    /** The rows of a data file, cut into columns, without comments and heading. */
    private static Stream<String[]> rows(String file) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(Place.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            List<String[]> rows = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .skip(1)
                    .map(line -> Arrays.stream(line.split("\\|", -1))
                            .map(String::strip)
                            .toArray(String[]::new))
                    .toList();
            return rows.stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
