package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.ReliefValve;
import java.util.function.Consumer;

/**
 * A tank whose working pressure is assumed, and a pressure above that: no maker has said that it is too much, and nobody has read
 * the plate.
 */
final class TankRatingRule implements Rule {

    /** Further above the assumption (-) than ratings in use lie apart: 150 psi are 3 % above 10 bar; own judgement. */
    private static final double FAR = 0.1;

    private static final Authority ASSUMED =
            Authority.computed("a working pressure that is assumed, since the description gives none");

    @Override
    public void look(AssessmentContext subject, Consumer<Found> found) {
        if (subject.house.tank().workingPressureGiven()) {
            return;
        }
        double assumed = subject.workingPressure();
        double peak = Math.max(subject.peak(), subject.highestStatic());
        double relief = subject.firstRelief()
                .map(valve -> OverheatGuardRule.setPressure(subject, valve))
                .orElse(Double.NEGATIVE_INFINITY);
        if (Math.max(peak, relief) > assumed + SAME) {
            found.accept(unread(subject, peak, Math.max(peak, relief)));
        }
    }

    private static Found unread(AssessmentContext subject, double peak, double highest) {
        Measure assumed = gauge(subject.workingPressure());
        boolean far = highest > (1 + FAR) * subject.workingPressure() + SAME;
        Finding.Draft draft = Finding.draft("tank-rating-unread", far ? Severity.FAULT : Severity.CAUTION);
        draft = peak > subject.workingPressure() + SAME
                ? draft.says(
                        "The pressure reaches {}; what the tank is made for is not given, and {} is assumed.",
                        gauge(peak),
                        assumed)
                : draft.says(
                        Rule.quoted(subject.firstRelief().map(ReliefValve::name).orElseThrow())
                                + " opens at {}; what the tank is made for is not given, and {} is assumed.",
                        gauge(highest),
                        assumed);
        return draft.found(gauge(highest))
                .limit(assumed)
                .advises(
                        "Read the working pressure on the tank's plate and add it to the description. If it is below {}, turn"
                                + " the heater off until the relief valve has been replaced by one set to the plate's pressure"
                                + " or less.",
                        gauge(highest))
                .asks("Ask the maker or a licensed professional if the plate cannot be read.")
                .by(ASSUMED);
    }
}
