package io.github.heatswell.system;

import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.Pressure;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Mechanical data of an expansion vessel: pressure rating, mass and mounting. All of it may be unknown; none of it
 * affects the simulation.
 */
public final class VesselBody {

    private static final Limits RATING = Limits.between("rating", 0.5e5, 25e5);
    private static final Limits EMPTY_MASS = Limits.above("empty-mass", 0, 2_000);
    private static final Limits LENGTH = Limits.between("length", 0.05, 5);

    private final Pressure rating;
    private final Mounting mounting;
    private final Double emptyMass;
    private final Double length;

    private VesselBody(Builder from) {
        rating = from.rating;
        mounting = from.mounting;
        emptyMass = from.emptyMass;
        length = from.length;
    }

    /**
     * Starts a description; everything may be left out.
     *
     * @return a builder with everything unknown
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this body holds
     */
    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.rating = rating;
        builder.mounting = mounting;
        builder.emptyMass = emptyMass;
        builder.length = length;
        return builder;
    }

    /** How a vessel is mounted. */
    public enum Mounting {
        /** It stands on its connection. */
        UPRIGHT,
        /** It hangs from its connection. */
        HANGING,
        /** Horizontal, carried by its connection alone. */
        HORIZONTAL,
        /** Horizontal, carried by a bracket or a shelf. */
        HORIZONTAL_SUPPORTED
    }

    /**
     * Maximum working pressure stated by the maker.
     *
     * @return the rating, or empty if it is unknown
     */
    public Optional<Pressure> rating() {
        return Optional.ofNullable(rating);
    }

    /**
     * How it sits on its pipe.
     *
     * @return the mounting, or empty if it is unknown
     */
    public Optional<Mounting> mounting() {
        return Optional.ofNullable(mounting);
    }

    /**
     * The mass without water.
     *
     * @return the mass (kg), or empty if it is unknown
     */
    public OptionalDouble emptyMass() {
        return emptyMass == null ? OptionalDouble.empty() : OptionalDouble.of(emptyMass);
    }

    /**
     * The length from the connection to the far end.
     *
     * @return the length (m), or empty if it is unknown
     */
    public OptionalDouble length() {
        return length == null ? OptionalDouble.empty() : OptionalDouble.of(length);
    }

    /** Bodies with the same known data are equal. */
    @Override
    public boolean equals(Object other) {
        return other instanceof VesselBody that
                && Objects.equals(rating, that.rating)
                && mounting == that.mounting
                && Objects.equals(emptyMass, that.emptyMass)
                && Objects.equals(length, that.length);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rating, mounting, emptyMass, length);
    }

    /** Builds a {@link VesselBody}. */
    public static final class Builder {
        private Pressure rating;
        private Mounting mounting;
        private Double emptyMass;
        private Double length;

        private Builder() {}

        /**
         * Sets the maximum working pressure from the maker's plate.
         *
         * @param value the pressure, 0.5 bar to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder rating(Pressure value) {
            rating = RATING.check(value);
            return this;
        }

        /**
         * Sets how it is mounted.
         *
         * @param value the mounting
         * @return this builder
         */
        public Builder mounting(Mounting value) {
            mounting = Objects.requireNonNull(value, "mounting");
            return this;
        }

        /**
         * Sets the empty mass.
         *
         * @param value the mass, above 0 to 2000 kg
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the mass is outside its range
         */
        public Builder emptyMass(double value, MassUnit unit) {
            emptyMass = EMPTY_MASS.check(value, unit);
            return this;
        }

        /**
         * Sets the length from the connection to the far end.
         *
         * @param value the length, 50 mm to 5 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the length is outside its range
         */
        public Builder length(double value, LengthUnit unit) {
            length = LENGTH.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the body
         */
        public VesselBody build() {
            return new VesselBody(this);
        }
    }
}
