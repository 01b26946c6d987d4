package io.github.heatswell.scenarios.page;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.VolumeUnit;

/** The peak of the worst heat-up over the sizes on sale and the precharge, for a vessel like the one a house has. */
final class MappedPeaks {

    private MappedPeaks() {}

    /** Volumes (m3), precharges and peaks (Pa, gauge; row by row of one volume), and the smallest volumes that do not drip and that keep the limit of a sizing, if any. */
    static Values values(Scenario scenario) {
        double[] sizes = scenario.costs().vessels().stream()
                .mapToDouble(NominalSize::volume)
                .sorted()
                .toArray();
        PeakMap map = PeakSurvey.builder(scenario.system())
                .volumes(VolumeUnit.CUBIC_METRE, sizes)
                .target(VesselChoice.of(scenario).build().target())
                .build()
                .map();
        int rows = map.volumeCount();
        int columns = map.prechargeCount();
        double[] volumes = new double[rows];
        double[] precharges = new double[columns];
        double[] drips = new double[columns];
        double[] keeps = new double[columns];
        double[] peaks = new double[rows * columns];
        for (int column = 0; column < columns; column++) {
            precharges[column] = map.prechargeGauge(column);
            drips[column] = map.dripVolume(column).orElse(Double.NaN);
            keeps[column] = map.targetVolume(column).orElse(Double.NaN);
        }
        for (int row = 0; row < rows; row++) {
            volumes[row] = map.volume(row);
            for (int column = 0; column < columns; column++) {
                peaks[row * columns + column] = map.peakGauge(row, column);
            }
        }
        Narrative narrative = Narrative.of(map);
        QuantityFormat format = QuantityFormat.unicode(scenario.units());
        return new Values()
                .with("volumes", volumes)
                .with("precharges", precharges)
                .with("peaks", peaks)
                .with("drips", drips)
                .with("keeps", keeps)
                .with("reliefSet", map.setting().reliefSetGauge().orElse(Double.NaN))
                .with("headline", narrative.headline().text(format) + ".")
                .with("facts", narrative.facts().text(format));
    }
}
