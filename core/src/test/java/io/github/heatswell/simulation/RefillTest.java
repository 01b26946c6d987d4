package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Regression: how a house comes back to the pressure of its supply, and that it gets there. */
class RefillTest {

    /** What the solver and the gap of the check valve's thresholds leave (Pa). */
    private static final double AT_SUPPLY = 1e-2;

    private static final Supply.Outage OUTAGE = new Supply.Outage(3_600, 7_200);

    private static double pressure(RunResult result, int sample) {
        return result.trace().value(Channel.PRESSURE_ABSOLUTE, sample);
    }

    private static double mains(RunResult result, int sample) {
        return result.trace().value(Channel.MAINS_ABSOLUTE, sample);
    }

    private static HotWaterSystem.Builder house(Supply.Arrangement arrangement) {
        return Parts.lodge(4.2, 58)
                .supply(Parts.supply(arrangement, Pressure.gauge(4.2, BAR), 9).toBuilder()
                        .addOutage(OUTAGE)
                        .build());
    }

    /**
     * A relief valve that opens below the supply cuts the refill after an outage short, and passes as much as the service line
     * brings long before the supply's pressure. The house once stayed there.
     */
    @ParameterizedTest
    @EnumSource(
            value = Supply.Arrangement.class,
            names = {"CHECK_VALVE", "DIRECT"})
    void afterAnOutageThePressureIsThatOfTheSupplyAgain(Supply.Arrangement arrangement) {
        for (ReliefValve.LiftCharacteristic character : ReliefValve.LiftCharacteristic.values()) {
            HotWaterSystem house = house(arrangement)
                    .addReliefValve(Systems.valve("early valve", character, 3, 3.3, 2.4))
                    .build();
            RunResult result = Simulation.of(house, Duration.ofHours(4)).run();
            Set<Trace.Regime> after = EnumSet.noneOf(Trace.Regime.class);
            for (int i = 0; i < result.trace().count(); i++) {
                Trace.Regime regime = result.trace().regime(i);
                if (regime == Trace.Regime.FED || regime == Trace.Regime.UNSEALED) {
                    assertEquals(mains(result, i), pressure(result, i), AT_SUPPLY, arrangement + ", sample " + i);
                }
                if (i > 130) {
                    after.add(regime);
                }
            }
            Trace.Regime held = arrangement == Supply.Arrangement.DIRECT ? Trace.Regime.UNSEALED : Trace.Regime.FED;
            assertEquals(Set.of(held), after);
            assertTrue(result.audit().closes(), () -> result.audit().toString());
        }
    }

    /** While a large vessel fills up again the house is below the supply, and no sample says that it is fed. */
    @Test
    void onTheWayToTheSupplyAHouseIsFilling() {
        HotWaterSystem house = house(Supply.Arrangement.CHECK_VALVE)
                .vessel(Systems.vessel(300, Pressure.gauge(1, BAR), 90))
                .addLeak(Leak.of(1, FlowUnit.LITRE_PER_MINUTE, Pressure.gauge(4, BAR)))
                .build();
        RunResult result = Simulation.of(house, Duration.ofHours(4))
                .sampledEvery(Duration.ofSeconds(5))
                .run();
        Trace trace = result.trace();
        int filling = 0;
        for (int i = 0; i < trace.count(); i++) {
            if (trace.regime(i) == Trace.Regime.FILLING) {
                assertTrue(pressure(result, i) < mains(result, i), "sample " + i);
                filling++;
            } else if (trace.regime(i) == Trace.Regime.FED) {
                assertEquals(mains(result, i), pressure(result, i), AT_SUPPLY, "sample " + i);
            }
        }
        assertTrue(filling > 20, filling + " samples of five seconds");
        assertEquals(Trace.Regime.FED, trace.regime(trace.count() - 1));
    }

    /** A bypass lets a house that stands above it down to where it holds it, although the water grows meanwhile. */
    @Test
    void aBypassLetsTheHouseDownToItsOwnPressure() {
        double setPressure = 0.3e5;
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .supply(SupplyBoundaryTest.supply(Supply.Arrangement.REDUCING_VALVE, 5)
                        .reducingValve(SupplyBoundaryTest.reducing()
                                .bypassOpens(setPressure / 1e5, BAR)
                                .build())
                        .build())
                .start(Start.builder()
                        .pressure(Pressure.gauge(6.5, BAR))
                        .water(40, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        RunResult result = Simulation.of(house, Duration.ofHours(1)).run();
        assertEquals(Trace.Regime.RETURNED, result.trace().regime(0));
        for (int i = 5; i < 30; i++) {
            assertEquals(Trace.Regime.RETURNED, result.trace().regime(i));
            assertEquals(mains(result, i) + setPressure, pressure(result, i), AT_SUPPLY, "sample " + i);
        }
    }

    /**
     * The last pascals behind a reducing valve are gone at once. In a tank of thin plastic they stand for half a gram of water,
     * which comes in cold; its heat was once left out of the books.
     */
    @Test
    void theBooksCloseWhereThePressureIsPutOntoThatOfTheFeed() {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .supply(SupplyBoundaryTest.supply(Supply.Arrangement.REDUCING_VALVE, 5.6)
                        .reducingValve(SupplyBoundaryTest.reducing().build())
                        .build())
                .tank(Parts.tank(193, Shell.cylinder(Material.PEX, 434, 1.1, LengthUnit.MILLIMETRE), 2, 10))
                .draws(DrawProfile.published().get("eu-xxs"))
                .build();
        RunResult result = Simulation.of(house, Duration.ofDays(1)).run();
        assertEquals(0, result.audit().energyFraction(), 1e-8); // it was 1e-5
        assertEquals(0, result.audit().massFraction(), 1e-8);
    }
}
