package io.github.heatswell.system;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Objects;

/**
 * The temperature of the cold feed: constant, or seasonal by the model of Burch and Christensen, "Towards development
 * of an algorithm for mains water temperature", ASES 2007 (OSTI 981988): in degrees Fahrenheit and degrees of arc,
 *
 * <pre>
 *   T = (T_avg + 6) + ratio (dT_max / 2) sin(0.986 (day - 15 - lag) - 90)
 *   ratio = 0.4 + 0.01 (T_avg - 44),  lag = 35 - 1.0 (T_avg - 44) days
 * </pre>
 *
 * where T_avg is the annual mean of the air temperature and dT_max the difference between the warmest and the coldest
 * monthly mean; + 90 in the southern hemisphere. The result is kept above freezing.
 */
public final class SupplyTemperature {

    private static final Limits WATER = Limits.between("water", 273.15, 313.15);
    private static final Limits ANNUAL_MEAN = Limits.between("annualMean", 263.15, 308.15);
    private static final Limits MONTHLY_SWING = Limits.between("monthlySwing", 0, 50);
    private static final double MIN_TEMPERATURE = 273.15;

    private final double mean;
    private final double amplitude;
    private final double lag;
    private final double quarter;

    private SupplyTemperature(double mean, double amplitude, double lag, double quarter) {
        this.mean = mean;
        this.amplitude = amplitude;
        this.lag = lag;
        this.quarter = quarter;
    }

    /**
     * The same temperature all year.
     *
     * @param value the temperature, 0 degC to 40 degC
     * @param unit its unit
     * @return the temperature of the supply
     * @throws IllegalArgumentException if the temperature is outside its range
     */
    public static SupplyTemperature constant(double value, TemperatureUnit unit) {
        return new SupplyTemperature(WATER.check(value, unit), 0, 0, 0);
    }

    /**
     * The temperature by the day of the year, northern hemisphere.
     *
     * @param annualMean the annual mean of the air temperature, -10 degC to 35 degC
     * @param unit its unit
     * @param monthlySwing the warmest less the coldest monthly mean, 0 K to 50 K
     * @param swingUnit its unit
     * @return the temperature of the supply
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static SupplyTemperature seasonal(
            double annualMean, TemperatureUnit unit, double monthlySwing, TemperatureDifferenceUnit swingUnit) {
        double meanFahrenheit = TemperatureUnit.FAHRENHEIT.fromSi(ANNUAL_MEAN.check(annualMean, unit));
        double swingKelvin = MONTHLY_SWING.check(monthlySwing, swingUnit);
        double ratio = 0.4 + 0.01 * (meanFahrenheit - 44);
        return new SupplyTemperature(
                TemperatureUnit.FAHRENHEIT.toSi(meanFahrenheit + 6),
                ratio * swingKelvin / 2,
                35 - (meanFahrenheit - 44),
                -90);
    }

    /**
     * Starts a description of seasons; annual mean and monthly swing must be set.
     *
     * @return a builder of seasons in the northern hemisphere
     * @see #seasonal
     */
    public static SeasonsBuilder seasons() {
        return new SeasonsBuilder();
    }

    /**
     * The same seasons in the southern hemisphere.
     *
     * @return the seasons shifted by half a year
     */
    public SupplyTemperature southern() {
        return new SupplyTemperature(mean, amplitude, lag, 90);
    }

    /**
     * The same course, shifted by a temperature difference. It stays above freezing, and a constant temperature stays
     * within 0 degC to 40 degC.
     *
     * @param difference how much warmer, in {@code unit}, negative for colder
     * @param unit the unit of the difference
     * @return the temperature of the supply
     * @throws IllegalArgumentException if the difference is not a finite number
     */
    public SupplyTemperature warmerBy(double difference, TemperatureDifferenceUnit unit) {
        double kelvin = Objects.requireNonNull(unit, "difference: its unit").toSi(difference);
        if (!Double.isFinite(kelvin)) {
            throw new IllegalArgumentException(
                    "water: " + Limits.quantity(difference, unit) + " is not a finite difference");
        }
        double moved = mean + kelvin;
        double kept = isConstant() ? Math.max(WATER.low(), Math.min(WATER.high(), moved)) : moved;
        return new SupplyTemperature(kept, amplitude, lag, quarter);
    }

    /**
     * Whether the temperature is the same all year.
     *
     * @return true if it does not change
     */
    public boolean isConstant() {
        return amplitude == 0;
    }

    /**
     * The temperature on a day.
     *
     * @param dayOfYear the day of the year (days), 1 for the first of January; fractions and other years are allowed
     * @return the temperature (K)
     */
    public double on(double dayOfYear) {
        double angle = Math.toRadians(0.986 * (dayOfYear - 15 - lag) + quarter);
        return Math.max(MIN_TEMPERATURE, mean + amplitude * Math.sin(angle));
    }

    /** Builds a {@link SupplyTemperature} that changes with the seasons. */
    public static final class SeasonsBuilder {
        private Double annualMean;
        private Double monthlySwing;
        private boolean southern;

        private SeasonsBuilder() {}

        /**
         * Sets the annual mean of the air temperature.
         *
         * @param value the mean, -10 degC to 35 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the mean is outside its range
         */
        public SeasonsBuilder annualMean(double value, TemperatureUnit unit) {
            annualMean = ANNUAL_MEAN.check(value, unit);
            return this;
        }

        /**
         * Sets how far the monthly means of the air temperature differ.
         *
         * @param value the warmest less the coldest monthly mean, 0 K to 50 K
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the difference is outside its range
         */
        public SeasonsBuilder monthlySwing(double value, TemperatureDifferenceUnit unit) {
            monthlySwing = MONTHLY_SWING.check(value, unit);
            return this;
        }

        /**
         * Sets the hemisphere; northern by default.
         *
         * @param value true for the southern
         * @return this builder
         */
        public SeasonsBuilder southern(boolean value) {
            southern = value;
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the temperature of the supply
         * @throws InvalidDescriptionException if something is missing
         */
        public SupplyTemperature build() {
            new Requirements()
                    .present("annual-mean", annualMean)
                    .present("monthly-swing", monthlySwing)
                    .orThrow();
            SupplyTemperature seasons =
                    seasonal(annualMean, TemperatureUnit.KELVIN, monthlySwing, TemperatureDifferenceUnit.KELVIN);
            return southern ? seasons.southern() : seasons;
        }
    }
}
