package io.github.heatswell.checksheet;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One simulation of a {@link CheckProcedure}: the cold house ten minutes after a cold tap was closed, then the draw and the
 * night after it.
 */
final class CheckRun {

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration REST = Duration.ofMinutes(10);
    private static final double NIGHT = 36_000;
    /** The feed comes to rest within so many seconds of closing the taps, if it does at all: before the next reading. */
    private static final double SETTLING = 900;
    /** Event times this close (s) are one. */
    private static final double SAME_MOMENT = 1e-3;
    /** Both within a second: one element hands over to the other. */
    private static final double HANDING_OVER = 1;

    private static final double WARMEST_REST = 372;
    private static final double COLDEST_REST = 273.25;
    private static final double NO_INPUT = 1e-6;

    private final CheckProcedure procedure;
    private final HotWaterSystem house;
    private final double closed;
    private final Balances.Count count = new Balances.Count();

    CheckRun(CheckProcedure procedure, HotWaterSystem house) {
        this.procedure = procedure;
        this.house = house;
        closed = procedure.drawTime();
    }

    CheckSheet sheet() {
        RunResult cold =
                count.add(Simulation.of(cold(), REST).sampledEvery(MINUTE).run());
        double whenCold = last(cold, Channel.RELIEF_FLOW);
        if (cold.hazard().isPresent()) {
            CheckSheet.Drips drips = new CheckSheet.Drips(cold.totals().relieved(), whenCold, OptionalDouble.empty());
            return new CheckSheet(procedure, List.of(), heatUp(false, cold), drips, cold.hazard(), count.sum());
        }
        List<CheckSheet.Reading> readings = new ArrayList<>();
        readings.add(new CheckSheet.Reading(
                CheckSheet.Reading.Kind.COLD_STATIC, cold.gauge(last(cold, Channel.PRESSURE_ABSOLUTE)), 0));
        HotWaterSystem hot = hot();
        RunResult run = count.add(
                Simulation.of(hot, seconds(closed + NIGHT)).sampledEvery(MINUTE).run());
        Optional<Event> off = heatedUp(run.summary());
        readHot(hot, run, off, readings);
        return new CheckSheet(
                procedure, readings, heatUp(off.isPresent(), run), drips(run, whenCold), run.hazard(), count.sum());
    }

    private static CheckSheet.HeatUp heatUp(boolean finished, RunResult run) {
        return new CheckSheet.HeatUp(
                finished, run.extremes().highestTemperature().value());
    }

    /** The house with its heater off and its tank as warm as the room. */
    private HotWaterSystem cold() {
        Heater.Builder off = house.heater().toBuilder().input(NO_INPUT, PowerUnit.WATT);
        if (house.heater().elements().size() > 1) {
            Element upper = house.heater().elements().get(1);
            off.upper(upper.toBuilder().input(NO_INPUT, PowerUnit.WATT).build());
        }
        double room = Math.max(COLDEST_REST, Math.min(WARMEST_REST, house.site().roomTemperature()));
        return startingAt(room).heater(off.build()).draws(DrawProfile.none()).build();
    }

    /** The house with its tank at the set point, from which the amount is drawn at once. */
    private HotWaterSystem hot() {
        double setPoint = house.heater().elements().stream()
                .mapToDouble(Element::setPoint)
                .max()
                .orElseThrow();
        Draw draw = Draw.ofVolume(
                house.start().timeOfDay(),
                VolumeUnit.LITRE.fromSi(procedure.amount()),
                VolumeUnit.LITRE,
                FlowUnit.LITRE_PER_MINUTE.fromSi(procedure.amount() / closed),
                FlowUnit.LITRE_PER_MINUTE);
        return startingAt(setPoint)
                .draws(DrawProfile.of("check", List.of(draw)))
                .build();
    }

    private HotWaterSystem.Builder startingAt(double temperature) {
        return house.toBuilder()
                .supply(house.supply().toBuilder().withoutOutages().build())
                .start(house.start().toBuilder()
                        .atSupplyPressure()
                        .water(temperature, TemperatureUnit.KELVIN)
                        .build());
    }

