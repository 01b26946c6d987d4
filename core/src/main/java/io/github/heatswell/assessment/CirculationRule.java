package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.citation.Citation.Standing;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.util.function.Consumer;

/** A circulation loop that comes back too cool against legionella, or whose pump rests too long. */
final class CirculationRule implements Rule {

    /** How far (K) the loop may be below the water that leaves the heater. */
    static final double COOLER = 5;
    /** How long (s) its pump may rest a day. */
    static final double RESTS = 8 * 3600.0;

    /** Rounding of times (s) and temperatures (K). */
    private static final double SAME_TIME = 1;

    private static final double SAME_TEMPERATURE = 1e-6;

    private static final Authority W_551 = Authority.code(
            "DVGW W 551 as trade pages explain it: outside one- and two-family houses, a loop at most 5 K below the heater's outlet,"
                    + " and a pump that runs 16 of 24 hours",
            Standing.SECOND_HAND);

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.house.circulation().ifPresent(loop -> {
            returns(subject, loop, found);
            if (loop.rests() > RESTS + SAME_TIME) {
                found.accept(Finding.draft("circulation-rests-long", Severity.NOTE)
                        .says("The pump rests {} a day, and the water in the loop cools.", Measure.time(loop.rests()))
                        .found(Measure.time(loop.rests()))
                        .limit(Measure.time(RESTS))
                        .advises("Outside one- and two-family houses, let it rest {} at most.", Measure.time(RESTS))
                        .by(W_551));
            }
        });
    }

    /** The loop as one mixed volume, with the tank at its set point: {@code m cp (T_hot - T) = L (T - T_room)}. */
    private static void returns(AssessmentContext subject, Circulation loop, Consumer<CandidateFinding> found) {
        double hot = subject.highestSetPoint();
        double room = subject.house.site().roomTemperature();
        LiquidWater.State water = GibbsPolynomialWater.instance().stateAt(hot, subject.atmosphere);
        double carries = loop.flow() * water.density() * water.heatCapacity();
        double loss = subject.house.piping(PipeRun.Carries.LOOP).stream()
                .mapToDouble(PipeRun::heatLoss)
                .sum();
        double returned = (carries * hot + loss * room) / (carries + loss);
        if (hot - returned > COOLER + SAME_TEMPERATURE) {
            found.accept(Finding.draft("circulation-returns-cool", Severity.CAUTION)
                    .says(
                            "Fed with {}, the loop comes back at {}: it loses more than its flow of {} can carry.",
                            Measure.temperature(hot),
                            Measure.temperature(returned),
                            new Measure(Measure.Kind.FLOW, loop.flow()))
                    .found(Measure.temperature(returned))
                    .limit(Measure.temperature(hot - COOLER))
                    .advises(
                            "Insulate the loop better or set the pump higher, until it comes back at {} or more.",
                            Measure.temperature(hot - COOLER))
                    .by(W_551));
        }
    }
}
