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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Whether the vessel takes up the expansion: by the run if it heated the water through, or else by an estimate with Boyle's law and a tank that expands and stretches.
 */
final class VesselSizeRule implements Rule {

    /** A run that came this close (K) to the set point has shown what the vessel does. */
    private static final double HEATED_THROUGH = 1;

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (!subject.open() && Rule.exceeds(subject.firstLimit(), subject.highestStatic())) {
            List<ExpansionVessel> vessels = subject.soundVessels().stream()
                    .filter(vessel -> !subject.isOutOfReach(vessel))
                    .toList();
            if (!vessels.isEmpty()) {
                look(subject, vessels, found);
            }
        }
    }

    /** Several vessels share the expansion, and are judged as one of their volume would be. */
    private static void look(
            AssessmentContext subject, List<ExpansionVessel> vessels, Consumer<CandidateFinding> found) {
        boolean farOff = vessels.stream().anyMatch(vessel -> PrechargeRule.farOff(subject, vessel));
        Optional<RunSummary> run = farOff || subject.drivenUp() ? Optional.empty() : subject.run;
        if (run.filter(one -> allFull(one, vessels.size())).isPresent()) {
            found.accept(bottomed(subject, vessels));
        } else if (run.filter(one -> reliefOpened(subject, one)).isPresent()) {
            found.accept(tooSmall(subject, vessels));
        } else if (run.filter(one -> heatedThrough(subject, one)).isEmpty()) {
            estimate(subject, vessels, farOff, found);
        }
    }

    private static void estimate(
            AssessmentContext subject,
            List<ExpansionVessel> vessels,
            boolean farOff,
            Consumer<CandidateFinding> found) {
        double needed = needed(subject);
        double room = vessels.stream()
                .mapToDouble(vessel -> room(
                        subject,
                        vessel,
                        PrechargeRule.farOff(subject, vessel)
                                ? PrechargeTarget.of(subject, vessel).pumpToGauge()
                                : PrechargeRule.charge(subject, vessel)))
                .sum();
        if (room < needed) {
            found.accept(estimated(subject, vessels, farOff ? ", if charged to the supply," : "", needed, room));
        }
    }

    /** Whether no vessel could take more water at some moment of the run; one that is full leaves it to the others. */
    private static boolean allFull(RunSummary run, int vessels) {
        List<Interval> full = run.intervals(Interval.Phase.VESSEL_FULL);
        return full.stream()
                .anyMatch(one -> full.stream()
                                .filter(other -> other.contains(one.from()))
                                .map(Interval::device)
                                .collect(Collectors.toSet())
                                .size()
                        >= vessels);
    }

    /** The vessels as a sentence begins with them, with a place for their volume; several by their names. */
    private static String called(AssessmentContext subject, List<ExpansionVessel> vessels) {
        return vessels.size() > 1
                ? Rule.sentence(names(subject, vessels)) + ", {} together,"
                : Rule.sentence(subject.calledWithVolume(vessels.get(0))) + (isAll(subject, vessels) ? "" : " alone");
    }

    private static String names(AssessmentContext subject, List<ExpansionVessel> vessels) {
        return vessels.stream().map(subject::called).collect(Collectors.joining(" and "));
    }

    private static boolean isAll(AssessmentContext subject, List<ExpansionVessel> vessels) {
        return vessels.size() == subject.house.vessels().size();
    }

    private static final String OR_SUPPLY =
            ", or the supply pressure lowered where no vessel on sale is large enough: 'heatswell size' says which.";

    /** What to do first: those that do nothing may be what is missing, or those that are charged wrong. */
    private static String advice(AssessmentContext subject, List<ExpansionVessel> vessels) {
        if (!isAll(subject, vessels)) {
            return "First have every vessel that takes no water fixed. If that is not enough, have the precharges checked. If those"
                    + " are right, have a larger vessel fitted" + OR_SUPPLY;
        }
        if (vessels.size() == 1) {
            return "Have its precharge checked first. If that is right, have a larger vessel fitted" + OR_SUPPLY;
        }
        List<ExpansionVessel> wrong = vessels.stream()
                .filter(vessel -> PrechargeRule.isWrong(subject, vessel))
                .toList();
        return (wrong.isEmpty()
                        ? "Have their precharges checked first. If those are right, have"
                        : "Have the precharge of " + names(subject, wrong)
                                + " corrected first. If that is not enough, have")
                + " a larger vessel fitted in place of "
                + subject.called(vessels.stream()
                        .min(Comparator.comparingDouble(ExpansionVessel::volume))
                        .orElseThrow())
                + ", or one more.";
    }

    private static Measure all(List<ExpansionVessel> vessels) {
        return volume(vessels.stream().mapToDouble(ExpansionVessel::volume).sum());
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

    /** What the water gains from the cold fill to the set point at the pressure of the supply (m3). */
    static double expansion(AssessmentContext subject) {
        return Math.max(
                0, needed(subject, subject.highestStatic(), subject.highestStatic(), subject.highestSetPoint()));
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

    /**
     * What the vessel takes between the supply's pressure and the first limit (m3 of cold water), with its gas at one temperature, or in
     * a tank with gas and water as hot in the end as the thermostat lets the water be.
     */
    static double room(AssessmentContext subject, ExpansionVessel vessel, double charge) {
        return room(subject, vessel, charge, subject.highestStatic(), subject.firstLimit());
    }

    /** The same between two pressures (Pa, gauge) at the drain cock. */
    static double room(AssessmentContext subject, ExpansionVessel vessel, double charge, double from, double to) {
        double lift = subject.lift(vessel.height());
        double around = subject.house.gasAtRest(vessel);
        double hot = vessel.isInTank() ? Math.max(around, subject.highestSetPoint()) : around;
        double asCold = density(hot, to + subject.atmosphere) / density(around, to + subject.atmosphere);
        double low = water(subject, vessel, charge, from - lift, 1);
        return Math.max(0, asCold * water(subject, vessel, charge, to - lift, hot / around) - low);
    }

    private static double water(
            AssessmentContext subject, ExpansionVessel vessel, double charge, double gauge, double warmth) {
        double share = 1 - vessel.gasShare(charge + subject.atmosphere, gauge + subject.atmosphere, warmth);
        return vessel.volume() * Math.max(0, Math.min(vessel.acceptance(), share));
    }

    private static CandidateFinding bottomed(AssessmentContext subject, List<ExpansionVessel> vessels) {
        Measure most = volume(vessels.stream()
                .mapToDouble(vessel -> vessel.acceptance() * vessel.volume())
                .sum());
        return Finding.draft("vessel-bottomed-out", Severity.FAULT)
                .rests(Deciding.CUSHIONED)
                .says(
                        called(subject, vessels)
                                + (vessels.size() > 1
                                        ? " were full: their diaphragms had reached their stops with {} of water behind them."
                                        : " was full: its diaphragm had reached its stop with {} of water behind it."),
                        all(vessels),
                        most)
                .found(most)
                .limit(most)
                .advisesWork(advice(subject, vessels))
                .by(Codes.RUN);
    }

    private static CandidateFinding tooSmall(AssessmentContext subject, List<ExpansionVessel> vessels) {
        return Finding.draft("vessel-too-small", Severity.FAULT)
                .compares(Deciding.CUSHIONED)
                .compares(subject.limitInputs())
                .says(
                        called(subject, vessels) + " could not hold the pressure below the {} at which "
                                + Rule.quoted(
                                        subject.firstRelief().orElseThrow().name()) + " opens.",
                        all(vessels),
                        gauge(subject.firstLimit()))
                .found(gauge(subject.peak()))
                .limit(gauge(subject.firstLimit()))
                .advisesWork(advice(subject, vessels) + " Never plug, cap or downsize the relief valve.")
                .by(Codes.RUN);
    }

    private static CandidateFinding estimated(
            AssessmentContext subject, List<ExpansionVessel> vessels, String condition, double needed, double room) {
        boolean ideal = vessels.stream().allMatch(vessel -> vessel.gasLaw().isEmpty());
        String law = ideal ? "Boyle's law for the gas" : "the law given for the gas";
        return Finding.draft("vessel-too-small", Severity.FAULT)
                .compares(Deciding.CUSHIONED)
                .compares(subject.limitInputs())
                .says(
                        called(subject, vessels) + (vessels.size() > 1 ? " have" : " has") + " room" + condition
                                + " for {} until " + subject.givesWay() + ", and a full heat-up needs about {}.",
                        all(vessels),
                        volume(room),
                        gauge(subject.firstLimit()),
                        volume(needed))
                .found(volume(room))
                .limit(volume(needed))
                .advisesWork(advice(subject, vessels))
                .by(Authority.computed(law + "; density of water; growth and stretch of the tank"));
    }
}
