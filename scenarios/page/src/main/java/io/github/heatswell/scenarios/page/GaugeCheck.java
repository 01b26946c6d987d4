package io.github.heatswell.scenarios.page;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;

/** How an owner checks the house with a gauge, and what it should read. */
final class GaugeCheck {

    private static final int SAMPLES = 128;

    private final Scenario scenario;
    private final QuantityFormat format;

    private GaugeCheck(Scenario scenario) {
        this.scenario = scenario;
        format = QuantityFormat.unicode(scenario.units());
    }

    /** The {@code steps}, the {@code readings} with what agrees with them (Pa, gauge) and {@code remarks}; or why there are none, {@code refused}. */
    static Values values(Scenario scenario) {
        return new GaugeCheck(scenario).values();
    }

    private Values values() {
        List<Finding> findings = Findings.of(scenario.simulation().summary(), scenario.doubts());
        Optional<Statement> forbidden = Narrative.heatingForbidden(findings);
        if (forbidden.isPresent()) {
            return refused(forbidden.get());
        }
        CheckProcedure procedure = CheckProcedure.of(scenario.system());
        CheckSheet sheet = procedure.simulate(scenario.system());
        return sheet.hazard()
                .map(hazard -> refused(Narrative.checkEndsIn(hazard)))
                .orElseGet(() -> values(procedure, sheet));
    }

    private Values refused(Statement why) {
        return new Values().with("refused", scenario.units().spelled(why.text(format)));
    }

    private Values values(CheckProcedure procedure, CheckSheet sheet) {
        VariedHouse varied =
                VariedHouse.of(scenario).withAssumedReseats(scenario).withUnreadLockUp(scenario);
        StudyResult samples = UncertainCheck.study(
                        procedure,
                        varied.inputs().stream().map(VariedHouse.Input::input).toList(),
                        varied.house())
                .samples(SAMPLES)
                .build()
                .run();
        UncertainCheck check = new UncertainCheck(
                sheet, UncertainCheck.gaugeFor(sheet, scenario.system(), samples, scenario.units()), samples);
        boolean reseatAssumed =
                varied.inputs().stream().anyMatch(input -> input.name().equals(VariedHouse.ASSUMED_RESEAT));
        return new Values()
                .texts(
                        "steps",
                        procedure.steps(format).stream()
                                .map(scenario.units()::spelled)
                                .toList())
                .each("readings", check.readings(), GaugeCheck::reading)
                .texts(
                        "remarks",
                        Narrative.remarks(check, scenario.system(), reseatAssumed).stream()
                                .map(remark -> remark.text(format))
                                .toList());
    }

    private static Values reading(UncertainCheck.ToleratedReading tolerated) {
        return new Values()
                .with("kind", tolerated.reading().kind().name())
                .with("when", tolerated.reading().when())
                .with("expected", tolerated.reading().expectedGauge())
                .with("low", tolerated.lowest())
                .with("high", tolerated.highest());
    }
}
