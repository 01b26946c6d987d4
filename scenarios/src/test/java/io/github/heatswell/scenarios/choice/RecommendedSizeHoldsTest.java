package io.github.heatswell.scenarios.choice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Contract: in random uncertain houses the recommended size holds the limit in nine of ten samples, from the day of charging to a
 * year later. The samples are other ones than those of the answer: drawn one by one, without a sequence that fills space evenly.
 * {@code -Dsize.houses} looks at more houses.
 */
class RecommendedSizeHoldsTest {

    private static final int HOUSES = Integer.getInteger("size.houses", 4);
    private static final int SAMPLES = 100;
    /** Three standard deviations of a hundred samples above nine of ten. */
    private static final double CLEAR = 0.99;

    /** So many samples more where a hundred do not tell whether nine of ten hold. */
    private static final int MORE = 500;

    /** The share of a size that holds in just nine of ten, as counted here, is off by up to three standard deviations of so many samples. */
    private static final double SAMPLING = 3 * Math.sqrt(0.09 / (SAMPLES + MORE));

    private final Random random = new Random(20_240_607);
    private final Balances.Count count = new Balances.Count();

    @Test
    void theRecommendedSizeHolds() {
        int sized = 0;
        int held = 0;
        int below = 0;
        double least = 1;
        for (int house = 0; house < HOUSES; house++) {
            String text = text();
            Scenario scenario = ScenarioReader.read("random-" + house, text);
            Optional<SizingResult.Vessel> size =
                    VesselChoice.of(scenario).build().answer().recommended();
            if (size.isEmpty()) {
                continue;
            }
            double share = share(scenario, size.get(), SAMPLES);
            if (share < CLEAR) {
                share = (share * SAMPLES + share(scenario, size.get(), MORE) * MORE) / (SAMPLES + MORE);
            }
            sized++;
            held += (int) Math.round(share * SAMPLES);
            below += share < 0.9 ? 1 : 0;
            least = Math.min(least, share);
            assertTrue(
                    share >= 0.9 - SAMPLING,
                    share + " of the samples hold with " + size.get().volume() + " m3 in\n" + text);
            if (share < 0.9) {
                System.out.printf(
                        Locale.ROOT,
                        "below 90 %%: %.3f with %.4f m3 in%n%s",
                        share,
                        size.get().volume(),
                        text);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "recommended sizes: %d of %d houses; the limit holds in %.1f %% of all samples, in the least house in %.1f %%;"
                        + " %d houses below 90 %%%n",
                sized,
                HOUSES,
                100.0 * held / Math.max(1, sized * SAMPLES),
                100 * least,
                below);
        assertTrue(sized > HOUSES / 2, "most houses have an answer");
        assertTrue(held >= 0.9 * sized * SAMPLES, "over all houses there is no sampling error to speak of");
    }

    /** A closed house of a kind that is common, some of it uncertain. */
    private String text() {
        double supply = 2.5 + 1.8 * random.nextDouble();
        boolean reduced = random.nextBoolean();
        boolean given = random.nextInt(3) > 0;
        return String.format(
                Locale.ROOT,
                """
                supply: { arrangement: %s, pressure: %.2f bar%s, water: %.1f degC%s }
                tank:   { volume: %d L%s, material: %s, working-pressure: 10 bar }
                heater: { energy: %s, input: %.1f kW, set-point: %d degC%s }
                relief:
                  - { name: valve, opens: %.1f bar }
                run:    { duration: 2 h }
                """,
                reduced ? "reducing-valve" : "check-valve",
                reduced ? 6.0 : supply,
                given ? String.format(Locale.ROOT, " +- %.2f bar", 0.05 + 0.25 * random.nextDouble()) : "",
                6 + 10 * random.nextDouble(),
                (given ? " +- 2 K" : "")
                        + (reduced ? String.format(Locale.ROOT, ", reducing-valve: { set: %.2f bar }", supply) : ""),
                80 + random.nextInt(250),
                given ? " +- 4 %" : "",
                random.nextBoolean() ? "steel" : "stainless-steel",
                random.nextBoolean() ? "gas" : "electric",
                2 + 10 * random.nextDouble(),
                50 + random.nextInt(20),
                given ? " +- 3 K" : "",
                7 + 3.0 * random.nextInt(2));
    }

    private double share(Scenario scenario, SizingResult.Vessel size, int samples) {
        double air = scenario.system().site().atmosphere();
        double limit = VesselChoice.of(scenario).build().target().gauge();
        ExpansionVessel vessel = VesselChoice.of(scenario).build().pattern().toBuilder()
                .volume(size.volume() * 1000, VolumeUnit.LITRE)
                .precharge(size.precharge())
                .build();
        VariedHouse varied = VariedHouse.with(scenario, vessel).withUnreadLockUp(scenario);
        int holds = 0;
        for (int sample = 0; sample < samples; sample++) {
            double[] values = varied.inputs().stream()
                    .mapToDouble(input -> input.input().distribution().quantile(random.nextDouble()))
                    .toArray();
            HotWaterSystem charged = varied.house().apply(values);
            ExpansionVessel fitted = charged.vessel().orElseThrow();
            double fill = charged.supply().staticAbsolute(0, air) - air;
            double left = PrechargeLoss.Range.usual()
                    .quantile(random.nextDouble())
                    .left(fitted.precharge().gauge(air), fill, 1);
            HotWaterSystem later = charged.toBuilder()
                    .vessel(fitted.toBuilder()
                            .precharge(Pressure.gauge(left, PressureUnit.PASCAL))
                            .build())
                    .build();
            boolean kept =
                    VesselSizing.worstPeak(charged, count) <= limit && VesselSizing.worstPeak(later, count) <= limit;
            holds += kept ? 1 : 0;
        }
        return (double) holds / samples;
    }
}
