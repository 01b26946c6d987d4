package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The draws of a day, repeated every day.
 */
public final class DrawProfile {

    private static final double USUAL_TAP_CELSIUS = 40;
    /** For whom a published profile is taken; common practice, no source. */
    private static final Map<String, String> PEOPLE = Map.of(
            "eu-s", "one person",
            "eu-m", "two people",
            "eu-l", "three or four people",
            "eu-xl", "five people or more",
            "us-low", "one or two people",
            "us-medium", "three people",
            "us-high", "four people or more");

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
     * The published draw profiles, by name: {@code eu-3xs} to {@code eu-4xl} of Regulation (EU) 814/2013 and
     * {@code us-very-small}, {@code us-low}, {@code us-medium}, {@code us-high} of 10 CFR 430, Subpart B, Appendix E. The
     * rows and what is known of their origin are in the data files beside this class, which are read again each time.
     *
     * <p>An EU draw ends when its energy above cold water has been delivered. It is drawn at its peak temperature where the
     * regulation gives one, otherwise at 40 degC or at the minimum useful temperature, whichever is higher; the regulation
     * leaves this to the test rig. A US draw takes its volume of unmixed hot water; the pattern starts at midnight.
     *
     * @return all of them, small before large
     */
    public static Map<String, DrawProfile> published() {
        Map<String, List<Draw>> draws = new LinkedHashMap<>();
        for (String[] row : rows("eu-tapping-profiles.csv")) {
            draws.computeIfAbsent("eu-" + row[0].toLowerCase(Locale.ROOT), key -> new ArrayList<>())
                    .add(european(row));
        }
        for (String[] row : rows("us-draw-patterns.csv")) {
            draws.computeIfAbsent("us-" + row[0], key -> new ArrayList<>()).add(american(row));
        }
        Map<String, DrawProfile> profiles = new LinkedHashMap<>();
        draws.forEach((name, list) -> profiles.put(name, of(name, list)));
        return Collections.unmodifiableMap(profiles);
    }

    /**
     * How many people a published profile stands for.
     *
     * @param name the name, such as {@code eu-m}
     * @return in words, such as {@code two people}; empty of a profile that is for no household
     */
    public static Optional<String> people(String name) {
        return Optional.ofNullable(PEOPLE.get(name));
    }

    /** {@return its name and how many draws it has} */
    @Override
    public String toString() {
        return "'" + name + "', " + draws.size() + (draws.size() == 1 ? " draw" : " draws") + " a day";
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
        return DurationUnit.clock((long) (draw.timeOfDay() / 60));
    }

    private static Draw european(String[] row) {
        Draw draw = Draw.ofHeat(
                seconds(row[1]),
                Double.parseDouble(row[2]),
                EnergyUnit.KILOWATT_HOUR,
                Double.parseDouble(row[3]),
                FlowUnit.LITRE_PER_MINUTE);
        double useful = Double.parseDouble(row[4]);
        double peak = row.length > 5 ? Double.parseDouble(row[5]) : Math.max(useful, USUAL_TAP_CELSIUS);
        return draw.mixedTo(peak, TemperatureUnit.CELSIUS);
    }

    private static Draw american(String[] row) {
        return Draw.ofVolume(
                seconds(row[1]),
                Double.parseDouble(row[2]),
                VolumeUnit.US_GALLON,
                Double.parseDouble(row[3]),
                FlowUnit.US_GALLON_PER_MINUTE);
    }

    private static double seconds(String clock) {
        String[] parts = clock.split(":");
        return Integer.parseInt(parts[0]) * 3600.0 + Integer.parseInt(parts[1]) * 60.0;
    }

    /** The rows of a data file, without comments and header. */
    private static List<String[]> rows(String file) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(DrawProfile.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
