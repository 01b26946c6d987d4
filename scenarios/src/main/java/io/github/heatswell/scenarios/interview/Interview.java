package io.github.heatswell.scenarios.interview;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.interview.Interview.Outcome.Ending;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.units.UnitSystem;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * An interview with the owner of a house, from the first question to the file.
 */
public final class Interview {

    private static final String YES = "yes";
    static final Set<String> LEAVE = Set.of("quit", "exit", "q");

    private final HouseFile file;
    private final Dialogue dialogue;
    private final Interviewer interviewer;

    private Interview(HouseFile file, Optional<UnitSystem> units, Dialogue dialogue) {
        this.file = file;
        this.dialogue = dialogue;
        this.interviewer = new Interviewer(dialogue, units);
    }

    /**
     * The place in an answer to where a house stands.
     *
     * @param said such as {@code us-ipc}, {@code Missouri} or {@code St. Louis, MO}
     * @return the place
     * @throws IllegalArgumentException if there is none in it; the message names those there are
     */
    public static Place place(String said) {
        return Place.of(PlaceQuestion.question().kind().understand(said));
    }

    /**
     * What to ask where the code of a place was only taken from the state or the country that was named.
     *
     * @param said what was said of the place
     * @return sentences; empty if the code itself was named, or a place has but one
     */
    public static Optional<String> assumedOf(String said) {
        return PlaceQuestion.isAssumed(said, place(said).key()) ? Optional.of(PlaceQuestion.ASSUMED) : Optional.empty();
    }

    /**
     * Whether a scenario can be read from a file of this name, as {@link #hold} needs it.
     *
     * @param file the file
     * @return true if its name ends in {@code .yaml} or {@code .yml}
     */
    public static boolean suits(Path file) {
        return HouseFile.isNameOfScenario(file);
    }

    /**
     * Asks all questions and writes the file. A file that exists is replaced only if the answer to that question is yes.
     *
     * @param file where the file belongs; see {@link #suits}. An unfinished interview is kept beside it
     * @param units the units of examples and of usual ranges, or those of the place if empty; answers may have any
     * @param in gives the answers, one in a line; stays open
     * @param out takes the questions; stays open
     * @return how it ended
     * @throws OutputException if the file, or the unfinished one, cannot be written
     * @throws IllegalArgumentException if the name of the file does not suit
     */
    public static Outcome hold(Path file, Optional<UnitSystem> units, Reader in, PrintWriter out)
            throws OutputException {
        if (!suits(file)) {
            throw new IllegalArgumentException("file: the name must end in .yaml or .yml: " + file);
        }
        return new Interview(new HouseFile(file), units, new Dialogue(in, out)).hold();
    }

    private Outcome hold() throws OutputException {
        HouseFile unfinished = file.unfinished();
        Optional<Notes> notes = unfinished.notes();
        if (notes.isPresent() && notes.get().isEmpty()) {
            return new Outcome(Ending.OBSTRUCTED, unfinished.path());
        }
        greet();
        if (notes.isPresent()) {
            Optional<String> answer =
                    dialogue.goOn(unfinished.path(), notes.get().count());
            if (answer.isEmpty() || LEAVE.contains(answer.get())) {
                // The answers of the earlier interview stay where they are.
                return new Outcome(answer.isEmpty() ? Ending.ENDED : Ending.LEFT, unfinished.path());
            }
            if (answer.get().equals(YES)) {
                interviewer.resume(notes.get());
            }
        }
        return switch (ask()) {
            case FINISHED -> finish();
            case LEFT, BACK -> leave(Ending.LEFT);
            case ENDED -> leave(Ending.ENDED);
        };
    }

    /** Asks everything, and keeps the answers on the way: a window may be closed, and a folder may be write-protected. */
    private Interviewer.Ending ask() throws OutputException {
        Interviewer.Ending ending = Interviewer.Ending.FINISHED;
        while (interviewer.hasNext() && ending == Interviewer.Ending.FINISHED) {
            ending = interviewer.askNext();
            if (interviewer.answers().isEmpty()) {
                file.unfinished().remove();
            } else {
                file.unfinished().keep(interviewer.answers(), interviewer.units());
            }
        }
        return ending;
    }

    private void greet() {
        dialogue.say("A few questions about your house and its hot water, one at a time. Labels, a pressure gauge and a"
                + " thermometer answer them. You may also type:");
        dialogue.say("if you don't know; the file then gets a typical range or says so", "  dk    ", "        ");
        dialogue.say("to see how to find out", "  ?     ", "        ");
        dialogue.say("for the previous question", "  back  ", "        ");
        dialogue.say("to leave; your answers are kept", "  quit  ", "        ");
        dialogue.blankLine();
        dialogue.say("Just read and measure. Hot water scalds. Never plug, cap or downsize a relief valve. Turn the"
                + " heater off and let it cool before any work. Local code and a licensed professional have the"
                + " last word.");
    }

