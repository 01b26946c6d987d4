package io.github.heatswell.published;

import static io.github.heatswell.published.Band.open;
import static io.github.heatswell.published.BandVerdict.ABOVE;
import static io.github.heatswell.published.House.fahrenheit;
import static io.github.heatswell.published.Prediction.Method.FORMULA;
import static io.github.heatswell.published.Prediction.Method.SIMULATION;
import static io.github.heatswell.published.Prediction.Method.SIZING;
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static io.github.heatswell.units.VolumeUnit.US_GALLON;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselFormula;
import io.github.heatswell.sizing.VesselFormula.NetExpansion;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.List;

/** Sizes of vessels: by the formulas of standards, by simulated sizing, and vessels of a given size in a run. */
final class Sizings {

    private static final GibbsPolynomialWater WATER = GibbsPolynomialWater.instance();

    private Sizings() {}

    static List<Prediction> all() {
        return List.of(
                Prediction.of(
                                "PR-06",
                                SIZING,
                                "cold water 40 to 60 °F, set point 120 to 140 °F, charge 70 psi, wall",
                                () -> Band.over(
                                        at -> US_GALLON.fromSi(sized(
                                                House.of(75, US_GALLON)
                                                        .wall(at[0])
                                                        .cold(fahrenheit(at[1]))
                                                        .to(fahrenheit(at[2]))
                                                        .power(4.5)
                                                        .supply(70, PSI)
                                                        .working(150, PSI),
                                                VesselSizing.Precharge.STATIC,
                                                Pressure.gauge(150, PSI))),
                                        House.WALL,
                                        open(40, 60),
                                        open(120, 140)))
                        .remark(
                                "Two gallons are just too few for the coldest water and the highest setting, or for a charge"
                                        + " left at 40 psi; run and sizing agree."),
                Prediction.ofSeveral("SZ-01", FORMULA, "nothing", () -> List.of(din(6), din(8))),
                Prediction.ofSeveral(
                                "SZ-01",
                                SIZING,
                                "rigid tank, or steel with wall",
                                () -> List.of(simulated(6), simulated(8)))
                        .but(
                                ABOVE,
                                "The standard rounds the growth of water up (0.023 for 0.0224), counts it hot and leaves"
                                        + " out the growth of the tank: a little on the safe side."),
                Prediction.of(
                        "SZ-03", SIMULATION, "nothing", () -> Band.of(US_GALLON.fromSi(captive(50) - captive(30)))),
                Prediction.of(
                        "SZ-05",
                        FORMULA,
                        "filled at 10 °C, heated to 80 to 90 °C, highest pressure 2.7 to 3 bar",
                        () -> heating(0.7, 90)),
                Prediction.ofSeveral(
                                "SZ-06",
                                FORMULA,
                                "the same",
                                () -> List.of(heating(0.5, 90), heating(0.75, 90), heating(1, 90), heating(1.5, 90)))
                        .but(
                                ABOVE,
                                "These factors ask for about one and a half times as much as the other British standard,"
                                        + " whose figure is in its band. Do not mix the two."),
                Prediction.of(
                        "SZ-08",
                        SIZING,
                        "200 L from 10 to 55 to 65 °C, supply 2.5 to 3.5 bar, highest pressure 5 to 6 bar, rigid tank, or"
                                + " steel",
                        () -> Band.over(
                                at -> 100
                                        * sized(
                                                House.of(200, LITRE)
                                                        .wall(at[0])
                                                        .cold(10)
                                                        .to(at[1])
                                                        .supply(at[2], BAR),
                                                VesselSizing.Precharge.STATIC,
                                                Pressure.gauge(at[3], BAR))
                                        / 0.2,
                                open(0, 200),
                                open(55, 65),
                                open(2.5, 3.5),
                                open(5, 6))),
                Prediction.of("AS-01", SIMULATION, "wall", () -> Band.over(Sizings::handbookSystem, House.WALL))
                        .but(
                                ABOVE,
                                "The handbook counts the volume of the hot water; what enters a cold vessel is about 4 % less."
                                        + " The pressure stays a little lower: on the safe side."));
    }

