package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.Decimals;
import java.util.List;

/** Looks things up in runs, and makes them measures. */
final class Look {

    private Look() {}

    static double atmosphere(RunResult run) {
        return run.system().site().atmosphere();
    }

    /** The highest pressure (Pa gauge). */
    static double peak(RunResult run) {
        return run.peak().value();
    }

    /** The pressure of the supply at the start (Pa gauge). */
    static double supply(RunResult run) {
        return run.gauge(run.system().supplyAtStart().absolute(atmosphere(run)));
    }

    /** The set pressure of the first relief valve (Pa gauge). */
    static double reliefSet(RunResult run) {
        return run.system().reliefValves().get(0).setPressure().gauge(atmosphere(run));
    }

    static double cold(RunResult run) {
        return run.system().coldAtStart();
    }

    static double setPoint(RunResult run) {
        return run.system().heater().setPoint();
    }

    /** Whether two values differ by less than a part of the second. */
    static boolean near(double value, double other, double part) {
        return Math.abs(value / other - 1) < part;
    }

    /** The flow of the valve a little before the heater first stops (m3/s). */
    static double lastFlow(RunResult run) {
        return at(
                run,
                Channel.RELIEF_FLOW,
                time(run, EventKind.HEATER_OFF) - 2 * run.trace().grid().step());
    }

    /** The reseat pressure of the first relief valve (Pa gauge). */
    static double reseat(RunResult run) {
        return run.system().reliefValves().get(0).reseatPressure().gauge(atmosphere(run));
    }

    /** A case of a lesson with something else changed. */
    static RunResult with(LessonRun run, int index, String... changes) {
        return run.count()
                .add(run.lesson()
                        .cases()
                        .get(index)
                        .scenario()
                        .with(List.of(changes).stream().map(Change::of).toList())
                        .simulation()
                        .run());
    }

    /** The smallest vessel with which a case of a lesson keeps its relief valve shut (m3), to a twentieth of a litre. */
    static double smallestDry(LessonRun run, int index) {
        double low = 1;
        double high = 500;
        while (high - low > 0.05) {
            double middle = (low + high) / 2;
            if (opened(with(run, index, "vessel.volume=" + middle + " L"))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * 1e-3;
    }

    /** When a channel first passes a value (SI units), or the end of the run. */
    static double timeWhen(RunResult run, Channel channel, double value) {
        Trace trace = run.trace();
        for (int i = 0; i + 1 < trace.count(); i++) {
            double here = trace.value(channel, i);
            double next = trace.value(channel, i + 1);
            if ((here < value) != (next < value)) {
                double step = trace.grid().time(i + 1) - trace.grid().time(i);
                return trace.grid().time(i) + (value - here) / (next - here) * step;
            }
        }
        return run.end();
    }

    static boolean opened(RunResult run) {
        return run.first(EventKind.RELIEF_OPENED).isPresent();
    }

    static double time(RunResult run, EventKind kind) {
        return run.first(kind).map(Event::time).orElse(run.end());
    }

    static double pressureAt(RunResult run, EventKind kind) {
        return run.gauge(run.first(kind)
                .map(Event::pressureAbsolute)
                .orElse(run.extremes().highestPressure().value()));
    }

    static double relieved(RunResult run) {
        return run.totals().relieved();
    }

    static ExpansionVessel vessel(RunResult run) {
        return run.system().vessel().orElseThrow();
    }

    /** The vessel's gas pressure while empty (Pa gauge). */
    static double precharge(RunResult run) {
        return vessel(run).precharge().gauge(atmosphere(run));
    }

    /** The share of the vessel that holds water at the start. */
    static double fullAtStart(RunResult run) {
        return run.trace().value(Channel.VESSEL_WATER, 0) / vessel(run).volume();
    }

    /** The value of a channel when the mean temperature of the water first passes one (SI unit of the channel). */
    static double whenWarmed(RunResult run, Channel channel, double temperature) {
        return where(run.trace(), Channel.WATER_MEAN, temperature, channel);
    }

    /** The value of a channel at a moment (SI unit of the channel). */
    static double at(RunResult run, Channel channel, double time) {
        Trace trace = run.trace();
        int before = Math.min((int) (time / trace.grid().step()), trace.count() - 2);
        double part = (time - trace.grid().time(before))
                / (trace.grid().time(before + 1) - trace.grid().time(before));
        return between(trace, channel, before, part);
    }

    private static double where(Trace trace, Channel known, double value, Channel wanted) {
        for (int i = 0; i + 1 < trace.count(); i++) {
            double here = trace.value(known, i);
            double next = trace.value(known, i + 1);
            if (here <= value && value < next) {
                return between(trace, wanted, i, (value - here) / (next - here));
            }
        }
        return trace.value(wanted, trace.count() - 1);
    }

    private static double between(Trace trace, Channel channel, int index, double part) {
        return (1 - part) * trace.value(channel, index) + part * trace.value(channel, index + 1);
    }

    static Measure gauge(double pascal) {
        return new Measure(Measure.Kind.GAUGE_PRESSURE, pascal);
    }

    static Measure difference(double pascal) {
        return new Measure(Measure.Kind.PRESSURE_DIFFERENCE, pascal);
    }

    static Measure volume(double cubicMetres) {
        return new Measure(Measure.Kind.VOLUME, cubicMetres);
    }

    static Measure temperature(double kelvin) {
        return new Measure(Measure.Kind.TEMPERATURE, kelvin);
    }

    static Measure warming(double kelvin) {
        return new Measure(Measure.Kind.TEMPERATURE_DIFFERENCE, kelvin);
    }

    static Measure power(double watt) {
        return new Measure(Measure.Kind.POWER, watt);
    }

    static Measure time(double seconds) {
        return new Measure(Measure.Kind.TIME, seconds);
    }

    static Measure share(double share) {
        return new Measure(Measure.Kind.SHARE, share);
    }

    /** A number without a unit, with one decimal. */
    static String number(double value) {
        return Decimals.fixed(value, 1);
    }

    /** A number without a unit, rounded to a whole one. */
    static String whole(double value) {
        return Decimals.fixed(value, 0);
    }

    /** A share as a percentage. */
    static String plain(double share) {
        return number(100 * share) + " %";
    }

    /** A small number without a unit, with two decimals. */
    static String fine(double value) {
        return Decimals.fixed(value, 2);
    }
}
