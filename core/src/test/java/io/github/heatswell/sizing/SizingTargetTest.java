package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the peak must stay below, and why. */
class SizingTargetTest {

    private static final HotWaterSystem HOUSE = Houses.cottage(3).build();

    private static SizingTarget target(UnaryOperator<SizingTarget.Builder> settings) {
        return settings.apply(SizingTarget.builder(HOUSE).vesselRating(Pressure.gauge(10, BAR)))
                .build();
    }

    static Stream<Arguments> ruling() {
        return Stream.of(
                ruling(SizingTarget.Rule.CODE_CAP, 80 * PSI.factor() / 1e5, b -> b),
                ruling(SizingTarget.Rule.RELIEF_RESEAT, 5.9 - 0.03 * 7, b -> b.withoutCodeCap()),
                ruling(SizingTarget.Rule.RELIEF_RESEAT, 5.9 - 0.1 * 7, b -> b.reliefMargin(10, RatioUnit.PERCENT)),
                ruling(SizingTarget.Rule.CODE_CAP, 5, b -> b.codeCap(Pressure.gauge(5, BAR))),
                ruling(SizingTarget.Rule.VESSEL_RATING, 4, b -> b.vesselRating(Pressure.gauge(4, BAR))),
                ruling(SizingTarget.Rule.OWN, 4.5, b -> b.own(Pressure.gauge(4.5, BAR))));
    }

    private static Arguments ruling(SizingTarget.Rule rule, double bar, UnaryOperator<SizingTarget.Builder> settings) {
        return Arguments.of(rule, bar, settings);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("ruling")
    void lowestBoundRules(SizingTarget.Rule rule, double bar, UnaryOperator<SizingTarget.Builder> settings) {
        SizingTarget target = target(settings);
        assertEquals(rule, target.ruling().rule());
        assertEquals(bar, BAR.fromSi(target.gauge()), 1e-9); // rounding
        assertEquals(
                rule == SizingTarget.Rule.RELIEF_RESEAT,
                !target.ruling().device().isEmpty());
    }

    @Test
    void workingPressureRulesOverAStrongVessel() {
        HotWaterSystem weak = HOUSE.toBuilder()
                .tank(Parts.tank(200, HOUSE.tank().shell(), 2, 4))
                .build();
        SizingTarget target =
                SizingTarget.builder(weak).vesselRating(Pressure.gauge(10, BAR)).build();
        assertEquals(SizingTarget.Rule.WORKING_PRESSURE, target.ruling().rule());
        assertEquals(4, target.bounds().size());
    }

    /** Closed form: ten metres up there is 0.98 bar less, so there is that much more room at the drain cock. */
    @Test
    void heightsAreTakenIntoAccount() {
        SizingTarget target = target(b -> b.vesselRating(Pressure.gauge(4, BAR)).vesselHeight(10, LengthUnit.METRE));
        assertEquals(4 + 0.9804, BAR.fromSi(target.gauge()), 2e-4); // density of cold water to 0.02 %
        HotWaterSystem attic = HOUSE.toBuilder()
                .addReliefValve(
                        Houses.valveBuilder(4, 3.2).height(10, LengthUnit.METRE).build())
                .build();
        SizingTarget up = SizingTarget.builder(attic)
                .vesselRating(Pressure.gauge(10, BAR))
                .build();
        assertEquals(3.2 - 0.12 + 0.9804, BAR.fromSi(up.gauge()), 2e-4); // density of cold water to 0.02 %
        assertEquals("valve 4.0", up.ruling().device());
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                refused(
                        "vessel-rating: is missing",
                        () -> SizingTarget.builder(HOUSE).build()),
                refused("vessel-rating: ", () -> target(b -> b.vesselRating(Pressure.gauge(0, BAR)))),
                refused("vessel-rating: ", () -> target(b -> b.vesselRating(Pressure.gauge(26, BAR)))),
                refused("code-cap: ", () -> target(b -> b.codeCap(Pressure.absolute(0.5, BAR)))),
                refused("limit: ", () -> target(b -> b.own(Pressure.gauge(-1, BAR)))),
                refused("height: ", () -> target(b -> b.vesselHeight(31, LengthUnit.METRE))),
                refused("relief-margin: ", () -> target(b -> b.reliefMargin(-1, RatioUnit.PERCENT))),
                refused("relief-margin: ", () -> target(b -> b.reliefMargin(Double.NaN, RatioUnit.ONE))),
                refused("relief-margin: leaves nothing", SizingTargetTest::marginBeyondReseat));
    }

    private static void marginBeyondReseat() {
        HotWaterSystem low =
                HOUSE.toBuilder().addReliefValve(Houses.valve(6, 1)).build();
        SizingTarget.builder(low)
                .vesselRating(Pressure.gauge(10, BAR))
                .reliefMargin(40, RatioUnit.PERCENT)
                .build();
    }

    private static Arguments refused(String beginning, Executable call) {
        return Arguments.of(beginning, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void refusesWithAReason(String beginning, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.startsWith(beginning), message);
    }
}