    private void readHot(HotWaterSystem hot, RunResult run, Optional<Event> off, List<CheckSheet.Reading> readings) {
        if (run.end() < closed) {
            return;
        }
        readings.add(afterDraw(run));
        sample(run, CheckSheet.Reading.Kind.QUARTER_HOUR, 900, readings);
        sample(run, CheckSheet.Reading.Kind.HALF_HOUR, 1800, readings);
        if (off.isPresent()) {
            double time = off.get().time();
            readings.add(peak(
                    isPeakUntil(time, run)
                            ? run
                            : count.add(Simulation.of(hot, seconds(time))
                                    .sampledEvery(MINUTE)
                                    .run())));
        } else if (run.hazard().isEmpty()) {
            readings.add(peak(run));
        }
        sample(run, CheckSheet.Reading.Kind.NEXT_MORNING, NIGHT, readings);
    }

    /** The pressure at which the feed came to rest: where it closed, or, if it stays open, what it holds. */
    private CheckSheet.Reading afterDraw(RunResult run) {
        return run.events().stream()
                .filter(event -> event.kind() == Event.Kind.SUPPLY_CLOSED)
                .filter(event -> isAfterDraw(event.time()) && event.time() <= closed + SETTLING)
                .findFirst()
                .map(event -> new CheckSheet.Reading(
                        CheckSheet.Reading.Kind.AFTER_DRAW,
                        run.gauge(event.pressureAbsolute()),
                        Math.max(0, event.time() - closed)))
                .orElseGet(() -> at(run, CheckSheet.Reading.Kind.AFTER_DRAW, 0));
    }

    private boolean isAfterDraw(double time) {
        return time >= closed - SAME_MOMENT;
    }

    private void sample(RunResult run, CheckSheet.Reading.Kind kind, double after, List<CheckSheet.Reading> readings) {
        if (run.end() >= closed + after - 1e-6) {
            readings.add(at(run, kind, after));
        }
    }

    /** The reading at a whole minute, where there is a sample. */
    private CheckSheet.Reading at(RunResult run, CheckSheet.Reading.Kind kind, double after) {
        int sample = (int) Math.rint((closed + after) / 60);
        return new CheckSheet.Reading(kind, run.gauge(run.trace().value(Channel.PRESSURE_ABSOLUTE, sample)), after);
    }

    /** Whether the highest pressure of the night is that of the heat-up, which then need not be simulated by itself. */
    private boolean isPeakUntil(double off, RunResult night) {
        double time = night.extremes().highestPressure().time();
        return isAfterDraw(time) && time <= off + SAME_MOMENT;
    }

    /** The highest pressure after the taps were closed; the run ends with the heat-up, or has its peak there. */
    private CheckSheet.Reading peak(RunResult run) {
        RunSummary.Extreme highest = run.extremes().highestPressure();
        if (isAfterDraw(highest.time())) {
            return new CheckSheet.Reading(
                    CheckSheet.Reading.Kind.PEAK, run.gauge(highest.value()), Math.max(0, highest.time() - closed));
        }
        // the start was higher: then the course is that of the mains, and even between the minutes
        int best = (int) Math.rint(closed / 60);
        for (int i = best; i < run.trace().count(); i++) {
            if (run.trace().value(Channel.PRESSURE_ABSOLUTE, i) > run.trace().value(Channel.PRESSURE_ABSOLUTE, best)) {
                best = i;
            }
        }
        return new CheckSheet.Reading(
                CheckSheet.Reading.Kind.PEAK,
                run.gauge(run.trace().value(Channel.PRESSURE_ABSOLUTE, best)),
                run.trace().grid().time(best) - closed);
    }

    /** When the heater first went off after the draw with no other element going on. */
    private Optional<Event> heatedUp(RunSummary run) {
        return run.events().stream()
                .filter(event -> event.kind() == Event.Kind.HEATER_OFF && event.time() > closed)
                .filter(event -> run.events().stream()
                        .noneMatch(other -> other.kind() == Event.Kind.HEATER_ON
                                && Math.abs(other.time() - event.time()) <= HANDING_OVER))
                .findFirst();
    }

    private CheckSheet.Drips drips(RunResult run, double whenCold) {
        double before =
                run.end() < closed ? 0 : run.trace().value(Channel.RELIEVED_TOTAL, (int) Math.rint(closed / 60));
        OptionalDouble first = run.events().stream()
                .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED && isAfterDraw(event.time()))
                .mapToDouble(event -> Math.max(0, event.time() - closed))
                .findFirst();
        return new CheckSheet.Drips(run.totals().relieved() - before, whenCold, first);
    }

    private static double last(RunResult run, Channel channel) {
        return run.trace().value(channel, run.trace().count() - 1);
    }

    private static Duration seconds(double value) {
        return Duration.ofNanos(Math.round(value * 1e9));
    }
}
