package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.report.Browser;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The site in a browser, from files. Skipped where there is no browser, unless the system property
 * {@code browser.required} is true.
 */
@Order(1)
class LessonSiteBrowserTest {

    /** A phone, and A4 at 96 dots an inch (px). */
    private static final int[] WIDTHS = {360, 794};

    private static final Pattern PRINTED = Pattern.compile("/Type\\s*/Page\\b(?!s)");

    @TempDir
    private static Path folder;

    private static Path site;
    private static List<String> pages;
    private static Browser browser;

    /** What a test adds has a name of its own. */
    @BeforeAll
    static void write() throws IOException {
        browser = Browser.start(folder);
        site = folder.resolve("site");
        ResultFolder.at(site).write(Lessons.site());
        try (Stream<Path> files = Files.list(site)) {
            pages = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".html"))
                    .sorted()
                    .toList();
        }
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void everyPageFitsAPhoneAndPaperAndComplainsOfNothing() throws Exception {
        StringBuilder frames = new StringBuilder();
        for (String page : pages) {
            for (int width : WIDTHS) {
                frames.append(frame(page, width, 800));
            }
        }
        Path wrapper = site.resolve("measure.html");
        Files.writeString(
                wrapper,
                own("/io/github/heatswell/scenarios/report/measure.html")
                        .replace("FRAMES", frames)
                        .replace(
                                "const view =",
                                "page.querySelectorAll('details').forEach(d => { d.open = true; });\n    const view ="));
        Browser.Outcome outcome = browser.load(wrapper);
        assertEquals(List.of(), outcome.console());
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

    /** A page as a part of another, of this size (px). */
    private static String frame(String page, int width, int height) {
        return "<iframe src=\"" + page + "\" style=\"border:0;width:" + width + "px;height:" + height
                + "px\"></iframe>\n";
    }

    private static List<Lesson> withSlider() {
        return Lessons.all().stream()
                .filter(lesson -> lesson.slider().isPresent())
                .toList();
    }

    @Test
    void everySliderShowsTheComputedRuns() throws Exception {
        List<Lesson> lessons = withSlider();
        assertTrue(lessons.size() >= 3);
        StringBuilder frames = new StringBuilder();
        lessons.forEach(lesson -> frames.append(frame(lesson.id() + ".html", 900, 900)));
        Path wrapper = Files.writeString(
                site.resolve("move.html"),
                own("/io/github/heatswell/scenarios/teaching/move.html").replace("FRAMES", frames));
        Browser.Outcome outcome = browser.load(wrapper);
        assertEquals(List.of(), outcome.console());
        for (Lesson lesson : lessons) {
            assertMoves(lesson, moved(outcome.page(), "moved " + lesson.id() + ".html"));
        }
    }

    /** Whoever has predicted sees verdict, picture, slider and what it shows at once, on a small screen and from a projector. */
    @Test
    void pictureSliderAndVerdictStandOnOneScreen() throws Exception {
        Map<Integer, Integer> heights = Map.of(1280, 800, 1024, 768);
        StringBuilder frames = new StringBuilder();
        heights.forEach((width, height) ->
                withSlider().forEach(lesson -> frames.append(frame(lesson.id() + ".html", width, height))));
        Path wrapper = Files.writeString(
                site.resolve("screen.html"),
                own("/io/github/heatswell/scenarios/teaching/screen.html").replace("FRAMES", frames));
        String seen = browser.load(wrapper).page();
        heights.forEach((width, height) ->
                withSlider().forEach(lesson -> assertFits(lesson.id() + ".html at " + width, height, seen)));
    }

    private static void assertFits(String where, int height, String page) {
        Matcher seen = Pattern.compile(where + ": top (-?\\d+), picture (\\d+), slider (\\d+), readout (\\d+)")
                .matcher(page);
        assertTrue(seen.find(), where + ": " + page);
        assertEquals(0, Integer.parseInt(seen.group(1)), 20, where + ": the verdict is at the top");
        for (int part = 2; part <= 4; part++) {
            assertTrue(Integer.parseInt(seen.group(part)) <= height, seen.group());
        }
    }

    private static void assertMoves(Lesson lesson, List<String[]> lines) {
        LessonSlider slider = lesson.slider().orElseThrow();
        assertEquals(List.of("shut", "false", "false"), List.of(lines.get(0)));
        assertEquals(
                List.of("focused", "true", slider.label()),
                List.of(lines.get(2)).subList(0, 3));
        assertEnds(slider, lines.get(1));
        List<String[]> steps =
                lines.stream().filter(line -> line[0].equals("at")).toList();
        assertEquals(2 * steps(lesson).size() - 1, steps.size());
        for (String value : slider.values()) {
            assertShown(lesson, slider, value, steps);
        }
        assertBetween(steps);
        assertUnits(lines.stream().filter(line -> line[0].equals("units")).toList());
        List<String[]> predicted =
                lines.stream().filter(line -> line[0].equals("predicted")).toList();
        assertEquals(lesson.prediction().options().size(), predicted.size());
        for (String[] line : predicted) {
            assertEquals(line[1].equals(line[2]), line[3].equals("Right. That is what the run shows."), line[3]);
        }
    }

    /** A slider says where it begins and where it ends. */
    private static void assertEnds(LessonSlider slider, String[] ends) {
        List<String> values = slider.values();
        assertEquals("ends", ends[0]);
        assertTrue(ends[1].startsWith(values.get(0) + " ") && ends[1].contains(slider.unit()), ends[1]);
        assertTrue(ends[2].startsWith(values.get(values.size() - 1) + " "), ends[2]);
    }

    private static List<String> steps(Lesson lesson) {
        return lesson.slider().orElseThrow().refined().values();
    }

    /** The curve on the page is that of a run made here, to the whole kilopascal that the page holds. */
    private static void assertShown(Lesson lesson, LessonSlider slider, String value, List<String[]> steps) {
        RunResult run = Lessons.moved(slider).get(value);
        String[] shown = steps.get(2 * steps(lesson).indexOf(value));
        assertTrue(
                shown[3].startsWith("Computed run: " + value + "\u00a0" + slider.unit())
                        || shown[3].startsWith("Computed run: " + value + " " + slider.unit()),
                shown[3]);
        Measure peak = new Measure(Measure.Kind.GAUGE_PRESSURE, run.peak().value());
        String both = peak.text(UnitSystem.SI) + " (" + peak.text(UnitSystem.US) + ")";
        assertTrue(shown[4].replace('\u00a0', ' ').startsWith(both), shown[4] + " is not " + both);
        assertEquals(run.first(Event.Kind.RELIEF_OPENED).isPresent(), shown[5].startsWith("opens after"), shown[5]);
        assertEquals(run.first(Event.Kind.RELIEF_OPENED).isPresent() ? "1" : "0", shown[9], value);
        assertEquals("1", shown[8], "the mark of the peak");
        assertEquals(run.totals().relieved() > 1e-6, !shown[6].equals("nothing"), shown[6]);
        assertTrue(shown[7].contains(shown[3]) && shown[7].contains(shown[5]), shown[7]);
        List<Long> course = pressures(shown[2]);
        int stride = (run.trace().count() + 239) / 240;
        for (int i = 0; i < course.size(); i++) {
            double gauge = run.gauge(run.trace().value(Channel.PRESSURE_ABSOLUTE, i * stride));
            assertEquals(gauge / 1e3, course.get(i), 0.5 + 1e-9, lesson.id() + " " + value + " at " + i);
        }
        assertTrue(
                course.stream().anyMatch(pressure -> pressure == Math.round(peak.value() / 1e3))
                        || shown[2].matches(".*L\\d+\\.\\d+ " + Math.round(peak.value() / 1e3) + "(L.*|$)"),
                "the curve reaches the peak");
        assertTrue((course.size() - 1) * stride > run.trace().count() - 1 - stride, "the curve goes to the end");
    }

    /** Between two runs the page says so and draws both, with the marks of both: it makes nothing up. */
    private static void assertBetween(List<String[]> steps) {
        for (int i = 1; i < steps.size(); i += 2) {
            String[] before = steps.get(i - 1);
            String[] between = steps.get(i);
            String[] after = steps.get(i + 1);
            assertTrue(between[3].matches("Between the runs of .* and .*"), between[3]);
            assertEquals(before[2] + ";" + after[2], between[2]);
            assertEquals("2", between[8]);
            assertEquals(Integer.parseInt(before[9]) + Integer.parseInt(after[9]), Integer.parseInt(between[9]));
        }
    }

    private static void assertUnits(List<String[]> units) {
        assertTrue(units.get(0)[8].endsWith(".html?units=us"), units.get(0)[8]);
        assertTrue(units.get(1)[8].endsWith(".html?units=si"), units.get(1)[8]);
        assertTrue(units.get(2)[8].endsWith(".html"), units.get(2)[8]);
        assertEquals(
                List.of("us", "false", "true", "false", "false", "true"),
                List.of(units.get(0)).subList(1, 7));
        assertEquals(
                List.of("si", "true", "false", "false", "true", "false"),
                List.of(units.get(1)).subList(1, 7));
        assertEquals(
                List.of("both", "true", "true", "true", "true", "false"),
                List.of(units.get(2)).subList(1, 7));
        assertTrue(units.get(0)[7].matches("[0-9.]+\u00a0psi, after .*"), units.get(0)[7]);
        assertTrue(units.get(1)[7].matches("[0-9.]+\u00a0bar, after .*"), units.get(1)[7]);
        assertTrue(units.get(2)[7].matches("[0-9.]+\u00a0bar \\([0-9.]+\u00a0psi\\), after .*"), units.get(2)[7]);
    }

    /** The heights of a curve at its samples, which the page draws in kilopascals. */
    private static List<Long> pressures(String path) {
        return Pattern.compile("[ML]\\d+ (-?\\d+)")
                .matcher(path)
                .results()
                .map(point -> Long.valueOf(point.group(1)))
                .toList();
    }

    /** The rest unfolds only once something was chosen, by key as by mouse, and speaks to the guess. */
    @Test
    void theRestUnfoldsOnceSomethingWasChosen() throws Exception {
        Lesson lesson = Lessons.all().get(0);
        Path wrapper = site.resolve("choose.html");
        Files.writeString(
                wrapper,
                own("/io/github/heatswell/scenarios/teaching/choose.html").replace("PAGE", lesson.id() + ".html"));
        Browser.Outcome outcome = browser.load(wrapper);
        assertEquals(List.of(), outcome.console());
        List<String[]> lines = moved(outcome.page(), "moved");
        assertEquals(List.of("carried", "us", "true"), List.of(lines.get(0)), "units chosen on another page");
        assertEquals(List.of("refused", "false", "Choose an answer first.", "true"), List.of(lines.get(1)));
        assertEquals(List.of("chosen", "true"), List.of(lines.get(2)).subList(0, 2));
        assertTrue(
                lines.get(2)[2].startsWith("You predicted: ") && lines.get(2)[2].endsWith("the way it came."),
                lines.get(2)[2]);
        assertEquals(List.of("right", "Right. That is what the run shows."), List.of(lines.get(3)));
        assertEquals(List.of("replies", "false"), List.of(lines.get(4)));
    }

    @Test
    void withoutScriptTheStillPictureIsThere() throws Exception {
        String page = Files.readString(site.resolve("the-precharge.html"));
        Path still = site.resolve("still.html");
        Files.writeString(still, page.replace("<script src=\"site.js\"></script>", ""));
        String loaded = browser.load(still).page();
        assertTrue(loaded.matches("(?s).*<div class=\"si\"><figure>.*<svg.*"), "the still picture");
        assertTrue(loaded.contains("<section id=\"explore\" aria-labelledby=\"move\" hidden"), "no dead slider");
        assertTrue(loaded.contains("<fieldset id=\"units\" class=\"units\" hidden"), "no dead choice");
        assertTrue(loaded.contains("<span class=\"us\">"), "both units");
        assertTrue(loaded.contains("<dl class=\"replies\" id=\"replies\">"), "all replies");
    }

    /** All worksheets one behind the other, each from the top of a page, take as many pages as there are. */
    @Test
    void aWorksheetTakesOnePage() throws Exception {
        List<String> sheets = new ArrayList<>();
        for (Lesson lesson : Lessons.all()) {
            sheets.add(Files.readString(site.resolve("worksheet-" + lesson.id() + ".html")));
        }
        assertEquals(sheets.size(), pages(sheets, "letter", "792"));
        assertEquals(sheets.size(), pages(sheets, "A4", "841"));
        sheets.set(1, sheets.get(1).replace("<main", "<p style=\"height:9in\"></p><main"));
        assertEquals(sheets.size() + 1, pages(sheets, "A4", "841"), "one that is too long is noticed");
    }

    private int pages(List<String> sheets, String paper, String points) throws Exception {
        StringBuilder all = new StringBuilder(sheets.get(0).replaceFirst("(?s)<body.*", ""));
        all.append("<style>@page { size: ").append(paper).append("; }</style><body class=\"worksheet\">");
        for (String sheet : sheets) {
            Matcher body =
                    Pattern.compile("(?s)<body class=\"worksheet\">(.*)</body>").matcher(sheet);
            assertTrue(body.find(), sheet);
            all.append("<div style=\"break-after: page\">")
                    .append(body.group(1))
                    .append("</div>");
        }
        Path file = Files.writeString(site.resolve("on-paper.html"), all.append("</body></html>"));
        String pdf = new String(browser.print(file), StandardCharsets.ISO_8859_1);
        assertTrue(pdf.contains(points), "the height of " + paper + " in points");
        return (int) PRINTED.matcher(pdf).results().count();
    }

    private static List<String[]> moved(String page, String id) {
        Matcher text = Pattern.compile("<pre id=\"" + id + "\">(.*?)</pre>", Pattern.DOTALL)
                .matcher(page);
        assertTrue(text.find() && !text.group(1).isBlank(), "the slider was not moved");
        return text.group(1)
                .replace("&nbsp;", "\u00a0")
                .lines()
                .map(line -> line.split("\\|"))
                .toList();
    }

    private static String own(String name) throws IOException {
        try (InputStream in = LessonSiteBrowserTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
