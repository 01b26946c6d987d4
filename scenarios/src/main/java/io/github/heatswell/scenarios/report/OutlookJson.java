package io.github.heatswell.scenarios.report;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Outlook for other programs: {@code outlook.json}. */
final class OutlookJson {

    private OutlookJson() {}

    static Json of(OutlookAnswer answer) {
        OutlookResult result = answer.result();
        return new Json()
                .with("gravest_alarm", result.gravest().flatMap(OutlookCourse.Month::alarm))
                .program(answer.scenario().name())
                .with("years", result.years())
                .with("street_swing_pa", answer.mainsSwing())
                .with("usual_uncertainties", answer.house().usual())
                .with(
                        "fading_per_year",
                        new Json()
                                .with("expected", answer.fading().expected().yearly())
                                .with("slow", answer.fading().slow().yearly())
                                .with("fast", answer.fading().fast().yearly()))
                .balances(result.balances())
                .with("dripping_begins", onset(result.onset()))
                .with(
                        "charge",
                        new Json()
                                .known("lowest_gauge_pa", result.limit().lowestGauge())
                                .known(
                                        "keeps_limit_from_gauge_pa",
                                        answer.yardstick()
                                                .map(Yardstick::leastPrechargeGauge)
                                                .orElse(OptionalDouble.empty()))
                                .known("recharge_below_gauge_pa", result.limit().rechargeBelowGauge())
                                .known("pump_to_gauge_pa", result.limit().pumpToGauge())
                                .known("recharge_after_years", result.limit().rechargeAfter())
                                .known("check_every_years", result.checkEvery()))
                .with("courses", courses(answer))
                .findings(
                        Findings.of(
                                answer.scenario().system(), answer.scenario().doubts()),
                        answer.scenario().units());
    }

    private static Json onset(OutlookResult.DripOnset onset) {
        return new Json()
                .with("samples", onset.withinYears().of())
                .with("within_years", onset.withinYears().count())
                .known("early_years", onset.early())
                .known("middle_years", onset.middle())
                .known("late_years", onset.late());
    }

    private static List<Json> courses(OutlookAnswer answer) {
        OutlookResult result = answer.result();
        List<Json> courses = new ArrayList<>();
        courses.add(course("expected", result.expected(), answer));
        courses.add(course("slow", result.slow(), answer));
        courses.add(course("fast", result.fast(), answer));
        result.larger().forEach(larger -> courses.add(course("larger", larger, answer)));
        return courses;
    }

    private static Json course(String kind, OutlookCourse course, OutlookAnswer answer) {
        return new Json()
                .with("kind", kind)
                .with("vessel_m3", course.vesselVolume())
                .with("relieved_m3", course.relieved())
                .with("price", answer.cost(course))
                .with("currency", answer.scenario().costs().currency())
                .with("price_invented", answer.scenario().costs().waterInvented())
                .each(
                        "months",
                        course.months(),
                        month -> new Json()
                                .with("month", month.number() + 1L)
                                .with("years", month.years())
                                .with("day_of_year", month.dayOfYear())
                                .with("precharge_gauge_pa", month.prechargeGauge())
                                .with("peak_gauge_pa", month.peakGauge())
                                .with("relieved_daily_m3", month.relievedDaily())
                                .with("alarm", month.alarm()));
    }
}
