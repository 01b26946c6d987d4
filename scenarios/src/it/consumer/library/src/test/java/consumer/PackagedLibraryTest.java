package consumer;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What somebody gets who depends on the packaged jars and their poms, and on nothing of the source tree. */
class PackagedLibraryTest {

    private static final Duration HEAT_UP = Duration.ofHours(5);

    @Test
    void theClassesComeOutOfJars() {
        for (Class<?> type : Set.of(Simulation.class, Chart.class)) {
            String from = type.getProtectionDomain().getCodeSource().getLocation().getPath();
            assertTrue(from.endsWith(".jar"), from);
            assertTrue(from.contains("/consumer/repository/"), from);
        }
    }

    /** Nothing pushes the water back, so a rigid house without a vessel must open its valve. */
    @Test
    void aRunWithoutVesselOpensTheValveAndKeepsItsBooks() {
        RunResult run = Simulation.of(Cottage.withoutVessel(), HEAT_UP).run();

        double opened = run.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        assertTrue(opened > 0 && opened < HEAT_UP.toSeconds(), "opened after " + opened + " s");
        double peak = run.peak().in(BAR);
        assertEquals(7, peak, 0.05, "the peak is where the valve opens, and a growing flow lifts it little further");
        assertTrue(run.totals().relieved() > 0);
    }

    @Test
    void aVesselKeepsItShut() {
        HotWaterSystem cured = Cottage.withoutVessel().toBuilder()
                .vessel(ExpansionVessel.builder()
                        .volume(18, VolumeUnit.LITRE)
                        .precharge(Pressure.gauge(3.5, BAR))
                        .acceptance(60, RatioUnit.PERCENT)
                        .build())
                .build();
        RunResult run = Simulation.of(cured, HEAT_UP).run();
        assertTrue(run.first(Event.Kind.RELIEF_OPENED).isEmpty());
        assertEquals(0, run.totals().relieved());
    }

    /** A lift curve, a law of the gas and a power curve of one's own need nothing but public interfaces, and each counts. */
    @Test
    void partsOfOnesOwnChangeTheRun() {
        HotWaterSystem usual = Cottage.withoutVessel();
        HotWaterSystem vessel = usual.toBuilder().vessel(Cottage.vessel().build()).build();
        assertOtherEvents(usual, Cottage.withQuickOpeningValve());
        assertOtherEvents(usual, Cottage.withHeatPump());
        assertOtherEvents(vessel, Cottage.withStretchingDiaphragm());
    }

    private static void assertOtherEvents(HotWaterSystem usual, HotWaterSystem own) {
        RunResult run = Simulation.of(own, HEAT_UP).run();
        assertTrue(run.audit().closes(), run.audit().toString());
        assertNotEquals(Simulation.of(usual, HEAT_UP).run().events(), run.events());
    }

    @Test
    void theRunBecomesAPictureASentenceAndATable() throws IOException {
        RunResult run = Simulation.of(Cottage.withoutVessel(), HEAT_UP).run();
        Path file = Path.of("target", "cottage.png");
        try (OutputStream out = Files.newOutputStream(file)) {
            Chart.of(run, UnitSystem.SI).writePng(out);
        }
        BufferedImage image = ImageIO.read(file.toFile());
        assertNotNull(image, "the file is a picture");
        assertEquals(2 * 1040, image.getWidth(), "two pixels for each logical one, as the Javadoc says");
        assertTrue(shades(image) > 10, "lines, words and curves are on it");

        String headline = Narrative.of(run.summary(), Doubts.NONE).headline().text(UnitSystem.SI);
        assertFalse(headline.isBlank());
        StringBuilder table = new StringBuilder();
        TraceTable.write(run, UnitSystem.SI, table);
        assertTrue(table.toString().lines().count() > HEAT_UP.toMinutes(), "a line for each minute and a head");
    }

    private static int shades(BufferedImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 3) {
            for (int x = 0; x < image.getWidth(); x += 3) {
                seen.add(image.getRGB(x, y));
            }
        }
        return seen.size();
    }
}
