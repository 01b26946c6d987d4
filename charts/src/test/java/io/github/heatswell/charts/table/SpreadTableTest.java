package io.github.heatswell.charts.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.table.SpreadTable.SampleWriter;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class SpreadTableTest {

    /** Peaks from 0 to 2 bar in equal steps of 16 samples, and a hundredth of it discharged. */
    @Test
    void quantilesAreThoseOfTheSamples() throws IOException {
        AtomicInteger next = new AtomicInteger();
        StudyResult result = Study.builder()
                .input("any", Distribution.between(0, 1))
                .outputs(List.of("peak", "relieved"))
                .model(values -> {
                    int i = next.getAndIncrement();
                    return new double[] {2e5 * i / 16, 1e-3 * i / 16};
                })
                .threads(1)
                .samples(17)
                .build()
                .run();
        StringBuilder si = new StringBuilder();
        SpreadTable.write(result.spread(0), result.spread(1), UnitSystem.SI, si);
        List<String> rows = si.toString().lines().toList();
        assertEquals("share_percent,peak_gauge_bar,relieved_total_L", rows.get(0));
        assertEquals(12, rows.size());
        assertEquals("0,0.00000,0.0000", rows.get(1));
        assertEquals("25,0.50000,0.2500", rows.get(5));
        assertEquals("100,2.00000,1.0000", rows.get(11));
        StringBuilder us = new StringBuilder();
        SpreadTable.write(result.spread(0), result.spread(1), UnitSystem.US, us);
        assertTrue(
                us.toString().startsWith("share_percent,peak_gauge_psi,relieved_total_gal\n0,0.0000,"), us.toString());
    }

    @Test
    void samplesAreWrittenAsTheyCome() throws IOException {
        StringBuilder out = new StringBuilder();
        SampleWriter writer = new SampleWriter(List.of("tank_volume_L", "=seat"), UnitSystem.SI, out);
        writer.add(new double[] {190.123456789, 1.5e-9}, 6.5e5, 0, false);
        writer.add(new double[] {Double.NaN, -0.0}, 20e5, 1.5e-3, true);
        writer.add(new double[] {1, 2}, Double.NaN, Double.NaN, false);
        writer.end();
        assertEquals("""
                sample,tank_volume_L,'=seat,peak_gauge_bar,relieved_total_L,hazard
                1,190.123457,0.0000000015,6.50000,0.0000,no
                2,,0,20.00000,1.5000,yes
                3,1,2,,,
                """, out.toString());
        String message = assertThrows(IllegalArgumentException.class, () -> writer.add(new double[1], 1e5, 0, false))
                .getMessage();
        assertTrue(message.startsWith("values: 1 do not go with the names of 2"), message);
    }
}
