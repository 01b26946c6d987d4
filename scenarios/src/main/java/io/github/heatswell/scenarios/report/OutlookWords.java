package io.github.heatswell.scenarios.report;

import io.github.heatswell.ageing.ChargeLimit;
import io.github.heatswell.ageing.DripOnset;
import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookMonth;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.ageing.PrechargeLossRange;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sentences about the years ahead, shared by the reports. */
final class OutlookWords {

    private static final int MONTHS = OutlookMonth.MONTHS_OF_YEAR;
    private static final int ANY_COMMON_YEAR = 2001;
    private static final double PERCENT = 100;

    private final OutlookAnswer answer;
    private final OutlookResult result;
    private final QuantityFormat shown;

    OutlookWords(OutlookAnswer answer, QuantityFormat shown) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = shown;
    }

    /** The worst that happens in any of the courses of the present vessel, or nothing. */
    Optional<String> alarm() {
        return result.gravest()
                .map(month -> month.alarm().orElseThrow().description() + " on the worst day of " + month(month)
                        + fading(month) + ", with " + shown.pressure(month.prechargeGauge()) + " of precharge left. "
                        + meaning(month.alarm().orElseThrow()));
    }

    private String meaning(EventKind alarm) {
        boolean assumed = !answer.scenario().system().tank().workingPressureGiven();
        return alarm == EventKind.WORKING_PRESSURE_EXCEEDED && assumed
                ? "That pressure is assumed: read the tank's plate."
                : alarm.meaning();
    }

    /** By which fading a month comes to what it comes to, if not by the expected one. */
    private String fading(OutlookMonth month) {
        if (result.expected().months().contains(month)) {
            return "";
        }
        return result.fast().months().contains(month) ? ", at the fastest loss" : ", at the slowest loss";
    }

    /** Whether the worst that happens is a hazard and not only a limit passed. */
    boolean isHazard() {
        return result.gravest().filter(OutlookMonth::isHazard).isPresent();
    }

    /** When dripping begins, by the expected course. */
    String headline() {
        OutlookCourse course = result.expected();
        Optional<OutlookMonth> hazard = course.gravest().filter(OutlookMonth::isHazard);
        if (hazard.isPresent()) {
            return "At the expected loss of precharge, the worst day of " + month(hazard.get())
                    + " ends in a hazard: " + hazard.get().alarm().orElseThrow().description() + ".";
        }
        Optional<OutlookMonth> first = course.firstDripping();
        if (first.isEmpty()) {
            return "At the expected loss of precharge, no relief valve drips within " + years(result.years()) + ".";
        }
        if (first.get().number() > 0) {
            return "At the expected loss of precharge, a relief valve begins to drip in " + month(first.get())
                    + ", with " + shown.pressure(first.get().prechargeGauge()) + " of precharge left.";
        }
        return course.drippingAgain()
                .map(again ->
                        "A relief valve drips from the start, stops when the vessel has lost some precharge, and"
                                + " drips again from "
                                + month(again) + ": the precharge is too high now, and too low later.")
                .orElse("A relief valve drips already with today's precharge, on the worst day of the first month:"
                        + " it is not the loss of precharge that makes it drip.");
    }

    /** How sure that is. */
    String interval() {
        DripOnset onset = result.onset();
        if (answer.scenario().system().reliefValves().stream().noneMatch(ReliefValve::relieves)) {
            return "There is no working relief valve that could drip, and none that could save the tank.";
        }
        String sampled = "Of " + onset.withinYears().of() + " simulated houses within the uncertainties, ";
        if (onset.withinYears().count() == 0) {
            return sampled + "none drips within " + years(result.years()) + ".";
        }
        int percent = (int) Math.round(PERCENT * onset.withinYears().value());
        return sampled + percent + " % start to drip within " + years(result.years()) + ": "
                + by("one in twenty", onset.early()) + ", " + by("half", onset.middle()) + ", "
                + last(onset.late()) + ".";
    }

    private String last(OptionalDouble time) {
        return time.isEmpty() ? "more than one in twenty not by then" : by("all but one in twenty", time);
    }

    private String by(String share, OptionalDouble time) {
        if (time.isEmpty()) {
            return share + " later than that";
        }
        return share + (time.getAsDouble() * MONTHS < 1 ? " at once" : " by " + after(time.getAsDouble()));
    }

    /** When to check and when to pump. */
    String care() {
        ChargeLimit limit = result.limit();
        PrechargeTarget target = PrechargeTarget.of(answer.scenario().system()).orElseThrow();
        if (!target.isAllowed()) {
            return "Do not pump it up to the " + shown.pressure(target.pumpToGauge())
                    + " the supply stands at there: the vessel or the tank is made for "
                    + shown.pressure(target.mostGauge())
                    + " only. Have the supply pressure lowered by a reducing valve first,"
                    + " then the charge set to match it.";
        }
        if (limit.rechargeBelowGauge().isEmpty()) {
            return "Pumping at intervals does not help here: first find the vessel and charge that do ('heatswell size'"
                    + " proposes them).";
        }
        String check =
                "Check the charge every " + interval(result.checkEvery().orElseThrow()) + ", with the vessel drained.";
        double after = limit.rechargeAfter().getAsDouble();
        double lowest = limit.lowestGauge().getAsDouble();
        String pump = " Pump it up to " + shown.pressure(limit.pumpToGauge().getAsDouble())
                + " when it reads less than "
                + shown.pressure(limit.rechargeBelowGauge().getAsDouble())
                + (after == 0 ? ", as it does now" : "")
                + (after > 0 && after <= result.years() ? ", which is expected after " + after(after) : "") + ".";
        if (lowest == 0) {
            return check + pump + " Even without any charge the worst day stays dry.";
        }
        return check + pump + " Below " + shown.pressure(lowest)
                + (result.gravest().isPresent()
                        ? " the worst day is no longer dry and within the tank's working pressure."
                        : " the valve drips on the worst day.");
    }

    /** On what the fading rests. */
    String basis() {
        PrechargeLossRange fading = answer.fading();
        String rate = fading.slow().equals(fading.fast())
                ? rate(fading.expected()) + " of its gauge pressure a year"
                : rate(fading.expected()) + " of its gauge pressure a year (possible range " + rate(fading.slow())
                        + " to " + rate(fading.fast()) + ")";
        return "The vessel is assumed to lose " + rate + ". "
                + (fading.equals(PrechargeLossRange.usual())
                        ? "The basis is weak: " + PrechargeLoss.SOURCE.text()
                                + ", from memory. Two readings of the drained"
                                + " vessel, a year apart, are better; give their result with --fade."
                        : "This rate was given.");
    }

    /** Where a course begins to drip. */
    String begins(OutlookCourse course) {
        return course.firstDripping().map(this::month).orElse("never");
    }

    /** A month by its name and year. */
    String month(OutlookMonth month) {
        return LocalDate.ofYearDay(ANY_COMMON_YEAR, month.dayOfYear())
                        .getMonth()
                        .getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                + " of year " + (month.year() + 1);
    }

    /** A rate of fading. */
    String rate(PrechargeLoss loss) {
        return shown.share(loss.yearly());
    }

    private static String years(int number) {
        return number == 1 ? "a year" : number + " years";
    }

    /** A time from now, to the month. */
    private static String after(double years) {
        long months = Math.round(years * MONTHS);
        if (months < 2 * MONTHS) {
            return months == 1 ? "a month" : months + " months";
        }
        return Decimals.atMost(years, 1) + " years";
    }

    private static String interval(double years) {
        long months = Math.max(1, (long) Math.floor(years * MONTHS));
        return months >= MONTHS ? "year" : months == 1 ? "month" : months + " months";
    }
}
