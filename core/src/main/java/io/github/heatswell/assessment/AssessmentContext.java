package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;

/** A house, with or without a run of it, and what several rules ask of them. Pressures are gauge (Pa). */
final class AssessmentContext {

    /** Water that gets no warmer than it began by this (K) only cools. */
    private static final double COOLS = 0.1;

    /** The tolerance of a relief valve's setting, as a share of it. */
    private static final double SET_TOLERANCE = 0.03;

    /** The highest set pressure (Pa, gauge) of valves by EN 1488 and EN 1491, as their scopes say. */
    private static final double MAX_EXPANSION_VALVE = 10e5;

    /** Prefix of the names of the draw patterns of US regulation. */
    private static final String US_DRAWS = "us-";

    /** A supply below this (Pa, gauge) serves no house; our own judgement. */
    static final double MIN_SUPPLY = 1.5e5;

    /** Colder than the thermostat ever lets it become by this (K), the tank starts cold: our own judgement. */
    private static final double COLD_START = 10;

    /** The least charge (Pa, gauge) that a tyre gauge can show; our own judgement. */
    private static final double MIN_AT_VESSEL = 0.1e5;

    final HotWaterSystem house;
    final Optional<RunSummary> run;
    final Doubts doubts;
    final double atmosphere;
    /** Whose rules hold. */
    final Place place;

    AssessmentContext(HotWaterSystem house, Optional<RunSummary> run) {
        this(house, run, Doubts.NONE);
    }

    AssessmentContext(HotWaterSystem house, Optional<RunSummary> run, Doubts doubts) {
        this.house = house;
        this.run = run;
        this.doubts = doubts;
        atmosphere = house.site().atmosphere();
        place = house.site().place();
    }

    /** The limits on a topic, the lowest first: those of the place, or where nobody read any those of all places. */
    List<PlaceRule> limits(Topic topic) {
        List<PlaceRule> own = place.limits(topic);
        return own.isEmpty() ? Place.NOT_KNOWN.limits(topic) : own;
    }

    /** Whether a limit of the place itself was read. */
    boolean hasLimit(Topic topic) {
        return place.isKnown() && !place.limits(topic).isEmpty();
    }

    /**
     * The rule of the place on a topic that decides it; what is said elsewhere where the place is not known or nobody read any.
     */
    Authority by(Topic topic, Authority elsewhere) {
        if (!place.isKnown()) {
            return elsewhere;
        }
        Citation other = elsewhere.source();
        return place.rules(topic).stream()
                .findFirst()
                .map(Authority::of)
                .orElseGet(() -> new Authority(
                        elsewhere.basis(),
                        new Citation(
                                "no rule on this was read for this place; elsewhere " + other.text(),
                                other.standing())));
    }

    /** The highest pressure (Pa, gauge) that heating may bring, by the place; empty if no rule says so. */
    Optional<PlaceRule> peakRule() {
        return place.strictest(Topic.PEAK_LIMIT);
    }

    /** The highest static pressure (Pa, gauge) that is allowed for sure. */
    double staticLimit() {
        return limits(Topic.STATIC_LIMIT).get(0).limit().orElseThrow();
    }

    /** Whether nobody knows the charge of the vessel, so that the value of the house only stands in its place. */
    boolean prechargeIsUnknown() {
        return doubts.has(NamedValue.PRECHARGE);
    }

    /** The highest static supply pressure of a day, downstream of a reducing valve if there is one. */
    double highestStatic() {
        return overDay(Math::max);
    }

    /** The lowest static supply pressure of a day. */
    double lowestStatic() {
        return overDay(Math::min);
    }

    /** Both pieces of the day are straight lines or flat, so the ends of the timetable's pieces hold the extremes. */
    private double overDay(DoubleBinaryOperator choice) {
        Supply supply = house.supply();
        double chosen = Double.NaN;
        for (double time : supply.mains().entries().keySet()) {
            double here = supply.staticAbsolute(time, atmosphere) - atmosphere;
            chosen = Double.isNaN(chosen) ? here : choice.applyAsDouble(chosen, here);
        }
        return chosen;
    }

