package io.github.heatswell.ageing;

import io.github.heatswell.result.Event;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The years with one vessel and one rate of precharge loss.
 *
 * @param vesselVolume the volume of the vessel (m3); of several that work, their joint volume
 * @param loss its loss of precharge
 * @param months month after month, whole years of them
 */
public record OutlookCourse(double vesselVolume, PrechargeLoss loss, List<Month> months) {

    /**
     * Copies the months.
     *
     * @param vesselVolume the volume of the vessel (m3); of several that work, their joint volume
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
    public Optional<Month> firstDripping() {
        return months.stream().filter(Month::drips).findFirst();
    }

    /**
     * The first dripping month after a whole dry year: an overcharged vessel drips at first, stops as it loses
     * precharge, and drips again once it has lost too much.
     *
     * @return the month, or empty if there is no dry year after dripping, or no dripping after it
     */
    public Optional<Month> drippingAgain() {
        int dry = 0;
        boolean dripped = false;
        for (Month month : months) {
            if (month.drips()) {
                if (dripped && dry >= Month.MONTHS_OF_YEAR) {
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
    public Optional<Month> gravest() {
        return months.stream()
                .filter(Month::isHazard)
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
        for (Month month : months) {
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
        for (Month month : months) {
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
        for (Month month : months) {
            sum += month.relieved();
        }
        return sum;
    }

    /**
     * The worst day of a month: that on which the supply is coldest.
     *
     * @param number the month, counted from 0
     * @param years time since the start on that day (years of 365 days), 0 or more
     * @param dayOfYear the day, 1 to 365
     * @param prechargeGauge the precharge left (Pa, gauge), 0 or more; of several vessels, of the first that works
     * @param peakGauge the highest pressure of the run of that day, at the drain cock (Pa, gauge)
     * @param relievedDaily discharge of the relief valves on such a day (m3), 0 or more
     * @param alarm the hazard that ended the run, or that the tank's working pressure was exceeded, or empty
     */
    public record Month(
            int number,
            double years,
            int dayOfYear,
            double prechargeGauge,
            double peakGauge,
            double relievedDaily,
            Optional<Event.Kind> alarm) {

        /** How many months a year has. */
        public static final int MONTHS_OF_YEAR = 12;

        private static final double DAYS_OF_MONTH = 365.0 / MONTHS_OF_YEAR;

        /**
         * Checks that everything is there.
         *
         * @param number the month, counted from 0
         * @param years time since the start on that day (years of 365 days), 0 or more
         * @param dayOfYear the day, 1 to 365
         * @param prechargeGauge the precharge left (Pa, gauge), 0 or more; of several vessels, of the first that works
         * @param peakGauge the highest pressure of the run of that day, at the drain cock (Pa, gauge)
         * @param relievedDaily discharge of the relief valves on such a day (m3), 0 or more
         * @param alarm the hazard that ended the run, or that the tank's working pressure was exceeded, or empty
         */
        public Month {
            Objects.requireNonNull(alarm, "alarm");
        }

        /**
         * Whether a relief valve discharges.
         *
         * @return true if any
         */
        public boolean drips() {
            return relievedDaily > 0;
        }

        /**
         * Whether the run of the day ends in a hazard.
         *
         * @return true if what follows is beyond what the model describes
         */
        public boolean isHazard() {
            return alarm.filter(Event.Kind::endsRun).isPresent();
        }

        /**
         * Discharge of the relief valves if every day of the month were like this one: an upper bound.
         *
         * @return the volume (m3), 0 or more
         */
        public double relieved() {
            return relievedDaily * DAYS_OF_MONTH;
        }

        /**
         * The year the month lies in, counted from the start.
         *
         * @return the year, 0 for the first
         */
        public int year() {
            return number / MONTHS_OF_YEAR;
        }
    }
}
