package io.github.heatswell.scenarios.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.lesson.Expectation;
import io.github.heatswell.scenarios.lesson.LessonRun;
import org.junit.jupiter.api.Test;

class OwnLessonTest {

    @Test
    void theLessonShowsWhatItSays() {
        LessonRun run = LessonRun.of(OwnLesson.lesson());
        for (Expectation.Checked checked : run.checked()) {
            assertTrue(checked.held(), checked.description());
        }
        assertEquals(1, run.outcome());
        assertTrue(run.lesson()
                .tryIt()
                .claim()
                .test(run.lesson().tryIt().changed(run.lesson()).simulation().run()));
    }
}
