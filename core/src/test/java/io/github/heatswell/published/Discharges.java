package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.BandVerdict.ABOVE;
import static io.github.heatswell.published.BandVerdict.BELOW;
import static io.github.heatswell.published.Prediction.Method.SIMULATION;
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.VolumeUnit.LITRE;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.DrawProfile;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** What relief valves discharge without a vessel: in a day of a household, in one heat-up, in an hour of steady heating. */
final class Discharges {

    private static final Map<String, DrawProfile> PROFILES = DrawProfile.published();
    /** From one sink to a large household, by the European profiles; the sources do not say who lives there. */
    private static final double[] HOUSEHOLD = {0, 1};

    private static final String[] NAMES = {"eu-s", "eu-xl"};
    private static final int DAYS = 2;

    private Discharges() {}

    static List<Prediction> all() {
        return List.of(
                Prediction.of(
                        "DV-01",
                        SIMULATION,
                        "150 to 200 L at 55 to 65 °C, mains 3 bar, valve 7 bar, cold water 10 to 15 °C, household from EU profile S"
                                + " to XL, wall, air",
                        () -> household(open(150, 200), open(55, 65), 3, 7)),
                Prediction.of(
                                "DV-02",
                                SIMULATION,
                                "a sound valve: the same tanks, heated once from cold",
                                () -> heatUp(open(150, 200), open(55, 65), 3, 7))
                        .but(
                                ABOVE,
                                "As it should be: so much in six hours is not expansion. The source blames a scaled valve."),
                Prediction.of(
                                "DV-03",
                                SIMULATION,
                                "125 to 315 L at 60 to 65 °C, supply 5 bar, valve 10 bar, cold water 10 to 15 °C, household from"
                                        + " EU profile S to XL, wall, air",
                                () -> household(open(125, 315), open(60, 65), 5, 10))
                        .but(BandVerdict.PARTLY, "Large households heat more water than that."),
                Prediction.of(
                        "DV-04",
                        SIMULATION,
                        "150 to 200 L at 55 to 65 °C, cold water 10 to 15 °C, household from EU profile S to XL, wall, air",
                        () -> household(open(150, 200), open(55, 65), 3, 4)),
                Prediction.of(
                                "DV-05",
                                SIMULATION,
                                "cold water 10 to 15 °C, set point 60 to 70 °C, supply 5 bar, valve 10 bar, wall, air",
                                () -> heatUp(open(250), open(60, 70), 5, 10))
                        .remark("The 3 % rule is an upper bound."),
                Prediction.of(
                        "DV-06",
                        SIMULATION,
                        "200 L, cold water 10 to 15 °C, set point 60 to 80 °C, supply 3 bar, wall, air",
                        () -> scaled(heatUp(open(200), open(60, 80), 3, 7), 100.0 / 200)),
                Prediction.of(
                                "DV-07",
                                SIMULATION,
                                "a full heat-up: cold water 10 to 15 °C, set point 55 to 65 °C, supply 3 bar, valve 7 bar,"
                                        + " wall, air",
                                () -> heatUp(open(200), open(55, 65), 3, 7))
                        .but(
                                BELOW,
                                "It would fit a small part of the tank, not a full heat-up. How much water is reheated is"
                                        + " rarely stated, and explains most of the scatter."),
                Prediction.of(
                                "DV-08",
                                SIMULATION,
                                "cold water 10 to 15 °C, set point 60 to 65 °C, supply 3 bar, valve 7 bar, wall, air",
                                () -> scaled(heatUp(open(300), open(60, 65), 3, 7), 365))
                        .remark("It is the 3 % rule, 365 times."),
                Prediction.of("BL-05", SIMULATION, "rigid or steel tank of pure water", Discharges::steadyHeating)
                        .but(
                                ABOVE,
                                "The source's coefficient belongs to brine under two pressures. It is more than three"
                                        + " times that of water and must not be used for a hot-water tank."));
    }

    /** Litres a day. */
    private static Band household(double[] litres, double[] set, double supplyBar, double opensBar) {
        return Band.over(
                at -> LITRE.fromSi(sound(at[0], at[1], at[2], at[3], at[4], supplyBar, opensBar)
                                .draws(profile(at[5]))
                                .startsAt(at[1])
                                .run(Duration.ofDays(DAYS))
                                .totals()
                                .relieved())
                        / DAYS,
                litres,
                set,
                House.COLD,
                House.WALL,
                House.AIR,
                HOUSEHOLD);
    }

    /** Litres in one heat-up from cold. */
    private static Band heatUp(double[] litres, double[] set, double supplyBar, double opensBar) {
        return Band.over(
                at -> LITRE.fromSi(sound(at[0], at[1], at[2], at[3], at[4], supplyBar, opensBar)
                        .run(Duration.ofHours(8))
                        .totals()
                        .relieved()),
                litres,
                set,
                House.COLD,
                House.WALL,
                House.AIR);
    }

    private static House sound(
            double litres, double set, double cold, double wall, double air, double supplyBar, double opensBar) {
        return House.of(litres, LITRE)
                .wall(wall)
                .air(air)
                .cold(cold)
                .to(set)
                .supply(supplyBar, BAR)
                .relief(opensBar, BAR);
    }

    private static DrawProfile profile(double index) {
        return PROFILES.get(NAMES[(int) index]);
    }

    private static Band scaled(Band band, double factor) {
        return new Band(band.low() * factor, band.high() * factor);
    }

    /** Kilograms an hour that 34 kW press out between 15.5 and 48 degC. */
    private static Band steadyHeating() {
        return Band.over(
                at -> {
                    RunResult run = House.of(1000, LITRE)
                            .wall(at[0])
                            .cold(15.5)
                            .to(48)
                            .power(34)
                            .lossless()
                            .supply(3, BAR)
                            .relief(3.05, BAR, 0.99)
                            .run(Duration.ofHours(2));
                    double time = run.first(Event.Kind.HEATER_OFF).orElseThrow().time();
                    return run.totals().relief().get(0).mass() / time * 3600;
                },
                open(0, 200));
    }
}
