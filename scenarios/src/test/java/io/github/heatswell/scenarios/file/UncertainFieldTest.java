package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that are known only so well. */
class UncertainFieldTest {

    private static final Scenario LODGE = Catalogue.read("orchard-lodge");

    /** Half of the range of even values; of normal ones the cut-off, one and a half times what stands behind the sign. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            supply.pressure  | 4.2 bar +- 0.2 bar      | 4.2 bar   | 0.3
            supply.pressure  | 4.2 +- 0.2 bar          | 4.2 bar   | 0.3
            supply.pressure  | 4.2 bar ± 0.2           | 4.2 bar   | 0.3
            supply.pressure  | 4.2 bar +/- 5 %         | 4.2 bar   | 0.315
            supply.pressure  | 4 bar +- 20 kPa         | 4 bar     | 0.3
            supply.pressure  | 5 bar abs +- 0.2 bar    | 5 bar abs | 0.3
            supply.pressure  | 4.0 bar to 4.6 bar      | 4.3 bar   | 0.3
            supply.pressure  | 60 to 70 psi            | 65 psi    | 5
            heater.set-point | 58 degC +- 3 K          | 58 degC   | 4.5
            heater.set-point | 58 degC +- 3 degC       | 58 degC   | 4.5
            heater.set-point | 58 degC +- 5.4 degF     | 58 degC   | 4.5
            heater.set-point | 140 degF +- 2 K         | 140 degF  | 5.4
            heater.differential | 5 K +- 1 K           | 5 K       | 1.5
            tank.volume      | 200 L +- 3 %            | 200 L     | 9
            heater.recovery-efficiency | 78 % +- 4 %   | 78 %      | 6
            """)
    void aRunTakesTheMiddle(String field, String text, String centre, double half) {
        Scenario scenario = LODGE.with(List.of(new Change(field, text)));
        UncertainField uncertain = scenario.uncertain().get(0);
        Distribution spread = uncertain.distribution();
        assertEquals(centre, uncertain.centre());
        assertEquals(half, (spread.high() - spread.low()) / 2, 1e-9);
        assertEquals(field, uncertain.input().name());
        HotWaterSystem plain = LODGE.with(List.of(new Change(field, centre))).system();
        assertTrue(same(plain, scenario.system()));
        assertTrue(same(plain, scenario.drawn(spread.centre())));
    }

    @Test
    void drawnHousesAreThoseOfAFileWithThatValue() {
        Scenario scenario = LODGE.with(List.of(
                Change.of("relief[0].opens=6.5 bar to 7.5 bar"), Change.of("relief[0].full-lift=none"),
                Change.of("relief[0].reseats=none"), Change.of("tank.volume=200 L +- 10 L")));
        assertEquals(
                List.of("tank.volume", "relief[0].opens"),
                scenario.uncertain().stream().map(UncertainField::field).toList());
        HotWaterSystem drawn = scenario.drawn(204, 6.8);
        assertEquals(0.204, drawn.tank().volume(), 1e-12);
        // What is assumed follows: 80 % of what the valve opens at.
        assertEquals(6.8e5 * 0.8, drawn.reliefValves().get(0).reseatPressure().value(), 1);
        assertEquals(7e5, scenario.system().reliefValves().get(0).setPressure().value(), 1e-6);
    }

    @Test
    void anyNumberOfThreadsMayDraw() {
        Scenario scenario = LODGE.with(List.of(Change.of("tank.volume=200 L to 300 L")));
        List<Double> volumes = IntStream.range(0, 2000)
                .parallel()
                .mapToObj(i -> scenario.drawn(200 + i * 0.05).tank().volume())
                .toList();
        for (int i = 0; i < volumes.size(); i++) {
            assertEquals((200 + i * 0.05) / 1000, volumes.get(i), 1e-12);
        }
    }

    @Test
    void valuesThatDoNotGoTogetherAreRefusedAndNamed() {
        Scenario scenario = LODGE.with(List.of(
                Change.of("relief[0].reseats=5 bar to 8 bar"),
                Change.of("relief[0].opens=8.5 bar to 9 bar"),
                Change.of("relief[0].full-lift=none")));
        InvalidScenarioException refusal = assertThrows(InvalidScenarioException.class, () -> scenario.drawn(4.9, 8));
        assertEquals(
                "orchard-lodge, some values: relief[0].reseats: 8 bar gauge must be below the set pressure of 4.9"
                        + " bar gauge",
                refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> scenario.drawn(8.6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            supply.pressure=4 bar +- 0          | supply.pressure: the uncertainty '0' must be above 0; leave it out if there is none
            supply.pressure=4 bar +- -1 bar     | supply.pressure: the uncertainty '-1 bar' must be above 0; leave it out if there is none
            supply.pressure=4 +- 1              | supply.pressure: '4' has no unit; give a pressure in {pressures}
            supply.pressure=5 bar to 4 bar      | supply.pressure: '5 bar to 4 bar' must start with its lower end
            supply.pressure=50 psi to 4 bar     | supply.pressure: both ends of a range must have the same unit
            supply.pressure=4 bar to 5 bar abs  | supply.pressure: both ends of a range must have the same unit
            supply.pressure=0.1 bar +- 0.2 bar  | supply.pressure: -0.2 bar is outside the allowed range, above 0 bar to 25 bar (written as 0.1 bar +- 0.2 bar)
            heater.set-point=90 degC to 120 degC | heater.set-point: 120 degC is outside the allowed range, 10 degC to 99 degC (written as 90 degC to 120 degC)
            heater.set-point=60 degC +- 5 %     | heater.set-point: a percentage of a temperature is meaningless; write, for example, '+- 3 K'
            tank.volume=150 L +- 3 K            | tank.volume: 'K' is a unit of temperature or temperature difference; give a volume in {volumes}
            tank.volume=150 L +- lots           | tank.volume: 'lots' does not start with a number; write a number and a unit
            tank.layers=3 to 5                  | tank.layers: '3 to 5' is not a whole number
            run.duration=3 h +- 1 h             | run.duration: is a choice of words and cannot be uncertain; write one value
            """)
    void whatMakesNoSenseIsRefused(String change, String message) {
        InvalidScenarioException refusal =
                assertThrows(InvalidScenarioException.class, () -> LODGE.with(List.of(Change.of(change))));
        String expected =
                message.replace("{pressures}", Kind.PRESSURE.symbols()).replace("{volumes}", Kind.VOLUME.symbols());
        assertEquals("orchard-lodge with " + change + ": " + expected, refusal.getMessage());
    }

    private static boolean same(HotWaterSystem one, HotWaterSystem other) {
        return Objects.equals(one.tank().volume(), other.tank().volume())
                && Math.abs(pascal(one) - pascal(other)) < 1e-6
                && Math.abs(one.heater().setPoint() - other.heater().setPoint()) < 1e-9
                && Math.abs(one.heater().differential() - other.heater().differential()) < 1e-9
                && Math.abs(one.heater().recoveryEfficiency() - other.heater().recoveryEfficiency()) < 1e-12;
    }

    private static double pascal(HotWaterSystem house) {
        return house.supplyAtStart().absolute(house.site().atmosphere());
    }

    /** A regression: what is unknown is read as the kind of quantity its key takes, not as the first that fits the unit. */
    @Test
    void aDifferenceOfTemperaturesIsNoTemperature() {
        assertEquals("5 K", DoubtsOf.measured("heater.differential", "5 K").text(UnitSystem.US));
        assertEquals("136 °F", DoubtsOf.measured("heater.set-point", "58 degC").text(UnitSystem.US));
    }
}
