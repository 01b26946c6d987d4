package io.github.heatswell.simulation;

import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.PipeRun;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Supply;
import java.util.List;

/**
 * A description worked out into the numbers the equations need: absolute pressures, sums over the piping, the gas of the
 * vessel. All in SI units; computed once for a run and never changed.
 */
final class Plant {

    final double atmosphere;
    final double roomTemperature;

    final double tankVolume;
    final double shellCompliance;
    final double shellGrowth;
    final double standingLoss;
    final double workingPressure;
    final double testPressure;
    final double coldPressure;
    final double coldTemperature;

    final double pipeVolume;
    /** Growth of the piping's volume with pressure (m3/Pa). */
    final double pipeGrowth;

    final boolean checked;
    final double supplyPressure;

    final double heaterInput;
    final double heaterOutput;
    final double setPoint;
    final double switchOn;

    final List<Valve> valves;
    /** The vessel, or null if there is none. */
    final GasCushion vessel;

    final double startPressure;
    final double startTemperature;

    Plant(HotWaterSystem system) {
        atmosphere = system.site().atmosphere();
        roomTemperature = system.site().roomTemperature();

        Supply supply = system.supply();
        checked = supply.arrangement() == Supply.Arrangement.CHECK_VALVE;
        supplyPressure = supply.pressure().absolute(atmosphere);
        coldPressure = supplyPressure;
        coldTemperature = supply.waterTemperature();

        tankVolume = system.tank().volume();
        shellCompliance = system.tank().shell().compliance();
        shellGrowth = system.tank().shell().thermalGrowth();
        standingLoss = system.tank().standingLoss();
        workingPressure = system.tank().workingPressure().absolute(atmosphere);
        testPressure = system.tank().testPressureAbsolute(atmosphere);

        pipeVolume = system.piping().stream().mapToDouble(PipeRun::volume).sum();
        pipeGrowth = system.piping().stream()
                .mapToDouble(pipe -> pipe.volume() * pipe.compliance())
                .sum();

        heaterInput = system.heater().input();
        heaterOutput = system.heater().output();
        setPoint = system.heater().setPoint();
        switchOn = setPoint - system.heater().differential();

        valves = system.reliefValves().stream()
                .map(valve -> new Valve(valve, atmosphere))
                .toList();
        vessel = system.vessel()
                .map(described -> new GasCushion(described, atmosphere, roomTemperature))
                .orElse(null);

        startPressure =
                system.start().pressure().map(p -> p.absolute(atmosphere)).orElse(supplyPressure);
        startTemperature = system.start().waterTemperature().orElse(coldTemperature);
    }

    /** Whether the temperature of the vessel's gas is part of the state. */
    boolean hasGasState() {
        return vessel != null && vessel.timeConstant > 0;
    }

    /** A relief valve in absolute pressures. */
    static final class Valve {
        final String name;
        final double opens;
        final double reseats;
        final double fullLift;
        private final boolean snap;
        private final double atmosphere;
        private final double fullFlow;

        Valve(ReliefValve described, double atmosphere) {
            name = described.name();
            opens = described.opens().absolute(atmosphere);
            reseats = described.reseats().absolute(atmosphere);
            fullLift = described.fullLift().absolute(atmosphere);
            snap = described.character() == ReliefValve.Character.SNAP;
            fullFlow = described.fullFlow();
            this.atmosphere = atmosphere;
        }

        /**
         * Flow of the open valve: lift times the full flow, scaled with the square root of the pressure difference to the
         * air as through any orifice. Below the reseat pressure, where a modulating valve has closed, the line is carried
         * on to negative flows, so that a solver's trial step beyond the event meets no kink.
         *
         * @param pressure pressure (Pa, absolute)
         * @return volume flow (m3/s)
         */
        double flow(double pressure) {
            return pressure <= atmosphere ? 0 : lift(pressure) * throughFull(pressure);
        }

        /** How fast the flow grows with pressure (m3/s/Pa). */
        double flowSlope(double pressure) {
            if (pressure <= atmosphere) {
                return 0;
            }
            double lift = lift(pressure);
            double liftSlope = !snap && lift < 1 ? 1 / (fullLift - reseats) : 0;
            return throughFull(pressure) * (liftSlope + lift / (2 * (pressure - atmosphere)));
        }

        private double lift(double pressure) {
            return snap ? 1 : Math.min(1, (pressure - reseats) / (fullLift - reseats));
        }

        private double throughFull(double pressure) {
            return fullFlow * Math.sqrt((pressure - atmosphere) / (fullLift - atmosphere));
        }
    }

    /**
     * The gas of an expansion vessel: a fixed mass of ideal gas, {@code p V = m R T}, charged at room temperature with the
     * water side empty.
     */
    static final class GasCushion {
        /** Ratio of heat capacity at constant pressure to the gas constant, for a diatomic gas (-). */
        static final double CP_OVER_R = 3.5;

        final double volume;
        final double largestWater;
        /** Mass times specific gas constant (J/K). */
        final double gasConstant;
        /** Time constant of the return to room temperature (s); 0 for gas that stays at room temperature. */
        final double timeConstant;

        GasCushion(ExpansionVessel described, double atmosphere, double roomTemperature) {
            volume = described.volume();
            largestWater = volume * described.acceptance();
            gasConstant = described.precharge().absolute(atmosphere) * volume / roomTemperature;
            timeConstant = described.gasTimeConstant().orElse(0);
        }

        /** Water the vessel would hold if the diaphragm had neither seat nor limit (m3). */
        double freeWater(double pressure, double gasTemperature) {
            return volume - gasConstant * gasTemperature / pressure;
        }

        /** Pressure (Pa, absolute) of the gas when the vessel holds so much water (m3). */
        double gasPressure(double water, double gasTemperature) {
            return gasConstant * gasTemperature / (volume - water);
        }
    }
}
