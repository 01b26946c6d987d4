package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What the owner knows only roughly, whatever the cause: the pressure of the supply, the heating rate, the set point of
 * the thermostat, the volume of the tank, how far tank and pipes give way, how warm the tank was, and when the heater came on. How
 * roughly is common practice, no source: a household gauge errs by a tenth of a bar, the output of a heater by a tenth, the dial of a thermostat by two and a half kelvin, and the volume of
 * a tank, which is sold by a round number, by six percent.
 *
 * <p>A relief valve opens within 3 % of its set pressure (ASME Boiler and Pressure Vessel Code, section VIII; from memory), taken as
 * two standard deviations. The gauge of a log errs at its zero and in its scale: a gauge of class 1.6 or 2.5 (EN 837-1; from memory)
 * is right within that many percent of its range, and household gauges go to 10 bar or 150 psi. So a tenth of a bar at zero and
 * one percent of the reading are one standard deviation each, together 0.24 bar at 7 bar as two. Where the description only
 * assumes the reseat pressure, it is uncertain too: valves of one kind close from 70 % to just below 100 % of their set pressure
 * (common practice, no source). The thermometer of a log errs by the same amount at every reading, one on the wall of a tank by two kelvin
 * as one standard deviation (common practice, no source), and the water at the first reading is as uncertain.
 */
final class Circumstances {

    /** So much hotter (K) than the dial says is more than dials are off, two standard deviations. */
    static final double MORE_THAN_A_DIAL = 5;

    private static final double SUPPLY_SPREAD = 0.1e5;
    private static final double HEATING_SPREAD = 0.1;
    private static final double SET_POINT_SPREAD = MORE_THAN_A_DIAL / 2;
    private static final double TANK_SPREAD = 0.06;
    /** The same where a second look trusts the description less; our own judgement. */
    private static final double DOUBTED_HEATING_SPREAD = 0.15;

    private static final double DOUBTED_TANK_SPREAD = 0.1;
    /** What is known of how far tank and pipes give way, as the logarithm of a share: plastic pipes for copper double it; our own judgement. */
    private static final double COMPLIANCE_SPREAD = 0.35;
    /** The same where no pipes are described: those there are, hoses and pockets of air may give several times as much as the tank; our own judgement. */
    private static final double UNDESCRIBED_SPREAD = 0.8;
    /** What is known of a tank's standing loss, as the logarithm of a share: 1.3 times more or less; our own judgement. */
    private static final double LOSS_SPREAD = 0.26;
    /** Nobody takes more readings than this by hand; our own judgement. */
    private static final int BY_HAND = 40;
    /** Tanks that cool for less time (s) after the highest reading show little of their standing loss. */
    private static final double COOLING = 3_600;

    private static final double SET_PRESSURE_SPREAD = 0.015;
    private static final double RESEAT_SPREAD = 0.2;
    private static final double MIN_RESEAT = 0.4;
    private static final double MAX_RESEAT = 0.998;
    private static final double LEAST_ACCEPTANCE = 0.4;
    private static final double MOST_ACCEPTANCE = 0.95;
    private static final double GAUGE_ZERO_SPREAD = 0.1e5;
    private static final double GAUGE_SCALE_SPREAD = 0.01;
    private static final double FREEZING = 273.15;
    private static final double THERMOMETER_SPREAD = 2;
    /** A thermometer on a tank errs by no more (K); common practice, no source. */
    private static final double THERMOMETER = 3 * THERMOMETER_SPREAD;
    /** The water at the start is at least so much (K) from what the first reading or the cold supply says before a search ends there. */
    private static final double ROOM = 3;
    /** How much warmer (K) than cold a tank may be that nobody said was cold; our own judgement. */
    private static final double WARMTH_SPREAD = 15;
    /** A leak may hide the first hours of a rise (s). */
    private static final double START_RANGE = 3 * 3_600.0;

    /** A rise is seen where so many readings in a row lie so many uncertainties above the beginning. */
    private static final int IN_A_ROW = 5;

    private static final double VISIBLE = 2;

    private final HotWaterSystem house;
    private final PressureLog log;
    private final Set<Parameter> assumed;
    private final DrawMarks draws;

    /**
     * The circumstances of a house.
     *
     * @param house the house as described
     * @param log the log, or null
     * @param assumed what is only assumed of the relief valves, of the vessels, of the tank and of its heater
     * @param draws the draws of the log
     */
    Circumstances(HotWaterSystem house, PressureLog log, Set<Parameter> assumed, DrawMarks draws) {
        this.house = house;
        this.log = log;
        this.assumed = assumed;
        this.draws = draws;
    }

    /** How far (Pa) a set pressure must lie from that of the plate to be more than what valve and gauge are usually off. */
    static double tolerance(double setPressure) {
        double relative = Math.hypot(SET_PRESSURE_SPREAD, GAUGE_SCALE_SPREAD) * setPressure;
        return 2 * Math.hypot(relative, GAUGE_ZERO_SPREAD);
    }

