package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** What a map of peaks found, in words. */
public final class MapHeadline {

    private final PeakMap map;
    private final QuantityFormat amounts;

    public MapHeadline(PeakMap map, QuantityFormat amounts) {
        this.map = map;
        this.amounts = amounts;
    }

    /** A warning where nothing limits the pressure, else nothing. */
    public String hazard() {
        boolean closed = map.setting().system().supply().arrangement() != Supply.Arrangement.DIRECT;
        if (!closed || map.setting().reliefSetGauge().isPresent()) {
            return "";
        }
        boolean bare = map.setting().system().reliefValves().isEmpty();
        return "Hazard: " + (bare ? "this house has no relief valve" : "no relief valve of this house works")
                + ", and nothing else limits the pressure. Keep the heater off until a licensed professional has fitted "
                + (bare ? "one." : "one that does.");
    }

    /** The finding: where the house stands, and where the valve drips. */
    public String sentence() {
        if (isFlat()) {
            return "The peak is " + amounts.pressure(map.peakGauge(0, 0))
                    + " with every vessel: the house is open to the mains"
                    + (anyDrips() ? ", and the valve drips" : "");
        }
        String valve = valve();
        return map.present()
                .map(point ->
                        "With " + vessel(point, amounts) + " " + finding(point) + (valve.isEmpty() ? "" : "; " + valve))
                .orElse(
                        valve.isEmpty()
                                ? "Peaks of the worst heat-up over vessel and precharge"
                                : Statement.plain(valve).capitalised().text(amounts));
    }

    /** The facts of the house, and what was run. */
    public String facts() {
        String condition = map.setting()
                        .system()
                        .vessel()
                        .filter(vessel -> vessel.condition() != ExpansionVessel.Condition.SOUND)
                        .isPresent()
                ? " The present vessel is taken as sound here, which it is not."
                : "";
        return Facts.of(map.setting().system()).text(amounts)
                + " Worst heat-up from a cold fill with every tap closed"
                + (!map.setting().system().reliefValves().isEmpty()
                        ? ", relief valves taken out so that none hides a peak"
                        : "")
                + ". Precharges are read at room temperature." + condition;
    }

    public static String vessel(PeakMap.Point point, QuantityFormat amounts) {
        return amounts.volume(point.volume()) + " at " + amounts.pressure(point.prechargeGauge());
    }

    public static String peak(PeakMap.Point point, QuantityFormat amounts) {
        return (point.atLeast() ? "at least " : "") + amounts.pressure(point.peakGauge());
    }

    private String finding(PeakMap.Point point) {
        OptionalDouble set = map.setting().reliefSetGauge();
        boolean drips = set.isPresent() && point.peakGauge() >= set.getAsDouble();
        return drips
                ? "the relief valve drips, and without it the peak would be " + peak(point, amounts)
                : "the peak is " + peak(point, amounts);
    }

    private String valve() {
        OptionalDouble set = map.setting().reliefSetGauge();
        if (set.isEmpty()) {
            return "";
        }
        if (map.setting().staticGauge() >= set.getAsDouble()) {
            return "the supply alone, " + amounts.pressure(map.setting().staticGauge())
                    + ", opens the relief valve set at " + amounts.pressure(set.getAsDouble());
        }
        OptionalDouble least = IntStream.range(0, map.prechargeCount())
                .mapToObj(map::dripVolume)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
        if (least.isEmpty()) {
            return "up to " + amounts.volume(map.volume(map.volumeCount() - 1)) + " the valve drips "
                    + everyPrecharge();
        }
        if (least.getAsDouble() > map.volume(0)) {
            return "below " + amounts.volume(least.getAsDouble()) + " the valve drips " + everyPrecharge();
        }
        return anyDrips()
                ? "whether the valve drips depends on the precharge"
                : "the valve stays shut with every vessel shown";
    }

    /** The best precharge lies at the static pressure; where that is on the map, no other could do better. */
    private String everyPrecharge() {
        double fill = map.setting().staticAtVesselGauge();
        boolean holdsBest = map.prechargeGauge(0) <= fill && map.prechargeGauge(map.prechargeCount() - 1) >= fill;
        return holdsBest ? "at every precharge" : "at every precharge shown";
    }

    private boolean anyDrips() {
        for (int i = 0; i < map.volumeCount(); i++) {
            for (int j = 0; j < map.prechargeCount(); j++) {
                if (map.drips(i, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isFlat() {
        return map.setting().system().supply().arrangement() == Supply.Arrangement.DIRECT;
    }
}
