package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.report.Block.Grid;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A document as one HTML file that stands alone: for paper in A4 and US Letter, and for a phone.
 */
final class HtmlPage implements Block.Renderer {

    /** A table of more columns than this may be wider than a phone and then scrolls in its own box. */
    private static final int FEW_COLUMNS = 3;

    /** A table of no more rows and characters than this stays on one sheet of paper. */
    private static final int FEW_ROWS = 14;

    private static final int FEW_CHARACTERS = 500;

    /** A word longer than this may be broken anywhere. */
    private static final int LONG_WORD = 10;

    private final Html html = new Html();
    private final Document document;
    private int pictures;

    /** Of headings inside a section. */
    private String heading = "h3";

    /** What is folded on the page. */
    private final Set<String> folded = new LinkedHashSet<>();

    /** The words of the units that stand first. */
    private final UnaryOperator<String> words;

    private HtmlPage(Document document) {
        this.document = document;
        this.words = document.units()::spelled;
    }

    /**
     * Writes a document. Every text in it is shown as it is, whatever it holds.
     *
     * @param document what it says
     * @param out takes the characters; stays open
     * @throws IOException if writing fails
     * @throws IllegalArgumentException if a picture is not one SVG element without scripts, style sheets and references to
     *     the outside
     */
    static void write(Document document, Appendable out) throws IOException {
        out.append(new HtmlPage(document).page());
    }

