package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Quantity;
import io.github.heatswell.system.Site;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** Gives some pressures against vacuum instead of against the air. */
final class Absolutes {

    private static final double ROOM = 293.15;

    private final Chance chance;

    Absolutes(Chance chance) {
        this.chance = chance;
    }

    void put(Keyed file) {
        double atmosphere = atmosphere(file.keyed("site"));
        turn(file.keyed("supply"), "pressure", "supply.pressure", atmosphere);
        for (Keyed entry : file.items("leaks")) {
            turn(entry, "at", "leaks[].at", atmosphere);
        }
        Keyed vessel = file.keyed("vessel");
        if (vessel.si("precharge", 0) < 0.99 * file.keyed("tank").si("working-pressure", 0)) {
            turn(vessel, "precharge", "vessel.precharge", atmosphere);
        }
    }

    private static double atmosphere(Keyed site) {
        return Site.builder()
                .altitude(site.si("altitude", 0), LengthUnit.METRE)
                .room(site.si("room", ROOM), TemperatureUnit.KELVIN)
                .build()
                .atmosphere();
    }

    private void turn(Keyed part, String key, String path, double atmosphere) {
        if (part.quantity(key).isEmpty() || !chance.with(0.08)) {
            return;
        }
        Quantity gauge = part.quantity(key).get();
        Unit unit = gauge.unit();
        BigDecimal number =
                BigDecimal.valueOf(unit.fromSi(gauge.si() + atmosphere)).round(new MathContext(6));
        Quantity absolute = new Quantity(number, unit, " abs");
        if (Format.single(path).range().orElseThrow().contains(absolute.si()) && absolute.si() > atmosphere) {
            part.put(key, absolute);
        }
    }
}
