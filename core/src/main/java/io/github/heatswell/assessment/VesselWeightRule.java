package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ExpansionVessel.Mounting;
import io.github.heatswell.units.Unit;
import java.util.function.Consumer;

/**
 * Weight of a vessel full of water, as after a failure of its diaphragm. Lying on its connection alone, it bends that by its
 * weight times half its length.
 */
final class VesselWeightRule implements Rule {

    private static final double WATER = 1_000;

    private static final Authority OWN =
            Authority.computed("mass of steel and of the water that fills it, times gravity, times half the length");

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        subject.house
                .vessels()
                .forEach(vessel -> vessel.body().mounting().ifPresent(mounting -> {
                    if (mounting == Mounting.HORIZONTAL) {
                        found.accept(unsupported(subject, vessel));
                    } else if (vessel.body().emptyMass().isPresent()) {
                        found.accept(heavy(subject, vessel));
                    }
                }));
    }

    private static double mass(ExpansionVessel vessel) {
        return vessel.body().emptyMass().orElse(0) + WATER * vessel.volume();
    }

    private static CandidateFinding heavy(AssessmentContext subject, ExpansionVessel vessel) {
        Measure mass = new Measure(Kind.MASS, mass(vessel));
        return Finding.draft("vessel-weight", Severity.NOTE)
                .says(
                        "Full of water, as after a failure of its diaphragm, " + subject.called(vessel) + " weighs {}.",
                        mass)
                .found(mass)
                .advises("Make sure its bracket or pipe can carry that weight.")
                .by(OWN);
    }

    private static CandidateFinding unsupported(AssessmentContext subject, ExpansionVessel vessel) {
        ExpansionVessel.Body body = vessel.body();
        Measure mass = new Measure(Kind.MASS, mass(vessel));
        String weighs = Rule.sentence(subject.called(vessel)) + " is carried by its connection alone and weighs "
                + (body.emptyMass().isPresent() ? "" : "at least ") + "{} when full of water";
        Finding.Draft draft = Finding.draft("vessel-unsupported", Severity.CAUTION);
        if (body.length().isPresent()) {
            Measure moment = new Measure(
                    Kind.MOMENT,
                    mass(vessel) * Unit.STANDARD_GRAVITY * body.length().getAsDouble() / 2);
            draft.says(weighs + ", which puts a bending moment of {} on the connection.", mass, moment)
                    .found(moment);
        } else {
            draft.says(weighs + ".", mass).found(mass);
        }
        return draft.advisesWork("Have the vessel supported by a bracket or a shelf, or mounted upright.")
                .by(OWN);
    }
}
