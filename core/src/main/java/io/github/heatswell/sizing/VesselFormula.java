package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Objects;

/**
 * A published formula for the size of an expansion vessel, with its numbers filled in. Formulas ignore the compliance
 * of tank and pipes, layers, and the acceptance limit; {@link VesselSizing} includes them, and
 * {@link SizingReconciliation} quantifies each.
 */
public sealed interface VesselFormula permits Handbook, DinDrinkingWater, EnHeating {

    /**
     * Evaluates the formula.
     *
     * @return the volume, the precharge, every input and the source
     */
    Result size();

    /**
     * The diaphragm tank of the handbook, {@code Vt = Vs [(v2/v1 - 1) - 3 a dT]/(1 - P1/P2)}: ASHRAE Handbook, HVAC
     * Systems and Equipment, chapter on hydronic heating and cooling, equation 14 in the edition of 2000 (13 is that
     * of the open tank), second-hand. The precharge is the fill pressure.
     *
     * @param growth the net expansion
     * @param fillAbsolute P1, the pressure at the cold fill (Pa, absolute), 10 kPa to 5 MPa
     * @param highestAbsolute P2, the highest pressure allowed (Pa, absolute), above P1 to 5 MPa
     * @return the formula
     * @throws IllegalArgumentException if a pressure is outside its range
     */
    static VesselFormula handbookDiaphragm(NetExpansion growth, double fillAbsolute, double highestAbsolute) {
        return new Handbook(growth, fillAbsolute, fillAbsolute, highestAbsolute, true);
    }

    /**
     * The closed tank with air above the water, {@code Vt = Vs [(v2/v1 - 1) - 3 a dT]/(Pa/P1 - Pa/P2)}: same chapter,
     * equation 12, second-hand. The tank starts full of air at atmospheric pressure, which is its precharge.
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
        return new Handbook(growth, atmosphere, fillAbsolute, highestAbsolute, false);
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

    /**
     * A number that went into a sizing formula.
     *
     * @param symbol its symbol in the formula
     * @param value the number, in {@code unit}
     * @param unit the unit the formula uses, empty for a pure number
     * @param meaning what it is, in words
     * @param source where it comes from
     */
    record Input(String symbol, double value, String unit, String meaning, Citation source) {

        /**
         * Checks that everything is there.
         *
         * @param symbol its symbol in the formula
         * @param value the number, in {@code unit}
         * @param unit the unit the formula uses, empty for a pure number
         * @param meaning what it is, in words
         * @param source where it comes from
         */
        public Input {
            Objects.requireNonNull(symbol, "symbol");
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(meaning, "meaning");
            Objects.requireNonNull(source, "source");
        }

        /** A number the caller gave. */
        static Input given(String symbol, double value, String unit, String meaning) {
            return new Input(symbol, value, unit, meaning, Citation.given());
        }
    }

    /**
     * Result of a sizing formula, with everything needed to recompute it by hand.
     *
     * @param expression the formula, in the letters of the inputs
     * @param volume the smallest whole volume of the vessel (m3), 0 or more
     * @param precharge the gas pressure to set with the water side empty
     * @param inputs every number that went in
     * @param source where the formula comes from
     */
    record Result(
            String expression, double volume, Pressure precharge, List<VesselFormula.Input> inputs, Citation source) {

        /**
         * Checks that everything is there and copies the inputs.
         *
         * @param expression the formula, in the letters of the inputs
         * @param volume the smallest whole volume of the vessel (m3), 0 or more
         * @param precharge the gas pressure to set with the water side empty
         * @param inputs every number that went in
         * @param source where the formula comes from
         */
        public Result {
            Objects.requireNonNull(expression, "expression");
            Objects.requireNonNull(precharge, "precharge");
            Objects.requireNonNull(source, "source");
            inputs = List.copyOf(Objects.requireNonNull(inputs, "inputs"));
        }
    }

