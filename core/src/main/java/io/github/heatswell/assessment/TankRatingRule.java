package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Tank;
import java.util.function.Consumer;

/**
 * A textbook tank that never fails, and a pressure above a working pressure that is only assumed, since nobody has read the plate.
 */
final class TankRatingRule implements Rule {

    /** The share (-) by which common ratings may differ from the assumption: 150 psi is 3 % above 10 bar; our own judgement. */
    private static final double FAR = 0.1;

    private static final Authority ASSUMED =
            Authority.computed("a working pressure that is assumed, since the description gives none");

    private static final Authority TEXTBOOK =
            Authority.computed("the description, which asks for a tank that never fails");

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.house.tank().neverFails()) {
            found.accept(textbook(subject));
        }
        if (subject.house.tank().workingPressureGiven()) {
            return;
        }
        double assumed = subject.workingPressure();
        double relief = subject.firstRelief()
                .map(valve -> OverheatGuardRule.setPressure(subject, valve))
                .orElse(Double.NEGATIVE_INFINITY);
        double highest = Math.max(Math.max(subject.peak(), subject.highestStatic()), relief);
        if (Rule.exceeds(highest, assumed)) {
            found.accept(unread(subject, relief, highest));
        }
    }

    /** A tank of a textbook; beyond the test pressure of a real one it is a hazard all the same. */
    private static CandidateFinding textbook(AssessmentContext subject) {
        double test = subject.house.tank().testPressureAbsolute(subject.atmosphere) - subject.atmosphere;
        return Rule.exceeds(subject.peak(), test)
                ? Finding.draft("textbook-run-beyond-test-pressure", Severity.HAZARD)
                        .says(
                                "Textbook run: the pressure reaches {}, and a tank is tested to {}. No real heater survives"
                                        + " this: the run goes on only because the tank is described as one that never fails.",
                                gauge(subject.peak()),
                                gauge(test))
                        .found(gauge(subject.peak()))
                        .limit(gauge(test))
                        .advises(
                                "Turn the heater off if this house is real, and leave it off until a relief valve has been found"
                                        + " to work.")
                        .by(TEXTBOOK)
                : Finding.draft("textbook-run", Severity.NOTE)
                        .says("Textbook run: the tank is described as one that never fails, which no real heater is.")
                        .advises("For a real house, remove never-fails from the description.")
                        .by(TEXTBOOK);
    }

    private static CandidateFinding unread(AssessmentContext subject, double relief, double highest) {
        double water = Math.max(subject.peak(), subject.highestStatic());
        if (Rule.exceeds(water, (1 + PeakRule.OVERPRESSURE) * Tank.MAX_WORKING_PRESSURE)) {
            return beyondAny(water);
        }
        Measure assumed = gauge(subject.workingPressure());
        boolean far = Rule.exceeds(highest, (1 + FAR) * subject.workingPressure());
        boolean run = Rule.exceeds(subject.peak(), subject.workingPressure());
        boolean supply = Rule.exceeds(subject.highestStatic(), subject.workingPressure());
        String what = run
                ? "The pressure reaches {}"
                : supply
                        ? "The supply reaches {}"
                        : Rule.quoted(subject.firstRelief()
                                        .map(ReliefValve::name)
                                        .orElseThrow()) + " opens at {}";
        return Finding.draft("tank-rating-unread", far ? Severity.FAULT : Severity.CAUTION)
                .unless("textbook-run-beyond-test-pressure")
                .says(
                        what + "; the tank's rating is not given, and {} is assumed.",
                        gauge(run ? subject.peak() : supply ? subject.highestStatic() : relief),
                        assumed)
                .found(gauge(highest))
                .limit(assumed)
                .advises(
                        (mustStayOff(subject) ? "Leave the heater off because of the hazard. " : "")
                                + "Read the working pressure on the tank's plate and add it to the description. If it is below {}, "
                                + (mustStayOff(subject)
                                        ? "leave the heater off also until "
                                        : "turn the heater off until ")
                                + remedy(subject, relief, supply) + ".",
                        gauge(highest))
                .asks("Ask the manufacturer or a licensed professional if the plate cannot be read.")
                .by(ASSUMED);
    }

    /** No plate could make that right. */
    private static CandidateFinding beyondAny(double water) {
        Measure most = gauge(Tank.MAX_WORKING_PRESSURE);
        return Finding.draft("tank-rating-unread", Severity.HAZARD)
                .unless("textbook-run-beyond-test-pressure")
                .says(
                        "The pressure reaches {}. The tank's rating is not given, and no tank of a house is rated for more than {}.",
                        gauge(water),
                        most)
                .found(gauge(water))
                .limit(most)
                .advises(
                        "Turn the heater off, let it cool, and leave it off until a licensed professional has brought the pressure"
                                + " down and says that the tank may stay in use.")
                .by(ASSUMED);
    }

    /** Whether a hazard keeps the heater off, whatever the plate says. */
    private static boolean mustStayOff(AssessmentContext subject) {
        return subject.run.flatMap(RunSummary::hazard).isPresent()
                || subject.house.heater().thermostatStuck()
                || subject.firstRelief()
                        .filter(valve ->
                                !Rule.exceeds(OverheatGuardRule.setPressure(subject, valve), Tank.MAX_WORKING_PRESSURE))
                        .isEmpty()
                || subject.house.reliefValves().stream()
                        .anyMatch(valve -> valve.condition() == ReliefFault.Condition.BLOCKED);
    }

    /** What has to be done before the heater may be on again: about the relief valve, the supply, or both. */
    private static String remedy(AssessmentContext subject, double relief, boolean supply) {
        String lower = "a reducing valve keeps the supply below the plate's pressure";
        String valve = subject.firstRelief().isEmpty()
                ? "a relief valve set to the plate's pressure or less has been fitted"
                : "the relief valve has been replaced by one set to the plate's pressure or less";
        if (subject.firstRelief().isEmpty() || Rule.exceeds(relief, subject.workingPressure())) {
            return supply ? valve + " and " + lower : valve;
        }
        return supply
                ? lower
                : "a licensed professional has found why the relief valve does not hold the pressure lower";
    }
}
