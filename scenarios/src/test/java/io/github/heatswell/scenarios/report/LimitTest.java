package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Limit;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The limits a report states are those the simulation acts on. */
class LimitTest {

    /** Also of a valve far above the tank under a column of warm water, which weighs less than one of cold water. */
    @ParameterizedTest
    @CsvSource({"-20 m, 9 degC", "0 m, 9 degC", "25 m, 9 degC", "25 m, 30 degC"})
    void theReliefSetPressureIsThatAtWhichTheValveOpens(String height, String water) {
        RunResult run = Catalogue.read("orchard-lodge")
                .with(List.of(Change.of("relief[0].height=" + height), Change.of("supply.water=" + water)))
                .simulation()
                .run();
        Event opened = run.first(Event.Kind.RELIEF_OPENED).orElseThrow();
        Limit limit = Limit.reliefSet(run.summary()).orElseThrow();
        // the event is located to a nanosecond, in which the pressure rises by less than a thousandth of a pascal
        assertEquals(run.gauge(opened.pressureAbsolute()), limit.gauge(), 1e-3);
        assertTrue(limit.reached() && !limit.passed(), limit.toString());
    }

    /** A check that ends at a valve set to the tank's working pressure does not pass it, nor does the run. */
    @Test
    void roundingPassesNoLimit(@TempDir Path folder) throws IOException {
        assertFalse(Limit.passes(7e5 + 0.5, 7e5));
        assertTrue(Limit.passes(7e5 + 2, 7e5));
        Scenario scenario = Catalogue.read("orchard-lodge").with(List.of(Change.of("tank.working-pressure=7 bar")));
        ResultFolder.at(folder).write(Results.of(scenario, scenario.simulation().run(), UnitSystem.SI));
        String page = Files.readString(folder.resolve("report.html"));
        assertTrue(page.contains("the pressure did not go above the working pressure"), page);
        assertFalse(page.contains("above the tank&#39;s working pressure is expected"), page);
    }

    /** Regression: no page says that a limit was kept which its headline says was passed. */
    @Test
    void aPageDoesNotCallAPassedLimitKept(@TempDir Path folder) throws IOException {
        Scenario ridge = Catalogue.read("ridge-house").with(List.of(Change.of("relief[0].opens=155psi")));
        ResultFolder.at(folder).write(Results.of(ridge, ridge.simulation().run(), UnitSystem.US));
        String page = Files.readString(folder.resolve("report.html"));
        assertTrue(page.contains("The simulation found no hazard. This is true of the model"), page);
        assertFalse(page.contains("did not go above the working pressure"), page);
        Scenario cottage = Catalogue.read("tannery-yard");
        ResultFolder.at(folder).write(Results.of(cottage, cottage.simulation().run(), UnitSystem.SI));
        assertTrue(Files.readString(folder.resolve("report.html"))
                .contains("did not go above the working pressure assumed for the tank"));
    }

    /** Regression: a valve that never opens limits nothing, also where it is set lowest. */
    @Test
    void aBlockedValveIsNoLimit() {
        RunResult run = Catalogue.read("orchard-lodge")
                .with(List.of(Change.of("relief[0].fault=blocked")))
                .simulation()
                .run();
        assertTrue(Limit.reliefSet(run.summary()).isEmpty());
        assertTrue(RunRows.of(RunFindings.of(run), false, QuantityFormat.ascii(UnitSystem.SI))
                .rows()
                .contains(List.of("Relief set", "none", "no relief valve works")));
    }
}
