package io.github.heatswell.diagnosis;

import static io.github.heatswell.diagnosis.Parameter.LEAK;
import static io.github.heatswell.diagnosis.Parameter.OPENING_PRESSURE;
import static io.github.heatswell.diagnosis.Parameter.PRECHARGE;
import static io.github.heatswell.diagnosis.Parameter.RESEAT_SHARE;
import static io.github.heatswell.diagnosis.Parameter.SEAT_LEAKAGE;
import static io.github.heatswell.diagnosis.Parameter.SEAT_WEEP;
import static io.github.heatswell.diagnosis.Parameter.SET_POINT;
import static io.github.heatswell.diagnosis.Parameter.STUCK_LIFT;
import static io.github.heatswell.diagnosis.Parameter.SUPPLY_PRESSURE;
import static io.github.heatswell.diagnosis.Parameter.VESSEL_VOLUME;
import static io.github.heatswell.diagnosis.Parameter.WEEPS_FROM;

import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ExpansionVessel.Condition;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * One cause, or two at once, as a change of the described house: its fixed part and its free parameters.
 *
 * @param cause what is wrong
 * @param device the name of the valve or vessel it is about, empty if there is but one such thing
 * @param change the fixed part of the change
 * @param open the free parameters, possibly none; those of the second cause last
 * @param also the second cause, if there is one
 */
