package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.BandVerdict.ABOVE;
import static io.github.heatswell.published.BandVerdict.PARTLY;
import static io.github.heatswell.published.House.fahrenheit;
import static io.github.heatswell.published.Prediction.Method.FORMULA;
import static io.github.heatswell.published.Prediction.Method.SIMULATION;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.VolumeUnit.US_GALLON;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Draws, reheating, thermostats, and the limits of a tank. */
final class Reheats {

    /** When the tap opens (s after the start). */
    private static final double OPENED = 600;

    private Reheats() {}

    static List<Prediction> all() {
        return List.of(
                Prediction.of(
                                "TH-01",
                                SIMULATION,
                                "gas heater of 40 gal with 30 000 to 40 000 Btu/h and 70 to 80 % efficiency, set point 120 to 140"
                                        + " °F, cold water 40 to 60 °F, 2 to 4 gal/min, fully mixed; counted from the opening or the"
                                        + " closing of the tap",
                                () -> Band.over(
                                        Reheats::minutesToReheat,
                                        open(30_000, 40_000),
                                        open(0.7, 0.8),
                                        open(120, 140),
                                        open(40, 60),
                                        open(2, 4),
                                        open(0, 1)))
                        .but(PARTLY, "The longest time needs a burner below 30 000 Btu/h."),
                Prediction.of(
                        "TH-02",
                        SIMULATION,
                        "30 to 100 gal, set point 120 to 140 °F, cold water 40 to 60 °F, 2 to 4 gal/min, fully mixed to 50"
                                + " layers",
                        () -> Band.over(
                                Reheats::fallAtTheTap,
                                open(30, 100),
                                open(120, 140),
                                open(40, 60),
                                open(2, 4),
                                open(1, 50))),
                Prediction.of(
                                "TH-03",
                                SIMULATION,
                                "40 gal in 10 to 40 layers, set point 120 to 140 °F, cold water 40 to 60 °F, half a gallon or"
                                        + " one every ten minutes for six hours",
                                () -> Band.over(
                                        Reheats::stacking, open(10, 40), open(120, 140), open(40, 60), open(0.5, 1)))
                        .but(
                                PARTLY,
                                "Simulated water never overheats at the top: what a burner heats at the bottom rises and"
                                        + " mixes. Gas heaters do overheat after short draws; allow for it in the set point."),
                Prediction.of("TH-04", SIMULATION, "tank of 40 gal, cold water 40 to 60 °F", Reheats::hottest)
                        .but(
                                ABOVE,
                                "The simulated burner stops at its set point. Real controls overshoot; enter the"
                                        + " temperature that is reached as the set point."),
                Prediction.of(
                        "TH-05",
                        FORMULA,
                        "nothing: twice the working pressure of 150 psi",
                        () -> Band.of(PSI.fromSi(heater(40).system().tank().testPressureAbsolute(0)))));
    }

    private static House heater(double gallons) {
        return House.of(gallons, US_GALLON)
                .wall(200)
                .cold(15)
                .to(60)
                .gas(40_000, 0.76)
                .supply(60, PSI)
                .working(150, PSI)
                .relief(150, PSI);
    }

    private static DrawProfile oneDraw(double gallons, double gallonsPerMinute) {
        return DrawProfile.of(
                "one draw",
                List.of(Draw.builder()
                        .timeOfDay(OPENED, DurationUnit.SECOND)
                        .volume(gallons, US_GALLON)
                        .flow(gallonsPerMinute, FlowUnit.US_GALLON_PER_MINUTE)
                        .build()));
    }

    private static double minutesToReheat(double[] at) {
        double hot = fahrenheit(at[2]);
        RunResult run = heater(40)
                .gas(at[0], at[1])
                .to(hot)
                .cold(fahrenheit(at[3]))
                .draws(oneDraw(15, at[4]))
                .startsAt(hot)
                .run(Duration.ofHours(3));
        double drawn = run.first(at[5] == 0 ? Event.Kind.DRAW_STARTED : Event.Kind.DRAW_ENDED)
                .orElseThrow()
                .time();
        double off = run.events().stream()
                .filter(event -> event.kind() == Event.Kind.HEATER_OFF && event.time() > drawn)
                .mapToDouble(Event::time)
                .findFirst()
                .orElseThrow();
        return (off - drawn) / 60;
    }

    /** By how much (degF) the water at the top has cooled when 60 % of the tank is drawn. */
    private static double fallAtTheTap(double[] at) {
        double hot = fahrenheit(at[1]);
        Trace trace = heater(at[0])
                .to(hot)
                .cold(fahrenheit(at[2]))
                .layers((int) at[4])
                .draws(oneDraw(0.6 * at[0], at[3]))
                .startsAt(hot)
                .run(Duration.ofHours(1))
                .trace();
        double before = trace.value(Channel.WATER_TOP, (int) (OPENED / 60));
        int end = (int) ((OPENED + 0.6 * at[0] / at[3] * 60) / 60);
        return 1.8 * (before - trace.value(Channel.WATER_TOP, end));
    }

    /** By how much (degF) short draws heat the top of the tank above the set point. */
    private static double stacking(double[] at) {
        List<Draw> draws = IntStream.range(0, 36)
                .mapToObj(i -> Draw.builder()
                        .timeOfDay(i * 600, DurationUnit.SECOND)
                        .volume(at[3], US_GALLON)
                        .flow(2, FlowUnit.US_GALLON_PER_MINUTE)
                        .build())
                .toList();
        double set = fahrenheit(at[1]);
        RunResult run = heater(40)
                .to(set)
                .cold(fahrenheit(at[2]))
                .layers((int) at[0])
                .draws(DrawProfile.of("short draws", draws))
                .startsAt(set)
                .run(Duration.ofHours(7));
        double hottest =
                Arrays.stream(run.trace().values(Channel.WATER_TOP)).max().orElseThrow();
        return 1.8 * (hottest - set - 273.15);
    }

    private static Band hottest() {
        return Band.over(
                at -> {
                    double kelvin = heater(40)
                            .cold(fahrenheit(at[0]))
                            .to(fahrenheit(120))
                            .run(Duration.ofHours(4))
                            .first(Event.Kind.HEATER_OFF)
                            .orElseThrow()
                            .waterTemperature();
                    return (kelvin - 273.15) * 1.8 + 32;
                },
                open(40, 60));
    }
}
