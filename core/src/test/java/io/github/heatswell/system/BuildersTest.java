package io.github.heatswell.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.ExpansionUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Contract of builders that take what a file says, one key after the other. */
class BuildersTest {

    @Test
    void aShellIsDescribedBesideItsTankAndChangedInParts() {
        Tank tank = tank().material(Material.STEEL)
                .diameter(480, LengthUnit.MILLIMETRE)
                .wall(2.4, LengthUnit.MILLIMETRE)
                .build();
        double steel = tank.shell().compliance();
        assertEquals(
                Shell.cylinder(Material.STEEL, 480, 2.4, LengthUnit.MILLIMETRE).compliance(), steel);
        Tank thinner = tank.toBuilder().wall(1.2, LengthUnit.MILLIMETRE).build();
        assertEquals(2 * steel, thinner.shell().compliance(), 1e-12 * steel); // inversely as the wall; rounding
        assertEquals(0, tank.toBuilder().rigid().build().shell().compliance());
        assertRefused("wall: is missing", tank().material(Material.STEEL).diameter(1, LengthUnit.METRE)::build);
    }

    @Test
    void aValveHasOneFault() {
        Pressure three = Pressure.gauge(3, PressureUnit.BAR);
        ReliefFault.Builder both = ReliefFault.builder()
                .stuckOpen(5, RatioUnit.PERCENT)
                .leaksFrom(three)
                .leakage(1, FlowUnit.LITRE_PER_HOUR);
        assertRefused("stuckOpen: cannot be combined with leaks-from; describe one fault", both::build);
        assertRefused("leakage: is missing", ReliefFault.builder().leaksFrom(three)::build);
        assertRefused("stuckOpen: is missing, and so is the leakage", ReliefFault.builder()::build);
    }

    @Test
    void oneThingEndsADraw() {
        Draw.Builder draw = Draw.builder().timeOfDay(7, DurationUnit.HOUR).flow(6, FlowUnit.LITRE_PER_MINUTE);
        assertRefused("volume: is missing, and so is energy; give one of them", draw::build);
        draw.volume(40, VolumeUnit.LITRE);
        assertEquals(0.04, draw.build().volume().orElseThrow());
        draw.heat(1, EnergyUnit.KILOWATT_HOUR);
        assertRefused("energy: cannot be combined with volume; give one of them", draw::build);
        assertRefused(
                "volume: takes longer than a day at this flow",
                Draw.builder()
                        .timeOfDay(0, DurationUnit.HOUR)
                        .flow(1, FlowUnit.LITRE_PER_HOUR)
                        .volume(25, VolumeUnit.LITRE)::build);
    }

    @Test
    void timesRunForwardAndNothingIsMissing() {
        assertEquals(
                new Supply.Outage(3600, 7200),
                Supply.Outage.builder()
                        .from(1, DurationUnit.HOUR)
                        .to(2, DurationUnit.HOUR)
                        .build());
        assertRefused(
                "to: must be later than from; both count from the start of the run",
                Supply.Outage.builder().from(1, DurationUnit.HOUR).to(1, DurationUnit.HOUR)::build);
        assertRefused("at: is missing", Leak.builder().flow(1, FlowUnit.LITRE_PER_HOUR)::build);
        assertEquals(
                List.of(
                        new InvalidDescriptionException.Problem("annual-mean", "is missing"),
                        new InvalidDescriptionException.Problem("monthly-swing", "is missing")),
                assertThrows(InvalidDescriptionException.class, SupplyTemperature.seasons()::build)
                        .problems());
    }

    /** Contract: whatever a builder is told, it is the builder that is told the next thing. */
    @Test
    void whatIsToldGivesTheBuilderBack() {
        HotWaterSystem.Builder house = RefusalTest.whole(4, 10).vessel(RefusalTest.vessel(4));
        assertSame(house, house.changePiping(UnaryOperator.identity()));
        assertSame(house, house.changeReliefValves(UnaryOperator.identity()));
        assertSame(house, house.changeHeater(UnaryOperator.identity()));
        assertSame(house, house.changeVessel(UnaryOperator.identity()));
        assertSame(house, house.changeVessel(0, UnaryOperator.identity()));
        assertSame(house, house.changeVesselIfAny(UnaryOperator.identity()));
        assertSame(house, house.changeStart(UnaryOperator.identity()));
    }

    /** Contract: a vessel that is fitted takes the place of the only one, and joins several. */
    @Test
    void aVesselIsFittedBesideSeveral() {
        ExpansionVessel one = RefusalTest.vessel(4);
        ExpansionVessel other = RefusalTest.vessel(3);
        HotWaterSystem.Builder house = RefusalTest.whole(4, 10).fitVessel(one).fitVessel(other);
        assertEquals(List.of(other), house.build().vessels());
        assertFalse(house.build().hasSeveralVessels());
        List<ExpansionVessel> three =
                house.addVessel(one).fitVessel(one).build().vessels();
        assertEquals(List.of(other, one), three.subList(0, 2));
        assertNotSame(one, three.get(2), "two alike are two");
        assertTrue(house.build().hasSeveralVessels());
    }

