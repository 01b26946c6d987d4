package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;

/** The temperature of the cold feed through the year, while being read. */
final class SeasonDraft {

    private double mean;
    private double swing;
    private boolean southern;

    void annualMean(double value, TemperatureUnit unit) {
        SupplyTemperature.seasonal(value, unit, 0, TemperatureDifferenceUnit.KELVIN);
        mean = unit.toSi(value);
    }

    void monthlySwing(double value, TemperatureDifferenceUnit unit) {
        SupplyTemperature.seasonal(10, TemperatureUnit.CELSIUS, value, unit);
        swing = unit.toSi(value);
    }

    void southern(boolean value) {
        southern = value;
    }

    SupplyTemperature end() {
        SupplyTemperature seasons =
                SupplyTemperature.seasonal(mean, TemperatureUnit.KELVIN, swing, TemperatureDifferenceUnit.KELVIN);
        return southern ? seasons.southern() : seasons;
    }
}
