package io.github.heatswell.checksheet;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The readings an owner should see when following a {@link CheckProcedure}. Immutable.
 *
 * @param procedure the procedure
 * @param readings what the gauge should show, in the order of the procedure; those that a hazard prevented are missing
 * @param heatUp how the heat-up ends
 * @param drips whether a relief valve is expected to discharge, and how much
 * @param hazard the hazard at which the procedure ends, with the time since the run it happened in began (s), or empty
 * @param balances those of the runs behind it
 */
public record CheckSheet(
        CheckProcedure procedure,
        List<Reading> readings,
        HeatUp heatUp,
        Drips drips,
        Optional<Event> hazard,
        Balances balances) {

    /**
     * Copies the readings and checks that everything is there.
     *
     * @param procedure the procedure
     * @param readings what the gauge should show, in the order of the procedure; those that a hazard prevented are
     *     missing
     * @param heatUp how the heat-up ends
     * @param drips whether a relief valve is expected to discharge, and how much
     * @param hazard the hazard at which the procedure ends, with the time since the run it happened in began (s), or
     *     empty
     * @param balances those of the runs behind it
     */
    public CheckSheet {
        Objects.requireNonNull(procedure, "procedure");
        Objects.requireNonNull(heatUp, "heatUp");
        Objects.requireNonNull(drips, "drips");
        Objects.requireNonNull(hazard, "hazard");
        Objects.requireNonNull(balances, "balances");
        readings = List.copyOf(Objects.requireNonNull(readings, "readings"));
    }

    /**
     * How the heat-up after the draw ends.
     *
     * @param finished whether the heater came on and off again within the ten hours; if not, because nothing switched it
     *     on or off, the highest pressure is that of the whole ten hours
     * @param hottest the highest temperature of the hottest water until the next morning or the hazard (K)
     */
    public record HeatUp(boolean finished, double hottest) {}

    /**
     * Expected total discharge of the relief valves.
     *
     * @param volume from closing the taps to the next morning or the hazard (m3), as cold water
     * @param whenCold the flow while the house is cold and at rest (m3/s), as cold water: a valve that runs then is not
     *     moved by heating
     * @param firstAfter when a valve first opens, time since the taps were closed (s), or empty if none does
     */
    public record Drips(double volume, double whenCold, OptionalDouble firstAfter) {

        /**
         * Whether any water is expected.
         *
         * @return true if there is any
         */
        public boolean expected() {
            return volume > 0 || whenCold > 0;
        }
    }

    /**
     * One reading.
     *
     * @param kind the moment
     * @return the reading, or empty if a hazard prevented it
     */
    public Optional<Reading> reading(Reading.Kind kind) {
        Objects.requireNonNull(kind, "kind");
        return readings.stream().filter(reading -> reading.kind() == kind).findFirst();
    }

    /**
     * What a gauge at the tank's drain cock is expected to show at one moment of the procedure.
     *
     * @param kind the moment
     * @param expectedGauge the pressure (Pa, gauge)
     * @param time since the taps were closed (s); 0 for the cold static reading, which is taken before
     */
    public record Reading(Kind kind, double expectedGauge, double time) {

        /**
         * Checks that the moment is there.
         *
         * @param kind the moment
         * @param expectedGauge the pressure (Pa, gauge)
         * @param time since the taps were closed (s); 0 for the cold static reading, which is taken before
         */
        public Reading {
            Objects.requireNonNull(kind, "kind");
        }

        /**
         * When the gauge is read.
         *
         * @return the moment in words
         */
        public String when() {
            return kind.when();
        }

        /** The moments at which the gauge is read, in their order. */
        public enum Kind {
            /** Nothing heats and nothing flows: the static pressure of the supply. */
            COLD_STATIC("cold-static", "cold, nothing flowing"),
            /** The taps were closed after the draw, and the feed has come to rest since. */
            AFTER_DRAW("after-draw", "taps closed, as soon as the gauge is steady"),
            /** A quarter of an hour after the taps were closed. */
            QUARTER_HOUR("after-15-min", "15 min after the taps were closed"),
            /** Half an hour after the taps were closed. */
            HALF_HOUR("after-30-min", "30 min after the taps were closed"),
            /** The highest pressure until the heater switches off. */
            PEAK("peak-after-draw", "highest while heating up after the draw"),
            /** Ten hours after the taps were closed, with none opened since. */
            NEXT_MORNING("morning-after-draw", "10 h after the taps were closed, none opened since");

            private final String id;
            private final String when;

            Kind(String id, String when) {
                this.id = id;
                this.when = when;
            }

            /**
             * A short name for tables and files; in a file of readings the same name stands for the same reading.
             *
             * @return the name, in lower case without spaces
             */
            public String id() {
                return id;
            }

            /**
             * When the gauge is read.
             *
             * @return the moment in words
             */
            public String when() {
                return when;
            }
        }
    }
}
