package io.github.heatswell.scenarios.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no lesson is refused in words. */
class BadLessonTest {

    private static final Prediction.Option THIS = Prediction.Option.right("This.");
    private static final Prediction.Option THAT = Prediction.Option.wrong("That.", Claim.of("No."));
    private static final Prediction.Option OTHER = Prediction.Option.wrong("Other.", Claim.of("Not so."));

    private static LessonBuilder good(String id) {
        return Lesson.builder(id, "A lesson")
                .question("What happens?")
                .prediction("Which?", run -> 0, THIS, THAT, OTHER)
                .compare(LessonCase.bundled("the lodge", "orchard-lodge"))
                .notice(Claim.of("It is so."))
                .why(Claim.of("So it is."))
                .formula(Formula.of("a = b", Sources.HOUSES, "a", "one", "b", "other"))
                .tryIt(TryIt.of(0, "It runs.", run -> true, "tank.volume=150 L"))
                .check("Why?", Claim.of("Because."))
                .sources(Sources.HOUSES)
                .expect("It runs.", run -> true);
    }

    static Stream<Arguments> bad() {
        return Stream.of(
                bad(one -> one.question(" "), "the question is missing; write some words"),
                bad(one -> one.why(), "the paragraphs of why must be at least 1, not 0"),
                bad(one -> one.compare(), "the cases must be 1 to 4, not 0"),
                bad(one -> one.check("", Claim.of("Because.")), "the check question is missing; write some words"),
                bad(one -> one.notice(), "the sentences to notice must be at least 1, not 0"),
                bad(
                        one -> one.slider(new LessonSlider(2, "Size", List.of("tank.volume"), List.of("1", "2"), "L")),
                        "the slider moves case 2, but there are only 1, counted from 0"));
    }

    private static Arguments bad(UnaryOperator<LessonBuilder> spoil, String message) {
        return Arguments.of(spoil, message);
    }

    @ParameterizedTest
    @MethodSource("bad")
    void aBadLessonIsRefused(UnaryOperator<LessonBuilder> spoil, String message) {
        LessonBuilder spoilt = spoil.apply(good("a-lesson"));
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, spoilt::build).getMessage());
    }

    @Test
    void partsAreRefusedWhereTheyEnter() {
        refused(
                "'A Lesson' is no id of a lesson; write such as 'closing-the-system'",
                () -> good("A Lesson").build());
        refused(
                "the options of a prediction must be 3 to 4, not 2",
                () -> new Prediction("Which?", List.of(THIS, THAT), run -> 0));
        refused("a sentence is missing; write some words", () -> Claim.of(" "));
        refused("'c' is explained but does not stand in 'a = b'", () -> Formula.of("a = b", Sources.HOUSES, "c", "x"));
        refused("every letter needs a meaning; the last one has none", () -> Formula.of("a", Sources.HOUSES, "a"));
        refused(
                "what to try changes case 1, but there are only 1, counted from 0",
                () -> good("a-lesson")
                        .tryIt(TryIt.of(1, "It runs.", run -> true, "tank.volume=150 L"))
                        .build());
        refused("the changes to try must be at least 1, not 0", () -> TryIt.of(0, "x", run -> true));
        refused(
                "a-lesson has 1 cases and needs as many results, not 0",
                () -> new LessonRun(good("a-lesson").build(), List.of()));
    }

    private static void refused(String message, org.junit.jupiter.api.function.Executable entering) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, entering).getMessage());
    }

    @Test
    void anOptionThatIsNotThereIsAMistakeOfTheLesson() {
        Lesson lesson = good("a-lesson")
                .prediction("Which?", run -> 3, THIS, THAT, OTHER)
                .build();
        assertThrows(IllegalStateException.class, () -> LessonRun.of(lesson).outcome());
    }

    @Test
    void aScenarioMadeByAProgramHasNoCommand() {
        Scenario made = Scenario.of(
                "orchard-lodge",
                "Made",
                Catalogue.read("orchard-lodge").system(),
                Duration.ofHours(1),
                Duration.ofMinutes(1));
        assertTrue(new LessonCase("made", made, Channel.GAUGE_READING).command().isEmpty());
    }
}
