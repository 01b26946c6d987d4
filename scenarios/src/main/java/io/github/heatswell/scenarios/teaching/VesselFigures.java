package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.teaching.LessonRun.House;
import io.github.heatswell.system.ExpansionVessel;

/**
 * What an expansion vessel does, and what another size would do. SI units, pressures as a gauge shows them.
 *
 * @param house the house with the vessel, and its run
 */
record VesselFigures(House house) {

    /** The largest vessel that is asked about (L). */
    private static final double MAX = 500;
    /** How closely the smallest vessel is found (L). */
    private static final double CLOSE = 0.05;

    private RunResult run() {
        return house.run();
    }

    private RunFigures figures() {
        return new RunFigures(house.run());
    }

    ExpansionVessel vessel() {
        return run().system().vessel().orElseThrow();
    }

    double volume() {
        return vessel().volume();
    }

    double precharge() {
        return vessel().precharge().gauge(figures().atmosphere());
    }

    /** The part of the vessel that is full of water before anything is heated. */
    double fullAtStart() {
        return run().trace().value(Channel.VESSEL_WATER, 0) / volume();
    }

    /** The pressure of the gas before anything is heated. */
    double gasAtStart() {
        double air = figures().atmosphere();
        return (precharge() + air) / (1 - fullAtStart()) - air;
    }

    /** The usable share of a vessel charged to the supply, 1 - p1/p2 up to the set pressure. */
    double factor() {
        double air = figures().atmosphere();
        return 1 - (figures().supply() + air) / (figures().reliefSet() + air);
    }

    /** The size the formula asks for, up to the set pressure. */
    double formulaVolume() {
        double cold = figures().cold();
        double hot = figures().setPoint();
        double growth =
                WaterFacts.growth(cold, hot) - run().system().tank().shell().thermalGrowth() * (hot - cold);
        return run().system().tank().volume() * growth / factor();
    }

    /** How many times more gas gives way than as much water, at the supply pressure. */
    double gasOverWater() {
        return 1
                / (figures().supply() + figures().atmosphere())
                / WaterFacts.compressibility(figures().cold());
    }

    /** Pressure times volume of the gas at the end, beside what it was when charged: 1 by Boyle's law. */
    double boyle() {
        int last = run().trace().count() - 1;
        double gas = volume() - run().trace().value(Channel.VESSEL_WATER, last);
        double charged = precharge() + figures().atmosphere();
        return run().trace().value(Channel.PRESSURE_ABSOLUTE, last) * gas / (charged * volume());
    }

    /** The precharge that goes in the first year, by the law of the outlook. */
    double lostInAYear() {
        return precharge()
                - new PrechargeLoss(PrechargeLoss.USUAL)
                        .left(precharge(), figures().supply(), 1);
    }

    /** How long the charge takes to fall so far (years), by the law of the outlook. */
    double years(double precharge) {
        return new PrechargeLoss(PrechargeLoss.USUAL)
                .yearsUntil(precharge(), precharge, figures().supply());
    }

    /** By how much one litre more lowers the peak. */
    double saving() {
        return figures().peak() - peakWith(volume() + 1e-3);
    }

    /** Whether the peak falls by less with every litre, from the smallest that keeps the relief valve shut to twice the size. */
    boolean eachLitreSavesLess() {
        double before = Double.POSITIVE_INFINITY;
        double least = wholeLitres();
        double peak = peakWith(least);
        for (double size = least + 1e-3; size <= 2 * volume(); size += 1e-3) {
            double next = peakWith(size);
            if (peak - next >= before || peak - next <= 0) {
                return false;
            }
            before = peak - next;
            peak = next;
        }
        return true;
    }

    /** The smallest vessel that keeps the relief valve shut. */
    double smallestDry() {
        double low = 1;
        double high = MAX;
        while (high - low > CLOSE) {
            double middle = (low + high) / 2;
            if (new RunFigures(with(middle * 1e-3)).opened()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * 1e-3;
    }

    /** The smallest vessel in whole litres that keeps the relief valve shut. */
    double wholeLitres() {
        return Math.ceil(1e3 * smallestDry()) / 1e3;
    }

    /** The peak with that one. */
    double dryPeak() {
        return peakWith(wholeLitres());
    }

    private double peakWith(double volume) {
        return new RunFigures(with(volume)).peak();
    }

    /** The same house with a vessel of another size. */
    private RunResult with(double volume) {
        return house.with("vessel.volume", 1e3 * volume + " L");
    }
}
