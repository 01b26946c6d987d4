package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Origin;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.interview.ScenarioText.Reach;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.units.UnitSystem;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Asks the questions one by one until all are answered or the other side leaves. */
final class Interviewer {

    /**
     * Wrong answers to one question before the interview ends: no person gives so many, but a random program never
     * stops.
     */
    static final int PATIENCE = 20;

    private static final String INDENT = "   ";

    private final Dialogue dialogue;
    private final Optional<UnitSystem> asked;
    private Answers answers = Answers.none();
    private boolean alone;
    /** Whether it was said of what is asked about that there are two. */
    private boolean two;

    /** An interview whose examples are in these units, or else in those of the place. */
    Interviewer(Dialogue dialogue, Optional<UnitSystem> asked) {
        this.dialogue = dialogue;
        this.asked = asked;
    }

    /** The units of examples, usual ranges and report. */
    UnitSystem units() {
        return PlaceQuestion.units(asked, answers);
    }

    private Checks checks() {
        return new Checks(units());
    }

    /** How a question ends. */
    enum Ending {
        /** With an answer, or with the wish to go back. */
        FINISHED,
        /** The user chose to quit. */
        LEFT,
        /** With the wish to go back, where a question was asked by itself. */
        BACK,
        /** The input ended. */
        ENDED
    }

    Answers answers() {
        return answers;
    }

    /** Restores answers of an earlier interview, up to the first that is no longer valid. */
    void resume(Notes notes) {
        Optional<Question> question = Questions.next(answers);
        while (question.isPresent() && notes.has(question.get())) {
            try {
                answers = answers.with(question.get(), understood(question.get(), notes.line(question.get())));
            } catch (IllegalArgumentException e) {
                dialogue.say(question.get().label() + ": " + e.getMessage());
                return;
            }
            question = Questions.next(answers);
        }
    }

    /** Asks the first question that is not answered yet, until it is or another one comes first. */
    Ending askNext() {
        Optional<Question> question = Questions.next(answers);
        return question.isPresent()
                ? ask(
                        question.get(),
                        (answers.count() + 1) + " of "
                                + Questions.after(answers).size() + ". ")
                : Ending.FINISHED;
    }

    /** Asks one question by itself. */
    Ending askAlone(Question question) {
        alone = true;
        return ask(question, INDENT);
    }

    /** Whether a question is not answered yet. */
    boolean hasNext() {
        return Questions.next(answers).isPresent();
    }

    private Ending ask(Question question, String number) {
        put(question, number);
        for (int wrong = 0; wrong < PATIENCE; wrong++) {
            Optional<String> line = dialogue.hear();
            if (line.isEmpty()) {
                return Ending.ENDED;
            }
            switch (line.get().toLowerCase(Locale.ROOT)) {
                case "quit", "exit", "q" -> {
                    return Ending.LEFT;
                }
                case "back" -> {
                    if (alone) {
                        return Ending.BACK;
                    }
                    if (answers.isEmpty()) {
                        dialogue.say("This is the first question.");
                        continue;
                    }
                    Answers before = answers.withoutLast();
                    Questions.next(before)
                            .ifPresent(last -> dialogue.say(
                                    "You said: " + Interview.Summary.of(last, answers, units()), INDENT, INDENT));
                    answers = before;
                    return Ending.FINISHED;
                }
                case "?", "help" -> explain(question);
                default -> {
                    if (take(question, line.get())) {
                        return Ending.FINISHED;
                    }
                }
            }
        }
        dialogue.say("That is enough for now.");
        return Ending.ENDED;
    }

    private void put(Question question, String number) {
        two = false;
        dialogue.blankLine();
        dialogue.say(units().spelled(question.text(answers)), number, INDENT);
        dialogue.say("To find out: " + units().spelled(question.hint()), INDENT, INDENT);
        dialogue.say("Type " + question.kind(answers).offer(units()) + "; or dk, ?, back, quit.", INDENT, INDENT);
    }

    private void explain(Question question) {
        dialogue.say(units().spelled(question.help()), INDENT, INDENT);
        dialogue.say(units().spelled(ifUnknown(question)), INDENT, INDENT);
    }

    private String ifUnknown(Question question) {
        Unknown unknown = question.unknown(answers);
        String value = unknown.in(units());
        if (value.isEmpty()) {
            return "If you don't know, type dk: " + unknown.instead() + ".";
        }
        return alone
                ? "If you don't know, type dk and come back when you do."
                : "If you don't know, type dk. The file then says: " + value + " (" + unknown.reason() + ").";
    }

    /** Takes an answer, or says why not. */
    private boolean take(Question question, String line) {
        try {
            answers = answers.with(question, understood(question, line));
            boolean left = alone
                    && answers.to(question).filter(Answer::known).isEmpty()
                    && !question.unknown(answers).in(units()).isEmpty();
            dialogue.say(left ? "not known" : echo(question, line), "-> ", INDENT);
            if (question.kind(answers) instanceof AnswerKind.Quantity amount && amount.isBare(line)) {
                dialogue.say("Taken as" + amount.unit(units()) + ", the unit of the example; type back to change it.");
            }
            if (question.id().equals(PlaceQuestion.PLACE)
                    && answers.to(question)
                            .filter(given -> PlaceQuestion.isAssumed(line, given.value()))
                            .isPresent()) {
                dialogue.say(PlaceQuestion.ASSUMED);
            }
            return true;
        } catch (IllegalArgumentException e) {
            dialogue.say("Not accepted: " + e.getMessage() + (e.getMessage().endsWith("?") ? "" : "."));
            return false;
        }
    }

