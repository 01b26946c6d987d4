package io.github.heatswell.charts.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.SampledPeaks;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTableTest {

    @Test
    void quantilesAreThoseOfTheSamples() throws IOException {
        double[] peaks = new double[200];
        for (int i = 0; i < 200; i++) {
            peaks[i] = 1e3 * (i + 1);
        }
        StringBuilder out = new StringBuilder();
        SpreadTable.write(SampledPeaks.builder(peaks).build(), UnitSystem.SI, out);
        List<String> rows = out.toString().lines().toList();
        assertEquals("share_percent,peak_gauge_bar", rows.get(0));
        assertEquals(
                List.of("0,0.01000", "1,0.02000", "5,0.10000", "10,0.20000", "25,0.50000", "50,1.00000", "75,1.50000"),
                rows.subList(1, 8));
        assertEquals("100,2.00000", rows.get(11));
        StringBuilder us = new StringBuilder();
        SpreadTable.write(SampledPeaks.builder(peaks).build(), UnitSystem.US, us);
        assertTrue(us.toString().startsWith("share_percent,peak_gauge_psi\n0,0.1450\n"), us.toString());
    }

    @Test
    void samplesAreWrittenAsTheyCome() throws IOException {
        StringBuilder out = new StringBuilder();
        SampleWriter writer = new SampleWriter(List.of("tank_volume_L", "=seat"), UnitSystem.SI, out);
        writer.add(new double[] {190.123456789, 1.5e-9}, 6.5e5, false, false);
        writer.add(new double[] {Double.NaN, -0.0}, 20e5, true, true);
        writer.end();
        assertEquals("""
                sample,tank_volume_L,'=seat,peak_gauge_bar,relief_drips,peak_at_least
                1,190.123457,0.0000000015,6.50000,no,no
                2,,0,20.00000,yes,yes
                """, out.toString());
        String message = assertThrows(
                        IllegalArgumentException.class, () -> writer.add(new double[1], 1e5, false, false))
                .getMessage();
        assertTrue(message.startsWith("values: 1 do not go with the names of 2"), message);
    }
}
