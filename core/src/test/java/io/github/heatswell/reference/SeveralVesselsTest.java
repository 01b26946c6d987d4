package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Validation of houses with several vessels against the unreduced equations, in which the pressure follows from the mass in
 * the branch and every vessel takes its part of that mass. More of them are looked at with
 * {@code -Dtest.jvm.options=-Dreference.systems=40}.
 */
@Tag("validation")
class SeveralVesselsTest {

    /** With ten times the usual mixing, since a third of a millikelvin of lag shifts a slow thermostat by half a second in each cycle. */
    private static final Conductances AMPLE = new Conductances(1e-1, 1, 2e8);

    private static final double TOLERANCE = 1e-9;

    private final RandomLook look = new RandomLook(house -> new RandomComparison(house, AMPLE, TOLERANCE));
    private final Random random = new Random(7);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private ExpansionVessel further(HotWaterSystem house) {
        double resting = BAR.fromSi(house.supplyAtStart().gauge(house.site().atmosphere()));
        double highest =
                BAR.fromSi(house.tank().workingPressure().gauge(house.site().atmosphere()));
        double charge = Math.min(highest, Math.max(0.05, resting + between(-1.5, 1.5)));
        return ExpansionVessel.builder()
                .volume(house.tank().volume() * between(0.01, 0.08), VolumeUnit.CUBIC_METRE)
                .precharge(Pressure.gauge(charge, BAR))
                .acceptance(between(10, 100), RatioUnit.PERCENT)
                .height(between(-2, 5), LengthUnit.METRE)
                .condition(
                        random.nextInt(8) == 0
                                ? ExpansionVessel.Condition.WATERLOGGED
                                : ExpansionVessel.Condition.SOUND)
                .build();
    }

    /** A house whose only vessel is built into its tank. */
    private ComparisonCase withOneInTheTank(ComparisonCase drawn) {
        ExpansionVessel vessel = further(drawn.system()).toBuilder()
                .location(ExpansionVessel.Location.IN_TANK)
                .condition(ExpansionVessel.Condition.SOUND)
                .height(drawn.system().tank().height().orElse(1) * random.nextDouble(), LengthUnit.METRE)
                .build();
        return new ComparisonCase(
                drawn.name() + ", vessel in the tank",
                drawn.system().toBuilder().vessel(vessel).build(),
                drawn.hours());
    }

    private ComparisonCase withMore(ComparisonCase drawn) {
        HotWaterSystem.Builder house = drawn.system().toBuilder();
        if (drawn.system().vessels().isEmpty()) {
            house.addVessel(further(drawn.system()));
        }
        for (int more = 1 + random.nextInt(2); more > 0; more--) {
            house.addVessel(further(drawn.system()));
        }
        return new ComparisonCase(drawn.name() + ", more vessels", house.build(), drawn.hours());
    }

    /** Pressures and volumes agree in every house, and instants within seconds. */
    @Test
    void eachVesselTakesItsPart() {
        RandomCases cases = new RandomCases(1);
        look.follow(() -> withMore(cases.next()), 1, 4, 5, 9, 11, 13)
                .forEach(SeveralVesselsTest::assertEachMovesAtItsPressure);
    }

    /** Gas and water of a vessel in the tank follow the tank's layer at its height. */
    @Test
    void theVesselInTheTankFollowsItsLayer() {
        RandomCases cases = new RandomCases(301);
        look.follow(() -> withOneInTheTank(cases.next()), 3, 5, 12, 13, 15, 19);
    }

    /** The diaphragm of a vessel whose gas has the room's temperature moves at the pressures that Boyle's law gives. */
    private static void assertEachMovesAtItsPressure(RandomComparison compared) {
        HotWaterSystem house = compared.library().system();
        for (Event event : compared.library().events()) {
            int index = house.vesselNames().indexOf(event.device());
            if (event.device().startsWith("vessel") && index > 0) {
                ExpansionVessel vessel = house.vessels().get(index);
                boolean limit =
                        event.kind() == Event.Kind.VESSEL_BOTTOMED_OUT || event.kind() == Event.Kind.VESSEL_FREED;
                double air = house.site().atmosphere();
                double gas = vessel.precharge().absolute(air) / (limit ? 1 - vessel.acceptance() : 1);
                double expected = gas + house.head(vessel.height());
                assertEquals(expected, event.pressureAbsolute(), 1e-2, event::toString); // the gap of the diaphragm
                assertTrue(vessel.condition() == ExpansionVessel.Condition.SOUND, event::toString);
            }
        }
    }
}
