package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.function.Consumer;

/**
 * One cause as a change of the described house: what is different for certain, and the numbers that are open.
 *
 * @param cause what is wrong
 * @param device the name of the valve it is about, empty if there is but one such thing
 * @param change what is different whatever the numbers are
 * @param open the numbers that say how much is wrong, possibly none
 */
record Hypothesis(Cause cause, String device, Consumer<SuspectHouse> change, List<FreeParameter> open) {

    Hypothesis {
        open = List.copyOf(open);
    }

    /** The house as this hypothesis sees it, with the parameters put to their values. */
    HotWaterSystem house(HotWaterSystem described, List<FreeParameter> parameters, double[] values) {
        SuspectHouse house = new SuspectHouse(described, device);
        change.accept(house);
        for (int i = 0; i < values.length; i++) {
            parameters.get(i).parameter().set(house, values[i]);
        }
        return house.build();
    }
}
