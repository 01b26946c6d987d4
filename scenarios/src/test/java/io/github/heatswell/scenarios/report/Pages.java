package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.outlook.HouseOutlook;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.variation.Combinations.Variant;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Makes reports for tests, and reads them. */
final class Pages {

    private Pages() {}

    static String text(io.github.heatswell.scenarios.report.Document content) throws IOException {
        StringBuilder text = new StringBuilder();
        HtmlPage.write(content, text);
        return text.toString();
    }

    /** The parts of a section that a page shows. */
    static List<Block> onPage(io.github.heatswell.scenarios.report.Document.Section section) {
        return section.blocks().stream()
                .flatMap(block -> block instanceof Block.Either either ? either.page().stream() : Stream.of(block))
                .toList();
    }

    /** What the screen shows of a run, without the runs its page adds. */
    static Report onScreen(Scenario scenario, RunResult run, UnitSystem units) {
        Advice none = new Advice(
                new Check(List.of(), List.of(), List.of(), Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                Balances.NONE);
        Results report = new Results(scenario, RunFindings.of(run), none, Chart.of(run, units));
        return Report.of(report.content(CommandResult.onScreen(units)), Balances.of(run.summary()));
    }

    /** The report of a run, as the program writes it. */
    static String ofRun(String name, UnitSystem units, Path folder) throws IOException {
        Scenario scenario = Catalogue.read(name);
        Path place = folder.resolve(name + units);
        ResultFolder.at(place).write(Results.of(scenario, scenario.simulation().run(), units));
        return Files.readString(place.resolve("report.html"));
    }

    /** The report of a comparison, as the program writes it. */
    static String ofComparison(List<String> names, Path folder) throws IOException {
        List<Variant> variants = names.stream()
                .map(name -> new Variant(name, name, List.of(), Catalogue.read(name)))
                .toList();
        Path place = folder.resolve("comparison");
        ResultFolder.at(place)
                .write(ComparisonReport.answer(List.of(), VariantRuns.of(variants, 2), UnitSystem.SI)
                        .files());
        return Files.readString(place.resolve("report.html"));
    }

    /** The report of an outlook, as the program writes it. */
    static String ofOutlook(String name, UnitSystem units, Path folder) throws IOException {
        OutlookAnswer answer = HouseOutlook.of(Catalogue.read(name))
                .sampled(study -> study.samples(16))
                .build()
                .answer();
        Path place = folder.resolve(name + "-outlook-" + units);
        ResultFolder.at(place).write(OutlookReport.answer(answer, units).files());
        return Files.readString(place.resolve("report.html"));
    }

    /** The report of a diagnosis, as the program writes it. */
    static String ofDiagnosis(DiagnosisAnswer answer, UnitSystem units, Path folder) throws IOException {
        Path place = folder.resolve("diagnosis-" + units);
        ResultFolder.at(place).write(DiagnosisReport.answer(answer, units).files());
        return Files.readString(place.resolve("report.html"));
    }

    /** The page as a tree. It is well-formed XML, so every element is closed and every character allowed. */
    static Document parsed(String page) throws Exception {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setErrorHandler(null);
        return builder.parse(new InputSource(new StringReader(page)));
    }

    static List<Element> elements(Document page, String name) {
        NodeList nodes = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }
}