    /** The highest pressure of the mains in a day. */
    double highestMains() {
        return house.supply().mains().entries().values().stream()
                .mapToDouble(pressure -> pressure.gauge(atmosphere))
                .max()
                .orElseThrow();
    }

    /** Pressure difference between the drain cock and a height above it. */
    double lift(double height) {
        return house.head(height);
    }

    /** The pressure at the drain cock at which a valve opens. */
    double setPressure(ReliefValve valve) {
        return house.atDrainCock(valve.setPressure(), valve.height()).gauge(atmosphere);
    }

    /** The pressure at the drain cock at which a valve closes. */
    double reseatPressure(ReliefValve valve) {
        return house.atDrainCock(valve.reseatPressure(), valve.height()).gauge(atmosphere);
    }

    double workingPressure() {
        return house.tank().workingPressure().gauge(atmosphere);
    }

    /** The relief valves that open when they should. */
    List<ReliefValve> working() {
        return house.reliefValves().stream().filter(ReliefValve::relieves).toList();
    }

    /** The working relief valve that opens at the lowest pressure at the drain cock. */
    Optional<ReliefValve> firstRelief() {
        return working().stream().min((a, b) -> Double.compare(setPressure(a), setPressure(b)));
    }

    /** The relief valve that opens at the highest pressure at the drain cock: all that is left when the others have failed. */
    Optional<ReliefValve> lastRelief() {
        return house.reliefValves().stream().max(Comparator.comparingDouble(this::setPressure));
    }

    /** The pressure at which something gives: the first relief valve that opens in time, or else the tank's working pressure. */
    double firstLimit() {
        return guard().map(this::setPressure).orElse(workingPressure());
    }

    /** The first relief valve, unless the tank is at its test pressure before that opens. */
    private Optional<ReliefValve> guard() {
        double test = house.tank().testPressureAbsolute(atmosphere) - atmosphere;
        return firstRelief().filter(valve -> house.tank().neverFails() || setPressure(valve) < test);
    }

    /** The values on which that limit rests: the tank's working pressure only where no relief valve works. */
    Set<NamedValue> limitInputs() {
        return guard().isPresent()
                ? Set.of(NamedValue.SET_PRESSURE)
                : Set.of(NamedValue.SET_PRESSURE, NamedValue.WORKING_PRESSURE);
    }

    /** What happens at that pressure, with a place for it. */
    String givesWay() {
        return guard().map(valve -> Rule.quoted(valve.name()) + " opens at {}")
                .orElse("the tank's working pressure of {} is exceeded");
    }

    /**
     * What the peak of a heat-up should stay below, by the same yardstick as the sizing of a vessel: the pressure at which each
     * relief valve closes, less the tolerance of its setting, the limit of the place, and what vessel and tank are made
     * for.
     */
    double peakLimit() {
        double lowest = Math.min(
                peakRule().map(rule -> rule.limit().orElseThrow()).orElse(Double.POSITIVE_INFINITY), workingPressure());
        for (ReliefValve valve : house.reliefValves()) {
            lowest = Math.min(lowest, closesFor(valve));
        }
        for (ExpansionVessel vessel : soundVessels()) {
            Optional<Pressure> rating = vessel.body().rating();
            lowest = Math.min(
                    lowest,
                    rating.map(most -> most.gauge(atmosphere) + lift(vessel.height()))
                            .orElse(Double.POSITIVE_INFINITY));
        }
        return lowest;
    }

    /** Whether a valve that opened runs on at any supply that serves a house, the present one included. */
    boolean closesTooLow(ReliefValve valve) {
        return reseatPressure(valve) < Math.min(MIN_SUPPLY, highestStatic());
    }

    /** The highest peak (Pa, gauge, at the drain cock) that lets a valve close again for sure. */
    double closesFor(ReliefValve valve) {
        return reseatPressure(valve) - SET_TOLERANCE * valve.setPressure().gauge(atmosphere);
    }

    /**
     * Whether a valve made to discharge the expansion may do so without anybody asked: where the rules of the place leave it
     * to such a valve, or where the place is not known.
     */
    boolean leavesExpansionTo(ReliefValve valve) {
        return isExpansionValve(valve) && (!place.isKnown() || isOptional(Topic.RELIEF_FOR_EXPANSION));
    }

