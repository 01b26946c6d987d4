package io.github.heatswell.finding;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which finding says what others would only repeat: of several with one cause, that which names the cause is kept. */
final class OneCause {

    private static final Set<String> RELIEF_OPENED = Set.of("relief-valve-controls-expansion", "peak-above-code-limit");

    private static final Set<String> PEAK = Set.of("peak-above-code-limit", "peak-near-relief");

    /** By the finding that is kept, if it is a fault or worse: those that go. */
    private static final Map<String, Set<String>> SAYS_IT_ALL = Map.ofEntries(
            Map.entry("vessel-isolated", RELIEF_OPENED),
            Map.entry("vessel-waterlogged", RELIEF_OPENED),
            Map.entry("vessel-upstream-of-check", RELIEF_OPENED),
            Map.entry("bypass-opens-too-late", RELIEF_OPENED),
            Map.entry(
                    "relief-valve-controls-expansion",
                    Set.of("expansion-control-missing", "peak-above-code-limit", "peak-near-relief")),
            Map.entry("vessel-bottomed-out", PEAK),
            Map.entry("precharge-above-static", PEAK),
            Map.entry("precharge-below-static", PEAK),
            Map.entry("vessel-too-small", PEAK),
            Map.entry("static-pressure-high", PEAK),
            Map.entry("expansion-control-missing", PEAK),
            Map.entry("supply-opens-relief-valve", Set.of("vessel-too-small")),
            Map.entry("test-pressure-reached", Set.of("working-pressure-exceeded", "peak-above-code-limit")),
            Map.entry("working-pressure-exceeded", PEAK),
            Map.entry("relief-set-above-tank", Set.of("tp-relief-set-high", "working-pressure-exceeded")),
            Map.entry("vapour-forms", Set.of("water-hotter-than-boiling")));

    private OneCause() {}

    static List<Finding> kept(List<Finding> all) {
        Set<String> gone = new TreeSet<>();
        all.stream()
                .filter(finding -> finding.severity().compareTo(Severity.FAULT) <= 0)
                .forEach(finding -> gone.addAll(SAYS_IT_ALL.getOrDefault(finding.id(), Set.of())));
        return all.stream().filter(finding -> !gone.contains(finding.id())).toList();
    }
}
