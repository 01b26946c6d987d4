package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The worst heat-up of one house, to be run with any vessel.
 *
 * @param trial the heat-up from a cold fill, without relief valves
 * @param type the type and place of the vessel, charged at room temperature
 * @param count counts its runs
 */
record PeakEvaluator(HeatUpCase trial, VesselType type, Balances.Count count) {

    /** What a map is drawn up to (m3) where neither a vessel is there nor one can be sized. */
    private static final double NO_VESSEL = 8e-3;

    double atmosphere() {
        return trial.house().site().atmosphere();
    }

    /** The peak with a vessel of a volume (m3) and a precharge (Pa, gauge). */
    HeatUpCase.Peak peak(double volume, double prechargeGauge) {
        ExpansionVessel vessel = type.with(volume, Pressure.gauge(prechargeGauge, PressureUnit.PASCAL));
        return trial.peak(Optional.of(vessel), count);
    }

    /** Reference pressures of a house's map; the target may be null. */
    PeakMap.Setting setting(HotWaterSystem system, SizingTarget target) {
        double fill = trial.house().supply().staticAbsolute(0, atmosphere()) - atmosphere();
        return new PeakMap.Setting(
                system,
                fill,
                fill - trial.house().head(type.pattern().height()),
                lowestRelief(system),
                target == null ? OptionalDouble.empty() : OptionalDouble.of(target.gauge()));
    }

    /** The vessel of a house as a sound one. */
    Optional<PeakMap.Point> present(HotWaterSystem system) {
        OptionalDouble precharge = presentPrecharge(system);
        if (precharge.isEmpty()) {
            return Optional.empty();
        }
        ExpansionVessel vessel = system.vessel().orElseThrow();
        PeakEvaluator own = new PeakEvaluator(trial, new VesselType(vessel).chargedInTheRoom(), count);
        HeatUpCase.Peak peak = own.peak(vessel.volume(), precharge.getAsDouble());
        return Optional.of(new PeakMap.Point(
                vessel.volume(), precharge.getAsDouble(), peak.absolute() - atmosphere(), peak.atLeast()));
    }

    /** The precharge (Pa, gauge) of a house's only vessel at the temperature of the room; empty if there is none such. */
    OptionalDouble presentPrecharge(HotWaterSystem system) {
        if (system.vessels().size() != 1) {
            return OptionalDouble.empty();
        }
        ExpansionVessel vessel = system.vessel().orElseThrow();
        double room = system.site().roomTemperature();
        return OptionalDouble.of(vessel.chargeAbsolute(atmosphere(), room, room) - atmosphere());
    }

    /** The vessel (m3) that a map should show well: the present one or the smallest that keeps relief valves shut. */
    double vesselToShow(PeakMap.Setting setting) {
        HotWaterSystem system = setting.system();
        double present = system.hasSeveralVessels()
                ? 0
                : system.vessel().map(ExpansionVessel::volume).orElse(0.0);
        double wanted = Math.max(present, smallest(setting));
        return wanted > 0 ? wanted : NO_VESSEL;
    }

    private double smallest(PeakMap.Setting setting) {
        if (setting.reliefSetGauge().isEmpty()
                || !(setting.staticAtVesselGauge() > 0 && setting.staticAtVesselGauge() <= MapAxes.MAX_PRECHARGE)) {
            return 0;
        }
        double limit = setting.reliefSetGauge().getAsDouble() + atmosphere();
        SizingProblem setup = new SizingProblem(List.of(trial), type, VesselSizing.Precharge.STATIC, limit);
        return new VesselSearch(count).smallest(setup).orElse(0);
    }

    private static OptionalDouble lowestRelief(HotWaterSystem system) {
        double atmosphere = system.site().atmosphere();
        return system.reliefValves().stream()
                .filter(ReliefValve::relieves)
                .mapToDouble(valve -> setGauge(valve, system, atmosphere))
                .min();
    }

    private static double setGauge(ReliefValve valve, HotWaterSystem system, double atmosphere) {
        return system.atDrainCock(valve.setPressure(), valve.height()).gauge(atmosphere);
    }
}
