package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Validation of houses with a safety group on the cold inlet, set below a temperature and pressure relief valve, against the
 * unreduced equations. More of them are looked at with {@code -Dtest.jvm.options=-Dreference.systems=40}.
 */
@Tag("validation")
class ColdInletTest {

    private static final Conductances AMPLE = new Conductances(1e-1, 1);
    private static final double TOLERANCE = 1e-9;

    private final RandomLook look = new RandomLook(ColdInletTest::compared);
    private final Random random = new Random(11);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The drawn house with its own relief valves exchanged for both of these. */
    private ComparisonCase onTheInlet(ComparisonCase drawn) {
        HotWaterSystem house = drawn.system();
        double resting = BAR.fromSi(house.supplyAtStart().gauge(house.site().atmosphere()));
        double group = resting + between(1, 3.5);
        boolean direct = house.supply().arrangement() == Supply.Arrangement.DIRECT;
        boolean bypass = house.supply()
                .reducingValve()
                .filter(valve -> valve.bypassOpens().isPresent())
                .isPresent();
        ReliefValve.Builder inlet = valve("inlet", group, between(0.78, 0.95))
                .kind(direct || bypass ? ReliefValve.Kind.EXPANSION_VALVE : ReliefValve.Kind.SAFETY_GROUP)
                .height(between(0, 1), LengthUnit.METRE);
        ReliefValve.Builder guard = valve("guard", group + between(0.8, 3), between(0.78, 0.95))
                .location(ReliefValve.Location.TANK_TOP)
                .opensAt(99, TemperatureUnit.CELSIUS)
                .reseatsAt(88, TemperatureUnit.CELSIUS)
                .height(between(0.5, 2), LengthUnit.METRE);
        return new ComparisonCase(
                drawn.name() + ", safety group",
                house.toBuilder()
                        .withoutReliefValves()
                        .addReliefValve(inlet.build())
                        .addReliefValve(guard.build())
                        .build(),
                drawn.hours());
    }

    private ReliefValve.Builder valve(String name, double set, double reseats) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(set, BAR))
                .fullLiftPressure(Pressure.gauge(set * between(1.03, 1.2), BAR))
                .reseatPressure(Pressure.gauge(set * reseats, BAR))
                .fullFlow(between(5, 60), FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(
                        random.nextInt(4) == 0
                                ? ReliefValve.LiftCharacteristic.SNAP
                                : ReliefValve.LiftCharacteristic.MODULATING);
    }

    /** Where both differ, the reference is integrated anew with ten times as ample conductances: its error is then less. */
    private static RandomComparison compared(ComparisonCase house) {
        RandomComparison compared = new RandomComparison(house, AMPLE, TOLERANCE);
        return RandomLook.agrees(compared) ? compared : new RandomComparison(house, AMPLE.finer(), TOLERANCE);
    }

    /** Pressures and volumes agree in every house, and instants within seconds. */
    @Test
    void theInletOpensFirstAndDischargesWhatTheEquationsSay() {
        RandomCases cases = new RandomCases(3);
        List<RandomComparison> houses = look.follow(() -> onTheInlet(cases.next()), 2, 4, 7, 8, 9, 12, 17);
        long dripping = houses.stream()
                .filter(house -> house.library().totals().relief().get(0).openings() > 0)
                .count();
        assertTrue(dripping > houses.size() / 4, "houses that drip: " + dripping);
    }
}