    private Outcome finish() throws OutputException {
        dialogue.blankLine();
        dialogue.say("Understood:");
        Summary.say(interviewer.answers(), interviewer.units(), dialogue);
        dialogue.blankLine();
        HouseFile target = file;
        for (int asked = 0; target.exists(); asked++) {
            Optional<String> answer = asked < Interviewer.PATIENCE ? replace(target) : Optional.empty();
            if (answer.isEmpty()) {
                return leave(Ending.ENDED);
            }
            String word = answer.get().toLowerCase(Locale.ROOT);
            if (LEAVE.contains(word)) {
                return leave(Ending.LEFT);
            }
            if (Spoken.of(word).plain().equals(YES)) {
                break;
            }
            target = renamed(target, answer.get());
        }
        target.write(interviewer.answers(), interviewer.units());
        file.unfinished().remove();
        dialogue.say("Written: " + target.path());
        dialogue.blankLine();
        return new Outcome(Ending.FINISHED, target.path());
    }

    private Optional<String> replace(HouseFile target) {
        dialogue.say(target.path() + " exists already. Replace it? Type yes, or another name that ends in .yaml, or"
                + " quit.");
        return dialogue.hear();
    }

    /** The file of another name beside the first; the same as before if the name will not do. */
    private HouseFile renamed(HouseFile target, String name) {
        try {
            Path path = file.path().resolveSibling(name);
            if (HouseFile.isNameOfScenario(path)) {
                return new HouseFile(path);
            }
        } catch (InvalidPathException e) {
            // The sentence below says what is needed.
        }
        dialogue.say(Printable.quote(name) + " is neither yes nor a file name that ends in .yaml.");
        return target;
    }

    private Outcome leave(Ending ending) {
        Path kept = file.unfinished().path();
        dialogue.blankLine();
        if (interviewer.answers().isEmpty()) {
            dialogue.say("You answered nothing, so nothing was written.");
        } else {
            dialogue.say("Your answers so far are kept in " + kept + "; next time the questions continue from there.");
        }
        return new Outcome(ending, kept);
    }

    /**
     * How an interview ended.
     *
     * @param ending how
     * @param file the finished file, or the unfinished one that keeps the answers or stands in the way
     */
    public record Outcome(Ending ending, Path file) {

        /** The ways to end. */
        public enum Ending {
            /** Every question was answered and the file is written. */
            FINISHED,
            /** The owner left; the answers so far, if any, are kept. */
            LEFT,
            /** There was nothing more to read, or nothing sensible; the answers so far, if any, are kept. */
            ENDED,
            /** A file that keeps no answers has the name of the unfinished file; nothing was asked. */
            OBSTRUCTED
        }

        /**
         * Checks that everything is there.
         *
         * @param ending how
         * @param file the finished file, or the unfinished one that keeps the answers or stands in the way
         */
        public Outcome {
            Objects.requireNonNull(ending, "ending");
            Objects.requireNonNull(file, "file");
        }
    }

    /** Summary of the answers as understood. */
    static final class Summary {

        private static final int LABEL = 30;

        private static final String INDENT = "  ";

        private Summary() {}

        /** What was understood of one answer. */
        static String of(Question question, Answers answers, UnitSystem units) {
            Lines.Line line = new Lines(answers, units).of(question).orElseThrow();
            Answers.Answer answer = answers.to(question).orElseThrow();
            if (answers.say(question.id(), AnswerKind.Quantity.NONE)
                    && question.id().equals(ReliefQuestions.OPENS)) {
                return "HAZARD: there is no relief valve. A heater without one can explode. Turn it off and call a"
                        + " licensed professional";
            }
            if (!line.given()) {
                return line.comment();
            }
            String remark = answer.known()
                    ? answer.guessed() && !question.id().equals(PlaceQuestion.PLACE) ? "a guess" : ""
                    : line.comment();
            return people(question, line.value()) + (remark.isEmpty() ? "" : " (" + remark + ")");
        }

        /** People, where a profile stands for them. */
        private static String people(Question question, String value) {
            return question.id().equals(UseQuestions.DRAWS)
                    ? DrawProfile.people(value)
                            .map(people -> people + " (published day " + value + ")")
                            .orElse(value)
                    : value;
        }

        /** Says everything that was understood, a line or two for each answer. */
        static void say(Answers answers, UnitSystem units, Dialogue dialogue) {
            for (Question question : Questions.after(answers)) {
                if (answers.has(question)) {
                    String label = units.spelled(question.label()) + " ";
                    String dots = ".".repeat(Math.max(1, LABEL - label.length()));
                    dialogue.say(label + dots + " " + of(question, answers, units), INDENT, INDENT + INDENT);
                }
            }
        }
    }
}
