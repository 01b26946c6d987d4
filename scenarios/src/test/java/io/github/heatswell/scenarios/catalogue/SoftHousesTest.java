package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Regression: the amount discharged was said to hardly depend on stretch and air in a house where they change it by a third. */
class SoftHousesTest {

    @Test
    void whatIsSaidOfTheAmountHoldsInTheStiffestAndTheSoftestHouse() {
        int looked = 0;
        for (String name : Catalogue.names()) {
            HotWaterSystem house = Catalogue.read(name).system();
            RunSummary run = Simulation.of(house, Duration.ofHours(12)).summary();
            String said = Narrative.of(run).remarks().stream()
                    .map(remark -> remark.text(UnitSystem.SI))
                    .filter(remark -> remark.contains("how fast the pressure rises is uncertain"))
                    .findFirst()
                    .orElse("");
            boolean alike = said.contains("barely changes");
            if (!alike && !said.contains("the less it discharges in the first heat-up")) {
                continue;
            }
            looked++;
            double most = discharged(changed(house, -0.3, 0, -0.3));
            double least = discharged(changed(house, 0.3, 0.002, 1));
            double differs = 1 - least / most;
            assertEquals(alike, differs < 0.15, name + ": " + differs + " " + said);
        }
        assertTrue(looked > 5, looked + " houses looked at");
    }

    private static HotWaterSystem changed(HotWaterSystem house, double stretch, double air, double pipes) {
        HotWaterSystem.Builder changed = house.toBuilder();
        NamedValue.COMPLIANCE.raise(changed, stretch);
        NamedValue.TANK_AIR.raise(changed, air);
        NamedValue.PLASTIC_PIPE.raise(changed, pipes);
        return changed.build();
    }

    /** What the house discharges (m3) until its heater first goes off. */
    private static double discharged(HotWaterSystem house) {
        double off = Simulation.of(house, Duration.ofHours(12))
                .summary()
                .first(Event.Kind.HEATER_OFF)
                .map(Event::time)
                .orElse(43_200.0);
        return Simulation.of(house, Duration.ofMillis(Math.round(1000 * off)))
                .summary()
                .totals()
                .relieved();
    }
}
