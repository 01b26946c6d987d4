package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What comes after the sizing of a house with several vessels. */
final class SeveralVessels {

    /** A name that tells which vessel a key is about. */
    private static final String ANOTHER = "another-one";

    private SeveralVessels() {}

    /** The sizing again with the vessels put right; else the house with one more; else the years of those that are enough. */
    static NextStep next(VesselAnswer answer, QuantityFormat shown) {
        List<Change> right = putRight(answer, shown);
        if (!right.isEmpty()) {
            return new NextStep("size", right);
        }
        if (answer.sizing().outcome() == SizingResult.Outcome.NONE_NEEDED) {
            return NextStep.to("outlook");
        }
        return oneMore(answer, shown).map(more -> new NextStep("run", more)).orElseGet(() -> NextStep.to("rules"));
    }

    private static List<Change> putRight(VesselAnswer answer, QuantityFormat shown) {
        Scenario scenario = answer.scenario();
        HotWaterSystem house = scenario.system();
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < house.vessels().size(); i++) {
            int index = i;
            Optional<String> key = key(scenario, index);
            if (house.vessels().get(index).condition() != ExpansionVessel.Condition.SOUND) {
                key.ifPresent(at -> changes.add(new Change(at + ".condition", "sound")));
            }
            if (!PrechargeTarget.isMet(house, index, scenario.doubts())) {
                PrechargeTarget.of(house, index)
                        .filter(PrechargeTarget::isAllowed)
                        .ifPresent(target ->
                                key.ifPresent(at -> changes.addAll(charged(at, target, house, index, shown))));
            }
        }
        return changes;
    }

    /** A charge is read where the vessel stands, which may be warmer than it was at first, and in a tank as cold as the tank. */
    private static List<Change> charged(
            String key, PrechargeTarget target, HotWaterSystem house, int index, QuantityFormat shown) {
        ExpansionVessel vessel = house.vessels().get(index);
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(key + ".precharge", NextStep.shut(shown.pressure(target.pumpToGauge()))));
        if (vessel.isInTank() || vessel.temperature().isPresent()) {
            changes.add(new Change(key + ".charged-at", NextStep.shut(shown.temperature(house.gasAtRest(vessel)))));
        }
        return changes;
    }

    /** How a file calls one of its vessels: the first may stand before the others. */
    private static Optional<String> key(Scenario scenario, int index) {
        int count = scenario.system().vessels().size();
        return Stream.of("vessel", "vessels[" + (index - 1) + "]", "vessels[" + index + "]")
                .filter(key -> changed(scenario, List.of(new Change(key + ".name", ANOTHER)))
                        .filter(house -> house.vessels().size() == count
                                && house.vesselNames().get(index).equals(ANOTHER))
                        .isPresent())
                .findFirst();
    }

    private static Optional<List<Change>> oneMore(VesselAnswer answer, QuantityFormat shown) {
        Scenario scenario = answer.scenario();
        double air = scenario.system().site().atmosphere();
        int count = scenario.system().vessels().size();
        return answer.recommended().stream()
                .flatMap(vessel -> Stream.of(count - 1, count)
                        .map(place -> List.of(
                                new Change(
                                        "vessels[" + place + "].volume", NextStep.shut(shown.volume(vessel.volume()))),
                                new Change(
                                        "vessels[" + place + "].precharge",
                                        NextStep.shut(shown.pressure(
                                                vessel.precharge().gauge(air)))))))
                .filter(changes -> changed(scenario, changes)
                        .filter(house -> house.vessels().size() == count + 1)
                        .isPresent())
                .findFirst();
    }

    private static Optional<HotWaterSystem> changed(Scenario scenario, List<Change> changes) {
        try {
            return Optional.of(scenario.with(changes).system());
        } catch (InvalidScenarioException | IllegalStateException e) {
            return Optional.empty();
        }
    }
}
