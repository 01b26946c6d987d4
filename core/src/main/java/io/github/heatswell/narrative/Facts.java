package io.github.heatswell.narrative;

import io.github.heatswell.result.Phase;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The facts of a system that a reader needs in order to judge its course. */
public final class Facts {

    private final QuantityFormat amounts;

    public Facts(QuantityFormat amounts) {
        this.amounts = amounts;
    }

    /** The facts of one run, and what happened besides the main finding. */
    public String of(RunSummary summary) {
        HotWaterSystem system = summary.system();
        List<String> parts = new ArrayList<>(List.of(tank(system), setPoint(system), supply(system), vessel(system)));
        parts.add(relief(system));
        draws(system).ifPresent(parts::add);
        String facts = Headline.capitalised(String.join(", ", parts)) + ".";
        When when = When.of(system, summary.end(), amounts);
        String full = summary.intervals(Phase.VESSEL_FULL).stream()
                .findFirst()
                .map(first -> " The vessel is full " + when.at(first.from()) + ".")
                .orElse("");
        return facts + full;
    }

    /** The facts of a house that is only heated up, and nothing drawn. */
    public String ofHouse(HotWaterSystem system) {
        List<String> parts = List.of(tank(system), setPoint(system), supply(system), vessel(system), relief(system));
        return Headline.capitalised(String.join(", ", parts)) + ".";
    }

    /** What several systems have in common. */
    public String common(List<NamedRun> runs) {
        List<Function<HotWaterSystem, String>> facts =
                List.of(this::tank, this::setPoint, this::supply, this::vessel, this::relief);
        List<String> parts = new ArrayList<>();
        for (Function<HotWaterSystem, String> fact : facts) {
            String first = fact.apply(runs.get(0).result().system());
            if (runs.stream().allMatch(run -> fact.apply(run.result().system()).equals(first))) {
                parts.add(first);
            }
        }
        Optional<String> draws = draws(runs.get(0).result().system());
        if (runs.stream().allMatch(run -> draws(run.result().system()).equals(draws))) {
            draws.ifPresent(parts::add);
        }
        return parts.isEmpty() ? "" : "All runs: " + String.join(", ", parts) + ".";
    }

    private String tank(HotWaterSystem system) {
        return amounts.volume(system.tank().volume()) + " tank";
    }

    private String setPoint(HotWaterSystem system) {
        String fault = system.heater().thermostatStuck() ? " but the thermostat stuck" : "";
        return "set point " + amounts.temperature(system.heater().setPoint()) + fault;
    }

    private String supply(HotWaterSystem system) {
        String how = switch (system.supply().arrangement()) {
            case DIRECT -> "open to the mains";
            case CHECK_VALVE -> "through a check valve";
            case REDUCING_VALVE -> reducing(system.supply().reducingValve().orElseThrow(), system);
        };
        return "supply " + mains(system) + " at " + cold(system) + " " + how;
    }

    private String reducing(ReducingValve valve, HotWaterSystem system) {
        String set = amounts.pressure(valve.set().gauge(system.site().atmosphere()));
        String bypass = valve.bypassOpens().isPresent() ? " with bypass" : "";
        return "through a reducing valve set at " + set + bypass;
    }

    private String mains(HotWaterSystem system) {
        DoubleSummaryStatistics pressures = system.supply().mains().entries().values().stream()
                .mapToDouble(pressure -> pressure.gauge(system.site().atmosphere()))
                .summaryStatistics();
        String lowest = amounts.pressure(pressures.getMin());
        return system.supply().mains().isConstant()
                ? lowest
                : lowest + " to " + amounts.pressure(pressures.getMax()) + " over the day";
    }

    private String cold(HotWaterSystem system) {
        if (system.supply().water().isConstant()) {
            return amounts.temperature(system.coldAtStart());
        }
        DoubleSummaryStatistics year = IntStream.rangeClosed(1, 365)
                .mapToDouble(day -> system.supply().water().on(day))
                .summaryStatistics();
        return amounts.temperature(year.getMin()) + " to " + amounts.temperature(year.getMax()) + " over the year";
    }

    private Optional<String> draws(HotWaterSystem system) {
        int count = system.draws().draws().size();
        return count == 0
                ? Optional.empty()
                : Optional.of((count == 1 ? "1 draw" : count + " draws") + " a day ("
                        + system.draws().name() + ")");
    }

    private String vessel(HotWaterSystem system) {
        return system.vessel()
                .map(vessel -> amounts.volume(vessel.volume()) + " vessel precharged to "
                        + amounts.pressure(
                                vessel.precharge().gauge(system.site().atmosphere()))
                        + fault(vessel))
                .orElse("no vessel");
    }

    private static String fault(ExpansionVessel vessel) {
        return switch (vessel.condition()) {
            case SOUND -> "";
            case ISOLATED -> " but cut off";
            case WATERLOGGED -> " but full of water";
            case UPSTREAM_OF_CHECK -> " but on the mains side of the check valve";
        };
    }

    private String relief(HotWaterSystem system) {
        List<ReliefValve> valves = system.reliefValves();
        if (valves.isEmpty()) {
            return "no relief valve";
        }
        double atmosphere = system.site().atmosphere();
        List<String> sets = valves.stream()
                .map(valve -> valve.setPressure().gauge(atmosphere))
                .sorted()
                .map(amounts::pressure)
                .distinct()
                .toList();
        String first = sets.get(0);
        if (valves.size() == 1) {
            return "relief valve set at " + first + fault(valves.get(0));
        }
        String range = sets.size() == 1 ? first : first + " to " + sets.get(sets.size() - 1);
        String faults = String.join(
                "",
                valves.stream()
                        .filter(valve -> valve.condition() != ReliefFault.Condition.SOUND)
                        .map(valve -> ", “" + valve.name() + "”" + fault(valve).replace(" but", ""))
                        .toList());
        return valves.size() + " relief valves set at " + range + faults;
    }

    private static String fault(ReliefValve valve) {
        return switch (valve.condition()) {
            case SOUND -> "";
            case STUCK_OPEN -> " but stuck open";
            case LEAKING_SEAT -> " with a leaking seat";
            case BLOCKED -> " but blocked";
        };
    }
}
