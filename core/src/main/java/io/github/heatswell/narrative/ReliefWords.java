package io.github.heatswell.narrative;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** What relief valves did in one run, in words; the cause before the count. */
public final class ReliefWords {

    private final RunSummary summary;
    private final QuantityFormat amounts;
    private final Circumstances circumstances;
    private final When when;

    public ReliefWords(RunSummary summary, QuantityFormat amounts, Circumstances circumstances) {
        this.summary = summary;
        this.amounts = amounts;
        this.circumstances = circumstances;
        this.when = circumstances.when();
    }

    /** The finding, or empty if no valve discharged anything. */
    public String sentence() {
        if (circumstances.openedHot().isPresent()) {
            return runaway(circumstances.openedHot().get());
        }
        List<Interval> fed = new FedRelief(summary).stretches();
        if (!fed.isEmpty()) {
            return fed(fed);
        }
        Openings openings = new Openings(summary);
        return openings.count() == 0 ? circumstances.faultyValve().orElse("") : opened(openings);
    }

    /** A valve that opens by temperature holds the heat of a heater that does not stop, by letting water through. */
    private String runaway(Event first) {
        String name = first.device();
        ReliefTotal total = summary.totals().relief().stream()
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
        return subject + amounts.temperature(opensAt) + " by “" + name + "”, which opens "
                + Openings.times(total.openings()) + ", first " + (lifted ? "by heat " : "") + when.at(first.time())
                + ", and lets "
                + amounts.volume(total.volume()) + " through";
    }

    private String fed(List<Interval> fed) {
        boolean setPressure = new FedRelief(summary).supplyOpensAValve();
        boolean reducing = summary.system().supply().reducingValve().isPresent();
        String where = reducing ? "supply pressure" : "mains pressure";
        String why = setPressure
                ? where + " above the relief set: the valve runs for "
                : where + " above the relief reseat: once open, the valve runs for ";
        return why + amounts.time(Interval.total(fed)) + " and discharges "
                + amounts.volume(summary.totals().relieved());
    }

    private String opened(Openings openings) {
        String volume = amounts.volume(summary.totals().relieved());
        int open = openings.valves().size();
        if (open > 1) {
            return open + " relief valves open, the first " + openings.firstAt(amounts) + ", and discharge " + volume
                    + " in all";
        }
        List<ReliefValve> valves = summary.system().reliefValves();
        String subject = valves.size() == 1
                ? "relief valve"
                : "relief valve “" + openings.valves().get(0).name() + "”";
        int count = openings.count();
        return count == 1
                ? subject + " opens " + openings.firstAt(amounts) + " and discharges " + volume
                : subject + " opens " + Openings.times(count) + ", first " + openings.firstAt(amounts)
                        + ", and discharges " + volume + " in all";
    }
}
