package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a cause changes of a house, and that it leaves everything else alone. */
class SuspectHouseTest {

    private static final double AIR = Abbey.plain().build().site().atmosphere();
    private static final double EXACT = 1e-6;

    private static HotWaterSystem edited(HotWaterSystem house, Consumer<SuspectHouse> changes) {
        SuspectHouse edit = new SuspectHouse(house, "by the tank", 0);
        changes.accept(edit);
        return edit.build();
    }

    private static HotWaterSystem.Builder from(Supply.Builder supply) {
        return Abbey.plain().supply(supply.build());
    }

    private static double gauge(Pressure pressure) {
        return pressure.gauge(AIR);
    }

    private static double mains(HotWaterSystem house) {
        return gauge(house.supply().mains().entries().get(0.0));
    }

    private static ReducingValve reducing(HotWaterSystem house) {
        return house.supply().reducingValve().orElseThrow();
    }

    /** Regression: pipes of plastic where copper was described were taken for a vessel with next to no gas. */
    @Test
    void tankAndPipesTogetherGiveWay() {
        HotWaterSystem house = Abbey.plain().build();
        double give = give(house);
        assertEquals(2 * give, give(edited(house, edit -> edit.compliance(2))), 1e-9 * give);
        HotWaterSystem stiff = edited(house, edit -> edit.compliance(0.01));
        assertTrue(stiff.tank().compliance() > 0, "no tank is rigid");
        assertEquals(house.piping(), stiff.piping());
    }

    private static double give(HotWaterSystem house) {
        return house.tank().compliance()
                + house.piping().stream()
                        .mapToDouble(pipe -> pipe.volume() * pipe.compliance())
                        .sum();
    }

    /** Also what no simulation asks for, since findings about the house do. */
    @Test
    void nothingIsLostOfAHouseInWhichNothingIsWrong() {
        HotWaterSystem house = Abbey.everything();
        HotWaterSystem copy = edited(house, edit -> {});

        assertEquals(house.heater().mixedTo(), copy.heater().mixedTo());
        assertEquals(house.heater().cutOut(), copy.heater().cutOut());
        assertTrue(copy.heater().simultaneous());
        assertEquals(
                house.vessel().orElseThrow().body(), copy.vessel().orElseThrow().body());
        ReliefValve valve = copy.reliefValves().get(1);
        assertEquals(house.reliefValves().get(1).ratedInput(), valve.ratedInput());
        assertEquals(house.piping(), copy.piping());
        assertEquals(house.draws(), copy.draws());
        assertEquals(house.gaugeHeight(), copy.gaugeHeight());
        assertEquals(house.trappedAir(), copy.trappedAir());
        assertEquals(house.supply().outages(), copy.supply().outages());

        Duration day = Duration.ofHours(24);
        for (Channel channel : List.of(Channel.GAUGE_READING, Channel.INFLOW_TOTAL, Channel.WATER_TOP)) {
            assertArrayEquals(
                    Simulation.of(house, day).run().trace().values(channel),
                    Simulation.of(copy, day).run().trace().values(channel),
                    channel.name());
        }
    }

    @Test
    void anotherSupplyIsAnotherMains() {
        HotWaterSystem shifted =
                edited(from(Abbey.checkValve(3)).build(), edit -> Parameter.SUPPLY_PRESSURE.set(edit, 4.5e5));
        assertEquals(4.5e5, mains(shifted), EXACT);
        assertEquals(4.5e5, gauge(shifted.supplyAtStart()), EXACT);
    }

