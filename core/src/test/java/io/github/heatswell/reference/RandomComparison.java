package io.github.heatswell.reference;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One drawn house, run by the library and by the integration of the unreduced equations, and how far both lie apart.
 *
 * <p>They are compared up to the first of these: the end asked for; a valve that hammers, which the library stops at; a tap
 * that opens while another runs, of which each side makes something else; a burner that waits before it comes on again, which
 * only the library's does.
 */
final class RandomComparison {

    private static final double SAMPLE = 60;
    /** How far events may lie apart (s), as in the chosen cases with taps. */
    static final double SECONDS = 5;
    /** Pressure that differs by no more than this (-) around an event says that it is the same: 0.1 %. */
    private static final double AT_REST = 1e-3;
    /** How long (s) the library's burner waits after it went off. */
    private static final double BURNER_WAITS = 30;

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
        double ended = Double.NEGATIVE_INFINITY;
        double off = Double.NEGATIVE_INFINITY;
        for (Event event : run.events()) {
            boolean twoTaps = event.kind() == Event.Kind.DRAW_STARTED && event.time() - ended < 1e-3;
            boolean waited = event.kind() == Event.Kind.HEATER_ON && event.time() - off < BURNER_WAITS + 1e-3;
            if (twoTaps || event.kind() == Event.Kind.RELIEF_CHATTERS) {
                end = Math.min(end, Math.floor(event.time()) - 1);
            } else if (waited) {
                end = Math.min(end, Math.floor(off));
            }
            ended = event.kind() == Event.Kind.DRAW_ENDED ? event.time() : ended;
            off = event.kind() == Event.Kind.HEATER_OFF ? event.time() : off;
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
        List<Totals.Relief> totals = library.totals().relief();
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
                .filter(e -> e.kind() == Event.Kind.RELIEF_OPENED && e.device().equals(described.name()))
                .count();
        return described.liftCurve() == ReliefValve.LiftCharacteristic.SNAP && openings > 1 ? relieved / openings : 0;
    }

    /**
     * Compares the instants of events. Where both find as many of a kind they belong to each other in turn; else each to
     * the nearest one that is left. What lies further apart than events may, or was found by one side only, still agrees if
     * the pressure hardly moves in between: then it has come to rest at a threshold, and on which side of it is no matter.
     */
    Instants instants() {
        Map<String, List<Double>> expected = agreement.lastingReferenceEvents();
        Map<String, List<Double>> found = agreement.lastingLibraryEvents();
        Map<String, List<Double>> all = new TreeMap<>(expected);
        found.forEach(all::putIfAbsent);
        double widest = 0;
        int atRest = 0;
        List<String> apart = new ArrayList<>();
        for (String kind : all.keySet()) {
            for (double[] pair : pairs(expected.getOrDefault(kind, List.of()), found.getOrDefault(kind, List.of()))) {
                double difference = Math.abs(pair[1] - pair[0]);
                boolean near = difference <= SECONDS;
                boolean rests = !near && agreement.pressure(pair[0] - 2 * SAMPLE, pair[1] + 2 * SAMPLE) <= AT_REST;
                widest = near ? Math.max(widest, difference) : widest;
                atRest += rests ? 1 : 0;
                if (!near && !rests) {
                    apart.add(kind.strip() + " " + Arrays.toString(pair));
                }
            }
        }
        return new Instants(widest, atRest, apart);
    }

    /** Instants that belong together, the earlier one first; one that is alone is given a longer span than events may lie apart. */
    private List<double[]> pairs(List<Double> expected, List<Double> found) {
        List<double[]> pairs = new ArrayList<>();
        if (expected.size() == found.size()) {
            for (int i = 0; i < expected.size(); i++) {
                pairs.add(ordered(expected.get(i), found.get(i)));
            }
            return pairs;
        }
        List<Double> left = new ArrayList<>(found);
        for (double one : expected) {
            Optional<Double> nearest = left.stream().min(Comparator.comparingDouble(o -> Math.abs(o - one)));
            boolean near = nearest.isPresent() && Math.abs(nearest.get() - one) <= SECONDS;
            if (near) {
                left.remove(nearest.get());
            }
            addUnlessCut(pairs, near ? ordered(one, nearest.get()) : alone(one));
        }
        left.forEach(one -> addUnlessCut(pairs, alone(one)));
        return pairs;
    }

    /** Where valves snap the comparison stops short of an opening; what one side found just before it is cut off there. */
    private void addUnlessCut(List<double[]> pairs, double[] pair) {
        if (pair[1] < agreement.comparableEnd() - SECONDS) {
            pairs.add(pair);
        }
    }

    private static double[] ordered(double one, double other) {
        return new double[] {Math.min(one, other), Math.max(one, other)};
    }

    private static double[] alone(double one) {
        return new double[] {one - 2 * SECONDS, one};
    }

    /**
     * How instants differ.
     *
     * @param widest difference (s) of those that lie as near as events may
     * @param atRest how many lie further apart, or are alone, while the pressure rests
     * @param apart the others
     */
    record Instants(double widest, int atRest, List<String> apart) {}

    /** {@return all differences in one line} */
    @Override
    public String toString() {
        Instants instants = instants();
        return String.format(
                Locale.ROOT,
                "peak %+.2e of %.2f bar, relieved %.1e of %.3f kg, end %+.2f s at %.0f s, instants %.2f s, %d at rest, apart %s, samples %.1e, %s",
                peak(),
                (reference.highestPressure() - chosen.system().site().atmosphere()) / 1e5,
                relieved(0.25e-3),
                agreement.referenceRelieved(),
                end(),
                library.end(),
                instants.widest(),
                instants.atRest(),
                instants.apart(),
                agreement.pressure(),
                chosen);
    }
}
