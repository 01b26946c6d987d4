package io.github.heatswell.system;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The draws of a day, repeated every day.
 */
public final class DrawProfile {

    private static final DrawProfile NONE = new DrawProfile("none", List.of());

    private final String name;
    private final List<Draw> draws;

    private DrawProfile(String name, List<Draw> draws) {
        this.name = name;
        this.draws = List.copyOf(draws);
    }

    /**
     * A day without draws.
     *
     * @return the empty profile
     */
    public static DrawProfile none() {
        return NONE;
    }

    /**
     * A custom day.
     *
     * @param name what it is called
     * @param draws the draws, in any order
     * @return the profile
     * @throws IllegalArgumentException if two draws begin at the same time, or a draw of known length runs into the
     *     next
     */
    public static DrawProfile of(String name, List<Draw> draws) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(draws, "draws").forEach(draw -> Objects.requireNonNull(draw, "draws: one of them"));
        List<Draw> sorted = draws.stream()
                .sorted(Comparator.comparingDouble(Draw::timeOfDay))
                .toList();
        for (int i = 0; i < sorted.size(); i++) {
            Draw draw = sorted.get(i);
            Draw next = sorted.get((i + 1) % sorted.size());
            double room = next.timeOfDay() - draw.timeOfDay() + (i + 1 == sorted.size() ? Draw.DAY : 0);
            double length = draw.volume().isPresent() ? draw.volume().getAsDouble() / draw.flow() : 0;
            if (!(room > length)) {
                throw new IllegalArgumentException("draws: the draw at " + clock(draw) + " lasts "
                        + QuantityFormat.ascii(UnitSystem.SI).time(length) + " and runs into the next one at "
                        + clock(next));
            }
        }
        return new DrawProfile(name, sorted);
    }

    /**
     * What the profile is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The draws of the day.
     *
     * @return the draws in the order of time, possibly none
     */
    public List<Draw> draws() {
        return draws;
    }

    private static String clock(Draw draw) {
        int minutes = (int) (draw.timeOfDay() / 60);
        return String.format(java.util.Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}
