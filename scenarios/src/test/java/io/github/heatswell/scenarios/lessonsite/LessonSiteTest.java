package io.github.heatswell.scenarios.lessonsite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.finding.Statement;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.lesson.Formula;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonBuilder;
import io.github.heatswell.scenarios.lesson.LessonCase;
import io.github.heatswell.scenarios.lesson.Lessons;
import io.github.heatswell.scenarios.lesson.TryIt;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.source.Source;
import io.github.heatswell.units.UnitSystem;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
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
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The site is sound, complete and small, whatever a lesson says. */
class LessonSiteTest {

    private static final long LARGEST = 5_000_000;
    private static final String HOSTILE = "<script>alert('x')</script> \"quoted\" & </title> \u202e";

    @TempDir
    private static Path site;

    private static final TreeMap<String, String> PAGES = new TreeMap<>();

    @BeforeAll
    static void write() throws Exception {
        ResultFolder.at(site).write(LessonSite.files(Lessons.all(), UnitSystem.SI));
        try (Stream<Path> files = Files.list(site)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".html")).toList()) {
                PAGES.put(file.getFileName().toString(), Files.readString(file));
            }
        }
    }

    @Test
    void everyLessonHasItsPageItsWorksheetAndItsFile() throws Exception {
        assertEquals(2 + 2 * Lessons.all().size(), PAGES.size());
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

    @Test
    void everyLinkLeadsToAFileOfTheSite() {
        Pattern link = Pattern.compile("(?:href|src)=\"([^\"]+)\"");
        for (String name : PAGES.keySet()) {
            Matcher links = link.matcher(PAGES.get(name));
            while (links.find()) {
                assertTrue(Files.exists(site.resolve(links.group(1))), name + " leads to " + links.group(1));
            }
        }
    }

    @Test
    void sizePrechargeAndSupplyCanBeMoved() {
        Set<String> fields = new HashSet<>();
        Lessons.all().forEach(lesson -> lesson.slider().ifPresent(slider -> fields.add(slider.field())));
        assertTrue(
                fields.containsAll(Set.of("vessel.volume", "vessel.precharge", "supply.pressure")), fields.toString());
    }

    @Test
    void whatALessonSaysIsShownAsItIs(@TempDir Path other) throws Exception {
        Lesson hostile = lesson(HOSTILE, true);
        ResultFolder.at(other).write(LessonSite.files(List.of(hostile), UnitSystem.US));
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
                        () -> LessonSite.files(List.of(lesson("Title", false)), UnitSystem.SI))
                .getMessage();
        assertEquals("the run of lesson 'hostile' does not show what it should: it does", message);
    }

    private static Lesson lesson(String text, boolean holds) {
        Source source = new Source(text, Source.Standing.FROM_MEMORY);
        LessonBuilder builder = Lesson.builder("hostile", text)
                .question(text)
                .prediction(text, List.of(text, "No."), run -> 1)
                .compare(LessonCase.bundled(text, "orchard-lodge"))
                .notice(run -> List.of(Statement.of(text)))
                .why(text)
                .formula(Formula.of("p = " + text, source, "p", text))
                .tryIt(TryIt.of("orchard-lodge", text, run -> true, "vessel=none"))
                .check(text, text)
                .sources(source)
                .caution(text)
                .expect("it does", run -> holds);
        return builder.build();
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
