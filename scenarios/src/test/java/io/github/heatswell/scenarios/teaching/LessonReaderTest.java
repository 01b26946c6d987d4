package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Measure;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: what is no lesson is refused in words, with its place. */
class LessonReaderTest {

    /** A small lesson; TEXT stands wherever words of any kind may stand. */
    static final String GOOD = """
            title: TEXT
            question: TEXT
            cautions: [TEXT]
            cautions-after: [TEXT]
            houses:
              lodge: { label: TEXT, scenario: orchard-lodge }
            others:
              smaller:
                of: lodge
                set: [tank.volume=150 L]
            figures:
              twice: 2 * peak(lodge)
            predict:
              question: TEXT
              options:
                - { say: TEXT, when: '!opened(lodge)', reply: TEXT }
                - { say: It opens. }
                - { say: Perhaps., when: hazard(lodge), reply: TEXT }
            notice:
              - say: TEXT
            why:
              - say: TEXT
            formula: { text: TEXT, source: houses, symbols: { e: TEXT } }
            try: { house: lodge, set: [vessel=none], shows: TEXT }
            ask: { question: TEXT, answer: TEXT }
            sources: [{ text: TEXT, standing: from-memory }]
            expect:
              - { say: It drips., check: opened(lodge) }
            readings:
              - { what: The gauge, answer: 'gaugeAt(lodge, 1 h)' }
            """;

    private static String good() {
        return GOOD.replace("TEXT", "Some words here");
    }

    private static Lesson read(String text) {
        return Course.of(Map.of("a-lesson", text)).lessons().get(0);
    }

    private static void refused(String message, String text) {
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> read(text)).getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "title: Some words here | title: '' | a-lesson:1:8: title: write some words, not nothing",
                "notice: | notce: | a-lesson:1:1: notice is missing",
                "readings: | reedings: | a-lesson:29:1: 'reedings' is no key here; the keys are houses, others, try,"
                        + " figures, ask, title, aim, question, cautions, cautions-after, predict, notice, why, formula, sources,"
                        + " expect, slider, readings; did you mean readings?",
                "orchard-lodge | orchard-lotch | a-lesson:6:46: scenario: no scenario named orchard-lotch is bundled; did you mean orchard-lodge?",
                "[Some words here] | [never-plugg] | a-lesson:3:12: 'never-plugg' is no shared caution; there are look-only,"
                        + " never-plug, gas-valve, overheated, tp-valve; did you mean never-plug?",
                "from-memory | remembered | a-lesson:26:46: standing: 'remembered' is not known here; there are seen,"
                        + " second-hand, from-memory, given",
                "{ e: | { z: | a-lesson:23:65: 'z' is explained but not used in 'Some words here'",
                "of: lodge | of: lodje | a-lesson:9:9: 'lodje' is no house of this lesson; there are lodge; did you mean"
                        + " lodge?",
                "peak(lodge) | peek(lodge) | a-lesson:12:10: twice: 'peek' is no figure known here; did you mean peak?",
                "peak(lodge) | peak(lotch) | a-lesson:12:10: twice: 'lotch' is no house of this lesson known here",
                "2 * peak(lodge) | 2 * peak(lodge | a-lesson:12:10: twice: ')' is missing in '2 * peak(lodge' at the end",
                "2 * peak(lodge) | 2 * peak(lodge) % 3 | a-lesson:12:10: twice: '2 * peak(lodge) % 3' cannot be understood"
                        + " from '% 3' on",
                "2 * peak(lodge) | 2 * | a-lesson:12:10: twice: '2 *' ends too early",
                "gaugeAt(lodge, 1 h) | gaugeAt(lodge) | a-lesson:30:32: answer: ',' is missing in 'gaugeAt(lodge)' before ')'",
                "gaugeAt(lodge, 1 h) | twice | a-lesson:30:32: answer: a reading must be a measure, such as gaugeAt(house,"
                        + " 1 h)",
                "set: [vessel=none] | set: [tank.volum=2 L] | a-lesson:24:27: set: orchard-lodge with tank.volum=2"
                        + " L: tank.volum: is not a known key here; did you mean volume?",
            })
    void aMistakeIsToldWithItsPlace(String right, String wrong, String message) {
        assertTrue(good().contains(right), right);
        refused(message, good().replace(right, wrong));
    }

    @Test
    void aSentenceSaysWhatItsNumbersMeasure() {
        refused(
                "a-lesson:20:10: say: say what {twice} measures, as in {share: ...}, or with how many decimals it is written,"
                        + " as in {1: ...}",
                noticing("It is {twice}."));
        refused("a-lesson:20:10: say: a brace has no counterpart in 'It is }.'", noticing("It is }."));
        String kinds = Stream.of(Measure.Kind.values())
                .map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .collect(Collectors.joining(", "));
        refused(
                "a-lesson:20:10: say: 'presure' is not known here; there are " + kinds,
                noticing("It is {presure: twice}."));
        LessonRun run = LessonRun.of(read(
                noticing("From {peak(lodge)}, {gauge-pressure: twice / 2}, by {peak(lodge) - 2 bar}, {2: -1 / 3}.")));
        assertEquals(
                "From 7 bar, 7 bar, by 5 bar, -0.33.",
                run.notice().get(0).text(io.github.heatswell.units.UnitSystem.SI));
    }

    private static String noticing(String sentence) {
        return good().replace("notice:\n  - say: Some words here", "notice:\n  - say: '" + sentence + "'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 + 2 * 3 - 4 / 2 | 5",
                "(1 + 2) * 3 | 9",
                "-2 - -3 | 1",
                "2 < 3 && !(3 < 2) | 1",
                "2 >= 3 | 0",
                "2 <= 2 && 2 == 2 && 3 > 2 | 1",
                "1 h / 1 min | 60",
                "20 degC - 10 degC | 10",
                "abs(2 - 5) | 3",
                "near(1.01, 1, 0.02) | 1",
                "near(1.03, 1, 0.02) | 0",
            })
    void expressionsAreWorkedOut(String expression, double value) {
        assertEquals(value, Lessons.value(LessonRun.of(read(good())), expression), 1e-12); // rounding
    }

    /** A run that shows two of the options, or none, is a mistake of the lesson. */
    @Test
    void aRunShowsOneOption() {
        assertEquals(1, LessonRun.of(read(good())).outcome());
        LessonRun two = LessonRun.of(read(
                good().replace("when: '!opened(lodge)'", "when: opened(lodge)").replace("hazard(", "opened(")));
        assertEquals(
                "the run of lesson 'a-lesson' shows 2 of its options",
                assertThrows(IllegalStateException.class, two::outcome).getMessage());
    }

    @Test
    void idsAndCountsAreChecked() {
        assertEquals(
                "'A Lesson' is no id of a lesson; write such as 'closing-the-system'",
                assertThrows(IllegalArgumentException.class, () -> Course.of(Map.of("A Lesson", good())))
                        .getMessage());
        refused(
                "a-lesson:16:5: options: must be 3 to 4, not 2",
                good().replace("    - { say: Perhaps., when: hazard(lodge), reply: Some words here }\n", ""));
        refused("a-lesson:1:1: houses: must be 1 to 4, not 0", good().replaceFirst("(?s)  lodge: .*?\n", "  {}\n"));
        refused(
                "a-lesson:26:10: sources: must be at least 1, not 0",
                good().replaceFirst("sources: .*", "sources: []"));
        assertEquals(
                List.of("Some words here"),
                Course.of(Map.of("a-lesson", good())).titles());
    }
}
