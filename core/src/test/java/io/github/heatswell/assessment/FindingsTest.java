package io.github.heatswell.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every finding. */
class FindingsTest {

    /** Programs and pages refer to findings by these; a name in this list never changes its meaning. */
    private static final Set<String> IDS = Set.of(
            "bypass-opens-too-late",
            "boiling-margin-small",
            "check-valve-leaks",
            "cut-out-missing",
            "cut-out-tripped",
            "circulation-rests-long",
            "circulation-returns-cool",
            "dripping-hides-expansion",
            "expansion-control-missing",
            "expansion-returns-to-mains",
            "expansion-valve-missing",
            "expansion-valve-opens-late",
            "expansion-valve-provided",
            "expansion-valve-works",
            "frost-likely",
            "heater-never-heats",
            "hot-branch-cools",
            "hot-branch-long",
            "mixed-draw-below-feed",
            "mixing-valve-below-feed",
            "mixing-valve-set-high",
            "peak-above-code-limit",
            "peak-near-relief",
            "precharge-above-static",
            "precharge-below-static",
            "precharge-unknown",
            "pressure-lost",
            "reducing-valve-creeps",
            "relief-reseats-below-supply",
            "relief-set-above-tank",
            "relief-valve-blocked",
            "relief-valve-chatters",
            "relief-valve-controls-expansion",
            "relief-valve-missing",
            "relief-valve-opened-by-heat",
            "relief-valve-seat-leaks",
            "relief-valve-stuck-open",
            "relief-water-loss",
            "scald-without-mixing-valve",
            "static-pressure-high",
            "static-pressure-low",
            "stored-too-cool",
            "supply-near-relief-set",
            "supply-opens-relief-valve",
            "surge-trapped",
            "temperature-relief-missing",
            "test-pressure-reached",
            "textbook-run",
            "textbook-run-beyond-test-pressure",
            "thermostat-stuck",
            "set-point-above-relief",
            "cut-out-above-relief",
            "tp-relief-rating-low",
            "tank-rating-unread",
            "tp-relief-set-high",
            "tp-relief-temperature-high",
            "trapped-air",
            "vapour-forms",
            "vessel-above-supply",
            "vessel-bottomed-out",
            "vessel-charged-above-plate",
            "vessel-isolated",
            "vessel-rated-below-relief",
            "vessel-rating-exceeded",
            "vessel-too-small",
            "vessel-unsupported",
            "vessel-upstream-of-check",
            "vessel-waterlogged",
            "vessel-weight",
            "water-freezes",
            "water-hotter-than-boiling",
            "water-out-of-range",
            "working-pressure-exceeded");

    /** They repeat what the description says, or speak of a quantity that has no name of its own. */
    private static final Set<String> REST_ON_NO_VALUE = Set.of(
            "circulation-rests-long",
            "circulation-returns-cool",
            "dripping-hides-expansion",
            "frost-likely",
            "hot-branch-cools",
            "hot-branch-long",
            "precharge-unknown",
            "relief-valve-blocked",
            "relief-valve-missing",
            "relief-valve-stuck-open",
            "tank-rating-unread",
            "textbook-run",
            "textbook-run-beyond-test-pressure",
            "thermostat-stuck",
            "trapped-air",
            "vessel-unsupported",
            "vessel-weight",
            "water-freezes");

