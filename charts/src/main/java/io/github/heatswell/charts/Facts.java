package io.github.heatswell.charts;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Supply.Arrangement;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The facts of a system that a reader needs in order to judge its course. */
final class Facts {

    private final Amounts amounts;

    Facts(Amounts amounts) {
        this.amounts = amounts;
    }

    /** The facts of one run, and what happened besides the main finding. */
    String of(RunResult result) {
        HotWaterSystem system = result.system();
        List<String> parts = new ArrayList<>(List.of(tank(system), setPoint(system), supply(system), vessel(system)));
        parts.add(relief(system));
        String facts = Headline.capitalised(String.join(", ", parts)) + ".";
        String full = result.first(EventKind.VESSEL_BOTTOMED_OUT)
                .map(event -> " The vessel is full " + Times.after(event.time()) + ".")
                .orElse("");
        return facts + full;
    }

    /** What several systems have in common. */
    String common(List<NamedRun> runs) {
        List<Function<HotWaterSystem, String>> facts =
                List.of(this::tank, this::setPoint, this::supply, this::vessel, this::relief);
        List<String> parts = new ArrayList<>();
        for (Function<HotWaterSystem, String> fact : facts) {
            String first = fact.apply(runs.get(0).result().system());
            if (runs.stream().allMatch(run -> fact.apply(run.result().system()).equals(first))) {
                parts.add(first);
            }
        }
        return parts.isEmpty() ? "" : "All runs: " + String.join(", ", parts) + ".";
    }

    private String tank(HotWaterSystem system) {
        return amounts.chosenVolume(system.tank().volume()) + " tank";
    }

    private String setPoint(HotWaterSystem system) {
        return "set point " + amounts.temperature(system.heater().setPoint());
    }

    private String supply(HotWaterSystem system) {
        double pressure = system.supplyAtStart().gauge(system.site().atmosphere());
        String how =
                system.supply().arrangement() == Arrangement.DIRECT ? "open to the street" : "through a check valve";
        return "supply " + amounts.chosenPressure(pressure) + " at " + amounts.temperature(system.coldAtStart()) + " "
                + how;
    }

    private String vessel(HotWaterSystem system) {
        return system.vessel()
                .map(vessel -> amounts.chosenVolume(vessel.volume()) + " vessel precharged to "
                        + amounts.chosenPressure(
                                vessel.precharge().gauge(system.site().atmosphere())))
                .orElse("no vessel");
    }

    private String relief(HotWaterSystem system) {
        List<ReliefValve> valves = system.reliefValves();
        if (valves.isEmpty()) {
            return "no relief valve";
        }
        double atmosphere = system.site().atmosphere();
        List<String> sets = valves.stream()
                .map(valve -> valve.opens().gauge(atmosphere))
                .sorted()
                .map(amounts::chosenPressure)
                .distinct()
                .toList();
        String first = sets.get(0);
        if (valves.size() == 1) {
            return "relief valve set at " + first;
        }
        String range = sets.size() == 1 ? first : first + " to " + sets.get(sets.size() - 1);
        return valves.size() + " relief valves set at " + range;
    }
}
