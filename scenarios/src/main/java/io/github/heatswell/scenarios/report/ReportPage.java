package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;
import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A report as one HTML file that needs nothing but itself: for paper in A4 and US Letter, and for a phone. Hazards come
 * first, then the answer, and the working last.
 */
public final class ReportPage {

    private static final List<Section> SECTIONS = List.of(
            HazardsSection::write,
            AnswerSection::write,
            PictureSection::write,
            CheckSheetSection::write,
            CommissioningSection::write,
            FindingsSection::write,
            OptionsSection::write,
            BasisSection::write,
            MethodSection::write);

    private ReportPage() {}

    /** A part of the page. It writes nothing if there is nothing to say. */
    @FunctionalInterface
    interface Section {
        /** Writes the part. */
        void write(Html html, ReportContent content, QuantityFormat shown);
    }

    /**
     * Writes a report. Every text in it is shown as it is, whatever it holds.
     *
     * @param content what it says
     * @param out takes the characters; stays open
     * @throws IOException if writing fails
     * @throws IllegalArgumentException if a picture is not one SVG element without scripts, style sheets and references to
     *     the outside
     */
    public static void write(ReportContent content, Appendable out) throws IOException {
        Objects.requireNonNull(out, "out");
        out.append(page(content));
    }

    private static String page(ReportContent content) {
        QuantityFormat shown = QuantityFormat.printed(content.units()).inBoth();
        Html html = new Html();
        html.open("html", "lang", "en");
        head(html, content.heading());
        html.open("body").open("main");
        title(html, content.heading());
        SECTIONS.forEach(section -> section.write(html, content, shown));
        html.closeLine();
        html.closeLine();
        return html.closeLine().end();
    }

    private static void head(Html html, Heading heading) {
        html.open("head");
        html.empty("meta", "charset", "utf-8");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light");
        html.leaf("title", heading.title() + " – pressure report");
        html.style().closeLine();
    }

    private static void title(Html html, Heading heading) {
        html.open("header");
        html.leaf("h1", heading.title(), "dir", "auto");
        String date = heading.date()
                .map(DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH)::format)
                .orElse("");
        String line = heading.scenario() + (heading.scenario().isEmpty() || date.isEmpty() ? "" : ", ") + date;
        if (!line.isEmpty()) {
            html.leaf("p", line, "class", "quiet", "dir", "auto");
        }
        html.closeLine();
    }
}
