package io.github.heatswell.ageing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The years with one vessel and one rate of precharge loss.
 *
 * @param vesselVolume the volume of the vessel (m3)
 * @param loss its loss of precharge
 * @param months month after month, whole years of them
 */
public record OutlookCourse(double vesselVolume, PrechargeLoss loss, List<OutlookMonth> months) {

    /**
     * Copies the months.
     *
     * @param vesselVolume the volume of the vessel (m3)
     * @param loss its loss of precharge
     * @param months month after month, whole years of them
     */
    public OutlookCourse {
        Objects.requireNonNull(loss, "loss");
        months = List.copyOf(Objects.requireNonNull(months, "months"));
    }

    /**
     * The first month in which a relief valve discharges.
     *
     * @return the month, or empty if all stay shut all the years
     */
    public Optional<OutlookMonth> firstDripping() {
        return months.stream().filter(OutlookMonth::drips).findFirst();
    }

    /**
     * The first dripping month after a whole dry year: an overcharged vessel drips at first, stops as it loses
     * precharge, and drips again once it has lost too much.
     *
     * @return the month, or empty if there is no dry year after dripping, or no dripping after it
     */
    public Optional<OutlookMonth> drippingAgain() {
        int dry = 0;
        boolean dripped = false;
        for (OutlookMonth month : months) {
            if (month.drips()) {
                if (dripped && dry >= OutlookMonth.MONTHS_OF_YEAR) {
                    return Optional.of(month);
                }
                dripped = true;
                dry = 0;
            } else {
                dry++;
            }
        }
        return Optional.empty();
    }

    /**
     * The first month whose worst day ends in a hazard, or, if none does, the first in which the tank's working pressure is
     * exceeded.
     *
     * @return the month, or empty if there is neither
     */
    public Optional<OutlookMonth> gravest() {
        return months.stream()
                .filter(OutlookMonth::isHazard)
                .findFirst()
                .or(() -> months.stream()
                        .filter(month -> month.alarm().isPresent())
                        .findFirst());
    }

    /**
     * Discharge of the relief valves in one of the years, if every day were like the worst of its month.
     *
     * @param year the year, counted from 0
     * @return the volume (m3), 0 or more
     */
    public double relievedInYear(int year) {
        double sum = 0;
        for (OutlookMonth month : months) {
            sum += month.year() == year ? month.relieved() : 0;
        }
        return sum;
    }

    /**
     * The highest pressure in one of the years.
     *
     * @param year the year, counted from 0, below the number of years
     * @return the pressure (Pa, gauge)
     */
    public double highestInYear(int year) {
        double highest = Double.NEGATIVE_INFINITY;
        for (OutlookMonth month : months) {
            highest = month.year() == year ? Math.max(highest, month.peakGauge()) : highest;
        }
        return highest;
    }

    /**
     * Discharge of the relief valves in all the years.
     *
     * @return the volume (m3), 0 or more
     */
    public double relieved() {
        double sum = 0;
        for (OutlookMonth month : months) {
            sum += month.relieved();
        }
        return sum;
    }
}