    /**
     * Whether it is the work of a valve to discharge the expansion, as far as the rules of the place were read, and all it did in the
     * run: to let water from the supply run to the drain is nobody's work.
     */
    boolean isItsWork(ReliefValve valve) {
        return valve.kind().takesExpansion() && mayDischargeExpansion(valve) && !(fed(valve) > 0);
    }

    /** How long (s) a valve ran on water from the supply in the run; 0 without one. */
    double fed(ReliefValve valve) {
        return run.stream()
                .flatMap(summary -> summary.fedRelief().stream())
                .filter(open -> open.device().equals(valve.name()))
                .mapToDouble(Interval::length)
                .sum();
    }

    private boolean isOptional(Topic topic) {
        return place.demand(topic).filter(rule -> !rule.requires()).isPresent();
    }

    /** Whether a valve is made to discharge the expansion and opens no later than such valves do. */
    boolean isExpansionValve(ReliefValve valve) {
        return valve.kind().takesExpansion() && opensLikeOne(valve);
    }

    private boolean opensLikeOne(ReliefValve valve) {
        return valve.setTemperature().isEmpty()
                && !Rule.exceeds(valve.setPressure().gauge(atmosphere), MAX_EXPANSION_VALVE);
    }

    /**
     * Whether local rules may let a relief valve discharge the expansion: one that opens by pressure alone and at no more than
     * 10 bar, as European safety valves on the cold feed do, where the rules of the place leave that open; where the place is not
     * known, in a house whose hot-water use is not a US pattern. A valve made for that may also where they name it among the means. A
     * temperature and pressure relief valve is nowhere meant for that.
     */
    boolean mayDischargeExpansion(ReliefValve valve) {
        boolean made = valve.kind().takesExpansion();
        boolean here = place.isKnown()
                ? isOptional(Topic.RELIEF_FOR_EXPANSION) || made && isOptional(Topic.EXPANSION_MEANS)
                : made || !house.draws().name().startsWith(US_DRAWS);
        return here && opensLikeOne(valve);
    }

    /** The same of the valve that would open first; false if there is none. */
    boolean mayDischargeExpansion() {
        return firstRelief().filter(this::mayDischargeExpansion).isPresent();
    }

