package io.github.heatswell.diagnosis;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * What was read on site without a logger; any of it may be missing. Immutable.
 */
public final class SpotReadings {

    /** How long after the start of the heat-up from cold the readings of the next morning are taken (s). */
    static final double UNTIL_MORNING = 12 * 3_600.0;

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
     * @throws IllegalArgumentException if the value is not finite
     */
    public SpotReadings with(SiteCheck check, double value) {
        Objects.requireNonNull(check, "check");
        return with(check, new SpotReading(value, check.usualUncertainty()));
    }

    /**
     * These readings and one more.
     *
     * @param check what was read
     * @param reading the reading with its uncertainty
     * @return the readings; an earlier one of the same kind is replaced
     */
    public SpotReadings with(SiteCheck check, SpotReading reading) {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(reading, "reading");
        Map<SiteCheck, SpotReading> more = new EnumMap<>(SiteCheck.class);
        more.putAll(readings);
        more.put(check, reading);
        return new SpotReadings(more);
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
