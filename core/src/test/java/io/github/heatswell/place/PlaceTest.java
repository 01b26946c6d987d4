package io.github.heatswell.place;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.citation.Citation.Standing;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The rules of places: whole, honest about how far they were checked, and in SI units. */
class PlaceTest {

    /** Regression: every place says something of every topic, be it only that nothing was found. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NOT_KNOWN")
    void everyPlaceHasARowOnEveryTopic(Place place) {
        Set<Topic> topics = place.rules().stream().map(PlaceRule::topic).collect(Collectors.toSet());
        assertEquals(EnumSet.allOf(Topic.class), topics);
        assertTrue(place.customs().isPresent(), place.key());
        assertFalse(place.customs().orElseThrow().sizes().isEmpty());
    }

    /** Regression: a rule from memory, or one not found, has no quotation, decides nothing, and is never handed out as read. */
    @Test
    void nothingUnreadDecides() {
        List<PlaceRule> unread = Place.NOT_KNOWN.rules().stream()
                .filter(rule -> rule.source()
                        .filter(source ->
                                source.standing() == Standing.SEEN || source.standing() == Standing.SECOND_HAND)
                        .isEmpty())
                .toList();
        assertTrue(unread.size() > 10, "the rows not found and from memory are told, not hidden");
        for (PlaceRule rule : unread) {
            assertAll(
                    rule.toString(),
                    () -> assertFalse(rule.isRead()),
                    () -> assertEquals("", rule.quotation()),
                    () -> assertTrue(rule.limit().isEmpty() && rule.demand().isEmpty()),
                    () -> assertFalse(rule.place().rules(rule.topic()).contains(rule)),
                    () -> assertFalse(rule.place().limits(rule.topic()).contains(rule)));
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> PlaceRule.of("uk", "static-limit", "5 bar", "a limit", "a code", "", "memory", "", ""));
        assertThrows(
                IllegalArgumentException.class,
                () -> PlaceRule.of("uk", "static-limit", "", "a limit", "", "", "not-found", "so it says", ""));
    }

    /** Regression: quotations stay short, and name where they were read; whoever writes a longer one is told. */
    @Test
    void quotationsAreShortAndTellWhereTheyStand() {
        for (PlaceRule rule : Place.NOT_KNOWN.rules()) {
            assertTrue(rule.quotation().split("\\s+").length <= PlaceRule.MAX_WORDS, rule.quotation());
            assertEquals(rule.isRead(), !rule.seenAt().isEmpty(), rule.toString());
            assertEquals(rule.isRead(), rule.isRead() && !rule.clause().isEmpty(), rule.toString());
        }
        String long26 = "word ".repeat(PlaceRule.MAX_WORDS + 1).strip();
        assertThrows(
                IllegalArgumentException.class,
                () -> PlaceRule.of("uk", "static-limit", "", "a limit", "a code", "", "read", long26, "a page"));
    }

    /** Regression: a clause without its edition cannot be looked up; whoever adds a row of a code tells it, or that none was shown. */
    @Test
    void everyClauseTellsItsEdition() {
        List<PlaceRule> codes = Place.NOT_KNOWN.rules().stream()
                .filter(rule -> rule.isRead() && rule.isCode())
                .toList();
        assertTrue(codes.size() > 40, "most rows are of codes");
        for (PlaceRule rule : codes) {
            assertTrue(rule.cited().startsWith(rule.clause().replaceFirst(",? (quoted|by) .*", "")), rule.cited());
            assertFalse(
                    rule.cited().matches(".*(quoted|by a|by the) [^(]*\\([^()]*\\)"), "whose edition? " + rule.cited());
            assertTrue(rule.cited().matches(".*((19|20)\\d\\d|edition not known).*"), rule.cited());
            boolean quoted = rule.source().orElseThrow().standing() == Standing.SECOND_HAND;
            assertTrue(
                    !quoted || rule.clause().matches(".*(quoted (in|by) |in Chicago|with the 80 psi|by an answer).*"),
                    rule.clause());
        }
        assertEquals(
                "UPC 608.2 (2024)",
                Place.US_UPC.strictest(Topic.PEAK_LIMIT).orElseThrow().cited());
        assertThrows(
                IllegalArgumentException.class,
                () -> PlaceRule.of("uk", "static-limit", "", "a limit", "A Code 1", "", "read", "", "a page"));
    }

