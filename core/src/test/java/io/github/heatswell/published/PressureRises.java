package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.BandVerdict.ABOVE;
import static io.github.heatswell.published.BandVerdict.BELOW;
import static io.github.heatswell.published.BandVerdict.PARTLY;
import static io.github.heatswell.published.House.fahrenheit;
import static io.github.heatswell.published.Prediction.Method.SIMULATION;
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PASCAL;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static io.github.heatswell.units.VolumeUnit.US_GALLON;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.Pressure;
import java.time.Duration;
import java.util.List;

/** Rises of pressure in a closed system, with and without a vessel. */
final class PressureRises {

    private static final Duration DAY = Duration.ofDays(1);
    /** Steel pipe to thin tank, where a source says "tank or piping" (diameter over wall). */
    private static final double[] PIPE_TO_TANK = {20, 300};

    private PressureRises() {}

    static List<Prediction> all() {
        return List.of(
                Prediction.of(
                                "PR-01",
                                SIMULATION,
                                "start 40 to 70 °F, supply 50 to 80 psi, wall, air; mean slope from the supply's pressure to the"
                                        + " test pressure of 300 psi",
                                () -> Band.over(
                                        at -> meanSlope(at[0], at[1], at[2], at[3]),
                                        open(40, 70),
                                        open(50, 80),
                                        House.WALL,
                                        House.AIR))
                        .but(
                                PARTLY,
                                "The maker's tests lie at the soft end of the band and just beyond, as if its tanks gave more than"
                                        + " a plain steel cylinder with little air."),
                Prediction.of(
                        "PR-02",
                        SIMULATION,
                        "cold water 10 to 15 °C, 2.2 to 2.4 kW, wall, air",
                        () -> timeToOpen(7, 60)),
                Prediction.of("PR-03", SIMULATION, "the same", () -> timeToOpen(16, 3600))
                        .but(
                                ABOVE,
                                "The page's other figure, 7 bar after 30 minutes, fits a steel tank; this one needs about"
                                        + " three times the give of one. No constant stiffness gives both: more air, soft"
                                        + " pipe or a weeping seat would."),
                Prediction.of(
                        "PR-04",
                        SIMULATION,
                        "diameter over wall 20 (pipe) to 300 (tank), air; the run ends at 363 psi",
                        () -> Band.over(
                                at -> PSI.fromSi(House.of(50, US_GALLON)
                                        .wall(at[0])
                                        .air(at[1])
                                        .cold(fahrenheit(75))
                                        .to(fahrenheit(85))
                                        .supply(50, PSI)
                                        .working(12.5, BAR)
                                        .pressureWhenHot(DAY)),
                                PIPE_TO_TANK,
                                House.AIR)),
                Prediction.of(
                        "PR-06-2",
                        SIMULATION,
                        "cold water 40 to 60 °F, set point 120 to 140 °F, charge 40 psi (as shipped) or 70 psi, wall, no"
                                + " relief valve",
                        () -> peakWithVessel(2)),
                Prediction.of("PR-06-4.5", SIMULATION, "the same", () -> peakWithVessel(4.5)),
                Prediction.of(
                        "PR-07",
                        SIMULATION,
                        "steel pipe of diameter over wall 30, 0 to 1 % air; the run ends at 363 psi",
                        () -> Band.over(
                                at -> PSI.fromSi(House.of(200, LITRE)
                                        .wall(30)
                                        .air(at[0])
                                        .cold(fahrenheit(50))
                                        .to(fahrenheit(80))
                                        .supply(75, PSI)
                                        .working(12.5, BAR)
                                        .pressureWhenHot(DAY)),
                                open(0, 0.01))),
                Prediction.of(
                                "PR-08",
                                SIMULATION,
                                "steel pipe of diameter over wall 10 to 100, 10 to 20 °C as in such tests, no air",
                                () -> Band.over(at -> slopeAt(at[0], at[1]), open(10, 100), open(10, 20)))
                        .but(
                                ABOVE,
                                "A rigid line of water reaches 100 psi a degree only above 60 °C. Near 10 to 20 °C the"
                                        + " rule is several times too high."),
                Prediction.of(
                                "BL-06",
                                SIMULATION,
                                "nothing; a textbook tank, which no pressure harms",
                                () -> Band.of(PSI.fromSi(rigid(fahrenheit(40), fahrenheit(100)))))
                        .but(
                                BELOW,
                                "The printed answer treats water as a gas and is more than a hundred times too small. It is"
                                        + " kept as a trap."),
                Prediction.of(
                                "BL-07",
                                SIMULATION,
                                "nothing; a textbook tank, which no pressure harms",
                                () -> Band.of(rigid(10.9, 40) / 101_325))
                        .but(
                                BELOW,
                                "The exercise holds the stiffness of water constant; it grows with pressure and warmth."),
                Prediction.ofSeveral("BL-08", SIMULATION, "nothing", () -> List.of(apiTank(15), apiTank(20)))
                        .remark(
                                "The source holds the properties of water constant; hence the difference of less than one per cent."));
    }