record Hypothesis(
        Cause cause,
        String device,
        Consumer<SuspectHouse> change,
        List<FreeParameter> open,
        Optional<Hypothesis> also) {

    Hypothesis {
        open = List.copyOf(open);
    }

    /** A single cause. */
    Hypothesis(Cause cause, String device, Consumer<SuspectHouse> change, List<FreeParameter> open) {
        this(cause, device, change, open, Optional.empty());
    }

    /** Whether a fit is of this cause alone. */
    boolean isOf(HypothesisFit fit) {
        return cause == fit.cause() && device.equals(fit.device()) && fit.also().isEmpty();
    }

    /** This cause and another at once. */
    Hypothesis and(Hypothesis other) {
        List<FreeParameter> both =
                Stream.of(open, other.open).flatMap(List::stream).toList();
        return new Hypothesis(cause, device, change, both, Optional.of(other));
    }

    /** Whether another cause may be at work beside this one: each is a fault of a thing of its own, and has numbers of its own. */
    boolean goesWith(Hypothesis other) {
        boolean same = device.equals(other.device) && cause.thing() == other.cause.thing();
        return cause.thing() != Cause.Thing.NONE
                && other.cause.thing() != Cause.Thing.NONE
                && !same
                && open.stream()
                        .noneMatch(one -> other.open.stream().anyMatch(its -> its.parameter() == one.parameter()));
    }

    /**
     * Whether a gauge shows of this cause whatever it shows of another, so that it is as likely if nothing else was read: a vessel that is
     * full of water and one that is shut off take up nothing. What is lost by a valve that is stuck may as well be lost at a tap, and either
     * through a seat that leaks at every pressure; not the other way, for a seat may leak only when the pressure is high.
     */
    boolean looksLike(Hypothesis other) {
        return also.isEmpty()
                && other.also.isEmpty()
                && switch (cause) {
                    case VESSEL_WATERLOGGED -> other.cause == Cause.VESSEL_ISOLATED && device.equals(other.device);
                    case VESSEL_ISOLATED -> other.cause == Cause.VESSEL_WATERLOGGED && device.equals(other.device);
                    case LEAK -> other.cause == Cause.RELIEF_STUCK_OPEN;
                    case RELIEF_SEAT_WEEPS -> other.cause == Cause.LEAK || other.cause == Cause.RELIEF_STUCK_OPEN;
                    default -> false;
                };
    }

    /** All possible causes for a house. */
    static List<Hypothesis> of(HotWaterSystem house) {
        return Possible.of(house);
    }

    /** That the house is as described, and only the gauge does not show it. */
    static Hypothesis gaugeStuck() {
        return new Hypothesis(Cause.GAUGE_STUCK, "", house -> {}, List.of());
    }

    /** How many numbers it leaves to the readings: its own, and what a gauge that does not move happens to show. */
    int numbers() {
        return open.size() + (cause == Cause.GAUGE_STUCK ? 1 : 0);
    }

    /** The house under this hypothesis, with given parameter values. */
    HotWaterSystem house(HotWaterSystem described, List<FreeParameter> parameters, double[] values) {
        SuspectHouse house = cause.isOfVessel()
                ? new SuspectHouse(
                        described, "", Math.max(0, described.vesselNames().indexOf(device)))
                : new SuspectHouse(described, device, 0);
        change.accept(house);
        int own = open.size() - also.map(second -> second.open.size()).orElse(0);
        // the circumstances first: what the cause says of a number is the last word on it
        for (int i = open.size(); i < values.length; i++) {
            parameters.get(i).parameter().set(house, values[i]);
        }
        for (int i = 0; i < Math.min(own, values.length); i++) {
            parameters.get(i).parameter().set(house, values[i]);
        }
        HotWaterSystem first = house.build();
        return also.map(second -> second.house(first, second.open, Arrays.copyOfRange(values, own, open.size())))
                .orElse(first);
    }

    /** All possible causes for a house, as data. */
    private static final class Possible {

        private static final double MILLILITRE_PER_MINUTE = 1e-6 / 60;
        /** Highest set point tried (K): close to boiling, beyond which a run would end. */
        private static final double HOTTEST = 368.15;
        /** Smallest distance (K) of a set point below the cut-out. */
        private static final double BEFORE_CUT_OUT = 0.5;
        /** The usual ends of a range that begins or ends at the described value. */
        private static final double JUST_BELOW = 0.98;

        private static final double JUST_ABOVE = 1.02;

        private final HotWaterSystem house;
        private final double atmosphere;
        private final List<Hypothesis> all = new ArrayList<>();

        private Possible(HotWaterSystem house) {
            this.house = house;
            atmosphere = house.site().atmosphere();
        }

        static List<Hypothesis> of(HotWaterSystem house) {
            Possible list = new Possible(house);
            list.add(Cause.AS_DESCRIBED);
            for (int i = 0; i < house.vessels().size(); i++) {
                if (house.vessels().get(i).condition() == Condition.SOUND) {
                    list.vessel(house.vessels().get(i), house.vesselNames().get(i));
                }
            }
            list.air();
            list.supply();
            house.reliefValves().stream()
                    .filter(v -> v.condition() == ReliefFault.Condition.SOUND)
                    .forEach(list::relief);
            list.heat();
            list.add(
                    Cause.LEAK,
                    FreeParameter.open(
                            LEAK,
                            0.2 * MILLILITRE_PER_MINUTE,
                            3_000 * MILLILITRE_PER_MINUTE,
                            0.2,
                            0.3,
                            0.4,
                            0.5,
                            0.6,
                            0.7,
                            0.8));
            return List.copyOf(list.all);
        }

        private void add(Cause cause, FreeParameter... open) {
            all.add(new Hypothesis(cause, "", house -> {}, List.of(open)));
        }

        private void add(String device, Cause cause, FreeParameter... open) {
            all.add(new Hypothesis(cause, device, house -> {}, List.of(open)));
        }

        private void vessel(ExpansionVessel vessel, String name) {
            double precharge = vessel.precharge().gauge(atmosphere);
            double most = house.tank().workingPressure().gauge(atmosphere);
            add(
                    name,
                    Cause.PRECHARGE_LOW,
                    FreeParameter.open(PRECHARGE, 0.1e5, JUST_BELOW * precharge, 0.97, 0.9, 0.8, 0.7, 0.5, 0.3));
            if (JUST_ABOVE * precharge < most) {
                add(
                        name,
                        Cause.PRECHARGE_HIGH,
                        FreeParameter.open(PRECHARGE, JUST_ABOVE * precharge, most, 0.1, 0.25, 0.4, 0.6, 0.8));
            }
            double volume = vessel.volume();
            add(
                    name,
                    Cause.VESSEL_SMALL,
                    FreeParameter.open(
                            VESSEL_VOLUME,
                            Math.max(0.1e-3, 0.01 * volume),
                            JUST_BELOW * volume,
                            0.95,
                            0.88,
                            0.8,
                            0.7,
                            0.55,
                            0.4,
                            0.2));
            all.add(new Hypothesis(
                    Cause.VESSEL_WATERLOGGED, name, house -> house.condition(Condition.WATERLOGGED), List.of()));
            all.add(new Hypothesis(
                    Cause.VESSEL_ISOLATED, name, house -> house.condition(Condition.ISOLATED), List.of()));
        }

        /** Water can get no hotter than a cut-out lets it. */
        private void heat() {
            Heater heater = house.heater();
            double set = heater.setPoint();
            double highest = heater.elements().stream()
                    .mapToDouble(Element::setPoint)
                    .max()
                    .orElseThrow();
            double cutOut = heater.cutOut().orElse(Double.POSITIVE_INFINITY);
            double most = Math.min(Math.max(set + 8, HOTTEST), set + cutOut - highest - BEFORE_CUT_OUT);
            if (most > set + Circumstances.MORE_THAN_A_DIAL) {
                add(
                        Cause.WATER_TOO_HOT,
                        FreeParameter.open(
                                SET_POINT, set + Circumstances.MORE_THAN_A_DIAL, most, 0.1, 0.3, 0.5, 0.7, 0.9));
            }
            if (heater.mixedTo().isPresent()) {
                all.add(new Hypothesis(Cause.MIXING_VALVE_PASSES, "", SuspectHouse::unmixed, List.of()));
            }
        }

        private void air() {
            double room = house.piping(PipeRun.Carries.COLD).stream()
                    .mapToDouble(PipeRun::volume)
                    .sum();
            double most = Math.min(0.05, 0.95 * room);
            double least = 5e-6;
            if (house.trappedAir().isEmpty() && most > 10 * least) {
                add(Cause.TRAPPED_AIR, FreeParameter.open(Parameter.TRAPPED_AIR, least, most, 0.8, 0.5));
            }
        }

        private void supply() {
            Supply supply = house.supply();
            double pressure = house.supplyAtStart().gauge(atmosphere);
            double most = Math.min(2.5 * pressure, highestSupply());
            if (most > pressure) {
                add(Cause.SUPPLY_PRESSURE, supplyPressure(pressure, Math.max(0.3e5, 0.4 * pressure), most));
            }
            if (supply.seatLeakage() > 0 || supply.arrangement() == Supply.Arrangement.DIRECT) {
                return;
            }
            FreeParameter seat = FreeParameter.open(
                    SEAT_LEAKAGE,
                    0.2 * MILLILITRE_PER_MINUTE,
                    2_000 * MILLILITRE_PER_MINUTE,
                    0.2,
                    0.3,
                    0.4,
                    0.5,
                    0.6,
                    0.7,
                    0.8);
            add(supply.reducingValve().isPresent() ? Cause.REDUCING_VALVE_CREEPS : Cause.CHECK_VALVE_PASSES, seat);
        }

        private static FreeParameter supplyPressure(double described, double low, double high) {
            return new FreeParameter(
                    SUPPLY_PRESSURE,
                    low,
                    high,
                    List.of(described, 0.7 * described + 0.3 * low, 0.7 * described + 0.3 * high),
                    Double.POSITIVE_INFINITY);
        }

        /** Not far above what the tank is made for, and within what a reducing valve can be set to. */
        private double highestSupply() {
            double tank = 1.2 * house.tank().workingPressure().gauge(atmosphere);
            return house.supply().reducingValve().isPresent() ? Math.min(tank, 11e5) : tank;
        }

        private void relief(ReliefValve valve) {
            double setPressure = valve.setPressure().gauge(atmosphere);
            double tolerance = Circumstances.tolerance(setPressure);
            FreeParameter reseat = FreeParameter.open(RESEAT_SHARE, 0.4, 0.99, 0.8, 0.5);
            add(
                    valve.name(),
                    Cause.RELIEF_OPENS_LOW,
                    FreeParameter.open(
                            OPENING_PRESSURE,
                            Math.max(0.3e5, 0.3 * setPressure),
                            setPressure - tolerance,
                            0.995,
                            0.95,
                            0.85,
                            0.75,
                            0.65,
                            0.57,
                            0.5,
                            0.4,
                            0.3,
                            0.15),
                    reseat);
            double most = Math.min(24e5, 2.5 * setPressure);
            if (most > setPressure + tolerance) {
                add(
                        valve.name(),
                        Cause.RELIEF_OPENS_HIGH,
                        FreeParameter.open(
                                OPENING_PRESSURE, setPressure + tolerance, most, 0.005, 0.05, 0.15, 0.3, 0.5, 0.75));
            }
            FreeParameter weep = FreeParameter.open(
                    SEAT_WEEP, 0.5 * MILLILITRE_PER_MINUTE, 5_000 * MILLILITRE_PER_MINUTE, 0.3, 0.45, 0.6, 0.75);
            FreeParameter from = FreeParameter.open(WEEPS_FROM, 0.1e5, 0.97 * setPressure, 0.2, 0.45, 0.6, 0.8);
            add(valve.name(), Cause.RELIEF_SEAT_WEEPS, weep, from);
            add(
                    valve.name(),
                    Cause.RELIEF_STUCK_OPEN,
                    FreeParameter.open(STUCK_LIFT, 1e-4, 0.3, 0.05, 0.15, 0.25, 0.35, 0.45, 0.6, 0.8));
        }
    }
}
