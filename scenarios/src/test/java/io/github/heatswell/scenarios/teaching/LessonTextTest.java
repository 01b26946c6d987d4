package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The lessons are written for people who do not know the trade. */
class LessonTextTest {

    private static final int LONGEST = 34;
    private static final double AVERAGE = 16;
    private static final Pattern MEASURE = Pattern.compile("\\d\\s?(bar|L|litres?|°C|degC|°F|psi|K|kW|gal|m3)\\b");

    /** Words of the trade, and the words that say what they mean, in the lesson where they first appear. */
    private static final Map<String, String> MEANINGS = Map.ofEntries(
            Map.entry("relief valve", "The relief valve is a safety valve that opens"),
            Map.entry("check valve", "A check valve lets water in, but not back"),
            Map.entry("backflow preventer", "A backflow preventer is"),
            Map.entry("set pressure", "called its set pressure"),
            Map.entry("reseat pressure", "its reseat pressure"),
            Map.entry("blowdown", "called blowdown"),
            Map.entry("lock-up", "called lock-up"),
            Map.entry("worn seat", "A worn seat, the ring the valve closes on"),
            Map.entry("expansion vessel", "An expansion vessel is"),
            Map.entry("diaphragm", "a sheet of rubber across it, the diaphragm"),
            Map.entry("precharge", "The precharge is"),
            Map.entry("reducing valve", "A reducing valve lets"),
            Map.entry("bypass", "A bypass is"),
            Map.entry("rigid", "Rigid means"),
            Map.entry("layered", "The tank is then layered"),
            Map.entry("thermostat", "the thermostat, which switches"),
            Map.entry("t&p", "A T&P valve is"),
            Map.entry("cut-out", "A cut-out is"));

    private static final List<String> UNEXPLAINED = List.of(
            "isothermal",
            "adiabatic",
            "isochore",
            "compliance",
            "expansivity",
            "hydrostatic",
            "hysteresis",
            "modulating",
            "setpoint",
            "dhw",
            "prv",
            "bladder",
            "waterlogged",
            "absolute pressure",
            "gauge pressure");

    static List<Lesson> lessons() {
        return Lessons.all();
    }

    private static LessonRun run(Lesson lesson) {
        return Lessons.run(lesson);
    }

    private static List<String> texts(Lesson lesson) {
        List<String> texts =
                new ArrayList<>(List.of(lesson.question(), lesson.prediction().question()));
        lesson.claims()
                .forEach(claim ->
                        texts.add(String.join("#", claim.words().in(run(lesson)).parts())));
        texts.add(String.join("#", lesson.tryIt().shows().words().parts()));
        texts.add(lesson.checkQuestion());
        texts.addAll(lesson.cautions());
        texts.addAll(lesson.cautionsAfter());
        return texts;
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void sentencesAreShort(Lesson lesson) {
        int words = 0;
        int sentences = 0;
        for (String text : texts(lesson)) {
            assertTrue(text.matches("(?s).*[.?]"), "no end: " + text);
            for (String sentence : text.split("(?<=[.?:])\\s+")) {
                int length = sentence.split("\\s+").length;
                assertTrue(length <= LONGEST, sentence);
                words += length;
                sentences++;
            }
        }
        assertTrue(words < AVERAGE * sentences, lesson.id() + ": " + (double) words / sentences + " words a sentence");
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void measuresAreLeftToTheRun(Lesson lesson) {
        texts(lesson).forEach(text -> assertFalse(MEASURE.matcher(text).find(), text));
    }

    @Test
    void wordsOfTheTradeAreExplainedWhereTheyFirstAppear() {
        Set<String> met = new HashSet<>();
        for (Lesson lesson : lessons()) {
            String text = String.join(" ", texts(lesson));
            String lower = text.toLowerCase(Locale.ROOT);
            MEANINGS.forEach((word, meaning) -> {
                if (lower.contains(word) && met.add(word)) {
                    assertTrue(text.contains(meaning), lesson.id() + " uses '" + word + "' without its meaning");
                }
            });
            UNEXPLAINED.forEach(word -> assertFalse(lower.contains(word), lesson.id() + " says " + word));
        }
        assertTrue(met.containsAll(MEANINGS.keySet()), () -> "never used: " + MEANINGS.keySet() + " but " + met);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void nobodyIsToldToStopAReliefValve(Lesson lesson) {
        assertFalse(lesson.cautions().isEmpty(), lesson.id());
        for (String text : texts(lesson)) {
            String lower = text.toLowerCase(Locale.ROOT);
            if (lower.matches(".*\\b(plug|cap|downsize|block)\\b.*")) {
                assertTrue(lower.startsWith("never"), text);
            }
        }
    }
}
