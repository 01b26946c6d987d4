package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How sharp a front of cold water stays in layers, measured by what the water expands by when it is reheated: of V litres of
 * cold water below hot water, without mixing, {@code V (rho_cold - rho_hot)}, a closed form. A blurred front expands by
 * more: the density of water falls the faster the warmer it is.
 */
class FrontTest {

    /** Density (kg/m3) of water of 12 and of 60 degC at 4 bar, absolute: steam tables, from memory. */
    private static final double COLD = 999.64;

    private static final double HOT = 983.33;

    /**
     * Validation: within half a per cent of the closed form, however few layers there are. A draw of 170 L brings the front into the
     * highest of ten layers, where it mixes.
     */
    @ParameterizedTest
    @CsvSource({"5, 60", "10, 30", "10, 60", "10, 100", "10, 170", "25, 60", "50, 30", "50, 60", "50, 100"})
    void aFrontStaysAFront(int layers, double litres) {
        assertEquals(0, excess(layers, litres), 0.5);
    }

    private static double excess(int layers, double litres) {
        double exact = litres * 1e-3 * (COLD - HOT);
        return 100 * (relieved(layers, litres) / exact - 1);
    }

    private static double relieved(int layers, double litres) {
        Draw bath = Draw.ofVolume(60, litres, VolumeUnit.LITRE, 60, FlowUnit.LITRE_PER_MINUTE);
        HotWaterSystem system = Parts.textbook(190, 12, 4.0, 60)
                .tank(Parts.tank(190, Shell.rigid(), 0, 10).toBuilder()
                        .layers(layers)
                        .height(1.2, LengthUnit.METRE)
                        .build())
                .heater(Parts.heater(1.5, 100, 60, 0.5))
                .addReliefValve(Systems.holding(4.01e5))
                .start(Start.builder().water(60, TemperatureUnit.CELSIUS).build())
                .draws(DrawProfile.of("bath", List.of(bath)))
                .build();
        RunResult run = Simulation.of(system, Duration.ofHours(12)).run();
        assertTrue(run.audit().closes(), run.audit().toString());
        return run.totals().relief().get(0).mass();
    }
}
