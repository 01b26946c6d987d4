package io.github.heatswell.assessment;

import io.github.heatswell.system.NamedValue;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A finding as its rule hands it over, before it is looked at beside the others.
 *
 * @param finding the finding
 * @param inputs the values of the description it rests on; none if it only repeats the description, or speaks of what is
 *     not known itself
 * @param valve the name of the one relief valve it is about; empty if the values of all decide it
 * @param compared whether it only compares these values, so that it is open as long as one is not known; else a run shows
 *     it, or it holds whatever they are and only its numbers rest on them
 * @param unless the findings that say all it says: it is left out beside one of them, unless that one is open
 * @param neverBeside the findings that demand the opposite of its advice: it is left out beside any of them
 */
record CandidateFinding(
        Finding finding,
        Set<NamedValue> inputs,
        Optional<String> valve,
        boolean compared,
        Set<String> unless,
        Set<String> neverBeside) {

    CandidateFinding {
        inputs = Set.copyOf(inputs);
        unless = Set.copyOf(unless);
        neverBeside = Set.copyOf(neverBeside);
    }

    /** What stands of all that was found, each finding as open as what is not known leaves it. */
    static List<Finding> kept(List<CandidateFinding> all, Doubts doubts) {
        List<CandidateFinding> weighed =
                all.stream().map(found -> found.as(doubts.weighed(found))).toList();
        Set<String> open = open(all, weighed);
        return weighed.stream()
                .filter(found -> found.stands(weighed, open))
                .map(CandidateFinding::finding)
                .toList();
    }

    /** Whether nothing that stands itself takes its place: what is left out says nothing in the place of others. */
    private boolean stands(List<CandidateFinding> weighed, Set<String> open) {
        return weighed.stream().noneMatch(other -> isLeftOutBy(other.id(), open) && other.stands(weighed, open));
    }

    /** The findings that values in doubt leave open. */
    private static Set<String> open(List<CandidateFinding> said, List<CandidateFinding> weighed) {
        return IntStream.range(0, said.size())
                .filter(i ->
                        said.get(i).finding.severity() != weighed.get(i).finding.severity())
                .mapToObj(i -> said.get(i).id())
                .collect(Collectors.toSet());
    }

    private CandidateFinding as(Finding other) {
        return new CandidateFinding(other, inputs, valve, compared, unless, neverBeside);
    }

    /** Whether another finding takes its place. */
    boolean isLeftOutBy(String other, Set<String> open) {
        return neverBeside.contains(other) || unless.contains(other) && !open.contains(other);
    }

    String id() {
        return finding.id();
    }
}