    /** What was understood; a word that was not typed says what it answers. */
    private String echo(Question question, String line) {
        String shown = Interview.Summary.of(question, answers, units());
        return shown.contains(" ") || shown.equalsIgnoreCase(line.strip().replace(' ', '-'))
                ? shown
                : units().spelled(question.label()) + ": " + shown;
    }

    /**
     * The answer in a line.
     *
     * @throws IllegalArgumentException if there is none; the message says why
     */
    private Answer understood(Question question, String line) {
        Spoken.Doubt doubt = Spoken.of(line).doubt();
        boolean unsaid = question.kind() instanceof AnswerKind.Quantity && Spoken.isWithoutNumber(line);
        if (doubt == Spoken.Doubt.UNKNOWN || unsaid || SupplyQuestions.isSame(question, line)) {
            return unknown(question);
        }
        if (line.isEmpty()) {
            if (question.id().equals(SupplyQuestions.TITLE)) {
                return Answer.UNKNOWN;
            }
            throw new IllegalArgumentException(
                    "an empty line is not an answer; type dk if you don't know, or ? to see how to find out");
        }
        boolean names = ReliefQuestions.namesTwo(question, line);
        two |= names;
        String said = names ? ReliefQuestions.ofOne(line) : line;
        String value = question.kind(answers).understand(said, units());
        boolean guessed = question.id().equals(PlaceQuestion.PLACE) && PlaceQuestion.isAssumed(line, value)
                || doubt == Spoken.Doubt.GUESS && !(question.kind() instanceof AnswerKind.Text);
        return sound(question, new Answer(value, true, guessed, two));
    }

    private Answer unknown(Question question) {
        List<String> faults = checks().faults(answers.with(question, Answer.UNKNOWN), question);
        if (faults.isEmpty()) {
            return Answer.UNKNOWN;
        }
        throw new IllegalArgumentException(
                "the usual range, " + question.unknown(answers).in(units())
                        + ", conflicts with the earlier answers (" + String.join("; ", faults)
                        + "); give your best estimate");
    }

    /** The answer if a file may say so; without the uncertainty of the reading where that alone passes a limit. */
    private Answer sound(Question question, Answer answer) {
        List<String> faults = List.of();
        for (Answer one : new LinkedHashSet<>(List.of(answer, answer.withoutSpread()))) {
            faults = checks().faults(answers.with(question, one), question);
            if (faults.isEmpty()) {
                return one;
            }
        }
        throw new IllegalArgumentException(String.join("; ", faults));
    }

    /**
     * Checks answers with the scenario reader, so that an interview accepts exactly what a file may say, with the same
     * messages.
     */
    private static final class Checks {

        /** The entries of the timetable that hold what the mains has at night; see {@link ScenarioText}. */
        private static final Pattern NIGHT_ENTRY = Pattern.compile("supply\\.pressure\\[[01]].*");

        private final UnitSystem units;

        Checks(UnitSystem units) {
            this.units = units;
        }

        /**
         * What the reader of files says against the answers, also where all that is uncertain is as low or as high as a
         * study may take it. Missing answers are ignored.
         *
         * @param answers answers to any of the questions
         * @param asked the question to which the last answer belongs
         * @return sentences, none if all is well
         */
        List<String> faults(Answers answers, Question asked) {
            List<Lines.Line> written = new Lines(answers, units)
                    .all().stream().filter(Lines.Line::given).toList();
            // without a range, all three texts are one
            Set<String> texts = new HashSet<>();
            for (Reach reach : Reach.values()) {
                String text = ScenarioText.of(answers, units, reach);
                List<String> said = texts.add(text) ? faults(text) : List.of();
                List<String> faults = said.stream()
                        .filter(message -> written.stream().anyMatch(line -> concerns(field(message), line)))
                        .map(message -> sentence(message, asked))
                        .distinct()
                        .toList();
                if (!faults.isEmpty()) {
                    return faults;
                }
            }
            return List.of();
        }

        private static List<String> faults(String text) {
            try {
                ScenarioReader.read("interview", text);
                return List.of();
            } catch (InvalidScenarioException e) {
                return e.faults().stream().map(Fault::message).toList();
            }
        }

        private static boolean concerns(String field, Lines.Line line) {
            return field.equals(line.path()) || field.startsWith(line.path() + ".");
        }

        /** The field a message is about, without the places in lists; nothing if it is about none. */
        private static String field(String message) {
            String field = message.substring(0, Math.max(0, message.indexOf(": ")));
            return NIGHT_ENTRY.matcher(field).matches()
                    ? SupplyQuestions.NIGHT
                    : field.replaceFirst("^relief\\[1]", ReliefQuestions.OTHER).replaceAll("\\[\\d+]", "");
        }

        private static String sentence(String message, Question asked) {
            String field = field(message);
            String words = message.substring(message.indexOf(": ") + 2);
            return Questions.all().stream()
                    .filter(question -> concerns(field, new Lines.Line(question.id(), "", "", Origin.GIVEN)))
                    .filter(question -> question != asked)
                    .findFirst()
                    .map(question -> question.label() + ": " + words)
                    .orElse(words);
        }
    }
}
