package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.ArrayList;
import java.util.List;

/** See {@link VesselFormula#handbookDiaphragm}. */
record HandbookDiaphragm(VesselFormula.NetExpansion growth, double fillAbsolute, double highestAbsolute)
        implements VesselFormula {

    static final double LOWEST = 1e4;
    static final double HIGHEST = 5e6;

    HandbookDiaphragm {
        Ranges.check("P1", fillAbsolute, " Pa", LOWEST, HIGHEST);
        Ranges.check("P2", highestAbsolute, " Pa", LOWEST, HIGHEST);
        Ranges.rising("P1", fillAbsolute, "P2", highestAbsolute);
    }

    @Override
    public VesselFormula.Result size() {
        List<VesselFormula.Input> inputs = new ArrayList<>(growth.inputs());
        inputs.add(VesselFormula.Input.given("P1", fillAbsolute, "Pa abs", "pressure at the cold fill"));
        inputs.add(VesselFormula.Input.given("P2", highestAbsolute, "Pa abs", "highest pressure allowed"));
        return new VesselFormula.Result(
                "Vt = Vs [(v2/v1 - 1) - 3 a dT]/(1 - P1/P2)",
                growth.volume() / VesselFormula.acceptanceFactor(fillAbsolute, highestAbsolute),
                Pressure.absolute(fillAbsolute, PressureUnit.PASCAL),
                inputs,
                source(13));
    }

    static Citation source(int equation) {
        return new Citation(
                "ASHRAE Handbook, HVAC Systems and Equipment, hydronic heating and cooling, equation " + equation
                        + " (editions 2008 to 2020)",
                Citation.Standing.FROM_MEMORY);
    }
}
