package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The facts of a system that a reader needs in order to judge its course. */
final class Facts {

    /** Pressures that differ by less (Pa) read alike. */
    private static final double ALIKE = 500;

    private final HotWaterSystem system;
    private final double atmosphere;

    private Facts(HotWaterSystem system) {
        this.system = system;
        this.atmosphere = system.site().atmosphere();
    }

    /** The facts of one run, between when its relief valve may open, and when its vessel was full. */
    static Statement of(RunSummary summary) {
        Statement facts = sentence(new Facts(summary.system()).ofRun());
        return RiseBand.of(summary)
                .map(band -> facts.then(band.brief()))
                .orElse(facts)
                .then(full(summary));
    }

    /** The same without what the remarks tell, for a reader who has both. */
    static Statement besideRemarks(RunSummary summary) {
        return sentence(new Facts(summary.system()).ofRun()).then(full(summary));
    }

    private List<Statement> ofRun() {
        List<Statement> parts = new ArrayList<>(ofHouse());
        draws().ifPresent(parts::add);
        return parts;
    }

    private static Statement full(RunSummary summary) {
        return summary.intervals(Interval.Phase.VESSEL_FULL).stream()
                .findFirst()
                .map(first -> plain(
                                first.device().isEmpty()
                                        ? " The vessel is full "
                                        : " The vessel “" + first.device() + "” is full ")
                        .then(Moments.of(summary.system(), summary.end()).at(first.from()))
                        .then("."))
                .orElse(plain(""));
    }

    /** The facts of a house that is only heated up, and nothing drawn. */
    static Statement of(HotWaterSystem system) {
        return sentence(new Facts(system).ofHouse());
    }

    /** What several systems have in common; empty if it is nothing. */
    static Statement common(List<NamedSummary> runs) {
        List<Facts> all =
                runs.stream().map(run -> new Facts(run.summary().system())).toList();
        List<Function<Facts, Optional<Statement>>> kinds = List.of(
                facts -> Optional.of(facts.tank()),
                facts -> Optional.of(facts.setPoint()),
                facts -> Optional.of(facts.supply()),
                facts -> Optional.of(facts.vessel()),
                facts -> Optional.of(facts.relief()),
                Facts::draws);
        List<Statement> parts = new ArrayList<>();
        for (Function<Facts, Optional<Statement>> kind : kinds) {
            Optional<Statement> first = kind.apply(all.get(0));
            if (all.stream().allMatch(facts -> kind.apply(facts).equals(first))) {
                first.ifPresent(parts::add);
            }
        }
        return parts.isEmpty()
                ? plain("")
                : plain("All runs: ").then(Statement.joined(", ", parts)).then(".");
    }

    private static Statement sentence(List<Statement> parts) {
        return Statement.joined(", ", parts).then(".");
    }

    private List<Statement> ofHouse() {
        return List.of(tank(), setPoint(), supply(), vessel(), relief());
    }

    private Statement tank() {
        return plain("").then(volume(system.tank().volume())).then(" tank");
    }

    private Statement setPoint() {
        String fault = system.heater().thermostatStuck() ? " but the thermostat stuck" : "";
        return plain("set point ").then(temperature(system.heater().setPoint())).then(fault);
    }

    private Statement supply() {
        Statement how = switch (system.supply().arrangement()) {
            case DIRECT -> plain("open to the mains");
            case CHECK_VALVE -> plain("with no way back to the mains");
            case REDUCING_VALVE -> reducing(system.supply().reducingValve().orElseThrow());
        };
        return plain("supply ")
                .then(mains())
                .then(" at ")
                .then(cold())
                .then(" ")
                .then(how);
    }

    private Statement reducing(ReducingValve valve) {
        return plain("through a reducing valve set at ")
                .then(gauge(valve.set(), atmosphere))
                .then(valve.bypassOpens().isPresent() ? " with bypass" : "");
    }

    private Statement mains() {
        DoubleSummaryStatistics pressures = system.supply().mains().entries().values().stream()
                .mapToDouble(pressure -> pressure.gauge(atmosphere))
                .summaryStatistics();
        Statement lowest = plain("").then(gauge(pressures.getMin()));
        return system.supply().mains().isConstant()
                ? lowest
                : lowest.then(" to ").then(gauge(pressures.getMax())).then(" over the day");
    }

    private Statement cold() {
        if (system.supply().water().isConstant()) {
            return plain("").then(temperature(system.coldAtStart()));
        }
        DoubleSummaryStatistics year = IntStream.rangeClosed(1, 365)
                .mapToDouble(day -> system.supply().water().on(day))
                .summaryStatistics();
        return plain("")
                .then(temperature(year.getMin()))
                .then(" to ")
                .then(temperature(year.getMax()))
                .then(" over the year");
    }

    private Optional<Statement> draws() {
        int count = system.draws().draws().size();
        return count == 0
                ? Optional.empty()
                : Optional.of(plain((count == 1 ? "1 draw" : count + " draws") + " a day"
                        + profile(system.draws().name())));
    }

    /** The published profile whose draws they are, if they are of one, in words. */
    static String profile(String name) {
        return name.startsWith("eu-")
                ? " (EU profile " + name.substring(3).toUpperCase(Locale.ROOT) + ")"
                : name.startsWith("us-")
                        ? " (US test pattern, " + name.substring(3).replace('-', ' ') + " use)"
                        : "";
    }

    private static Statement chargedAt(ExpansionVessel vessel) {
        return vessel.chargedAt().isEmpty()
                ? plain("")
                : plain(" at ").then(temperature(vessel.chargedAt().getAsDouble()));
    }

    private Statement vessel() {
        List<Statement> each = system.vessels().stream()
                .map(vessel -> plain("")
                        .then(volume(vessel.volume()))
                        .then(" vessel precharged to ")
                        .then(gauge(vessel.precharge(), atmosphere))
                        .then(chargedAt(vessel))
                        .then(vessel.isInTank() ? ", built into the tank" : "")
                        .then(fault(vessel)))
                .toList();
        return each.isEmpty() ? plain("no vessel") : Statement.joined(" and ", each);
    }

    private static String fault(ExpansionVessel vessel) {
        return switch (vessel.condition()) {
            case SOUND -> "";
            case ISOLATED -> " but behind a closed isolating valve";
            case WATERLOGGED -> " but full of water";
            case UPSTREAM_OF_CHECK -> " but on the mains side of the check valve";
        };
    }

    private Statement relief() {
        List<ReliefValve> valves = system.reliefValves();
        if (valves.isEmpty()) {
            return plain("no relief valve");
        }
        List<Double> sets = valves.stream()
                .map(valve -> valve.setPressure().gauge(atmosphere))
                .sorted()
                .toList();
        double highest = sets.get(sets.size() - 1);
        Statement first = plain("").then(gauge(sets.get(0)));
        if (valves.size() == 1) {
            return plain("relief valve set at ").then(first).then(fault(valves.get(0)));
        }
        String between = valves.size() == 2 ? " and " : " to ";
        Statement range =
                highest - sets.get(0) < ALIKE ? first : first.then(between).then(gauge(highest));
        String faults = String.join(
                "",
                valves.stream()
                        .filter(valve -> valve.condition() != ReliefFault.Condition.SOUND)
                        .map(valve -> ", “" + valve.name() + "”" + fault(valve).replace(" but", ""))
                        .toList());
        return plain(valves.size() + " relief valves set at ").then(range).then(faults);
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
