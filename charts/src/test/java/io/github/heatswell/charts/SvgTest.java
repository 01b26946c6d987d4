package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.ChartTheme;
import org.jfree.chart.StandardChartTheme;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SvgTest {

    @Test
    void isWellFormedInEverySituation() throws Exception {
        for (UnitSystem units : UnitSystem.values()) {
            for (Map.Entry<String, Chart> chart : Gallery.charts(units).entrySet()) {
                Element root = parse(svg(chart.getValue())).getDocumentElement();
                assertEquals("svg", root.getLocalName(), chart.getKey());
                assertEquals("img", root.getAttribute("role"));
                assertTrue(root.getAttribute("viewBox").startsWith("0 0 1040 "), root.getAttribute("viewBox"));
                assertTrue(root.getAttribute("width").isEmpty(), "it scales to its room");
                assertFalse(root.getAttribute("aria-label").isBlank());
            }
        }
    }

    @Test
    void keepsWordsAsWords() throws Exception {
        String text = words(parse(svg(Chart.of(Gallery.dripping(), UnitSystem.SI))));
        for (String expected : List.of(
                "The relief valve opens after 6 min 1 s and discharges 2.72 L",
                "190 L tank",
                "gauge pressure (bar)",
                "mean water temperature (°C)",
                "time since the start (min)",
                "7 bar",
                "relief opens",
                "opens after 6 min 1 s",
                "burner on for 1 h 14 min")) {
            assertTrue(text.contains(expected), () -> expected + " is not in " + text);
        }
    }

    @Test
    void tellsTheHazardFirst() throws Exception {
        Document document = parse(svg(Chart.of(Gallery.bursting(), UnitSystem.SI)));
        assertTrue(document.getDocumentElement().getAttribute("aria-label").startsWith("Hazard: "));
        assertTrue(
                document.getElementsByTagName("title").item(0).getTextContent().startsWith("Hazard: "));
        assertTrue(
                document.getElementsByTagName("text").item(0).getTextContent().startsWith("Hazard: "));
    }

    @Test
    void isTheSameEachTime() throws IOException {
        assertEquals(svg(Chart.of(Gallery.popping(), UnitSystem.SI)), svg(Chart.of(Gallery.popping(), UnitSystem.SI)));
    }

    @Test
    void sharesNoIdsWithAnotherPicture() throws Exception {
        Set<String> first = ids(parse(svg(Chart.of(Gallery.dripping(), UnitSystem.SI))));
        Set<String> second = ids(parse(svg(Chart.of(Gallery.dripping(), UnitSystem.US))));
        assertFalse(first.isEmpty());
        Set<String> shared = new HashSet<>(first);
        shared.retainAll(second);
        assertEquals(Set.of(), shared);
        String prefix = first.iterator().next().substring(0, 11);
        assertTrue(prefix.matches("hs[0-9a-f]{8}-"), prefix);
        assertTrue(first.stream().allMatch(id -> id.startsWith(prefix)));
    }

    @Test
    void standsInsideAPage() throws IOException {
        String svg = svg(Chart.of(Gallery.dripping(), UnitSystem.SI));
        assertTrue(svg.startsWith("<svg "), "no declarations before the element");
        assertFalse(svg.contains("<!DOCTYPE") || svg.contains("<!--"));
        assertTrue(svg.contains("sans-serif"));
        assertTrue(svg.endsWith(">\n"));
    }

    @Test
    void bearsAnyName() throws Exception {
        String name = "<b>&\"'\uD83D\uDE00]]>";
        String hostile = name + "\u0001 \uD800";
        RunResult result = Handmade.run(
                        Plants.bare()
                                .addReliefValve(Plants.valve(name, 7, 6, LiftCharacteristic.SNAP))
                                .addReliefValve(Plants.valve("x".repeat(60), 8, 6, LiftCharacteristic.SNAP))
                                .build(),
                        60,
                        4.2,
                        7)
                .event(60, Event.Kind.RELIEF_OPENED, name, 7)
                .result();
        String text = words(parse(svg(Chart.of(result, UnitSystem.SI))));
        assertTrue(text.contains("<b>&\"'"), "markup is only text");
        parse(svg(Chart.comparing(
                List.of(new NamedRun(hostile, result), new NamedRun("y".repeat(300), result)), UnitSystem.SI)));
    }

    @Test
    void doesNotDependOnAThemeSetElsewhere() throws IOException {
        String before = svg(Chart.of(Gallery.calm(), UnitSystem.SI));
        ChartTheme theme = ChartFactory.getChartTheme();
        try {
            ChartFactory.setChartTheme(StandardChartTheme.createDarknessTheme());
            assertEquals(before, svg(Chart.of(Gallery.calm(), UnitSystem.SI)));
        } finally {
            ChartFactory.setChartTheme(theme);
        }
    }

    @Test
    void staysSmallForALongRun() throws IOException {
        String week = svg(Chart.of(Gallery.week(), UnitSystem.SI));
        assertNotEquals(0, week.length());
        assertTrue(week.length() < 400_000, week.length() + " characters");
    }

    private static String svg(Chart chart) throws IOException {
        StringBuilder out = new StringBuilder();
        chart.writeSvg(out);
        return out.toString();
    }

    private static Document parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static String words(Document document) {
        StringBuilder words = new StringBuilder();
        NodeList texts = document.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            words.append(texts.item(i).getTextContent()).append('\n');
        }
        return words.toString();
    }

    private static Set<String> ids(Document document) {
        Set<String> ids = new HashSet<>();
        NodeList elements = document.getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            String id = ((Element) elements.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                assertTrue(ids.add(id), "twice: " + id);
            }
        }
        return ids;
    }
}
