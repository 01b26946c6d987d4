package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.citation.Citation.Standing;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import java.util.function.Consumer;

/** Hot branches: water that cools and shrinks after a draw, and has to run out before hot water comes. */
final class HotBranchRule implements Rule {

    /** The volume (m3) above which a branch outside small houses gets a circulation loop. */
    static final double LONG = 3e-3;

    private static final Authority THREE_LITRES = Authority.code(
            "DVGW W 551 (2004) as explained by trade pages: outside one- and two-family houses, a circulation loop where the pipe"
                    + " from the heater to a tap holds more than 3 litres",
            Standing.SECOND_HAND);

    /** After so many time constants a pipe is within 5 % of the temperature of the room. */
    private static final double COOLED = 3;

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        List<PipeRun> branch = subject.house.piping(PipeRun.Carries.HOT);
        double volume = branch.stream().mapToDouble(PipeRun::volume).sum();
        if (volume > LONG * (1 + 1e-9)) {
            found.accept(Finding.draft("hot-branch-long", Severity.NOTE)
                    .says("The hot branch holds {}, which runs cold before hot water comes.", Measure.volume(volume))
                    .found(Measure.volume(volume))
                    .limit(Measure.volume(LONG))
                    .advises("A shorter or narrower branch saves that water.")
                    .asks("Outside one- and two-family houses, ask whether a circulation loop is required.")
                    .by(THREE_LITRES));
        }
        double hot = subject.highestSetPoint();
        double room = subject.house.site().roomTemperature();
        LiquidWater water = GibbsPolynomialWater.instance();
        // In a room below that the branch freezes, which the run itself tells.
        boolean liquid = room >= water.validity().lowestTemperature();
        if (volume > 0 && liquid && hot > room && !subject.open()) {
            LiquidWater.State state = water.stateAt(hot, subject.atmosphere);
            double wall = 3
                    * (hot - room)
                    * branch.stream()
                            .mapToDouble(run -> run.volume() * run.material().linearExpansion())
                            .sum();
            double shrinks = volume * (1 - state.density() / water.density(room, subject.atmosphere)) - wall;
            double loss = branch.stream().mapToDouble(PipeRun::heatLoss).sum();
            double cooled = COOLED * volume * state.density() * state.heatCapacity() / loss;
            if (shrinks > 0) {
                found.accept(Finding.draft("hot-branch-cools", Severity.NOTE)
                        .says(
                                "After a draw, the {} in the hot branch cools to room temperature and shrinks by {}. So a falling"
                                        + " gauge need not mean a leak.",
                                Measure.volume(volume),
                                Measure.volume(shrinks))
                        .found(Measure.volume(shrinks))
                        .advises(
                                "To test for leaks, read the gauge once no tap has run for {} and the heater is off.",
                                Measure.time(cooled))
                        .by(Codes.DESCRIPTION));
            }
        }
    }
}
