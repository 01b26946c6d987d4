package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: which draws the next one ended, as the run itself knows it. */
class DrawsCutShortTest {

    private static RunResult run(Draw... draws) {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .draws(DrawProfile.of("two taps", List.of(draws)))
                .build();
        return Simulation.of(house, Duration.ofHours(1)).run();
    }

    private static Draw volume(double start, double litres) {
        return Draw.ofVolume(start, litres, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE);
    }

    private static Draw heat(double start, double kilowattHours) {
        return Draw.ofHeat(start, kilowattHours, EnergyUnit.KILOWATT_HOUR, 10, FlowUnit.LITRE_PER_MINUTE);
    }

    /** A draw of 20 L at 10 L/min has ended when the next begins two minutes later: nobody was cut short. */
    @Test
    void drawsOfKnownVolumeFollowEachOtherAtOnce() {
        RunResult result = run(volume(600, 20), volume(720, 20));
        assertEquals(
                600 + 120, result.first(Event.Kind.DRAW_ENDED).orElseThrow().time(), 1e-3);
        assertEquals(0, result.totals().drawsCutShort());
        assertEquals(0.04, result.totals().drawn(), 0.002);
    }

    /** A hundred kilowatt hours do not come through a tap within two minutes. */
    @Test
    void aDrawOfKnownHeatIsCutShortByTheNext() {
        assertEquals(1, run(heat(600, 100), volume(720, 20)).totals().drawsCutShort());
        assertEquals(0, run(heat(600, 0.01), volume(720, 20)).totals().drawsCutShort());
    }
}
