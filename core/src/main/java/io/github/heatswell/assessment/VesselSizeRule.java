package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.volume;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Tank;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import java.util.function.Consumer;

/**
 * Whether the vessel takes what the water gains: by the run if it heated the water through, or else by an estimate with
 * Boyle's law and a tank that grows and stretches.
 */
final class VesselSizeRule implements Rule {

    /** A run that came this close (K) to the set point has shown what the vessel does. */
    private static final double HEATED_THROUGH = 1;

    @Override
    public void look(AssessmentContext subject, Consumer<Found> found) {
        if (!subject.open() && subject.highestStatic() < subject.firstLimit() - SAME) {
            List<ExpansionVessel> vessels = subject.soundVessels().stream()
                    .filter(vessel -> !subject.isOutOfReach(vessel))
                    .toList();
            if (vessels.size() > 1) {
                look(subject, vessels, found);
            } else {
                vessels.forEach(vessel -> look(subject, vessel, found));
            }
        }
    }

    /** Several vessels share the expansion; one that is full leaves it to the others. */
    private static void look(AssessmentContext subject, List<ExpansionVessel> vessels, Consumer<Found> found) {
        double all = vessels.stream().mapToDouble(ExpansionVessel::volume).sum();
        if (subject.run.isPresent() && !subject.drivenUp() && heatedThrough(subject, subject.run.get())) {
            if (reliefOpened(subject, subject.run.get())) {
                found.accept(tooSmall(subject, "The vessels, {} together, could", all));
            }
            return;
        }
        double needed = needed(subject);
        double room = vessels.stream()
                .mapToDouble(vessel -> room(subject, vessel, PrechargeRule.charge(subject, vessel)))
                .sum();
        if (room < needed) {
            found.accept(estimated(subject, "The vessels, {} together, have", all, needed, room));
        }
    }

    private static void look(AssessmentContext subject, ExpansionVessel vessel, Consumer<Found> found) {
        if (PrechargeRule.farOff(subject, vessel)) {
            double charge = PrechargeTarget.of(subject, vessel).pumpToGauge();
            estimate(subject, vessel, charge, ", if charged to the supply,", found);
        } else if (subject.drivenUp()) {
            estimate(subject, vessel, PrechargeRule.charge(subject, vessel), "", found);
        } else if (subject.run.isPresent() && bottomedOut(subject.run.get())) {
            found.accept(bottomed(subject, vessel));
        } else if (subject.run.isPresent() && reliefOpened(subject, subject.run.get())) {
            found.accept(
                    tooSmall(subject, Rule.sentence(subject.calledWithVolume(vessel)) + " could", vessel.volume()));
        } else if (subject.run.isEmpty() || !heatedThrough(subject, subject.run.get())) {
            estimate(subject, vessel, PrechargeRule.charge(subject, vessel), "", found);
        }
    }

    private static void estimate(
            AssessmentContext subject, ExpansionVessel vessel, double charge, String condition, Consumer<Found> found) {
        double needed = needed(subject);
        double room = room(subject, vessel, charge);
        if (room < needed) {
            found.accept(estimated(
                    subject,
                    Rule.sentence(subject.calledWithVolume(vessel)) + condition + " has",
                    vessel.volume(),
                    needed,
                    room));
        }
    }

    private static boolean bottomedOut(RunSummary run) {
        return !run.intervals(Interval.Phase.VESSEL_FULL).isEmpty();
    }

    private static boolean reliefOpened(AssessmentContext subject, RunSummary run) {
        return subject.firstRelief()
                .map(ReliefValve::name)
                .filter(name -> run.openings(name).anyMatch(Event::openedByPressure))
                .isPresent();
    }

    private static boolean heatedThrough(AssessmentContext subject, RunSummary run) {
        return run.extremes().highestTemperature().value() > subject.highestSetPoint() - HEATED_THROUGH;
    }

    /** What the water gains from the cold fill to the set point, that of a loop included, less what the tank gives (m3). */
    static double needed(AssessmentContext subject) {
        return needed(subject, subject.highestStatic(), subject.firstLimit(), subject.highestSetPoint());
    }

