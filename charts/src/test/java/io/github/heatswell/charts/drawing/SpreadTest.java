package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.drawing.Gutter.Spread;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpreadTest {

    @Test
    void leavesBlocksWhereTheyAreWantedIfTheyFit() {
        assertArrayEquals(
                new double[] {5, 45}, Spread.tops(new double[] {10, 50}, new double[] {10, 10}, 0, 100), 1e-9);
    }

    @Test
    void sharesTheShiftBetweenBlocksOfOneHeight() {
        assertArrayEquals(
                new double[] {40, 50}, Spread.tops(new double[] {50, 50}, new double[] {10, 10}, 0, 100), 1e-9);
    }

    @Test
    void keepsWithinTheRoom() {
        assertArrayEquals(
                new double[] {0, 80, 90},
                Spread.tops(new double[] {-50, 99, 100}, new double[] {10, 10, 10}, 0, 100),
                1e-9);
    }

    @Test
    void overrunsDownwardsOnlyIfTheRoomIsTooSmall() {
        assertArrayEquals(
                new double[] {0, 30, 60},
                Spread.tops(new double[] {10, 20, 30}, new double[] {30, 30, 30}, 0, 50),
                1e-9);
    }

    @Test
    void neverOverlaps() {
        Random random = new Random(20_261_125);
        for (int round = 0; round < 500; round++) {
            int count = 1 + random.nextInt(8);
            double[] centres = random.doubles(count, -20, 420).sorted().toArray();
            double[] heights = random.doubles(count, 10, 50).toArray();
            double[] tops = Spread.tops(centres, heights, 0, 400);
            for (int i = 0; i < count; i++) {
                double next = i == count - 1 ? 400 : tops[i + 1];
                assertTrue(tops[i] >= -1e-9 && tops[i] + heights[i] <= next + 1e-9, "seed 20261125, round " + round);
            }
        }
    }
}
