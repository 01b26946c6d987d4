package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The pressure a heat-up must stay below: the lowest of several bounds, each with its reason.
 *
 * <p><b>Relief valves.</b> The peak must stay below the <em>reseat</em> pressure of every valve, less a margin of 3 %
 * of its opening pressure. Staying below the set pressure would keep an undisturbed valve shut. But a valve that has
 * lifted once (a tap shut abruptly, a manual test, a mains surge) closes only below its reseat pressure, and would
 * discharge to the end of every heat-up that peaks above it. The margin covers the tolerance of the setting, taken as 3
 * %: common practice, no standard for these valves was read. Valves count by their nominal values, whatever their
 * condition: faults are repaired, not sized for.
 *
 * <p><b>Place.</b> What the rules of the place allow in the building, including thermal expansion: 80 psi (552 kPa) in the
 * United States and where the place is not known (UPC 608.2 of 2024, read in an extract by its publisher); nothing where no such
 * rule was read. It can be changed or dropped.
 *
 * <p><b>Vessel and tank.</b> The rating of the vessel and the working pressure of the tank.
 *
 * <p>All bounds are taken to the height of the tank's drain cock. Immutable.
 */
public final class SizingTarget {

    private static final double RELIEF_MARGIN = 0.03;
    private static final double MAX_GAUGE = 25e5;
    private static final Citation TOLERANCE = new Citation(
            "reseat as given; tolerance of the setting taken as 3 %; no standard for these valves was read",
            Citation.Standing.FROM_MEMORY);

    private static final Citation ASSUMED =
            new Citation("assumed; common practice, no source", Citation.Standing.FROM_MEMORY);

    private final List<Bound> bounds;
    private final double atmosphere;

    private SizingTarget(List<Bound> bounds, double atmosphere) {
        this.bounds = List.copyOf(bounds);
        this.atmosphere = atmosphere;
    }

    /**
     * Starts a target for a house; the rating of the vessel must be set.
     *
     * @param system the house, of which relief valves and tank are taken
     * @return a builder with a relief margin of 3 % and the cap of the place, if it has one
     */
    public static Builder builder(HotWaterSystem system) {
        return new Builder(system);
    }

    /**
     * The rule that caps the pressure of a house, whatever its devices bear.
     *
     * @param system the house
     * @return the rule of its place; empty if none was read
     */
    public static Optional<PlaceRule> cap(HotWaterSystem system) {
        return system.site().place().strictest(Topic.PEAK_LIMIT);
    }

    /** What can bound the pressure. */
    public enum Rule {
        /** The reseat pressure of a relief valve, less a margin. */
        RELIEF_RESEAT,
        /** What the plumbing code allows in the building. */
        CODE_CAP,
        /** The pressure rating of the vessel. */
        VESSEL_RATING,
        /** The working pressure of the tank. */
        WORKING_PRESSURE,
        /** A custom bound. */
        OWN
    }

    /**
     * One bound.
     *
     * @param rule what kind of bound
     * @param device the name of the relief valve, or empty for all other kinds
     * @param absolute the pressure (Pa, absolute) at the height of the drain cock
     * @param source where the bound comes from
     */
    public record Bound(Rule rule, String device, double absolute, Citation source) {

        /**
         * Whether the bound is that of a vessel whose plate nobody has read.
         *
         * @return true if its rating is assumed
         */
        public boolean assumed() {
            return source.equals(ASSUMED);
        }

        /**
         * Checks that everything is there.
         *
         * @param rule what kind of bound
         * @param device the name of the relief valve, or empty for all other kinds
         * @param absolute the pressure (Pa, absolute) at the height of the drain cock
         * @param source where the bound comes from
         */
        public Bound {
            Objects.requireNonNull(rule, "rule");
            Objects.requireNonNull(device, "device");
            Objects.requireNonNull(source, "source");
        }
    }

    /**
     * Every bound that was considered.
     *
     * @return the bounds, the lowest first
     */
    public List<Bound> bounds() {
        return bounds;
    }

    /**
     * The governing bound: the lowest.
     *
     * @return the lowest bound
     */
    public Bound ruling() {
        return bounds.get(0);
    }

    /**
     * The pressure the peak must not exceed.
     *
     * @return the lowest bound (Pa, absolute), at the height of the drain cock
     */
    public double absolute() {
        return ruling().absolute();
    }

    /**
     * The same as a gauge on site shows it at the height of the drain cock.
     *
     * @return the lowest bound (Pa, gauge)
     */
    public double gauge() {
        return absolute() - atmosphere;
    }