    OptionalDouble bypassOpens() {
        OptionalDouble difference =
                house.supply().reducingValve().map(ReducingValve::bypassOpens).orElse(OptionalDouble.empty());
        return difference.isPresent()
                ? OptionalDouble.of(highestMains() + difference.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Whether the water can expand back into the mains before anything gives. */
    boolean open() {
        return house.supply().arrangement() == Supply.Arrangement.DIRECT
                || bypassOpens().orElse(Double.POSITIVE_INFINITY) < firstLimit();
    }

    /** Whether the closed reducing valve lets the pressure of the mains by. */
    boolean creeps() {
        return house.supply().reducingValve().isPresent()
                && house.supply().seatLeakage() > 0
                && Rule.exceeds(highestMains(), highestStatic());
    }

    /** Whether as much leaks out elsewhere as the seat lets in at a pressure (Pa, gauge) below that of the mains. */
    boolean leaksOutrunTheSeat(double pressure) {
        double out = house.leaks().stream()
                .mapToDouble(leak -> leak.flow()
                        * Math.sqrt(Math.max(0, pressure) / leak.at().gauge(atmosphere)))
                .sum();
        return out >= house.supply().seatLeakage() * Math.sqrt((highestMains() - pressure) / PressureUnit.BAR.toSi(1));
    }

    /** Whether the supply alone opens a relief valve, so that it runs without any heating. */
    boolean supplyOpensRelief() {
        return firstRelief()
                .filter(valve -> Rule.reaches(highestStatic(), setPressure(valve)))
                .isPresent();
    }

    /** Whether a relief valve is open before anything is heated: stuck, or by the pressure (Pa, gauge) the house begins with. */
    boolean opensAtOnce(double staticGauge) {
        double begins = house.start().pressure().map(p -> p.gauge(atmosphere)).orElse(staticGauge);
        return house.reliefValves().stream()
                .anyMatch(valve -> valve.condition() == ReliefFault.Condition.STUCK_OPEN
                        || valve.relieves() && Rule.reaches(Math.max(begins, staticGauge), setPressure(valve)));
    }

    /** Whether the supply pressure is too low to reach a vessel: its charge could not be matched to anything. */
    boolean isOutOfReach(ExpansionVessel vessel) {
        return !Rule.reaches(lowestStatic(), leastAt(vessel));
    }

    /** The supply (Pa, gauge, at the drain cock) from which a vessel can be charged to match it. */
    double leastAt(ExpansionVessel vessel) {
        return lift(vessel.height()) + MIN_AT_VESSEL;
    }

    /** The vessel, if it does anything. */
    Optional<ExpansionVessel> soundVessel() {
        return soundVessels().stream().findFirst();
    }

    /** The vessels that take water. */
    List<ExpansionVessel> soundVessels() {
        return house.vessels().stream()
                .filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                .toList();
    }

    /** A vessel within a sentence: where there are several, by its name or its number. */
    String called(ExpansionVessel vessel) {
        if (!hasSeveralVessels()) {
            return "the vessel";
        }
        return vessel.name()
                .map(name -> "the vessel " + Rule.quoted(name))
                .orElse("vessel " + (house.vessels().indexOf(vessel) + 1));
    }

    /** The same with a place for its volume. */
    String calledWithVolume(ExpansionVessel vessel) {
        return hasSeveralVessels() ? called(vessel) + " ({})" : "the {} vessel";
    }

    /** Whether a sentence has to say which vessel it is about. */
    boolean hasSeveralVessels() {
        return house.vessels().size() > 1;
    }

    /** The highest input of the heater at one time (W). */
    double heatInput() {
        Heater heater = house.heater();
        double sum = 0;
        double most = 0;
        for (Element element : heater.elements()) {
            sum += element.input();
            most = Math.max(most, element.input());
        }
        return heater.simultaneous() ? sum : most;
    }

    /** The highest set point (K). */
    double highestSetPoint() {
        return house.heater().elements().stream()
                .mapToDouble(Element::setPoint)
                .max()
                .orElseThrow();
    }

    /** Whether the first heat-up is that of a tank freshly filled, which an ordinary day does not repeat. */
    boolean startsCold() {
        double begins = house.start().waterTemperature().orElse(house.coldAtStart());
        return begins < highestSetPoint() - house.heater().differential() - COLD_START;
    }

    /** The hottest water (K) of the run; empty without one. */
    OptionalDouble hottest() {
        return run.isPresent()
                ? OptionalDouble.of(run.get().extremes().highestTemperature().value())
                : OptionalDouble.empty();
    }

    /** Whether the heater does not stop where it should: by its description, or as the run shows. */
    boolean overheats() {
        return house.heater().thermostatStuck()
                || hottest().orElse(0) > BoilingRule.boilsInTheOpen(this)
                || run.flatMap(summary -> summary.first(Event.Kind.CUT_OUT_TRIPPED))
                        .isPresent()
                || run.filter(summary -> summary.events().stream().anyMatch(Event::openedByTemperature))
                        .isPresent();
    }

    /** The hottest water (K) that relief valves may discharge: that of the tank, unless all stand in the cold branch. */
    double dischargedAt() {
        boolean hot =
                house.reliefValves().stream().anyMatch(valve -> valve.location() == ReliefValve.Location.TANK_TOP);
        return hot ? Math.max(highestSetPoint(), hottest().orElse(0)) : house.coldAtStart();
    }

    /** Whether the water of the run only cools: what it then gains in volume, it gains towards freezing. */
    boolean neverWarms() {
        double begins = house.start().waterTemperature().orElse(house.coldAtStart());
        return hottest().orElse(Double.POSITIVE_INFINITY) < begins + COOLS;
    }

    /** Whether something else than the expansion drives the pressure up: a fault, or the supply itself. */
    boolean drivenUp() {
        return creeps() || house.heater().thermostatStuck() || Rule.reaches(highestStatic(), firstLimit());
    }

    /** The highest pressure of the run, or the lowest possible number without one. */
    double peak() {
        return run.map(summary -> summary.peak().value()).orElse(Double.NEGATIVE_INFINITY);
    }
}
