package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Problem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Tank;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Binds a whole file, section by section, and puts the sections together. */
final class ScenarioBinder {

    private final Map<String, Node> top;
    private final Place root;
    private final Findings findings;

    ScenarioBinder(Mapping file, Findings findings) {
        this.root = new Place("", file.at());
        this.findings = findings;
        findings.stands("", file.at());
        this.top = Keys.known(file, Schema.topKeys(), root, findings);
    }

    /** What a file describes; sound only if nothing was found wrong. */
    record Bound(Header header, Optional<HotWaterSystem> system, RunDraft.Run run, Costs costs) {}

    Bound bind() {
        Header header = new SectionBinder<>(Schema.HEADER, root, top, findings).bind();
        HotWaterSystem.Builder system = HotWaterSystem.builder()
                .site(one(Schema.SITE))
                .supply(one(SupplySections.SUPPLY))
                .tank(tank())
                .heater(one(HeaterSections.HEATER));
        list(TankSections.PIPE, TankSections.MAX_PIPES).forEach(system::addPipe);
        List<ReliefValve> valves = list(ReliefSections.RELIEF, ReliefSections.MAX_VALVES);
        valves.forEach(system::addReliefValve);
        requireDistinctNames(valves);
        if (top.containsKey(VesselSections.VESSEL.name())) {
            system.vessel(one(VesselSections.VESSEL));
        }
        new SectionBinder<>(UseSections.EXTRAS, root, top, findings).bind().into(system);
        Start.Builder start = top.containsKey(Schema.START.name()) ? one(Schema.START) : Start.builder();
        RunDraft.Run run = run();
        system.start(run.into(start).build());
        Costs costs = top.containsKey(CostsSections.COSTS.name()) ? one(CostsSections.COSTS) : Costs.invented();
        return new Bound(header, together(system), run, costs);
    }

    /** The tank; a working pressure that nobody gave is none that its maker allows. */
    private Tank tank() {
        Tank tank = one(TankSections.TANK);
        return findings.isAssumed(Schema.WORKING_PRESSURE)
                ? tank.toBuilder()
                        .assumedWorkingPressure(tank.workingPressure())
                        .build()
                : tank;
    }

    private Optional<HotWaterSystem> together(HotWaterSystem.Builder system) {
        try {
            return Optional.of(system.build());
        } catch (InvalidDescriptionException e) {
            e.problems().forEach(problem -> findings.note(asWritten(problem)));
            return Optional.empty();
        }
    }

    /** The description has the faults of a valve beside its other numbers; a file has them one level deeper. */
    private static Problem asWritten(Problem problem) {
        return new Problem(problem.field().replace("].leaks-from", "].fault.leaks-from"), problem.message());
    }

    private RunDraft.Run run() {
        SectionBinder<RunDraft, RunDraft.Run> binder = binder(Schema.RUN);
        RunDraft.Run run = binder.bind();
        binder.target().conflict().ifPresent(message -> findings.note(new Problem("run.sample", message)));
        return run;
    }

    private <B, T> T one(Section<B, T> section) {
        return binder(section).bind();
    }

    private <B, T> SectionBinder<B, T> binder(Section<B, T> section) {
        Node node = top.get(section.name());
        Place place = new Place(section.name(), findings.place(section.name()));
        return node == null
                ? new SectionBinder<>(section, place, Map.of(), findings)
                : Parts.binder(section, place, node, findings);
    }

    private <B, T> List<T> list(Section<B, T> section, int most) {
        String name = section.name();
        Node node = top.get(name);
        if (node instanceof Items items) {
            return Parts.list(section, most, new Place(name, findings.place(name)), items, findings);
        }
        if (node != null) {
            findings.wrong(
                    name,
                    findings.place(name),
                    "needs a list, not " + node.kind() + "; begin every item with '- ', or write [] for none");
        } else if (!findings.isUnsound(name)) {
            Typical.of(name).ifPresent(typical -> findings.assume(name, typical.value(), typical.basis()));
        }
        return List.of();
    }

    /** Results tell valves apart by their names. */
    private void requireDistinctNames(List<ReliefValve> valves) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < valves.size(); i++) {
            String path = ReliefSections.RELIEF.name() + "[" + i + "]";
            Integer first = findings.isUnsound(path + ".name")
                    ? null
                    : seen.putIfAbsent(valves.get(i).name(), i);
            if (first != null) {
                findings.wrong(
                        path + ".name",
                        findings.place(path + ".name"),
                        "'" + valves.get(i).name() + "' is the name of relief[" + first
                                + "] too; results tell valves apart by it");
            }
        }
    }
}
