package io.github.heatswell.scenarios.outlook;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import java.util.Objects;
import java.util.Optional;

/**
 * Outlook for the house of a scenario.
 *
 * @param scenario the house, its run and its prices
 * @param house what is uncertain about it
 * @param fading its rate of precharge loss
 * @param mainsSwing the highest less the lowest pressure of the mains in a year (Pa, difference), 0 or more
 * @param result what was found
 * @param yardstick how the worst heat-up of today stands to the limit of a sizing, and from which precharge on it is kept; empty where
 *     there is none
 * @param looked the balances of the heat-ups by which the larger vessels were chosen
 */
public record OutlookAnswer(
        Scenario scenario,
        VariedHouse house,
        PrechargeLoss.Range fading,
        double mainsSwing,
        OutlookResult result,
        Optional<Yardstick> yardstick,
        Balances looked) {

    /**
     * Checks that everything is there.
     *
     * @param scenario the house, its run and its prices
     * @param house what is uncertain about it
     * @param fading its rate of precharge loss
     * @param mainsSwing the highest less the lowest pressure of the mains in a year (Pa, difference), 0 or more
     * @param result what was found
     * @param yardstick how the worst heat-up of today stands to the limit of a sizing
     * @param looked the balances of the heat-ups by which the larger vessels were chosen
     */
    public OutlookAnswer {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(house, "house");
        Objects.requireNonNull(fading, "fading");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(yardstick, "yardstick");
        Objects.requireNonNull(looked, "looked");
    }

    /**
     * The balances of all runs behind the answer.
     *
     * @return how many there are, and how many do not close
     */
    public Balances balances() {
        return yardstick
                .map(Yardstick::balances)
                .orElse(Balances.NONE)
                .and(result.balances())
                .and(looked);
    }

    /**
     * Cost of the water discharged in one of the years.
     *
     * @param course the course
     * @param year the year, counted from 0
     * @return the price (-), in the scenario's currency, not rounded
     */
    public double cost(OutlookCourse course, int year) {
        return scenario.costs().ofWater(course.relievedInYear(year));
    }

    /**
     * Cost of the water discharged in all the years.
     *
     * @param course the course
     * @return the price (-), in the scenario's currency, not rounded
     */
    public double cost(OutlookCourse course) {
        return scenario.costs().ofWater(course.relieved());
    }
}
