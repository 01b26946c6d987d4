package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Contents of an answer as plain values. {@link HtmlPage} and {@link TextPage} render it: hazards first, cautions
 * always.
 *
 * @param title the title, not blank
 * @param names the short names of its scenarios, possibly nothing
 * @param alarms hazards met and limits passed, the worst first; possibly none
 * @param calm what is said of hazards where there is no alarm
 * @param cautions the words of caution
 * @param sections its sections, those left out that have nothing to say
 * @param place where the house stands, whose paper it is printed on
 * @param units the units that stand first, in whose words it speaks
 */
record Document(
        String title,
        String names,
        List<AlarmNote> alarms,
        String calm,
        List<String> cautions,
        List<Section> sections,
        Place place,
        UnitSystem units) {

    /** Above this temperature (K) water scalds within seconds. */
    private static final double SCALDS = 333.15;

    private static final String IN_SHORT = "Caution: hot water scalds. Never plug, cap or downsize a temperature and"
            + " pressure relief valve. Before any work turn the heater off and let it cool. This is a model: local code"
            + " and a licensed professional decide.";

    private static final String ONLY_A_MODEL = " This is true of the model; it cannot say whether the house is safe.";

    Document {
        Objects.requireNonNull(names, "names");
        Objects.requireNonNull(calm, "calm");
        if (title.isBlank()) {
            throw new IllegalArgumentException("title: a report needs one, not \"" + title + "\"");
        }
        alarms = List.copyOf(alarms);
        cautions = List.copyOf(cautions);
        sections =
                sections.stream().filter(section -> !section.blocks().isEmpty()).toList();
    }

    /**
     * What an answer says.
     *
     * @param title the title, not blank
     * @param names the short names of its scenarios
     * @param alarms hazards met and limits passed, the worst first; possibly none
     * @param sections what else there is to say
     * @param shown how quantities are written
     */
    static Document of(
            String title, String names, List<AlarmNote> alarms, List<Section> sections, QuantityFormat shown) {
        return new Document(
                title,
                names,
                alarms,
                "The simulation found no hazard." + ONLY_A_MODEL,
                cautions(shown),
                sections,
                Place.NOT_KNOWN,
                shown.units());
    }

    /** The same on the paper of the place where a house stands. */
    Document printedFor(HotWaterSystem house) {
        return new Document(
                title, names, alarms, calm, cautions, sections, house.site().place(), units);
    }

    /** The same where a run kept the pressure within the working pressure; whether that was read on the plate is said. */
    Document withinWorkingPressure(boolean given) {
        return calm("The simulation found no hazard, and the pressure did not go above the working pressure "
                + (given ? "of" : "assumed for") + " the tank." + ONLY_A_MODEL);
    }

    /** The same where the house as described was looked at, and no run of it is reported. */
    Document ofNoRun() {
        return calm("The house as described shows no hazard." + ONLY_A_MODEL);
    }

    /** The same where many houses were simulated. */
    Document ofSamples() {
        return calm("No sample ended in a hazard." + ONLY_A_MODEL);
    }

    /** The same where something else is to be said if there is no alarm. */
    Document calm(String words) {
        return new Document(title, names, alarms, words, cautions, sections, place, units);
    }

    /** Whether people may be hurt: then that stands first, and the exit status says so. */
    boolean isHazard() {
        return alarms.stream().anyMatch(alarm -> alarm.word().startsWith(Alarm.Level.HAZARD.word()));
    }

    /** Where a section is shown. */
    enum Form {
        /** On the page and on the screen. */
        EVERYWHERE,
        /** On the page alone. */
        PAGE,
        /** On the page alone, as a sheet of paper by itself, to be filled in or handed over. */
        PAPER,
        /** On page and screen; on the page with its like as the last paper, small, for those who want to know why. */
        APPENDIX;

        /** Whether it is shown on the screen too. */
        boolean isOnScreen() {
            return this == EVERYWHERE || this == APPENDIX;
        }
    }

    /**
     * What belongs together.
     *
     * @param title its heading
     * @param form where it is shown
     * @param blocks what it says
     */
    record Section(String title, Form form, List<Block> blocks) {
        Section {
            blocks = List.copyOf(blocks);
        }

        Section(String title, List<? extends Block> blocks) {
            this(title, Form.EVERYWHERE, List.copyOf(blocks));
        }

        /** Whether the page shows anything of it. */
        boolean isOnPage() {
            return blocks.stream()
                    .anyMatch(block -> !(block instanceof Block.Either either)
                            || !either.page().isEmpty());
        }

        /** The same below what has to be minded first. */
        Section below(List<String> minded) {
            return new Section(
                    title,
                    form,
                    Stream.concat(
                                    minded.stream().map(said -> new Block.Paragraph(said, Block.Tone.ANSWER)),
                                    blocks.stream())
                            .toList());
        }

        /** The same on the page alone. */
        Section onPage() {
            return new Section(title, Form.PAGE, blocks);
        }

        /** The same among what an answer rests on. */
        Section inAppendix() {
            return new Section(title, Form.APPENDIX, blocks);
        }

        /** The same among what an answer rests on, and not on the screen. */
        Section onPageInAppendix() {
            return new Section(
                    title, Form.APPENDIX, blocks.stream().map(Block::onPage).toList());
        }
    }

    /** The answer to a question, with what the scenario asks, which may be nothing. */
    static Section answer(String question, String sentence, List<String> remarks) {
        List<Block> blocks = new ArrayList<>();
        if (!question.isBlank()) {
            blocks.add(new Block.Quote("The question", question));
        }
        blocks.add(new Block.Paragraph(sentence, Block.Tone.ANSWER));
        remarks.forEach(remark -> blocks.add(new Block.Paragraph(remark, Block.Tone.QUOTING)));
        return new Section("The answer", blocks);
    }

    /** Pictures, and the numbers they show. */
    static Section pictures(List<Block.Picture> pictures, List<? extends Block> figures) {
        List<Block> blocks = new ArrayList<>(pictures);
        blocks.addAll(figures);
        return new Section(pictures.isEmpty() ? "The numbers" : "The picture", blocks);
    }

    /** All of them, for a page. */
    private static List<String> cautions(QuantityFormat shown) {
        return List.of(
                "Hot water scalds. Above " + shown.temperature(SCALDS) + " it does so within seconds.",
                "Before any work turn the heater off, let it cool, shut the cold feed and relieve the pressure at a tap.",
                "Never plug, cap or downsize a relief valve, and never use a temperature and pressure relief valve as the"
                        + " means of expansion control. A heater whose relief is missing, blocked or too small can"
                        + " explode.",
                "Gas and electricity kill. Leave work on them to licensed people.",
                "Local code and a licensed professional decide what may be built and who may build it. These are a"
                        + " model's figures; they decide nothing.");
    }

    /** In three lines, for a screen. */
    static String cautionInShort() {
        return Wrapped.lines(IN_SHORT, "", "");
    }

    /** Remarks, after what is not known of the house: that is said before any answer that assumes a value for it. */
    static List<String> withDoubts(Scenario scenario, QuantityFormat shown, List<String> remarks) {
        return Stream.concat(scenario.doubts().sentence().stream().map(said -> said.text(shown)), remarks.stream())
                .toList();
    }
}
