package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Measure.volume;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.TemperatureUnit;
import java.util.function.Consumer;

/** The water that relief valves discharged, and what a year of that would come to. */
final class WaterLossRule implements Rule {

    private static final double MIN_LOSS = 0.01e-3;
    private static final double DAY = 86_400;
    private static final double DAYS = 365;

    /** Nobody is to catch water hotter than this (K): it burns badly within seconds. */
    private static final double TOO_HOT = TemperatureUnit.CELSIUS.toSi(60);
    /** Nobody catches more than this (m3) in a day, two buckets; own judgement. */
    private static final double CAUGHT = 20e-3;
    /** Rounding of temperatures (K). */
    private static final double EQUAL = 1e-3;

    private final boolean hazard;

    /**
     * The rule for a case.
     *
     * @param hazard whether something else in it is a hazard, so that nobody is to wait beside the heater
     */
    WaterLossRule(boolean hazard) {
        this.hazard = hazard;
    }

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.run
                .filter(run -> run.totals().relieved() >= MIN_LOSS)
                .ifPresent(run -> found.accept(loss(subject, run)));
    }

    private boolean mayBeCaught(AssessmentContext subject, RunSummary run) {
        return isCoolEnough(subject)
                && !runsOn(subject, run)
                && run.totals().relieved() <= CAUGHT * Math.max(1, run.end() / DAY);
    }

    private boolean isCoolEnough(AssessmentContext subject) {
        return !hazard && !subject.overheats() && subject.dischargedAt() <= TOO_HOT + EQUAL;
    }

    private CandidateFinding loss(AssessmentContext subject, RunSummary run) {
        Measure given = volume(run.totals().relieved());
        int openings =
                run.totals().relief().stream().mapToInt(Totals.Relief::openings).sum();
        String opened =
                openings == 0 ? "without opening" : openings == 1 ? "in 1 opening" : "in " + openings + " openings";
        boolean cold = subject.startsCold();
        String caught = "Put a bucket under the discharge pipe for a day and compare"
                + (cold ? ": a day without a heat-up from cold discharges less" : "")
                + ". Keep the pipe open and never plug the valve.";
        String said = "In {} the relief valves discharged {} " + opened;
        Finding.Draft draft = Finding.draft("relief-water-loss", Severity.NOTE).rests(Deciding.HEAT_UP);
        if (isTheirWork(subject, run)) {
            draft.unless("expansion-valve-works");
        }
        draft = hazard || subject.overheats()
                ? draft.says(said + ".", time(run.end()), given)
                : draft.says(Statement.of(said, time(run.end()), given).then(inAYear(subject, run, given.value())));
        return draft.found(given)
                .advises(
                        mayBeCaught(subject, run)
                                ? caught
                                : (isCoolEnough(subject)
                                                ? "It is too much to catch. "
                                                : "Keep clear of the discharge pipe: what comes out may scald. ")
                                        + "Keep the pipe open and never plug the valve.")
                .by(Codes.RUN);
    }

    /** Whether all of it comes from valves that opened to do their work, each of which a finding of its own tells with its share. */
    private static boolean isTheirWork(AssessmentContext subject, RunSummary run) {
        return run.totals().relief().stream()
                .filter(relief -> relief.volume() > 0)
                .allMatch(relief -> relief.openings() > 0
                        && subject.house.reliefValves().stream()
                                .filter(valve -> valve.name().equals(relief.name()))
                                .anyMatch(subject::isItsWork));
    }

    /** Air that nobody has described takes up some of the growth where nothing else does. */
    private static String cushioned(AssessmentContext subject) {
        boolean without = subject.soundVessels().isEmpty()
                && subject.house.tank().air().isEmpty()
                && subject.house.trappedAir().isEmpty();
        return without ? ", or less if the tank holds air." : ".";
    }

    /** Whether a valve never closes, or the supply still keeps one open as the run ends: nothing ends that with the run. */
    private static boolean runsOn(AssessmentContext subject, RunSummary run) {
        return subject.house.reliefValves().stream()
                        .anyMatch(valve -> valve.condition() == ReliefFault.Condition.STUCK_OPEN)
                || run.fedRelief().stream().anyMatch(open -> open.to() >= run.end());
    }

    /** What a year of such runs would come to: the end of a sentence. A run stands for a day, or for its own time if it runs on. */
    static Statement inAYear(AssessmentContext subject, RunSummary run, double volume) {
        boolean runsOn = runsOn(subject, run);
        if (run.isUnfinished() && !runsOn) {
            return Statement.plain("; it ends before the heat-up does, so a year cannot be told from it.");
        }
        boolean days = runsOn || run.end() >= DAY - 1;
        boolean used = !subject.house.draws().draws().isEmpty();
        boolean ordinary = used && !subject.startsCold();
        if (used && !ordinary && !runsOn) { // the year leaves that heat-up out where one is told
            return Statement.plain(
                    run.fedRelief().isEmpty() ? "; ordinary days, without a heat-up from cold, give less." : ".");
        }
        String repeated = runsOn
                ? "; at this rate a year would come to {}."
                : ordinary
                        ? (days ? "; at this rate a year comes to {}" : "; once a day, a year comes to {}")
                                + cushioned(subject)
                        : days
                                ? "; at this rate a year would come to {}."
                                : "; if every day were like this run, a year would come to {}.";
        return Statement.of(repeated, volume(volume * (days ? DAYS * DAY / run.end() : DAYS)));
    }
}
