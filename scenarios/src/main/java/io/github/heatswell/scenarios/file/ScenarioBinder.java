package io.github.heatswell.scenarios.file;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.InvalidDescriptionException;
import io.github.heatswell.plant.Problem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import java.util.ArrayList;
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
    record Bound(Header header, Optional<HotWaterSystem> system, RunDraft.Run run) {}

    Bound bind() {
        Header header = new SectionBinder<>(Schema.HEADER, root, top, findings).bind();
        HotWaterSystem.Builder system = HotWaterSystem.builder()
                .site(one(Schema.SITE))
                .supply(one(Schema.SUPPLY))
                .tank(one(Schema.TANK))
                .heater(one(Schema.HEATER));
        list(Schema.PIPE).forEach(system::addPipe);
        List<ReliefValve> valves = list(Schema.RELIEF);
        valves.forEach(system::addReliefValve);
        requireDistinctNames(valves);
        if (top.containsKey(Schema.VESSEL.name())) {
            system.vessel(one(Schema.VESSEL));
        }
        if (top.containsKey(Schema.START.name())) {
            system.start(one(Schema.START));
        }
        return new Bound(header, together(system), run());
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
        if (node == null) {
            return new SectionBinder<>(section, place, Map.of(), findings);
        }
        return new SectionBinder<>(section, place, keys(section, place, node), findings);
    }

    private <B, T> List<T> list(Section<B, T> section) {
        String name = section.name();
        Node node = top.get(name);
        List<T> things = new ArrayList<>();
        if (node == null && !findings.isUnsound(name)) {
            Typical.of(name).ifPresent(typical -> findings.assume(name, typical.value(), typical.basis()));
        } else if (node instanceof Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                Node item = items.items().get(i);
                Place place = new Place(name + "[" + i + "]", item.at());
                findings.stands(place.path(), item.at());
                things.add(new SectionBinder<>(section, place, keys(section, place, item), findings).bind());
            }
        } else if (node != null) {
            findings.wrong(
                    name,
                    findings.place(name),
                    "needs a list, not " + node.kind() + "; begin every item with '- ', or write [] for none");
        }
        return things;
    }

    private Map<String, Node> keys(Section<?, ?> section, Place place, Node node) {
        if (node instanceof Mapping mapping) {
            return Keys.known(mapping, section.keys(), place, findings);
        }
        findings.wrong(
                place.path(),
                place.at(),
                "needs keys and values, not " + node.kind() + "; its keys are " + String.join(", ", section.keys()));
        return Map.of();
    }

    /** Results tell valves apart by their names. */
    private void requireDistinctNames(List<ReliefValve> valves) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < valves.size(); i++) {
            String path = Schema.RELIEF.name() + "[" + i + "]";
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
