package io.github.heatswell.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.RandomHouses;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Regression: two vessels of half the volume are one vessel to the water, so the same is found with them. */
class SplitVesselsTest {

    private static final int HOUSES = 300;
    private static final int RUNS = 40;

    @Test
    void aVesselSplitInTwoIsFoundTheSame() {
        assertAlike(HOUSES, Findings::of);
    }

    @Test
    void soIsItAfterARun() {
        assertAlike(RUNS, house -> Findings.of(run(house)));
    }

    /** What is assumed of both vessels alike is said once. */
    @Test
    void oneAssumptionIsSaidOnce() {
        HotWaterSystem one = FaultlessHouse.house()
                .vessel(FaultlessHouse.vessel(4, 0.5).build())
                .build();
        HotWaterSystem two = split(one);
        Doubts doubts = Doubts.of(
                Stream.of("vessel.acceptance", "vessels[0].acceptance")
                        .map(field -> new Doubts.Doubt(field, Statement.plain("60 %"), Optional.empty(), List.of()))
                        .toList(),
                changes -> Optional.of(two));
        String said = Findings.of(two, doubts).stream()
                .map(finding -> finding.sentence().text(UnitSystem.SI))
                .filter(text -> text.contains("assumed 60 %"))
                .findFirst()
                .orElseThrow();
        assertEquals(said.indexOf("assumed 60 %"), said.lastIndexOf("assumed 60 %"), said);
    }

    private static RunSummary run(HotWaterSystem house) {
        return Simulation.of(house, Duration.ofHours(8)).summary();
    }

    private static void assertAlike(int houses, Function<HotWaterSystem, List<Finding>> find) {
        RandomHouses random = new RandomHouses(41);
        List<HotWaterSystem> withVessel = Stream.generate(random::next)
                .filter(house -> house.vessels().size() == 1)
                .limit(houses)
                .toList();
        boolean tooSmall = false;
        for (HotWaterSystem one : withVessel) {
            TreeSet<String> whole = ids(find.apply(one));
            assertEquals(whole, ids(find.apply(split(one))), one.toString());
            tooSmall |= whole.stream().anyMatch(id -> id.startsWith("vessel-too-small"));
        }
        assertTrue(tooSmall);
    }

    private static TreeSet<String> ids(List<Finding> findings) {
        TreeSet<String> ids = new TreeSet<>();
        findings.forEach(finding -> ids.add(finding.id() + " " + finding.severity()));
        return ids;
    }

    private static HotWaterSystem split(HotWaterSystem house) {
        ExpansionVessel whole = house.vessel().orElseThrow();
        ExpansionVessel half = whole.toBuilder()
                .volume(whole.volume() / 2, VolumeUnit.CUBIC_METRE)
                .build();
        return house.toBuilder().withoutVessel().addVessel(half).addVessel(half).build();
    }
}
