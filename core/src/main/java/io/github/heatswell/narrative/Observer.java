package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Takes notes of the samples of a run as they come, without keeping them. */
public final class Observer implements Simulation.SampleListener {

    private static final double DAY = 86_400;

    /** Water that is no more than this (K) cooler than wanted is as warm as wanted. */
    private static final double SAME = 0.5;

    /** Less than this share of what was discharged is not worth a remark (-). */
    private static final double SHARE = 0.05;

    /** A column of water of less than this (Pa), two metres of it, is not worth a remark. */
    private static final double HEAD = 20e3;

    /** Less than this (m3) is not worth a remark. */
    private static final double VOLUME = 0.1e-3;

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

    /**
     * What the samples of a run showed.
     *
     * @param samples how many there were
     * @param startPressureAbsolute the pressure of the first (Pa, absolute)
     * @param startTemperature the mean water temperature of the first (K)
     * @param relievedWhileFed the volume (m3, as cold water) that relief valves discharged while the supply replaced it; what
     *     lies between two samples counts only if a valve discharges water at both
     * @param drawsTooCool how many draws met water in the tank that was cooler than what was wanted at the tap
     */
    public record Observed(
            long samples,
            double startPressureAbsolute,
            double startTemperature,
            double relievedWhileFed,
            long drawsTooCool) {

        /**
         * What the samples of a run showed whose course was kept.
         *
         * @param result the run
         * @return the same as an {@link Observer} would say that had watched it
         */
        public static Observed of(RunResult result) {
            Observer observer =
                    new Observer(Objects.requireNonNull(result, "result").system());
            Trace trace = result.trace();
            for (int i = 0; i < trace.count(); i++) {
                observer.sample(trace.grid().time(i), trace.sample(i), trace.regime(i));
            }
            return observer.observed();
        }

        /** What must be said of the run besides its headline: where discharged water came from, and draws that fell short. */
        List<Statement> remarks(RunSummary run) {
            List<Statement> remarks = new ArrayList<>();
            heights(run).ifPresent(remarks::add);
            double relieved = run.totals().relieved();
            double fed = Math.min(relieved, relievedWhileFed);
            if (fed > VOLUME && fed > SHARE * relieved) {
                remarks.add(plain("The valve runs on water from the supply: ")
                        .then(volume(fed))
                        .then(" of the ")
                        .then(volume(relieved))
                        .then(" discharged came in while it ran."));
            }
            int cut = run.totals().drawsCutShort();
            long cool = drawsTooCool;
            if (cut > 0) {
                remarks.add(plain(draws(cut)
                        + " not fully served: the next draw began before the heat asked for had been delivered."));
            }
            if (cool > 0) {
                remarks.add(plain(draws(cool) + " not fully served: the water was cooler than wanted at the tap."));
            }
            String profile = run.system().draws().name();
            if (profile.startsWith("us-")) {
                remarks.add(plain("The draw times are those of a test" + Facts.profile(profile)
                        + ", starting at midnight: real households use water at other times."));
            }
            return remarks;
        }

        /** What gauge, vessel and relief valves see of the peak where they sit at other heights than the drain cock. */
        private static Optional<Statement> heights(RunSummary run) {
            HotWaterSystem system = run.system();
            List<Statement> seen = new ArrayList<>();
            seen("the gauge shows ", system.gaugeHeight(), run).ifPresent(seen::add);
            for (int i = 0; i < system.vessels().size(); i++) {
                String name = system.vesselNames().get(i);
                String sees = name.isEmpty() ? "the vessel sees " : "“" + name + "” sees ";
                seen(sees, system.vessels().get(i).height(), run).ifPresent(seen::add);
            }
            system.reliefValves()
                    .forEach(valve -> seen("“" + valve.name() + "” sees ", valve.height(), run)
                            .ifPresent(seen::add));
            return seen.isEmpty()
                    ? Optional.empty()
                    : Optional.of(plain("At the peak of ")
                            .then(gauge(run.peak().value()))
                            .then(" at the drain cock, each at its own height: ")
                            .then(Statement.joined(", ", seen))
                            .then("."));
        }

        private static Optional<Statement> seen(String what, double height, RunSummary run) {
            double head = run.system().head(height);
            return Math.abs(head) < HEAD
                    ? Optional.empty()
                    : Optional.of(plain(what).then(gauge(run.peak().value() - head)));
        }

        private static String draws(long count) {
            return count == 1 ? "1 draw was" : count + " draws were";
        }
    }
}
