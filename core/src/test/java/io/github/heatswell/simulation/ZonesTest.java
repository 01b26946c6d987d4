package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Moment.tap;
import static io.github.heatswell.simulation.Moment.twoElements;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.LengthUnit;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layers that mix, part, conduct and are replaced. */
class ZonesTest {

    /** Layers that mix would part at the rate that is told: looked at with the zone cut there. */
    @Test
    void howFastLayersOfAZoneWouldPart() {
        double[][] tanks = {
            {20, 20, 20, 20, 20, 20}, {12, 30, 30, 30, 30, 55}, {12, 12, 30, 30, 55, 55}, {30, 30, 30, 30, 55, 55}
        };
        int[][] zones = {{0, 1, 2, 3, 4}, {1, 2, 3}, {0, 2, 4}, {0, 1, 2, 4}};
        for (int i = 0; i < tanks.length; i++) {
            for (Draw draw : new Draw[] {tap(6), null}) {
                for (int cut : zones[i]) {
                    Moment now = new Moment(twoElements(6, 6, 2), 4.2, tanks[i])
                            .with(PressureRegime.HELD)
                            .under(0, 0, true, draw)
                            .heating();
                    now.calling(1);
                    Moment mixed = now.joined(zones[i]);
                    mixed.rates(mixed.y);
                    double lead = mixed.balance.column().inversionTendency(cut);
                    boolean[] joined = new boolean[5];
                    Arrays.stream(zones[i]).filter(layer -> layer != cut).forEach(layer -> joined[layer] = true);
                    now.modes = now.modes.withJoined(joined);
                    double[] rates = now.rates(now.y);
                    double parted = rates[now.vector.lowest + cut] - rates[now.vector.lowest + cut + 1];
                    assertEquals(parted, lead, 1e-9 + 0.01 * Math.abs(parted), "tank " + i + " cut above " + cut);
                }
            }
        }
    }

    @Test
    void howFastTheWaterOfALayerIsReplaced() {
        Moment now = new Moment(twoElements(6, 6, 2), 4.2, 12, 12, 30, 30, 55, 55)
                .joined(0, 2)
                .with(PressureRegime.HELD)
                .under(0, 0, true, tap(6));
        double[] rates = now.rates(now.y);
        double perLayer = 0.23 / 6;
        for (int layer = 0; layer < 6; layer++) {
            assertEquals(
                    rates[StateVector.DRAWN] / 990 / perLayer,
                    now.balance.column().turnover(layer),
                    5e-5);
            assertEquals(4.15e6 * perLayer, now.balance.column().capacity(layer), 0.02 * 4.15e6 * perLayer);
        }
        Moment sealed = new Moment(twoElements(6, 6, 2), 5, 12, 12, 30, 30, 55, 55).heating();
        sealed.rates(sealed.y);
        assertTrue(sealed.balance.column().turnover(0) > 0, "downwards too");
    }

    /**
     * Four layers of one temperature, heated at the bottom and at the top: the lower three share their element, and the fourth
     * joins them if a third of it is more than its own.
     */
    @ParameterizedTest
    @CsvSource({"0.8, true", "1.2, false"})
    void layersMixWithThoseThatWouldOvertakeThem(double kilowatt, boolean joined) {
        Moment now = new Moment(twoElements(4, 3, kilowatt), 5, 40, 40, 40, 40).heating();
        now.calling(1);
        now.balance.under(now.conditions);
        Modes chosen = new RegimeSelector(now.plant, now.balance).choose(now.modes, now.conditions, now.y, true);
        assertTrue(chosen.joined(0) && chosen.joined(1));
        assertEquals(joined, chosen.joined(2));
    }

    /**
     * Validation: 1.2 W/(m K) over the cross-section and the distance of two layers, by hand; the water this moves is little.
     */
    @Test
    void whatTwoLayersConduct() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .tank(Parts.tank(230, Parts.steel(480, 2.2), 0, 10).toBuilder()
                        .layers(2)
                        .height(1.3, LengthUnit.METRE)
                        .build());
        Moment now = new Moment(house, 4.2, 20, 60).with(PressureRegime.HELD);
        double conductance = 1.2 * (0.23 / 1.3) / (1.3 / 2);
        double[] rates = now.rates(now.y);
        double lower = rates[now.vector.lowest] * now.balance.column().capacity(0);
        double upper = rates[now.vector.highest] * now.balance.column().capacity(1);
        assertEquals(conductance * 40, lower, 0.03 * conductance * 40);
        assertEquals(-conductance * 40, upper, 0.03 * conductance * 40);
    }
}
