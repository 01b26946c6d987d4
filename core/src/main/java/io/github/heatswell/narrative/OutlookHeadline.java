package io.github.heatswell.narrative;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookMonth;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.units.QuantityFormat;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the years will do, in the words that stand above their picture. */
public final class OutlookHeadline {

    private final OutlookResult result;
    private final QuantityFormat amounts;

    public OutlookHeadline(OutlookResult result, QuantityFormat amounts) {
        this.result = result;
        this.amounts = amounts;
    }

    /** When the valve begins to drip, as expected. */
    public String sentence() {
        OutlookCourse course = result.expected();
        Optional<OutlookMonth> hazard = course.gravest().filter(OutlookMonth::isHazard);
        if (hazard.isPresent()) {
            return "At the expected loss: "
                    + hazard.get().alarm().orElseThrow().description() + " in " + when(hazard.get());
        }
        Optional<OutlookMonth> first = course.firstDripping();
        if (first.isEmpty()) {
            return "No relief valve drips in " + years() + " of precharge loss" + early(result.years());
        }
        if (first.get().number() > 0) {
            return "A relief valve drips from " + when(first.get()) + ", once the charge is down to "
                    + amounts.pressure(first.get().prechargeGauge())
                    + early(first.get().year());
        }
        return course.drippingAgain()
                .map(again -> "Too much charge makes a relief valve drip now, too little from " + when(again))
                .orElse("A relief valve drips with today's precharge; loss of precharge is not the cause");
    }

    /** By when it drips in one of twenty houses that differ as this one is uncertain, if that is in an earlier year. */
    private String early(int beforeYear) {
        OptionalDouble early = result.onset().early();
        if (early.isEmpty() || (int) early.getAsDouble() >= beforeYear) {
            return "";
        }
        return "; in one house of twenty already in year " + ((int) early.getAsDouble() + 1);
    }

    /** The worst that happens with the present vessel, if the run of some day ends in it. */
    public String hazard() {
        return result.gravest()
                .filter(OutlookMonth::isHazard)
                .map(month -> "Hazard: " + month.alarm().orElseThrow().description() + " on the worst day of "
                        + when(month) + fading(month) + ". What follows is not modelled.")
                .orElse("");
    }

    /** By which fading a month has come, if it is not the expected one. */
    public String fading(OutlookMonth month) {
        if (result.expected().months().contains(month)) {
            return "";
        }
        return result.fast().months().contains(month) ? ", at the fastest loss" : ", at the slowest loss";
    }

    /** The vessel and its loss of precharge. */
    public String facts() {
        OutlookCourse course = result.expected();
        String rates = result.slow().loss().equals(result.fast().loss())
                ? ""
                : " (band: " + percent(result.slow()) + " to " + percent(result.fast()) + ")";
        return amounts.volume(course.vesselVolume()) + " vessel, charged to "
                + amounts.pressure(course.months().get(0).prechargeGauge()) + ", losing " + percent(course)
                + " of its gauge pressure a year" + rates + ". Each point is the worst day of its month.";
    }

    /** A month by its name and its year from now. */
    public static String when(OutlookMonth month) {
        return Moments.monthOf(month.dayOfYear()) + " of year " + (month.year() + 1);
    }

    private String percent(OutlookCourse course) {
        return amounts.share(course.loss().yearly());
    }

    private String years() {
        return result.years() == 1 ? "a year" : result.years() + " years";
    }
}
