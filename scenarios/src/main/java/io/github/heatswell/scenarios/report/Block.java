package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/** A part of a document: a value that each renderer formats. Texts are shown literally. */
interface Block {

    /** Has a renderer show this part. */
    void show(Renderer renderer);

    /** This part on the page, and nothing on the screen. */
    default Block onPage() {
        return new Either(List.of(this), List.of());
    }

    /** This part on the screen, and nothing on the page. */
    default Block onScreen() {
        return new Either(List.of(), List.of(this));
    }

    /** This part on the page, and a shorter one on the screen. */
    default Block orOnScreen(Block shorter) {
        return new Either(List.of(this), List.of(shorter));
    }

    /** Shows the parts of a document, in their order. */
    interface Renderer {
        void alarm(AlarmNote alarm);

        void paragraph(Paragraph paragraph);

        void quote(Quote quote);

        void formula(Formula formula);

        void subheading(Subheading subheading);

        void items(Items items);

        void grid(Grid grid);

        void picture(Picture picture);

        void checkSheet(CheckSheet sheet);

        void blanks(Blanks blanks);

        void finding(FoundRule finding);

        void either(Either either);

        void folded(Folded folded);
    }

    /**
     * Parts for those who want to see everything: folded on the page, left out of print, and told in full on the screen.
     *
     * @param name what they show
     * @param blocks the parts
     */
    record Folded(String name, List<Block> blocks) implements Block {
        public Folded {
            blocks = List.copyOf(blocks);
        }

        @Override
        public void show(Renderer renderer) {
            renderer.folded(this);
        }
    }

    /** Parts that are told in one way on the page and in another on the screen, or only on one of them. */
    record Either(List<Block> page, List<Block> screen) implements Block {
        public Either {
            page = List.copyOf(page);
            screen = List.copyOf(screen);
        }

        @Override
        public Block onPage() {
            return new Either(page, List.of());
        }

        @Override
        public void show(Renderer renderer) {
            renderer.either(this);
        }
    }

    /** Draws a picture as SVG. */
    @FunctionalInterface
    interface Drawing {
        /** Draws everything; fails where there are no fonts to draw with. */
        void drawOn(Appendable out) throws IOException;
    }

    /**
     * A picture.
     *
     * @param svg draws its markup, one SVG element without scripts, style sheets and references to the outside
     * @param caption what is said below it
     * @param alternative what it shows, for those who cannot see it
     */
    record Picture(Drawing svg, String caption, String alternative) implements Block {
        private static final int WIDTH = 760;
        private static final int HEIGHT = 620;

        /** Leaves room on a sheet of paper for the answer above and the work below. */
        private static final int LOW = 520;

        /** A chart, narrow, so that its words are large enough on a sheet of paper. */
        static Picture of(Chart chart, String caption, String alternative) {
            return new Picture(chart.withSize(WIDTH, HEIGHT)::writeSvg, caption, alternative);
        }

        /** The chart of the years ahead. */
        static Picture ofYears(Chart chart) {
            return of(
                    chart,
                    "Gauge pressure on the worst day of each month above, and what the relief valves discharge below.",
                    "Chart of the peak pressure over the years. " + chart.headline());
        }

        /** The chart of several runs. */
        static Picture ofRuns(Chart chart, String answer) {
            return of(chart, "Gauge pressure above, and what went with it below.", pressures(answer));
        }

        /** The chart of an answer that goes on one sheet with it. */
        static Picture beside(Chart chart, String answer) {
            return new Picture(chart.withSize(WIDTH, LOW)::writeSvg, "", pressures(answer));
        }

        private static String pressures(String answer) {
            return "Chart of the pressure over time. " + answer;
        }

        @Override
        public void show(Renderer renderer) {
            renderer.picture(this);
        }
    }

    /** How a paragraph is meant. */
    enum Tone {
        /** Our own words. */
        PLAIN,
        /** Words that may hold some of the user's. */
        QUOTING,
        /** The answer to the question. */
        ANSWER,
        /** For those who read on. */
        QUIET
    }

