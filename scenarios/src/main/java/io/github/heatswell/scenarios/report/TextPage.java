package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A document for reading on a terminal: lines of at most 79 columns, without pictures and without what is to be filled in by
 * hand. What can hurt somebody stands first. The words of caution follow after what a command says of its files.
 */
final class TextPage implements Block.Renderer {

    /** So many alarms are listed one by one; what comes after them is named. */
    private static final int MAX_ALARMS = 12;

    private static final String INDENT = "  ";

    private final StringBuilder text = new StringBuilder();
    /** What stands before each line of a block: blanks below a subheading. */
    private String margin = "";
    /** Whether the next block follows without an empty line. */
    private boolean joined = true;

    private boolean afterFinding;

    /** The words of the units that stand first. */
    private final UnaryOperator<String> words;

    private TextPage(UnaryOperator<String> words) {
        this.words = words;
    }

    /**
     * A document as text.
     *
     * @param document what it says
     * @return the lines
     */
    static String of(Document document) {
        return new TextPage(document.units()::spelled).page(document);
    }

    private String page(Document document) {
        alarms(document.alarms());
        lines(document.title(), "", "");
        document.sections().stream()
                .filter(section -> section.form().isOnScreen())
                .forEach(section -> {
                    margin = "";
                    section.blocks().forEach(block -> block.show(this));
                });
        return text.toString();
    }

    private void alarms(List<AlarmNote> alarms) {
        Set<String> others = new LinkedHashSet<>();
        for (int i = 0; i < alarms.size(); i++) {
            AlarmNote alarm = alarms.get(i);
            if (i < MAX_ALARMS || alarm.word().equals(Alarm.Level.NOT_RELIABLE.word())) {
                alarm(alarm);
            } else {
                others.add(alarm.word());
            }
        }
        if (!others.isEmpty()) {
            lines("More in report.html: " + String.join("; ", others) + ".", "", INDENT);
        }
    }

    /** A block of lines, with an empty line before it unless it goes with what is above. */
    private void lines(String said, String first, String rest) {
        begin();
        text.append(Wrapped.lines(plain(said), first, rest));
    }

    /** A text in characters that every terminal can show. */
    static String plain(String said) {
        return Printable.line(said.replace('\u201c', '"').replace('\u201d', '"'));
    }

    private void begin() {
        if (!joined) {
            text.append('\n');
        }
        joined = false;
        afterFinding = false;
    }

    @Override
    public void alarm(AlarmNote alarm) {
        lines(alarm.word() + ": " + words.apply(alarm.text()), "", "        ");
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
        lines(words.apply(paragraph.text()), margin, margin);
    }

    /** The only words of the user's that are quoted here are the question, below the title. */
    @Override
    public void quote(Block.Quote quote) {
        joined = true;
        lines(quote.text(), INDENT, INDENT);
    }

    @Override
    public void formula(Block.Formula formula) {
        lines(formula.name() + ": " + formula.expression() + formula.rest(), margin, margin);
    }

    @Override
    public void subheading(Block.Subheading subheading) {
        lines(words.apply(subheading.text()) + ":", "", INDENT);
        margin = INDENT;
        joined = true;
    }

    @Override
    public void items(Block.Items items) {
        begin();
        items.texts().forEach(item -> text.append(Wrapped.lines(plain(words.apply(item)), INDENT, INDENT + INDENT)));
    }

    @Override
    public void grid(Grid said) {
        Grid grid = said.in(words);
        if (!grid.caption().isEmpty()) {
            margin = "";
            lines(grid.caption() + (grid.caption().endsWith(".") ? "" : ":"), "", "");
            joined = true;
        }
        begin();
        text.append(TextTable.of(grid, INDENT));
    }

    @Override
    public void finding(Block.FoundRule finding) {
        joined = joined || afterFinding;
        lines(
                finding.severity() + " " + words.apply(finding.sentence() + " " + finding.advice()),
                INDENT,
                INDENT + INDENT);
        afterFinding = true;
    }

    @Override
    public void either(Block.Either either) {
        either.screen().forEach(block -> block.show(this));
    }

    @Override
    public void folded(Block.Folded folded) {
        folded.blocks().forEach(block -> block.show(this));
    }

    @Override
    public void picture(Block.Picture picture) {
        // Pictures are files of their own.
    }

    @Override
    public void checkSheet(Block.CheckSheet sheet) {
        // It is to be filled in by hand.
    }

    @Override
    public void blanks(Block.Blanks blanks) {
        // They are to be filled in by hand.
    }
}
