package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.Pressure;
import java.util.function.Consumer;

/** The gas of a vessel against what its shell is made for: it presses on the shell whatever the water does. */
final class ChargeAbovePlateRule implements Rule {

    static final String ID = "vessel-charged-above-plate";

    /**
     * Beyond this share of its plate a shell may be beyond its own test pressure. Codes ask for tests at 1.3 times (ASME VIII) and
     * 1.43 times (European directive on pressure equipment); both from memory.
     */
    private static final double TESTED = 1.3;

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.house.vessels().stream()
                .filter(vessel -> vessel.condition() != ExpansionVessel.Condition.WATERLOGGED)
                .forEach(vessel -> vessel.body().rating().ifPresent(rating -> look(subject, vessel, rating, found)));
    }

    private static void look(
            AssessmentContext subject, ExpansionVessel vessel, Pressure rating, Consumer<CandidateFinding> found) {
        double charge = PrechargeRule.charge(subject, vessel);
        double plate = rating.gauge(subject.atmosphere);
        if (!Rule.exceeds(charge, plate)) {
            return;
        }
        found.accept(Finding.draft(ID, Rule.exceeds(charge, TESTED * plate) ? Severity.HAZARD : Severity.FAULT)
                .compares(NamedValue.PRECHARGE, NamedValue.VESSEL_RATING)
                .says(
                        Rule.sentence(subject.called(vessel))
                                + " is charged to {}, and its plate allows {}: the shell is under that load day and night,"
                                + " whether the water is heated or not.",
                        gauge(charge),
                        gauge(plate))
                .found(gauge(charge))
                .limit(gauge(plate))
                .advises(
                        "Do not knock, move or unscrew the vessel. Let air out at its air valve, with your face away from it,"
                                + " until a tyre gauge shows less than {}. Then correct the precharge.",
                        gauge(plate))
                .asks("Ask a licensed professional whether the vessel may stay in use.")
                .by(Codes.DESCRIPTION));
    }
}
