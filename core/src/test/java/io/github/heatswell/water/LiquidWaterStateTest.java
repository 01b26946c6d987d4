package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LiquidWaterStateTest {
    /** Regression: a state that nobody filled cannot pass for a result. */
    @Test
    void newStateHoldsNoNumber() {
        LiquidWater.State state = new LiquidWater.State();
        assertAll(
                () -> assertEquals(Double.NaN, state.temperature()),
                () -> assertEquals(Double.NaN, state.pressureAbsolute()),
                () -> assertEquals(Double.NaN, state.density()),
                () -> assertEquals(Double.NaN, state.expansivity()),
                () -> assertEquals(Double.NaN, state.compressibility()),
                () -> assertEquals(Double.NaN, state.heatCapacity()),
                () -> assertEquals(Double.NaN, state.enthalpy()),
                () -> assertEquals(Double.NaN, state.internalEnergy()));
    }

    /** Regression: each value comes back under its own name. */
    @Test
    void setValuesComeBack() {
        LiquidWater.State state = new LiquidWater.State();
        state.set(300, 2e5, 1000, 3e-4, 4e-10, 4180, 113_000);
        assertAll(
                () -> assertEquals(300, state.temperature()),
                () -> assertEquals(2e5, state.pressureAbsolute()),
                () -> assertEquals(1000, state.density()),
                () -> assertEquals(3e-4, state.expansivity()),
                () -> assertEquals(4e-10, state.compressibility()),
                () -> assertEquals(4180, state.heatCapacity()),
                () -> assertEquals(113_000, state.enthalpy()),
                () -> assertEquals(112_800, state.internalEnergy()));
    }
}