    /** Contract: each of these takes out what was put in, or says what is there. */
    @Test
    void whatWasSetIsReadAndTakenOut() {
        assertTrue(tank().rigid()
                .air(1, VolumeUnit.LITRE)
                .withoutAir()
                .build()
                .air()
                .isEmpty());
        assertTrue(RefusalTest.heater(60, 5).toBuilder()
                .mixedTo(45, TemperatureUnit.CELSIUS)
                .withoutMixing()
                .build()
                .mixedTo()
                .isEmpty());
        assertEquals(
                Optional.of(Material.STEEL),
                Shell.cylinder(Material.STEEL, 480, 2, LengthUnit.MILLIMETRE).material());
        assertEquals(
                ExpansionVessel.Location.IN_TANK,
                RefusalTest.vessel(4).toBuilder()
                        .location(ExpansionVessel.Location.IN_TANK)
                        .build()
                        .location());
        Leak hole = Leak.builder()
                .flow(2, FlowUnit.LITRE_PER_MINUTE)
                .at(Pressure.gauge(3, PressureUnit.BAR))
                .build();
        assertEquals(Pressure.gauge(3, PressureUnit.BAR), hole.at());
        SupplyTemperature.SeasonsBuilder seasons = SupplyTemperature.seasons()
                .annualMean(10, TemperatureUnit.CELSIUS)
                .monthlySwing(20, TemperatureDifferenceUnit.KELVIN);
        SupplyTemperature north = seasons.build();
        SupplyTemperature south = seasons.southern(true).build();
        assertTrue(north.on(200) > 285 && south.on(200) < 285, "July");
        assertEquals(Optional.of("two people"), DrawProfile.people("eu-m"));
    }

    /** The clock by hand: from 22:00 to 6:00 and for an hour at noon the pump runs, so it rests for 15 hours; on the second it starts. */
    @Test
    void aPumpRunsByTheClock() {
        Circulation pump = Circulation.builder()
                .flow(3, FlowUnit.LITRE_PER_MINUTE)
                .pump(List.of(
                        Circulation.Hours.builder().from(79_200).to(21_600).build(),
                        new Circulation.Hours(43_200, 46_800)))
                .build();
        assertEquals(54_000, pump.rests());
        for (double runs : new double[] {0, 21_599, 43_200, 46_799, 79_200, 86_399}) {
            assertTrue(pump.runs(runs), "at " + runs);
        }
        for (double rests : new double[] {21_600, 43_199, 46_800, 79_199}) {
            assertFalse(pump.runs(rests), "at " + rests);
        }
    }

    /** The clock by hand: half a second past 6:00 is 21 600.5 s, where the timetable stands at its entry. */
    @Test
    void theMainsFollowTheClock() {
        MainsPressure mains = MainsPressure.byClock(Map.of(
                LocalTime.of(6, 0, 0, 500_000_000), Pressure.gauge(4, PressureUnit.BAR),
                LocalTime.of(22, 0), Pressure.gauge(6, PressureUnit.BAR)));
        assertEquals(Set.of(21_600.5, 79_200.0), mains.entries().keySet());
    }

    /** Contract: a tank stretches as its dimensions or its compliance say, whichever was set last. */
    @Test
    void aComplianceTakesThePlaceOfDimensions() {
        Tank.Builder described = tank().material(Material.STEEL)
                .diameter(450, LengthUnit.MILLIMETRE)
                .wall(2.2, LengthUnit.MILLIMETRE);
        Tank calculated = described.build();
        assertFalse(calculated.complianceGiven());
        // (0.45 m / (200 GPa 2.2 mm)) (5/4 - 0.3) of 200 L, the formula of the shell
        assertEquals(0.45 / (200e9 * 2.2e-3) * 0.95 * 0.2, calculated.compliance(), 1e-22);

        Tank given = described.compliance(28, ComplianceUnit.MILLILITRE_PER_BAR).build();
        assertTrue(given.complianceGiven());
        assertEquals(28e-11, given.compliance(), 1e-24); // rounding
        assertEquals(28e-11 / 0.2, given.shell().compliance(), 1e-21); // rounding
        assertEquals(calculated.shell().thermalGrowth(), given.shell().thermalGrowth());

        Tank larger = given.toBuilder().volume(300, VolumeUnit.LITRE).build();
        assertEquals(given.compliance(), larger.compliance(), "it was measured for the whole tank");
        assertFalse(given.toBuilder()
                .diameter(450, LengthUnit.MILLIMETRE)
                .wall(2.2, LengthUnit.MILLIMETRE)
                .build()
                .complianceGiven());
        assertEquals(0, given.toBuilder().rigid().build().compliance());
        assertRefused("material: is missing", tank().compliance(28, ComplianceUnit.MILLILITRE_PER_BAR)::build);
        assertRefused("wall: is missing", given.toBuilder().diameter(450, LengthUnit.MILLIMETRE)::build);
    }

    /** Contract: the linear expansion given is that of the shell, whatever else changes; a rigid one has none. */
    @Test
    void anExpansionTakesThePlaceOfTheMaterials() {
        Tank given = tank().material(Material.STEEL)
                .diameter(450, LengthUnit.MILLIMETRE)
                .wall(2.2, LengthUnit.MILLIMETRE)
                .expansion(0.016, ExpansionUnit.MILLIMETRE_PER_METRE_KELVIN)
                .build();
        assertEquals(48e-6, given.shell().thermalGrowth(), 1e-18); // three times
        Tank thicker = given.toBuilder().wall(3, LengthUnit.MILLIMETRE).build();
        assertEquals(given.shell().thermalGrowth(), thicker.shell().thermalGrowth());
        assertTrue(thicker.compliance() < given.compliance());
        assertEquals(0, given.toBuilder().rigid().build().shell().thermalGrowth());
        assertRefused(
                "expansion: does not apply to a rigid shell",
                tank().rigid().expansion(12, ExpansionUnit.MILLIONTH_PER_KELVIN)::build);
    }

    private static Tank.Builder tank() {
        return Tank.builder()
                .volume(200, VolumeUnit.LITRE)
                .standingLoss(2, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(10, PressureUnit.BAR));
    }

    private static void assertRefused(String message, Executable building) {
        assertEquals(
                message,
                assertThrows(InvalidDescriptionException.class, building).getMessage());
    }
}
