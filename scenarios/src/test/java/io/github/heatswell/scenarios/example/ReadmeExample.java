package io.github.heatswell.scenarios.example;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.RatioUnit.PERCENT;
import static io.github.heatswell.units.VolumeUnit.LITRE;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.Results;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;

/** The example of the project's front page, word for word between the marks. */
final class ReadmeExample {

    private ReadmeExample() {}

    /**
     * What the example finds.
     *
     * @param peak the highest pressure (bar, gauge)
     * @param relieved the water given off (L)
     * @param files what tells of it
     */
    record Found(double peak, double relieved, List<ResultFile> files) {}

    static Found run() {
        // front page: begin
        HotWaterSystem lodge = Catalogue.read("orchard-lodge").system();
        ExpansionVessel vessel = ExpansionVessel.builder()
                .volume(24, LITRE)
                .precharge(Pressure.gauge(4.2, BAR))
                .acceptance(60, PERCENT)
                .build();
        HotWaterSystem cured = lodge.toBuilder().vessel(vessel).build();
        Scenario scenario =
                Scenario.of("cured-lodge", "Lodge with a vessel", cured, Duration.ofHours(4), Duration.ofMinutes(1));
        RunResult run = scenario.simulation().run();
        double peak = run.peak().in(BAR);
        double relieved = LITRE.fromSi(run.totals().relieved());
        List<ResultFile> files = Results.of(scenario, run, UnitSystem.SI);
        // front page: end
        return new Found(peak, relieved, files);
    }
}
