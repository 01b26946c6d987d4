package io.github.heatswell.scenarios.lessonsite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.finding.Measure;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonSlider;
import io.github.heatswell.scenarios.lesson.Lessons;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.report.Browser;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The site in a browser, from files. Skipped where there is no browser, unless the system property
 * {@code browser.required} is true.
 */
class LessonSiteBrowserTest {

    /** A phone, and A4 at 96 dots an inch (px). */
    private static final int[] WIDTHS = {360, 794};

    @TempDir
    private Path folder;

    private Path site;
    private Browser browser;

    @BeforeEach
    void write() throws IOException {
        Optional<Browser> found = Browser.find(folder);
        assertTrue(
                found.isPresent() || !Boolean.getBoolean("browser.required"),
                "there must be a browser: install chromium or set HEATSWELL_BROWSER");
        assumeTrue(found.isPresent(), "there is no browser on this machine");
        browser = found.orElseThrow();
        site = folder.resolve("site");
        ResultFolder.at(site).write(LessonSite.files(Lessons.all(), UnitSystem.SI));
    }

    @Test
    void everyPageFitsAPhoneAndPaperAndComplainsOfNothing() throws Exception {
        List<String> pages;
        try (Stream<Path> files = Files.list(site)) {
            pages = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".html"))
                    .sorted()
                    .toList();
        }
        StringBuilder frames = new StringBuilder();
        for (String page : pages) {
            for (int width : WIDTHS) {
                frames.append("<iframe src=\"").append(page).append("\" style=\"border:0;height:800px;width:");
                frames.append(width).append("px\"></iframe>\n");
            }
        }
        Path wrapper = site.resolve("measure.html");
        Files.writeString(
                wrapper,
                own("/io/github/heatswell/scenarios/report/measure.html").replace("FRAMES", frames));
        Browser.Outcome outcome = browser.load(wrapper);
        assertFalse(outcome.log().contains("CONSOLE"), outcome.log());
        assertTrue(outcome.page().contains("measured " + pages.size() * WIDTHS.length + " pages"), outcome.page());
        List<String> wrong = Pattern.compile("<li>(.*?)</li>", Pattern.DOTALL)
                .matcher(outcome.page())
                .results()
                .map((MatchResult result) -> result.group(1))
                // Its own style sheet and script are all a page may ask for.
                .filter(line -> !line.matches(".*asks for file:.*/site\\.(css|js)"))
                // A worksheet is there to be filled in.
                .filter(line -> !line.matches("worksheet-.*: there is hardly any text"))
                .toList();
        assertEquals(List.of(), wrong);
    }

    @Test
    void everySliderShowsTheComputedRuns() throws Exception {
        int sliders = 0;
        for (Lesson lesson : Lessons.all()) {
            if (lesson.slider().isPresent()) {
                sliders++;
                assertMoves(lesson, lesson.slider().orElseThrow());
            }
        }
        assertTrue(sliders >= 3);
    }

    private void assertMoves(Lesson lesson, LessonSlider slider) throws Exception {
        Path wrapper = site.resolve("move.html");
        Files.writeString(
                wrapper,
                own("/io/github/heatswell/scenarios/lessonsite/move.html").replace("PAGE", lesson.id() + ".html"));
        Browser.Outcome outcome = browser.load(wrapper);
        assertFalse(outcome.log().contains("CONSOLE"), outcome.log());
        List<String[]> lines = moved(outcome.page());
        assertEquals(List.of("focused", "true", "range", slider.label()), List.of(lines.get(0)));
        List<String[]> steps = lines.subList(1, lines.size() - 2);
        assertTrue(steps.size() > slider.values().size());
        for (String value : slider.values()) {
            assertShown(lesson, slider, value, steps);
        }
        assertEquals("us", lines.get(lines.size() - 2)[1]);
        assertTrue(lines.get(lines.size() - 2)[2].contains("psi"), lines.get(lines.size() - 2)[2]);
        assertTrue(lines.get(lines.size() - 1)[1].startsWith("us-only"), lines.get(lines.size() - 1)[1]);
    }

    /** The curve on the page is that of a run made here, to a whole kilopascal, which is less than a tenth of a point of the
     * picture. */
    private void assertShown(Lesson lesson, LessonSlider slider, String value, List<String[]> steps)
            throws IOException {
        RunResult run = lesson.cases()
                .get(slider.caseIndex())
                .scenario()
                .with(List.of(new Change(slider.field(), value + " " + slider.unit())))
                .simulation()
                .run();
        Measure peak = new Measure(
                Measure.Kind.GAUGE_PRESSURE,
                run.gauge(run.extremes().highestPressure().value()));
        List<String[]> shown = steps.stream()
                .filter(step -> step[2].startsWith("Computed run: " + value + " " + slider.unit() + "."))
                .toList();
        assertEquals(1, shown.size(), value);
        assertTrue(shown.get(0)[2].contains("The peak is " + peak.text(UnitSystem.SI)), shown.get(0)[2]);
        assertEquals(shown.get(0)[2], shown.get(0)[3]);
        List<Double> heights = new ArrayList<>();
        for (String point : shown.get(0)[1].split(" ")) {
            heights.add(Double.parseDouble(point.substring(point.indexOf(',') + 1)));
        }
        int stride = Math.max(1, (run.trace().count() - 1 + 199) / 200);
        double first = run.trace().value(Channel.GAUGE_READING, 0);
        int index = heights.size() / 3;
        double later = run.trace().value(Channel.GAUGE_READING, index * stride);
        double scale = scale(lesson);
        assertEquals((first - later) * scale, heights.get(index) - heights.get(0), 0.2, lesson.id() + " " + value);
    }

    /** Points of the picture for a pascal: its axis begins at zero. */
    private double scale(Lesson lesson) throws IOException {
        Matcher high = Pattern.compile("&quot;height&quot;:([0-9.]+),.*&quot;high&quot;:(\\d+)")
                .matcher(Files.readString(site.resolve(lesson.id() + ".html")));
        assertTrue(high.find(), lesson.id());
        return Double.parseDouble(high.group(1)) / (Double.parseDouble(high.group(2)) * 1e3);
    }

    @Test
    void withoutScriptTheStillPictureIsThere() throws Exception {
        String page = Files.readString(site.resolve("the-precharge.html"));
        Path still = site.resolve("still.html");
        Files.writeString(still, page.replaceAll("<script src=\"site.js\"></script>", ""));
        String loaded = browser.load(still).page();
        assertTrue(
                loaded.matches("(?s).*<polyline[^>]*points=\"9[0-9.]+,[0-9.]+ .*"), "the curve of the still picture");
        assertTrue(loaded.contains("class=\"moving\" hidden"), "no slider that does nothing");
        assertTrue(loaded.contains("<details class=\"look\" open"), "nothing is folded away that cannot be opened");
    }

    @Test
    void aWorksheetTakesOnePage() throws Exception {
        for (Lesson lesson : Lessons.all()) {
            String pdf = new String(
                    browser.print(site.resolve("worksheet-" + lesson.id() + ".html")), StandardCharsets.ISO_8859_1);
            assertEquals(
                    1,
                    Pattern.compile("/Type\\s*/Page\\b(?!s)")
                            .matcher(pdf)
                            .results()
                            .count(),
                    lesson.id());
        }
    }

    private static List<String[]> moved(String page) {
        Matcher text =
                Pattern.compile("<pre id=\"moved\">(.*?)</pre>", Pattern.DOTALL).matcher(page);
        assertTrue(text.find() && !text.group(1).isBlank(), "the slider was not moved");
        return text.group(1).lines().map(line -> line.split("\\|")).toList();
    }

    private static String own(String name) throws IOException {
        try (InputStream in = LessonSiteBrowserTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
