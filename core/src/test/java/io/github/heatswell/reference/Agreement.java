package io.github.heatswell.reference;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How far a run of the library lies from the integration of the unreduced equations.
 *
 * <p>Samples within {@link #NEAR} of the opening or closing of a relief valve are left out: the pressure jumps there, and
 * the instants are compared themselves. Where valves snap, a cycle begins where the last one ended, so differences of
 * the instants, each far below a second, add up; pressures and instants are then compared up to the third opening,
 * later ones by their number.
 */
final class Agreement {

    /** How far events may lie apart (s). */
    static final double NEAR = 1.0;

    /** What happens this close (s) happens at once. */
    private static final double INSTANT = 1e-6;

    private static final int CYCLES = 3;

    private final ReferenceRun reference;
    private final RunResult library;
    private final HotWaterSystem system;
    private final double comparableUntil;

    Agreement(ReferenceRun reference, RunResult library) {
        this.reference = reference;
        this.library = library;
        system = library.system();
        comparableUntil = comparableUntil();
    }

    private double comparableUntil() {
        boolean snaps =
                system.reliefValves().stream().anyMatch(v -> v.liftCurve() == ReliefValve.LiftCharacteristic.SNAP);
        List<Double> openings = reference.times(Event.Kind.RELIEF_OPENED);
        return snaps && openings.size() > CYCLES ? openings.get(CYCLES) - NEAR : Double.POSITIVE_INFINITY;
    }

    /** {@return up to when (s) pressures and instants are compared} */
    double comparableEnd() {
        return comparableUntil;
    }

    /** {@return the largest difference of the samples of the absolute pressure (-)} */
    double pressure() {
        return pressure(0, Double.POSITIVE_INFINITY);
    }

    /** {@return the same for the samples of a span of time (s)} */
    double pressure(double from, double to) {
        double largest = 0;
        for (int i = 0; i < commonSamples(); i++) {
            ReferenceRun.Sample sample = reference.samples().get(i);
            if (sample.time() >= from && sample.time() <= to && comparable(sample.time())) {
                double p = library.trace().value(Channel.PRESSURE_ABSOLUTE, i);
                largest = Math.max(largest, Math.abs(p / sample.pressure() - 1));
            }
        }
        return largest;
    }

    /** {@return the time (s) at which that difference is found} */
    double pressureWorstAt() {
        double largest = -1;
        double time = 0;
        for (int i = 0; i < commonSamples(); i++) {
            ReferenceRun.Sample sample = reference.samples().get(i);
            double p = library.trace().value(Channel.PRESSURE_ABSOLUTE, i);
            double difference = Math.abs(p / sample.pressure() - 1);
            if (comparable(sample.time()) && difference > largest) {
                largest = difference;
                time = sample.time();
            }
        }
        return time;
    }

    /** {@return the largest difference of the samples of the water temperature (K)} */
    double temperature() {
        double largest = 0;
        for (int i = 0; i < commonSamples(); i++) {
            double t = library.trace().value(Channel.WATER_MEAN, i);
            largest = Math.max(largest, Math.abs(t - reference.samples().get(i).temperature()));
        }
        return largest;
    }

    /** {@return the largest difference of the samples of the water in the vessels, as a share of all of them (-)} */
    double vesselWater() {
        if (system.vessels().isEmpty()) {
            return 0;
        }
        double largest = 0;
        for (int i = 0; i < commonSamples(); i++) {
            ReferenceRun.Sample sample = reference.samples().get(i);
            if (comparable(sample.time())) {
                double water = library.trace().value(Channel.VESSEL_WATER, i);
                largest = Math.max(largest, Math.abs(water - sample.vesselWater()));
            }
        }
        return largest
                / system.vessels().stream().mapToDouble(ExpansionVessel::volume).sum();
    }

    private int commonSamples() {
        // The last sample of a run that a hazard ended lies at the hazard, whose time is compared itself.
        int whole = library.hazard().isPresent()
                ? library.trace().count() - 1
                : library.trace().count();
        return Math.min(whole, reference.samples().size());
    }

    private boolean comparable(double time) {
        return time < comparableUntil
                && reference.events().stream().noneMatch(e -> jumps(e, time))
                && library.events().stream().noneMatch(e -> jumps(e, time));
    }

    private static boolean jumps(Event event, double time) {
        return switch (event.kind()) {
            case RELIEF_OPENED, RELIEF_RESEATED, DRAW_STARTED, DRAW_ENDED, SUPPLY_RESTORED ->
                Math.abs(event.time() - time) <= NEAR;
            default -> false;
        };
    }

    /** {@return the instants (s) the library found, by kind, device and cause, up to where they can be compared} */
    Map<String, List<Double>> libraryEvents() {
        return instants(library.events());
    }

    /** {@return the instants (s) of the reference, by kind, device and cause, up to where they can be compared} */
    Map<String, List<Double>> referenceEvents() {
        return instants(reference.events());
    }

    /** {@return the instants (s) the library found, without what lasted for no time} */
    Map<String, List<Double>> lastingLibraryEvents() {
        return instants(lasting(library.events()));
    }

    /** {@return the instants (s) of the reference, without what lasted for no time} */
    Map<String, List<Double>> lastingReferenceEvents() {
        return instants(lasting(reference.events()));
    }

    /**
     * Leaves out a feed that closes and opens at one instant, and one that closes because the supply is shut off: whether
     * that is worth an event is not a question of physics.
     */
    private static List<Event> lasting(List<Event> events) {
        return events.stream()
                .filter(e -> e.kind() != Event.Kind.SUPPLY_CLOSED
                        || events.stream().noneMatch(o -> Math.abs(o.time() - e.time()) < INSTANT && annuls(o.kind())))
                .filter(e -> e.kind() != Event.Kind.SUPPLY_OPENED
                        || events.stream()
                                .noneMatch(o -> Math.abs(o.time() - e.time()) < INSTANT
                                        && o.kind() == Event.Kind.SUPPLY_CLOSED))
                .toList();
    }

    private static boolean annuls(Event.Kind kind) {
        return kind == Event.Kind.SUPPLY_OPENED || kind == Event.Kind.SUPPLY_SHUT_OFF;
    }

    /** What happens in the first second is how a run takes up its start, which each side does in its own way. */
    private Map<String, List<Double>> instants(List<Event> events) {
        Map<String, List<Double>> instants = new LinkedHashMap<>();
        for (Event.Kind kind : Event.Kind.values()) {
            events.stream()
                    .filter(e -> e.kind() == kind && e.time() > NEAR && e.time() < comparableUntil)
                    .forEach(e -> instants.computeIfAbsent(kind + " " + e.device() + cause(e), k -> new ArrayList<>())
                            .add(e.time()));
        }
        return instants;
    }

    private static String cause(Event event) {
        return event.cause().map(cause -> " " + cause).orElse("");
    }

    /** {@return the largest difference of the openings of a relief valve over the whole run (-)} */
    double openings() {
        double largest = 0;
        for (Totals.Relief total : library.totals().relief()) {
            long count = reference.events().stream()
                    .filter(e ->
                            e.kind() == Event.Kind.RELIEF_OPENED && e.device().equals(total.name()))
                    .count();
            largest = Math.max(largest, Math.abs(total.openings() - count) / Math.max(1.0, count));
        }
        return largest;
    }

    /** {@return the mass (kg) all relief valves gave off in the reference} */
    double referenceRelieved() {
        double sum = 0;
        for (int i = 0; i < system.reliefValves().size(); i++) {
            sum += reference.relieved(i);
        }
        return sum;
    }

    /** {@return the mass (kg) all relief valves gave off in the library} */
    double libraryRelieved() {
        return library.totals().relief().stream()
                .mapToDouble(Totals.Relief::mass)
                .sum();
    }

    /** {@return the mass (kg) of a volume (m3) the library states as cold water} */
    double cold(double volume) {
        return volume
                * GibbsPolynomialWater.instance()
                        .density(system.coldAtStart(), system.site().atmosphere());
    }
}
