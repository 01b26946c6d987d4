package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.units.UnitSystem;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The whole job in one sitting, from the drip to a vessel that stops it. The steps are commands, each as anybody may type it;
 * the guide asks for what they need. What it knows, and where it is, stands in {@link Job}.
 */
public final class Guide {

    private final Job job;
    private final PurchaseStep purchase;
    private final CheckStep check;

    private Guide(Job job) {
        this.job = job;
        this.purchase = new PurchaseStep(job);
        this.check = new CheckStep(job);
    }

    /**
     * Leads through the job from where it was left.
     *
     * @param house the file of the house; the interview comes first if it does not exist
     * @param units the units of examples, or those of the place if empty
     * @param in gives the answers, one in a line; stays open
     * @param out takes the questions; stays open
     * @param commands runs its command lines
     * @return how it ended
     * @throws OutputException if a file cannot be written
     */
    public static Ending lead(Path house, Optional<UnitSystem> units, Reader in, PrintWriter out, Commands commands)
            throws OutputException {
        if (!Files.exists(house)) {
            Outcome described = Interview.hold(house, units, in, out);
            if (described.ending() != Outcome.Ending.FINISHED
                    || !described.file().equals(house)) {
                return new Ending(described.ending(), 0, List.of());
            }
        }
        Notes notes = Job.notes(house).notes().orElseGet(() -> Notes.in(""));
        return new Guide(new Job(house, new Dialogue(in, out), units, notes, commands)).lead();
    }

    /** What runs the commands of a guide. */
    @FunctionalInterface
    public interface Commands {

        /**
         * Runs a command line.
         *
         * @param words such as {@code size my-house.yaml}
         * @return what it came to
         */
        Done run(List<String> words);

        /**
         * Where the papers for the work go.
         *
         * @param usual the folder that the guide names for them
         * @return the folder into which they are written
         */
        default Path papers(Path usual) {
            return usual;
        }
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
            Step step = job.at();
            boolean last = step == steps[steps.length - 1];
            job.remember();
            job.blankLine();
            job.dialogue().say(job.units().spelled(step.title()), "Step " + step.count() + ". ", "   ");
            Way way = take(step);
            if (way == Way.ON && job.status() != 0) {
                job.blankLine();
                job.say("Fix this first. The guide then picks up at this step.");
                way = Way.LEFT;
            }
            if (way == Way.BACK) {
                job.goTo(step == Step.CHARGE ? Step.BUY : Step.CAUSE);
                continue;
            }
            if (way == Way.DONE || way == Way.ON && last) {
                job.end();
                if (way == Way.ON) {
                    check.close();
                }
                return new Ending(Outcome.Ending.FINISHED, job.status(), job.after());
            }
            if (way == Way.ON) {
                job.goTo(job.at() == step ? steps[step.ordinal() + 1] : job.at());
                job.remember();
                way = goOn();
            }
            if (way != Way.ON) {
                job.blankLine();
                job.remember();
                job.say("Stopped at step " + job.at().count()
                        + ". Everything is saved: start the guide again, and it picks up there.");
                return new Ending(
                        way == Way.LEFT ? Outcome.Ending.LEFT : Outcome.Ending.ENDED, job.status(), List.of());
            }
        }
    }

    private Way goOn() {
        job.blankLine();
        job.say(
                "Press Enter to go on, or type: quit to stop for now, back to repeat the last step, new to start over.");
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Optional<String> line = job.dialogue().hear();
            if (line.isEmpty()) {
                return Way.ENDED;
            }
            String word = Spoken.of(line.get()).plain().toLowerCase(Locale.ROOT);
            switch (word) {
                case "", "yes", "next" -> {
                    return Way.ON;
                }
                case "back" -> {
                    job.goTo(Step.values()[Math.max(0, job.at().ordinal() - 1)]);
                    return Way.ON;
                }
                case "new" -> {
                    job.startOver();
                    return Way.ON;
                }
                default -> {
                    if (Interview.LEAVE.contains(word)) {
                        return Way.LEFT;
                    }
                    job.say("Ignored: nothing was asked. Press Enter to go on, or type quit, back or new.");
                }
            }
        }
        return Way.ENDED;
    }

    private Way take(Step step) throws OutputException {
        return switch (step) {
            case DRIP -> job.run("run");
            case CAUSE -> new ReadingsStep(job).take();
            case SIZE -> size();
            case BUY -> purchase.buy();
            case CHARGE -> purchase.charge();
            case VERIFY -> check.verify();
            case KEEP -> job.run("outlook");
        };
    }

    /** The size; where no vessel is to be bought, the steps about one are left out. */
    private Way size() {
        List<String> more = new ArrayList<>(job.found().map(FoundCause::changes).orElse(List.of()));
        more.addAll(List.of("--out", job.folder("")));
        job.run("size", more.toArray(String[]::new));
        String command = job.next().map(NextStep::command).orElse("");
        if (job.status() == 0 && command.equals("spread")) {
            job.blankLine();
            job.say("No vessel is needed. That is the whole job.");
            job.found().flatMap(FoundCause::left).ifPresent(job::say);
            return Way.DONE;
        }
        if (job.status() == 0 && command.equals("outlook")) {
            job.blankLine();
            job.say("The vessel you have is right, so there is nothing to buy. The guide goes on to the years ahead.");
            job.goTo(Step.KEEP);
        }
        return Way.ON;
    }
}
