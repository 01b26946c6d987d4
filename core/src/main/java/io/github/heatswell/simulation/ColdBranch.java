package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;

/**
 * Water in the cold branch: piping, trapped air and the vessel. Its mass changes by {@code S dp/dt + s}, with the mass
 * stiffness S and a source s due to temperature changes of gas or cold water.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class ColdBranch {

    private final CompiledSystem plant;
    private double volume;
    private double stiffness;
    private double source;
    private double gasRelaxation;

    ColdBranch(CompiledSystem plant) {
        this.plant = plant;
    }

    /**
     * Evaluates the branch for a state.
     *
     * @param y the state
     * @param diaphragm where the vessel's diaphragm is
     * @param cold the cold water at the state's pressure
     * @param coldRate how fast its temperature changes (K/s)
     */
    void prepare(double[] y, Diaphragm diaphragm, LiquidWater.State cold, double coldRate) {
        double p = y[StateVector.PRESSURE];
        volume = volume(y, diaphragm);
        double growth = plant.pipeGrowth + plant.airConstant / (p * p);
        double inflow = 0;
        gasRelaxation = 0;
        if (diaphragm != Diaphragm.ABSENT && plant.vessel.timeConstant > 0) {
            gasRelaxation = (plant.vessel.temperature - y[StateVector.GAS]) / plant.vessel.timeConstant;
        }
        if (diaphragm == Diaphragm.FLOATING) {
            GasCushion vessel = plant.vessel;
            double gas = vessel.gasVolume(p, y[StateVector.GAS]);
            growth += vessel.share() * gas / vessel.gasPressure(p);
            inflow = -vessel.share() * vessel.gasConstant / vessel.gasPressure(p) * gasRelaxation;
        }
        stiffness = cold.density() * (cold.compressibility() * volume + growth);
        source = cold.density() * (inflow - cold.expansivity() * volume * coldRate);
    }

    /** Volume of water (m3) in the branch. */
    double volume(double[] y, Diaphragm diaphragm) {
        double p = y[StateVector.PRESSURE];
        return plant.pipeVolume
                + plant.pipeGrowth * (p - plant.coldPressure)
                - plant.airConstant / p
                + vesselWater(p, y[StateVector.GAS], diaphragm);
    }

    /** Water (m3) in the vessel at a pressure (Pa, absolute) and gas temperature (K). */
    double vesselWater(double pressure, double gasTemperature, Diaphragm diaphragm) {
        return switch (diaphragm) {
            case ABSENT, SEATED -> 0;
            case FLOATING -> plant.vessel.freeWater(pressure, gasTemperature);
            case BOTTOMED_OUT -> plant.vessel.largestWater;
        };
    }

    /** The same for several pressures and gas temperatures. */
    void vesselWater(double[] pressures, double[] gasTemperatures, Diaphragm diaphragm, int count, double[] into) {
        if (diaphragm == Diaphragm.FLOATING) {
            plant.vessel.freeWater(pressures, gasTemperatures, count, into);
        } else {
            Arrays.fill(into, 0, count, vesselWater(pressures[0], gasTemperatures[0], diaphragm));
        }
    }

    /** Mass (kg) the branch takes up per pascal. */
    double stiffness() {
        return stiffness;
    }

    /** Mass (kg/s) the branch takes up at constant pressure. */
    double source() {
        return source;
    }

    /**
     * Rate of the gas temperature (K/s): compression warms it behind a floating diaphragm, and the room always cools
     * it.
     *
     * @param y the state
     * @param diaphragm where the diaphragm is
     * @param pressureRate rate of pressure (Pa/s)
     */
    double gasTemperatureRate(double[] y, Diaphragm diaphragm, double pressureRate) {
        if (!plant.hasGasState()) {
            return 0;
        }
        if (diaphragm != Diaphragm.FLOATING) {
            return gasRelaxation;
        }
        double compression =
                (1 - plant.vessel.share()) * y[StateVector.GAS] / plant.vessel.gasPressure(y[StateVector.PRESSURE]);
        return compression * pressureRate + plant.vessel.share() * gasRelaxation;
    }

    /**
     * The gas of an expansion vessel: a fixed mass of ideal gas, {@code p V = m R T}, charged with the water side
     * empty. Pressures are those (Pa, absolute) at the height of the drain cock.
     */
    static final class GasCushion {

        /** Ratio of heat capacities cv/cp of a diatomic gas (-). */
        private static final double CV_OVER_CP = 2.5 / 3.5;
        /** The gap of the diaphragm (Pa) is at most this, */
        private static final double MAX_GAP = 1e-4;
        /** and this fraction (-) of its seat pressure, with which rounding scales. */
        private static final double PART_GAP = 2e-10;
        /** Nor may the two positions differ by more water (m3): with a large vessel a gap holds milligrams. */
        private static final double WATER_GAP = 1e-11;

        final double volume;
        final double largestWater;
        /** Mass times specific gas constant (J/K). */
        final double gasConstant;
        /** Time constant (s) of the return to ambient temperature; 0 for isothermal gas. */
        final double timeConstant;
        /** Temperature around the vessel (K). */
        final double temperature;

        /**
         * How far (Pa) beyond its seat or limit the pressure moves the diaphragm. Physics has one threshold there; two,
         * a hair apart, keep rounding from reversing a change just made.
         */
        final double gap;

        private final double offset;

        GasCushion(ExpansionVessel described, double atmosphere, double roomTemperature, double offset) {
            volume = described.volume();
            largestWater = volume * described.acceptance();
            double chargedAt = described.chargedAt().orElse(roomTemperature);
            gasConstant = described.precharge().absolute(atmosphere) * volume / chargedAt;
            timeConstant = described.gasTimeConstant().orElse(0);
            temperature = described.temperature().orElse(roomTemperature);
            this.offset = offset;
            double seat = pressureWith(0, temperature);
            gap = Math.min(MAX_GAP, Math.min(PART_GAP * Math.abs(seat), pressureOf(WATER_GAP)));
        }

        /**
         * Where the diaphragm is once the pressure has moved it.
         *
         * @param before where it was
         * @param pressure the pressure (Pa, absolute)
         * @param gasTemperature the temperature of the gas (K)
         */
        Diaphragm moved(Diaphragm before, double pressure, double gasTemperature) {
            double seat = pressureWith(0, gasTemperature)
                    + (before == Diaphragm.FLOATING || before == Diaphragm.BOTTOMED_OUT ? -gap : gap);
            // high above the tank the gas pressure may exceed the water's, whatever volume its law then gives
            if (pressure <= seat) {
                return Diaphragm.SEATED;
            }
            if (largestWater >= volume) {
                return Diaphragm.FLOATING;
            }
            double limit = pressureWith(largestWater, gasTemperature) + (before == Diaphragm.BOTTOMED_OUT ? -gap : gap);
            return pressure >= limit ? Diaphragm.BOTTOMED_OUT : Diaphragm.FLOATING;
        }

        /**
         * Instantaneous share (-) of the gas's isothermal compliance: cv/cp with a time constant, 1 without. The rest
         * follows as the gas returns to ambient temperature.
         */
        double share() {
            return timeConstant > 0 ? CV_OVER_CP : 1;
        }

        /** Pressure of the gas (Pa, absolute) when it is that of the system. */
        double gasPressure(double pressure) {
            return pressure - offset;
        }

        /** Volume of the gas (m3) when it has the pressure of the system. */
        double gasVolume(double pressure, double gasTemperature) {
            return gasConstant * gasTemperature / gasPressure(pressure);
        }

        /** Water the vessel would hold if the diaphragm had neither seat nor limit (m3). */
        double freeWater(double pressure, double gasTemperature) {
            return volume - gasVolume(pressure, gasTemperature);
        }

        /** The same for several pressures and gas temperatures. */
        void freeWater(double[] pressures, double[] gasTemperatures, int count, double[] into) {
            double size = volume;
            double gas = gasConstant;
            double higher = offset;
            for (int i = 0; i < count; i++) {
                into[i] = size - gas * gasTemperatures[i] / (pressures[i] - higher);
            }
        }

        /** Pressure rise (Pa) above the seat for a small volume of water (m3). */
        double pressureOf(double littleWater) {
            return gasConstant * temperature / volume * littleWater / volume;
        }

        /** System pressure (Pa, absolute) at which the vessel holds a volume of water (m3). */
        double pressureWith(double water, double gasTemperature) {
            return gasConstant * gasTemperature / (volume - water) + offset;
        }
    }
}
