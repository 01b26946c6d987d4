package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.share;
import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What must be said before everything else: a hazard, a limit passed, or a run that cannot be relied on.
 *
 * @param level how bad it is
 * @param what what happened or what is wrong, and what that means
 * @param advice what to do; empty if another alarm says so already
 */
public record Alarm(Level level, Statement what, Optional<Statement> advice) {

    /** The finding that tells of the working pressure itself. */
    private static final String EXCEEDED = "working-pressure-exceeded";

    private static final String UNRELIABLE =
            "Do not rely on its figures; unless run.tolerance was loosened, please report the scenario.";

    /** How bad it is. */
    public enum Level {
        /** People may be hurt. */
        HAZARD("HAZARD"),
        /** A limit was passed. */
        WARNING("WARNING"),
        /** The balance of the run does not close. */
        NOT_RELIABLE("NOT RELIABLE");

        private final String word;

        Level(String word) {
            this.word = word;
        }

        /**
         * The level in a word or two.
         *
         * @return such as {@code HAZARD}
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks that everything is there.
     *
     * @param level how bad it is
     * @param what what happened or what is wrong, and what that means
     * @param advice what to do; empty if another alarm says so already
     */
    public Alarm {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(advice, "advice");
    }

    static Alarm of(Level level, Statement what) {
        return new Alarm(level, what, Optional.empty());
    }

    /** Hazards that were found, each with what to do; the same advice is given once. */
    static List<Alarm> hazards(List<Finding> findings) {
        List<Alarm> alarms = new ArrayList<>();
        Set<Statement> advised = new HashSet<>();
        findings.stream()
                .filter(finding -> finding.severity() == Severity.HAZARD)
                .forEach(finding -> alarms.add(new Alarm(
                        Level.HAZARD,
                        finding.sentence(),
                        Optional.of(finding.advice()).filter(advised::add))));
        return alarms;
    }

    /** Those hazards, then a limit passed, then that the balance of a run does not close. */
    static List<Alarm> of(RunSummary run, List<Finding> findings) {
        List<Alarm> alarms = hazards(findings);
        boolean told = findings // as a hazard, or as what a valve that suits the tank lets through
                .stream()
                .anyMatch(finding -> finding.id().equals(EXCEEDED) && finding.severity() != Severity.FAULT);
        boolean given = run.system().tank().workingPressureGiven(); // if not, a finding asks to read the plate
        run.first(Event.Kind.WORKING_PRESSURE_EXCEEDED)
                .filter(event -> given && !told)
                .ifPresent(event -> alarms.add(of(Level.WARNING, passed(run, event))));
        if (!run.audit().closes()) {
            alarms.add(of(Level.NOT_RELIABLE, open(run.audit())));
        }
        return alarms;
    }

    /**
     * That the balance of some of the runs behind an answer does not close.
     *
     * @param balances those of its runs
     * @param answer what rests on them, such as {@code this answer}
     * @return the alarm, or empty if all balances close
     */
    public static Optional<Alarm> open(Balances balances, String answer) {
        return balances.close()
                ? Optional.empty()
                : Optional.of(of(
                        Level.NOT_RELIABLE,
                        plain("The balance of " + balances.open() + " of the " + balances.runs() + " runs behind "
                                + answer
                                + " does not close. " + UNRELIABLE)));
    }

    private static Statement open(RunSummary.Audit audit) {
        boolean water =
                audit.massFraction() > RunSummary.Audit.BOUND || audit.energyFraction() <= RunSummary.Audit.BOUND;
        return plain("The balance of this run does not close: ")
                .then(share(water ? audit.massFraction() : audit.energyFraction()))
                .then(" of the " + (water ? "water" : "heat") + " is unaccounted for. " + UNRELIABLE);
    }

    /** What it means, with the working pressure where that is the limit passed. */
    static Statement meaning(Event.Kind kind, HotWaterSystem system) {
        return kind == Event.Kind.WORKING_PRESSURE_EXCEEDED
                ? plain("The manufacturer allows no more than ")
                        .then(gauge(
                                system.tank().workingPressure(), system.site().atmosphere()))
                        .then(" in use.")
                : plain(kind.meaning());
    }

    private static Statement passed(RunSummary run, Event event) {
        return plain(event.kind().description() + " after ")
                .then(time(event.time()))
                .then(", at ")
                .then(gauge(run.gauge(event.pressureAbsolute())))
                .then(" and ")
                .then(temperature(event.waterTemperature()))
                .then(". ")
                .then(meaning(event.kind(), run.system()))
                .capitalised();
    }

    /**
     * What happened and what to do.
     *
     * @return whole sentences
     */
    public Statement text() {
        return advice.map(todo -> what.then(" ").then(todo)).orElse(what);
    }
}