    /** The same between two pressures (Pa, gauge) at the drain cock, up to a temperature (K). */
    static double needed(AssessmentContext subject, double from, double to, double hot) {
        Tank tank = subject.house.tank();
        double cold = subject.house.coldAtStart();
        double ratio = density(hot, to + subject.atmosphere) / density(cold, from + subject.atmosphere);
        double growth =
                tank.shell().thermalGrowth() * (hot - cold) + tank.shell().compliance() * (to - from);
        return subject.house.hotVolume() * (1 - ratio * (1 + growth));
    }

    /** As the run takes it: a valve may open a little above the pressures for which the accuracy of the formulation is stated. */
    private static double density(double temperature, double pressureAbsolute) {
        LiquidWater.State state = new LiquidWater.State();
        GibbsPolynomialWater.instance().evaluate(temperature, pressureAbsolute, state);
        return state.density();
    }

    /** What the vessel takes between the supply's pressure and the first limit, with its gas at one temperature (m3). */
    static double room(AssessmentContext subject, ExpansionVessel vessel, double charge) {
        return room(subject, vessel, charge, subject.highestStatic(), subject.firstLimit());
    }

    /** The same between two pressures (Pa, gauge) at the drain cock. */
    static double room(AssessmentContext subject, ExpansionVessel vessel, double charge, double from, double to) {
        double lift = subject.lift(vessel.height());
        double low = water(subject, vessel, charge, from - lift);
        return Math.max(0, water(subject, vessel, charge, to - lift) - low);
    }

    private static double water(AssessmentContext subject, ExpansionVessel vessel, double charge, double gauge) {
        double share = 1 - (charge + subject.atmosphere) / (gauge + subject.atmosphere);
        return vessel.volume() * Math.max(0, Math.min(vessel.acceptance(), share));
    }

    private static Found bottomed(AssessmentContext subject, ExpansionVessel vessel) {
        Measure most = volume(vessel.acceptance() * vessel.volume());
        return Finding.draft("vessel-bottomed-out", Severity.FAULT)
                .rests(Deciding.CUSHIONED)
                .says(
                        Rule.sentence(subject.calledWithVolume(vessel))
                                + " was full: its diaphragm had reached its end with {} of water behind it.",
                        volume(vessel.volume()),
                        most)
                .found(most)
                .limit(most)
                .advisesWork("Have its precharge checked first and, if that is right, a larger vessel fitted.")
                .by(Codes.RUN);
    }

    private static Found tooSmall(AssessmentContext subject, String what, double volume) {
        return Finding.draft("vessel-too-small", Severity.FAULT)
                .compares(Deciding.CUSHIONED)
                .compares(subject.limitInputs())
                .says(
                        what + " not hold the pressure below the {} at which "
                                + Rule.quoted(
                                        subject.firstRelief().orElseThrow().name()) + " opens.",
                        volume(volume),
                        gauge(subject.firstLimit()))
                .found(gauge(subject.peak()))
                .limit(gauge(subject.firstLimit()))
                .advisesWork(
                        "Have its precharge checked first and, if that is right, a larger vessel fitted. Never plug, cap"
                                + " or downsize the relief valve.")
                .by(Codes.RUN);
    }

    private static Found estimated(AssessmentContext subject, String what, double volume, double needed, double room) {
        return Finding.draft("vessel-too-small", Severity.FAULT)
                .compares(Deciding.CUSHIONED)
                .compares(subject.limitInputs())
                .says(
                        what + " room for {} until " + subject.givesWay() + ", and a full heat-up needs about {}.",
                        volume(volume),
                        volume(room),
                        gauge(subject.firstLimit()),
                        volume(needed))
                .found(volume(room))
                .limit(volume(needed))
                .advisesWork("Have its precharge checked first and, if that is right, a larger vessel fitted.")
                .by(Authority.computed("Boyle's law for the gas; density of water; growth and stretch of the tank"));
    }
}
