package io.github.heatswell.scenarios.teaching;

import static io.github.heatswell.scenarios.report.StyleColours.contrast;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.report.StyleColours;
import io.github.heatswell.units.UnitSystem;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The site is sound, complete and small, whatever a lesson says. */
class LessonSiteTest {

    private static final long LARGEST = 5_000_000;
    private static final String HOSTILE = "<script>alert('x')</script> \"quoted\" & </title> \u202e";

    private static final Pattern MEASURE = Pattern.compile("(\\d+(?:\\.\\d+)?) (\\S+)");

    @TempDir
    private static Path site;

    private static final TreeMap<String, String> PAGES = new TreeMap<>();

    @BeforeAll
    static void write() throws Exception {
        ResultFolder.at(site).write(Lessons.site());
        try (Stream<Path> files = Files.list(site)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".html")).toList()) {
                PAGES.put(file.getFileName().toString(), Files.readString(file));
            }
        }
    }

    @Test
    void everyLessonHasItsPageItsWorksheetAndItsFile() throws Exception {
        assertEquals(3 + 2 * Lessons.all().size(), PAGES.size());
        for (Lesson lesson : Lessons.all()) {
            assertTrue(PAGES.containsKey(lesson.id() + ".html"), lesson.id());
            assertTrue(PAGES.containsKey("worksheet-" + lesson.id() + ".html"), lesson.id());
            String text = Files.readString(site.resolve(lesson.id() + ".yaml"));
            assertFalse(ScenarioReader.read(lesson.id(), text).title().isBlank());
        }
    }

    @Test
    void theSiteIsSmall() throws Exception {
        long size = 0;
        try (Stream<Path> files = Files.list(site)) {
            for (Path file : files.toList()) {
                size += Files.size(file);
            }
        }
        assertTrue(size < LARGEST, size + " bytes");
    }

    @Test
    void everyPageIsSound() throws Exception {
        for (String name : PAGES.keySet()) {
            assertSound(name, PAGES.get(name));
        }
    }

    /** What was only remembered is a note for the authors; a pupil is told what somebody has looked into. */
    @Test
    void noSourceIsFromMemory() {
        PAGES.forEach((name, page) -> assertFalse(page.contains("from memory"), name));
        assertTrue(Lessons.all().stream()
                .flatMap(lesson -> lesson.sources().stream())
                .anyMatch(source -> source.standing() == Citation.Standing.FROM_MEMORY));
    }

    @Test
    void everyLinkLeadsIntoTheSite() {
        Pattern link = Pattern.compile("(?:href|src)=\"([^\"]+)\"");
        for (String name : PAGES.keySet()) {
            Matcher links = link.matcher(PAGES.get(name));
            while (links.find()) {
                String to = links.group(1);
                boolean there = to.startsWith("#")
                        ? PAGES.get(name).contains(" id=\"" + to.substring(1) + "\"")
                        : Files.exists(site.resolve(to));
                assertTrue(there, name + " leads to " + to);
            }
        }
    }

    /** What to notice stands there in both unit systems, as the run has it, and either can be read alone. */
    @Test
    void everyNumberIsThatOfTheRunInEitherUnits() throws Exception {
        Lesson lesson = Lessons.all().get(1);
        List<Statement> noticed = Lessons.run(lesson).notice();
        NodeList lists = parsed(PAGES.get(lesson.id() + ".html")).getElementsByTagName("ul");
        Element list = null;
        for (int i = 0; i < lists.getLength(); i++) {
            Element one = (Element) lists.item(i);
            list = one.getAttribute("class").equals("notice") ? one : list;
        }
        NodeList items = list.getElementsByTagName("li");
        assertEquals(noticed.size(), items.getLength());
        for (int i = 0; i < noticed.size(); i++) {
            Element item = (Element) items.item(i);
            assertEquals(noticed.get(i).text(UnitSystem.SI), without(item, Set.of("us", "both")));
            assertEquals(noticed.get(i).text(UnitSystem.US), without(item, Set.of("si", "both")));
        }
    }

    /** The text without the parts of some classes. */
    private static String without(Element element, Set<String> classes) {
        StringBuilder text = new StringBuilder();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            boolean left = child instanceof Element part && classes.contains(part.getAttribute("class"));
            text.append(left ? "" : child.getTextContent());
        }
        return text.toString().replace('\u00a0', ' ');
    }

    @Test
    void theHouseToTryStandsOnThePageAsInTheFile() throws Exception {
        for (Lesson lesson : Lessons.all()) {
            Document page = parsed(PAGES.get(lesson.id() + ".html"));
            NodeList texts = page.getElementsByTagName("pre");
            assertEquals(
                    lesson.tryIt().command(UnitSystem.SI),
                    texts.item(0).getTextContent().strip());
            assertEquals(
                    Files.readString(site.resolve(lesson.id() + ".yaml")).strip(),
                    texts.item(1).getTextContent().strip());
        }
    }

    /** The house as a file is one of the page, not one like it: its run shows what the page's run does, and so does the command. */
    @Test
    void theHouseAsAFileRunsAsOnThePage() throws Exception {
        for (Lesson lesson : Lessons.all()) {
            RunResult shown =
                    Lessons.run(lesson).house(lesson.tryIt().house().name()).run();
            Scenario file = ScenarioReader.read(lesson.id(), Files.readString(site.resolve(lesson.id() + ".yaml")));
            assertEquals(lesson.title() + " (" + lesson.tryIt().house().label() + ")", file.title());
            assertSame(lesson.id(), shown, file.simulation().run());
            RunResult tried = file.with(lesson.tryIt().changes()).simulation().run();
            assertSame(
                    lesson.id(), lesson.others().get(Lesson.TRIED).simulation().run(), tried);
        }
    }

    private static void assertSame(String id, RunResult one, RunResult other) {
        assertEquals(one.peak().value(), other.peak().value(), id);
        assertEquals(one.totals().relieved(), other.totals().relieved(), id);
        assertEquals(one.totals().returned(), other.totals().returned(), id);
        assertEquals(one.end(), other.end(), id);
        assertEquals(one.events().size(), other.events().size(), id);
    }

    /** What would tell the outcome is folded away with it, and stands first there; a caution stands before the question. */
    @Test
    void cautionsWarnAndDoNotTellTheOutcome() {
        for (Lesson lesson : Lessons.all()) {
            String page = PAGES.get(lesson.id() + ".html").replace("&amp;", "&");
            String before = page.substring(0, page.indexOf("<details id=\"look\""));
            assertTrue(before.indexOf("id=\"caution\"") < before.indexOf("class=\"question\""), lesson.id());
            assertFalse(lesson.cautions().isEmpty());
            lesson.cautions().forEach(text -> assertTrue(before.contains(text), text));
            int outcome = page.indexOf("id=\"outcome\"");
            for (String text : lesson.cautionsAfter()) {
                assertFalse(before.contains(text), text);
                assertTrue(page.contains(text) && page.indexOf(text) < outcome, text);
                assertFalse(PAGES.get("worksheet-" + lesson.id() + ".html").contains(text), text);
            }
        }
        for (String id : List.of("closing-the-system", "the-gas-cushion", "the-reducing-valve")) {
            String page = PAGES.get(id + ".html");
            String before = page.substring(page.indexOf("<main"), page.indexOf("<details id=\"look\""));
            assertFalse(before.contains("drips"), id);
        }
        String runaway = PAGES.get("the-runaway-heater.html").replace("&amp;", "&");
        assertFalse(runaway.substring(0, runaway.indexOf("id=\"predict\"")).contains("T&P"));
    }

    /** The prose of the course is as plain as the lessons, and the first page and that for teachers have all of it. */
    @Test
    void thePagesOfProseArePlain() {
        for (String name : List.of("index.html", "teachers.html")) {
            String page = PAGES.get(name).replaceAll("(?s)<head>.*?</head>", "");
            assertFalse(page.contains("{") || page.contains("}"), name + " has an unfilled place");
            for (String text : page.split("</(p|li|dd|dt|span|a|h1|h2)>")) {
                String plain = text.replaceAll("(?s)<[^>]*>", " ").strip();
                for (String sentence : plain.split("(?<=[.?:;])\\s+")) {
                    assertTrue(sentence.split("\\s+").length <= 34, sentence);
                    boolean stops = sentence.matches("(?i).*\\b(plug|downsize)\\b.*");
                    assertTrue(!stops || sentence.startsWith("Never"), sentence);
                }
            }
        }
        Course course = Course.bundled();
        course.lessons()
                .forEach(lesson -> assertTrue(
                        PAGES.get("teachers.html")
                                .contains(course.say("aim", lesson.aim())
                                        .replace("'", "&#39;")
                                        .replace("T&P", "T&amp;P")),
                        lesson.aim()));
        assertThrows(IllegalStateException.class, () -> course.say("no such words"));
    }

    /** The page opens only when it is asked to, and the teachers are told so. */
    @Test
    void teachersAreToldWhatOpensThePage() {
        String show = Course.bundled().say("show");
        assertTrue(PAGES.get("teachers.html").contains("\u201c" + show + "\u201d"));
        assertTrue(PAGES.get("the-size.html").contains("<summary>" + show + "</summary>"));
    }

    /** A sketch can be checked: the picture of the lesson has an axis of the same quantity, unit and unit of time. */
    @Test
    void theLessonHasThePictureThatIsSketched() {
        Pattern words = Pattern.compile("<text [^>]*>([^<]*)</text>");
        for (Lesson lesson : Lessons.all()) {
            String sheet = PAGES.get("worksheet-" + lesson.id() + ".html");
            List<String> sketched =
                    words.matcher(sheet).results().map(found -> found.group(1)).toList();
            String quantity = sketched.get(sketched.size() - 1);
            String time = sketched.get(sketched.size() - 2);
            List<String> drawn = words.matcher(PAGES.get(lesson.id() + ".html"))
                    .results()
                    .map(found -> found.group(1))
                    .toList();
            assertTrue(drawn.contains(quantity), lesson.id() + " does not draw " + quantity);
            assertTrue(
                    drawn.contains(time) || drawn.contains("time of day") && time.endsWith("(h)"),
                    lesson.id() + " does not draw " + time);
        }
    }

    /** Regression: no picture that draws the limit stands over words that only another draws it, and an enlarged page shrinks none. */
    @Test
    void wordsAboutTheLimitAreTrueOfThePictureAbove() {
        String words = "In bar, this picture leaves out the limit of US model codes";
        int said = 0;
        int drawn = 0;
        for (Lesson lesson : Lessons.all()) {
            for (String figure : PAGES.get(lesson.id() + ".html").split("<figure")) {
                assertFalse(
                        figure.contains(words)
                                && figure.substring(0, figure.indexOf("</figure>"))
                                        .contains("limit of US model codes"),
                        lesson.id());
                said += figure.contains(words) ? 1 : 0;
                drawn += figure.contains("limit of US model codes") && !figure.contains(words) ? 1 : 0;
            }
        }
        assertTrue(said > 0 && drawn > 0, said + " and " + drawn);
        assertFalse(
                Course.resource("lessons.css").contains("vh"),
                "a share of the window's height shrinks as the page grows");
    }

    /** A time is written down in what the axis has that it is read from. */
    @Test
    void aTimeIsReadInTheUnitOfItsAxis() {
        int hours = 0;
        int minutes = 0;
        for (Lesson lesson : Lessons.all()) {
            String sheet = PAGES.get("worksheet-" + lesson.id() + ".html");
            String drawn = PAGES.get(lesson.id() + ".html");
            for (Lesson.Reading reading : lesson.readings()) {
                if (reading.answer().kind().orElseThrow() == Measure.Kind.TIME) {
                    Matcher row = Pattern.compile(
                                    Pattern.quote(reading.label()) + "</th>\\s*<td[^>]*></td>\\s*<td>([^<]*)")
                            .matcher(sheet.replace("&amp;", "&"));
                    assertTrue(row.find(), reading.label());
                    boolean inHours = row.group(1).equals("h and min");
                    assertTrue(inHours || row.group(1).equals("min"), row.group(1));
                    assertTrue(drawn.contains(inHours ? "(h)<" : "(min)<"), lesson.id() + " reads " + row.group(1));
                    hours += inHours ? 1 : 0;
                    minutes += inHours ? 0 : 1;
                }
            }
        }
        assertTrue(hours > 0 && minutes > 0, "both kinds of axis");
    }

    /** A reading asks for what no sentence and no label says: in any of the units, to one part in two hundred. */
    @Test
    void readingsStandInThePictureAlone() {
        for (Lesson lesson : Lessons.all()) {
            assertFalse(lesson.readings().isEmpty(), lesson.id());
            String said = said(PAGES.get(lesson.id() + ".html"));
            for (Measure answer : Lessons.run(lesson).answers()) {
                for (UnitSystem units : UnitSystem.values()) {
                    String text = answer.text(units);
                    boolean isTime = answer.kind() == Measure.Kind.TIME;
                    String minutes = Math.round(answer.value() / 60) + " min";
                    boolean found = isTime ? said.contains(text) || said.contains(" " + minutes) : isSaid(said, text);
                    assertFalse(found, lesson.id() + " says " + text);
                }
            }
        }
    }

    /** All words of a page and of its pictures, without the values the slider holds. */
    private static String said(String page) {
        return page.replaceAll("(?s)<pre.*?</pre>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace('\u00a0', ' ')
                .replaceAll("\\s+", " ");
    }

    private static boolean isSaid(String said, String text) {
        Matcher first = MEASURE.matcher(text);
        assertTrue(first.find(), text);
        Matcher any = MEASURE.matcher(said);
        while (any.find()) {
            double difference = Double.parseDouble(any.group(1)) - Double.parseDouble(first.group(1));
            if (any.group(2).equals(first.group(2))
                    && Math.abs(difference) <= 0.005 * Double.parseDouble(first.group(1))) {
                return true;
            }
        }
        return false;
    }

    /** The folder for the class goes without the pages of the teacher, and no link of it breaks. */
    @Test
    void noPageOfTheClassLeadsToTheTeacher() {
        PAGES.forEach((name, page) -> assertEquals(
                name.equals("answers.html") && page.contains("href=\"teachers.html\""),
                page.contains("href=\"teachers.html\""),
                name));
        assertTrue(PAGES.get("index.html").contains("teachers.html"), "teachers are told the name of their page");
    }

    /** Whoever chose units sketches in them: the sheet has a graph for either, and names no unit but in its table. */
    @Test
    void aWorksheetHasAGraphInEitherUnits() {
        for (Lesson lesson : Lessons.all()) {
            String sheet = PAGES.get("worksheet-" + lesson.id() + ".html");
            assertTrue(sheet.matches("(?s).*<div class=\"si\">.*<svg.*<div class=\"asked us\">.*<svg.*"), lesson.id());
        }
    }

    @Test
    void noPageOfTheClassLeadsToTheAnswers() {
        PAGES.forEach((name, page) -> assertEquals(
                name.equals("teachers.html"), page.contains("href=\"answers.html\""), name + " and the answers"));
    }

    /** Each picture says in words what it shows itself. */
    @Test
    void everyPictureHasItsOwnWords() throws Exception {
        for (Lesson lesson : Lessons.all()) {
            NodeList pictures = parsed(PAGES.get(lesson.id() + ".html")).getElementsByTagName("svg");
            Set<String> words = new HashSet<>();
            for (int i = 0; i < pictures.getLength(); i++) {
                assertTrue(words.add(((Element) pictures.item(i)).getAttribute("aria-label")), lesson.id());
            }
        }
        String reducing = PAGES.get("the-runaway-heater.html");
        assertTrue(reducing.contains(
                "aria-label=\"Chart of the gauge pressure over time. with a cut-out: the pressure stays at 2.5 bar"));
        assertFalse(reducing.contains("at most 2.5 bar"), "what stays has no highest");
        for (String label : labels("pressure-per-degree.html")) {
            assertTrue(label.contains("there is no relief valve; the run ends in a hazard: "), label);
            assertFalse(label.contains("valve stays shut"), label);
        }
    }

    private static List<String> labels(String page) {
        return Pattern.compile("aria-label=\"(Chart of [^\"]*)\"")
                .matcher(PAGES.get(page))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void whatIsAnsweredIsReadOut() throws Exception {
        for (Lesson lesson : Lessons.all()) {
            String page = PAGES.get(lesson.id() + ".html");
            int verdict = page.indexOf("<p id=\"verdict\" class=\"verdict\" role=\"status\" aria-live=\"polite\"");
            assertTrue(
                    verdict > 0 && verdict < page.indexOf("<details id=\"look\""),
                    "outside what is folded: " + lesson.id());
        }
    }

    @Test
    void picturesTakeTheColoursOfHighContrast() {
        for (String css :
                List.of(Course.resource("lessons.css"), io.github.heatswell.scenarios.report.Html.styleSheet())) {
            String forced = css.substring(css.indexOf("@media (forced-colors: active)"));
            assertTrue(
                    forced.contains("CanvasText") && forced.contains("figure svg [fill=\"white\"] { fill: Canvas; }"));
        }
        assertTrue(PAGES.get("the-precharge.html").contains("<g fill=\"white\""), "the paper is known by its colour");
    }

    @Test
    void theUnitsAskedForComeFirst(@TempDir Path other) throws Exception {
        List<Lesson> one = List.of(Lessons.all().get(0));
        ResultFolder.at(other).write(Lessons.pages(one, UnitSystem.US));
        String page = Files.readString(other.resolve(one.get(0).id() + ".html"));
        assertTrue(page.contains("</span><span class=\"both\"> (</span><span class=\"si\">"));
        assertFalse(page.contains("</span><span class=\"both\"> (</span><span class=\"us\">"));
        assertTrue(page.contains("The same picture in bar"));
        String sheet = Files.readString(other.resolve("worksheet-" + one.get(0).id() + ".html"));
        assertTrue(sheet.contains("in another color.") && !sheet.contains("colour"), "spelled as in the US");
        assertTrue(sheet.contains("<h1>1. "), "the worksheet carries the number of its lesson");
    }

    @Test
    void aHouseThatWasChangedStays(@TempDir Path other) throws Exception {
        List<Lesson> one = List.of(Lessons.all().get(0));
        List<ResultFile> files = Lessons.pages(one, UnitSystem.SI);
        ResultFolder.at(other).write(files);
        String name = one.get(0).id() + ".yaml";
        Files.writeString(other.resolve(name), "# mine");
        Files.writeString(other.resolve("index.html"), "# mine");
        assertEquals(List.of(name), ResultFolder.at(other).write(files));
        assertEquals("# mine", Files.readString(other.resolve(name)));
        assertTrue(Files.readString(other.resolve("index.html")).startsWith("<!DOCTYPE html>"));
    }

    /** Regression: a volume that the worksheet asks for can be read from a picture of that house. */
    @Test
    void aVolumeToReadHasAPanel() {
        for (Lesson lesson : Lessons.all()) {
            boolean asked = lesson.readings().stream()
                    .anyMatch(reading -> reading.answer().kind().equals(Optional.of(Measure.Kind.VOLUME)));
            boolean drawn = Pattern.compile("water (discharged|returned to the mains) since the start")
                    .matcher(PAGES.get(lesson.id() + ".html"))
                    .find();
            assertTrue(drawn || !asked, lesson.id());
        }
        assertTrue(PAGES.get("open-to-the-mains.html").contains("water returned to the mains since the start"));
    }

    /** Regression: where the units of the US come first, the words are those of the US, but not in files and commands. */
    @Test
    void lessonsForTheUsUseItsWords(@TempDir Path folder) throws Exception {
        Lesson lesson = Lessons.all().stream()
                .filter(one -> one.id().equals("the-gas-cushion"))
                .findFirst()
                .orElseThrow();
        ResultFolder.at(folder).write(Lessons.pages(List.of(lesson), UnitSystem.US));
        String page = Files.readString(folder.resolve(lesson.id() + ".html"));
        String words = page.replaceAll("(?s)<(pre|code|svg|ol)\\b.*?</\\1>|<[^>]*>|\u201c[^\u201d]*\u201d", " ");
        assertTrue(words.contains("expansion tank"), words);
        assertFalse(Pattern.compile("\\bvessel\\b|\\bmains\\b").matcher(words).find(), words);
        assertTrue(
                Pattern.compile("(?s)<pre[^>]*>.*vessel.*</pre>").matcher(page).find());
    }

    /** Regression: between the values of a lesson, so many more that the steps are small, and none twice. */
    @Test
    void slidersGetValuesBetweenThoseOfTheLesson() {
        Lesson.House any = Lessons.all().get(0).houses().get(0);
        LessonSlider two =
                new LessonSlider(any, "size", "a vessel of", List.of("vessel.volume"), List.of("2", "4"), "L");
        List<String> values = two.refined().values();
        assertEquals(17, values.size());
        assertEquals(List.of("2", "2.13", "2.25"), values.subList(0, 3)); // an eighth is 0.125, two decimals are kept
        assertEquals("4", values.get(16));
        LessonSlider words = new LessonSlider(
                any, "fault", "a vessel that is", List.of("vessel.condition"), List.of("sound", "isolated"), "");
        assertEquals(List.of("sound", "isolated"), words.refined().values());
        assertEquals("isolated", words.shown(1, UnitSystem.US));
        assertEquals("1.06 gal", two.shown(1, UnitSystem.US)); // 4 L are 1.06 gallons
        for (Lesson lesson : Lessons.all()) {
            lesson.slider().ifPresent(slider -> {
                List<String> refined = slider.refined().values();
                assertTrue(refined.containsAll(slider.values()) && refined.size() >= 15 && refined.size() <= 40);
                assertEquals(refined.size(), new HashSet<>(refined).size());
            });
        }
    }

    /** Regression: where the units of the US come first, files stayed metric and sliders stopped at 0.53 gal. */
    @Test
    void filesCommandsAndSlidersForTheUsHaveItsUnits() {
        List<String> stops = new ArrayList<>();
        for (Lesson lesson : Lessons.all()) {
            String text = lesson.file(UnitSystem.US);
            Scenario file = ScenarioReader.read(lesson.id(), text);
            assertEquals(UnitSystem.US, file.units(), lesson.id());
            assertFalse(
                    Pattern.compile("\\d (bar|L|degC|K|mm?)\\b").matcher(text).find(), text);
            Scenario own = lesson.tryIt().house().scenario();
            assertEquals(
                    own.system().tank().volume(),
                    file.system().tank().volume(),
                    1e-3 * own.system().tank().volume());
            assertEquals(
                    own.system().supplyAtStart().absolute(1e5),
                    file.system().supplyAtStart().absolute(1e5),
                    100); // four digits
            assertEquals(
                    own.system().heater().setPoint(), file.system().heater().setPoint(), 0.05); // the same
            file.with(lesson.tryIt().changes()).system();
            assertTrue(lesson.tryIt().command(UnitSystem.US).endsWith(" -u us"));
            lesson.slider().map(slider -> slider.refined(UnitSystem.US)).ifPresent(slider -> {
                assertTrue(slider.scenarios().size() >= 10, lesson.id());
                stops.addAll(slider.values());
            });
        }
        assertTrue(
                stops.containsAll(List.of("0.5 gal", "3.5 gal", "9 gal", "12 L", "15 psi", "95 psi", "6.4 bar")),
                stops::toString);
        stops.removeIf(stop -> stop.matches("\\d(\\.5)? gal|\\d*[05] psi"));
        assertEquals(List.of("4.2 bar", "12 L", "6.4 bar", "4.2 bar"), stops, "else the houses themselves");
        assertEquals(
                "heatswell run orchard-lodge-vessel --set \"vessel.volume=6.34 gal\" -u us",
                Lessons.named("the-size").tryIt().command(UnitSystem.US));
    }

    /** Regression: nobody could sketch a curve without knowing where it starts. */
    @Test
    void aSheetSaysWhereTheCurvesStart() throws Exception {
        for (Lesson lesson : Lessons.all()) {
            String sheet = PAGES.get("worksheet-" + lesson.id() + ".html")
                    .replaceAll("<[^>]*>", "")
                    .replace('\u00a0', ' ');
            assertTrue(
                    Pattern.compile("(The gauge|The water) starts at \\d")
                            .matcher(sheet)
                            .find(),
                    lesson.id());
        }
        String size =
                PAGES.get("worksheet-the-size.html").replaceAll("<[^>]*>", "").replace('\u00a0', ' ');
        assertTrue(
                size.contains("The gauge starts at 4.2 bar (61 psi). The relief valve is set to 7 bar (102 psi)."),
                size);
    }

    /** Validation: WCAG 2.1, success criteria 1.4.3 and 1.4.11 (AA): text 4.5 to 1, what shows a control or a curve 3 to 1. */
    @Test
    void everythingCanBeReadOnItsBackground() {
        String css = Course.resource("lessons.css");
        assertFalse(css.contains("url(") || css.contains("@import") || css.contains("http"));
        Set<String> backgrounds = StyleColours.of(css, "background");
        Set<String> texts = StyleColours.of(css, "(?<![-\\w])(?:color|fill)");
        assertTrue(texts.contains("#4c5b63") && backgrounds.contains("#f4f8f8"), texts + " on " + backgrounds);
        for (String text : texts) {
            for (String background : backgrounds) {
                boolean inverse = text.equals("#ffffff") || background.equals("#0f4a4f");
                // White is written on the dark bar only; a circle filled white is told by its edge.
                double contrast = contrast(text, inverse ? text.equals("#ffffff") ? "#0f4a4f" : "#ffffff" : background);
                assertTrue(contrast >= 4.5, text + " on " + background);
            }
        }
        for (String line : StyleColours.of(css, "stroke")) {
            // The lines of the grid only guide the eye.
            assertTrue(line.equals("#d5dcdf") || contrast(line, "#ffffff") >= 3, line);
        }
    }

    @Test
    void sizePrechargeAndSupplyCanBeMoved() {
        Set<String> fields = new HashSet<>();
        Lessons.all().forEach(lesson -> lesson.slider().ifPresent(slider -> fields.addAll(slider.fields())));
        assertTrue(
                fields.containsAll(Set.of("vessel.volume", "vessel.precharge", "supply.pressure")), fields.toString());
    }

    @Test
    void whatALessonSaysIsShownAsItIs(@TempDir Path other) throws Exception {
        Lesson hostile = lesson(HOSTILE, true);
        ResultFolder.at(other).write(Lessons.pages(List.of(hostile), UnitSystem.US));
        String page = Files.readString(other.resolve("hostile.html"));
        assertSound("hostile.html", page);
        assertFalse(page.contains("<script>"));
        Document tree = parsed(page);
        assertEquals(HOSTILE, tree.getElementsByTagName("h1").item(0).getTextContent());
    }

    @Test
    void aLessonWhoseRunDoesNotShowItIsRefused() {
        String message = assertThrows(
                        IllegalStateException.class,
                        () -> Lessons.pages(List.of(lesson("A title", false)), UnitSystem.SI))
                .getMessage();
        assertEquals("the run of lesson 'hostile' does not show what it should: It drips.", message);
    }

    private static Lesson lesson(String text, boolean holds) {
        String quoted = '"' + text.replace("\"", "\\\"") + '"';
        String yaml = LessonReaderTest.GOOD
                .replace("check: opened(lodge)", holds ? "check: opened(lodge)" : "check: '!opened(lodge)'")
                .replaceAll("TEXT", Matcher.quoteReplacement(quoted));
        return Course.of(Map.of("hostile", yaml)).lessons().get(0);
    }

    private static void assertSound(String name, String text) throws Exception {
        Document page = parsed(text);
        assertEquals(1, page.getElementsByTagName("h1").getLength(), name);
        assertEquals(1, page.getElementsByTagName("main").getLength(), name);
        Set<String> ids = new HashSet<>();
        int level = 1;
        NodeList elements = page.getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            Element element = (Element) elements.item(i);
            String tag = element.getTagName();
            if (tag.matches("h[1-6]")) {
                int next = tag.charAt(1) - '0';
                assertTrue(next <= level + 1, name + ": " + tag + " after h" + level);
                level = next;
            }
            if (tag.equals("svg")) {
                assertFalse(element.getAttribute("aria-label").isBlank(), name);
            }
            if (tag.equals("th")) {
                assertFalse(element.getAttribute("scope").isBlank(), name);
            }
            for (int j = 0; j < element.getAttributes().getLength(); j++) {
                String attribute = element.getAttributes().item(j).getNodeName();
                String value = element.getAttributes().item(j).getNodeValue();
                assertFalse(attribute.startsWith("on"), name + ": " + attribute);
                assertFalse(attribute.matches("src|href") && value.contains(":"), name + ": " + value);
            }
            if (tag.equals("input")) {
                boolean inside = element.getParentNode().getNodeName().equals("label");
                assertTrue(inside || text.contains("for=\"" + element.getAttribute("id") + "\""), name);
            }
            String named = element.getAttribute("aria-labelledby") + element.getAttribute("for");
            assertTrue(named.isEmpty() || text.contains(" id=\"" + named + "\""), name + ": " + named);
            String id = element.getAttribute("id");
            assertTrue(id.isEmpty() || ids.add(id), name + ": " + id + " is there twice");
        }
    }

    private static Document parsed(String page) throws Exception {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setErrorHandler(null);
        return builder.parse(new InputSource(new StringReader(page)));
    }
}
