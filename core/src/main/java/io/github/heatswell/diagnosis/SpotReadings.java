package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * Readings taken on site without a logger; any may be missing. Immutable.
 */
public final class SpotReadings {

    /** How long after the start of the heat-up from cold the readings of the next morning are taken (s). */
    static final double UNTIL_MORNING = 12 * 3_600.0;

    private static final int SHOWN_DIGITS = 6;
    /** A pressure above 0 and below this (Pa, gauge) is not in pascal. */
    private static final double MIN_PRESSURE = 1e3;

    private static final SpotReadings NONE = new SpotReadings(new EnumMap<>(SiteCheck.class));

    private final Map<SiteCheck, SpotReading> readings;

    private SpotReadings(Map<SiteCheck, SpotReading> readings) {
        this.readings = Collections.unmodifiableMap(readings);
    }

    /**
     * No readings at all.
     *
     * @return readings to add to
     */
    public static SpotReadings none() {
        return NONE;
    }

    /**
     * These readings and one more, with the usual uncertainty of its kind.
     *
     * @param check what was read
     * @param value the reading, in the SI unit of the check; pressures are gauge
     * @return the readings; an earlier one of the same kind is replaced
     * @throws IllegalArgumentException if the value is not finite or outside the {@link SiteCheck#limits() limits} of the check, or a
     *     pressure between 0 and 1000 Pa, which no gauge tells from 0: it is in another unit
     */
    public SpotReadings with(SiteCheck check, double value) {
        Objects.requireNonNull(check, "check");
        if (check.customaryUnit() instanceof PressureUnit && value > 0 && value < MIN_PRESSURE) {
            throw new IllegalArgumentException(check.limits().field() + ": " + value
                    + " Pa is hardly a pressure; name the unit if it is not in pascal");
        }
        return with(check, new SpotReading(value, check.usualUncertainty()));
    }

    /**
     * These readings and one more in the unit it was read in, with the usual uncertainty of its kind.
     *
     * @param check what was read
     * @param value the reading; pressures are gauge
     * @param unit its unit, such as {@code PSI}
     * @return the readings; an earlier one of the same kind is replaced
     * @throws IllegalArgumentException if the unit is none of the check, or the value is not finite or outside the
     *     {@link SiteCheck#limits() limits} of the check
     */
    public SpotReadings with(SiteCheck check, double value, Unit unit) {
        Objects.requireNonNull(check, "check");
        Class<? extends Unit> kind = check.customaryUnit().getClass();
        if (!kind.isInstance(Objects.requireNonNull(unit, "unit"))) {
            throw new IllegalArgumentException(
                    check.limits().field() + ": " + unit.symbol() + " is no unit of it; its usual one is "
                            + check.customaryUnit().symbol());
        }
        return with(check, new SpotReading(unit.toSi(value), check.usualUncertainty()));
    }

    /**
     * These readings and one more.
     *
     * @param check what was read
     * @param reading the reading with its uncertainty
     * @return the readings; an earlier one of the same kind is replaced
     * @throws IllegalArgumentException if the value is outside the {@link SiteCheck#limits() limits} of the check, or so
     *     uncertain that nothing follows from it ({@link SiteCheck#largestUncertainty(double)})
     */
    public SpotReadings with(SiteCheck check, SpotReading reading) {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(reading, "reading");
        refuseAbsurd(check, reading);
        Map<SiteCheck, SpotReading> more = new EnumMap<>(SiteCheck.class);
        more.putAll(readings);
        more.put(check, reading);
        return new SpotReadings(more);
    }

    /** These readings without what a log says already: the highest of a heat-up, read off the same gauge. */
    SpotReadings beside(PressureLog log) {
        SpotReading highest = readings.get(SiteCheck.HEAT_UP_MAXIMUM);
        if (highest == null || !log.showsHeatUp() || Math.abs(highest.value() - log.highest()) > log.uncertainty()) {
            return this;
        }
        Map<SiteCheck, SpotReading> others = new EnumMap<>(SiteCheck.class);
        others.putAll(readings);
        others.remove(SiteCheck.HEAT_UP_MAXIMUM);
        return new SpotReadings(others);
    }

    /**
     * The readings that apply to a house: those taken at an expansion vessel mean nothing where there is none.
     *
     * @param house the house as described
     * @return the readings that count, possibly none
     */
    public SpotReadings of(HotWaterSystem house) {
        Map<SiteCheck, SpotReading> counting = new EnumMap<>(SiteCheck.class);
        counting.putAll(readings);
        counting.keySet()
                .removeIf(check -> check.isOfVessel() && house.vessels().isEmpty());
        return new SpotReadings(counting);
    }

    private static void refuseAbsurd(SiteCheck check, SpotReading reading) {
        Limits limits = check.limits();
        Unit unit = check.customaryUnit();
        limits.checkSi(reading.value(), unit);
        if (reading.uncertainty() > check.largestUncertainty(reading.value())) {
            String difference =
                    unit instanceof TemperatureUnit ? TemperatureDifferenceUnit.KELVIN.symbol() : unit.symbol();
            throw new IllegalArgumentException(limits.field() + ": the uncertainty "
                    + Decimals.significant(reading.uncertainty() / unit.factor(), SHOWN_DIGITS) + " " + difference
                    + " is too large beside the reading of " + Limits.quantity(unit.fromSi(reading.value()), unit)
                    + " to be of use; repeat the reading more precisely, or leave it out");
        }
    }

    /**
     * All readings.
     *
     * @return what was read, never changed, in the order of {@link SiteCheck}
     */
    public Map<SiteCheck, SpotReading> all() {
        return readings;
    }

    /**
     * Whether nothing was read.
     *
     * @return true if there is no reading
     */
    public boolean isEmpty() {
        return readings.isEmpty();
    }
}