    /** How far (Pa) a gauge is off at a pressure (Pa, gauge) that errs at its zero and in its scale by one standard deviation each. */
    static double gaugeError(double pressure) {
        return GAUGE_ZERO_SPREAD + GAUGE_SCALE_SPREAD * Math.abs(pressure);
    }

    /** The numbers left open beside those of the cause itself, which come first. */
    List<FreeParameter> with(List<FreeParameter> ofCause) {
        List<FreeParameter> all = new ArrayList<>(ofCause);
        double supply = house.supplyAtStart().gauge(house.site().atmosphere());
        addUnlessThere(
                all, FreeParameter.known(Parameter.SUPPLY_PRESSURE, supply, Math.min(supplySpread(), 0.1 * supply)));
        addUnlessThere(
                all,
                FreeParameter.known(
                        Parameter.HEATING_RATE,
                        1,
                        assumed.contains(Parameter.HEATING_RATE) ? DOUBTED_HEATING_SPREAD : HEATING_SPREAD));
        addUnlessThere(
                all, FreeParameter.known(Parameter.SET_POINT, house.heater().setPoint(), SET_POINT_SPREAD));
        relief(all);
        acceptance(all);
        if (log != null) { // the few readings on site do not part it from the rate of heating
            all.add(FreeParameter.known(
                    Parameter.TANK_VOLUME,
                    1,
                    assumed.contains(Parameter.TANK_VOLUME) ? DOUBTED_TANK_SPREAD : TANK_SPREAD));
            if (house.tank().compliance() > 0) {
                all.add(FreeParameter.known(
                        Parameter.COMPLIANCE, 1, house.piping().isEmpty() ? UNDESCRIBED_SPREAD : COMPLIANCE_SPREAD));
            }
            if (showsCooling() && house.tank().standingLoss() > 0) {
                all.add(FreeParameter.known(Parameter.STANDING_LOSS, 1, LOSS_SPREAD));
            }
        }
        all.addAll(draws.open());
        if (startIsOpen() && log.hasTemperature() && mayHaveBegunBefore()) {
            all.add(startTemperature());
        } else if (log != null && log.hasTemperature()) {
            all.add(firstTemperature());
        } else if (log != null && house.start().waterTemperature().isEmpty()) {
            all.add(warmth());
        }
        if (log != null) {
            all.add(new FreeParameter(
                    Parameter.GAUGE_ZERO,
                    -3 * GAUGE_ZERO_SPREAD,
                    3 * GAUGE_ZERO_SPREAD,
                    List.of(0.0),
                    GAUGE_ZERO_SPREAD));
            all.add(FreeParameter.known(Parameter.GAUGE_SCALE, 1, GAUGE_SCALE_SPREAD));
        }
        if (log != null && log.hasTemperature()) {
            all.add(new FreeParameter(
                    Parameter.THERMOMETER_ERROR, -THERMOMETER, THERMOMETER, List.of(0.0), THERMOMETER_SPREAD));
        }
        if (startIsOpen()) {
            all.add(start());
        }
        return List.copyOf(all);
    }

    /** What is read of a gauge, and by how much a reducing valve locks up, anything from nothing to twice what is said: our own judgement. */
    private double supplySpread() {
        double rise = house.supply()
                .reducingValve()
                .map(valve -> valve.lockUpRise() / Math.sqrt(3))
                .orElse(0.0);
        return Math.hypot(SUPPLY_SPREAD, rise);
    }

    /** What is uncertain of relief valves, unless the cause itself says more of it. */
    private void relief(List<FreeParameter> all) {
        if (house.reliefValves().isEmpty()) {
            return;
        }
        if (all.stream().noneMatch(one -> one.parameter() == Parameter.OPENING_PRESSURE)) {
            all.add(FreeParameter.known(Parameter.SET_PRESSURE_SHARE, 1, SET_PRESSURE_SPREAD));
        }
        if (assumed.contains(Parameter.RESEAT_SHARE)) {
            ReliefValve first = house.reliefValves().get(0);
            double atmosphere = house.site().atmosphere();
            double share = first.reseatPressure().gauge(atmosphere)
                    / first.setPressure().gauge(atmosphere);
            addUnlessThere(
                    all,
                    new FreeParameter(
                            Parameter.RESEAT_SHARE,
                            Math.min(MIN_RESEAT, share),
                            Math.max(MAX_RESEAT, share),
                            List.of(share),
                            RESEAT_SPREAD));
        }
    }

    /**
     * How much of a vessel water can fill, if the description only assumes it: where the precharge is low, that limit decides what the
     * vessel takes, and diaphragms leave half of it to the water, bladders nearly all (common practice, no source).
     */
    private void acceptance(List<FreeParameter> all) {
        boolean decides = all.stream().anyMatch(one -> one.parameter() == Parameter.PRECHARGE);
        if (decides && assumed.contains(Parameter.ACCEPTANCE)) {
            double described = Math.max(
                    LEAST_ACCEPTANCE,
                    Math.min(MOST_ACCEPTANCE, house.vessels().get(0).acceptance()));
            all.add(new FreeParameter(
                    Parameter.ACCEPTANCE,
                    LEAST_ACCEPTANCE,
                    MOST_ACCEPTANCE,
                    List.of(MOST_ACCEPTANCE, described),
                    Double.POSITIVE_INFINITY));
        }
    }

