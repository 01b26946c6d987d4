package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.time;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply.Arrangement;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What went on in a run besides the pressure, each as a clause: shut-offs, water that left by other ways, draws. */
final class Incidents {

    /** A volume (m3) below this is not worth mentioning. */
    static final double DROP = 0.01e-3;

    private static final double MAX_DRAW_DAYS = 3 * 86_400;

    private final RunSummary summary;
    private final HotWaterSystem system;
    private final Moments moments;

    Incidents(RunSummary summary) {
        this.summary = summary;
        this.system = summary.system();
        this.moments = Moments.of(system, summary.end());
    }

    Moments moments() {
        return moments;
    }

    /** The shut-off of the heater for good. */
    Optional<Statement> cutOut() {
        return summary.first(Event.Kind.CUT_OUT_TRIPPED).map(tripped -> {
            Statement stops = plain("the cut-out stops the heater ").then(moments.at(tripped.time()));
            return system.heater().cutOut().isPresent()
                    ? stops.then(" at ")
                            .then(temperature(system.heater().cutOut().getAsDouble()))
                    : stops;
        });
    }

    /** How long the supply was shut off. */
    Optional<Statement> shutOff() {
        List<Interval> off = outages();
        if (off.isEmpty()) {
            return Optional.empty();
        }
        Statement often = off.size() == 1
                ? moments.at(off.get(0).from()).then(" for ")
                : plain(QuantityFormat.times(off.size()) + ", in all for ");
        return Optional.of(plain("the supply is shut off ").then(often).then(time(Interval.total(off))));
    }

    /** Whether the highest pressure fell into a time without supply. */
    boolean peaksDuringShutOff() {
        return outages().stream().anyMatch(off -> off.contains(summary.peakTime()));
    }

    /** What went back to the mains. */
    Optional<Statement> returned() {
        double volume = summary.totals().returned();
        if (volume < DROP || system.supply().arrangement() == Arrangement.DIRECT) {
            return Optional.empty();
        }
        String how = summary.first(Event.Kind.BYPASS_OPENED).isPresent()
                ? "the bypass returns "
                : "the leaking seat of the feed returns ";
        return Optional.of(plain(how).then(volume(volume)).then(" to the mains"));
    }

    /** What leaks took. */
    Optional<Statement> leaked() {
        double volume = summary.totals().leaked();
        return volume < DROP
                ? Optional.empty()
                : Optional.of(plain(system.leaks().size() == 1 ? "a leak loses " : "leaks lose ")
                        .then(volume(volume)));
    }

    /**
     * Whether leaks are what kept the relief valve shut: the house was closed and without a vessel, so the water's growth
     * had no other way.
     */
    boolean leaksHideExpansion() {
        boolean closed = system.supply().arrangement() != Arrangement.DIRECT;
        boolean vessel =
                system.vessels().stream().anyMatch(found -> found.condition() == ExpansionVessel.Condition.SOUND);
        return closed
                && !vessel
                && summary.heats()
                && leaked().isPresent()
                && summary.totals().returned() < DROP;
    }

    /** What draws took from the tank, which is less than ran at a mixing tap; not worth mentioning over many days. */
    Optional<Statement> draws() {
        int count = summary.intervals(Interval.Phase.DRAW).size();
        if (count == 0 || summary.end() > MAX_DRAW_DAYS) {
            return Optional.empty();
        }
        return Optional.of(plain("")
                .then(volume(summary.totals().drawn()))
                .then(" of hot water leaves the tank in " + (count == 1 ? "one draw" : count + " draws")));
    }

    /** What dripped through a seat or ran through a valve that does not close; empty for sound valves. */
    Optional<Statement> faultyValve() {
        List<Statement> clauses = new ArrayList<>();
        boolean only = system.reliefValves().size() == 1;
        for (ReliefValve valve : system.reliefValves()) {
            double volume = summary.totals().relief().stream()
                    .filter(total -> total.name().equals(valve.name()))
                    .mapToDouble(Totals.Relief::volume)
                    .sum();
            String name = only ? "the relief valve" : "“" + valve.name() + "”";
            if (valve.condition() == ReliefFault.Condition.STUCK_OPEN) {
                clauses.add(plain(name + " is stuck open and discharges ").then(volume(volume)));
            } else if (valve.condition() == ReliefFault.Condition.LEAKING_SEAT && volume >= DROP) {
                clauses.add(plain("the seat of " + name + " leaks ").then(volume(volume)));
            }
        }
        return clauses.isEmpty() ? Optional.empty() : Optional.of(Statement.joined("; ", clauses));
    }

    /** The first opening of a valve by temperature. */
    Optional<Event> openedHot() {
        return summary.events().stream().filter(Event::openedByTemperature).findFirst();
    }

    private List<Interval> outages() {
        return summary.intervals(Interval.Phase.SUPPLY_SHUT_OFF);
    }
}
