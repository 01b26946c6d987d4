package io.github.heatswell.assessment;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which findings do not stand beside others: those that only repeat what a graver one says of the same cause, and those whose
 * advice is the opposite of what a graver one demands. A finding that names another cause always stays.
 */
final class FindingSuppression {

    private static final Set<String> RELIEF_OPENED = Set.of("relief-valve-controls-expansion", "peak-above-code-limit");

    private static final Set<String> PEAK = Set.of("peak-above-code-limit", "peak-near-relief");

    /** By the finding that is kept, unless it is open: those that only repeat it. */
    static final Map<String, Set<String>> SAYS_IT_ALL = Map.ofEntries(
            Map.entry("vessel-isolated", RELIEF_OPENED),
            Map.entry("vessel-waterlogged", RELIEF_OPENED),
            Map.entry("vessel-upstream-of-check", RELIEF_OPENED),
            Map.entry("bypass-opens-too-late", RELIEF_OPENED),
            Map.entry("relief-valve-controls-expansion", Set.of("expansion-control-missing", "peak-above-code-limit")),
            Map.entry("vessel-bottomed-out", PEAK),
            Map.entry("vessel-too-small", PEAK),
            Map.entry("static-pressure-high", Set.of("peak-near-relief")),
            Map.entry("expansion-control-missing", PEAK),
            Map.entry("test-pressure-reached", Set.of("working-pressure-exceeded", "peak-above-code-limit")),
            Map.entry("working-pressure-exceeded", PEAK),
            Map.entry("relief-set-above-tank", Set.of("tp-relief-set-high")));

    /** A heater that is to be off is not to be set hotter. */
    private static final Set<String> HOTTER = Set.of("stored-too-cool");

    /** By the finding that is kept, however grave: those that advise the opposite. */
    static final Map<String, Set<String>> FORBIDS = Map.ofEntries(
            Map.entry("thermostat-stuck", HOTTER),
            Map.entry("cut-out-tripped", HOTTER),
            Map.entry("relief-valve-opened-by-heat", HOTTER),
            Map.entry("water-hotter-than-boiling", HOTTER),
            Map.entry("boiling-margin-small", HOTTER),
            Map.entry("vapour-forms", HOTTER),
            Map.entry("test-pressure-reached", HOTTER),
            Map.entry("water-out-of-range", HOTTER),
            Map.entry("water-freezes", HOTTER),
            Map.entry("pressure-lost", HOTTER),
            Map.entry("relief-valve-chatters", HOTTER),
            Map.entry("relief-valve-blocked", HOTTER),
            Map.entry("relief-valve-missing", HOTTER),
            Map.entry("relief-set-above-tank", HOTTER),
            Map.entry("tp-relief-rating-low", HOTTER));

    private FindingSuppression() {}

    /**
     * What stands.
     *
     * @param all what was found
     * @param open the findings that values in doubt leave open: they leave nothing out that only repeats them
     */
    static List<Finding> kept(List<Finding> all, Set<String> open) {
        Set<String> gone = new TreeSet<>();
        all.forEach(finding -> gone.addAll(leavesOut(finding.id(), open)));
        return all.stream().filter(finding -> !gone.contains(finding.id())).toList();
    }

    /** What does not stand beside a finding. */
    static Set<String> leavesOut(String kept, Set<String> open) {
        Set<String> gone = new TreeSet<>(FORBIDS.getOrDefault(kept, Set.of()));
        if (!open.contains(kept)) {
            gone.addAll(SAYS_IT_ALL.getOrDefault(kept, Set.of()));
        }
        return gone;
    }
}
