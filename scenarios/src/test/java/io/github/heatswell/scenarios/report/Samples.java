package io.github.heatswell.scenarios.report;

import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** Reports with every section filled. Their numbers are invented and mean nothing. */
final class Samples {

    /** Texts that a page could trip over. */
    static final List<String> HOSTILE = List.of(
            "<script>document.title='taken'</script>",
            "</title><img src=x onerror=alert(1)>",
            "\"><svg onload=alert(1)> & ' \" `",
            "]]> <!-- --> <![CDATA[ &amp; &#x3c;",
            "W".repeat(200) + " " + "ö".repeat(100),
            "WWWWWWWWWW MMMMMMMMMM ",
            "WWWWWWWWWWW MMMMMMMMMMM ",
            "\u202eright to left \u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627 \u2066unclosed",
            "\ud83d\udca7\ud83d\udd25\ud83d\udc69\u200d\ud83d\udd27 h\u0332e\u0301a\u0308t \ud800 lone",
            "\u0000\u0007\u009f\ufffe",
            "plain ".repeat(166) + "1000");

    private static final String PICTURE = """
            <?xml version="1.0"?>
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 760 300" aria-describedby="d"><title>t</title>
            <desc id="d">words</desc><defs><clipPath id="c"><path d="M0 0 L760 0 L760 300 L0 300 Z"/></clipPath></defs>
            <g clip-path="url(#c)"><rect width="760" height="300" fill="white"/><text x="9" y="40">A picture</text></g></svg>
            """;

    private Samples() {}

    /** A report in which every text of the user's is the one given. */
    static Document saying(String text) {
        return full(text, UnitSystem.SI);
    }

    /** A report of ordinary texts. */
    static Document ordinary(UnitSystem units) {
        return full("A house on a hill", units);
    }

    private static Document full(String text, UnitSystem units) {
        QuantityFormat shown = CommandResult.onPage(units);
        Block.Picture picture = new Block.Picture(out -> out.append(PICTURE), text, text);
        Grid few = new Grid("Few columns", List.of("What", "Value"), List.of(List.of(text, "1"), List.of("b", text)));
        Grid many = new Grid(
                "Many columns",
                List.of("What", "One", "Two", "Three", "Four"),
                List.of(List.of(text, "1", text, "3", "4")));
        return Document.of(
                text,
                text,
                List.of(new AlarmNote("HAZARD in " + text, text), new AlarmNote("WARNING", "A limit is passed.")),
                List.of(
                        Document.answer(text, "The valve named " + text + " opens.", List.of(text)),
                        Document.pictures(List.of(picture, picture), List.of(few, many)),
                        new Check(List.of("Read the gauge."), readings(text), List.of(text), Optional.empty())
                                .section(shown)
                                .orElseThrow(),
                        FitterPaper.general().section(shown),
                        new Document.Section("Findings", findings(text)).inAppendix(),
                        new Document.Section("Sizes, alternatives and cost", options(text, many)).inAppendix(),
                        new Document.Section(
                                        "Inputs and assumptions",
                                        List.of(few, new Block.Items(List.of(text), Block.ListKind.QUOTED_BULLETS)))
                                .inAppendix(),
                        new Document.Section(
                                        "How the numbers were made",
                                        List.of(few, new Block.Folded("more of the same", List.of(many))))
                                .inAppendix()),
                shown);
    }

    private static List<Block> findings(String text) {
        return List.of(
                new Block.FoundRule(
                        "serious",
                        text,
                        text,
                        List.of(new Block.FoundRule.Entry("Found", text), new Block.FoundRule.Entry("Source", text))),
                new Block.FoundRule("hint", "Short.", "", List.of(new Block.FoundRule.Entry("Limit", ""))));
    }

    private static List<Check.Reading> readings(String text) {
        return List.of(
                reading("cold, nothing drawn", 4.2e5, "before the heater comes on"),
                reading("after a draw of a bucket", 4.2e5, text),
                reading("15 min after the heater came on", 7e5, ""),
                reading("30 min after the heater came on", 5.6e5, ""),
                reading("the highest reading", 7e5, "the second hand shows it"));
    }

    private static Check.Reading reading(String when, double gauge, String note) {
        return new Check.Reading(CheckSheet.Reading.Kind.PEAK, when, gauge, gauge - 0.2e5, gauge + 0.1e5, note);
    }

    private static List<Block> options(String text, Grid sizes) {
        return List.of(
                sizes,
                new Block.Subheading("Formulas"),
                new Block.Formula("Handbook", "V = dV / (1 - P1/P2)", " gives 9.4 L."),
                new Block.Paragraph(text, Block.Tone.PLAIN),
                new Block.Paragraph("Source: " + text, Block.Tone.QUIET));
    }
}
