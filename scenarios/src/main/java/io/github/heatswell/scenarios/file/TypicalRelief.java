package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Locale;
import java.util.Optional;

/** The usual pressures of a relief valve, from its set pressure. */
final class TypicalRelief {

    /** How far below its opening temperature a combined valve closes again (K). */
    private static final double TEMPERATURE_BLOWDOWN = 11;

    private TypicalRelief() {}

    /** A share of the set pressure, in the unit it is written in; of a gauge pressure only, since air is no part of it. */
    static Optional<String> share(String opens, double share) {
        Pressure set = QuantityReader.pressure(opens);
        if (set.reference() == Pressure.Reference.ABSOLUTE) {
            return Optional.empty();
        }
        PressureUnit unit = opens.toLowerCase(Locale.ROOT).contains("psi") ? PressureUnit.PSI : PressureUnit.BAR;
        return Optional.of(Digits.significant(share * unit.fromSi(set.value()), 4) + " " + unit.symbol());
    }

    /** The usual temperature at which a combined valve closes again, in the unit the opening temperature is written in. */
    static Optional<String> reseatsAt(String opensAt) {
        Amount<TemperatureUnit> opens = QuantityReader.read(opensAt, Kind.TEMPERATURE);
        TemperatureUnit unit = opens.unit();
        return Optional.of(Digits.significant(unit.fromSi(unit.toSi(opens.value()) - TEMPERATURE_BLOWDOWN), 4) + " "
                + unit.symbol());
    }
}
