package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.report.Document.Section;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: how a document reads on a screen. */
class TextPageTest {

    private static String shown(List<AlarmNote> alarms, Section... sections) {
        return TextPage.of(
                Document.of("A house", "", alarms, List.of(sections), CommandResult.onScreen(UnitSystem.SI)));
    }

    private static Block paragraph(String text) {
        return new Block.Paragraph(text, Block.Tone.PLAIN);
    }

    @Test
    void whatCanHurtStandsFirstAndTheAnswerBelowTheTitle() {
        assertEquals(
                """
                HAZARD: It may burst.

                A house
                  Why does it drip?

                Because it is closed.

                Only here.

                Findings:
                  Fault: One. Mend it.
                  Note: Two. Leave it.
                """,
                shown(
                        List.of(new AlarmNote("HAZARD", "It may burst.")),
                        Document.answer("Why does it drip?", "Because it is closed.", List.of()),
                        new Section(
                                "Findings",
                                List.of(
                                        paragraph("Not here.").onPage(),
                                        paragraph("Here at length.").orOnScreen(paragraph("Only here.")),
                                        new Block.Subheading("Findings").onScreen(),
                                        new Block.FoundRule("Fault:", "One.", "Mend it.", List.of()),
                                        new Block.FoundRule("Note:", "Two.", "Leave it.", List.of()))),
                        new Section("For the page", List.of(paragraph("Not here."))).onPage(),
                        FitterPaper.general().section(QuantityFormat.printed(UnitSystem.SI))));
    }

    @Test
    void ofManyAlarmsTheFirstAreToldAndNoneIsLeftUnnamed() {
        List<AlarmNote> alarms = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            alarms.add(new AlarmNote("HAZARD in run " + i, "Told of " + i + "."));
        }
        alarms.add(new AlarmNote(Alarm.Level.NOT_RELIABLE.word(), "The balance is open."));
        String text = shown(alarms).replaceAll("\\s+", " ");
        for (int i = 0; i < 20; i++) {
            assertTrue(text.contains("HAZARD in run " + i), text);
        }
        assertTrue(text.contains("Told of 11.") && !text.contains("Told of 12."), text);
        assertTrue(text.contains("The balance is open."), "what makes an answer worthless is always told: " + text);
    }

    @Test
    void nothingMovesTheCursor() {
        for (String hostile : Samples.HOSTILE) {
            String text = TextPage.of(Samples.saying(hostile));
            assertTrue(text.codePoints().allMatch(c -> c == '\n' || !Character.isISOControl(c)), text);
            assertFalse(text.contains("\u202e") || text.contains("\u2066"), text);
        }
    }

    @Test
    void numbersStandToTheRightAndWordsAreBroken() {
        Grid grid = new Grid(
                "Runs",
                List.of("Run", "Peak", "Room below the relief set", "Why"),
                List.of(
                        List.of(
                                "a run with a name that goes on and on",
                                "7 bar",
                                "none",
                                "a reason, ".repeat(5) + "end"),
                        List.of("b", "10.55 bar", "-0.25 bar", "short")));
        assertEquals("""
                                                               Room
                                                          below the
                                                             relief
                  Run                               Peak        set  Why
                  a run with a name that goes      7 bar       none  a reason, a reason, a
                  on and on                                          reason, a reason, a
                                                                     reason, end
                  b                            10.55 bar  -0.25 bar  short
                """, TextTable.of(grid, "  "));
    }

    @Test
    void aPlainTableHasNoHeads() {
        Grid grid = new Grid("", List.of("What", "Value"), List.of(List.of("Peak", "7 bar")), true);
        assertEquals("  Peak  7 bar\n", TextTable.of(grid, "  "));
    }
}