    @Test
    void behindAReducingValveItIsAnotherSettingAndTheMainsFollowsUpwardsOnly() {
        HotWaterSystem house = from(Abbey.reducingValve(6, 3)).build();
        double stands = gauge(house.supplyAtStart());
        HotWaterSystem higher = edited(house, edit -> Parameter.SUPPLY_PRESSURE.set(edit, stands + 2e5));
        HotWaterSystem lower = edited(house, edit -> Parameter.SUPPLY_PRESSURE.set(edit, stands - 1e5));

        assertEquals(5e5, gauge(reducing(higher).set()), EXACT);
        assertEquals(8e5, mains(higher), EXACT);
        assertEquals(2e5, gauge(reducing(lower).set()), EXACT);
        assertEquals(6e5, mains(lower), EXACT);
        assertEquals(0.3e5, reducing(higher).bypassOpens().orElseThrow(), EXACT);
        assertEquals(0.2e5, reducing(higher).lockUpRise(), EXACT);
    }

    @Test
    void aSeatThatLeaksLeavesThePressuresAsTheyAre() {
        HotWaterSystem leaking =
                edited(from(Abbey.reducingValve(6, 3)).build(), edit -> Parameter.SEAT_LEAKAGE.set(edit, 3e-8));
        assertEquals(3e-8, leaking.supply().seatLeakage(), 1e-20);
        assertEquals(6e5, mains(leaking), EXACT);
        assertEquals(3e5, gauge(reducing(leaking).set()), EXACT);
        assertEquals(
                0,
                edited(leaking, edit -> Parameter.SEAT_LEAKAGE.set(edit, 0))
                        .supply()
                        .seatLeakage());
    }

    @Test
    void aStartAboveTheSupplyKeepsItsDistance() {
        Start above = Start.builder()
                .pressure(Pressure.gauge(3.7, BAR))
                .timeOfDay(5, DurationUnit.HOUR)
                .dayOfYear(40)
                .water(15, TemperatureUnit.CELSIUS)
                .build();
        Consumer<SuspectHouse> higher = edit -> Parameter.SUPPLY_PRESSURE.set(edit, 3.5e5);
        Start moved = edited(Abbey.plain().start(above).build(), higher).start();
        assertEquals(4.2e5, gauge(moved.pressure().orElseThrow()), EXACT);
        assertEquals(18_000, moved.timeOfDay());
        assertEquals(40, moved.dayOfYear());
        assertEquals(288.15, moved.waterTemperature().orElseThrow());
        assertTrue(edited(Abbey.plain().build(), higher).start().pressure().isEmpty());
    }

    @Test
    void allElementsAreShiftedAndMultiplied() {
        HotWaterSystem house = Abbey.everything();
        Heater heater = edited(house, edit -> {
                    Parameter.SET_POINT.set(edit, 273.15 + 67);
                    Parameter.HEATING_RATE.set(edit, 1.1);
                })
                .heater();
        Element lower = heater.elements().get(0);
        Element upper = heater.elements().get(1);
        assertEquals(273.15 + 67, lower.setPoint(), EXACT);
        assertEquals(273.15 + 69, upper.setPoint(), EXACT);
        assertEquals(3_300, lower.input(), EXACT);
        assertEquals(2_200, upper.input(), EXACT);
        assertEquals(0.7, upper.height(), 1e-12);
        assertEquals(0.1, lower.height(), 1e-12);
        assertEquals(4, upper.differential());
        assertEquals(5, lower.differential());
    }

    @Test
    void theVesselIsChangedInWhatIsAskedOnly() {
        HotWaterSystem house = Abbey.plain().build();
        ExpansionVessel low = edited(house, edit -> Parameter.PRECHARGE.set(edit, 1e5))
                .vessel()
                .orElseThrow();
        ExpansionVessel small = edited(house, edit -> Parameter.VESSEL_VOLUME.set(edit, 5e-3))
                .vessel()
                .orElseThrow();
        assertEquals(1e5, gauge(low.precharge()), EXACT);
        assertEquals(12e-3, low.volume(), 1e-12);
        assertEquals(5e-3, small.volume(), 1e-12);
        assertEquals(3e5, gauge(small.precharge()), EXACT);
        assertEquals(ExpansionVessel.Condition.SOUND, small.condition());
        HotWaterSystem without = Abbey.plain().withoutVessel().build();
        assertTrue(edited(without, edit -> Parameter.PRECHARGE.set(edit, 1e5))
                .vessel()
                .isEmpty());
    }

