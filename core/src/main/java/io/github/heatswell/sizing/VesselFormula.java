package io.github.heatswell.sizing;

/**
 * A published formula for the size of an expansion vessel, with its numbers filled in. Formulas ignore the compliance
 * of tank and pipes, layers, and the acceptance limit; {@link VesselSizing} includes them, and
 * {@link SizingReconciliation} quantifies each.
 */
public sealed interface VesselFormula permits HandbookDiaphragm, HandbookAirInterface, DinDrinkingWater, EnHeating {

    /**
     * Evaluates the formula.
     *
     * @return the volume, the precharge, every input and the source
     */
    FormulaResult size();

    /**
     * The diaphragm tank of the handbook, {@code Vt = Vs [(v2/v1 - 1) - 3 a dT]/(1 - P1/P2)}: ASHRAE Handbook, HVAC
     * Systems and Equipment, chapter on hydronic heating and cooling, equation 13 in the editions 2008 to 2020, from
     * memory. The precharge is the fill pressure.
     *
     * @param growth the net expansion
     * @param fillAbsolute P1, the pressure at the cold fill (Pa, absolute), 10 kPa to 5 MPa
     * @param highestAbsolute P2, the highest pressure allowed (Pa, absolute), above P1 to 5 MPa
     * @return the formula
     * @throws IllegalArgumentException if a pressure is outside its range
     */
    static VesselFormula handbookDiaphragm(NetExpansion growth, double fillAbsolute, double highestAbsolute) {
        return new HandbookDiaphragm(growth, fillAbsolute, highestAbsolute);
    }

    /**
     * The closed tank with air above the water, {@code Vt = Vs [(v2/v1 - 1) - 3 a dT]/(Pa/P1 - Pa/P2)}: same chapter,
     * equation 12, from memory. The tank starts full of air at atmospheric pressure, which is its precharge.
     *
     * @param growth the net expansion
     * @param atmosphere Pa, the pressure of the air when the tank is filled (Pa, absolute), 10 kPa to P1
     * @param fillAbsolute P1, the pressure at the cold fill (Pa, absolute), 10 kPa to 5 MPa
     * @param highestAbsolute P2, the highest pressure allowed (Pa, absolute), above P1 to 5 MPa
     * @return the formula
     * @throws IllegalArgumentException if a pressure is outside its range
     */
    static VesselFormula handbookAirInterface(
            NetExpansion growth, double atmosphere, double fillAbsolute, double highestAbsolute) {
        return new HandbookAirInterface(growth, atmosphere, fillAbsolute, highestAbsolute);
    }

    /**
     * The vessel for drinking water, {@code Vn = Ve (pa + 1)(pe + 1)/[(pa + 0.8)(pe - pa)]} with {@code Ve = n Vsp},
     * {@code pe = 0.8 psv} and the precharge {@code pa - 0.2 bar}, all in bar gauge: DIN 4807-5:1997 as a trade page quotes
     * it, second-hand. The share n is 0.017 up to 60 degC, 0.023 up to 70 degC and 0.029 up to 80 degC, for water that
     * comes in at 10 degC.
     *
     * @param heaterVolume Vsp, the volume of the heater (m3), 1 L to 20 m3
     * @param hotTemperature the temperature it is heated to (K), 283.15 to 353.15 (80 degC)
     * @param supplyGauge pa, the static pressure of the supply (Pa, gauge), 0.2 bar to below pe
     * @param reliefGauge psv, the set pressure of the relief valve (Pa, gauge), 0.5 bar to 25 bar
     * @return the formula
     * @throws IllegalArgumentException if a number is outside its range
     */
    static VesselFormula dinDrinkingWater(
            double heaterVolume, double hotTemperature, double supplyGauge, double reliefGauge) {
        return new DinDrinkingWater(heaterVolume, hotTemperature, supplyGauge, reliefGauge);
    }

    /**
     * The vessel of a heating system, {@code Vmin = (Ve + Vwr)(pe + 1)/(pe - p0)} with {@code Ve = e Vs/100},
     * {@code e = 0.31 + 3.9e-4 t^2}, a water reserve Vwr of 0.5 % of the system and at least 3 L, or 20 % of a vessel
     * up to 15 L, and {@code pe = psv - max(0.5 bar, 10 % psv)}, in bar gauge: EN 12828:2012 Annex D, from memory; the
     * parabola is that of the Italian Collection R (2009), chapter R.3, which was read. Around 66 degC the parabola is
     * not conservative: real water filled at 10 degC expands up to 3 % more.
     *
     * @param systemVolume Vs, the volume of water (m3), 1 L to 1000 m3
     * @param hotTemperature t, the temperature it is heated to (K), 303.15 to 403.15 (30 to 130 degC)
     * @param prechargeGauge p0, the gas pressure before filling (Pa, gauge), 0 to below pe
     * @param reliefGauge psv, the set pressure of the relief valve (Pa, gauge), 0.6 bar to 25 bar
     * @return the formula
     * @throws IllegalArgumentException if a number is outside its range
     */
    static VesselFormula enHeating(
            double systemVolume, double hotTemperature, double prechargeGauge, double reliefGauge) {
        return new EnHeating(systemVolume, hotTemperature, prechargeGauge, reliefGauge);
    }

    /**
     * The share of its volume that a vessel precharged to the fill pressure can take up, {@code 1 - P1/P2} by Boyle's law.
     *
     * @param fillAbsolute P1, the pressure at the cold fill (Pa, absolute), above 0
     * @param highestAbsolute P2, the highest pressure (Pa, absolute), P1 or more
     * @return the acceptance factor (-), 0 to below 1
     * @throws IllegalArgumentException if the fill pressure is not above 0, or the highest is below it
     */
    static double acceptanceFactor(double fillAbsolute, double highestAbsolute) {
        if (!(fillAbsolute > 0 && highestAbsolute >= fillAbsolute)) {
            throw new IllegalArgumentException("P1: " + fillAbsolute + " Pa must be above 0 and not above P2, "
                    + highestAbsolute + " Pa (absolute)");
        }
        return 1 - fillAbsolute / highestAbsolute;
    }
}
