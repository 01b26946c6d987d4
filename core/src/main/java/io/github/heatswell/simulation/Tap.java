package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Contributions.Outlet;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.Draw;
import io.github.heatswell.water.LiquidWater;

/**
 * The open tap, and its share of hot water. The timetable alone opens and shuts it, so it has one mode.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class Tap extends Device<Boolean> {

    private final LiquidWater water;
    private final double pressure;
    private final LiquidWater.State hot = new LiquidWater.State();
    private final LiquidWater.State mixed = new LiquidWater.State();
    private Draw draw;

    /**
     * A shut tap.
     *
     * @param water the properties of water
     * @param pressure the pressure (Pa, absolute) at which the density of mixed water is taken
     */
    Tap(StateVector.Slots slots, LiquidWater water, double pressure) {
        super(slots);
        this.water = water;
        this.pressure = pressure;
    }

    @Override
    Boolean resting() {
        return true;
    }

    /** Opens for the running draw, or shuts if there is none. */
    @Override
    void under(Conditions now) {
        draw = now.draw();
        if (draw != null && draw.mixedTemperature().isPresent()) {
            water.evaluate(draw.mixedTemperature().getAsDouble(), pressure, mixed);
        }
    }

    @Override
    boolean contributes(Modes modes, Conditions now) {
        return now.draw() != null;
    }

    @Override
    void contribute(double[] y, Modes modes, Contributions to) {
        double flow = hotFlow(y[StateVector.COLD], to.tapTemperature(), to.tapDensity());
        to.pass(Outlet.TAP, true, StateVector.DRAWN, flow, 0);
    }

    /** Flow (m3/s) of the tap, 0 if it is shut. */
    double flow() {
        return draw == null ? 0 : draw.flow();
    }

    /** The same as {@link #hotFlow} from the pressure (Pa, absolute) of the hot water. */
    double hotFlowAt(double coldTemperature, double top, double topPressure) {
        if (draw == null) {
            return 0;
        }
        water.evaluate(top, topPressure, hot);
        return hotFlow(coldTemperature, top, hot.density());
    }

    /**
     * Flow of hot water that the running draw takes (kg/s), 0 if the tap is shut.
     *
     * @param coldTemperature temperature of the cold water (K)
     * @param top temperature of the hot water at the tap (K)
     * @param topDensity its density (kg/m3)
     */
    double hotFlow(double coldTemperature, double top, double topDensity) {
        if (draw == null) {
            return 0;
        }
        double wanted = draw.mixedTemperature().orElse(Double.POSITIVE_INFINITY);
        if (wanted <= coldTemperature) {
            // cold water alone is warmer than requested, so no hot water is drawn
            return 0;
        }
        return top <= wanted
                ? topDensity * draw.flow()
                : mixed.density() * draw.flow() * (wanted - coldTemperature) / (top - coldTemperature);
    }
}
