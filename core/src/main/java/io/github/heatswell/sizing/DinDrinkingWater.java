package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** See {@link VesselFormula#dinDrinkingWater}. */
record DinDrinkingWater(double heaterVolume, double hotTemperature, double supplyGauge, double reliefGauge)
        implements VesselFormula {

    static final double HOTTEST = 353.15 + DinDrinkingWater.CONVERTED;
    /** What a temperature may be off after it was converted from degrees Fahrenheit (K). */
    private static final double CONVERTED = 1e-6;

    private static final double RELIEF_SHARE = 0.8;
    /** The lexicon is haustechnikdialog.de, SHKwissen 1146. */
    private static final Citation SOURCE =
            new Citation("DIN 4807-5:1997, in a trade lexicon", Citation.Standing.SECOND_HAND);

    DinDrinkingWater {
        HandCalculation.applies("the volume of the tank (Vsp)", heaterVolume, QuantityFormat::volume, 1e-3, 20);
        HandCalculation.applies(
                "the temperature of the hot water (t)", hotTemperature, QuantityFormat::temperature, 283.15, HOTTEST);
        HandCalculation.applies(
                "the set pressure of the relief valve (psv)", reliefGauge, QuantityFormat::pressure, 0.5e5, 25e5);
        HandCalculation.applies("the supply pressure (pa)", supplyGauge, QuantityFormat::pressure, 0.2e5, 25e5);
        HandCalculation.below("the supply pressure (pa)", supplyGauge, "pe = 0.8 psv", RELIEF_SHARE * reliefGauge);
    }

    /** The growth of the water by the standard's table (-), the next temperature up. */
    static double share(double hotTemperature) {
        return hotTemperature <= 333.15 + CONVERTED ? 0.017 : hotTemperature <= 343.15 + CONVERTED ? 0.023 : 0.029;
    }

    /** The highest pressure that the standard allows for this set pressure (Pa, gauge). */
    static double highestGauge(double reliefGauge) {
        return RELIEF_SHARE * reliefGauge;
    }

    @Override
    public Result size() {
        double n = share(hotTemperature);
        double pa = PressureUnit.BAR.fromSi(supplyGauge);
        double pe = PressureUnit.BAR.fromSi(highestGauge(reliefGauge));
        double volume = n * heaterVolume * (pa + 1) * (pe + 1) / ((pa + 0.8) * (pe - pa));
        return new Result(
                "Vn = n Vsp (pa + 1 bar)(pe + 1 bar)/[(pa + 0.8 bar)(pe - pa)], pe = 0.8 psv",
                volume,
                VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR.at(Pressure.gauge(supplyGauge, PressureUnit.PASCAL)),
                List.of(
                        Input.given("Vsp", heaterVolume, "m3", "volume of the heater"),
                        new Input(
                                "n", n, "", "growth from 10 degC to the table's next step, 60, 70 or 80 degC", SOURCE),
                        Input.given("t", hotTemperature, "K", "temperature the water is heated to"),
                        Input.given("pa", pa, "bar", "static pressure of the supply, gauge"),
                        Input.given("psv", PressureUnit.BAR.fromSi(reliefGauge), "bar", "relief set pressure, gauge"),
                        new Input("pe", pe, "bar", "highest pressure, 0.8 psv, gauge", SOURCE)),
                SOURCE);
    }
}
