package io.github.heatswell.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.LocalTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The supply over the day and over the year. */
class SupplyTemperatureTest {

    /**
     * Validation: Burch and Christensen (ASES 2007) for an annual mean of 50 degF and monthly means 44 degF apart
     * (constructed from the published formula).
     */
    @ParameterizedTest
    @CsvSource({
        "1, 48.527",
        "44, 45.880",
        "90, 48.889",
        "135, 55.952",
        "182, 63.288",
        "227, 66.120",
        "300, 59.057",
        "365, 48.659"
    })
    void seasonsFollowTheFormula(int day, double fahrenheit) {
        SupplyTemperature water = SupplyTemperature.seasonal(
                50, TemperatureUnit.FAHRENHEIT, 44, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE);
        assertEquals(fahrenheit, TemperatureUnit.FAHRENHEIT.fromSi(water.on(day)), 1e-3); // printed digits
        assertFalse(water.isConstant());
    }

    @Test
    void southIsHalfAYearApart() {
        SupplyTemperature north =
                SupplyTemperature.seasonal(12, TemperatureUnit.CELSIUS, 18, TemperatureDifferenceUnit.KELVIN);
        double halfYear = 180 / 0.986;
        assertEquals(north.on(40 + halfYear), north.southern().on(40), 1e-9);
        assertTrue(SupplyTemperature.constant(9, TemperatureUnit.CELSIUS).isConstant());
        assertEquals(
                282.15, SupplyTemperature.constant(9, TemperatureUnit.CELSIUS).on(200), 1e-12);
    }

    /** Between two entries the mains' pressure changes evenly, also over midnight. */
    @Test
    void timetableIsEvenBetweenEntries() {
        MainsPressure mains = MainsPressure.daily(Map.of(
                6 * 3600.0, Pressure.gauge(4, PressureUnit.BAR),
                22 * 3600.0, Pressure.gauge(6, PressureUnit.BAR)));
        assertEquals(5e5 + 1e5, mains.absolute(14 * 3600, 1e5), 1e-6);
        assertEquals(5e5 + 1e5, mains.absolute(2 * 3600, 1e5), 1e-6);
        assertEquals(5.75e5 + 1e5, mains.absolute(23 * 3600, 1e5), 1e-6);
        assertEquals(6e5 + 1e5, mains.absolute(22 * 3600 + 86_400, 1e5), 1e-6);
        assertEquals(5.5e5 + 1e5, mains.absolute(0, 1e5), 1e-6);
        assertFalse(mains.isConstant());
        MainsPressure byClock = MainsPressure.byClock(Map.of(
                LocalTime.of(6, 0), Pressure.gauge(4, PressureUnit.BAR),
                LocalTime.of(22, 0), Pressure.gauge(6, PressureUnit.BAR)));
        assertEquals(mains.entries(), byClock.entries());
        assertEquals(
                "check valve, mains 4 bar gauge at 06:00, 6 bar gauge at 22:00",
                Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .mains(byClock)
                        .water(9, TemperatureUnit.CELSIUS)
                        .build()
                        .toString());
        assertTrue(MainsPressure.constant(Pressure.gauge(4, PressureUnit.BAR)).isConstant());
    }

    @Test
    void impossibleTimetablesAreRefused() {
        Pressure four = Pressure.gauge(4, PressureUnit.BAR);
        assertThrows(IllegalArgumentException.class, () -> MainsPressure.daily(Map.of()));
        assertThrows(IllegalArgumentException.class, () -> MainsPressure.daily(Map.of(86_400.0, four)));
        assertThrows(IllegalArgumentException.class, () -> MainsPressure.daily(Map.of(-1.0, four)));
        assertThrows(IllegalArgumentException.class, () -> MainsPressure.daily(Map.of(Double.NaN, four)));
        assertThrows(
                IllegalArgumentException.class,
                () -> MainsPressure.daily(Map.of(0.0, Pressure.gauge(26, PressureUnit.BAR))));
        assertThrows(IllegalArgumentException.class, () -> new Supply.Outage(10, 10));
        assertThrows(IllegalArgumentException.class, () -> new Supply.Outage(-1, 10));
        assertThrows(IllegalArgumentException.class, () -> new Supply.Outage(0, Double.NaN));
        assertThrows(
                IllegalArgumentException.class, () -> HotWaterSystem.builder().trappedAir(0, VolumeUnit.LITRE));
        assertThrows(
                IllegalArgumentException.class,
                () -> HotWaterSystem.builder().trappedAir(Double.NaN, VolumeUnit.LITRE));
    }
}
