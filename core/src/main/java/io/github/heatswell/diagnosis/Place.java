package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Where the search for one cause ended, as a beginning for that of another.
 *
 * @param trial what was searched
 * @param position where it ended
 */
record Place(Trial trial, double[] position) {

    /** Water hotter than where it begins to be too hot by so much (K) is tried, besides the hottest that the safeguards of the heater allow. */
    private static final List<Double> HOTTER = List.of(0.0, 5.0, 10.0, 17.0);
    /** A bisection of the temperature ends after so many halves: at a millionth of the range. */
    private static final int HALVES = 20;

    /** What it says of the circumstances of another trial, in their order: of each the number with the same name. */
    double[] circumstances(Trial other) {
        return other.parameters().stream()
                .skip(other.hypothesis().open().size())
                .mapToDouble(free -> value(named(free.parameter(), other))
                        .map(found -> free.clamp(free.position(found)))
                        .orElse(0.0))
                .toArray();
    }

    /** Whether a draw of another trial, given by where it stands there, is left open here too. */
    boolean leavesOpen(int draw, Trial other) {
        return named(other.parameters().get(draw).parameter(), other) != null;
    }

    /** What a number of another trial is called here, which of draws is their order; null for a draw that is not left open here. */
    private Parameter named(Parameter parameter, Trial other) {
        return parameter.isDrawn()
                ? trial.target().draws().named(parameter, other.target().draws())
                : parameter;
    }

    private Optional<Double> value(Parameter parameter) {
        int index = parameter == null ? -1 : trial.index(parameter);
        return index < 0
                ? Optional.empty()
                : Optional.of(trial.parameters().get(index).value(position[index]));
    }

    /**
     * The slightest cases of a cause that extends this one: each of its own numbers as it is here, or else at either end of its range,
     * one of which is next to nothing.
     */
    List<double[]> slightest(Trial other) {
        int own = other.hypothesis().open().size();
        double[] circumstances = circumstances(other);
        List<double[]> all = new ArrayList<>();
        double[] first = new double[other.parameters().size()];
        System.arraycopy(circumstances, 0, first, own, circumstances.length);
        all.add(first);
        for (int i = 0; i < own; i++) {
            FreeParameter free = other.parameters().get(i);
            int number = i;
            List<double[]> more = new ArrayList<>();
            for (double[] one : all) {
                value(free.parameter())
                        .map(found -> DoubleStream.of(free.clamp(free.position(found))))
                        .orElseGet(() -> DoubleStream.of(free.position(free.low()), free.position(free.high())))
                        .forEach(at -> more.add(with(one, number, at)));
            }
            all = more;
        }
        return all;
    }

    /**
     * Hotter water that expands as this does. A gauge shows how much water expands and how fast. So does hotter water of which less is
     * drawn, in a tank that was warmer at first, with a heater that is weaker: a ridge along which no small step gets far.
     */
    List<double[]> hotter(Trial other) {
        int own = other.index(Parameter.SET_POINT);
        if (own < 0 || !other.parameters().get(own).isOpen()) {
            return List.of();
        }
        FreeParameter set = other.parameters().get(own);
        double here = value(Parameter.SET_POINT).orElseThrow();
        return Stream.concat(HOTTER.stream().map(more -> set.low() + more), Stream.of(set.high()))
                .filter(kelvin -> kelvin <= set.high())
                .map(kelvin -> with(alongTo(other, here, kelvin), own, set.position(kelvin)))
                .toList();
    }

    private double[] alongTo(Trial other, double here, double hotter) {
        HotWaterSystem house = trial.house(position);
        double cold = house.supply().water().on(house.start().dayOfYear());
        double drawn = (volume(here) - volume(cold)) / (volume(hotter) - volume(cold));
        double weaker = slope(here) / slope(hotter);
        double[] along = slightest(other).get(0);
        for (int i = other.hypothesis().open().size(); i < along.length; i++) {
            FreeParameter free = other.parameters().get(i);
            double value = free.value(along[i]);
            double moved = switch (free.parameter()) {
                case HEATING_RATE -> weaker * value;
                case DRAWN_FIRST, DRAWN_SECOND, DRAWN_THIRD -> drawn * value;
                case START_TEMPERATURE -> temperature(volume(value) + volume(hotter) - volume(here), value, hotter);
                default -> value;
            };
            along[i] = free.clamp(free.position(moved));
        }
        return along;
    }

    /** What a kilogram of water takes up (m3) at a temperature (K). */
    private double volume(double kelvin) {
        return 1
                / GibbsPolynomialWater.instance()
                        .density(kelvin, trial.house(position).site().atmosphere());
    }

    private double slope(double kelvin) {
        return volume(kelvin + 1) - volume(kelvin - 1);
    }

    /** The temperature (K) between two at which a kilogram takes up so much. */
    private double temperature(double volume, double coldest, double hottest) {
        double low = coldest;
        double high = hottest;
        for (int i = 0; i < HALVES; i++) {
            double middle = (low + high) / 2;
            if (volume(middle) < volume) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double[] with(double[] position, int index, double value) {
        double[] aside = position.clone();
        aside[index] = value;
        return aside;
    }
}
