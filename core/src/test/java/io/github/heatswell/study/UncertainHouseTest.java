package io.github.heatswell.study;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the usual uncertainties do to a house. */
class UncertainHouseTest {

    private static HotWaterSystem.Builder complete() {
        Supply supply = Parts.reduced(6, Parts.reducingValve(3.5, 0.3, 0.8, 30));
        Heater heater = Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .setPoint(58, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN)
                .upper(Element.builder()
                        .input(3, PowerUnit.KILOWATT)
                        .setPoint(61, TemperatureUnit.CELSIUS)
                        .differential(5, TemperatureDifferenceUnit.KELVIN)
                        .height(70, RatioUnit.PERCENT)
                        .build())
                .build();
        return Parts.lodge(4, 58)
                .supply(supply)
                .heater(heater)
                .addReliefValve(Houses.valve(7))
                .vessel(Houses.vessel(12, 3.8));
    }

    private interface Property {
        double of(HotWaterSystem house);
    }

    private static Arguments moves(
            UncertainHouse.Quantity quantity, double deviation, double expected, Property property) {
        return Arguments.of(quantity, deviation, expected, property);
    }

    static Stream<Arguments> deviations() {
        return Stream.of(
                moves(
                        UncertainHouse.Quantity.SUPPLY_PRESSURE,
                        1e4,
                        6.1e5,
                        house -> house.supply().mains().absolute(0, 0)),
                moves(
                        UncertainHouse.Quantity.REDUCED_PRESSURE,
                        -1e4,
                        3.4e5,
                        house -> house.supply()
                                .reducingValve()
                                .orElseThrow()
                                .set()
                                .gauge(1e5)),
                moves(UncertainHouse.Quantity.SUPPLY_WATER, 1.5, 283.65, HotWaterSystem::coldAtStart),
                moves(
                        UncertainHouse.Quantity.SET_POINT,
                        -2,
                        329.15,
                        house -> house.heater().elements().get(0).setPoint()),
                moves(
                        UncertainHouse.Quantity.SET_POINT,
                        -2,
                        332.15,
                        house -> house.heater().elements().get(1).setPoint()),
                moves(
                        UncertainHouse.Quantity.RECOVERY_EFFICIENCY,
                        -0.02,
                        0.9604,
                        house -> house.heater().recoveryEfficiency()),
                moves(
                        UncertainHouse.Quantity.RECOVERY_EFFICIENCY,
                        0.03,
                        1,
                        house -> house.heater().recoveryEfficiency()),
                moves(
                        UncertainHouse.Quantity.TANK_VOLUME,
                        0.01,
                        0.2323,
                        house -> house.tank().volume()),
                moves(
                        UncertainHouse.Quantity.PRECHARGE,
                        0.05e5,
                        3.85e5,
                        house -> house.vessel().orElseThrow().precharge().gauge(1e5)),
                moves(
                        UncertainHouse.Quantity.RELIEF_SET,
                        0.02,
                        7.14e5,
                        house -> relief(house).setPressure().gauge(1e5)),
                moves(
                        UncertainHouse.Quantity.RELIEF_SET,
                        0.02,
                        7.854e5,
                        house -> relief(house).fullLiftPressure().gauge(1e5)),
                moves(
                        UncertainHouse.Quantity.RELIEF_SET,
                        0.02,
                        5.712e5,
                        house -> relief(house).reseatPressure().gauge(1e5)));
    }

    private static ReliefValve relief(HotWaterSystem house) {
        return house.reliefValves().get(0);
    }

    @ParameterizedTest
    @MethodSource("deviations")
    void aDeviationMovesItsQuantity(
            UncertainHouse.Quantity quantity, double deviation, double expected, Property property) {
        UncertainHouse house = UncertainHouse.usual(complete().build());
        double[] values = new double[house.quantities().size()];
        values[house.quantities().indexOf(quantity)] = deviation;

        assertEquals(expected, property.of(house.moved(values)), 1e-12 * expected); // rounding
        assertEquals(property.of(house.described()), property.of(house.moved(new double[values.length])), 1e-9);
    }

