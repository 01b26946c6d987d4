package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.scenarios.report.Cost;

/** The water of a year and its price, as the printed report shows them. */
final class PageCosts {

    private PageCosts() {}

    /**
     * What the water of a year costs.
     *
     * @param house which house, such as {@code as it is}
     */
    static Cost of(String house, YearlyWater water, Costs costs) {
        double volume = water.volume();
        return new Cost(house, volume, Money.of(costs.ofWater(volume), costs.currency()), basis(costs));
    }

    private static String basis(Costs costs) {
        String price = Money.of(costs.water().doubleValue(), costs.currency()) + " a cubic metre";
        return "A year is taken as 365 days like those of the run; a run shorter than a day counts as one. Water and waste"
                + " water cost " + price
                + (costs.waterInvented() ? ", a price that is invented: give your own under 'costs'." : ".");
    }
}
