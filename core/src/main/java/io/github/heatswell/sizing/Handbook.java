package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The tank with a diaphragm or with air above the water; see {@link VesselFormula#handbookDiaphragm} and
 * {@link VesselFormula#handbookAirInterface}. The gas is charged to the fill pressure, or is that of the atmosphere.
 *
 * @param growth the net expansion
 * @param charge the pressure of the gas before filling (Pa, absolute)
 * @param fillAbsolute P1, the pressure at the cold fill (Pa, absolute)
 * @param highestAbsolute P2, the highest pressure allowed (Pa, absolute)
 * @param diaphragm whether a diaphragm parts water and gas
 */
record Handbook(NetExpansion growth, double charge, double fillAbsolute, double highestAbsolute, boolean diaphragm)
        implements VesselFormula {

    private static final double MIN_PRESSURE = 1e4;
    private static final double MAX_PRESSURE = 5e6;

    Handbook {
        HandCalculation.within("P1", fillAbsolute, PressureUnit.BAR, MIN_PRESSURE, MAX_PRESSURE);
        HandCalculation.within("P2", highestAbsolute, PressureUnit.BAR, MIN_PRESSURE, MAX_PRESSURE);
        HandCalculation.within("Pa", charge, PressureUnit.BAR, MIN_PRESSURE, fillAbsolute);
        HandCalculation.rising("P1", fillAbsolute, "P2", highestAbsolute);
    }

    @Override
    public Result size() {
        List<Input> inputs = new ArrayList<>(growth.inputs());
        if (!diaphragm) {
            inputs.add(Input.given("Pa", charge, "Pa abs", "air pressure when the tank is filled"));
        }
        inputs.add(Input.given("P1", fillAbsolute, "Pa abs", "pressure at the cold fill"));
        inputs.add(Input.given("P2", highestAbsolute, "Pa abs", "highest pressure allowed"));
        Citation source = new Citation(
                "ASHRAE Handbook, HVAC Systems and Equipment, hydronic heating and cooling, equation "
                        + (diaphragm ? 14 : 12) + " of the edition of 2000",
                Citation.Standing.SECOND_HAND);
        return new Result(
                "Vt = Vs [(v2/v1 - 1) - 3 a dT]/" + (diaphragm ? "(1 - P1/P2)" : "(Pa/P1 - Pa/P2)"),
                growth.volume() / (charge / fillAbsolute - charge / highestAbsolute),
                Pressure.absolute(charge, PressureUnit.PASCAL),
                inputs,
                source);
    }
}
