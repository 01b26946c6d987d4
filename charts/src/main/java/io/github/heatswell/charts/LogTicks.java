package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis.Tick;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Ticks of a logarithmic scale, at round numbers. */
final class LogTicks {

    private static final double[][] MANTISSAS = {{1, 1.5, 2, 3, 4, 5, 6, 8}, {1, 2, 3, 5}, {1, 2, 5}, {1}};
    private static final int MOST = 13;

    private LogTicks() {}

    /** Ticks between two decimal logarithms. */
    static List<Tick> between(double from, double to) {
        List<Tick> ticks = List.of();
        for (double[] mantissas : MANTISSAS) {
            ticks = at(mantissas, from, to);
            if (ticks.size() <= MOST) {
                break;
            }
        }
        return ticks;
    }

    private static List<Tick> at(double[] mantissas, double from, double to) {
        List<Tick> ticks = new ArrayList<>();
        for (int power = (int) Math.floor(from); power <= to; power++) {
            for (double mantissa : mantissas) {
                BigDecimal value = BigDecimal.valueOf(mantissa).scaleByPowerOfTen(power);
                double at = Math.log10(value.doubleValue());
                if (at >= from - 1e-9 && at <= to + 1e-9) {
                    ticks.add(new Tick(at, value.stripTrailingZeros().toPlainString()));
                }
            }
        }
        return ticks;
    }
}
