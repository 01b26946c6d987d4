package io.github.heatswell.scenarios.choice;

import io.github.heatswell.sizing.NominalSize.Price;
import io.github.heatswell.units.Pressure;
import java.util.Objects;
import java.util.Optional;

/**
 * A relief valve on the cold pipe that takes the expansion before the valve of the tank, in the house as it is.
 *
 * @param kind what it is
 * @param setting its set pressure
 * @param reseat where it must close again, where a usual one would not above the supply's pressure; empty where a usual one does
 * @param price what it costs; invented
 * @param water what it discharges in a year; empty if that is not known
 * @param work what it would do there
 */
public record DischargingValve(
        Kind kind, Pressure setting, Optional<Pressure> reseat, Price price, Optional<YearlyWater> water, Work work) {

    /** What a valve would do in the house. */
    public enum Work {
        /** It stays shut on days like those of the run. */
        STAYS_SHUT,
        /** It discharges, and the valves of the house do not. */
        DRIPS_ALONE,
        /** It discharges, and so does a valve of the house. */
        DRIPS_TOO
    }

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
     * @param reseat where it must close again, where a usual one would not above the supply's pressure
     * @param price what it costs; invented
     * @param water what it discharges in a year
     * @param work what it would do there
     */
    public DischargingValve {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(reseat, "reseat");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(work, "work");
    }
}
