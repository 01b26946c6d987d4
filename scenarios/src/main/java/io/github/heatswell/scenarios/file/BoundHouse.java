package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.InvalidDescriptionException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** The sections of a file that describe its house, and how they are put together. For any number of threads once all are in. */
final class BoundHouse {

    private final List<Part<?>> parts = new ArrayList<>();

    /** A section, and where it goes. */
    private record Part<T>(BoundSection<?, T> section, BiConsumer<HotWaterSystem.Builder, T> setter) {

        void asWritten(HotWaterSystem.Builder house) {
            setter.accept(house, section.value());
        }

        void with(HotWaterSystem.Builder house, double... values) {
            setter.accept(house, section.with(values));
        }
    }

    /** Adds a section; returns what it describes. */
    <T> T add(BoundSection<?, T> section, BiConsumer<HotWaterSystem.Builder, T> setter) {
        parts.add(new Part<>(section, setter));
        return section.value();
    }

    /** The house with the best estimates, not yet checked as a whole. */
    HotWaterSystem.Builder asWritten() {
        HotWaterSystem.Builder house = HotWaterSystem.builder();
        parts.forEach(part -> part.asWritten(house));
        return house;
    }

    /**
     * The house with certain values. Only the sections that hold something uncertain are described again.
     *
     * @param values one for every uncertain field of the file, in its unit
     * @throws InvalidScenarioException if these values do not go together; its faults name the fields
     */
    HotWaterSystem with(double... values) {
        HotWaterSystem.Builder house = HotWaterSystem.builder();
        parts.forEach(part -> part.with(house, values));
        try {
            return house.build();
        } catch (InvalidDescriptionException e) {
            throw new InvalidScenarioException(
                    "some values",
                    e.problems().stream()
                            .map(problem -> new Fault(Location.outside(1), problem.toString()))
                            .toList());
        }
    }
}