    /** Rise (Pa) of water in a rigid tank that is closed at a tenth of a bar and warmed between two temperatures (degC). */
    private static double rigid(double cold, double hot) {
        double closed = BAR.toSi(0.1);
        return House.of(200, LITRE)
                        .textbook()
                        .lossless()
                        .cold(cold)
                        .to(hot)
                        .supply(closed, PASCAL)
                        .pressureWhenHot(DAY)
                - closed;
    }

    /** Mean slope (psi/degF) from the supply's pressure until the test pressure or the set point. */
    private static double meanSlope(double startFahrenheit, double supplyPsi, double wall, double air) {
        RunResult run = House.of(50, US_GALLON)
                .wall(wall)
                .air(air)
                .cold(fahrenheit(startFahrenheit))
                .to(fahrenheit(140))
                .supply(supplyPsi, PSI)
                .working(150, PSI)
                .run(DAY);
        Event end = run.first(Event.Kind.TEST_PRESSURE_REACHED)
                .or(() -> run.first(Event.Kind.HEATER_OFF))
                .orElseThrow();
        double rise = PSI.fromSi(run.gauge(end.pressureAbsolute())) - supplyPsi;
        return rise / ((end.waterTemperature() - 273.15) * 1.8 + 32 - startFahrenheit);
    }

    /** Time until a pressure (bar) is reached in the 200 L electric heater of the page. */
    private static Band timeToOpen(double bar, double unit) {
        return Band.over(
                at -> House.of(200, LITRE)
                                .wall(at[0])
                                .air(at[1])
                                .cold(at[2])
                                .to(65)
                                .power(at[3])
                                .relief(bar, BAR)
                                .working(10, BAR)
                                .run(DAY)
                                .first(Event.Kind.RELIEF_OPENED)
                                .orElseThrow()
                                .time()
                        / unit,
                House.WALL,
                House.AIR,
                House.COLD,
                open(2.2, 2.4));
    }

    private static Band peakWithVessel(double gallons) {
        return Band.over(
                at -> PSI.fromSi(House.of(75, US_GALLON)
                        .wall(at[0])
                        .air(0)
                        .cold(fahrenheit(at[1]))
                        .to(fahrenheit(at[2]))
                        .power(4.5)
                        .supply(70, PSI)
                        .working(150, PSI)
                        .vessel(gallons, US_GALLON, Pressure.gauge(at[3], PSI))
                        .pressureWhenHot(DAY)),
                House.WALL,
                open(40, 60),
                open(120, 140),
                open(40, 70));
    }

    /** Slope (psi/degF) of a pipe full of water at a temperature. */
    private static double slopeAt(double wall, double celsius) {
        return slope(wall, 0, celsius, PSI.toSi(60)) / PSI.toSi(1) / 1.8;
    }

    /** Slope (Pa/K) of 200 L at 20 degC and 3 bar. */
    static double slope(double wall, double air) {
        return slope(wall, air, 20, BAR.toSi(3));
    }

    private static double slope(double wall, double air, double celsius, double from) {
        double warming = 0.5;
        double to = House.of(200, LITRE)
                .wall(wall)
                .air(air)
                .cold(celsius)
                .to(celsius + warming)
                .differential(0.2)
                .supply(from, PASCAL)
                .pressureWhenHot(DAY);
        return (to - from) / warming;
    }

    /** Absolute pressure (bar) of the steel tank of 450 x 2.2 mm, heated from 10 degC and 4.5 bar absolute. */
    private static Band apiTank(double celsius) {
        double gauge = House.of(200, LITRE)
                .wall(450 / 2.2)
                .cold(10)
                .to(celsius)
                .supply(4.5 - 1.01325, BAR)
                .working(12.5, BAR)
                .pressureWhenHot(DAY);
        return Band.of(BAR.fromSi(gauge) + 1.01325);
    }
}
