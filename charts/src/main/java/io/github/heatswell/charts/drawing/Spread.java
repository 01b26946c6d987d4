package io.github.heatswell.charts.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Stacks blocks without overlap, each as near as possible to its wanted place: overlapping blocks form a pile centred
 * on the average of their wanted places.
 */
final class Spread {

    private Spread() {}

    /**
     * The upper edges of the blocks, which stay in the order given, the first at the top.
     *
     * @param centres where the middle of each block is wanted
     * @param heights how tall each block is
     * @param top the upper end of the room
     * @param bottom the lower end of the room; overrun only if the blocks are taller together than the room
     */
    static double[] tops(double[] centres, double[] heights, double top, double bottom) {
        List<Pile> piles = new ArrayList<>();
        for (int index = 0; index < centres.length; index++) {
            Pile pile =
                    new Pile(List.of(index), centres[index] - heights[index] / 2, heights[index]).within(top, bottom);
            while (!piles.isEmpty() && piles.get(piles.size() - 1).bottom() > pile.top()) {
                pile = piles.remove(piles.size() - 1)
                        .under(pile, centres, heights)
                        .within(top, bottom);
            }
            piles.add(pile);
        }
        double[] tops = new double[centres.length];
        for (Pile pile : piles) {
            double at = pile.top();
            for (int index : pile.members()) {
                tops[index] = at;
                at += heights[index];
            }
        }
        return tops;
    }

    /**
     * Blocks that lie on each other.
     *
     * @param members the blocks from above to below
     * @param top the upper edge of the first
     * @param height how tall they are together
     */
    private record Pile(List<Integer> members, double top, double height) {

        double bottom() {
            return top + height;
        }

        /** This pile with another under it, at the height that suits the members on average. */
        Pile under(Pile lower, double[] centres, double[] heights) {
            List<Integer> all = new ArrayList<>(members);
            all.addAll(lower.members);
            double above = 0;
            double wanted = 0;
            for (int index : all) {
                wanted += centres[index] - heights[index] / 2 - above;
                above += heights[index];
            }
            return new Pile(all, wanted / all.size(), above);
        }

        Pile within(double least, double most) {
            return new Pile(members, Math.max(least, Math.min(top, most - height)), height);
        }
    }
}
