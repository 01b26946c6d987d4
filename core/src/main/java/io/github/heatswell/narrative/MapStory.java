package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a map of peaks found: where on it the house is, and where the valve drips. */
final class MapStory {

    private final PeakMap map;
    private final HotWaterSystem house;
    private final boolean open;
    private final boolean creeps;

    MapStory(PeakMap map) {
        this.map = map;
        this.house = map.setting().system();
        this.open = house.supply().arrangement() == Supply.Arrangement.DIRECT;
        this.creeps = Findings.creeps(house);
    }

    /** The alarms of a closed house in which nothing limits the pressure, else none; first what that comes to. */
    List<Alarm> alarms() {
        if (open || map.setting().reliefSetGauge().isPresent()) {
            return List.of();
        }
        return Stream.concat(
                        map.present().filter(PeakMap.Point::atLeast).map(this::bursting).stream(),
                        Narrative.alarms(house, Doubts.NONE).stream())
                .toList();
    }

    private Alarm bursting(PeakMap.Point point) {
        return Alarm.of(
                Alarm.Level.HAZARD,
                plain("In the worst heat-up the pressure reaches ")
                        .then(gauge(point.peakGauge()))
                        .then(", and no working relief valve is there to stop it. "
                                + Event.Kind.TEST_PRESSURE_REACHED.meaning()));
    }

    Statement headline() {
        if (open) {
            return plain("The peak is ")
                    .then(gauge(map.peakGauge(0, 0)))
                    .then(" with every vessel: the house is open to the mains"
                            + (anyDrips() ? ", and the valve drips" : ""));
        }
        return creeps
                ? plain("The seat of the reducing valve leaks, which the map leaves out. ")
                        .then(closed())
                : closed();
    }

    private Statement closed() {
        Optional<Statement> valve = valve();
        if (house.hasSeveralVessels()) {
            return valve.map(plain(
                            "With one more vessel beside the " + house.vessels().size() + " present: ")::then)
                    .orElse(plain("Peaks of the worst heat-up over volume and precharge of one more vessel"));
        }
        return map.present()
                .map(point -> plain(faulty() ? "The vessel takes no water as it is; once it works, with " : "With ")
                        .then(volume(point.volume()))
                        .then(" at ")
                        .then(gauge(point.prechargeGauge()))
                        .then(finding(point))
                        .then(valve.map(plain("; ")::then).orElse(plain(""))))
                .or(() -> valve.map(Statement::capitalised))
                .orElse(plain("Peaks of the worst heat-up over vessel and precharge"));
    }

    /** The facts of the house, and what was run. */
    Statement facts() {
        return Facts.of(house)
                .then(" Worst heat-up from a cold fill with every tap closed"
                        + (house.reliefValves().isEmpty() ? "" : ", relief valves left out so that none hides a peak")
                        + ". Precharges are read at room temperature."
                        + (house.hasSeveralVessels()
                                ? " The vessel of the map is one more; those present stay as they are."
                                : "")
                        + (creeps
                                ? " While nothing is drawn, what leaks in past the reducing valve raises the pressure further,"
                                        + " whatever the vessel: have its seat cleaned or replaced first."
                                : ""))
                .then(hidden())
                .then(outOfReach());
    }

    private boolean faulty() {
        return house.vessel()
                .filter(only -> !house.hasSeveralVessels())
                .filter(vessel -> vessel.condition() != ExpansionVessel.Condition.SOUND)
                .isPresent();
    }

    /** That the limit is drawn nowhere, since no vessel of the map comes down to it. */
    private Statement outOfReach() {
        OptionalDouble target = map.setting().targetGauge();
        boolean kept = target.isEmpty()
                || IntStream.range(0, map.volumeCount())
                        .anyMatch(i -> IntStream.range(0, map.prechargeCount())
                                .anyMatch(j -> !Limit.passes(map.peakGauge(i, j), target.getAsDouble())));
        return kept
                ? plain("")
                : plain(" No vessel on the map stays within the limit of ")
                        .then(gauge(target.getAsDouble()))
                        .then(".");
    }

    private Statement finding(PeakMap.Point point) {
        return drips(point)
                ? plain(" the relief valve drips")
                : plain(" the peak is ").then(peak(point));
    }

    /** What a relief valve that drips hides; empty where none does. */
    private Statement hidden() {
        return map.present()
                .filter(this::drips)
                .map(point -> plain(" If the relief valve stayed shut, the peak would be ")
                        .then(peak(point))
                        .then("."))
                .orElse(plain(""));
    }

    private Statement peak(PeakMap.Point point) {
        return plain(point.atLeast() ? "at least " : "")
                .then(gauge(point.peakGauge()))
                .then(limit(point));
    }

    private boolean drips(PeakMap.Point point) {
        OptionalDouble set = map.setting().reliefSetGauge();
        return set.isPresent() && point.peakGauge() >= set.getAsDouble();
    }

    /** How a peak stands to what a sizing would keep it below. */
    private Statement limit(PeakMap.Point point) {
        OptionalDouble target = map.setting().targetGauge();
        return target.isEmpty()
                ? plain("")
                : plain(
                                Limit.passes(point.peakGauge(), target.getAsDouble())
                                        ? ", above the limit of "
                                        : ", within the limit of ")
                        .then(gauge(target.getAsDouble()));
    }

    private Optional<Statement> valve() {
        OptionalDouble set = map.setting().reliefSetGauge();
        if (set.isEmpty()) {
            return Optional.empty();
        }
        if (map.setting().staticGauge() >= set.getAsDouble()) {
            return Optional.of(plain("the supply alone, ")
                    .then(gauge(map.setting().staticGauge()))
                    .then(", opens the relief valve set at ")
                    .then(gauge(set.getAsDouble())));
        }
        OptionalDouble least = IntStream.range(0, map.prechargeCount())
                .mapToObj(map::dripVolume)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
        if (least.isEmpty() || least.getAsDouble() > map.volume(0)) {
            double bound = least.orElse(map.volume(map.volumeCount() - 1));
            return Optional.of(plain(least.isEmpty() ? "up to " : "below ")
                    .then(volume(bound))
                    .then(" the valve drips " + everyPrecharge()));
        }
        return Optional.of(plain(
                anyDrips()
                        ? "whether the valve drips depends on the precharge"
                        : "the valve stays shut with every vessel shown"));
    }

    /** The best precharge lies at the static pressure; where that is on the map, no other could do better. */
    private String everyPrecharge() {
        double fill = map.setting().staticAtVesselGauge();
        boolean holdsBest = map.prechargeGauge(0) <= fill && map.prechargeGauge(map.prechargeCount() - 1) >= fill;
        return holdsBest ? "at every precharge" : "at every precharge shown";
    }

    private boolean anyDrips() {
        return IntStream.range(0, map.volumeCount())
                .anyMatch(i -> IntStream.range(0, map.prechargeCount()).anyMatch(j -> map.drips(i, j)));
    }
}
