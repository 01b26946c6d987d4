package io.github.heatswell.checksheet;

import java.util.Objects;

/**
 * A reading with the range in which nine of ten such houses, read with such a gauge, lie.
 *
 * <p>The house alone spreads from {@code low} to {@code high} (5 % and 95 % of all samples). The gauge adds its own
 * error. Both are combined as the root of the sum of their squares, on each side of the expected reading:
 * {@link #lowest()} and {@link #highest()}.
 *
 * @param reading what the house as described should show
 * @param low what 5 % of the samples do not exceed (Pa, gauge)
 * @param high what 95 % of the samples do not exceed (Pa, gauge)
 * @param gaugeError the largest error of the gauge (Pa)
 * @param samples number of samples with this reading
 */
public record ToleratedReading(Reading reading, double low, double high, double gaugeError, int samples) {

    /**
     * Checks that the reading is there.
     *
     * @param reading what the house as described should show
     * @param low what 5 % of the samples do not exceed (Pa, gauge)
     * @param high what 95 % of the samples do not exceed (Pa, gauge)
     * @param gaugeError the largest error of the gauge (Pa)
     * @param samples number of samples with this reading
     */
    public ToleratedReading {
        Objects.requireNonNull(reading, "reading");
    }

    /**
     * The lowest reading that agrees with the description.
     *
     * @return the reading (Pa, gauge)
     */
    public double lowest() {
        return reading.expectedGauge() - Math.hypot(Math.max(0, reading.expectedGauge() - low), gaugeError);
    }

    /**
     * The highest reading that agrees with the description.
     *
     * @return the reading (Pa, gauge)
     */
    public double highest() {
        return reading.expectedGauge() + Math.hypot(Math.max(0, high - reading.expectedGauge()), gaugeError);
    }

    /**
     * Whether what an owner read agrees with the description.
     *
     * @param gauge what the gauge showed (Pa, gauge)
     * @return true if it lies between the lowest and the highest that agree
     */
    public boolean agrees(double gauge) {
        return gauge >= lowest() && gauge <= highest();
    }
}
