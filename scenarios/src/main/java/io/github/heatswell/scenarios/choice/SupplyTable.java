package io.github.heatswell.scenarios.choice;

import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the vessels on sale would do at the present supply and at lower ones.
 *
 * @param columns the supplies, the present one first and then from high to low
 * @param cheapest the cheapest of the lower supplies with the vessel that goes with it; empty if none will do
 * @param droop how far the pressure behind the reducing valve falls while water runs (Pa, difference)
 */
public record SupplyTable(List<Column> columns, Optional<SizeAdvice.LowerSupply> cheapest, double droop) {

    /**
     * What a shower with a mixing valve must get while water runs (Pa, gauge): 20 psi, IRC table P2903.1 (edition not shown), as quoted
     * by a publisher of codes.
     */
    public static final double LEAST_AT_SHOWER = PressureUnit.PSI.toSi(20);

    /** What is lost to the height of a shower (Pa, difference): 5 m of water, one floor up from a cellar; our own judgement. */
    private static final double TO_SHOWER = PressureUnit.BAR.toSi(0.49);

    /** A table of nothing. */
    static final SupplyTable NONE = new SupplyTable(List.of(), Optional.empty(), 0);

    /**
     * Copies the lists.
     *
     * @param columns the supplies
     * @param cheapest the cheapest of the lower supplies with the vessel that goes with it
     * @param droop how far the pressure behind the reducing valve falls while water runs (Pa, difference)
     */
    public SupplyTable {
        columns = List.copyOf(columns);
        Objects.requireNonNull(cheapest, "cheapest");
    }

    /**
     * What a setting of the reducing valve leaves at a shower 5 m above it while water runs, without what the pipes take.
     *
     * @param setting what the reducing valve is set to (Pa, gauge)
     * @return the pressure (Pa, gauge)
     */
    public double atShower(double setting) {
        return atShower(setting, droop);
    }

    static double atShower(double setting, double droop) {
        return setting - droop - TO_SHOWER;
    }

    /**
     * A supply, and what vessels do at it.
     *
     * @param setting what a reducing valve is set to; empty for the supply as it is
     * @param sizing what each size would do
     * @param sure the smallest size that keeps the limit in nine of ten houses until a year after charging (m3), 0 if none is
     *     needed; empty if no size on sale does
     */
    public record Column(Optional<Pressure> setting, SizingResult sizing, OptionalDouble sure) {

        /**
         * Checks that everything is there.
         *
         * @param setting what a reducing valve is set to
         * @param sizing what each size would do
         * @param sure the smallest size that keeps the limit in nine of ten houses (m3)
         */
        public Column {
            Objects.requireNonNull(setting, "setting");
            Objects.requireNonNull(sizing, "sizing");
            Objects.requireNonNull(sure, "sure");
        }

        /**
         * Whether a vessel keeps the limit in nine of ten houses.
         *
         * @param volume its volume (m3)
         * @return true if it does
         */
        public boolean holds(double volume) {
            return sure.isPresent() && volume >= sure.getAsDouble() * (1 - 1e-9);
        }
    }
}
