package io.github.heatswell.scenarios.report;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.OptionalDouble;

/** Outlook for other programs: {@code outlook.json}. */
final class OutlookJson {

    private final OutlookAnswer answer;
    private final OutlookResult result;
    private final Json json;

    private OutlookJson(OutlookAnswer answer, Json json) {
        this.answer = answer;
        this.result = answer.result();
        this.json = json;
    }

    static void write(OutlookAnswer answer, OutputStream out) throws IOException {
        try (Json json = new Json(out)) {
            new OutlookJson(answer, json).write();
        }
    }

    private void write() throws IOException {
        json.object(() -> {
            alarm(
                    "gravest_alarm",
                    result.gravest()
                            .flatMap(OutlookCourse.Month::alarm)
                            .map(Enum::name)
                            .orElse(""));
            json.text("scenario", answer.scenario().name()).text("heatswell_version", Version.number());
            json.count("years", result.years())
                    .number("street_swing_pa", answer.mainsSwing())
                    .flag("usual_uncertainties", answer.house().usual());
            json.object(
                    "fading_per_year",
                    () -> json.number("expected", answer.fading().expected().yearly())
                            .number("slow", answer.fading().slow().yearly())
                            .number("fast", answer.fading().fast().yearly()));
            OpenBalance.write(result.balances(), json);
            onset(result.onset());
            json.object("charge", this::charge);
            json.array("courses", this::courses);
            FindingsJson.write(
                    Findings.of(answer.scenario().system(), answer.scenario().doubts()), json);
        });
    }

    private void onset(OutlookResult.DripOnset onset) throws IOException {
        json.object("dripping_begins", () -> {
            json.count("samples", onset.withinYears().of())
                    .count("within_years", onset.withinYears().count());
            number("early_years", onset.early());
            number("middle_years", onset.middle());
            number("late_years", onset.late());
        });
    }

    private void charge() throws IOException {
        number("lowest_gauge_pa", result.limit().lowestGauge());
        number("recharge_below_gauge_pa", result.limit().rechargeBelowGauge());
        number("pump_to_gauge_pa", result.limit().pumpToGauge());
        number("recharge_after_years", result.limit().rechargeAfter());
        number("check_every_years", result.checkEvery());
    }

    private void courses() throws IOException {
        course("expected", result.expected());
        course("slow", result.slow());
        course("fast", result.fast());
        for (OutlookCourse larger : result.larger()) {
            course("larger", larger);
        }
    }

    private void course(String kind, OutlookCourse course) throws IOException {
        json.object(() -> {
            json.text("kind", kind).number("vessel_m3", course.vesselVolume());
            json.number("relieved_m3", course.relieved())
                    .number("price", answer.cost(course))
                    .text("currency", answer.scenario().costs().currency())
                    .flag("price_invented", answer.scenario().costs().waterInvented());
            json.array("months", () -> {
                for (OutlookCourse.Month month : course.months()) {
                    json.object(() -> month(month));
                }
            });
        });
    }

    private void month(OutlookCourse.Month month) throws IOException {
        json.count("month", month.number() + 1L)
                .number("years", month.years())
                .count("day_of_year", month.dayOfYear())
                .number("precharge_gauge_pa", month.prechargeGauge())
                .number("peak_gauge_pa", month.peakGauge())
                .number("relieved_daily_m3", month.relievedDaily());
        alarm("alarm", month.alarm().map(Enum::name).orElse(""));
    }

    private void alarm(String name, String kind) throws IOException {
        if (kind.isEmpty()) {
            json.nothing(name);
        } else {
            json.text(name, kind.toLowerCase(Locale.ROOT));
        }
    }

    /** What is not known, or never happens, is null. */
    private void number(String name, OptionalDouble value) throws IOException {
        if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
            json.number(name, value.getAsDouble());
        } else {
            json.nothing(name);
        }
    }
}
