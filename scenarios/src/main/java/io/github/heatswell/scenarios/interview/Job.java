package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A job that the guide leads through: whose house it is, who is asked, what is known so far, and where it is. It
 * remembers all of that in a file beside the house's own.
 */
final class Job {

    /** Under which the guide remembers that a larger vessel is recommended than was bought. */
    static final String RECOMMENDED = "recommended";

    /** Under which the guide remembers what readings were found to say. */
    static final String FOUND = "found";

    /** Under which the guide remembers that a lower supply is still to come. */
    static final String CURE = "cure";

    /** Under which the guide remembers that run and papers of the house with its vessel are there. */
    static final String PRINTED = "printed";

    /** Under which the guide remembers that nobody read the gauge after the change. */
    static final String UNREAD = "unread";

    /** Under which the guide remembers the setting of the reducing valve that goes with readings at rest. */
    static final String AT_REST = "at-rest";

    /** In place of what a plate says that nobody could read. */
    static final String NOT_READ = "not read";

    /** What is changed about the supply, in the order in which a file takes it. */
    static final List<String> SUPPLY =
            List.of(SupplyQuestions.ARRANGEMENT, "supply.reducing-valve", SupplyQuestions.REDUCED);

    /** What is known of the vessel that was bought, in the order in which a file takes it. */
    private static final List<String> VESSEL =
            List.of(NamedValue.VESSEL_VOLUME.field(), NamedValue.VESSEL_RATING.field(), NamedValue.PRECHARGE.field());

    private final Path house;
    private final Dialogue dialogue;
    private final Interviewer interviewer;
    private final NewVessel fitting;
    private final HouseFile notes;
    private final Map<String, String> known;
    private final Guide.Commands commands;
    private Step at;
    private int status;
    private Optional<NextStep> next = Optional.empty();
    /** The file of the house with its new vessel, once it is written. */
    private Optional<Path> described = Optional.empty();

    Job(Path house, Dialogue dialogue, Optional<UnitSystem> units, Notes before, Guide.Commands commands) {
        this.house = house;
        this.dialogue = dialogue;
        this.interviewer = new Interviewer(dialogue, units.or(() -> unitsOf(house)));
        this.fitting = new NewVessel(house, interviewer.units());
        this.notes = notes(house);
        this.commands = commands;
        this.known = new LinkedHashMap<>();
        for (String name : Stream.concat(
                        Stream.concat(SUPPLY.stream(), VESSEL.stream()),
                        Stream.of(RECOMMENDED, FOUND, AT_REST, CURE, PRINTED, UNREAD))
                .toList()) {
            before.said(name).ifPresent(said -> known.put(name, said));
        }
        this.at = before.said("step")
                .flatMap(word -> Arrays.stream(Step.values())
                        .filter(step -> step.name().equalsIgnoreCase(word))
                        .findFirst())
                .orElse(Step.DRIP);
    }

    /** The units of the house's file, which are those of its place where it names one; empty if it cannot be read. */
    private static Optional<UnitSystem> unitsOf(Path house) {
        try {
            return Optional.of(ScenarioReader.read(house).units());
        } catch (IOException | RuntimeException unreadable) {
            return Optional.empty();
        }
    }

    /** The file beside the house's own that remembers where the guide was. */
    static HouseFile notes(Path house) {
        return new HouseFile(house.resolveSibling(name(house) + ".guide.txt"));
    }

    static String name(Path house) {
        String name = Objects.requireNonNull(house.getFileName(), "name").toString();
        return name.replaceFirst("(?i)\\.ya?ml$", "");
    }

    void remember() throws OutputException {
        StringBuilder text = new StringBuilder("# Where the guide was. To carry on: heatswell guide -o "
                + house.getFileName() + "\n" + Notes.line("step", at.name().toLowerCase(Locale.ROOT)));
        known.forEach((field, value) -> text.append(Notes.line(field, value)));
        notes.write(text.toString());
    }

    /** Forgets the whole job. */
    void end() throws OutputException {
        notes.remove();
    }

    /** Begins anew. */
    void startOver() {
        known.clear();
        at = Step.DRIP;
    }

    /** Where the job is. */
    Step at() {
        return at;
    }

    void goTo(Step step) {
        at = step;
    }

    Path house() {
        return house;
    }

    /** A file beside the house's own. */
    Path beside(String ending) {
        return house.resolveSibling(name(house) + ending);
    }

    Dialogue dialogue() {
        return dialogue;
    }

    UnitSystem units() {
        return interviewer.units();
    }

    NewVessel fitting() {
        return fitting;
    }

