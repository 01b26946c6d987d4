package io.github.heatswell.system;

import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The published draw profiles, by name: {@code eu-3xs} to {@code eu-4xl} of Regulation (EU) 814/2013 and
 * {@code us-very-small}, {@code us-low}, {@code us-medium}, {@code us-high} of 10 CFR 430, Subpart B, Appendix E. The
 * rows and what is known of their origin are in the data files beside this class.
 *
 * <p>An EU draw ends when its energy above cold water has been delivered. It is drawn at its peak temperature where the
 * regulation gives one, otherwise at 40 degC or at the minimum useful temperature, whichever is higher; the regulation
 * leaves this to the test rig. A US draw takes its volume of unmixed hot water; the pattern starts at midnight.
 */
public final class StandardProfiles {

    private static final double USUAL_TAP_CELSIUS = 40;

    private final Map<String, DrawProfile> profiles;

    private StandardProfiles(Map<String, DrawProfile> profiles) {
        this.profiles = profiles;
    }

    /**
     * Reads the published profiles.
     *
     * @return all of them
     */
    public static StandardProfiles load() {
        Map<String, List<Draw>> draws = new LinkedHashMap<>();
        for (String[] row : rows("eu-tapping-profiles.csv")) {
            draws.computeIfAbsent("eu-" + row[0].toLowerCase(java.util.Locale.ROOT), key -> new ArrayList<>())
                    .add(european(row));
        }
        for (String[] row : rows("us-draw-patterns.csv")) {
            draws.computeIfAbsent("us-" + row[0], key -> new ArrayList<>()).add(american(row));
        }
        Map<String, DrawProfile> profiles = new LinkedHashMap<>();
        draws.forEach((name, list) -> profiles.put(name, DrawProfile.of(name, list)));
        return new StandardProfiles(profiles);
    }

    /**
     * The names of the profiles.
     *
     * @return the names, small before large
     */
    public List<String> names() {
        return List.copyOf(profiles.keySet());
    }

    /**
     * Finds a profile.
     *
     * @param name its name, such as {@code eu-m}
     * @return the profile, or empty if there is none of that name
     */
    public Optional<DrawProfile> find(String name) {
        return Optional.ofNullable(profiles.get(Objects.requireNonNull(name, "name")));
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
                new InputStreamReader(StandardProfiles.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
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
