package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.BandVerdict.ABOVE;
import static io.github.heatswell.published.House.fahrenheit;
import static io.github.heatswell.published.Prediction.Method.FORMULA;
import static io.github.heatswell.published.Prediction.Method.SIMULATION;
import static io.github.heatswell.published.Prediction.Method.TABLE;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static io.github.heatswell.units.VolumeUnit.US_GALLON;

import io.github.heatswell.result.Totals;
import io.github.heatswell.sizing.VesselFormula.NetExpansion;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;

/** By how much water grows, from runs of tanks that are open to the mains and from the formula of the handbook. */
final class ExpandedVolumes {

    private static final GibbsPolynomialWater WATER = GibbsPolynomialWater.instance();
    private static final double ATMOSPHERE = 101_325;
    private static final String MEASURED = "measured cold or hot, with or without the growth of the steel";

    private ExpandedVolumes() {}

    static List<Prediction> all() {
        return List.of(
                grown("EV-01", 200, LITRE, open(10), open(60), MEASURED),
                grown("EV-02", 100, LITRE, open(10), open(60), MEASURED),
                grown("EV-03", 40, US_GALLON, open(fahrenheit(90)), open(fahrenheit(140)), MEASURED),
                grown(
                        "EV-04",
                        40,
                        US_GALLON,
                        open(fahrenheit(40), fahrenheit(60)),
                        open(fahrenheit(120), fahrenheit(140)),
                        "cold water 40 to 60 °F, setting 120 to 140 °F, " + MEASURED),
                grown("EV-05", 30, US_GALLON, open(fahrenheit(40)), open(fahrenheit(120)), MEASURED)
                        .but(ABOVE, "Water does not grow that much, by any table of water."),
                grown("EV-06", 30, US_GALLON, open(fahrenheit(60)), open(fahrenheit(140)), MEASURED)
                        .but(ABOVE, "The page uses one coefficient for all temperatures."),
                grown("EV-11", 180, LITRE, House.COLD, open(60, 70), "10 or 15 to 60 or 70 °C, " + MEASURED)
                        .remark("A rule of 3 % is safe, but far more than water does at these temperatures."),
                Prediction.ofSeveral(
                        "EV-07",
                        TABLE,
                        "nothing",
                        () -> at(
                                t -> Band.of(100 * (WATER.density(277.15, ATMOSPHERE) / density(t) - 1)),
                                30,
                                40,
                                50,
                                60,
                                70,
                                80,
                                90)),
                Prediction.ofSeveral(
                                "EV-08",
                                FORMULA,
                                "filled at 4 to 10 °C, steel of 11.5 to 12.4e-6 per kelvin",
                                () -> at(
                                        t -> relative(t, open(4, 10), open(11.5e-6, 12.4e-6)),
                                        30,
                                        40,
                                        50,
                                        60,
                                        70,
                                        80,
                                        100))
                        .remark("Growth of water less that of steel. Of water alone, these coefficients would be too"
                                + " small."),
                Prediction.ofSeveral(
                                "EV-10",
                                FORMULA,
                                "filled at 10 to 15 °C, rigid",
                                () -> at(t -> relative(t, open(10, 15), open(0)), 30, 40, 50, 60, 70))
                        .remark("This guide and the table of the standard as we recall it (0.93 % at 40 °C, tested"
                                + " elsewhere) differ. We could not read the standard itself."));
    }

    private static Prediction grown(
            String figure, double volume, VolumeUnit unit, double[] cold, double[] hot, String open) {
        return Prediction.of(
                figure,
                SIMULATION,
                open,
                () -> Band.over(at -> pushedOut(volume, unit, at), cold, hot, open(0, 200), open(0, 1)));
    }

    /** What a tank, open to the mains, sends back to them: as cold water, or as the hot water it was in the tank. */
    private static double pushedOut(double volume, VolumeUnit unit, double[] at) {
        Totals totals = House.of(volume, unit)
                .openToMains()
                .lossless()
                .cold(at[0])
                .to(at[1])
                .wall(at[2])
                .run(Duration.ofHours(12))
                .totals();
        double cold = totals.returned() - totals.letIn();
        return unit.fromSi(at[3] == 0 ? cold : cold * density(at[0]) / density(at[1]));
    }

    private static List<Band> at(DoubleFunction<Band> band, double... celsius) {
        return Arrays.stream(celsius).mapToObj(band).toList();
    }

    private static Band relative(double celsius, double[] fill, double[] linearExpansion) {
        return Band.over(
                at -> new NetExpansion(1, 1 / density(at[0]), 1 / density(celsius), at[1], celsius - at[0]).volume(),
                fill,
                linearExpansion);
    }

    private static double density(double celsius) {
        return WATER.density(celsius + 273.15, ATMOSPHERE);
    }
}
