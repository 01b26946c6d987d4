package io.github.heatswell.charts;

import io.github.heatswell.ageing.OutlookMonth;
import io.github.heatswell.ageing.OutlookResult;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Between what the peak of each month lies if the charge fades at some rate from the slowest to the fastest. With too much
 * charge at first the peak falls before it rises, so it may be lowest or highest at a rate between the two. Therefore it is
 * looked up over every charge between theirs: the worst days of the same month in all years and courses differ in nothing
 * else.
 */
final class FadingRange {

    private final List<Double> low = new ArrayList<>();
    private final List<Double> high = new ArrayList<>();

    FadingRange(OutlookResult result) {
        List<OutlookMonth> known = Stream.of(result.expected(), result.slow(), result.fast())
                .flatMap(course -> course.months().stream())
                .toList();
        for (int i = 0; i < result.expected().months().size(); i++) {
            add(result.fast().months().get(i), result.slow().months().get(i), known);
        }
    }

    private void add(OutlookMonth fast, OutlookMonth slow, List<OutlookMonth> known) {
        double lowest = Math.min(fast.peakGauge(), slow.peakGauge());
        double highest = Math.max(fast.peakGauge(), slow.peakGauge());
        for (OutlookMonth month : known) {
            if (month.dayOfYear() == fast.dayOfYear()
                    && month.prechargeGauge() >= fast.prechargeGauge()
                    && month.prechargeGauge() <= slow.prechargeGauge()) {
                lowest = Math.min(lowest, month.peakGauge());
                highest = Math.max(highest, month.peakGauge());
            }
        }
        low.add(lowest);
        high.add(highest);
    }

    /** The lowest peak of each month (Pa, gauge). */
    List<Double> low() {
        return List.copyOf(low);
    }

    /** The highest peak of each month (Pa, gauge). */
    List<Double> high() {
        return List.copyOf(high);
    }
}
