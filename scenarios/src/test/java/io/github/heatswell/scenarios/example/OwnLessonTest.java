package io.github.heatswell.scenarios.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.teaching.Course;
import io.github.heatswell.units.UnitSystem;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Regression: a teacher's own lesson is one file. */
class OwnLessonTest {

    @Test
    void aLessonOfOnesOwnBecomesPages(@TempDir Path folder) throws Exception {
        String text;
        try (InputStream in = OwnLessonTest.class.getResourceAsStream("the-dripping-tap.yaml")) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Course course = Course.of(Map.of("the-dripping-tap", text));
        assertEquals(List.of("What a dripping tap hides"), course.titles());
        List<ResultFile> pages = course.pages(new Balances.Count(), UnitSystem.SI);
        ResultFolder.at(folder).write(pages);
        String page = Files.readString(folder.resolve("the-dripping-tap.html"));
        assertTrue(page.contains("The run shows: <strong>No.</strong>"));
    }
}
