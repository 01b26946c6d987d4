package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.generated.RandomScenarios;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Regression: no fault and no hazard rests on a value that nobody has read without saying so. More files with
 * {@code -Dtest.jvm.options=-Ddoubtful.files=2000}.
 */
class DoubtsTest {

    private static final int FILES = Integer.getInteger("doubtful.files", 20);
    private static final double COLUMN = 0.003;

    private static Scenario house(String... changes) {
        List<Change> all = new ArrayList<>();
        for (String change : changes) {
            all.add(Change.of(change));
        }
        return Catalogue.read("orchard-lodge-vessel").with(all);
    }

    private static Finding finding(Scenario scenario, String id) {
        return Findings.of(scenario.system(), scenario.doubts()).stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aComparisonOfAnUnknownValueIsACautionThatSaysSo() {
        Finding high = finding(house("supply.pressure=5 bar to 6.5 bar"), "static-pressure-high");
        assertEquals(Severity.CAUTION, high.severity());
        String said = high.sentence().text(UnitSystem.SI);
        assertTrue(
                said.contains("Not confirmed on site: the supply pressure, taken as 5.75 bar (5 bar to 6.5 bar)."),
                said);
        assertTrue(high.advice().text(UnitSystem.SI).startsWith("Read a gauge on a cold tap"), said);
    }

    @Test
    void whatHoldsAtBothEndsIsAFault() {
        Finding high = finding(house("supply.pressure=6 bar to 6.5 bar"), "static-pressure-high");
        assertEquals(Severity.FAULT, high.severity());
        assertTrue(high.sentence().text(UnitSystem.SI).contains("taken as 6.25 bar (6 bar to 6.5 bar)"));
    }

    @Test
    void aReliefValveThatNobodyHasReadIsNoHazard() {
        String[] unread = {
            "tank.working-pressure=7 bar", "relief[0].opens=6 bar to 10 bar", "relief[0].full-lift=11 bar"
        };
        Scenario house = house(unread);
        assertEquals(Severity.CAUTION, finding(house, "relief-set-above-tank").severity());
        assertEquals(List.of(), AlarmNote.of(house, CommandResult.onScreen(UnitSystem.SI)));
        Scenario read = house("tank.working-pressure=7 bar", "relief[0].opens=8 bar", "relief[0].full-lift=11 bar");
        assertEquals(Severity.HAZARD, finding(read, "relief-set-above-tank").severity());
        assertFalse(AlarmNote.of(read, CommandResult.onScreen(UnitSystem.SI)).isEmpty());
    }

    @Test
    void aReadingWithItsAccuracyIsKnown() {
        Finding high = finding(house("supply.pressure=5.75 bar +- 0.1 bar"), "static-pressure-high");
        assertEquals(Severity.FAULT, high.severity());
        assertFalse(high.sentence().text(UnitSystem.SI).contains("Not confirmed on site"));
    }

    /** A choice that was made because nobody has looked is no fault, and headline, page and finding say so. */
    @Test
    void aChoiceThatNobodyHasLookedAtIsADoubt() {
        Scenario lodge = Catalogue.read("ridge-house").with(List.of(Change.of("not-known=supply.arrangement, vessel")));
        RunSummary run = lodge.simulation().run().summary();
        Finding opened = Findings.of(run, lodge.doubts()).stream()
                .filter(found -> found.id().equals("relief-valve-controls-expansion"))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.CAUTION, opened.severity());
        String said = opened.sentence().text(UnitSystem.SI);
        assertTrue(said.contains("what sits in the cold feed, taken as a check valve"), said);
        assertTrue(said.contains("the expansion vessel, taken as missing"), said);
        assertTrue(opened.advice().text(UnitSystem.SI).contains("Look for a vessel on the cold pipe"));
        String headline = Narrative.of(run, lodge.doubts()).headline().text(UnitSystem.SI);
        assertTrue(
                headline.endsWith(
                        ", if what sits in the cold feed is a check valve and the expansion vessel is missing"),
                headline);
        Scenario guessed =
                Catalogue.read("ridge-house").with(List.of(Change.of("origins.guessed=supply.arrangement, vessel")));
        assertEquals(
                lodge.doubts().caveat().text(UnitSystem.SI),
                guessed.doubts().caveat().text(UnitSystem.SI),
                "a guess is no look");
        Scenario known = Catalogue.read("ridge-house");
        assertEquals(Statement.plain(""), known.doubts().caveat());
        String compared = Narrative.comparing(
                        List.of(new NamedSummary("a", run, lodge.doubts()), new NamedSummary("b", run, known.doubts())))
                .headline()
                .text(UnitSystem.SI);
        assertTrue(compared.endsWith(", if the unknown values are as assumed"), compared);
        assertTrue(house("supply.pressure=3 bar to 5 bar")
                .doubts()
                .caveat()
                .text(UnitSystem.SI)
                .startsWith(", if the supply pressure is 4 bar"));
    }

