package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.function.Consumer;

/**
 * One cause as a change of the described house: its fixed part and its free parameters.
 *
 * @param cause what is wrong
 * @param device the name of the valve it is about, empty if there is but one such thing
 * @param change the fixed part of the change
 * @param open the free parameters, possibly none
 */
record Hypothesis(Cause cause, String device, Consumer<SuspectHouse> change, List<FreeParameter> open) {

    Hypothesis {
        open = List.copyOf(open);
    }

    /** The house under this hypothesis, with given parameter values. */
    HotWaterSystem house(HotWaterSystem described, List<FreeParameter> parameters, double[] values) {
        SuspectHouse house = new SuspectHouse(described, device);
        change.accept(house);
        for (int i = 0; i < values.length; i++) {
            parameters.get(i).parameter().set(house, values[i]);
        }
        return house.build();
    }
}
