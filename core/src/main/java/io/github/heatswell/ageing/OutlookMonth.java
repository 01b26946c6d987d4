package io.github.heatswell.ageing;

import io.github.heatswell.result.Event;
import java.util.Objects;
import java.util.Optional;

/**
 * The worst day of a month: that on which the supply is coldest.
 *
 * @param number the month, counted from 0
 * @param years time since the start on that day (years of 365 days), 0 or more
 * @param dayOfYear the day, 1 to 365
 * @param prechargeGauge the precharge left (Pa, gauge), 0 or more
 * @param peakGauge the highest pressure of the run of that day, at the drain cock (Pa, gauge)
 * @param relievedDaily discharge of the relief valves on such a day (m3), 0 or more
 * @param alarm the hazard that ended the run, or that the tank's working pressure was exceeded, or empty
 */
public record OutlookMonth(
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
     * @param prechargeGauge the precharge left (Pa, gauge), 0 or more
     * @param peakGauge the highest pressure of the run of that day, at the drain cock (Pa, gauge)
     * @param relievedDaily discharge of the relief valves on such a day (m3), 0 or more
     * @param alarm the hazard that ended the run, or that the tank's working pressure was exceeded, or empty
     */
    public OutlookMonth {
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