    /** What makes a house without a vessel stiff or soft moves too; what was measured does not, nor does a rigid tank. */
    @Test
    void stiffnessIsUncertainWithoutAVessel() {
        HotWaterSystem bare = Parts.lodge(4.2, 58)
                .addPipe(PipeRun.builder()
                        .material(Material.PEX)
                        .outsideDiameter(20, LengthUnit.MILLIMETRE)
                        .wall(2, LengthUnit.MILLIMETRE)
                        .length(30, LengthUnit.METRE)
                        .build())
                .build();
        UncertainHouse house = UncertainHouse.usual(bare);
        double[] values = new double[house.quantities().size()];
        values[house.quantities().indexOf(UncertainHouse.Quantity.TANK_STRETCH)] = 0.3;
        values[house.quantities().indexOf(UncertainHouse.Quantity.TANK_AIR)] = 0.002;
        values[house.quantities().indexOf(UncertainHouse.Quantity.PIPE_STRETCH)] = 1;
        HotWaterSystem soft = house.moved(values);
        double tank = bare.tank().compliance();
        int last = bare.piping().size() - 1;
        assertEquals(1.3 * tank, soft.tank().compliance(), 1e-12 * tank); // rounding
        assertEquals(0.002 * bare.tank().volume(), soft.tank().air().orElseThrow(), 1e-15);
        assertEquals(
                2 * bare.piping().get(last).compliance(),
                soft.piping().get(last).compliance(),
                1e-12 * bare.piping().get(last).compliance()); // rounding
        assertEquals(bare.piping().get(0).compliance(), soft.piping().get(0).compliance(), "copper is known");
        assertEquals(tank, house.moved(new double[values.length]).tank().compliance());

        HotWaterSystem measured = bare.toBuilder()
                .tank(bare.tank().toBuilder()
                        .compliance(28, ComplianceUnit.MILLILITRE_PER_BAR)
                        .air(0.1, VolumeUnit.LITRE)
                        .build())
                .build();
        HotWaterSystem rigid =
                bare.toBuilder().tank(bare.tank().toBuilder().rigid().build()).build();
        for (HotWaterSystem known : List.of(measured, rigid)) {
            assertFalse(UncertainHouse.Quantity.TANK_STRETCH.concerns(known));
            assertFalse(UncertainHouse.Quantity.TANK_AIR.concerns(known));
        }
    }

    @Test
    void aHouseHasWhatConcernsIt() {
        List<UncertainHouse.Quantity> withVessel = new ArrayList<>(List.of(UncertainHouse.Quantity.values()));
        withVessel.removeAll(List.of(
                UncertainHouse.Quantity.TANK_STRETCH,
                UncertainHouse.Quantity.TANK_AIR,
                UncertainHouse.Quantity.PIPE_STRETCH));
        assertEquals(withVessel, UncertainHouse.usual(complete().build()).quantities());
        UncertainHouse bare = UncertainHouse.usual(Parts.lodge(4.2, 58).build());
        assertEquals(
                List.of(
                        UncertainHouse.Quantity.SUPPLY_PRESSURE,
                        UncertainHouse.Quantity.SUPPLY_WATER,
                        UncertainHouse.Quantity.SET_POINT,
                        UncertainHouse.Quantity.RECOVERY_EFFICIENCY,
                        UncertainHouse.Quantity.TANK_VOLUME,
                        UncertainHouse.Quantity.TANK_STRETCH,
                        UncertainHouse.Quantity.TANK_AIR),
                bare.quantities());
        assertEquals(
                "vessel's precharge: the house has none that could be uncertain",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> bare.with(UncertainHouse.Quantity.PRECHARGE, Distribution.between(0, 1)))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> bare.moved(new double[2]));
    }

    @Test
    void aQuantityMayBeKnownBetterOrWorse() {
        Distribution wide = Distribution.between(-8, 8);
        UncertainHouse house = UncertainHouse.usual(complete().build())
                .with(UncertainHouse.Quantity.SET_POINT, wide)
                .exactly(UncertainHouse.Quantity.TANK_VOLUME);

        assertEquals(7, house.inputs().size());
        assertEquals(new Study.Input("set point", wide), house.inputs().get(3));
        assertEquals(
                new Study.Input("supply pressure", Distribution.around(0, 15_000)),
                house.inputs().get(0));
    }

    @Test
    void aStartThatContradictsTheSupplyFollowsIt() {
        Start start = Start.builder().pressure(Pressure.gauge(4.2, BAR)).build();
        UncertainHouse house =
                UncertainHouse.usual(Parts.lodge(4.2, 58).start(start).build());

        assertTrue(house.moved(new double[] {1e4, 0, 0, 0, 0, 0, 0})
                .start()
                .pressure()
                .isEmpty());
        assertEquals(
                start.pressure(),
                house.moved(new double[] {-1e4, 0, 0, 0, 0, 0, 0}).start().pressure());
    }

    @Test
    void whatLeavesItsRangeIsAFailedSample() {
        UncertainHouse house = UncertainHouse.usual(Parts.lodge(4.2, 98).build());
        StudyResult result = Study.builder()
                .inputs(house.inputs())
                .outputs(HouseDay.outputs())
                .model(HouseDay.of(house::moved, java.time.Duration.ofHours(1)))
                .samples(32)
                .build()
                .run();

        assertTrue(result.failed() > 0 && result.failed() < 32);
        assertTrue(result.firstFailure().orElseThrow().startsWith("setPoint: "));
    }
}
