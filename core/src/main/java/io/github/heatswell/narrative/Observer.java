package io.github.heatswell.narrative;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.SampleListener;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;

/** Takes notes of the samples of a run as they come, without keeping them. */
public final class Observer implements SampleListener {

    private static final double DAY = 86_400;

    /** Water that is no more than this (K) cooler than wanted is as warm as wanted. */
    private static final double SAME = 0.5;

    private final List<Draw> draws;
    private final double clockAtStart;
    private long samples;
    private double startPressure;
    private double startTemperature;
    private double lastFlow;
    private double lastRelieved;
    private double lastSupplied;
    private double relievedWhileFed;
    private double lastCoolDraw = Double.NEGATIVE_INFINITY;
    private long coolDraws;

    /**
     * Begins to watch.
     *
     * @param system what is going to run
     */
    public Observer(HotWaterSystem system) {
        this.draws = system.draws().draws();
        this.clockAtStart = system.start().timeOfDay();
    }

    @Override
    public void sample(double time, double[] values, Trace.Regime regime) {
        if (samples == 0) {
            startPressure = values[Channel.PRESSURE_ABSOLUTE.ordinal()];
            startTemperature = values[Channel.WATER_MEAN.ordinal()];
        }
        samples++;
        relief(values);
        if (values[Channel.DRAW_FLOW.ordinal()] > 0) {
            draw(clockAtStart + time, values[Channel.WATER_TOP.ordinal()]);
        }
    }

    /**
     * What the samples showed so far.
     *
     * @return the notes
     */
    public Observed observed() {
        return new Observed(samples, startPressure, startTemperature, relievedWhileFed, coolDraws);
    }

    private void relief(double[] values) {
        double flow = values[Channel.RELIEF_FLOW.ordinal()];
        double relieved = values[Channel.RELIEVED_TOTAL.ordinal()];
        // What taps took was replaced as well; only the rest can have gone to the valves.
        double supplied = values[Channel.INFLOW_TOTAL.ordinal()] - values[Channel.DRAWN_TOTAL.ordinal()];
        if (flow > 0 && lastFlow > 0) {
            relievedWhileFed += Math.max(0, Math.min(relieved - lastRelieved, supplied - lastSupplied));
        }
        lastFlow = flow;
        lastRelieved = relieved;
        lastSupplied = supplied;
    }

    /** Finds the draw that is running, which is the last one that began. */
    private void draw(double clock, double top) {
        double midnight = DAY * Math.floor(clock / DAY);
        Draw running = draws.get(draws.size() - 1);
        double began = midnight - DAY + running.timeOfDay();
        for (Draw draw : draws) {
            if (midnight + draw.timeOfDay() <= clock) {
                running = draw;
                began = midnight + draw.timeOfDay();
            }
        }
        boolean cool = running.mixedTemperature().isPresent()
                && top < running.mixedTemperature().getAsDouble() - SAME;
        if (cool && began > lastCoolDraw) {
            coolDraws++;
            lastCoolDraw = began;
        }
    }
}
