package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The weight of a column of water: what is foretold of a device at a height is what the simulation finds there. */
class HeadTest {

    /** What is foretold and what is found differ by rounding and by the nanosecond an event is located to (Pa). */
    private static final double SAME = 1e-3;

    private static HotWaterSystem house(double metres, double celsius) {
        ReliefValve valve = ReliefValve.builder()
                .name("valve")
                .setPressure(Pressure.gauge(7, BAR))
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .reseatPressure(Pressure.gauge(6, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .height(metres, LengthUnit.METRE)
                .build();
        return Parts.lodge(4.2, 58)
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(3.5, BAR), celsius))
                .gaugeHeight(metres, LengthUnit.METRE)
                .addReliefValve(valve)
                .build();
    }

    /**
     * Validation: densities of water at one atmosphere, by Kell (1975), rounded to 0.05 kg/m3; the lodge lies higher, which
     * takes off 0.002 kg/m3.
     */
    @ParameterizedTest
    @CsvSource({"10, 999.70", "20, 998.20", "30, 995.65"})
    void weighsAColumnOfTheFeedsColdWater(double celsius, double density) {
        assertEquals(density * 9.80665 * 12, house(0, celsius).head(12), 0.05 * 9.80665 * 12);
        assertEquals(-density * 9.80665 * 12, house(0, celsius).head(-12), 0.05 * 9.80665 * 12);
    }

    @ParameterizedTest
    @CsvSource({"-30, 2", "-8, 30", "0, 9", "10, 15", "30, 2", "30, 30"})
    void aValveOpensWhereItsHeightSaysItWill(double metres, double celsius) {
        HotWaterSystem house = house(metres, celsius);
        double air = house.site().atmosphere();
        ReliefValve valve = house.reliefValves().get(0);
        RunResult run = Simulation.of(house, Duration.ofHours(4)).run();
        Event opened = run.first(Event.Kind.RELIEF_OPENED).orElseThrow();
        double foretold = house.atDrainCock(valve.setPressure(), metres).absolute(air);
        assertEquals(foretold, opened.pressureAbsolute(), SAME);
        assertEquals(7e5, run.gauge(opened.pressureAbsolute()) - house.head(metres), SAME);
        double reseatPressure = SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(20, BAR))
                .reliefMargin(0, RatioUnit.PERCENT)
                .build()
                .bounds()
                .stream()
                .filter(bound -> bound.rule() == SizingTarget.Rule.RELIEF_RESEAT)
                .findFirst()
                .orElseThrow()
                .absolute();
        assertEquals(house.atDrainCock(valve.reseatPressure(), metres).absolute(air), reseatPressure, SAME);
    }
}
