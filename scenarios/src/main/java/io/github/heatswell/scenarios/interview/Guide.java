package io.github.heatswell.scenarios.interview;

import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.narrative.SizeAdvice.LowerSupply;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ReadingsAfter;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The whole job in one sitting, from the drip to a vessel that stops it. The steps are commands, each as anybody may type it;
 * the
 * guide asks for what they need, and remembers beside the house's file where it was.
 */
public final class Guide {

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
                            + " a gauge log in CSV. Without readings, the guide goes by the description of the house.")
            .ifUnknown(Unknown.leftOut("the guide uses the description of the house"))
            .build();

    /** Under which the guide remembers that a larger vessel is recommended than was bought. */
    private static final String RECOMMENDED = "recommended";

    /** Under which the guide remembers what readings were found to say. */
    private static final String FOUND = "found";

    private static final Question UNIT = Question.about(
                    "unit", "Unit of the gauge", AnswerKind.Word.of("psi", "bar", "kPa"))
            .asks("The pressures have no unit. Which unit does the gauge show?")
            .find("its dial.", "A dial with two scales has two units: the one whose numbers you wrote down.")
            .ifUnknown(Unknown.leftOut("the unit of the house's file is assumed"))
            .build();

    private static final Question RATING = Question.about(
                    NamedValue.VESSEL_RATING.field(),
                    "Made for",
                    AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("10 bar", "150 psi")))
            .asks("What working pressure is that vessel rated for?")
            .find(
                    "its plate, as the maximum working pressure.",
                    "It must be at least the set pressure of the relief valve. If the plate does not say, ask the seller.")
            .ifUnknown(Unknown.leftOut("the plate must be read before the vessel is fitted"))
            .build();

    /** In place of what a plate says that nobody could read. */
    private static final String NOT_READ = "not read";

    /** What is known of the vessel that was bought, in the order in which a file takes it. */
    private static final List<String> VESSEL =
            List.of(NamedValue.VESSEL_VOLUME.field(), NamedValue.VESSEL_RATING.field(), NamedValue.PRECHARGE.field());

    /** Under which the guide remembers that a lower supply is still to come. */
    private static final String CURE = "cure";

    /** Under which the guide remembers that run and papers of the house with its vessel are there. */
    private static final String PRINTED = "printed";

    /** Under which the guide remembers that nobody read the gauge after the change. */
    private static final String UNREAD = "unread";

    /** What is changed about the supply, in the order in which a file takes it. */
    private static final List<String> SUPPLY =
            List.of(SupplyQuestions.ARRANGEMENT, "supply.reducing-valve", SupplyQuestions.REDUCED);

    private static final List<String> NONE = List.of("no", "n", "none", "not yet");

    /** That readings are there, on paper, as people say it. */
    private static final Pattern ON_PAPER = Pattern.compile(
            "(?i)(?:y|yes|yeah|yep|sure)?(?:[, ]*(?:i (?:have|did|do)|(?:it'?s |they'?re )?(?:(?:on|from) )?(?:a piece of )?paper))?");

    private static final Pattern PRESSURE_UNIT = Pattern.compile("(?i)psi|bar|pa\\b|kg|atm|wc");

    /** What is asked of the house with its new vessel. */
    private static final String STAYS_SHUT = "Does the relief valve stay shut after the change?";

    /** The steps in their order. */
    private enum Step {
        DRIP("The drip: does this house drip, and how much?"),
        CAUSE("The cause: what do gauge readings say?"),
        SIZE("The size: which vessel, and what charge?"),
        BUY("The vessel: which one did you buy?"),
        CHARGE("The charge: what is it pumped up to?"),
        VERIFY("The check: does the gauge read what it should now?"),
        KEEP("The years: when should the charge be checked?");

        private final String title;

        Step(String title) {
            this.title = title;
        }
    }

    /** Whether a step is done, or how the guide ends. */
    private enum Way {
        ON,
        LEFT,
        BACK,
        ENDED,
        DONE
    }

    private final Path house;
    private final Dialogue dialogue;
    private final Interviewer interviewer;
    private final NewVessel fitting;
    private final HouseFile kept;
    private final Map<String, String> vessel;
    private final Function<List<String>, Done> commands;
    private Step at;
    private int status;
    private Optional<NextStep> next = Optional.empty();
    /** The file of the house with its new vessel, once it is written. */
    private Optional<Path> described = Optional.empty();

    private Guide(
            Path house,
            Dialogue dialogue,
            Optional<UnitSystem> units,
            Notes notes,
            Function<List<String>, Done> commands) {
        this.house = house;
        this.dialogue = dialogue;
        this.interviewer = new Interviewer(dialogue, units.or(() -> unitsOf(house)));
        this.fitting = new NewVessel(house, interviewer.units());
        this.kept = kept(house);
        this.commands = commands;
        this.vessel = new LinkedHashMap<>();
        for (String kept : Stream.concat(
                        Stream.concat(SUPPLY.stream(), VESSEL.stream()),
                        Stream.of(RECOMMENDED, FOUND, CURE, PRINTED, UNREAD))
                .toList()) {
            notes.said(kept).ifPresent(said -> vessel.put(kept, said));
        }
        this.at = notes.said("step")
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
    private static HouseFile kept(Path house) {
        return new HouseFile(house.resolveSibling(name(house) + ".guide.txt"));
    }

    private static String name(Path house) {
        String name = Objects.requireNonNull(house.getFileName(), "name").toString();
        return name.replaceFirst("(?i)\\.ya?ml$", "");
    }

    /**
     * Leads through the job from where it was left.
     *
     * @param house the file of the house; the interview comes first if it does not exist
     * @param units the units of examples, or those of the place if empty
     * @param in gives the answers, one in a line; stays open
     * @param out takes the questions; stays open
     * @param commands runs a command line, such as {@code size my-house.yaml}
     * @return how it ended
     * @throws OutputException if a file cannot be written
     */
    public static Ending lead(
            Path house, Optional<UnitSystem> units, Reader in, PrintWriter out, Function<List<String>, Done> commands)
            throws OutputException {
        if (!Files.exists(house)) {
            Outcome described = Interview.hold(house, units, in, out);
            if (described.ending() != Outcome.Ending.FINISHED
                    || !described.file().equals(house)) {
                return new Ending(described.ending(), 0, List.of());
            }
        }
        Notes notes = kept(house).notes().orElseGet(() -> Notes.in(""));
        return new Guide(house, new Dialogue(in, out), units, notes, commands).lead();
    }

    /**
     * How a guide ended.
     *
     * @param ending finished, left, or at the end of the input
     * @param status the exit status of the last command; not 0 where it has to be put right before the guide goes on
     * @param next the words of the command that comes after the whole job; none where the guide is to be carried on
     */
    public record Ending(Outcome.Ending ending, int status, List<String> next) {

        /**
         * Checks that everything is there.
         *
         * @param ending how it ended
         * @param status the exit status of the last command
         * @param next the words of the command that comes after the whole job
         */
        public Ending {
            Objects.requireNonNull(ending, "ending");
            next = List.copyOf(next);
        }
    }

    /**
     * What a command came to.
     *
     * @param status its exit status
     * @param next what it says comes next; empty if it says nothing
     */
    public record Done(int status, Optional<NextStep> next) {

        /**
         * Checks that everything is there.
         *
         * @param status its exit status
         * @param next what it says comes next
         */
        public Done {
            Objects.requireNonNull(next, "next");
        }
    }

    private Ending lead() throws OutputException {
        Step[] steps = Step.values();
        while (true) {
            int i = at.ordinal();
            remember();
            dialogue.blankLine();
            dialogue.say(
                    interviewer.units().spelled(at.title), "Step " + (i + 1) + " of " + steps.length + ". ", "   ");
            Way way = take(at);
            if (way == Way.ON && status != 0) {
                dialogue.blankLine();
                dialogue.say("Fix this first. The guide then picks up at this step.");
                way = Way.LEFT;
            }
            if (way == Way.BACK) {
                at = at == Step.CHARGE ? Step.BUY : Step.CAUSE;
                continue;
            }
            if (way == Way.DONE) {
                kept.remove();
                return new Ending(Outcome.Ending.FINISHED, status, after());
            }
            if (way == Way.ON && i + 1 == steps.length) {
                kept.remove();
                close();
                return new Ending(Outcome.Ending.FINISHED, status, after());
            }
            if (way == Way.ON) {
                at = at == steps[i] ? steps[i + 1] : at;
                remember();
                way = goOn();
            }
            if (way != Way.ON) {
                dialogue.blankLine();
                remember();
                dialogue.say("Stopped at step " + (at.ordinal() + 1) + " of " + steps.length
                        + ". Everything is saved: start the guide again, and it picks up there.");
                return new Ending(way == Way.LEFT ? Outcome.Ending.LEFT : Outcome.Ending.ENDED, status, List.of());
            }
        }
    }

    /** What is left to do, and what to write down. */
    private void close() throws OutputException {
        // a charge for a supply that is to be lowered is nothing to bring about
        Optional<String> wrong = vessel.containsKey(CURE) ? Optional.empty() : fitting.wrongCharge(values());
        List<String> left = Stream.of(
                        Optional.ofNullable(vessel.get(RECOMMENDED)),
                        Optional.ofNullable(vessel.get(CURE)),
                        fitting.weak(values()),
                        wrong,
                        Optional.ofNullable(vessel.get(UNREAD))
                                .map(any -> "Take the readings of the check sheet, and compare them with it."))
                .flatMap(Optional::stream)
                .map(interviewer.units()::spelled)
                .toList();
        dialogue.blankLine();
        dialogue.say(left.isEmpty() ? "That is the whole job." : "Still to do: " + String.join(" ", left));
        found().flatMap(FoundCause::left).map(interviewer.units()::spelled).ifPresent(dialogue::say);
        if (!vessel.containsKey(NamedValue.VESSEL_VOLUME.field())) {
            return;
        }
        HouseFile changed = new HouseFile(house.resolveSibling(name(house) + "-with-vessel.yaml"));
        Optional<String> text = changed.exists() ? Optional.empty() : fitting.described(values());
        if (text.isPresent()) {
            changed.write(text.get());
            described = Optional.of(changed.path());
            say("The file " + changed.name() + " now describes the house with its new vessel"
                    + (wrong.isEmpty()
                            ? ""
                            : ", as it is charged at present: correct vessel.precharge in it after pumping")
                    + ". Use it from now on.");
            return;
        }
        say("The file " + house.getFileName()
                + " still describes the house as it was. Once the vessel is fitted, enter it there: "
                + values().entrySet().stream()
                        .filter(entry -> wrong.isEmpty() || !entry.getKey().equals(NamedValue.PRECHARGE.field()))
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining(", "))
                + (wrong.isEmpty() ? "" : ", and as vessel.precharge what the gauge then shows") + ".");
    }

    private void remember() throws OutputException {
        StringBuilder text = new StringBuilder("# Where the guide was. To carry on: heatswell guide -o "
                + house.getFileName() + "\n" + Notes.line("step", at.name().toLowerCase(Locale.ROOT)));
        vessel.forEach((field, value) -> text.append(Notes.line(field, value)));
        kept.write(text.toString());
    }

    private Way goOn() {
        dialogue.blankLine();
        dialogue.say(
                "Press Enter to go on, or type: quit to stop for now, back to repeat the last step, new to start over.");
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Optional<String> line = dialogue.hear();
            if (line.isEmpty()) {
                return Way.ENDED;
            }
            String word = Spoken.of(line.get()).plain().toLowerCase(Locale.ROOT);
            switch (word) {
                case "", "yes", "next" -> {
                    return Way.ON;
                }
                case "back" -> {
                    at = Step.values()[Math.max(0, at.ordinal() - 1)];
                    return Way.ON;
                }
                case "new" -> {
                    vessel.clear();
                    at = Step.DRIP;
                    return Way.ON;
                }
                default -> {
                    if (Interview.LEAVE.contains(word)) {
                        return Way.LEFT;
                    }
                    dialogue.say("Ignored: nothing was asked. Press Enter to go on, or type quit, back or new.");
                }
            }
        }
        return Way.ENDED;
    }

    private Way take(Step step) throws OutputException {
        return switch (step) {
            case DRIP -> run("run");
            case CAUSE -> cause();
            case SIZE -> size();
            case BUY -> buy();
            case CHARGE -> charge();
            case VERIFY -> verify();
            case KEEP -> run("outlook");
        };
    }

    /** A folder of its own for the house with its new vessel, so that the papers of the first step stay. */
    private String folder(String ending) {
        return Path.of("heatswell-out", name(house) + ending).toString();
    }

    /** What the last command says comes next, about the house with its vessel. */
    private List<String> after() {
        return next.map(step -> described
                        .map(file -> words(step.command(), file, step.changes()))
                        .orElseGet(() -> about(step.command(), step.changes())))
                .orElse(List.of());
    }

    /** A command about the house with its vessel, as far as that is known, and with something changed. */
    private List<String> about(String command, List<Change> changes) {
        Map<String, String> set = new LinkedHashMap<>(at.compareTo(Step.BUY) > 0 ? values() : Map.of());
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
    private Way run(String command, String... more) {
        List<String> words = about(command, List.of());
        words.addAll(List.of(more));
        Done done = commands.apply(words);
        status = done.status();
        next = done.next();
        return Way.ON;
    }

    /** The size; where no vessel is to be bought, the steps about one are left out. */
    private Way size() {
        run("size", found().map(FoundCause::changes).orElse(List.of()).toArray(String[]::new));
        String command = next.map(NextStep::command).orElse("");
        if (status == 0 && command.equals("spread")) {
            dialogue.blankLine();
            say("No vessel is needed. That is the whole job.");
            found().flatMap(FoundCause::left).ifPresent(this::say);
            return Way.DONE;
        }
        if (status == 0 && command.equals("outlook")) {
            dialogue.blankLine();
            say("The vessel you have is right, so there is nothing to buy. The guide goes on to the years ahead.");
            at = Step.KEEP;
        }
        return Way.ON;
    }

    /**
     * Does the valve stay shut, and what are the papers for the work? The gauge then tells whether the change did what it should; the
     * readings may come days later.
     */
    private Way verify() throws OutputException {
        if (!vessel.containsKey(PRINTED)) {
            print();
            if (status != 0) {
                return Way.ON;
            }
            vessel.put(PRINTED, "yes");
            remember();
        }
        Optional<ReadingsAfter> sheet =
                fitting.isOne(values()) ? fitting.sheet(values(), interviewer.units()) : Optional.empty();
        if (sheet.isEmpty()) {
            return Way.ON;
        }
        dialogue.blankLine();
        say("Once the vessel is fitted, print the check sheet in " + Path.of(folder("-with-vessel"), "report.html")
                + ", and read the gauge as it says. It is for this vessel and charge; one in other papers is not.");
        CheckTalk talk =
                new CheckTalk(dialogue, interviewer.units(), sheet.get().moments());
        CheckTalk.Ending ending = talk.hold();
        if (ending != CheckTalk.Ending.DONE) {
            return ending == CheckTalk.Ending.LATER ? Way.LEFT : Way.ENDED;
        }
        if (talk.read().isEmpty()) {
            say("Without readings nobody knows whether the change worked. Take them when you can.");
            vessel.put(UNREAD, "yes");
            return Way.ON;
        }
        vessel.remove(UNREAD);
        dialogue.blankLine();
        sheet.get().answer(talk.read()).forEach(this::say);
        return sheet.get().agrees(talk.read()) ? Way.ON : look(talk.read());
    }

    /** Readings that are off are what a diagnosis is for, as far as it takes them; the guide waits for what it says. */
    private Way look(Map<CheckSheet.Reading.Kind, Double> read) throws OutputException {
        String lines = ReadingsAfter.forDiagnosis(read);
        if (!lines.isEmpty()) {
            HouseFile list = new HouseFile(house.resolveSibling(name(house) + "-check.yaml"));
            list.write(lines);
            dialogue.blankLine();
            say("What these readings say about the cause takes a minute or two.");
            run("diagnose", "--readings", list.path().toString(), "--out", folder("-check"));
            status = 0;
        }
        dialogue.blankLine();
        say("Put that right, read again, and type the new readings here: the guide picks up at this step.");
        return Way.LEFT;
    }

    private void print() {
        run("run", "--set", "question=" + STAYS_SHUT, "--out", folder("-with-vessel"));
        if (status == 0 && fitting.isOne(values())) {
            dialogue.blankLine();
            say("The papers for the work. They replace those of the sizing before: hand over these alone.");
            dialogue.blankLine();
            List<String> words = new ArrayList<>(List.of("size", house.toString()));
            supply().forEach((field, value) -> words.addAll(List.of("--set", field + "=" + value)));
            words.addAll(List.of("--bought", vessel.get(NamedValue.VESSEL_VOLUME.field())));
            Map.of("--rating", RATING.id(), "--charged", ReliefQuestions.PRECHARGE).entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .filter(read -> values().containsKey(read.getValue()))
                    .forEach(read -> words.addAll(
                            List.of(read.getKey(), values().get(read.getValue()).replaceFirst(" \\+- .*", ""))));
            words.addAll(List.of("--out", folder("-papers")));
            status = commands.apply(words).status();
        }
    }

    private void say(String sentence) {
        dialogue.say(interviewer.units().spelled(sentence));
    }

    private Optional<FoundCause> found() {
        return FoundCause.of(vessel.get(FOUND));
    }

    private Way cause() throws OutputException {
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Way way = heard(READINGS);
            Optional<String> file = interviewer.answers().to(READINGS).map(Answer::value);
            if (way == Way.BACK) {
                dialogue.say("This is the first question.");
                continue;
            }
            if (way != Way.ON) {
                return way;
            }
            String name = file.orElse("");
            if (name.isEmpty() || NONE.contains(name.toLowerCase(Locale.ROOT))) {
                vessel.remove(FOUND);
                status = 0;
                return Way.ON;
            }
            boolean line = !Files.exists(Path.of(name)) && ReadingsTalk.isReading(name);
            boolean typed = line || ON_PAPER.matcher(name).matches();
            Path list = house.resolveSibling(name(house) + "-readings.txt");
            Outcome.Ending ending =
                    typed ? typeIn(list, line ? Optional.of(name) : Optional.empty()) : Outcome.Ending.FINISHED;
            if (ending != Outcome.Ending.FINISHED) {
                return ending == Outcome.Ending.ENDED ? Way.ENDED : Way.LEFT;
            }
            List<String> files = new ArrayList<>(typed ? List.of("--readings", list.toString()) : files(name));
            if (lacksUnit(files)) {
                Way known = heard(UNIT);
                if (known == Way.BACK) {
                    continue;
                }
                if (known != Way.ON) {
                    return known;
                }
                files.addAll(List.of(
                        "--pressure-unit",
                        interviewer
                                .answers()
                                .to(UNIT)
                                .map(Answer::value)
                                .filter(unit -> !unit.isEmpty())
                                .orElse(interviewer.units().pressure().symbol())));
            }
            say("Comparing every cause with the readings takes a minute or two.");
            run("diagnose", files.toArray(String[]::new));
            if (status == 0) {
                FoundCause cause = new FoundCause(
                        next.flatMap(NextStep::cause),
                        next.filter(step -> step.command().equals("size")).isPresent(),
                        next.filter(step -> step.cause().isEmpty()
                                        && !step.changes().isEmpty())
                                .isPresent());
                vessel.put(FOUND, cause.word());
                dialogue.blankLine();
                boolean closed = fitting.isClosed();
                say(cause.first(closed));
                return !closed && cause.isMended() ? Way.DONE : cause.holds() ? Way.LEFT : Way.ON;
            }
            if (status != 2) {
                dialogue.blankLine();
                say("If a reading was written down wrong, correct it in "
                        + (typed ? list.toString() : name)
                        + (typed ? ": start the guide again, type paper, and take lines back with back" : "") + ".");
                return Way.ON;
            }
        }
        return Way.ENDED;
    }

    /** Takes readings from paper into a file beside the house's own; the first may be there already. */
    private Outcome.Ending typeIn(Path list, Optional<String> first) throws OutputException {
        Outcome.Ending ending = new ReadingsTalk(dialogue, list, interviewer.units(), fitting.alarming()).hold(first);
        if (ending == Outcome.Ending.OBSTRUCTED) {
            dialogue.say(list + " contains something other than readings; rename it first.");
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

    /** The lower supply that the sizing advises comes first: size and charge are for it. Then the vessel that was bought. */
    private Way buy() {
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Way way = lower();
            if (way != Way.ON) {
                return way;
            }
            boolean lowered = !supply().isEmpty();
            fitting.toBuy(supply()).ifPresent(this::say);
            way = ask(Questions.named(ReliefQuestions.VOLUME));
            if (way == Way.BACK && lowered) {
                vessel.keySet().removeAll(SUPPLY);
                continue;
            }
            if (way == Way.ON) {
                vessel.remove(RECOMMENDED);
                // the size on its label is the one it is sold by
                vessel.computeIfPresent(ReliefQuestions.VOLUME, (field, value) -> value.replaceFirst(" \\+- .*", ""));
                fitting.tooSmall(supply(), values()).ifPresent(said -> {
                    vessel.put(RECOMMENDED, said);
                    say(said);
                });
                vessel.keySet().removeAll(List.of(RATING.id(), PRINTED));
            }
            return way;
        }
        return Way.ENDED;
    }

    /** What the plate of the vessel allows, and whether that is enough; asked once. */
    private Way plate() throws OutputException {
        if (vessel.containsKey(RATING.id())) {
            return Way.ON;
        }
        Way way = heard(RATING);
        if (way == Way.ON) {
            String value = interviewer.answers().to(RATING).map(Answer::value).orElse("");
            vessel.put(RATING.id(), value.isEmpty() ? NOT_READ : value);
            remember();
            fitting.weak(values()).ifPresent(this::say);
        }
        return way;
    }

    /** Asks whether the supply was lowered, where the sizing advises it; what was read then holds from there on. */
    private Way lower() {
        if (!supply().isEmpty()) {
            return Way.ON;
        }
        vessel.remove(CURE);
        Optional<LowerSupply> cure = fitting.cure(Map.of());
        if (cure.isEmpty()) {
            return Way.ON;
        }
        Question question = Question.about(
                        "lowered",
                        "Reducing valve set to",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("3.5 bar", "50 psi"))
                                .orNone("if that is not done yet"))
                .asks("The sizing says to have " + fitting.set(cure.get())
                        + ". Is that done, and what does a gauge downstream of it read?")
                .find(
                        "read the gauge while a little water runs.",
                        "The size and charge of the vessel depend on this pressure. If you leave the valve as it is, type its"
                                + " present setting.")
                .offBy(SupplyQuestions.GAUGE)
                .ifUnknown(Unknown.leftOut("the guide waits until it is"))
                .build();
        Way way = heard(question);
        if (way != Way.ON) {
            return way;
        }
        String value = written(question);
        if (value.isEmpty() || value.equals(AnswerKind.Quantity.NONE)) {
            say("Have that done first: the size and charge of the vessel depend on it. The guide will pick up here.");
            return Way.LEFT;
        }
        if (cure.get().supply().fitted()) {
            vessel.put(SupplyQuestions.ARRANGEMENT, "reducing-valve");
            vessel.put("supply.reducing-valve", "{ set: " + value + " }");
        } else {
            vessel.put(SupplyQuestions.REDUCED, value);
        }
        fitting.cure(supply()).map(fitting::told).ifPresent(said -> {
            vessel.put(CURE, said);
            say(said);
        });
        return Way.ON;
    }

    /** What is changed about the supply. */
    private Map<String, String> supply() {
        Map<String, String> supply = new LinkedHashMap<>();
        SUPPLY.stream().filter(vessel::containsKey).forEach(field -> supply.put(field, vessel.get(field)));
        return supply;
    }

    /** Its charge: what it should be comes first, and a wrong one is asked for again, unless it is given twice. */
    private Way charge() throws OutputException {
        Way plate = plate();
        if (plate != Way.ON) {
            return plate;
        }
        vessel.remove(PRINTED);
        Optional.ofNullable(vessel.get(RECOMMENDED)).ifPresent(this::say);
        fitting.target(values()).map(interviewer.units()::spelled).ifPresent(dialogue::say);
        Question question = Questions.named(ReliefQuestions.PRECHARGE);
        String before = "";
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Way way = ask(question);
            Optional<String> wrong = way == Way.ON ? fitting.wrongCharge(values()) : Optional.empty();
            if (wrong.isEmpty() || vessel.get(question.id()).equals(before)) {
                return way;
            }
            before = vessel.get(question.id());
            dialogue.say(interviewer.units().spelled(wrong.get())
                    + " Then type what the gauge shows. To go on with this charge, type it again.");
        }
        return Way.ENDED;
    }

    /** What is to be written into the file of the house. */
    private Map<String, String> values() {
        Map<String, String> values = supply();
        VESSEL.stream()
                .filter(vessel::containsKey)
                .filter(field -> !vessel.get(field).equals(NOT_READ))
                .forEach(field -> values.put(field, vessel.get(field)));
        return values;
    }

    /** Asks for a value of the vessel; who does not know it yet comes back later. */
    private Way ask(Question question) {
        Way way = heard(question);
        if (way != Way.ON) {
            return way;
        }
        String value = written(question);
        if (value.isEmpty()) {
            dialogue.say("Come back when you know.");
            return Way.LEFT;
        }
        vessel.put(question.id(), value);
        return Way.ON;
    }

    /** An answer as a file says it, with what it may be off by; empty if it is not known. */
    private String written(Question question) {
        return new Lines(interviewer.answers(), interviewer.units())
                .of(question)
                .filter(line ->
                        interviewer.answers().to(question).filter(Answer::known).isPresent())
                .map(Lines.Line::value)
                .orElse("");
    }

    private Way heard(Question question) {
        Function<Interviewer.Ending, Way> way = ending -> switch (ending) {
            case FINISHED -> Way.ON;
            case LEFT -> Way.LEFT;
            case BACK -> Way.BACK;
            case ENDED -> Way.ENDED;
        };
        return way.apply(interviewer.askAlone(question));
    }
}
