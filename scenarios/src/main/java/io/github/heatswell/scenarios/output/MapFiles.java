package io.github.heatswell.scenarios.output;

import io.github.heatswell.charts.MapChart;
import io.github.heatswell.charts.table.MapTable;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/**
 * The files of a map of peaks.
 */
public final class MapFiles {

    private MapFiles() {}

    /**
     * The files.
     *
     * @param map the peaks
     * @param units the units of table and picture
     * @return map.csv, map.png and map.svg
     */
    public static List<ResultFile> of(PeakMap map, UnitSystem units) {
        MapChart chart = MapChart.of(map, units);
        return List.of(
                ResultFile.ofText("map.csv", out -> MapTable.write(map, units, out)),
                ResultFile.of("map.png", chart::writePng),
                ResultFile.ofText("map.svg", chart::writeSvg));
    }

    /**
     * The map in a sentence.
     *
     * @param map the peaks
     * @param units the units of the sentence
     * @return a sentence in characters that every terminal can show
     */
    public static String sentence(PeakMap map, UnitSystem units) {
        return Sentence.of(MapChart.of(map, units).headline());
    }
}
