package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What relief valves did in one run; the cause before the count. */
final class ReliefWords {

    /** A volume (m3) below this on a day counts as none. */
    private static final double DROP = 1e-6;

    /** From this share of a time on something is said to last all of it. */
    private static final double ALWAYS = 0.9;

    private final RunSummary summary;
    private final Incidents incidents;
    private final Moments moments;

    ReliefWords(RunSummary summary, Incidents incidents) {
        this.summary = summary;
        this.incidents = incidents;
        this.moments = incidents.moments();
    }

    static ReliefWords of(RunSummary summary) {
        return new ReliefWords(summary, new Incidents(summary));
    }

    /** What made relief valves discharge; {@link #sentence} is empty exactly if nothing did. */
    Cause cause() {
        if (incidents.openedHot().isPresent()) {
            return Cause.OVERHEATING;
        }
        boolean stuck = summary.system().reliefValves().stream()
                .anyMatch(valve -> valve.condition() == ReliefFault.Condition.STUCK_OPEN);
        if (!stuck && !summary.fedRelief().isEmpty()) {
            return summary.supplyOpenedRelief() ? Cause.SUPPLY : Cause.KEPT_OPEN;
        }
        if (stuck || summary.totals().openings() == 0) {
            return incidents.faultyValve().isPresent() ? Cause.DAMAGE : Cause.NONE;
        }
        return Findings.creeps(summary.system()) ? Cause.CREEP : Cause.EXPANSION;
    }

    /** What made relief valves discharge in a run. */
    enum Cause {
        /** None did. */
        NONE,
        /** Water hotter than the heater should ever make it. */
        OVERHEATING,
        /** The supply opened one by itself. */
        SUPPLY,
        /** Heating opened one, and the supply kept it open. */
        KEPT_OPEN,
        /** The seat of the reducing valve let the pressure climb. */
        CREEP,
        /** A seat or a valve that does not close. */
        DAMAGE,
        /** The growth of the heated water. */
        EXPANSION
    }

    /** The finding, or empty if no valve discharged anything. */
    Optional<Statement> sentence() {
        if (incidents.openedHot().isPresent()) {
            return Optional.of(runaway(incidents.openedHot().get()));
        }
        List<Interval> fed = Interval.joined(summary.fedRelief());
        if (!fed.isEmpty()) {
            String once = summary.supplyOpenedRelief() ? ": the valve runs for " : ": once open, the valve runs for ";
            return Optional.of(plain(supplyAboveRelief() + once)
                    .then(time(Interval.total(fed)))
                    .then(" and discharges ")
                    .then(relieved()));
        }
        return summary.totals().openings() == 0 ? incidents.faultyValve() : Optional.of(opened());
    }

    /** What a valve did in a run. */
    static String did(ReliefValve valve, Totals.Relief total) {
        String opened = total.openings() == 0 ? "stayed shut" : "opened " + QuantityFormat.times(total.openings());
        return switch (valve.condition()) {
            case BLOCKED -> "which is blocked";
            case STUCK_OPEN -> "which is stuck open";
            case LEAKING_SEAT -> total.openings() == 0 ? "through its worn seat" : "worn, " + opened;
            case SOUND -> opened;
        };
    }

    /** When valves discharge, in the few words of a table; empty if none does. */
    static Optional<String> when(RunSummary run) {
        if (run.totals().relieved() <= 0) {
            return Optional.empty();
        }
        List<Interval> open = run.joined(Interval.Phase.RELIEF_OPEN);
        boolean always = Interval.total(Interval.joined(run.fedRelief())) >= ALWAYS * run.end()
                || stuckOpen(run.system()).isPresent();
        if (always) {
            return Optional.of("runs day and night");
        }
        if (!run.fedRelief().isEmpty()) {
            return Optional.of(
                    run.supplyOpenedRelief()
                            ? "runs while the supply is high"
                            : "once open, runs on water from the supply");
        }
        if (Findings.creeps(run.system())) {
            return Optional.of("drips while nothing is drawn");
        }
        if (worn(run.system()).isPresent()) {
            return Optional.of(
                    run.totals().openings() == 0
                            ? "leaks through its worn seat"
                            : "drips and leaks through its worn seat");
        }
        List<Interval> heating = run.joined(Interval.Phase.HEATER_ON);
        double heated = open.stream()
                .flatMapToDouble(one -> heating.stream().mapToDouble(one::overlap))
                .sum();
        return Optional.of(heated >= ALWAYS * Interval.total(open) ? "drips while the water heats" : "drips");
    }