    @ParameterizedTest
    @EnumSource(ExpansionVessel.Condition.class)
    void theVesselTakesACondition(ExpansionVessel.Condition condition) {
        HotWaterSystem changed = edited(Abbey.plain().build(), edit -> edit.condition(condition));
        assertEquals(condition, changed.vessel().orElseThrow().condition());
    }

    @Test
    void onlyTheValveThatIsMeantIsChanged() {
        HotWaterSystem house = Abbey.everything();
        List<ReliefValve> stuck =
                edited(house, edit -> Parameter.STUCK_LIFT.set(edit, 0.02)).reliefValves();
        assertEquals(ReliefFault.Condition.SOUND, stuck.get(0).condition());
        assertEquals(ReliefFault.Condition.STUCK_OPEN, stuck.get(1).condition());
        assertEquals(0.02, stuck.get(1).fault().stuckLift());

        ReliefValve weeping = edited(house, edit -> {
                    Parameter.SEAT_WEEP.set(edit, 4e-8);
                    Parameter.WEEPS_FROM.set(edit, 2.5e5);
                })
                .reliefValves()
                .get(1);
        assertEquals(ReliefFault.Condition.LEAKING_SEAT, weeping.condition());
        assertEquals(4e-8, weeping.fault().leakage(), 1e-20);
        assertEquals(2.5e5, gauge(weeping.fault().leaksFrom().orElseThrow()), EXACT);
        assertEquals(7e5, gauge(weeping.setPressure()), EXACT);
    }

    @Test
    void aValveThatOpensElsewhereKeepsItsProportions() {
        HotWaterSystem house = Abbey.everything();
        ReliefValve low = edited(house, edit -> Parameter.OPENING_PRESSURE.set(edit, 5e5))
                .reliefValves()
                .get(1);
        assertEquals(5e5, gauge(low.setPressure()), EXACT);
        assertEquals(5.5e5, gauge(low.fullLiftPressure()), EXACT);
        assertEquals(4e5, gauge(low.reseatPressure()), EXACT);
        assertEquals(11_000, low.ratedInput().orElseThrow(), EXACT);

        ReliefValve blowing = edited(house, edit -> {
                    Parameter.OPENING_PRESSURE.set(edit, 5e5);
                    Parameter.RESEAT_SHARE.set(edit, 0.6);
                })
                .reliefValves()
                .get(1);
        assertEquals(3e5, gauge(blowing.reseatPressure()), EXACT);
        assertEquals(7e5, gauge(edited(house, edit -> {}).reliefValves().get(1).setPressure()), EXACT);
    }

    @Test
    void aLeakComesOnTopOfThoseThereAreAndAirWhereNoneWas() {
        HotWaterSystem house = Abbey.everything();
        List<Leak> leaks = edited(house, edit -> Parameter.LEAK.set(edit, 7e-8)).leaks();
        assertEquals(2, leaks.size());
        assertEquals(7e-8, leaks.get(1).flow(), 1e-20);
        assertEquals(
                gauge(house.supplyAtStart()), gauge(leaks.get(1).at()), EXACT, "at the static pressure of the supply");
        HotWaterSystem airy = edited(Abbey.plain().build(), edit -> Parameter.TRAPPED_AIR.set(edit, 2e-4));
        assertEquals(2e-4, airy.trappedAir().orElseThrow(), 1e-15);

        HotWaterSystem faint = from(Abbey.checkValve(0.1)).build();
        Leak weak =
                edited(faint, edit -> Parameter.LEAK.set(edit, 7e-8)).leaks().get(0);
        assertEquals(0.2e5, gauge(weak.at()), EXACT, "a leak is stated at no less");
        assertEquals(FlowUnit.CUBIC_METRE_PER_SECOND.toSi(7e-8), weak.flow(), 1e-20);
    }
}
