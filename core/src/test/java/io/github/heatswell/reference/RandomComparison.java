package io.github.heatswell.reference;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * One drawn house, run by the library and by the integration of the unreduced equations, and how far both lie apart.
 *
 * <p>They are compared up to the first of these: the end asked for; a valve that hammers, which the library stops at; a tap
 * that opens while another runs, of which each side makes something else.
 */
final class RandomComparison {

    private static final double SAMPLE = 60;

    private final ComparisonCase chosen;
    private final RunResult library;
    private final ReferenceRun reference;
    private final Agreement agreement;

    RandomComparison(ComparisonCase chosen, Conductances conductances, double tolerance) {
        this.chosen = chosen;
        HotWaterSystem house = chosen.system();
        RunResult whole = run(house, chosen.hours() * 3600);
        double end = comparableEnd(whole, chosen.hours() * 3600);
        library = end < whole.end() ? run(house, end) : whole;
        UnreducedSystem equations = new UnreducedSystem(house, GibbsPolynomialWater.instance(), conductances);
        reference = ReferenceRun.of(equations, end, SAMPLE, tolerance);
        agreement = new Agreement(reference, library);
    }

    private static RunResult run(HotWaterSystem house, double seconds) {
        return Simulation.of(house, Duration.ofMillis((long) (seconds * 1000))).run();
    }

    private static double comparableEnd(RunResult run, double asked) {
        double end = asked;
        Event ended = null;
        for (Event event : run.events()) {
            boolean twoTaps =
                    event.kind() == EventKind.DRAW_STARTED && ended != null && event.time() - ended.time() < 1e-3;
            if (twoTaps || event.kind() == EventKind.RELIEF_CHATTERS) {
                end = Math.min(end, Math.floor(event.time()) - 1);
            }
            ended = event.kind() == EventKind.DRAW_ENDED ? event : ended;
        }
        return Math.max(end, 1);
    }

    Agreement agreement() {
        return agreement;
    }

    RunResult library() {
        return library;
    }

    ReferenceRun reference() {
        return reference;
    }

    /** {@return by how much the highest gauge pressure of the library lies above that of the reference (-)} */
    double peak() {
        double air = chosen.system().site().atmosphere();
        double expected = reference.highestPressure() - air;
        return library.extremes().highestPressure().value() / expected - air / expected - 1;
    }

    /** {@return by how much (s) the end of the library's run lies behind that of the reference} */
    double end() {
        return library.end() - reference.last().time();
    }

    /**
     * The widest difference in what a relief valve gave off (-), with a drop left over and, where it snaps, one discharge,
     * since a cycle more or less may fall off the end.
     */
    double relieved(double drop) {
        double widest = 0;
        List<ReliefTotal> totals = library.totals().relief();
        for (int i = 0; i < totals.size(); i++) {
            double expected = reference.relieved(i);
            double difference = Math.abs(totals.get(i).mass() - expected) - drop - discharge(i, expected);
            widest = Math.max(widest, difference / Math.max(expected, drop));
        }
        return widest;
    }

    private double discharge(int valve, double relieved) {
        ReliefValve described = chosen.system().reliefValves().get(valve);
        long openings = reference.events().stream()
                .filter(e -> e.kind() == EventKind.RELIEF_OPENED && e.device().equals(described.name()))
                .count();
        return described.character() == ReliefValve.Character.SNAP && openings > 1 ? relieved / openings : 0;
    }

    /** {@return the widest difference of instants (s) of events that both found, and in words those that one alone found} */
    Instants instants() {
        Map<String, List<Double>> expected = agreement.lastingReferenceEvents();
        Map<String, List<Double>> found = agreement.lastingLibraryEvents();
        List<String> alone = new ArrayList<>();
        double widest = 0;
        Map<String, List<Double>> all = new TreeMap<>(expected);
        found.forEach(all::putIfAbsent);
        for (String kind : all.keySet()) {
            List<Double> ours = found.getOrDefault(kind, List.of());
            List<Double> theirs = expected.getOrDefault(kind, List.of());
            if (ours.size() != theirs.size()) {
                alone.add(kind.strip() + " " + theirs.size() + " expected, found " + ours.size());
            } else {
                for (int i = 0; i < ours.size(); i++) {
                    widest = Math.max(widest, Math.abs(ours.get(i) - theirs.get(i)));
                }
            }
        }
        return new Instants(widest, alone);
    }

    /**
     * How instants differ.
     *
     * @param widest difference (s)
     * @param counts the kinds of events of which one side found more
     */
    record Instants(double widest, List<String> counts) {}

    /** {@return all differences in one line} */
    @Override
    public String toString() {
        Instants instants = instants();
        return String.format(
                Locale.ROOT,
                "peak %+.2e of %.2f bar, relieved %.1e of %.3f kg, end %+.2f s at %.0f s, instants %.2f s %s, samples %.1e, %s",
                peak(),
                (reference.highestPressure() - chosen.system().site().atmosphere()) / 1e5,
                relieved(0.25e-3),
                agreement.referenceRelieved(),
                end(),
                library.end(),
                instants.widest(),
                instants.counts(),
                agreement.pressure(),
                chosen);
    }
}