    private String page() throws IOException {
        try {
            return written();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private String written() {
        html.open("html", "lang", "en");
        head();
        html.open("body").open("main").open("header");
        html.leaf("h1", document.title(), "dir", "auto");
        if (!document.names().isEmpty()) {
            html.leaf("p", document.names(), "class", "quiet", "dir", "auto");
        }
        html.closeLine();
        alarms();
        List<Document.Section> sections =
                document.sections().stream().filter(Document.Section::isOnPage).toList();
        sections.stream().limit(1).forEach(this::section);
        cautions();
        sections.stream().skip(1).filter(section -> !inAppendix(section)).forEach(this::section);
        appendix(sections.stream().skip(1).filter(HtmlPage::inAppendix).toList());
        html.closeLine();
        html.closeLine();
        return html.closeLine().end();
    }

    private static boolean inAppendix(Document.Section section) {
        return section.form() == Document.Form.APPENDIX;
    }

    private void head() {
        html.open("head");
        html.empty("meta", "charset", "utf-8");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light");
        html.leaf("title", document.title() + " – Heatswell");
        html.style(document.place()
                        .customs()
                        .map(customs -> "@page { size: " + customs.paper() + "; }\n")
                        .orElse(""))
                .closeLine();
    }

    /** What may hurt somebody stands before the answer; what is always to be minded, after it. */
    private void alarms() {
        alarms(
                "Hazards and limits exceeded",
                document.alarms().stream().filter(alarm -> !alarm.isDoubt()).toList());
        alarms(
                "Not to be relied on",
                document.alarms().stream().filter(AlarmNote::isDoubt).toList());
    }

    private void alarms(String title, List<AlarmNote> alarms) {
        if (!alarms.isEmpty()) {
            html.open("section").leaf("h2", title);
            alarms.forEach(this::alarm);
            html.closeLine();
        }
    }

    private void cautions() {
        html.open("section", "class", "cautions").leaf("h2", "Cautions");
        if (document.alarms().isEmpty()) {
            html.leaf("p", document.calm());
        }
        items(new Block.Items(document.cautions(), Block.ListKind.BULLETS));
        html.closeLine();
    }

    private void section(Document.Section section) {
        if (section.form() == Document.Form.PAPER) {
            html.open("section", "class", "paper");
            whose();
        } else {
            html.open("section");
        }
        html.leaf("h2", words.apply(section.title()));
        contents(section);
    }

    private void contents(Document.Section section) {
        section.blocks().forEach(block -> block.show(this));
        html.closeLine();
    }

    /** On every sheet that may be handed over alone: whose it is. */
    private void whose() {
        html.leaf("p", document.title(), "class", "whose", "dir", "auto");
    }

    private void appendix(List<Document.Section> sections) {
        if (sections.isEmpty()) {
            unprinted();
            return;
        }
        html.open("section", "class", "paper appendix");
        whose();
        html.leaf("h2", "Appendix: what the answer rests on");
        heading = "h4";
        for (Document.Section section : sections) {
            html.open("section").leaf("h3", words.apply(section.title()));
            contents(section);
        }
        unprinted();
        html.closeLine();
    }

    /** On paper: what is to be seen on the screen alone. */
    private void unprinted() {
        if (!folded.isEmpty()) {
            html.leaf(
                    "p",
                    "Folded away on the screen (report.html) and not printed: " + words.apply(String.join("; ", folded))
                            + ".",
                    "class",
                    "unfolded");
        }
    }

    @Override
    public void alarm(AlarmNote alarm) {
        html.open("div", "class", "alarm").open("p");
        html.open("strong").text(alarm.word()).close();
        html.text(" ").text(words.apply(alarm.text())).closeLine();
        html.closeLine();
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
        String text = words.apply(paragraph.text());
        switch (paragraph.tone()) {
            case PLAIN -> html.leaf("p", text);
            case QUOTING -> html.leaf("p", text, "dir", "auto");
            case ANSWER -> html.leaf("p", text, "class", "answer", "dir", "auto");
            case QUIET -> html.leaf("p", text, "class", "quiet");
        }
    }

    @Override
    public void quote(Block.Quote quote) {
        html.open("p").open("span", "class", "label").text(quote.label() + ": ").close();
        html.quoted(quote.text()).closeLine();
    }

    @Override
    public void formula(Block.Formula formula) {
        html.open("p")
                .open("span", "class", "label")
                .text(words.apply(formula.name()) + ": ")
                .close();
        html.open("code").text(formula.expression()).close();
        html.text(formula.rest()).closeLine();
    }

    @Override
    public void subheading(Block.Subheading subheading) {
        html.leaf(heading, words.apply(subheading.text()));
    }

    @Override
    public void items(Block.Items items) {
        switch (items.kind()) {
            case BULLETS -> list("ul", items);
            case QUOTED_BULLETS -> list("ul", items, "dir", "auto");
            case STEPS -> list("ol", items);
            case TICKS -> ticks(items.texts());
        }
    }

    private void list(String element, Block.Items items, String... attributes) {
        html.open(element);
        items.texts().forEach(text -> html.leaf("li", words.apply(text), attributes));
        html.closeLine();
    }

    private void ticks(List<String> steps) {
        html.open("ul", "class", "ticks");
        for (String step : steps) {
            html.open("li").open("label");
            html.empty("input", "type", "checkbox", "autocomplete", "off");
            html.open("span").text(words.apply(step)).close().close().closeLine();
        }
        html.closeLine();
    }

    @Override
    public void grid(Grid grid) {
        grid(html, grid.in(words));
    }

    @Override
    public void picture(Block.Picture picture) {
        pictures++;
        StringBuilder svg = new StringBuilder();
        try {
            picture.svg().drawOn(svg);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        html.leaf("p", "On a narrow screen the picture scrolls sideways.", "class", "hint");
        html.open("figure");
        html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", "Picture " + pictures);
        html.picture(Svg.of(svg.toString(), words.apply(picture.alternative()), "p" + pictures + "-"))
                .closeLine();
        if (!picture.caption().isBlank()) {
            html.leaf("figcaption", words.apply(picture.caption()), "dir", "auto");
        }
        html.closeLine();
    }

    @Override
    public void checkSheet(Block.CheckSheet sheet) {
        html.open("div", "class", "fields");
        for (String name : List.of("Date", "Gauge", "Read by")) {
            html.open("label").text(name + " ");
            html.empty("input", "type", "text", "autocomplete", "off").closeLine();
        }
        html.closeLine();
        begin(html, "Check sheet, gauge readings", List.of("When", "Should read", "Your reading"), true);
        sheet.lines().forEach(this::line);
        html.close().closeLine();
    }

    @Override
    public void blanks(Block.Blanks blanks) {
        boolean both = blanks.lines().stream()
                .anyMatch(line -> line.room() && !line.value().isEmpty());
        html.open("table", "class", blanks.cut() ? "short blanks tag" : "short blanks");
        html.leaf("caption", words.apply(blanks.caption()));
        html.open("tbody");
        for (Block.Blanks.Line line : blanks.lines()) {
            html.open("tr").leaf("th", words.apply(line.name()), "scope", "row");
            if (both || !line.room()) {
                html.leaf("td", words.apply(line.value()));
            }
            if (both || line.room()) {
                room(line);
            }
            html.closeLine();
        }
        html.closeLine().closeLine();
    }

    private void room(Block.Blanks.Line line) {
        html.open("td");
        if (line.room()) {
            html.empty("input", "type", "text", "autocomplete", "off", "aria-label", line.name());
        }
        html.close();
    }

    private void line(Block.CheckSheet.Line line) {
        html.open("tr");
        html.open("th", "scope", "row", "class", breaks(line.when() + " " + line.note()));
        html.text(words.apply(line.when()));
        note(line.note());
        html.closeLine();
        html.open("td").text(line.expected());
        note(line.range());
        html.closeLine();
        html.open("td");
        html.empty("input", "type", "text", "autocomplete", "off", "aria-label", "Your reading, " + line.when());
        html.close().closeLine();
    }

    private void note(String text) {
        if (!text.isBlank()) {
            html.text(" ").open("span", "class", "note").text(words.apply(text)).close();
        }
    }

    @Override
    public void finding(Block.FoundRule finding) {
        html.open("div", "class", "finding");
        html.open(heading, "dir", "auto");
        html.open("span", "class", "severity").text(finding.severity()).close();
        html.text(" ").text(words.apply(finding.sentence())).closeLine();
        html.open("dl");
        entry("What to do", finding.advice());
        finding.entries().forEach(entry -> entry(entry.name(), entry.text()));
        html.closeLine().closeLine();
    }

    private void entry(String name, String text) {
        if (!text.isBlank()) {
            html.open("div")
                    .leaf("dt", name)
                    .leaf("dd", words.apply(text), "dir", "auto")
                    .closeLine();
        }
    }

    @Override
    public void either(Block.Either either) {
        either.page().forEach(block -> block.show(this));
    }

    @Override
    public void folded(Block.Folded part) {
        folded.add(part.name());
        html.open("details").leaf("summary", PageWords.capitalised(words.apply(part.name())));
        part.blocks().forEach(block -> block.show(this));
        html.closeLine();
    }

    private static void grid(Html html, Grid grid) {
        boolean wide = grid.columns().size() > FEW_COLUMNS;
        if (wide) {
            html.leaf("p", "On a narrow screen this table scrolls sideways.", "class", "hint");
            html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", grid.caption());
        }
        begin(html, grid.caption(), grid.columns(), isShort(grid));
        for (List<String> row : grid.rows()) {
            html.open("tr");
            for (int i = 0; i < row.size(); i++) {
                cell(html, row.get(i), i == 0);
            }
            html.closeLine();
        }
        html.closeLine().closeLine();
        if (wide) {
            html.closeLine();
        }
    }

    /** Begins a table and its body; both are to be closed. What is in one piece is not parted between sheets of paper. */
    private static void begin(Html html, String caption, List<String> columns, boolean inOnePiece) {
        html.open("table", "class", inOnePiece ? "short" : "tall");
        html.leaf("caption", caption);
        html.open("thead").open("tr");
        columns.forEach(column -> html.leaf("th", column, "scope", "col"));
        html.close().closeLine();
        html.open("tbody");
    }

    private static void cell(Html html, String text, boolean head) {
        String breaks = breaks(text);
        if (head) {
            html.leaf("th", text, "scope", "row", "class", breaks, "dir", "auto");
        } else {
            html.leaf("td", text, "class", breaks, "dir", "auto");
        }
    }

    /** The class of an element that holds a text: whether its words must be broken to fit a narrow screen. */
    private static String breaks(String text) {
        return longest(text) > LONG_WORD ? "long" : "plain";
    }

    private static boolean isShort(Grid grid) {
        int characters = grid.rows().stream()
                .flatMap(List::stream)
                .mapToInt(String::length)
                .sum();
        return grid.rows().size() <= FEW_ROWS && characters <= FEW_CHARACTERS;
    }

    private static int longest(String text) {
        int longest = 0;
        for (String word : text.split("[\\s-]+")) {
            longest = Math.max(longest, word.length());
        }
        return longest;
    }
}
