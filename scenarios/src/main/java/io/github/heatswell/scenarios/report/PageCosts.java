package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Costs;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The water of a year and its price, as the printed report shows them. */
final class PageCosts {

    private static final int DECIMALS = 2;

    private PageCosts() {}

    /** An amount as reports show it: two decimals, then the currency. */
    static String money(double amount, String currency) {
        return Decimals.fixed(amount, DECIMALS) + " " + currency;
    }

    /** What is to be said of a bill that no vessel changes. */
    static String whatever(VesselAnswer answer) {
        return answer.advice()
                .stuckOpen()
                .map(valve -> ", with any vessel, until '" + valve.name() + "' is replaced")
                .orElse("");
    }

    /**
     * What the water of a year costs.
     *
     * @param houses the water by house, such as {@code as it is}; none for nothing
     * @param costs the prices
     * @param shown the units
     */
    static List<Block> of(Map<String, YearlyWater> houses, Costs costs, QuantityFormat shown) {
        if (houses.isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        houses.forEach((house, water) -> rows.add(List.of(
                house, shown.largeVolume(water.volume()), money(costs.ofWater(water.volume()), costs.currency()))));
        return List.of(
                new Grid("Water discharged in a year", List.of("House", "Water", "Price"), rows),
                new Block.Paragraph(basis(costs, shown), Block.Tone.QUIET));
    }

    /** What water costs, by the volume that bills of a place count in. */
    static String ofWater(Costs costs, QuantityFormat shown) {
        return shown.units() == UnitSystem.SI
                ? money(costs.ofWater(1), costs.currency()) + " a cubic metre"
                : money(costs.ofWater(VolumeUnit.US_GALLON.toSi(1000)), costs.currency()) + " for 1000 gallons";
    }

    private static String basis(Costs costs, QuantityFormat shown) {
        String price = ofWater(costs, shown);
        return "A year is taken as 365 days like those of the run, begun again as it was; a run shorter than a day counts as one. Water and waste"
                + " water cost " + price
                + (costs.waterInvented() ? ", a price that is invented: give your own under 'costs'." : ".");
    }
}
