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
    record Bound(Header header, Optional<HotWaterSystem> system, BoundHouse house, RunDraft.Run run, Costs costs) {}

    Bound bind() {
        Header header =
                new SectionBinder<>(Schema.HEADER, root, top, findings).bind().value();
        BoundHouse house = new BoundHouse();
        house.add(one(Schema.SITE), HotWaterSystem.Builder::site);
        house.add(one(SupplySections.SUPPLY), HotWaterSystem.Builder::supply);
        tank(house);
        house.add(one(HeaterSections.HEATER), HotWaterSystem.Builder::heater);
        list(TankSections.PIPE, TankSections.MAX_PIPES)
                .forEach(pipe -> house.add(pipe, HotWaterSystem.Builder::addPipe));
        List<BoundSection<?, ReliefValve>> valves = list(ReliefSections.RELIEF, ReliefSections.MAX_VALVES);
        valves.forEach(valve -> house.add(valve, HotWaterSystem.Builder::addReliefValve));
        requireDistinctNames(
                valves.stream().map(valve -> valve.given().get("name")).toList());
        if (top.containsKey(VesselSections.VESSEL.name())) {
            house.add(one(VesselSections.VESSEL), HotWaterSystem.Builder::vessel);
        }
        house.add(
                new SectionBinder<>(UseSections.EXTRAS, root, top, findings).bind(),
                (system, extras) -> extras.into(system));
        BoundSection<?, Start> start = one(Schema.START);
        RunDraft.Run run = run();
        house.add(
                start,
                (system, where) -> system.start(run.into(where.toBuilder()).build()));
        Costs costs = top.containsKey(CostsSections.COSTS.name())
                ? one(CostsSections.COSTS).value()
                : Costs.invented();
        return new Bound(header, together(house.asWritten()), house, run, costs);
    }

    /** The tank; a working pressure that nobody gave is none that its maker allows. */
    private void tank(BoundHouse house) {
        BoundSection<?, Tank> tank = one(TankSections.TANK);
        boolean assumed = findings.isAssumed(Schema.WORKING_PRESSURE);
        house.add(
                tank,
                (system, made) -> system.tank(
                        assumed
                                ? made.toBuilder()
                                        .assumedWorkingPressure(made.workingPressure())
                                        .build()
                                : made));
    }

    private Optional<HotWaterSystem> together(HotWaterSystem.Builder system) {
        try {
            return Optional.of(system.build());
        } catch (InvalidDescriptionException e) {
            e.problems().forEach(findings::note);
            return Optional.empty();
        }
    }

    private RunDraft.Run run() {
        SectionBinder<RunDraft, RunDraft.Run> binder = binder(Schema.RUN);
        RunDraft.Run run = binder.bind().value();
        binder.target().conflict().ifPresent(message -> findings.note(new Problem("run.sample", message)));
        return run;
    }

    private <B, T> BoundSection<?, T> one(Section<B, T> section) {
        return binder(section).bind();
    }

    private <B, T> SectionBinder<B, T> binder(Section<B, T> section) {
        Node node = top.get(section.name());
        Place place = new Place(section.name(), findings.place(section.name()));
        return node == null
                ? new SectionBinder<>(section, place, Map.of(), findings)
                : Parts.binder(section, place, node, findings);
    }

    private <B, T> List<BoundSection<?, T>> list(Section<B, T> section, int most) {
        String name = section.name();
        Node node = top.get(name);
        if (node instanceof Items items) {
            return Parts.list(section, most, new Place(name, findings.place(name)), items, findings);
        }
        if (node != null) {
            findings.wrong(
                    name,
                    findings.place(name),
                    "needs a list, not " + node.kind() + "; start every item with '- ', or write [] for none");
        } else if (!findings.isUnsound(name)) {
            Typical.of(name).ifPresent(typical -> findings.assume(name, typical.value(), typical.basis()));
        }
        return List.of();
    }

    /** Results tell valves apart by their names; a name is null where none was understood. */
    private void requireDistinctNames(List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            String path = ReliefSections.RELIEF.name() + "[" + i + "].name";
            int first = names.indexOf(names.get(i));
            if (names.get(i) != null && first < i) {
                findings.wrong(
                        path,
                        findings.place(path),
                        "'" + names.get(i) + "' is the name of relief[" + first
                                + "] too; every valve needs its own name in the results");
            }
        }
    }
}
