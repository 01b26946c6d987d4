package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.teaching.LessonRun.House;
import io.github.heatswell.system.ExpansionVessel;

/** What an expansion vessel does, and what another size would do. */
final class VesselMetrics {

    /** The largest vessel that is asked about (L). */
    private static final double LARGEST = 500;
    /** How closely the smallest vessel is found (L). */
    private static final double CLOSE = 0.05;

    private VesselMetrics() {}

    static ExpansionVessel vessel(RunResult run) {
        return run.system().vessel().orElseThrow();
    }

    /** The precharge (Pa gauge). */
    static double precharge(RunResult run) {
        return vessel(run).precharge().gauge(RunMetrics.atmosphere(run));
    }

    /** The part of the vessel that is full of water before anything is heated. */
    static double fullAtStart(RunResult run) {
        return run.trace().value(Channel.VESSEL_WATER, 0) / vessel(run).volume();
    }

    /** The pressure of the gas before anything is heated (Pa gauge). */
    static double gasAtStart(RunResult run) {
        double air = RunMetrics.atmosphere(run);
        return vessel(run).precharge().absolute(air) / (1 - fullAtStart(run)) - air;
    }

    /** The usable share of a vessel charged to the supply, 1 - p1/p2 up to the set pressure. */
    static double factor(RunResult run) {
        double air = RunMetrics.atmosphere(run);
        return 1 - (RunMetrics.supply(run) + air) / (RunMetrics.reliefSet(run) + air);
    }

    /** The size the formula asks for, up to the set pressure (m3). */
    static double formulaVolume(RunResult run) {
        double warming = RunMetrics.setPoint(run) - RunMetrics.cold(run);
        double growth = WaterFacts.growth(RunMetrics.cold(run), RunMetrics.setPoint(run))
                - run.system().tank().shell().thermalGrowth() * warming;
        return run.system().tank().volume() * growth / factor(run);
    }

    /** How many times more gas gives way than as much water, at the supply pressure. */
    static double gasOverWater(RunResult run) {
        return 1
                / (RunMetrics.supply(run) + RunMetrics.atmosphere(run))
                / WaterFacts.compressibility(RunMetrics.cold(run));
    }

    /** The product p V_gas over p_0 V_0 at the last sample; 1 by Boyle's law. */
    static double boyle(RunResult run) {
        int last = run.trace().count() - 1;
        double volume = vessel(run).volume();
        double gas = volume - run.trace().value(Channel.VESSEL_WATER, last);
        double precharge = vessel(run).precharge().absolute(RunMetrics.atmosphere(run));
        return run.trace().value(Channel.PRESSURE_ABSOLUTE, last) * gas / (precharge * volume);
    }

    /** The precharge that goes in the first year (Pa, difference), by the law of the outlook. */
    static double lostInAYear(RunResult run) {
        double now = precharge(run);
        return now - new PrechargeLoss(PrechargeLoss.USUAL).left(now, RunMetrics.supply(run), 1);
    }

    /** How long the charge takes to fall so far (years), by the law of the outlook. */
    static double years(RunResult run, double precharge) {
        return new PrechargeLoss(PrechargeLoss.USUAL).yearsUntil(precharge(run), precharge, RunMetrics.supply(run));
    }

    /** The same house with a vessel of another size (m3). */
    static RunResult with(House house, double volume) {
        return house.with("vessel.volume", 1e3 * volume + " L");
    }

    /** By how much one litre more lowers the peak (Pa, difference). */
    static double saving(House house) {
        double more = vessel(house.run()).volume() + 1e-3;
        return RunMetrics.peak(house.run()) - RunMetrics.peak(with(house, more));
    }

    /** Whether the peak falls by less with every litre, from the smallest that keeps the relief valve shut to twice the size. */
    static boolean eachLitreSavesLess(House house) {
        double before = Double.POSITIVE_INFINITY;
        double least = wholeLitres(house);
        double peak = RunMetrics.peak(with(house, least));
        for (double size = least + 1e-3; size <= 2 * vessel(house.run()).volume(); size += 1e-3) {
            double next = RunMetrics.peak(with(house, size));
            if (peak - next >= before || peak - next <= 0) {
                return false;
            }
            before = peak - next;
            peak = next;
        }
        return true;
    }

    /** The smallest vessel that keeps the relief valve shut (m3). */
    static double smallestDry(House house) {
        double low = 1;
        double high = LARGEST;
        while (high - low > CLOSE) {
            double middle = (low + high) / 2;
            if (RunMetrics.opened(house.with("vessel.volume", middle + " L"))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * 1e-3;
    }

    /** The smallest vessel in whole litres that keeps the relief valve shut (m3). */
    static double wholeLitres(House house) {
        return Math.ceil(1e3 * smallestDry(house)) / 1e3;
    }
}
