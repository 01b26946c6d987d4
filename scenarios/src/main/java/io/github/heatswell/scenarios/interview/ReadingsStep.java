package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The step that asks for readings of the gauge, on paper or in files, and has the cause found that they speak for. */
final class ReadingsStep {

    private static final Question READINGS = Question.about(
                    "readings",
                    "Readings",
                    new AnswerKind.Text(500, "a file name, or several with commas between; paper; or no"))
            .asks(
                    "Have you written down what a pressure gauge showed? Type the file's name, or paper to type the readings in here, or"
                            + " no.")
            .find(
                    "'heatswell readings --sheet sheet.html' writes a blank sheet that says when to read.",
                    "A handwritten list will do, with a time and a pressure on each line, such as 6:45 am 61 psi showered. So will"
                            + " a gauge log in CSV. Without readings, the guide uses the description of the house.")
            .ifUnknown(Unknown.leftOut("the guide uses the description of the house"))
            .build();

    private static final Question UNIT = Question.about(
                    "unit", "Unit of the gauge", AnswerKind.Word.of("psi", "bar", "kPa"))
            .asks("The pressures have no unit. Which unit does the gauge show?")
            .find("its dial.", "A dial with two scales has two units: the one whose numbers you wrote down.")
            .ifUnknown(Unknown.leftOut("the unit of the house's file is assumed"))
            .build();

    private static final List<String> NONE = List.of("no", "n", "none", "not yet");

    /** That readings are there, on paper, as people say it. */
    private static final Pattern ON_PAPER = Pattern.compile(
            "(?i)(?:y|yes|yeah|yep|sure)?(?:[, ]*(?:i (?:have|did|do)|(?:it'?s |they'?re )?(?:(?:on|from) )?(?:a piece of )?paper))?"
                    + "|(?!.*(?:\\b(?:no|not|nothing|never)\\b|n't\\b)).*\\b(?:(?:on|from) (?:a (?:piece|sheet) of )?paper|wrote|written)\\b.*");

    /** That there are none, and why. */
    private static final Pattern NOTHING_READ = Pattern.compile(
            "(?i)(?:no|not|nothing|never|none|nope)\\b[^.]*|(?:i |we )?(?:haven't|don't|didn't|have no|have not)\\b[^.]*");

    private static final Pattern PRESSURE_UNIT = Pattern.compile("(?i)psi|bar|pa\\b|kg|atm|wc");

    private final Job job;

    ReadingsStep(Job job) {
        this.job = job;
    }

    /** Asks for the readings and runs the diagnosis. */
    Way take() throws OutputException {
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Way way = job.heard(READINGS);
            Optional<String> file = job.answer(READINGS);
            if (way == Way.BACK) {
                job.say("This is the first question.");
                continue;
            }
            if (way != Way.ON) {
                return way;
            }
            String name = file.orElse("");
            if (name.isEmpty()
                    || NONE.contains(name.toLowerCase(Locale.ROOT))
                    || NOTHING_READ.matcher(name.replaceFirst("[.!]$", "")).matches() && !Files.exists(Path.of(name))) {
                job.known().keySet().removeAll(List.of(Job.FOUND, Job.AT_REST));
                job.pass();
                return Way.ON;
            }
            boolean line = !Files.exists(Path.of(name)) && ReadingsTalk.isReading(name);
            boolean typed = line || ON_PAPER.matcher(name).matches();
            Path list = job.beside("-readings.txt");
            Outcome.Ending ending =
                    typed ? typeIn(list, line ? Optional.of(name) : Optional.empty()) : Outcome.Ending.FINISHED;
            if (ending != Outcome.Ending.FINISHED) {
                return ending == Outcome.Ending.ENDED ? Way.ENDED : Way.LEFT;
            }
            List<String> files = new ArrayList<>(typed ? List.of("--readings", list.toString()) : files(name));
            if (lacksUnit(files)) {
                Way known = job.heard(UNIT);
                if (known == Way.BACK) {
                    continue;
                }
                if (known != Way.ON) {
                    return known;
                }
                files.addAll(List.of(
                        "--pressure-unit",
                        job.answer(UNIT)
                                .filter(unit -> !unit.isEmpty())
                                .orElse(job.units().pressure().symbol())));
            }
            job.say("Comparing every cause with the readings takes a minute or two.");
            job.known().remove(Job.AT_REST); // or the readings would be compared with what they said themselves
            job.run("diagnose", files.toArray(String[]::new));
            if (job.status() == 0) {
                FoundCause cause = new FoundCause(
                        job.next().flatMap(NextStep::cause),
                        job.next().filter(step -> step.command().equals("size")).isPresent(),
                        job.next().filter(step -> step.cause().isEmpty()).stream()
                                .flatMap(step -> step.changes().stream())
                                .anyMatch(change -> change.field().startsWith("vessel.")));
                job.known().put(Job.FOUND, cause.word());
                job.next().stream()
                        .flatMap(step -> step.changes().stream())
                        .filter(change -> change.field().equals(SupplyQuestions.REDUCED))
                        .forEach(change -> job.known().put(Job.AT_REST, change.value()));
                job.blankLine();
                boolean closed = job.fitting().isClosed();
                job.say(cause.first(closed));
                Optional.ofNullable(job.known().get(Job.AT_REST))
                        .map(set -> "From here on the guide takes the reducing valve to be set to "
                                + set.replace(" +- ", ", give or take ") + ": that goes with your readings at rest.")
                        .ifPresent(job::say);
                return !closed && cause.isMended() ? Way.DONE : cause.holds() ? Way.LEFT : Way.ON;
            }
            if (job.status() != 2) {
                job.blankLine();
                job.say("If a reading was written down wrong, correct it in "
                        + (typed ? list.toString() : name)
                        + (typed ? ": start the guide again, type paper, and take lines back with back" : "") + ".");
                return Way.ON;
            }
        }
        return Way.ENDED;
    }

    /** Takes readings from paper into a file beside the house's own; the first may be there already. */
    private Outcome.Ending typeIn(Path list, Optional<String> first) throws OutputException {
        Outcome.Ending ending = new ReadingsTalk(
                        job.dialogue(), list, job.units(), job.fitting().alarming())
                .hold(first);
        if (ending == Outcome.Ending.OBSTRUCTED) {
            job.say(list + " contains something other than readings; rename it first.");
        }
        return ending;
    }

    /** The files that were named: one, or several with commas or blanks between. */
    private static List<String> files(String named) {
        List<String> words = new ArrayList<>();
        Stream<String> names = Files.exists(Path.of(named))
                ? Stream.of(named)
                : Stream.of(named.split("\\s*,\\s*(?:and\\s+)?|\\s+and\\s+|\\s+"));
        names.filter(name -> !name.isBlank()).forEach(name -> words.addAll(List.of("--readings", name)));
        return words;
    }

    /** Whether no file of readings that can be read names a unit of pressure anywhere. */
    private static boolean lacksUnit(List<String> words) {
        boolean read = false;
        for (int i = 1; i < words.size(); i += 2) {
            try {
                read = true;
                if (PRESSURE_UNIT
                        .matcher(Files.readString(Path.of(words.get(i))))
                        .find()) {
                    return false;
                }
            } catch (IOException | IllegalArgumentException unreadable) {
                return false; // the command says why
            }
        }
        return read;
    }
}
