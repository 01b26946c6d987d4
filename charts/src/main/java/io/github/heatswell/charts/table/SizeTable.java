package io.github.heatswell.charts.table;

import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Objects;
import java.util.Optional;

/**
 * What each size of vessel on sale would do as CSV, one row for each size, in the order of the sizing.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code volume_L}, {@code precharge_gauge_bar},
 * {@code peak_pressure_gauge_bar} (of the worst heat-up, at the drain cock), {@code or_higher} (yes if the heat-up
 * ended at the tank's test pressure, else no), {@code margin_bar} (the target less the peak, below 0 if the size is too
 * small), {@code enough} (yes if by the best estimates the target is kept, else no: what is uncertain is not in it),
 * {@code price} and {@code currency}, which are empty where no price is known, and {@code recommended} (yes for the
 * size to take, else no); in US units with {@code gal} and {@code psi}.
 */
public final class SizeTable {

    private static final int PRICE_DECIMALS = 2;

    private SizeTable() {}

    /**
     * Writes the table. It has no rows if no vessel of any size can do it.
     *
     * @param sizing the sizing
     * @param recommended the size to take, or empty if none is recommended
     * @param atmosphere the pressure of the air at the site (Pa, absolute)
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(
            SizingResult sizing,
            Optional<SizingResult.Vessel> recommended,
            double atmosphere,
            UnitSystem units,
            Appendable out)
            throws IOException {
        Objects.requireNonNull(recommended, "recommended");
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add(
                "volume_" + quantities.volumeUnit(),
                "precharge_gauge_" + quantities.pressureUnit(),
                "peak_pressure_gauge_" + quantities.pressureUnit(),
                "or_higher",
                "margin_" + quantities.pressureUnit(),
                "enough",
                "price",
                "currency",
                "recommended");
        for (SizingResult.Vessel size : sizing.nominal()) {
            rows.add(
                    quantities.volume(size.volume()),
                    quantities.pressure(size.precharge().gauge(atmosphere)),
                    quantities.pressure(size.peakAbsolute() - atmosphere),
                    size.higher() ? "yes" : "no",
                    quantities.pressure(size.margin()),
                    size.suffices() ? "yes" : "no",
                    size.price()
                            .map(price -> FixedDecimals.of(price.amount().doubleValue(), PRICE_DECIMALS))
                            .orElse(""),
                    size.price()
                            .map(NominalSize.Price::currency)
                            .map(Rows::plain)
                            .orElse(""),
                    recommended.filter(size::equals).isPresent() ? "yes" : "no");
        }
        rows.end();
    }
}
