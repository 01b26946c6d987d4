package io.github.heatswell.diagnosis;

import java.util.List;

/**
 * A parameter that a hypothesis leaves open.
 *
 * @param parameter which
 * @param low the least value allowed
 * @param high the largest value allowed
 * @param starts values from which a search may begin, at least one, within the range
 * @param spread the standard deviation of what is known beforehand about the first start, on the parameter's scale; infinite
 *     if nothing is known but the range
 */
record FreeParameter(Parameter parameter, double low, double high, List<Double> starts, double spread) {

    /** One step of the search when nothing is known, as a share of the range. */
    private static final double PART = 0.1;

    /** A parameter with an approximate described value. */
    static FreeParameter known(Parameter parameter, double value, double spread) {
        double centre = parameter.toScale(value);
        double low = parameter.fromScale(centre - 5 * spread);
        double high = parameter.fromScale(centre + 5 * spread);
        return new FreeParameter(parameter, low, high, List.of(value), spread);
    }

    /** A parameter of which only the range is known. */
    static FreeParameter open(Parameter parameter, double low, double high, double... shares) {
        double from = parameter.toScale(low);
        double width = parameter.toScale(high) - from;
        List<Double> starts = java.util.Arrays.stream(shares)
                .mapToObj(share -> parameter.fromScale(from + share * width))
                .toList();
        return new FreeParameter(parameter, low, high, starts, Double.POSITIVE_INFINITY);
    }

    /** Whether the description says nothing about the value. */
    boolean isOpen() {
        return Double.isInfinite(spread);
    }

    /** Whether the value is one of the house that its description nearly says: small steps lead to it, and no search tries others far away. */
    boolean isRoughlyKnown() {
        return !isOpen() && parameter.isOfHouse() && parameter != Parameter.START_TEMPERATURE && !parameter.isDrawn();
    }

    /** The value at a position of the search. */
    double value(double position) {
        return parameter.fromScale(parameter.toScale(starts.get(0)) + position * unit());
    }

    /** The position of a value in the search: 0 for the first start, one for each {@link #unit()} from there. */
    double position(double value) {
        return (parameter.toScale(value) - parameter.toScale(starts.get(0))) / unit();
    }

    /** The length of one step of the search on the parameter's scale. */
    double unit() {
        return isOpen() ? PART * (parameter.toScale(high) - parameter.toScale(low)) : spread;
    }

    /** The position nearest to a given one at which the value is allowed. */
    double clamp(double position) {
        return Math.min(Math.max(position, position(low)), position(high));
    }
}
