package io.github.heatswell.sizing;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.ArrayList;
import java.util.List;

/** See {@link VesselFormula#handbookAirInterface}. */
record HandbookAirInterface(
        VesselFormula.NetExpansion growth, double atmosphere, double fillAbsolute, double highestAbsolute)
        implements VesselFormula {

    HandbookAirInterface {
        Ranges.check("P1", fillAbsolute, " Pa", HandbookDiaphragm.LOWEST, HandbookDiaphragm.HIGHEST);
        Ranges.check("P2", highestAbsolute, " Pa", HandbookDiaphragm.LOWEST, HandbookDiaphragm.HIGHEST);
        Ranges.check("Pa", atmosphere, " Pa", HandbookDiaphragm.LOWEST, fillAbsolute);
        Ranges.rising("P1", fillAbsolute, "P2", highestAbsolute);
    }

    @Override
    public VesselFormula.Result size() {
        List<VesselFormula.Input> inputs = new ArrayList<>(growth.inputs());
        inputs.add(VesselFormula.Input.given("Pa", atmosphere, "Pa abs", "air pressure when the tank is filled"));
        inputs.add(VesselFormula.Input.given("P1", fillAbsolute, "Pa abs", "pressure at the cold fill"));
        inputs.add(VesselFormula.Input.given("P2", highestAbsolute, "Pa abs", "highest pressure allowed"));
        return new VesselFormula.Result(
                "Vt = Vs [(v2/v1 - 1) - 3 a dT]/(Pa/P1 - Pa/P2)",
                growth.volume() / (atmosphere / fillAbsolute - atmosphere / highestAbsolute),
                Pressure.absolute(atmosphere, PressureUnit.PASCAL),
                inputs,
                HandbookDiaphragm.source(12));
    }
}
