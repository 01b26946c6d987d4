package io.github.heatswell.scenarios.example;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.study.HouseDay;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;

/** The example of the page about scenarios, word for word between the marks. */
final class AnswersExample {

    private AnswersExample() {}

    /**
     * What the example finds.
     *
     * @param warnings what is wrong, in words
     * @param sizing which vessel
     * @param map the peaks around it
     * @param spread how sure the peak is
     * @param sheet what the gauge should read
     */
    record Found(List<String> warnings, SizingResult sizing, PeakMap map, StudyResult spread, CheckSheet sheet) {}

    static Found answers(HotWaterSystem house, ExpansionVessel vessel) {
        // answers: begin
        RunResult run = Simulation.of(house, Duration.ofHours(4)).run();
        List<String> warnings = Findings.of(run.summary()).stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(Finding::sentence)
                .map(sentence -> sentence.text(UnitSystem.US))
                .toList();

        SizingTarget target = SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(10, PressureUnit.BAR))
                .build();
        SizingResult sizing = VesselSizing.builder(house, target)
                .precharge(VesselSizing.Precharge.STATIC)
                .vesselLike(vessel)
                .build()
                .size();
        PeakMap map = PeakSurvey.builder(house).vesselLike(vessel).build().map();

        UncertainHouse unsure = UncertainHouse.usual(house);
        StudyResult spread = Study.builder()
                .inputs(unsure.inputs())
                .outputs(HouseDay.outputs())
                .model(HouseDay.of(unsure::moved, Duration.ofHours(4)))
                .build()
                .run();
        CheckSheet sheet = CheckProcedure.of(house).simulate(house);
        // answers: end
        return new Found(warnings, sizing, map, spread, sheet);
    }
}
