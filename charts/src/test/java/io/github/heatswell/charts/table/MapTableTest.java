package io.github.heatswell.charts.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.Maps;
import io.github.heatswell.charts.Plants;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class MapTableTest {

    @Test
    void oneRowForEachVessel() throws IOException {
        PeakMap map = Maps.smallest();
        List<String> rows = rows(map, UnitSystem.SI);
        assertEquals("volume_L,precharge_gauge_bar,peak_gauge_bar,relief_drips,peak_at_least", rows.get(0));
        assertEquals(5, rows.size());
        assertEquals("0.5000,2.00000,20.00000,yes,yes", rows.get(1));
        String peak = String.format(Locale.ROOT, "%.5f", map.peakGauge(1, 1) / 1e5);
        assertEquals("12.0000,4.20000," + peak + ",no,no", rows.get(4));
    }

    @Test
    void usesTheUnitsAskedFor() throws IOException {
        List<String> rows = rows(Maps.smallest(), UnitSystem.US);
        assertEquals("volume_gal,precharge_gauge_psi,peak_gauge_psi,relief_drips,peak_at_least", rows.get(0));
        assertTrue(rows.get(1).startsWith("0.13209,29.0075,290.0755,"), rows.get(1)); // 0.5 L, 2 bar, 20 bar
    }

    /** A valve set above the test pressure: the run ends before anybody knows whether it would drip. */
    @Test
    void leavesOpenWhatNobodyKnows() throws IOException {
        HotWaterSystem house = Plants.bare()
                .addReliefValve(Plants.valve("far too strong", 22, 21, ReliefValve.LiftCharacteristic.SNAP))
                .vessel(Plants.vessel(12, 3))
                .build();
        PeakMap map = PeakSurvey.builder(house)
                .volumes(VolumeUnit.LITRE, 0.5, 12)
                .precharges(PressureUnit.BAR, 2, 4.2)
                .build()
                .map();
        List<String> rows = rows(map, UnitSystem.SI);
        assertTrue(rows.get(1).endsWith(",,yes"), rows.get(1));
        assertTrue(rows.get(4).endsWith(",no,no"), rows.get(4));
    }

    @Test
    void needsAMap() {
        assertThrows(NullPointerException.class, () -> MapTable.write(null, UnitSystem.SI, new StringBuilder()));
    }

    private static List<String> rows(PeakMap map, UnitSystem units) throws IOException {
        StringBuilder out = new StringBuilder();
        MapTable.write(map, units, out);
        return out.toString().lines().toList();
    }
}
