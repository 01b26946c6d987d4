package io.github.heatswell.simulation;

/**
 * Positions of the layers in a tank. Between the lowest and the highest each is as thick as an even layer; the lowest is thinner and
 * the highest as much thicker, or the other way round. What happens at a height, in one even part of the tank, happens to the layer in
 * which the middle of that part stands; at the bottom, to the lowest layer.
 */
final class Layering {

    /** With this part (-) of an even layer a new lowest layer begins. */
    static final double NEW = 0.01;
    /** A lowest layer so thick (-) is cut: what is new goes on as the next one. */
    static final double FULL = 1 + NEW;

    /** The middle of an even layer (-). */
    static final double HALF = 0.5;

    /** Thicknesses so close (-) count as equal. */
    static final double ROUNDING = 1e-9;

    private final int layers;
    private final double reach;
    /** The thickness of the lowest layer, in even layers (-). */
    private double phase = 1;

    private int raised;

    Layering(CompiledSystem plant) {
        layers = plant.layers;
        reach = plant.inletReach;
    }

    void set(double thicknessOfLowest, boolean raises) {
        phase = thicknessOfLowest;
        raised = raises ? 1 : 0;
    }

    /** How thick a range of layers is, end exclusive, in even layers (-). */
    double thickness(int first, int end) {
        return end - first + (first == 0 ? phase - 1 : 0) + (end == layers ? 1 - phase : 0);
    }

    /** What part (-) of the inflow the jet carries into a range of layers: evenly into the height that it reaches. */
    double inletShare(int first, int end) {
        if (reach <= 1) {
            return first == 0 ? 1 : 0;
        }
        double lower = first == 0 ? 0 : first - 1 + phase;
        double upper = end == layers ? layers : end - 1 + phase;
        return Math.max(0, Math.min(upper, reach) - lower) / reach;
    }

    /** Whether the middle of an even part of the tank, counted from below, stands in a range of layers, end exclusive. */
    boolean holds(int part, int first, int end) {
        int layer = part > 0 && part < layers - 1 ? part + raised : part;
        return layer >= first && layer < end;
    }

    /** Whether, with a lowest layer of a thickness, the middle of an even part of the tank stands in the layer above that of its number. */
    static boolean raises(double thicknessOfLowest) {
        return thicknessOfLowest < HALF - ROUNDING;
    }
}
