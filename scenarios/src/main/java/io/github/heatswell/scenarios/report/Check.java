package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/**
 * How the owner checks the house with a gauge, and what it should read.
 *
 * @param steps the procedure in plain words, in its order
 * @param readings the lines of the check sheet, in the order of time; none if there is nothing to read
 * @param remarks what to bear in mind, or why there is nothing to read
 */
record Check(List<String> steps, List<Reading> readings, List<String> remarks) {

    Check {
        steps = List.copyOf(steps);
        readings = List.copyOf(readings);
        remarks = List.copyOf(remarks);
    }

    /**
     * What a gauge should read at some moment.
     *
     * @param when the moment
     * @param expectedGauge what the gauge should read (Pa, gauge)
     * @param lowestGauge the lowest reading that agrees with that (Pa, gauge)
     * @param highestGauge the highest reading that agrees with that (Pa, gauge)
     * @param note what to mind, possibly nothing
     */
    record Reading(String when, double expectedGauge, double lowestGauge, double highestGauge, String note) {}

    /** What the gauge should read, and when; with room for what it does read. */
    Document.Section section(QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        if (!readings.isEmpty()) {
            if (!steps.isEmpty()) {
                blocks.add(new Block.Items(steps, Block.ListKind.STEPS));
            }
            blocks.add(new Block.CheckSheet(readings.stream()
                    .map(reading -> new Block.CheckSheet.Line(
                            reading.when(),
                            reading.note(),
                            shown.pressure(reading.expectedGauge()),
                            "agrees: " + shown.pressures(reading.lowestGauge(), reading.highestGauge())))
                    .toList()));
        }
        remarks.forEach(remark -> blocks.add(new Block.Paragraph(remark, Block.Tone.QUOTING)));
        return new Document.Section("What the gauge should read, and when", Document.Form.SHEET, blocks);
    }
}
