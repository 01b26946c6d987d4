package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Systems.celsius;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The jet of cold water mixes the stated part of the tank: 190 L of 60 degC, with inflow of 12 degC within a minute. */
class InletMixingTest {

    /**
     * Validation: the mixed part is a stirred vessel, whose surplus of temperature falls by the factor e for each of its volumes
     * that flow in (a closed form).
     */
    @ParameterizedTest
    @CsvSource({"20, 20, 19", "20, 50, 60", "50, 50, 60", "10, 45, 30", "20, 100, 120"})
    void theMixedPartIsDilutedAsAStirredVessel(int layers, double percent, double litres) {
        double bottom =
                run(layers, percent, litres, Duration.ofMinutes(3)).trace().value(Channel.WATER_BOTTOM, 2);
        double surplus = 48 * Math.exp(-litres / (1.9 * percent));
        assertEquals(celsius(12 + surplus), bottom, 0.4); // cold water is 1.7 % denser, and the element gives 1.5 kW
    }

    /** Validation: a jet that mixes the whole tank leaves it as a tank without layers would be. */
    @Test
    void aJetThatMixesTheWholeTankMakesItOneLayer() {
        double one = relieved(1, 0);
        assertEquals(one, relieved(20, 100), 0.002 * one);
    }

    /** Regression: the more the jet mixes, the more the reheated water expands; per cent more than below a sharp front. Beyond about half
     * the tank the draw itself gets cooler, so that less is reheated. */
    @ParameterizedTest
    @CsvSource({"10, 0, 0", "10, 20, 18.6", "50, 0, 0", "50, 10, 9.5", "50, 20, 18", "50, 40, 29"})
    void theMoreItMixesTheMoreIsReleased(int layers, double percent, double excess) {
        double sharp = 60e-3 * (999.64 - 983.33); // densities at 12 and 60 degC and 4 bar: steam tables, from memory
        assertEquals(excess, 100 * (relieved(layers, percent) / sharp - 1), 0.6);
    }

    private static double relieved(int layers, double percent) {
        return run(layers, percent, 60, Duration.ofHours(12))
                .totals()
                .relief()
                .get(0)
                .mass();
    }

    private static RunResult run(int layers, double percent, double litres, Duration duration) {
        Draw bath = Draw.ofVolume(60, litres, VolumeUnit.LITRE, litres, FlowUnit.LITRE_PER_MINUTE);
        RunResult run = Simulation.of(
                        Parts.textbook(190, 12, 4.0, 60)
                                .tank(Parts.tank(190, Shell.rigid(), 0, 10).toBuilder()
                                        .layers(layers)
                                        .height(1.2, LengthUnit.METRE)
                                        .inletMixing(percent, RatioUnit.PERCENT)
                                        .build())
                                .heater(Parts.heater(1.5, 100, 60, 0.5))
                                .addReliefValve(Systems.holding(4.01e5))
                                .start(Start.builder()
                                        .water(60, TemperatureUnit.CELSIUS)
                                        .build())
                                .draws(DrawProfile.of("bath", List.of(bath)))
                                .build(),
                        duration)
                .run();
        assertTrue(run.audit().closes(), run.audit().toString());
        return run;
    }
}
