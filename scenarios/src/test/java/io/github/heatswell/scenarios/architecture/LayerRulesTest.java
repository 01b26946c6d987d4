package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules on sentences see what breaks them. */
class LayerRulesTest {

    @Test
    void whoMakesAStatementIsFound() {
        for (Class<?> maker : List.of(Plain.class, Longer.class, Raw.class)) {
            assertTrue(
                    ScenariosLayersTest.onlyTheNarrativeMakesStatements
                            .evaluate(classes(maker))
                            .hasViolation(),
                    maker::getSimpleName);
        }
        assertFalse(ScenariosLayersTest.onlyTheNarrativeMakesStatements
                .evaluate(classes(Reader.class))
                .hasViolation());
    }

    @Test
    void whoSaysWhatAHazardMeansIsFound() {
        assertTrue(ScenariosLayersTest.onlyTheNarrativeSaysWhatAnEventMeans
                .evaluate(classes(Meaning.class))
                .hasViolation());
    }

    @Test
    void anotherHeadlineIsFound() {
        for (Class<?> teller : List.of(OwnHeadline.class, LessonStory.class)) {
            assertTrue(
                    ScenariosLayersTest.headlinesAndVerdictsAreOfTheNarrative
                            .evaluate(classes(teller))
                            .hasViolation(),
                    teller::getSimpleName);
        }
    }

    private static JavaClasses classes(Class<?> one) {
        return new ClassFileImporter().importClasses(one);
    }

    private static class Plain {
        Statement said = Statement.plain("It drips.");
    }

    private static class Longer {
        Statement said(Statement start) {
            return start.then(" And again.");
        }
    }

    private static class Raw {
        Statement said = new Statement(List.of("It drips."), List.of());
    }

    private static class Reader {
        String said(Statement statement) {
            return statement.text(UnitSystem.SI);
        }
    }

    private static class Meaning {
        String said = Event.Kind.VAPOUR_FORMS.meaning();
    }

    private static class OwnHeadline {}

    private static class LessonStory {}
}
