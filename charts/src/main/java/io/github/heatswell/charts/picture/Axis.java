package io.github.heatswell.charts.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;

/**
 * A scale from one value to a larger one.
 *
 * @param label the quantity with its unit, such as {@code gauge pressure (bar)}
 * @param from the value at the start of the scale, in the unit of the label
 * @param to the value at its end, in the same unit, above {@code from}
 * @param ticks the places with a name
 */
public record Axis(String label, double from, double to, List<Tick> ticks) {

    private static final double[][] MANTISSAS = {{1, 1.5, 2, 3, 4, 5, 6, 8}, {1, 2, 3, 5}, {1, 2, 5}, {1}};
    private static final int MAX_LOGARITHMIC = 13;

    /**
     * Checks that the scale runs forward.
     *
     * @param label the quantity with its unit, such as {@code gauge pressure (bar)}
     * @param from the value at the start of the scale, in the unit of the label
     * @param to the value at its end, in the same unit, above {@code from}
     * @param ticks the places with a name
     * @throws IllegalArgumentException if it does not
     */
    public Axis {
        Objects.requireNonNull(label, "label");
        ticks = List.copyOf(Objects.requireNonNull(ticks, "ticks"));
        if (!(from < to && to - from < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a scale from " + from + " to " + to + " cannot be drawn");
        }
    }

    /**
     * A scale with numbers at the multiples of a distance.
     *
     * @param label the quantity with its unit, such as {@code gauge pressure (bar)}
     * @param from the value at the start of the scale, in the unit of the label
     * @param to the value at its end, in the same unit, above {@code from}
     * @param tick the distance of the ticks, in the same unit, above 0
     * @throws IllegalArgumentException if the scale does not run forward or the distance is not above 0
     */
    public Axis(String label, double from, double to, double tick) {
        this(label, from, to, multiples(from, to, tick));
    }

    /**
     * A logarithmic scale with ticks at round numbers.
     *
     * @param label the quantity with its unit
     * @param from the decimal logarithm of the value at the start of the scale, in the unit of the label
     * @param to the decimal logarithm of the value at its end, in the unit of the label, above {@code from}
     * @return the scale, whose places are decimal logarithms
     * @throws IllegalArgumentException if it does not run forward
     */
    public static Axis logarithmic(String label, double from, double to) {
        return new Axis(label, from, to, roundNumbers(from, to));
    }

    private static List<Tick> roundNumbers(double from, double to) {
        List<Tick> ticks = List.of();
        for (double[] mantissas : MANTISSAS) {
            ticks = roundNumbers(mantissas, from, to);
            if (ticks.size() <= MAX_LOGARITHMIC) {
                break;
            }
        }
        return ticks;
    }

    private static List<Tick> roundNumbers(double[] mantissas, double from, double to) {
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

    private static List<Tick> multiples(double from, double to, double tick) {
        if (!(tick > 0 && (to - from) / tick < Integer.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "a scale from " + from + " to " + to + " with ticks every " + tick + " cannot be drawn");
        }
        int decimals = Math.max(0, BigDecimal.valueOf(tick).stripTrailingZeros().scale());
        // What is left of a multiple after rounding still counts as one.
        double slack = 1e-9;
        long first = (long) Math.ceil(from / tick - slack);
        long last = (long) Math.floor(to / tick + slack);
        return LongStream.rangeClosed(first, last)
                .mapToObj(i -> new Tick(
                        i * tick,
                        BigDecimal.valueOf(i * tick)
                                .setScale(decimals, RoundingMode.HALF_UP)
                                .toPlainString()))
                .toList();
    }

    /**
     * The part of this scale above a value.
     *
     * @param value where to begin, in the unit of the label, below the end
     * @return the rest of the scale
     */
    public Axis from(double value) {
        return new Axis(
                label,
                value,
                to,
                ticks.stream().filter(tick -> tick.at() >= value).toList());
    }

    /**
     * Whether a value lies on the scale, its ends included.
     *
     * @param value the value, in the unit of the label
     * @return true if it does
     */
    public boolean holds(double value) {
        return value >= from && value <= to;
    }

    /**
     * A place on a scale and what stands there: a number, a clock time, a month.
     *
     * @param at where it lies, in the unit of the scale
     * @param name what stands there
     */
    public record Tick(double at, String name) {

        /**
         * Makes the name printable.
         *
         * @param at where it lies, in the unit of the scale
         * @param name what stands there
         */
        public Tick {
            name = PlainText.of(Objects.requireNonNull(name, "name"));
        }
    }
}
