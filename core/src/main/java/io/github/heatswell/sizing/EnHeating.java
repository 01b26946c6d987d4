package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;

/** See {@link VesselFormula#enHeating}. */
record EnHeating(double systemVolume, double hotTemperature, double prechargeGauge, double reliefGauge)
        implements VesselFormula {

    private static final Citation SOURCE = new Citation("EN 12828:2012 Annex D", Citation.Standing.FROM_MEMORY);
    private static final Citation PARABOLA =
            new Citation("Collection R of the Italian national authority (2009), chapter R.3", Citation.Standing.SEEN);
    private static final double SMALL_VESSEL = 15e-3;

    EnHeating {
        HandCalculation.applies("the volume of the tank (Vs)", systemVolume, QuantityFormat::volume, 1e-3, 1e3);
        HandCalculation.applies(
                "the temperature of the hot water (t)", hotTemperature, QuantityFormat::temperature, 303.15, 403.15);
        HandCalculation.applies(
                "the set pressure of the relief valve (psv)", reliefGauge, QuantityFormat::pressure, 0.6e5, 25e5);
        HandCalculation.applies("the precharge (p0)", prechargeGauge, QuantityFormat::pressure, 0, 25e5);
        HandCalculation.below(
                "the precharge (p0)", prechargeGauge, "pe = psv - max(0.5 bar, 10 %)", highest(reliefGauge));
    }

    /** The growth of the water by the parabola (%). */
    static double percentage(double hotTemperature) {
        double t = TemperatureUnit.CELSIUS.fromSi(hotTemperature);
        return 0.31 + 3.9e-4 * t * t;
    }

    private static double highest(double reliefGauge) {
        return reliefGauge - Math.max(0.5e5, 0.1 * reliefGauge);
    }

    @Override
    public Result size() {
        double e = percentage(hotTemperature);
        double p0 = PressureUnit.BAR.fromSi(prechargeGauge);
        double pe = PressureUnit.BAR.fromSi(highest(reliefGauge));
        double inverse = (pe + 1) / (pe - p0);
        double expansion = e / 100 * systemVolume;
        double volume = volume(expansion, inverse);
        return new Result(
                "Vmin = (e Vs/100 + Vwr)(pe + 1 bar)/(pe - p0), pe = psv - max(0.5 bar, 10 % psv)",
                volume,
                Pressure.gauge(prechargeGauge, PressureUnit.PASCAL),
                List.of(
                        Input.given("Vs", systemVolume, "m3", "volume of water"),
                        Input.given("t", hotTemperature, "K", "temperature the water is heated to"),
                        new Input("e", e, "%", "expansion of the water, 0.31 + 3.9e-4 t^2, t in degC", PARABOLA),
                        new Input("Vwr", volume / inverse - expansion, "m3", "water reserve", SOURCE),
                        Input.given("p0", p0, "bar", "gas pressure before filling, gauge"),
                        Input.given("psv", PressureUnit.BAR.fromSi(reliefGauge), "bar", "relief set pressure, gauge"),
                        new Input("pe", pe, "bar", "highest pressure, gauge", SOURCE)),
                SOURCE);
    }

    /** A vessel up to 15 L keeps a fifth of its volume in reserve; a larger one, the reserve of the system. */
    private double volume(double expansion, double inverse) {
        double withFifth = expansion * inverse / (1 - 0.2 * inverse);
        return withFifth > 0 && withFifth <= SMALL_VESSEL
                ? withFifth
                : (expansion + Math.max(0.005 * systemVolume, 3e-3)) * inverse;
    }
}
