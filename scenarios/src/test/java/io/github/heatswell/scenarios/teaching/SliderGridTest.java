package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: what the script of a page is given reads as the text beside it does. */
class SliderGridTest {

    private static final double KILO = 1e3;
    private static final double MILLILITRE = 1e-6;

    @Test
    void everyStepReadsAsItsRunInEitherUnits() {
        int steps = 0;
        for (Lesson lesson : Lessons.all()) {
            if (lesson.slider().isPresent()) {
                LessonSlider slider = lesson.slider().orElseThrow();
                for (String value : slider.refined().values()) {
                    RunResult run = Lessons.moved(slider).get(value);
                    SliderGrid.Step step = SliderGrid.Step.of("", "", run);
                    String place = lesson.id() + " at " + value;
                    assertSame(Measure.gauge(run.peak().value()), Measure.gauge(step.peak() * KILO), place);
                    if (step.relieved() > 0) {
                        assertSame(
                                Measure.volume(run.totals().relieved()),
                                Measure.volume(step.relieved() * MILLILITRE),
                                place);
                    }
                    SliderGrid grid = SliderGrid.of(List.of(step), run);
                    assertSame(
                            Measure.gauge(new RunFigures(run).reliefSet()),
                            Measure.gauge(grid.reliefSet() * KILO),
                            place);
                    steps++;
                }
            }
        }
        assertTrue(steps > 12, steps + " steps");
    }

    private static void assertSame(Measure run, Measure page, String place) {
        for (UnitSystem units : UnitSystem.values()) {
            assertEquals(run.text(units), page.text(units), place);
        }
    }
}
