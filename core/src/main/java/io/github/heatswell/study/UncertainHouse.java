package io.github.heatswell.study;

import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A house some of whose numbers are known only within limits. Immutable. */
public final class UncertainHouse {

    private final HotWaterSystem described;
    private final Map<UsualUncertainty, Distribution> deviations;

    private UncertainHouse(HotWaterSystem described, Map<UsualUncertainty, Distribution> deviations) {
        this.described = described;
        this.deviations = Collections.unmodifiableMap(deviations);
    }

    /**
     * A house whose numbers are known as well as they usually are.
     *
     * @param described the house as described, from which its numbers deviate
     * @return the house with every {@link UsualUncertainty} that concerns it
     */
    public static UncertainHouse usual(HotWaterSystem described) {
        Objects.requireNonNull(described, "described");
        Map<UsualUncertainty, Distribution> deviations = new EnumMap<>(UsualUncertainty.class);
        for (UsualUncertainty each : UsualUncertainty.values()) {
            if (each.concerns(described)) {
                deviations.put(each, each.usual());
            }
        }
        return new UncertainHouse(described, deviations);
    }

    /**
     * The same house with one quantity known better or worse.
     *
     * @param quantity the quantity
     * @param deviation how far it is from the described value, in the unit of the quantity
     * @return the house
     * @throws IllegalArgumentException if the house has no such quantity
     */
    public UncertainHouse with(UsualUncertainty quantity, Distribution deviation) {
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(deviation, "deviation");
        if (!quantity.concerns(described)) {
            throw new IllegalArgumentException(quantity.label() + ": the house has none that could be uncertain");
        }
        Map<UsualUncertainty, Distribution> changed = new EnumMap<>(deviations);
        changed.put(quantity, deviation);
        return new UncertainHouse(described, changed);
    }

    /**
     * The same house with one quantity exactly as described.
     *
     * @param quantity the quantity
     * @return the house
     */
    public UncertainHouse exactly(UsualUncertainty quantity) {
        Map<UsualUncertainty, Distribution> changed = new EnumMap<>(deviations);
        changed.remove(Objects.requireNonNull(quantity, "quantity"));
        return new UncertainHouse(described, changed);
    }

    /**
     * The house as described.
     *
     * @return the house, with no deviation
     */
    public HotWaterSystem described() {
        return described;
    }

    /**
     * The uncertain quantities.
     *
     * @return the quantities, in the order of the inputs
     */
    public List<UsualUncertainty> quantities() {
        return List.copyOf(deviations.keySet());
    }

    /**
     * The uncertain inputs: the deviation of each quantity, in its unit.
     *
     * @return the inputs, named after the quantities
     */
    public List<Study.Input> inputs() {
        List<Study.Input> inputs = new ArrayList<>();
        deviations.forEach((quantity, deviation) -> inputs.add(new Study.Input(quantity.label(), deviation)));
        return inputs;
    }

    /**
     * The house with its numbers moved.
     *
     * @param values the deviation of each quantity, in the unit of {@link UsualUncertainty#unit}, in the order of the inputs
     * @return the house
     * @throws IllegalArgumentException if a number leaves its range or contradicts another, which a study counts as a
     *     failed sample; a recovery efficiency above 100 % becomes 100 %, and cold water stays above freezing
     */
    public HotWaterSystem moved(double[] values) {
        if (Objects.requireNonNull(values, "values").length != deviations.size()) {
            throw new IllegalArgumentException("values: " + deviations.size()
                    + " uncertain quantities need as many deviations, not " + values.length);
        }
        double atmosphere = described.site().atmosphere();
        HotWaterSystem.Builder house = described.toBuilder();
        int next = 0;
        for (UsualUncertainty quantity : deviations.keySet()) {
            quantity.move(house, values[next++], atmosphere);
        }
        return house.followSupply().build();
    }
}