    /** Builds a {@link SizingTarget}. */
    public static final class Builder {
        private final HotWaterSystem system;
        private final double atmosphere;
        private double reliefMargin = RELIEF_MARGIN;
        private Pressure cap;
        private Citation capSource = Citation.given();
        private Pressure rating;
        private Citation ratingSource = Citation.given();
        private double vesselHeight;
        private Pressure own;

        private Builder(HotWaterSystem system) {
            this.system = Objects.requireNonNull(system, "system");
            atmosphere = system.site().atmosphere();
            cap(system).ifPresent(rule -> {
                cap = Pressure.gauge(rule.limit().orElseThrow(), PressureUnit.PASCAL);
                capSource = new Citation(
                        rule.clause() + ": " + rule.words(),
                        rule.source().orElseThrow().standing());
            });
            vesselHeight = system.vessel().map(vessel -> vessel.height()).orElse(0.0);
        }

        /**
         * Sets how far below the reseat pressure of a relief valve the peak must stay.
         *
         * @param value the margin as a share of the opening pressure (gauge), 0 to 50 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the margin is outside its range
         */
        public Builder reliefMargin(double value, RatioUnit unit) {
            reliefMargin = Limits.between("relief-margin", 0, 0.5).check(value, unit);
            return this;
        }

        /**
         * Sets the highest pressure the local code allows in the building.
         *
         * @param value the pressure, above 0 to 25 bar (gauge)
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder codeCap(Pressure value) {
            cap = checked("code-cap", value);
            capSource = Citation.given();
            return this;
        }

        /**
         * Drops the cap of the place.
         *
         * @return this builder
         */
        public Builder withoutCodeCap() {
            cap = null;
            return this;
        }

        /**
         * Sets the pressure rating of the vessel.
         *
         * @param value the pressure, above 0 to 25 bar (gauge)
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder vesselRating(Pressure value) {
            rating = checked("vessel-rating", value);
            ratingSource = Citation.given();
            return this;
        }

        /**
         * Sets a pressure rating that stands in for that of the vessel, whose plate nobody has read.
         *
         * @param value the pressure, above 0 to 25 bar (gauge)
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder assumedVesselRating(Pressure value) {
            rating = checked("vessel-rating", value);
            ratingSource = ASSUMED;
            return this;
        }

        /**
         * Sets where the vessel will sit, which shifts its rating; without it, where that of the house sits, or level
         * with the drain cock.
         *
         * @param value the height above the drain cock, -30 m to 30 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside its range
         */
        public Builder vesselHeight(double value, LengthUnit unit) {
            vesselHeight = Limits.between("height", -30, 30).check(value, unit);
            return this;
        }

        /**
         * Sets a custom bound, which governs if it is the lowest.
         *
         * @param value the pressure, above 0 to 25 bar (gauge)
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder own(Pressure value) {
            own = checked("limit", value);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the target
         * @throws IllegalArgumentException if the rating of the vessel is missing, or a relief margin leaves nothing
         */
        public SizingTarget build() {
            if (rating == null) {
                throw new IllegalArgumentException(
                        "vessel-rating: is missing; give vesselRating(...), the maximum working pressure on the"
                                + " vessel's plate");
            }
            List<Bound> found = new ArrayList<>();
            system.reliefValves().forEach(valve -> found.add(bound(valve)));
            add(found, Rule.CODE_CAP, cap, 0, capSource);
            add(found, Rule.VESSEL_RATING, rating, system.head(vesselHeight), ratingSource);
            add(found, Rule.WORKING_PRESSURE, system.tank().workingPressure(), 0, Citation.given());
            add(found, Rule.OWN, own, 0, Citation.given());
            found.sort(Comparator.comparingDouble(Bound::absolute));
            return new SizingTarget(found, atmosphere);
        }

        private Bound bound(ReliefValve valve) {
            double below = reliefMargin * valve.setPressure().gauge(atmosphere);
            double gauge = valve.reseatPressure().gauge(atmosphere) - below;
            if (gauge <= 0) {
                throw new IllegalArgumentException("relief-margin: leaves nothing of the reseat pressure of '"
                        + valve.name() + "', " + valve.reseatPressure());
            }
            double absolute = gauge + atmosphere + system.head(valve.height());
            return new Bound(Rule.RELIEF_RESEAT, valve.name(), absolute, TOLERANCE);
        }

        private void add(List<Bound> to, Rule rule, Pressure value, double offset, Citation source) {
            if (value != null) {
                to.add(new Bound(rule, "", value.absolute(atmosphere) + offset, source));
            }
        }

        private Pressure checked(String field, Pressure value) {
            Limits.above(field, 0, MAX_GAUGE)
                    .check(Pressure.gauge(Objects.requireNonNull(value, field).gauge(atmosphere), PressureUnit.PASCAL));
            return value;
        }
    }
}
