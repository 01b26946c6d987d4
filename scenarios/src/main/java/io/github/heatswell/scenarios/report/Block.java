package io.github.heatswell.scenarios.report;

import java.util.List;

/** A part of a document: a value, which each renderer puts in its own form. Texts are shown as they are, whatever they hold. */
interface Block {

    /** Has a renderer show this part. */
    void show(Renderer renderer);

    /** Shows the parts of a document, in their order. */
    interface Renderer {
        void alarm(AlarmNote alarm);

        void paragraph(Paragraph paragraph);

        void quote(Quote quote);

        void formula(Formula formula);

        void subheading(Subheading subheading);

        void items(Items items);

        void grid(Grid grid);

        void picture(Illustration picture);

        void checkSheet(CheckSheet sheet);

        void finding(FoundRule finding);
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

    /** A formula in its letters, and what follows it. */
    record Formula(String expression, String rest) implements Block {
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

    /** Something found, held against a rule. */
    record FoundRule(String severity, String sentence, List<Entry> entries) implements Block {
        public FoundRule {
            entries = List.copyOf(entries);
        }

        /** A number, an advice or a source with its name; one without text is left out. */
        record Entry(String name, String text) {}

        @Override
        public void show(Renderer renderer) {
            renderer.finding(this);
        }
    }
}