    private static Band din(double psv) {
        return Band.of(LITRE.fromSi(VesselFormula.dinDrinkingWater(LITRE.toSi(100), 343.15, BAR.toSi(3), BAR.toSi(psv))
                .size()
                .volume()));
    }

    /** The same house by simulation: 100 L from 10 to 70 degC, supply 3 bar, charge 2.8 bar, up to 0.8 of the setting. */
    private static Band simulated(double psv) {
        return Band.over(
                at -> LITRE.fromSi(sized(
                        House.of(100, LITRE).wall(at[0]).cold(10).to(70).supply(3, BAR),
                        VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR,
                        Pressure.gauge(0.8 * psv, BAR))),
                open(0, 150, 300));
    }

    /** The smallest vessel (m3). */
    private static double sized(House house, VesselSizing.Precharge rule, Pressure limit) {
        HotWaterSystem system = house.system();
        SizingTarget target = SizingTarget.builder(system)
                .vesselRating(Pressure.gauge(16, BAR))
                .withoutCodeCap()
                .own(limit)
                .build();
        ExpansionVessel type = ExpansionVessel.builder()
                .volume(10, LITRE)
                .precharge(Pressure.gauge(2, BAR))
                .acceptance(100, RatioUnit.PERCENT)
                .build();
        return VesselSizing.builder(system, target)
                .precharge(rule)
                .vesselLike(type)
                .build()
                .size()
                .smallest()
                .orElseThrow()
                .volume();
    }

    /** Water (m3) in a vessel of 85 gal charged to 28 psi, at rest at a supply pressure (psi). */
    private static double captive(double psi) {
        return House.of(50, US_GALLON)
                .wall(0)
                .cold(15)
                .to(20)
                .supply(psi, PSI)
                .vessel(85, US_GALLON, Pressure.gauge(28, PSI))
                .run(Duration.ofMinutes(1))
                .trace()
                .value(Channel.VESSEL_WATER, 0);
    }

    /** Vessel over volume of a heating system with a 3 bar valve. */
    private static Band heating(double initialBar, double hottest) {
        return Band.over(
                at -> VesselFormula.handbookDiaphragm(
                                new NetExpansion(
                                        1,
                                        1 / WATER.density(283.15, 3e5),
                                        1 / WATER.density(at[0] + 273.15, 3e5),
                                        0,
                                        at[0] - 10),
                                BAR.toSi(initialBar + 1),
                                BAR.toSi(at[1] + 1))
                        .size()
                        .volume(),
                open(80, hottest),
                open(2.7, 3));
    }

    /** Pressure (psig) at 220 degF in 3000 gal, filled at 40 degF and 10 psig, with the handbook's 344 gal vessel. */
    private static double handbookSystem(double[] at) {
        RunResult run = House.of(3000, US_GALLON)
                .wall(at[0])
                .cold(fahrenheit(40))
                .to(90)
                .stuckThermostat()
                .power(500)
                .supply(10, PSI)
                .vessel(344, US_GALLON, Pressure.gauge(10, PSI))
                .run(Duration.ofHours(4));
        Trace trace = run.trace();
        double hot = fahrenheit(220) + 273.15;
        int after = 0;
        while (trace.value(Channel.WATER_MEAN, after) < hot) {
            after++;
        }
        double before = trace.value(Channel.WATER_MEAN, after - 1);
        double share = (hot - before) / (trace.value(Channel.WATER_MEAN, after) - before);
        double from = trace.value(Channel.PRESSURE_ABSOLUTE, after - 1);
        double to = trace.value(Channel.PRESSURE_ABSOLUTE, after);
        return PSI.fromSi(run.gauge(from + share * (to - from)));
    }
}
