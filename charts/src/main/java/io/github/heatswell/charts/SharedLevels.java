package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The levels of several systems. What they share stands once; what differs says whose it is. */
final class SharedLevels {

    private final List<NamedRun> runs;
    private final QuantityFormat amounts;

    SharedLevels(List<NamedRun> runs, QuantityFormat amounts) {
        this.runs = runs;
        this.amounts = amounts;
    }

    List<Level> all() {
        Map<Alike, List<Owned>> alike = new LinkedHashMap<>();
        for (NamedRun run : runs) {
            for (Level level : new Levels(run.result().summary(), amounts).shared()) {
                alike.computeIfAbsent(new Alike(level.kind(), level.amount()), key -> new ArrayList<>())
                        .add(new Owned(level, run.name()));
            }
        }
        return alike.values().stream().map(group -> named(group, alike)).toList();
    }

    private Level named(List<Owned> group, Map<Alike, List<Owned>> alike) {
        Level level = group.get(0).level();
        long ofThisKind = alike.keySet().stream()
                .filter(key -> key.kind() == level.kind())
                .count();
        List<String> owners = group.stream().map(Owned::run).distinct().toList();
        if (ofThisKind == 1) {
            return level;
        }
        String whose = owners.size() == 1 ? "“" + owners.get(0) + "”" : owners.size() + " runs";
        return new Level(level.kind(), level.value(), level.amount(), level.name() + ": " + whose);
    }

    /**
     * What makes two levels one line.
     *
     * @param kind the kind of level
     * @param amount where it lies, as written
     */
    private record Alike(Level.Kind kind, String amount) {}

    /**
     * A level and the run it belongs to.
     *
     * @param level the level
     * @param run the name of the run
     */
    private record Owned(Level level, String run) {}
}
