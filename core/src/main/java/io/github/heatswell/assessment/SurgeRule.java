package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.time;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;

/** A short surge of the mains, which the check valve lets in but not out again. */
final class SurgeRule implements Rule {

    private static final double DAY = 86_400;
    /** A smaller surge (Pa) is not worth mentioning; our own judgement. */
    private static final double MIN_SURGE = 0.3e5;
    /** A surge rises and falls within this (s) each; what takes longer is a night; our own judgement. */
    private static final double SHORT = 1_800;
    /** A rise or fall is over that is no more than so many times as large (-) in twice that time; our own judgement. */
    private static final double MAX = 1.25;
    /** What lasts less than this (s) makes no difference; our own judgement. */
    private static final double HELD = 600;

    /** What ends the time in which nothing but the surge keeps the pressure up. */
    private static final Set<Event.Kind> ENDS = Set.of(
            Event.Kind.SUPPLY_OPENED,
            Event.Kind.SUPPLY_SHUT_OFF,
            Event.Kind.BYPASS_OPENED,
            Event.Kind.DRAW_STARTED,
            Event.Kind.HEATER_ON,
            Event.Kind.RELIEF_OPENED);

    /**
     * A surge in a run.
     *
     * @param at when the supply valve closed behind it
     * @param above how far the mains fell below it (Pa)
     * @param held how long nothing but it kept the pressure up (s)
     */
    private record Surge(Event at, double above, double held) {}

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.house.supply().arrangement() == Supply.Arrangement.DIRECT
                || subject.house.supply().mains().isConstant()) {
            return;
        }
        subject.run.ifPresent(run -> {
            List<Surge> surges = run.events().stream()
                    .filter(event -> event.kind() == Event.Kind.SUPPLY_CLOSED)
                    .filter(event -> !lasts(run, Interval.Phase.HEATER_ON, event.time()))
                    .filter(event -> !lasts(run, Interval.Phase.DRAW, event.time()))
                    .map(event -> new Surge(event, above(subject, event), held(run, event.time())))
                    .filter(surge -> surge.above() >= MIN_SURGE && surge.held() >= HELD)
                    .toList();
            if (!surges.isEmpty()) {
                found.accept(trapped(subject, run, surges));
            }
        });
    }

    private static boolean lasts(RunSummary run, Interval.Phase phase, double time) {
        return run.intervals(phase).stream().anyMatch(interval -> interval.from() < time && time < interval.to());
    }

    /** How far the supply stands below an event shortly before and after it (Pa), whichever is less; 0 where it changes for longer. */
    private static double above(AssessmentContext subject, Event event) {
        double at = event.time();
        double rise = event.pressureAbsolute() - lowest(subject, at - SHORT, at);
        double fall = event.pressureAbsolute() - lowest(subject, at, at + SHORT);
        double before = event.pressureAbsolute() - lowest(subject, at - 2 * SHORT, at);
        double after = event.pressureAbsolute() - lowest(subject, at, at + 2 * SHORT);
        return before > MAX * rise || after > MAX * fall ? 0 : Math.min(rise, fall);
    }

    /** The lowest static supply (Pa, absolute) between two times of the run: at one of them or at an entry of the timetable. */
    private static double lowest(AssessmentContext subject, double from, double to) {
        Supply supply = subject.house.supply();
        double clock = subject.house.start().timeOfDay();
        DoubleStream entries = supply.mains().entries().keySet().stream()
                .mapToDouble(entry -> entry - clock - from)
                .map(behind -> from + behind - DAY * Math.floor(behind / DAY))
                .filter(time -> time < to);
        return DoubleStream.concat(DoubleStream.of(from, to), entries)
                .map(time -> supply.staticAbsolute(clock + time, subject.atmosphere))
                .min()
                .orElseThrow();
    }

    private static double held(RunSummary run, double from) {
        return run.events().stream()
                        .filter(event -> event.time() > from && ENDS.contains(event.kind()))
                        .mapToDouble(Event::time)
                        .findFirst()
                        .orElse(run.end())
                - from;
    }

    private static CandidateFinding trapped(AssessmentContext subject, RunSummary run, List<Surge> surges) {
        Surge first = surges.get(0);
        boolean reducing = subject.house.supply().reducingValve().isPresent();
        boolean opened =
                surges.stream().anyMatch(surge -> opensAfter(run, surge.at().time()));
        Statement said = Statement.of(
                        "A surge of the mains to {} was trapped by the " + (reducing ? "reducing" : "check")
                                + " valve ",
                        gauge(run.gauge(first.at().pressureAbsolute())))
                .then(Moments.of(subject.house, run.end()).at(first.at().time()))
                .then(Statement.of(
                        ": for {} the pressure stayed up to {} above the supply, without any heating.",
                        time(first.held()),
                        new Measure(Measure.Kind.PRESSURE_DIFFERENCE, first.above())))
                .then(surges.size() > 1 ? " That happened " + QuantityFormat.times(surges.size()) + " in the run." : "")
                .then(opened ? " Heating from there on opened a relief valve." : "");
        return Finding.draft("surge-trapped", opened ? Severity.CAUTION : Severity.NOTE)
                .rests(Deciding.STATIC)
                .says(said)
                .found(new Measure(Measure.Kind.PRESSURE_DIFFERENCE, first.above()))
                .advises(
                        "Open a cold tap for a moment before the gauge is read: that lets the pressure back down to the supply's."
                                + (reducing
                                        ? ""
                                        : " If surges come often, ask the water company, or have a pressure reducing valve fitted,"
                                                + " which keeps surges out."))
                .by(Codes.RUN);
    }

    /** Whether a relief valve opens by pressure before the supply feeds again. */
    private static boolean opensAfter(RunSummary run, double from) {
        return run.events().stream()
                .filter(event -> event.time() > from)
                .takeWhile(event -> event.kind() != Event.Kind.SUPPLY_OPENED)
                .anyMatch(event -> event.kind() == Event.Kind.RELIEF_OPENED && event.openedByPressure());
    }
}
