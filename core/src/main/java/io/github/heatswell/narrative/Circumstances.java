package io.github.heatswell.narrative;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.Phase;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply.Arrangement;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What went on in a run besides the pressure: shut-offs, water that left by other ways, draws. */
public final class Circumstances {

    /** A volume (m3) below this is not worth a word. */
    private static final double DROP = 0.01e-3;

    private static final double MAX_DRAW_DAYS = 3 * 86_400;

    private final RunSummary summary;
    private final HotWaterSystem system;
    private final QuantityFormat amounts;
    private final When when;

    public Circumstances(RunSummary summary, QuantityFormat amounts) {
        this.summary = summary;
        this.system = summary.system();
        this.amounts = amounts;
        this.when = When.of(system, summary.end(), amounts);
    }

    public When when() {
        return when;
    }

    /** The shut-off of the heater for good, as a clause. */
    public Optional<String> cutOut() {
        return summary.first(EventKind.CUT_OUT_TRIPPED).map(tripped -> {
            String limit = system.heater().cutOut().isPresent()
                    ? " at " + amounts.temperature(system.heater().cutOut().getAsDouble())
                    : "";
            return "cut-out stops the heater " + when.at(tripped.time()) + limit;
        });
    }

    /** How long the supply was shut off, as a clause. */
    public Optional<String> shutOff() {
        List<Interval> off = outages();
        if (off.isEmpty()) {
            return Optional.empty();
        }
        String often =
                off.size() == 1 ? when.at(off.get(0).from()) + " for " : Openings.times(off.size()) + ", in all for ";
        return Optional.of("supply is shut off " + often + amounts.time(Interval.total(off)));
    }

    /** Whether the highest pressure fell into a time without supply. */
    public boolean peaksDuringShutOff() {
        return outages().stream().anyMatch(off -> off.contains(summary.peakTime()));
    }

    /** What went back to the mains, as a clause. */
    public Optional<String> returned() {
        double volume = summary.totals().returned();
        if (volume < DROP || system.supply().arrangement() == Arrangement.DIRECT) {
            return Optional.empty();
        }
        String how = summary.first(EventKind.BYPASS_OPENED).isPresent()
                ? "the bypass returns "
                : "the leaking seat of the feed lets back ";
        return Optional.of(how + amounts.volume(volume) + " to the mains");
    }

    /** What leaks took, as a clause. */
    public Optional<String> leaked() {
        double volume = summary.totals().leaked();
        return volume < DROP
                ? Optional.empty()
                : Optional.of((system.leaks().size() == 1 ? "a leak takes " : "leaks take ") + amounts.volume(volume));
    }

    /**
     * Whether leaks are what kept the relief valve shut: the house was closed and without a vessel, so the water's growth
     * had no other way.
     */
    public boolean leaksHideExpansion() {
        boolean closed = system.supply().arrangement() != Arrangement.DIRECT;
        boolean vessel = system.vessel()
                .filter(found -> found.condition() == ExpansionVessel.Condition.SOUND)
                .isPresent();
        boolean heated = summary.first(EventKind.HEATER_ON).isPresent();
        return closed
                && !vessel
                && heated
                && leaked().isPresent()
                && summary.totals().returned() < DROP;
    }

    /** What was drawn, as a clause; over many days it is no news. */
    public Optional<String> draws() {
        if (summary.end() > MAX_DRAW_DAYS) {
            return Optional.empty();
        }
        int count = summary.intervals(Phase.DRAW).size();
        String what = count == 1 ? "1 draw takes " : count + " draws take ";
        return count == 0
                ? Optional.empty()
                : Optional.of(what + amounts.volume(summary.totals().drawn()));
    }

    /** What dripped through a seat or ran through a valve that does not close, as a clause; empty for sound valves. */
    public Optional<String> faultyValve() {
        List<String> clauses = new ArrayList<>();
        for (ReliefValve valve : system.reliefValves()) {
            double volume = summary.totals().relief().stream()
                    .filter(total -> total.name().equals(valve.name()))
                    .mapToDouble(total -> total.volume())
                    .sum();
            String name = system.reliefValves().size() == 1 ? "relief valve" : "“" + valve.name() + "”";
            if (valve.condition() == ReliefFault.Condition.STUCK_OPEN) {
                clauses.add(name + " is stuck open and discharges " + amounts.volume(volume));
            } else if (valve.condition() == ReliefFault.Condition.LEAKING_SEAT && volume >= DROP) {
                clauses.add("the seat of " + (name.startsWith("“") ? "" : "the ") + name + " leaks "
                        + amounts.volume(volume));
            }
        }
        return clauses.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", clauses));
    }

    /** The first opening of a valve by temperature. */
    public Optional<Event> openedHot() {
        return summary.events().stream().filter(Event::openedByTemperature).findFirst();
    }

    private List<Interval> outages() {
        return summary.intervals(Phase.SUPPLY_SHUT_OFF);
    }
}
