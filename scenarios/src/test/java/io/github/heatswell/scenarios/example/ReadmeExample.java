package io.github.heatswell.scenarios.example;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.RatioUnit.PERCENT;
import static io.github.heatswell.units.VolumeUnit.LITRE;

import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.units.Pressure;
import java.time.Duration;

/** The example of the project's front page, word for word between the marks. */
final class ReadmeExample {

    private ReadmeExample() {}

    /**
     * What the example finds.
     *
     * @param peak the highest pressure (bar, gauge)
     * @param relieved the water given off (L)
     */
    record Found(double peak, double relieved) {}

    static Found run() {
        // front page: begin
        HotWaterSystem lodge = Catalogue.read("orchard-lodge").system();
        ExpansionVessel vessel = ExpansionVessel.builder()
                .volume(12, LITRE)
                .precharge(Pressure.gauge(4.2, BAR))
                .acceptance(60, PERCENT)
                .build();
        HotWaterSystem cured = lodge.toBuilder().vessel(vessel).build();
        RunResult run = Simulation.of(cured, Duration.ofHours(4)).run();
        double peak = run.peak().in(BAR);
        double relieved = LITRE.fromSi(run.totals().relieved());
        // front page: end
        return new Found(peak, relieved);
    }
}
