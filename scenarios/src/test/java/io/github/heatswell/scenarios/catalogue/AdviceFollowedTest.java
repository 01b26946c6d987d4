package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: whoever does all that the findings on a house ask for gets a house that findings and sizing have nothing against. */
class AdviceFollowedTest {

    private static final Pattern SETTING = Pattern.compile("supply at ([0-9.]+) bar or less with no water running");

    private static final Duration RUN = Duration.ofHours(6);

    @ParameterizedTest
    @ValueSource(strings = {"orchard-lodge-lost-charge", "orchard-lodge-vessel", "orchard-lodge-warm-vessel"})
    void theLowerSupplyHoldsTheLimitOfTheSizing(String name) {
        HotWaterSystem house = Catalogue.read(name).system();
        String advice = text(Findings.of(Simulation.of(house, RUN).run().summary()));
        Matcher setting = SETTING.matcher(advice);
        assertTrue(setting.find(), advice);
        assertTrue(advice.contains("Set the thermostat to 60 °C"), advice);
        HotWaterSystem cured = followed(house, Double.parseDouble(setting.group(1)));
        var run = Simulation.of(cured, RUN).run();
        List<Finding> left = Findings.of(run.summary());
        assertFalse(has(left, "peak-above-code-limit"), text(left));
        assertFalse(has(left, "peak-near-relief"), text(left));
        assertFalse(has(left, "vessel-too-small"), text(left));
        SizingTarget target = SizingTarget.builder(cured)
                .vesselRating(cured.tank().workingPressure())
                .build();
        assertTrue(
                run.peak().value() < target.gauge(),
                run.peak().value() + " Pa is not below the limit of the sizing, " + target.gauge());
        assertEquals(60, CELSIUS.fromSi(run.extremes().highestTemperature().value()), 0.1); // fully heated
    }

    private static HotWaterSystem followed(HotWaterSystem house, double bar) {
        Pressure supply = Pressure.gauge(bar, BAR);
        ExpansionVessel had = house.vessel().orElseThrow();
        ExpansionVessel.Builder charged = had.toBuilder().precharge(supply);
        had.temperature()
                .ifPresent(kelvin -> charged.chargedAt(CELSIUS.fromSi(kelvin), CELSIUS)); // read where it stands
        Heater hotter = house.heater().toBuilder().setPoint(60, CELSIUS).build();
        Supply lower = house.supply().toBuilder().pressure(supply).build();
        return house.toBuilder()
                .supply(lower)
                .heater(hotter)
                .vessel(charged.build())
                .build();
    }

    private static boolean has(List<Finding> found, String id) {
        return found.stream().anyMatch(finding -> finding.id().equals(id));
    }

    private static String text(List<Finding> found) {
        StringBuilder text = new StringBuilder();
        found.forEach(
                finding -> text.append(finding.advice().text(UnitSystem.SI)).append('\n'));
        return text.toString();
    }
}