    @Test
    void everyReportSaysWhatItTakesForARange() {
        Scenario house = house("supply.pressure=3 bar to 5 bar");
        String run = Results.answer(house, house.simulation().run(), UnitSystem.SI)
                .report()
                .get()
                .said();
        assertTrue(
                run.replaceAll("\\s+", " ")
                        .contains("Not known: the supply pressure, taken as 4 bar (3 bar to 5 bar)."),
                run);
        assertTrue(Document.withDoubts(house, QuantityFormat.ascii(UnitSystem.SI), List.of())
                .get(0)
                .contains("the supply pressure"));
    }

    /**
     * Gives one value after another as a range, or takes one that is assumed, and moves it to either end. A grave finding that says
     * nothing of it must be the same there, word for word, and number for number but for the weight of a column of water that is
     * colder or warmer, a few thousandths of a pressure.
     */
    @Test
    void noFaultOfAnyFileRestsOnAnUnreadValueInSilence(TestReporter reporter) {
        List<String> silent = new ArrayList<>();
        int looked = 0;
        for (int seed = 0; seed < FILES; seed++) {
            Scenario scenario = RandomScenarios.of(seed).scenario();
            for (UnreadValue unread : UnreadValue.of(scenario)) {
                for (Finding finding : Findings.of(
                        unread.scenario().system(), unread.scenario().doubts())) {
                    String said = finding.sentence().text(UnitSystem.SI);
                    if (finding.severity().compareTo(Severity.FAULT) > 0 || said.contains("Not confirmed on site")) {
                        continue;
                    }
                    looked++;
                    boolean moved = unread.ends().stream()
                            .map(end -> Findings.of(end.system()))
                            .anyMatch(there -> there.stream()
                                    .noneMatch(other -> other.severity() == finding.severity()
                                            && saysTheSame(other.sentence().text(UnitSystem.SI), said)));
                    if (moved && !finding.id().equals("tank-rating-unread")) {
                        silent.add(seed + ", " + unread.field() + ": " + finding.id() + ": " + said);
                    }
                }
            }
        }
        reporter.publishEntry(FILES + " files, " + looked + " grave findings beside a value nobody has read");
        assertTrue(looked > FILES, looked + " findings are too few to show anything");
        assertEquals("", String.join("\n", silent));
    }

    private static boolean saysTheSame(String one, String other) {
        Pattern number = Pattern.compile("\\d+(?:\\.\\d+)?");
        List<Double> there = number.matcher(other)
                .results()
                .map(found -> Double.valueOf(found.group()))
                .toList();
        List<Double> here = number.matcher(one)
                .results()
                .map(found -> Double.valueOf(found.group()))
                .toList();
        return number.matcher(one).replaceAll("#").equals(number.matcher(other).replaceAll("#"))
                && IntStream.range(0, here.size())
                        .allMatch(i -> Math.abs(here.get(i) - there.get(i)) <= COLUMN * Math.abs(there.get(i)));
    }
}