    /** The first valve that runs whatever the pressure. */
    static Optional<ReliefValve> stuckOpen(HotWaterSystem house) {
        return first(house, ReliefFault.Condition.STUCK_OPEN);
    }

    private static Optional<ReliefValve> worn(HotWaterSystem house) {
        return first(house, ReliefFault.Condition.LEAKING_SEAT);
    }

    private static Optional<ReliefValve> first(HotWaterSystem house, ReliefFault.Condition condition) {
        return house.reliefValves().stream()
                .filter(valve -> valve.condition() == condition)
                .findFirst();
    }

    /** On which of many days valves discharged, and when most; empty if on none. */
    Optional<Statement> onDays(List<Double> relieved) {
        int most = 0;
        int wet = 0;
        for (int day = 0; day < relieved.size(); day++) {
            wet += relieved.get(day) > DROP ? 1 : 0;
            most = relieved.get(day) > relieved.get(most) ? day : most;
        }
        if (wet == 0) {
            return Optional.empty();
        }
        boolean one = summary.system().reliefValves().size() == 1;
        String valves = one ? "the relief valve discharges" : "relief valves discharge";
        String why = summary.fedRelief().isEmpty()
                ? valves
                : supplyAboveRelief() + (one ? ": the valve discharges" : ": the valves discharge");
        String often =
                wet == relieved.size() ? "every one of " + wet + " days" : wet + " of " + relieved.size() + " days";
        return Optional.of(plain(why + " water on " + often + ", ")
                .then(relieved())
                .then(" in all, most on " + moments.day(most) + ": ")
                .then(volume(relieved.get(most))));
    }

    private String supplyAboveRelief() {
        String where = summary.system().supply().reducingValve().isPresent() ? "supply" : "mains";
        return where + " pressure above the relief " + (summary.supplyOpenedRelief() ? "set" : "reseat");
    }

    /** A valve that opens on temperature holds the heat of a heater that does not stop, by letting water through. */
    private Statement runaway(Event first) {
        String name = first.device();
        Totals.Relief total = summary.totals().relief().stream()
                .filter(relief -> relief.name().equals(name))
                .findFirst()
                .orElseThrow();
        boolean lifted =
                summary.openings(name).findFirst().filter(first::equals).isEmpty();
        double opensAt = summary.system().reliefValves().stream()
                .filter(valve -> valve.name().equals(name))
                .flatMapToDouble(valve -> valve.setTemperature().stream())
                .findFirst()
                .orElseThrow();
        String subject =
                summary.system().heater().thermostatStuck() ? "runaway heating is held at " : "water is held at ";
        return plain(subject)
                .then(temperature(opensAt))
                .then(" by “" + name + "”, which opens " + QuantityFormat.times(total.openings())
                        + (total.openings() == 1 ? ", " : ", first ")
                        + (lifted ? "on temperature " : ""))
                .then(moments.at(first.time()))
                .then(", and lets ")
                .then(volume(total.volume()))
                .then(" through");
    }

    private Statement opened() {
        List<Totals.Relief> opened = summary.totals().relief().stream()
                .filter(relief -> relief.openings() > 0)
                .toList();
        Statement first =
                moments.at(summary.first(Event.Kind.RELIEF_OPENED).orElseThrow().time());
        if (opened.size() > 1) {
            return plain(opened.size() + " relief valves open, the first ")
                    .then(first)
                    .then(", and discharge ")
                    .then(relieved())
                    .then(" in all");
        }
        ReliefValve valve = summary.system().reliefValves().stream()
                .filter(one -> one.name().equals(opened.get(0).name()))
                .findFirst()
                .orElseThrow();
        String kind = valve.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String name = "“" + valve.name() + "”";
        String subject = "the "
                + (summary.system().reliefValves().size() == 1
                        ? kind
                        : valve.name().endsWith(" valve") ? name : kind + " " + name);
        int count = summary.totals().openings();
        return count == 1
                ? plain(subject + " opens ")
                        .then(first)
                        .then(" and discharges ")
                        .then(relieved())
                : plain(subject + " opens " + QuantityFormat.times(count) + ", first ")
                        .then(first)
                        .then(", and discharges ")
                        .then(relieved())
                        .then(" in all");
    }

    private Measure relieved() {
        return volume(summary.totals().relieved());
    }
}
