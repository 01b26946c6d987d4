package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Regression: what the code says where a house stands. */
class RulesCommandTest {

    @TempDir
    private Path folder;

    private Outcome rules(String house, String place) {
        return Outcome.execute(
                "rules", house, "--place", place, "--out", folder.resolve(place).toString());
    }

    @Test
    void theAnswerNamesWhatTheHouseDoesNotKeep() {
        Outcome uk = rules("orchard-lodge", "uk");
        assertEquals(0, uk.status(), uk.err());
        String said = uk.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("No cut-out is described either."), said);
        assertTrue(
                said.contains(
                        "This house does not meet the rules here: expansion control, guard against boiling, storage temperature."),
                said);
        assertTrue(said.contains("No rule was read on these; ask the local authority: static pressure;"), said);
        String en = rules("orchard-lodge", "en").out().replaceAll("\\s+", " ");
        assertTrue(en.contains("Nothing in the description breaks a rule that was read. The place: "), en);
    }

    /** What only a run or a look at the house can settle is not passed off as kept. */
    @Test
    void theVerdictSaysWhatItLeavesOpen() throws IOException {
        Path house = folder.resolve("walnut.yaml");
        Files.writeString(house, """
                site: { place: us-ipc }
                supply: { arrangement: reducing-valve, pressure: 90 psi, reducing-valve: { set: 58 psi }, water: 58 degF }
                tank: { volume: 50 gal, material: steel, working-pressure: 150 psi }
                heater: { energy: gas, input: 40000 Btu/h, set-point: 125 degF }
                relief:
                  - { opens: 150 psi, opens-at: 210 degF }
                vessel: { volume: 2 gal, precharge: 40 psi }
                run: { duration: 4 h }
                """);
        String said = rules(house.toString(), "us-ipc").out().replaceAll("\\s+", " ");
        assertTrue(
                said.contains(
                        "Not judged here, since only a run shows it: pressure while the water heats, expansion control, relief valve for expansion. 7 rules are"
                                + " left for you to check."),
                said);
    }

    private String underpumped() throws IOException {
        Path house = folder.resolve("elm.yaml");
        Files.writeString(house, """
                supply: { arrangement: reducing-valve, pressure: 5.8 bar, reducing-valve: { set: 3 bar }, water: 7 degC }
                tank: { volume: 210 L, material: stainless-steel, working-pressure: 10 bar }
                heater: { energy: electric, input: 3 kW, set-point: 62 degC, cut-out: 85 degC }
                relief:
                  - { name: expansion valve, kind: expansion-valve, opens: 6 bar }
                  - { name: T&P valve, opens: 10 bar, opens-at: 90 degC }
                vessel: { volume: 12 L, precharge: 0.5 bar }
                run: { duration: 4 h }
                """);
        return house.toString();
    }

    /** Regression: a vessel described far underpumped was a fault in some places, and in others nothing was wrong with the house. */
    @ParameterizedTest
    @CsvSource({"us-ipc", "us-upc", "uk", "en", "au-nz"})
    void aVesselThatIsDescribedWrongIsTheSameFaultEverywhere(String place) throws IOException {
        String said = rules(underpumped(), place).out().replaceAll("\\s+", " ");
        assertTrue(said.matches("(?s).* Fault: The (vessel|expansion tank) is charged to .*"), said);
        assertFalse(said.contains("Nothing in the description breaks"), said);
        if (place.equals("uk")) {
            assertTrue(said.contains("the vessel described has a fault: see the findings."), said);
            assertTrue(
                    said.contains(
                            "(2015 with 2016 changes), quoted in an encyclopaedia of building). This house: run it to see."),
                    said);
        }
    }

    /** Regression: rows on small heaters and of older standards were said to apply only in a place named, where they named none. */
    @ParameterizedTest
    @CsvSource({
        "uk, 'advice of 2013 lets a heater', 'for you to check'",
        "en, '80 % in DIN 1988-2, since replaced', 'an older standard'",
        "us-upc, 'in Signal Hill, California', 'applies only in the place named'"
    })
    void aRowThatDoesNotApplySaysTrulyWhy(String place, String row, String why) throws IOException {
        String said = rules(underpumped(), place).out().replaceAll("\\s+", " ");
        assertTrue(said.matches("(?s).*: " + row + "[^:]*(: [^:]*)?This house: " + why + "\\..*"), said);
    }

    /** A state is a place on the command line too, and its code only taken. */
    @ParameterizedTest
    @CsvSource({"MO, us-ipc, true", "Missouri, us-ipc, true", "'Portland, OR', us-upc, true", "us-upc, us-upc, false"})
    void aStateIsAPlaceWhoseCodeIsAssumed(String said, String place, boolean assumed) {
        Outcome outcome = Outcome.execute(
                "rules",
                "orchard-lodge",
                "--place",
                said,
                "--out",
                folder.resolve(place).toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(outcome.out().endsWith("--place " + place + "\n"), outcome.out());
        assertEquals(
                assumed,
                outcome.out()
                        .replaceAll("\\s+", " ")
                        .contains(
                                "The code here is assumed from the state or country named: ask the local building department which code applies."),
                outcome.out());
        assertEquals(
                assumed,
                outcome.err().startsWith("--place: " + said + " is taken as " + place + ". Assumed, not looked up"),
                outcome.err());
    }

    @Test
    void aPlaceThatNobodyNamedIsAskedFor() {
        String said = rules("orchard-lodge", "not-known").out().replaceAll("\\s+", " ");
        assertTrue(said.contains("No place was given"), said);
        assertTrue(said.contains("static pressure, en: a reducing valve above 5 bar (500 kPa)"), said);
        assertTrue(said.contains("Ask the local authority which code applies"), said);
    }

    @Test
    void aHazardStandsFirst() {
        Outcome hazard = rules("kiln-house-blocked", "en");
        assertTrue(hazard.out().startsWith("HAZARD"), hazard.out());
        Outcome silent = Outcome.execute(
                "rules",
                "mill-cottage",
                "--place",
                "en",
                "--set",
                "heater.thermostat=stuck",
                "--out",
                folder.toString());
        String said = silent.out().replaceAll("\\s+", " ");
        assertTrue(
                said.contains("Deal with the hazard first; no rule that was read covers it. The place: "),
                silent.err() + said);
        assertFalse(said.contains("Nothing described is against a rule"), said);
        assertEquals(ExitStatus.HAZARD.code(), hazard.status());
    }

    /** No row from memory, or of something looked for and not found, reaches the page, and of who quotes a code no address. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void nothingUnreadReachesThePage(Place place) throws IOException {
        rules("orchard-lodge", place.key());
        String page = Files.readString(folder.resolve(place.key()).resolve("report.html"));
        for (PlaceRule rule : Place.NOT_KNOWN.rules()) {
            if (!rule.isRead()) {
                assertFalse(page.contains(rule.words()), rule.words());
            }
        }
        assertFalse(page.contains("from memory"), "page rests on memory");
        for (PlaceRule rule : Place.NOT_KNOWN.rules()) {
            boolean read = rule.source()
                    .filter(source -> source.standing() == Citation.Standing.SEEN)
                    .isPresent();
            assertTrue(read || rule.seenAt().isEmpty() || !page.contains(rule.seenAt()), "a portal: " + rule.seenAt());
        }
    }

    /** Letter paper in the US and A4 elsewhere; where the place is not known, the printer decides. */
    @ParameterizedTest
    @CsvSource({"us-upc, letter", "uk, A4", "not-known, "})
    void thePageIsPrintedOnThePaperOfThePlace(String place, String paper) throws IOException {
        rules("orchard-lodge", place);
        String page = Files.readString(folder.resolve(place).resolve("report.html"));
        assertEquals(paper != null, page.contains("@page { size:"));
        assertTrue(paper == null || page.contains("@page { size: " + paper + "; }"), paper);
    }
}