    /** What is known of the job so far: fields of the file with their values, and the notes named above. */
    Map<String, String> known() {
        return known;
    }

    /** Remembers which file describes the house with its new vessel. */
    void describe(Path file) {
        described = Optional.of(file);
    }

    void blankLine() {
        dialogue.blankLine();
    }

    /** The folder that the first step writes into, or one beside it: in one folder a later answer takes the place of an earlier. */
    String folder(String ending) {
        return Path.of("heatswell-out", name(house) + ending).toString();
    }

    /** The report with the papers for the work. */
    Path papers() {
        return commands.papers(Path.of(folder(""))).resolve("report.html");
    }

    /** The command that comes after the whole job, about the house with its vessel; empty if none does. */
    List<String> after() {
        return next.map(step -> described
                        .map(file -> words(step.command(), file, step.changes()))
                        .orElseGet(() -> about(step.command(), step.changes())))
                .orElse(List.of());
    }

    /** A command about the house with its vessel, as far as that is known, and with something changed. */
    private List<String> about(String command, List<Change> changes) {
        Map<String, String> set = new LinkedHashMap<>(at.compareTo(Step.BUY) > 0 ? values() : supply());
        changes.forEach(change -> set.put(change.field(), change.value()));
        return words(
                command,
                house,
                set.entrySet().stream()
                        .map(one -> new Change(one.getKey(), one.getValue()))
                        .toList());
    }

    private static List<String> words(String command, Path file, List<Change> changes) {
        List<String> words = new ArrayList<>(List.of(command, file.toString()));
        changes.forEach(change -> words.addAll(List.of("--set", change.field() + "=" + change.value())));
        return words;
    }

    /** Runs a command about the house with its vessel, as far as that is known. */
    Way run(String command, String... more) {
        List<String> words = about(command, List.of());
        words.addAll(List.of(more));
        next = run(words).next();
        return Way.ON;
    }

    /** Runs a command line; what the command before said comes next still holds. */
    Guide.Done run(List<String> words) {
        Guide.Done done = commands.run(words);
        status = done.status();
        return done;
    }

    /** The exit status of the last command. */
    int status() {
        return status;
    }

    /** Leaves it at what the last command said: nothing has to be put right before the guide goes on. */
    void pass() {
        status = 0;
    }

    /** What the last command about the house says comes next. */
    Optional<NextStep> next() {
        return next;
    }

    /** Says something, with units as the house has them. */
    void say(String sentence) {
        dialogue.say(interviewer.units().spelled(sentence));
    }

    /** What readings were found to say; empty if there were none. */
    Optional<FoundCause> found() {
        return FoundCause.of(known.get(FOUND));
    }

    /** Whether the supply was lowered, as the sizing advises. */
    boolean isLowered() {
        return SUPPLY.stream().anyMatch(known::containsKey);
    }

    /** What is changed about the supply, or known of it by readings. */
    Map<String, String> supply() {
        Map<String, String> supply = new LinkedHashMap<>();
        Optional.ofNullable(known.get(AT_REST)).ifPresent(set -> supply.put(SupplyQuestions.REDUCED, set));
        SUPPLY.stream().filter(known::containsKey).forEach(field -> supply.put(field, known.get(field)));
        return supply;
    }

    /** What is to be written into the file of the house. */
    Map<String, String> values() {
        Map<String, String> values = supply();
        VESSEL.stream()
                .filter(known::containsKey)
                .filter(field -> !known.get(field).equals(NOT_READ))
                .forEach(field -> values.put(field, known.get(field)));
        return values;
    }

    /** Asks for a value of the vessel; who does not know it yet comes back later. */
    Way ask(Question question) {
        Way way = heard(question);
        if (way != Way.ON) {
            return way;
        }
        String value = written(question);
        if (value.isEmpty()) {
            dialogue.say("Come back when you know.");
            return Way.LEFT;
        }
        known.put(question.id(), value);
        return Way.ON;
    }

    /** An answer as it was typed. */
    Optional<String> answer(Question question) {
        return interviewer.answers().to(question).map(Answer::value);
    }

    /** An answer as a file says it, with what it may be off by; empty if it is not known. */
    String written(Question question) {
        return new Lines(interviewer.answers(), interviewer.units())
                .of(question)
                .filter(line ->
                        interviewer.answers().to(question).filter(Answer::known).isPresent())
                .map(Lines.Line::value)
                .orElse("");
    }

    /** Asks one question. */
    Way heard(Question question) {
        return Way.of(interviewer.askAlone(question));
    }
}
