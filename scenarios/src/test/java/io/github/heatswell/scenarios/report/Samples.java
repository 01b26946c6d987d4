package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
    static ReportContent saying(String text) {
        return full(text, UnitSystem.SI);
    }

    /** A report of ordinary texts. */
    static ReportContent ordinary(UnitSystem units) {
        return full("A house on a hill", units);
    }

    private static ReportContent full(String text, UnitSystem units) {
        Heading heading = new Heading(text, text, text, text, Optional.of(LocalDate.of(2026, 11, 25)));
        Illustration picture = new Illustration(PICTURE, text, text);
        return ReportContent.builder(heading, units)
                .alarms(List.of(
                        new AlarmNote("HAZARD in " + text, text), new AlarmNote("WARNING", "A limit is passed.")))
                .answer(new Answer("The valve named " + text + " opens.", List.of(text)))
                .pictures(List.of(picture, picture))
                .figures(List.of(
                        new Grid(
                                "Few columns",
                                List.of("What", "Value"),
                                List.of(List.of(text, "1"), List.of("b", text))),
                        new Grid(
                                "Many columns",
                                List.of("What", "One", "Two", "Three", "Four"),
                                List.of(List.of(text, "1", text, "3", "4")))))
                .check(new Check(List.of("Read the gauge."), readings(text), List.of(text)))
                .commissioning(true)
                .findings(List.of(
                        new FindingNote("serious", text, text, text, text, text, text, text),
                        new FindingNote("hint", "Short.", "", "", "", "", "", "")))
                .options(options(text))
                .basis(new Basis(
                        List.of(new AssumedValue(text, text, text)),
                        List.of(text),
                        List.of(new UncertainInput(text, text, text))))
                .methods(List.of(new MethodNote(text, text)))
                .build();
    }

    private static List<Reading> readings(String text) {
        return List.of(
                reading("cold, nothing drawn", 4.2e5, "before the heater comes on"),
                reading("after a draw of a bucket", 4.2e5, text),
                reading("15 min after the heater came on", 7e5, ""),
                reading("30 min after the heater came on", 5.6e5, ""),
                reading("the highest reading", 7e5, "the second hand shows it"),
                new Reading(
                        "next morning", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), ""));
    }

    private static Reading reading(String when, double gauge, String note) {
        return new Reading(
                when,
                OptionalDouble.of(gauge),
                OptionalDouble.of(gauge - 0.2e5),
                OptionalDouble.of(gauge + 0.1e5),
                note);
    }

    private static Options options(String text) {
        return new Options(
                List.of(
                        new SizeRow(0.002, 4.2e5, 16e5, -9e5, true, "no", ""),
                        new SizeRow(0.008, 4.2e5, 6.6e5, -0.1e5, false, "no", ""),
                        new SizeRow(0.012, 4.2e5, 6.02e5, 0.48e5, false, "yes", "60 EUR")),
                List.of(new FormulaNote(
                        "Handbook",
                        "V = dV / (1 - P1/P2)",
                        OptionalDouble.of(0.0094),
                        List.of(new FormulaNote.Input("dV", "3.8 L", text, "given")),
                        text,
                        "read",
                        List.of(new FormulaNote.Effect("give of the tank", -0.0004)),
                        text)),
                List.of(new Cost("as it is", 0.836, "4.20 EUR", text), new Cost(text, 0, "", text)));
    }
}