    /** Sentences that belong together. */
    record Paragraph(String text, Tone tone) implements Block {
        @Override
        public void show(Renderer renderer) {
            renderer.paragraph(this);
        }
    }

    /** Words of the user's behind a label of ours. */
    record Quote(String label, String text) implements Block {
        @Override
        public void show(Renderer renderer) {
            renderer.quote(this);
        }
    }

    /** A formula or a command in its letters, behind whose or what for it is and before what follows from it. */
    record Formula(String name, String expression, String rest) implements Block {
        @Override
        public void show(Renderer renderer) {
            renderer.formula(this);
        }
    }

    /** A heading inside a section. */
    record Subheading(String text) implements Block {
        @Override
        public void show(Renderer renderer) {
            renderer.subheading(this);
        }
    }

    /** What a list is for. */
    enum ListKind {
        /** Things side by side. */
        BULLETS,
        /** The same, and they may hold words of the user's. */
        QUOTED_BULLETS,
        /** What to do, in order. */
        STEPS,
        /** What to do, to be ticked off. */
        TICKS
    }

    /** A list. */
    record Items(List<String> texts, ListKind kind) implements Block {
        public Items {
            texts = List.copyOf(texts);
        }

        @Override
        public void show(Renderer renderer) {
            renderer.items(this);
        }
    }

    /** Readings to be expected, with room for what a gauge does read. */
    record CheckSheet(List<Line> lines) implements Block {
        public CheckSheet {
            lines = List.copyOf(lines);
        }

        /** When to read, what to mind then, what the gauge should read, and what agrees with that; texts may be empty. */
        record Line(String when, String note, String expected, String range) {}

        @Override
        public void show(Renderer renderer) {
            renderer.checkSheet(this);
        }
    }

    /**
     * Lines to be filled in by hand.
     *
     * @param caption what they are for
     * @param lines the lines, in order
     * @param cut whether they are to be cut out of the sheet
     */
    record Blanks(String caption, List<Line> lines, boolean cut) implements Block {
        public Blanks {
            lines = List.copyOf(lines);
        }

        /**
         * A line.
         *
         * @param name what it is about
         * @param value what is known of it already; may be empty
         * @param room whether there is room to write
         */
        record Line(String name, String value, boolean room) {

            /** A line of which nothing is known yet. */
            static Line open(String name) {
                return new Line(name, "", true);
            }
        }

        @Override
        public void show(Renderer renderer) {
            renderer.blanks(this);
        }
    }

    /** Something found and what to do about it; the entries tell the rule it is compared with. */
    record FoundRule(String severity, String sentence, String advice, List<Entry> entries) implements Block {
        public FoundRule {
            entries = List.copyOf(entries);
        }

        /** A number or a source with its name; one without text is left out. */
        record Entry(String name, String text) {}

        @Override
        public void show(Renderer renderer) {
            renderer.finding(this);
        }
    }

    /**
     * A table of words. The first cell of a row says what the row is about.
     *
     * @param caption what the table shows
     * @param columns the heads of the columns
     * @param rows the rows, each with a cell for every column
     * @param plain whether the cells speak for themselves, so that the screen does without the heads of the columns
     */
    record Grid(String caption, List<String> columns, List<List<String>> rows, boolean plain) implements Block {

        public Grid {
            Objects.requireNonNull(caption, "caption");
            columns = List.copyOf(columns);
            rows = List.copyOf(rows.stream().map(List::copyOf).toList());
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "rows: " + row.size() + " cells do not fit " + columns.size() + " columns");
                }
            }
        }

        public Grid(String caption, List<String> columns, List<List<String>> rows) {
            this(caption, columns, rows, false);
        }

        /** The same table in other words. */
        Grid in(UnaryOperator<String> words) {
            return new Grid(
                    words.apply(caption),
                    columns.stream().map(words).toList(),
                    rows.stream().map(row -> row.stream().map(words).toList()).toList(),
                    plain);
        }

        /** The same table with another caption on the screen. */
        Block captionedOnScreen(String other) {
            return orOnScreen(new Grid(other, columns, rows, plain));
        }

        @Override
        public void show(Renderer renderer) {
            renderer.grid(this);
        }
    }
}
