package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * A map of peaks, for reading on a terminal of 80 columns.
 */
public final class MapReport implements Report {

    private final Scenario scenario;
    private final PeakMap map;
    private final UnitSystem units;
    private String written = "";

    /**
     * Prepares the report.
     *
     * @param scenario whose house it is
     * @param map the peaks
     * @param units the units to show it in
     */
    public MapReport(Scenario scenario, PeakMap map, UnitSystem units) {
        this.scenario = Objects.requireNonNull(scenario, "scenario");
        this.map = Objects.requireNonNull(map, "map");
        this.units = Objects.requireNonNull(units, "units");
    }

    @Override
    public void written(Path folder, List<ResultFile> files) {
        written = WrittenFiles.line(folder, files);
    }

    @Override
    public boolean isHazard() {
        return Hazards.in(scenario.system());
    }

    @Override
    public Balances balances() {
        return map.balances();
    }

    @Override
    public String text() {
        return Alarms.lines(Alarms.of(scenario.system(), QuantityFormat.ascii(units)), "")
                + OpenBalance.lines(balances())
                + Wrapped.lines(scenario.title() + ": which volume, which precharge?", "", "") + "\n"
                + Wrapped.lines(MapFiles.sentence(map, units), "", "") + written + "\n" + Caution.text();
    }
}
