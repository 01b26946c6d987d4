package io.github.heatswell.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How the least sum of squares changes as one coordinate is held further and further from the end of a search, to both ends of its
 * range: first in steps of its standard deviation, then in longer and longer ones. It shows where the curvature at the end
 * misleads: on a bent ridge, in a second hollow, and where nothing changes any more because a valve already lets all water go.
 *
 * @param index which coordinate
 * @param nodes where the profile was looked at, in the order of the coordinate
 */
record Profile(int index, List<Node> nodes) {

    private static final double FIRST = 1.5;
    private static final double LONGER = 1.6;
    private static final double MIN_STEP = 0.004;
    /** Further from the least than this before the others follow, a place is not worth a search. */
    private static final double HOPELESS = 400;
    /** Further from the least than this with the others following, it is not taken as the start of the next. */
    private static final double OFF = 60;

    /**
     * One place.
     *
     * @param at the coordinate
     * @param end the best position with it
     */
    record Node(double at, Search.End end) {}

    static Profile of(Trial trial, Search.End end, int index, Slopes slopes) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(new Node(end.position()[index], end));
        double first = FIRST * Math.max(MIN_STEP, slopes.deviations()[index]);
        nodes.addAll(oneSide(trial, end, index, slopes, -first));
        nodes.addAll(oneSide(trial, end, index, slopes, first));
        nodes.sort(Comparator.comparingDouble(Node::at));
        return new Profile(index, List.copyOf(nodes));
    }

    /** The nodes on one side; each begins with the better of what the slopes promise and what did for the one before. */
    private static List<Node> oneSide(Trial trial, Search.End end, int index, Slopes slopes, double first) {
        double[] following = slopes.following(index);
        FreeParameter free = trial.parameters().get(index);
        List<Node> nodes = new ArrayList<>();
        double home = end.position()[index];
        double[] before = end.position();
        double far = free.position(first < 0 ? free.low() : free.high());
        double offset = first;
        boolean last = Math.abs(far - home) < MIN_STEP;
        while (!last) {
            last = Math.abs(offset) >= Math.abs(far - home);
            double at = last ? far : home + offset;
            double[] promised = end.position().clone();
            double[] same = before.clone();
            same[index] = at;
            for (int i = 0; i < promised.length; i++) {
                promised[i] += following[i] * (at - home);
            }
            promised[index] = at;
            double[] plain = end.position().clone();
            plain[index] = at;
            Search.End held =
                    Search.holding(trial, index, HOPELESS + end.cost(), List.of(promised, same, plain), slopes);
            nodes.add(new Node(at, held));
            if (held.cost() < end.cost() + OFF) {
                before = held.position();
            }
            offset *= LONGER;
        }
        return nodes;
    }

    /** The same by the readings alone, without what was known beforehand of the coordinate. */
    Profile asRead() {
        return new Profile(
                index,
                nodes.stream()
                        .map(node -> new Node(
                                node.at, new Search.End(node.end.position(), node.end.cost() - node.at * node.at)))
                        .toList());
    }

    /** The best place seen. */
    Search.End best() {
        return nodes.stream()
                .map(Node::end)
                .min(Comparator.comparingDouble(Search.End::cost))
                .orElseThrow();
    }

    /**
     * The outermost coordinates at which the sum of squares is no more than so much above the least; between two nodes its root is
     * taken to run straight.
     */
    double[] within(double rise) {
        double limit = best().cost() + rise;
        int low = 0;
        while (nodes.get(low).end.cost() > limit) {
            low++;
        }
        int high = nodes.size() - 1;
        while (nodes.get(high).end.cost() > limit) {
            high--;
        }
        return new double[] {crossing(low, low - 1, limit), crossing(high, high + 1, limit)};
    }

    private double crossing(int inside, int outside, double limit) {
        Node in = nodes.get(inside);
        if (outside < 0 || outside >= nodes.size()) {
            return in.at;
        }
        Node out = nodes.get(outside);
        double least = best().cost();
        double from = Math.sqrt(in.end.cost() - least);
        double to = Math.sqrt(out.end.cost() - least);
        return in.at + (out.at - in.at) * (Math.sqrt(limit - least) - from) / (to - from);
    }
}