    private static void addUnlessThere(List<FreeParameter> all, FreeParameter one) {
        if (all.stream().noneMatch(there -> there.parameter() == one.parameter())) {
            all.add(one);
        }
    }

    /**
     * Whether a few readings go on long after the highest, so that the standing loss decides what the last ones show. In a logger's log it
     * stays as described: left open there, it would hide water that is heated too hot.
     */
    private boolean showsCooling() {
        if (log.count() > BY_HAND) {
            return false;
        }
        int highest = IntStream.range(0, log.count())
                .reduce((first, next) -> log.gauge(next) > log.gauge(first) ? next : first)
                .orElseThrow();
        return log.end() - log.time(highest) > COOLING;
    }

    /** The run starts with the log if the heater was on then, or if a clock rules; otherwise the start is open. */
    private boolean startIsOpen() {
        return log != null && !followsTheClock() && new BurnerColumn(log).firstSeenOn() != 0;
    }

    /**
     * The start of the heat-up: between two readings if the log says when the heater was on. The first reading is always among what is
     * tried: a warm tank may rest for hours before its pressure rises.
     */
    private FreeParameter start() {
        BurnerColumn burner = new BurnerColumn(log);
        if (Double.isNaN(burner.firstSeenOn())) {
            double onset = onset();
            return FreeParameter.open(
                    Parameter.START_OF_HEATING, Math.min(0, onset - START_RANGE), onset + START_RANGE, 0.5);
        }
        double off = burner.lastSeenOff();
        return FreeParameter.open(
                Parameter.START_OF_HEATING,
                Double.isNaN(off) ? Math.min(0, burner.firstSeenOn()) - START_RANGE : off,
                burner.firstSeenOn(),
                0.5);
    }

    /** Whether nothing in the log says that the heater was still off when it began. */
    private boolean mayHaveBegunBefore() {
        return Double.isNaN(new BurnerColumn(log).firstSeenOn());
    }

    /** The house starts with the first temperature of the log; when the heater came on before, the water was colder. */
    private FreeParameter startTemperature() {
        double first = house.start().waterTemperature().orElseThrow();
        double cold = Math.min(first, house.supply().water().on(house.start().dayOfYear()));
        return new FreeParameter(
                Parameter.START_TEMPERATURE,
                Math.max(FREEZING, cold - ROOM),
                first + THERMOMETER,
                List.of(warmsAtOnce() ? Math.max(cold, first - ROOM) : first),
                Double.POSITIVE_INFINITY);
    }

    /** The water at the first reading where the run starts with it: nothing but that reading says how warm it was. */
    private FreeParameter firstTemperature() {
        double first = house.start().waterTemperature().orElseThrow();
        return new FreeParameter(
                Parameter.START_TEMPERATURE,
                Math.max(FREEZING, first - THERMOMETER),
                Math.max(FREEZING, first) + THERMOMETER,
                List.of(first),
                Double.POSITIVE_INFINITY);
    }

    /** A tank that nobody said was cold may be warm from before: the likelier the less. */
    private FreeParameter warmth() {
        double cold = house.supply().water().on(house.start().dayOfYear());
        return new FreeParameter(
                Parameter.START_TEMPERATURE,
                Math.max(FREEZING, cold - ROOM),
                Math.max(cold + ROOM, house.heater().setPoint()),
                List.of(cold),
                WARMTH_SPREAD);
    }

    /** Whether the first temperature of the log is the coldest of the first few, so that a search better begins before the log. */
    private boolean warmsAtOnce() {
        double[] known = IntStream.range(0, log.count())
                .filter(i -> log.temperature(i).isPresent())
                .limit(IN_A_ROW)
                .mapToDouble(i -> log.temperature(i).orElseThrow())
                .toArray();
        return Arrays.stream(known).skip(1).allMatch(kelvin -> kelvin > known[0]);
    }

    /** Whether something in the house happens by the clock, so that the run must begin with the log. */
    private boolean followsTheClock() {
        return !house.draws().draws().isEmpty()
                || !house.supply().outages().isEmpty()
                || house.circulation().filter(pump -> !pump.hours().isEmpty()).isPresent()
                || !house.supply().mains().isConstant();
    }

    /** What the gauge shows at the beginning (Pa, gauge). */
    double beginning() {
        double[] beginning = new double[Math.min(IN_A_ROW, log.count())];
        for (int i = 0; i < beginning.length; i++) {
            beginning[i] = log.gauge(i);
        }
        Arrays.sort(beginning);
        return beginning[beginning.length / 2];
    }

    /** When the pressure begins to rise (s). */
    private double onset() {
        double visible = beginning() + VISIBLE * log.uncertainty();
        int above = 0;
        for (int i = 0; i < log.count(); i++) {
            above = log.gauge(i) > visible ? above + 1 : 0;
            if (above == IN_A_ROW) {
                return log.time(i - IN_A_ROW + 1);
            }
        }
        return 0;
    }
}
