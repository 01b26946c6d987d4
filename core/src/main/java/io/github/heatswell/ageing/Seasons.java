package io.github.heatswell.ageing;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.PressureUnit;

/**
 * The worst day of each month: that with the coldest water, and of equally cold ones that with the highest mains
 * pressure. Months are twelfths of a year of 365 days, counted from the house's day of the year. The mains stands
 * highest when its water is coldest, because little is drawn then; if the temperature never changes, at the turn of the
 * year.
 */
final class Seasons {

    private static final int DAYS = 365;
    private static final int MONTHS = OutlookCourse.Month.MONTHS_OF_YEAR;

    private final HotWaterSystem house;
    private final double mainsSwing;
    private final int yearsColdest;

    Seasons(HotWaterSystem house, double mainsSwing) {
        this.house = house;
        this.mainsSwing = mainsSwing;
        int coldest = 0;
        for (int day = 1; day < DAYS; day++) {
            if (water(day) < water(coldest)) {
                coldest = day;
            }
        }
        yearsColdest = coldest;
    }

    /** The house on the worst day of a month, with its original vessel. */
    HotWaterSystem worstDay(int month) {
        int day = dayOfYear(month);
        return house.toBuilder()
                .supply(supply(mainsHigherBy(day - 1)))
                .start(house.start().toBuilder().dayOfYear(day).build())
                .build();
    }

    /** Refuses a swing that would take the mains out of its range. */
    void check() {
        try {
            supply(mainsSwing / 2);
            supply(-mainsSwing / 2);
        } catch (IllegalArgumentException refused) {
            throw new IllegalArgumentException("mains-swing: with it, the mains' " + refused.getMessage(), refused);
        }
    }

    private Supply supply(double higher) {
        Supply supply = house.supply();
        return supply.toBuilder()
                .mains(supply.mains().raisedBy(higher, PressureUnit.PASCAL))
                .build();
    }

    /** The worst day of a month, 1 to 365. */
    int dayOfYear(int month) {
        return 1 + dayOfYearFromZero(worstDaysAfterStart(month));
    }

    /** When the worst day of a month is (years of 365 days since the start). */
    double yearsUntil(int month) {
        return (double) worstDaysAfterStart(month) / DAYS;
    }

    /** The first month in which the worst day of a year lies, 0 to 11. */
    int coldestMonth() {
        int worst = 0;
        for (int month = 1; month < MONTHS; month++) {
            if (isWorse(worstDaysAfterStart(month), worstDaysAfterStart(worst))) {
                worst = month;
            }
        }
        return worst;
    }

    /** The highest static pressure of a usual day at the height of the vessel (Pa, gauge), above 0. */
    double staticAt(ExpansionVessel vessel) {
        double atmosphere = house.site().atmosphere();
        double highest = 0;
        // between two entries of the timetable the mains changes evenly, so it is highest at one of them
        for (double time : house.supply().mains().entries().keySet()) {
            highest = Math.max(highest, house.supply().staticAbsolute(time, atmosphere));
        }
        double above = house.head(vessel.height());
        return Math.max(1, highest - atmosphere - above);
    }

    private int worstDaysAfterStart(int month) {
        int from = month * DAYS / MONTHS;
        int to = (month + 1) * DAYS / MONTHS;
        int worst = from;
        for (int day = from; day < to; day++) {
            if (isWorse(day, worst)) {
                worst = day;
            }
        }
        return worst;
    }

    private boolean isWorse(int daysAfterStart, int thanDaysAfterStart) {
        int day = dayOfYearFromZero(daysAfterStart);
        int than = dayOfYearFromZero(thanDaysAfterStart);
        return water(day) < water(than) || water(day) == water(than) && mainsHigherBy(day) > mainsHigherBy(than);
    }

    private int dayOfYearFromZero(int daysAfterStart) {
        return (house.start().dayOfYear() - 1 + daysAfterStart) % DAYS;
    }

    private double water(int dayFromZero) {
        return house.supply().water().on(dayFromZero + 1);
    }

    private double mainsHigherBy(int dayFromZero) {
        return mainsSwing / 2 * Math.cos(2 * Math.PI * (dayFromZero - yearsColdest) / DAYS);
    }
}
