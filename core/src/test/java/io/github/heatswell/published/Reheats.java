package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.House.fahrenheit;
import static io.github.heatswell.published.Prediction.Method.FORMULA;
import static io.github.heatswell.published.Prediction.Method.SIMULATION;
import static io.github.heatswell.published.Verdict.ABOVE;
import static io.github.heatswell.published.Verdict.PARTLY;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.VolumeUnit.US_GALLON;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.units.FlowUnit;
import java.time.Duration;
import java.util.List;

/** Draws, reheating, thermostats, and the limits of a tank. */
final class Reheats {

    private static final double NOON = 12 * 3600.0;

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

    private static DrawProfile noon(double gallons, double gallonsPerMinute) {
        return DrawProfile.of(
                "noon",
                List.of(Draw.builder()
                        .at(NOON)
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
                .draws(noon(15, at[4]))
                .startsAt(hot)
                .run(Duration.ofHours(16));
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
                .draws(noon(0.6 * at[0], at[3]))
                .startsAt(hot)
                .run(Duration.ofHours(13))
                .trace();
        double before = trace.value(Channel.WATER_TOP, (int) (NOON / 60));
        int end = (int) ((NOON + 0.6 * at[0] / at[3] * 60) / 60);
        return 1.8 * (before - trace.value(Channel.WATER_TOP, end));
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
