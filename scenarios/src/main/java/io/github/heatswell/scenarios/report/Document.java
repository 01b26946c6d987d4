package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Everything a report says, in plain values. What can hurt somebody comes first; cautions are in every report.
 *
 * @param title the title, not blank
 * @param names the short names of its scenarios, possibly nothing
 * @param sections its sections, those left out that have nothing to say
 */
record Document(String title, String names, List<Section> sections) {

    Document {
        Objects.requireNonNull(names, "names");
        if (title.isBlank()) {
            throw new IllegalArgumentException("title: a report needs one, not \"" + title + "\"");
        }
        sections =
                sections.stream().filter(section -> !section.blocks().isEmpty()).toList();
    }

    /**
     * What belongs together.
     *
     * @param title its heading
     * @param isSheet whether it is a sheet by itself, to be filled in by hand
     * @param blocks what it says
     */
    record Section(String title, boolean isSheet, List<Block> blocks) {
        Section {
            blocks = List.copyOf(blocks);
        }

        Section(String title, List<? extends Block> blocks) {
            this(title, false, List.copyOf(blocks));
        }
    }

    /**
     * A report.
     *
     * @param title the title, not blank
     * @param names the short names of its scenarios
     * @param alarms hazards met and limits passed, the worst first; possibly none
     * @param sections what else there is to say
     * @param shown how quantities are written
     */
    static Document of(
            String title, String names, List<AlarmNote> alarms, List<Section> sections, QuantityFormat shown) {
        List<Section> all = new ArrayList<>();
        all.add(hazards(alarms, shown));
        all.addAll(sections);
        return new Document(title, names, all);
    }

    private static Section hazards(List<AlarmNote> alarms, QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>(alarms);
        if (alarms.isEmpty()) {
            blocks.add(new Block.Paragraph(
                    "The simulation met no hazard, and the pressure stayed within the working pressure of the tank."
                            + " That is said of the model; whether the house is safe it cannot say.",
                    Block.Tone.PLAIN));
        }
        blocks.add(new Block.Items(Cautions.of(shown), Block.ListKind.BULLETS));
        return new Section("Hazards and cautions", blocks);
    }

    /** The answer to a question, with what the scenario asks and expects, which may be nothing. */
    static Section answer(String question, String sentence, List<String> remarks, String expectation) {
        List<Block> blocks = new ArrayList<>();
        quote("The question", question, blocks);
        blocks.add(new Block.Paragraph(sentence, Block.Tone.ANSWER));
        remarks.forEach(remark -> blocks.add(new Block.Paragraph(remark, Block.Tone.QUOTING)));
        quote("Expected beforehand", expectation, blocks);
        return new Section("The answer", blocks);
    }

    private static void quote(String label, String text, List<Block> blocks) {
        if (!text.isBlank()) {
            blocks.add(new Block.Quote(label, text));
        }
    }

    /** Pictures, and the numbers they show. */
    static Section pictures(List<Illustration> pictures, List<Grid> figures) {
        List<Block> blocks = new ArrayList<>(pictures);
        blocks.addAll(figures);
        return new Section(pictures.isEmpty() ? "The numbers" : "The picture", blocks);
    }
}