    /**
     * Net expansion of a system, the water's expansion minus the container's, as the handbook writes it:
     * {@code Vs [(v2/v1 - 1) - 3 a dT]}. It is the excess volume of <em>hot</em> water; the volume entering a cold vessel
     * is smaller by {@code v1/v2}.
     *
     * @param systemVolume Vs, the volume of water (m3), 1 mL to 10 000 m3
     * @param coldSpecificVolume v1, specific volume of the cold water (m3/kg), 0.9e-3 to 1.2e-3
     * @param hotSpecificVolume v2, specific volume of the hot water (m3/kg), v1 to 1.2e-3
     * @param linearExpansion a, linear thermal expansion of the container (1/K), 0 to 1e-3
     * @param warming dT, hot less cold temperature (K), 0 to 150
     */
    record NetExpansion(
            double systemVolume,
            double coldSpecificVolume,
            double hotSpecificVolume,
            double linearExpansion,
            double warming) {

        /** Linear expansion of steel as the handbook rounds it, 6.5e-6 per degree Fahrenheit (1/K); from memory. */
        public static final double HANDBOOK_STEEL = 6.5e-6 * 1.8;
        /** Linear expansion of copper as the handbook rounds it, 9.5e-6 per degree Fahrenheit (1/K); from memory. */
        public static final double HANDBOOK_COPPER = 9.5e-6 * 1.8;

        /**
         * Checks every number.
         *
         * @param systemVolume Vs, the volume of water (m3), 1 mL to 10 000 m3
         * @param coldSpecificVolume v1, specific volume of the cold water (m3/kg), 0.9e-3 to 1.2e-3
         * @param hotSpecificVolume v2, specific volume of the hot water (m3/kg), v1 to 1.2e-3
         * @param linearExpansion a, linear thermal expansion of the container (1/K), 0 to 1e-3
         * @param warming dT, hot less cold temperature (K), 0 to 150
         * @throws IllegalArgumentException if a number is outside its range, or if the container outgrows the water
         */
        public NetExpansion {
            HandCalculation.within("Vs", systemVolume, VolumeUnit.CUBIC_METRE, 1e-6, 1e4);
            HandCalculation.within("v1 (m3/kg)", coldSpecificVolume, RatioUnit.ONE, 0.9e-3, 1.2e-3);
            HandCalculation.within("v2 (m3/kg)", hotSpecificVolume, RatioUnit.ONE, coldSpecificVolume, 1.2e-3);
            HandCalculation.within("a (1/K)", linearExpansion, RatioUnit.ONE, 0, 1e-3);
            HandCalculation.within("dT", warming, TemperatureDifferenceUnit.KELVIN, 0, 150);
            if (hotSpecificVolume / coldSpecificVolume - 1 < 3 * linearExpansion * warming) {
                throw new IllegalArgumentException("a: the container expands more than the water; no vessel is needed");
            }
        }

        /**
         * Growth of the water less that of the container, for each volume of cold water.
         *
         * @return {@code (v2/v1 - 1) - 3 a dT} (-), 0 or more
         */
        public double relative() {
            return hotSpecificVolume / coldSpecificVolume - 1 - 3 * linearExpansion * warming;
        }

        /**
         * Growth of the water less that of the container.
         *
         * @return the net expansion (m3), 0 or more
         */
        public double volume() {
            return systemVolume * relative();
        }

        List<VesselFormula.Input> inputs() {
            return List.of(
                    VesselFormula.Input.given("Vs", systemVolume, "m3", "volume of water"),
                    VesselFormula.Input.given("v1", coldSpecificVolume, "m3/kg", "specific volume of the cold water"),
                    VesselFormula.Input.given("v2", hotSpecificVolume, "m3/kg", "specific volume of the hot water"),
                    VesselFormula.Input.given("a", linearExpansion, "1/K", "linear thermal expansion of the container"),
                    VesselFormula.Input.given("dT", warming, "K", "hot less cold temperature"));
        }
    }
}
