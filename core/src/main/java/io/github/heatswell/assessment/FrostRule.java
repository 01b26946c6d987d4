package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** A room or a vessel's place below freezing: the water of cold pipe, relief valve and vessel stands there, and no run follows it. */
final class FrostRule implements Rule {

    static final String LIKELY = "frost-likely";

    /** Ends a run, and asks for the same. */
    private static final String FROZEN = "water-freezes";

    private static final double FREEZES = TemperatureUnit.CELSIUS.toSi(0);

    private static final String DAMAGE =
            " Ice bursts pipes and vessels, and a relief valve blocked by ice relieves nothing. No run shows that.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        HotWaterSystem house = subject.house;
        double room = house.site().roomTemperature();
        if (room < FREEZES) {
            String vessels = house.vessels().isEmpty() ? "" : ", expansion vessel";
            found.accept(draft(
                    room,
                    Statement.of(
                            "The room is at {}: the cold pipe" + vessels + " and relief valve can freeze.",
                            Measure.temperature(room))));
            return;
        }
        List<String> names = house.vesselNames();
        for (int i = 0; i < names.size(); i++) {
            double cold = coldest(house.vessels().get(i));
            if (cold < FREEZES) {
                String vessel = names.get(i).isEmpty() ? "the vessel" : Rule.quoted(names.get(i));
                found.accept(draft(
                        cold,
                        Statement.of(
                                "As described, it gets as cold as {} where " + vessel
                                        + " is: the vessel, the cold pipe to it and a relief valve near it can freeze.",
                                Measure.temperature(cold))));
                return;
            }
        }
    }

    /** How cold (K) it is, or was when the vessel was charged, where it is. */
    private static double coldest(ExpansionVessel vessel) {
        return Math.min(or(vessel.temperature()), or(vessel.chargedAt()));
    }

    private static double or(OptionalDouble kelvin) {
        return kelvin.orElse(Double.POSITIVE_INFINITY);
    }

    private static CandidateFinding draft(double cold, Statement where) {
        return Finding.draft(LIKELY, Severity.CAUTION)
                .unless(FROZEN)
                .says(where.then(DAMAGE))
                .found(Measure.temperature(cold))
                .limit(Measure.temperature(FREEZES))
                .advises("Keep the place above freezing. If anything there has frozen, leave the heater off"
                        + " until all ice has thawed and everything has been found whole and free.")
                .by(Codes.DESCRIPTION);
    }
}
