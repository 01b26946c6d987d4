package io.github.heatswell.scenarios.choice;

import io.github.heatswell.sizing.NominalSize.Price;
import io.github.heatswell.units.Pressure;
import java.util.Objects;
import java.util.Optional;

/**
 * A relief valve that takes the expansion in place of a vessel.
 *
 * @param kind what it is
 * @param setting its set pressure
 * @param price what it costs; invented
 * @param water what it discharges in a year; empty if that is not known
 * @param room whether it closes again above the supply's pressure; if not, it runs all the time
 */
public record DischargingValve(Kind kind, Pressure setting, Price price, Optional<YearlyWater> water, boolean room) {

    /** What a valve is. */
    public enum Kind {
        /** A relief valve on the cold pipe, set below the limit. */
        COLD_RELIEF,
        /** A safety group on the cold inlet (EN 1487), at which dripping is normal. */
        SAFETY_GROUP
    }

    /**
     * Checks that everything is there.
     *
     * @param kind what it is
     * @param setting its set pressure
     * @param price what it costs; invented
     * @param water what it discharges in a year
     * @param room whether it closes again above the supply's pressure
     */
    public DischargingValve {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(water, "water");
    }
}
