package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Locale;
import java.util.Optional;

/** The usual pressures of a relief valve, from its set pressure. */
final class TypicalRelief {

    /** How far below its opening temperature a combined valve closes again (K). */
    private static final double TEMPERATURE_BLOWDOWN = 11;

    /** The lowest temperature (K) at which a combined valve may close again. */
    private static final double MIN_RESEATS_AT = 313.15;
    /** The highest pressure of full lift (Pa, gauge). */
    private static final double MAX_FULL_LIFT = 27.5e5;

    private TypicalRelief() {}

    /** A share of the set pressure, in the unit it is written in; of a gauge pressure only, since air is no part of it. */
    static Optional<String> share(String setPressure, double share) {
        Pressure set = QuantityReader.pressure(setPressure);
        if (set.reference() == Pressure.Reference.ABSOLUTE) {
            return Optional.empty();
        }
        PressureUnit unit = setPressure.toLowerCase(Locale.ROOT).contains("psi") ? PressureUnit.PSI : PressureUnit.BAR;
        double part = Math.min(share * set.value(), MAX_FULL_LIFT);
        String rounded = Decimals.significant(unit.fromSi(part), 4);
        boolean beyond = unit.toSi(Double.parseDouble(rounded)) > MAX_FULL_LIFT;
        return Optional.of((beyond ? Decimals.significant(unit.fromSi(part), 12) : rounded) + " " + unit.symbol());
    }

    /** The usual temperature at which a combined valve closes again, in the unit the opening temperature is written in. */
    static Optional<String> reseatsAt(String opensAt) {
        Amount<TemperatureUnit> setPressure = QuantityReader.read(opensAt, Kind.TEMPERATURE);
        TemperatureUnit unit = setPressure.unit();
        double reseatPressure = Math.max(MIN_RESEATS_AT, unit.toSi(setPressure.value()) - TEMPERATURE_BLOWDOWN);
        return Optional.of(Decimals.significant(unit.fromSi(reseatPressure), 5) + " " + unit.symbol());
    }
}