    /** Contract: a new finding names the values it rests on or compares, or is listed as one that rests on none. */
    @Test
    void everyFindingNamesItsValues() {
        Set<String> none = Cases.subjects()
                .flatMap(subject -> Findings.all(subject).stream())
                .filter(found -> found.inputs().isEmpty())
                .map(CandidateFinding::id)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(REST_ON_NO_VALUE), none);
    }

    static Stream<Arguments> cases() {
        return Cases.all().entrySet().stream().map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @Test
    void aSoundHouseHasNone() {
        assertEquals(List.of(), Findings.of(FaultlessHouse.house().build()));
        assertEquals(
                List.of(), Findings.of(FaultlessHouse.run(FaultlessHouse.house().build(), 5.3, 60)));
    }

    /** No word of one system meets itself in the words of the other, as in city water water. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void noWordIsSaidTwice(String id, Supplier<List<Finding>> found) {
        for (Finding finding : found.get()) {
            for (UnitSystem units : UnitSystem.values()) {
                String text =
                        finding.sentence().text(units) + " " + finding.advice().text(units);
                assertFalse(text.matches("(?s).*\\b([a-z]+) \\1\\b.*"), text);
            }
        }
    }

    @Test
    void everyIdIsKnownAndHasACase() {
        Set<String> seen = new TreeSet<>(Cases.all().keySet());
        Cases.all().values().forEach(found -> found.get().forEach(finding -> seen.add(finding.id())));
        assertEquals(new TreeSet<>(IDS), seen);
        seen.forEach(id -> assertTrue(id.matches("[a-z]+(-[a-z]+)+"), id));
    }

    /** Whoever asks for a finding by its id, or is said in place of it, spells it right. */
    @Test
    void everyIdInTheSourcesIsKnown() throws IOException {
        Pattern id = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");
        Set<String> unknown = new TreeSet<>();
        int seen = 0;
        for (String told : List.of("assessment", "narrative", "study")) {
            try (Stream<Path> sources = Files.list(Path.of("src/main/java/io/github/heatswell", told))) {
                for (Path source : sources.filter(
                                path -> !path.endsWith("SampledPeaks.java")) // its builder names its fields so
                        .toList()) {
                    for (MatchResult found :
                            id.matcher(Files.readString(source)).results().toList()) {
                        seen++;
                        if (!IDS.contains(found.group(1))) {
                            unknown.add(source.getFileName() + ": " + found.group(1));
                        }
                    }
                }
            }
        }
        assertTrue(seen >= IDS.size(), seen + " ids seen");
        assertEquals(Set.of(), unknown);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void isFoundOnceAndSaidInBothSystems(String id, Supplier<List<Finding>> found) {
        List<Finding> all = found.get();
        assertEquals(1, all.stream().filter(finding -> finding.id().equals(id)).count(), () -> ids(all));
        all.forEach(FindingsTest::assertComplete);
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(Finding::severity));
        assertEquals(sorted, all);
        assertEquals(all, found.get(), "the same case gives the same list");
        assertThrows(UnsupportedOperationException.class, all::clear);
    }

    /** A valve may have any name, braces too. */
    @Test
    void aNameIsNoPattern() {
        HotWaterSystem unread = FaultlessHouse.unguarded()
                .tank(FaultlessHouse.unread(10))
                .addReliefValve(FaultlessHouse.guard(10.34, 8.3).name("{}").build())
                .build();
        Finding found = Findings.of(unread).stream()
                .filter(finding -> finding.id().equals("tank-rating-unread"))
                .findFirst()
                .orElseThrow();
        assertTrue(found.sentence().text(UnitSystem.SI).startsWith("'{}' opens at 10.3"), found::toString);
    }

    /** Nobody is told to have a mixing valve fitted who has one. */
    @Test
    void hotterWaterIsAdvisedWithTheMixingValveThereIs() {
        assertTrue(coolAdvice(FaultlessHouse.unmixed(55)).contains("Have a mixing valve fitted first"));
        String mixed = coolAdvice(FaultlessHouse.heater(55));
        assertFalse(mixed.contains("fitted"), mixed);
        assertTrue(mixed.contains("measure at the nearest tap"), mixed);
    }

    private static String coolAdvice(Heater.Builder heater) {
        return Findings.of(FaultlessHouse.house().heater(heater.build()).build()).stream()
                .filter(finding -> finding.id().equals("stored-too-cool"))
                .findFirst()
                .orElseThrow()
                .advice()
                .text(UnitSystem.SI);
    }

    private static void assertComplete(Finding finding) {
        for (UnitSystem units : UnitSystem.values()) {
            List<String> texts = new ArrayList<>();
            texts.add(finding.sentence().text(units));
            texts.add(finding.advice().text(units));
            finding.askAuthority().ifPresent(ask -> texts.add(ask.text(units)));
            for (String text : texts) {
                assertTrue(text.matches("(?s)['A-Z0-9l].*[^. ]\\."), text);
                assertFalse(text.matches("(?s).*(NaN|Infinity|null|\\{|  |-0 ).*"), text);
            }
        }
        assertFalse(finding.authority().source().text().isBlank());
        String advice = finding.advice().text(UnitSystem.SI).toLowerCase(Locale.ROOT);
        if (advice.matches("(?s).*\\b(plug|cap|downsize)\\b.*")) {
            assertTrue(advice.matches("(?s).*never (plug|cap)\\b.*"), advice);
        }
        if (finding.severity() == Severity.HAZARD) {
            assertTrue(
                    advice.startsWith("turn the heater off") || advice.startsWith("stay away from the tank"), advice);
        }
    }

    /** A cause is said once: what only repeats it stays away. */
    @ParameterizedTest(name = "{0} without {1}")
    @MethodSource("repetitions")
    void oneCauseOneFinding(String cause, String repetition) {
        List<Finding> all = Cases.all().get(cause).get();
        assertFalse(all.stream().anyMatch(finding -> finding.id().equals(repetition)), () -> ids(all));
    }

    static Stream<Arguments> repetitions() {
        return Stream.of(
                Arguments.of("vessel-isolated", "vessel-too-small"),
                Arguments.of("vessel-isolated", "expansion-control-missing"),
                Arguments.of("vessel-waterlogged", "precharge-below-static"),
                Arguments.of("bypass-opens-too-late", "expansion-control-missing"),
                Arguments.of("relief-valve-controls-expansion", "expansion-control-missing"),
                Arguments.of("relief-valve-controls-expansion", "peak-above-code-limit"),
                Arguments.of("supply-opens-relief-valve", "vessel-too-small"),
                Arguments.of("supply-opens-relief-valve", "relief-reseats-below-supply"),
                Arguments.of("test-pressure-reached", "working-pressure-exceeded"),
                Arguments.of("relief-set-above-tank", "tp-relief-set-high"));
    }

    private static String ids(List<Finding> findings) {
        return findings.stream().map(Finding::id).collect(Collectors.joining(", "));
    }
}