    /** Regression: a quotation carries the rule beside it, under no second topic of the US, and one that counts in a city's sections is that city's. */
    @Test
    void quotationsCarryTheirOwnRule() {
        for (Place place : List.of(Place.US_IPC, Place.US_UPC)) {
            List<String> quoted = place.rules().stream()
                    .map(PlaceRule::quotation)
                    .filter(words -> !words.isEmpty())
                    .toList();
            assertEquals(quoted.stream().distinct().toList(), quoted, place.key());
        }
        List<PlaceRule> chicago = Place.US_IPC.rules().stream()
                .filter(rule -> rule.quotation().contains("Section 18-29-"))
                .toList();
        assertEquals(
                List.of(Topic.PEAK_LIMIT),
                chicago.stream().map(PlaceRule::topic).toList());
        assertFalse(
                chicago.get(0).cited().contains("Philadelphia"), chicago.get(0).cited());
        assertFalse(
                chicago.get(0).seenAt().contains("Philadelphia"), chicago.get(0).seenAt());
    }

    /**
     * Validation: the figures the places differ in, by the clauses beside them in the data: 80 psi of UPC 608.2 and 500 kPa of EN
     * 806-2 16.1 and AS/NZS 3500.1 3.3.4; 75 % of EN 806-2; 210 degF of ANSI Z21.22; 95 degC of the draft EN 1490.
     */
    @Test
    void limitsAreThoseOfTheClauses() {
        assertEquals(PressureUnit.PSI.toSi(80), limit(Place.US_UPC, Topic.STATIC_LIMIT), 1e-6);
        assertEquals(5e5, limit(Place.EN, Topic.STATIC_LIMIT), 1e-6);
        assertEquals(5e5, limit(Place.AU_NZ, Topic.STATIC_LIMIT), 1e-6);
        assertEquals(0.75, limit(Place.EN, Topic.SUPPLY_TO_RELIEF), 1e-12);
        assertEquals(0.80, limit(Place.AU_NZ, Topic.SUPPLY_TO_RELIEF), 1e-12);
        assertEquals(TemperatureUnit.FAHRENHEIT.toSi(210), limit(Place.US_IPC, Topic.RELIEF_TEMPERATURE), 1e-9);
        assertEquals(TemperatureUnit.CELSIUS.toSi(95), limit(Place.EN, Topic.RELIEF_TEMPERATURE), 1e-9);
        assertTrue(Place.UK.strictest(Topic.STATIC_LIMIT).isEmpty(), "no limit was found for the UK");
        assertTrue(Place.EN.strictest(Topic.PEAK_LIMIT).isEmpty());
    }

    /** Regression: a place nobody named has the limits of all, from the strictest to the laxest, and asks for nothing. */
    @Test
    void aPlaceNotKnownHasTheLimitsOfAll() {
        List<PlaceRule> limits = Place.NOT_KNOWN.limits(Topic.STATIC_LIMIT);
        assertEquals(4, limits.size());
        assertEquals(
                5e5,
                Place.NOT_KNOWN
                        .strictest(Topic.STATIC_LIMIT)
                        .orElseThrow()
                        .limit()
                        .orElseThrow());
        assertEquals(
                PressureUnit.PSI.toSi(80),
                Place.NOT_KNOWN.laxest(Topic.STATIC_LIMIT).orElseThrow().limit().orElseThrow(),
                1e-6);
        assertTrue(Place.NOT_KNOWN.demand(Topic.EXPANSION_CONTROL).isEmpty());
        assertTrue(Place.NOT_KNOWN.customs().isEmpty());
        assertTrue(Place.US_IPC.demand(Topic.EXPANSION_CONTROL).orElseThrow().requires());
        assertFalse(Place.EN.demand(Topic.EXPANSION_CONTROL).orElseThrow().requires());
        assertEquals(
                Arrays.asList(Place.values()),
                Arrays.stream(Place.values())
                        .map(place -> Place.of(place.key()))
                        .toList());
    }

    private static double limit(Place place, Topic topic) {
        return place.strictest(topic).orElseThrow().limit().orElseThrow();
    }
}
