package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.scenarios.generated.Part.Plain;
import java.util.List;

/**
 * Random valid scenario files over the whole format. The keys, their forms and their ranges are those of the format itself, so that a
 * new key takes part without being named here. The same seed makes the same file on every machine.
 */
public final class RandomScenarios {

    private RandomScenarios() {}

    /**
     * A file. Of three seeds in a row one makes a house that somebody could have, one makes a house with something odd about it, and
     * one makes a house that nobody has but that the format allows, with many numbers at their limits.
     *
     * @param seed which one
     * @return the file
     */
    public static RandomScenario of(long seed) {
        return of(seed, Wildness.values()[(int) Math.floorMod(seed, 3L)]);
    }

    /**
     * A house that somebody could have.
     *
     * @param seed which one
     * @return the file
     */
    public static RandomScenario tame(long seed) {
        return of(seed, Wildness.TAME);
    }

    private static RandomScenario of(long seed, Wildness wildness) {
        Chance chance = new Chance(seed);
        Numbers numbers = new Numbers(chance, wildness);
        Keyed file = new Sampler(chance, wildness, numbers).keyed(Format.TOP);
        new Belongings(chance, wildness, numbers, file).agree();
        new Absolutes(chance).put(file);
        start(chance, numbers, file);
        new Uncertainties(chance).cast(file);
        return new RandomScenario(seed, file);
    }

    /** The pressure at the start lies between that of the supply, which the house itself knows, and the test pressure. */
    private static void start(Chance chance, Numbers numbers, Keyed file) {
        Keyed start = file.keyed("start");
        if (!start.has("pressure")) {
            return;
        }
        start.remove("pressure");
        boolean direct = file.keyed("supply").values().get("arrangement") instanceof Plain word
                && word.text().equalsIgnoreCase("direct");
        var house = new RandomScenario(0, file).system();
        double supply = house.supplyAtStart().value();
        double atmosphere = house.site().atmosphere();
        double most = Math.min(25e5, 0.99 * (house.tank().testPressureAbsolute(atmosphere) - atmosphere));
        if (!direct && most > 1.01 * supply) {
            var pressure = Format.single("start.pressure");
            start.put("pressure", numbers.between(pressure, 1.001 * supply, most));
        } else if (start.values().isEmpty()) {
            file.remove("start");
        }
    }

    /** The first so many of them. */
    static List<RandomScenario> first(int number) {
        return java.util.stream.LongStream.range(0, number)
                .mapToObj(RandomScenarios::of)
                .toList();
    }
}
