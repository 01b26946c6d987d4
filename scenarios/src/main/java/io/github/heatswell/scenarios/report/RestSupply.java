package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.UncertainField;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What readings at rest say of the supply of a house whose reducing valve is set to nobody knows quite what. */
final class RestSupply {

    /** What an ordinary gauge is off by (Pa), with 95 % confidence: from memory. */
    private static final double GAUGE = PressureUnit.BAR.toSi(0.3);

    /** The ends of what a "plus or minus" stands for, in these. */
    private static final double ENDS = 1.5;

    private RestSupply() {}

    /**
     * The setting of the reducing valve that goes with a reading at rest, where the file knows it less closely and does not speak
     * against it.
     *
     * @param scenario the house as described
     * @param rest the reading (Pa, gauge); empty if there is none
     * @param shown in whose units the setting is written
     */
    static List<Change> of(Scenario scenario, OptionalDouble rest, QuantityFormat shown) {
        Optional<ReducingValve> valve = scenario.system().supply().reducingValve();
        Optional<UncertainField> set = scenario.uncertain().stream()
                .filter(field -> field.field().equals(NamedValue.REDUCED.field()))
                .findFirst();
        if (rest.isEmpty() || valve.isEmpty() || set.isEmpty()) {
            return List.of();
        }
        double found = rest.getAsDouble() - valve.get().lockUpRise();
        double off = found - valve.get().set().gauge(scenario.system().site().atmosphere());
        double known = (QuantityReader.pressure(set.get().high()).value()
                        - QuantityReader.pressure(set.get().low()).value())
                / 2;
        PressureUnit unit = shown.units().pressure();
        return known > ENDS * GAUGE && Math.abs(off) <= known
                ? List.of(new Change(
                        NamedValue.REDUCED.field(),
                        shown.pressure(found) + " +- " + Decimals.significant(unit.fromSi(GAUGE), 1) + " "
                                + unit.symbol()))
                : List.of();
    }
}
