package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What every report must be: closed, harmless, and readable for everyone. */
class HtmlPageTest {

    private static final Set<String> ELEMENTS = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "body",
            "main",
            "header",
            "section",
            "h1",
            "h2",
            "h3",
            "h4",
            "p",
            "ul",
            "ol",
            "li",
            "div",
            "span",
            "strong",
            "bdi",
            "code",
            "dl",
            "dt",
            "dd",
            "figure",
            "figcaption",
            "table",
            "caption",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "label",
            "input",
            "svg",
            "desc",
            "defs",
            "g",
            "clipPath",
            "path",
            "rect",
            "line",
            "polyline",
            "polygon",
            "circle",
            "ellipse",
            "text",
            "tspan",
            "details",
            "summary",
            "pattern");

    /** A field of a scenario file. */
    static final Pattern FIELD = Pattern.compile(
            "\\b(site|supply|tank|heater|relief|vessel|vessels|piping|draws|run)(\\[\\d+])?\\.[a-z][a-z-]+");

    @TempDir
    Path folder;

    @Test
    void whateverTheTextsHoldThePageStaysWhole() throws Exception {
        String ordinary = skeleton(Pages.text(Samples.ordinary(UnitSystem.SI)));
        for (String text : Samples.HOSTILE) {
            String page = Pages.text(Samples.saying(text));
            assertSound(page);
            assertEquals(ordinary, skeleton(page), text);
        }
    }

    @Test
    void whatIsWrittenIsWhatWasSaid() throws Exception {
        for (String text : Samples.HOSTILE) {
            Document page = Pages.parsed(Pages.text(Samples.saying(text)));
            String shown =
                    text.replaceAll("[\\x00\\x07\\x7f-\\x9f\\ufffe]", "\ufffd").replace("\ud800 ", "\ufffd ");
            assertEquals(shown, Pages.elements(page, "h1").get(0).getTextContent());
            assertTrue(Pages.elements(page, "bdi").stream()
                    .allMatch(element -> element.getTextContent().equals(shown)));
        }
    }

    @Test
    void reportsOfRunsAndComparisonsAreSound() throws Exception {
        for (String name : List.of("orchard-lodge", "quarry-row", "kiln-house-blocked", "orchard-lodge-vessel")) {
            assertSound(Pages.ofRun(name, UnitSystem.SI, folder));
        }
        assertSound(Pages.ofRun("ridge-house", UnitSystem.US, folder));
        assertSound(Pages.ofRun("heron-hill-year", UnitSystem.US, folder));
        assertSound(Pages.ofComparison(List.of("orchard-lodge", "orchard-lodge-vessel", "quarry-row"), folder));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void sectionsComeInTheirOrder(UnitSystem units) throws Exception {
        Document page = Pages.parsed(Pages.text(Samples.ordinary(units)));
        assertEquals(
                List.of(
                        "Hazards and limits exceeded",
                        "The answer",
                        "Cautions",
                        "The picture",
                        "What the gauge should read, and when",
                        units.spelled("For the fitter: the expansion vessel"),
                        "Appendix: what the answer rests on"),
                Pages.elements(page, "h2").stream().map(Element::getTextContent).toList());
        assertEquals(
                List.of(
                        "Findings",
                        "Sizes, alternatives and cost",
                        "Inputs and assumptions",
                        "How the numbers were made"),
                Pages.elements(page, "section").stream()
                        .filter(section -> section.getAttribute("class").equals("paper appendix"))
                        .flatMap(appendix -> Pages.elements(page, "h3").stream()
                                .filter(head -> head.getParentNode().getParentNode() == appendix))
                        .map(Element::getTextContent)
                        .toList());
    }

    /** A doubt about the figures is neither a hazard nor a limit passed, and follows those. */
    @Test
    void whatIsNotToBeReliedOnStandsUnderItsOwnHeading() throws Exception {
        io.github.heatswell.scenarios.report.Document ordinary = Samples.ordinary(UnitSystem.SI);
        List<AlarmNote> alarms = new ArrayList<>(List.of(new AlarmNote("NOT RELIABLE in one", "It does not close.")));
        alarms.addAll(ordinary.alarms());
        Document page = Pages.parsed(Pages.text(io.github.heatswell.scenarios.report.Document.of(
                ordinary.title(), "", alarms, ordinary.sections(), CommandResult.onPage(UnitSystem.SI))));
        List<String> heads =
                Pages.elements(page, "h2").stream().map(Element::getTextContent).toList();
        assertEquals(List.of("Hazards and limits exceeded", "Not to be relied on", "The answer"), heads.subList(0, 3));
        Element doubts = Pages.elements(page, "section").get(1);
        assertTrue(doubts.getTextContent().contains("NOT RELIABLE in one It does not close."), doubts.getTextContent());
    }

    @Test
    void whatIsNotGivenIsLeftOutButTheCautionsAreNot() throws Exception {
        QuantityFormat shown = CommandResult.onPage(UnitSystem.SI);
        var empty = new io.github.heatswell.scenarios.report.Document.Section("Nothing to say", List.of());
        String text = Pages.text(
                io.github.heatswell.scenarios.report.Document.of("Bare", "", List.of(), List.of(empty), shown));
        assertSound(text);
        assertEquals(1, Pages.elements(Pages.parsed(text), "h2").size());
        assertTrue(text.contains("found no hazard"));
        assertTrue(text.contains("Never plug, cap or downsize a relief valve"));
    }

    @Test
    void alarmsComeBeforeEverythingElse() throws Exception {
        String page = Pages.ofRun("quarry-row", UnitSystem.SI, folder);
        int alarm = page.indexOf("<strong>HAZARD</strong> After 27");
        assertTrue(alarm > 0 && alarm < page.indexOf("<strong>WARNING</strong> Working pressure exceeded"));
        assertTrue(page.indexOf("WARNING") < page.indexOf("<li>Hot water scalds."));
        assertTrue(page.contains("reaches 16\u00a0bar. A tank"));
        assertFalse(page.contains("found no hazard"));
    }

    @Test
    void onlyTheOwnersUnitsAreShown() throws Exception {
        assertTrue(Pages.ofRun("orchard-lodge", UnitSystem.SI, folder).contains("discharges 3.14\u00a0L."));
        assertTrue(Pages.ofRun("orchard-lodge", UnitSystem.US, folder).contains("discharges 0.83\u00a0gal."));
        String page = Pages.text(Samples.ordinary(UnitSystem.US));
        assertTrue(page.contains("agrees: 58 to 62\u00a0psi"), page);
    }

    private static void assertSound(String text) throws Exception {
        assertTrue(text.startsWith("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\" />"));
        Document page = Pages.parsed(text);
        assertEquals(1, Pages.elements(page, "h1").size());
        assertEquals(1, Pages.elements(page, "main").size());
        assertFalse(Pages.elements(page, "title").get(0).getTextContent().isBlank());
        Set<String> ids = new HashSet<>();
        for (Element element : Pages.elements(page, "*")) {
            assertTrue(ELEMENTS.contains(element.getTagName()), element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                attribute((Attr) element.getAttributes().item(i), ids);
            }
        }
        String body = Pages.elements(page, "main").get(0).getTextContent();
        Matcher path = FIELD.matcher(body);
        assertFalse(path.find(), () -> "a field where a person reads words: " + path.group());
        references(page, ids);
        headings(page);
        tables(page);
        names(page);
    }

    private static void attribute(Attr attribute, Set<String> ids) {
        String name = attribute.getName();
        assertFalse(name.startsWith("on") || name.endsWith("href") || name.equals("src") || name.equals("style"), name);
        assertTrue(
                name.startsWith("xmlns")
                        || name.startsWith("aria-")
                        || !attribute.getValue().matches("(?s).*(https?:|//|data:|javascript:).*"),
                attribute.toString());
        if (name.equals("id")) {
            assertTrue(ids.add(attribute.getValue()), "twice: " + attribute);
        }
    }

    /** What refers to an id finds it. */
    private static void references(Document page, Set<String> ids) {
        for (Element element : Pages.elements(page, "*")) {
            String described = element.getAttribute("aria-describedby");
            assertTrue(described.isEmpty() || ids.contains(described), described);
            String clip = element.getAttribute("clip-path");
            assertTrue(clip.isEmpty() || ids.contains(clip.replaceAll("url\\(#|\\)", "")), clip);
        }
    }

    /** No level of headings is skipped. */
    private static void headings(Document page) {
        int before = 0;
        for (Element element : Pages.elements(page, "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int level = element.getTagName().charAt(1) - '0';
                assertTrue(level <= before + 1, element.getTextContent());
                before = level;
            }
        }
    }

    private static void tables(Document page) {
        for (Element table : Pages.elements(page, "table")) {
            assertEquals("caption", table.getFirstChild().getNodeName());
        }
        for (Element head : Pages.elements(page, "th")) {
            boolean column = head.getParentNode().getParentNode().getNodeName().equals("thead");
            assertEquals(column ? "col" : "row", head.getAttribute("scope"));
        }
    }

    /** Whatever takes input or shows something has a name. */
    private static void names(Document page) {
        for (Element input : Pages.elements(page, "input")) {
            boolean labelled = input.getParentNode().getNodeName().equals("label");
            assertTrue(labelled || !input.getAttribute("aria-label").isBlank());
        }
        for (Element picture : Pages.elements(page, "svg")) {
            assertEquals("img", picture.getAttribute("role"));
            assertFalse(picture.getAttribute("aria-label").isBlank());
        }
        for (Element region : Pages.elements(page, "div")) {
            assertEquals(region.getAttribute("class").equals("scroll"), region.hasAttribute("aria-label"));
        }
    }

    /** The elements of a page without their texts. Captions and notes depend on no text of the user's. */
    private static String skeleton(String text) throws Exception {
        StringBuilder names = new StringBuilder();
        Pages.elements(Pages.parsed(text), "*")
                .forEach(element -> names.append(element.getTagName()).append(' '));
        return names.toString();
    }
}
