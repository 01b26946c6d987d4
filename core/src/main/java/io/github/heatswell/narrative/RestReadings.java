package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.Sighting;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** What the gauge showed at rest, long after any heating, and what that says of a reducing valve. Immutable. */
final class RestReadings {

    /** Heated water is left to cool so long (s) before a reading counts as one at rest; our own judgement. */
    private static final double COOLING = 6 * 3_600.0;

    /** How far (s) a note may be from its reading: clocks are read to the minute. */
    private static final double BY_HAND = 60;

    /** Mains so far (Pa) above what a reducing valve holds are told from it on any gauge; our own judgement. */
    private static final double TOLD_APART = 1e5;

    private final HotWaterSystem house;
    private final List<Double> gauge;

    RestReadings(HotWaterSystem house, Optional<PressureLog> log) {
        this.house = house;
        this.gauge = log.stream()
                .flatMap(read -> IntStream.range(0, read.count())
                        .filter(i -> isAtRest(read, i))
                        .mapToObj(read::gauge))
                .toList();
    }

    /** Whether a note says that the heater was off or no water was drawn, and none that the tank was heated in the hours before. */
    private static boolean isAtRest(PressureLog log, int index) {
        double time = log.time(index);
        boolean quiet = false;
        for (Sighting seen : log.sightings()) {
            switch (seen.kind()) {
                case TAPS_SHUT, HEATER_OFF -> quiet |= seen.from() - BY_HAND <= time && time <= seen.until() + BY_HAND;
                case HEATER_ON, DRIPS, CAUGHT -> {
                    if (seen.from() <= time && time < seen.until() + COOLING) {
                        return false;
                    }
                }
                case DRY -> {
                    // says nothing of heating
                }
            }
        }
        return quiet
                && IntStream.rangeClosed(0, index)
                        .noneMatch(i -> log.hasBurner() && log.burnerOn(i) && log.time(i) > time - COOLING);
    }

    /** The lowest (Pa, gauge): what heating traps behind a check valve is above it. */
    OptionalDouble lowest() {
        return gauge.stream().mapToDouble(Double::doubleValue).min();
    }

    /** Whether the reducing valve closes, or which reading tells, and what then; empty where nobody need ask. */
    Optional<Statement> ofReducingValve(DiagnosisResult result) {
        double air = house.site().atmosphere();
        double mains = Collections.max(house.supply().mains().entries().values().stream()
                .map(pressure -> pressure.gauge(air))
                .toList());
        Optional<Double> held = house.supply()
                .reducingValve()
                .map(valve -> held(valve, air))
                .filter(pressure -> pressure + TOLD_APART < mains)
                .filter(pressure -> result.best().cause() != Cause.REDUCING_VALVE_CREEPS);
        if (held.isEmpty()) {
            return Optional.empty();
        }
        boolean closes = !gauge.isEmpty() && Collections.max(gauge) < (held.get() + mains) / 2;
        boolean suspected = result.tested().stream().anyMatch(fit -> fit.cause() == Cause.REDUCING_VALVE_CREEPS);
        return closes
                ? Optional.of(closes(mains).then(alone(mains)))
                : suspected
                        ? Optional.of(plain(
                                        "Whether the reducing valve closes tight, one reading tells: turn the heater off in the"
                                                + " evening, draw no water, and read the gauge in the morning. If it shows about ")
                                .then(Measure.gauge(held.get()))
                                .then(", the valve closes tight; near the mains pressure of ")
                                .then(Measure.gauge(mains))
                                .then(", have the valve cleaned or replaced.")
                                .then(alone(mains)))
                        : Optional.empty();
    }

    private static double held(ReducingValve valve, double air) {
        return valve.set().gauge(air) + valve.lockUpRise();
    }

    private Statement closes(double mains) {
        Statement shown = plain("The reducing valve closes, but for a trickle at most: at rest the gauge showed ")
                .then(Measure.gauge(Collections.min(gauge)));
        return (gauge.size() == 1 ? shown : shown.then(" to ").then(Measure.gauge(Collections.max(gauge))))
                .then(", far below the mains pressure of ")
                .then(Measure.gauge(mains))
                .then(".");
    }

    /** That not even the whole pressure of the mains opens a relief valve, where that is so. */
    private Statement alone(double mains) {
        double air = house.site().atmosphere();
        OptionalDouble opens = house.reliefValves().stream()
                .mapToDouble(valve -> valve.setPressure().gauge(air))
                .min();
        return opens.isPresent() && mains < opens.getAsDouble() - TOLD_APART
                ? plain(" Alone it cannot open the relief valve, which is set to ")
                        .then(Measure.gauge(opens.getAsDouble()))
                        .then(".")
                : plain("");
    }
}
