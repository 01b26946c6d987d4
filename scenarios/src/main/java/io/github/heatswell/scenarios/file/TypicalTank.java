package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The usual make of a tank, from what is known of it. All values are sound texts of their fields. */
final class TypicalTank {

    /** Height over diameter of a storage tank (-). */
    private static final double SLENDERNESS = 3;
    /** Diameter over wall thickness (-). */
    private static final Map<String, Double> THINNESS =
            Map.of("steel", 200.0, "stainless-steel", 350.0, "copper", 250.0);
    /** No sheet is thinner (mm). */
    private static final double THINNEST_WALL = 0.5;
    /** Standing loss (W/K) at {@link #REFERENCE_VOLUME}. */
    private static final double REFERENCE_LOSS = 2;
    /** Volume (m3) to which {@link #REFERENCE_LOSS} belongs. */
    private static final double REFERENCE_VOLUME = 0.2;

    private TypicalTank() {}

    static Optional<String> diameter(Map<String, String> given) {
        double metres = Math.cbrt(4 * volume(given) / (Math.PI * SLENDERNESS));
        return Optional.of(10 * Math.round(LengthUnit.MILLIMETRE.fromSi(metres) / 10) + " mm");
    }

    static Optional<String> wall(Map<String, String> given) {
        Double thinness = THINNESS.get(given.get("material").toLowerCase(Locale.ROOT));
        if (thinness == null) {
            return Optional.empty();
        }
        Amount<LengthUnit> diameter = QuantityReader.read(given.get("diameter"), Kind.LENGTH);
        double millimetres = LengthUnit.MILLIMETRE.fromSi(diameter.unit().toSi(diameter.value())) / thinness;
        return Optional.of(Decimals.significant(Math.round(10 * Math.max(millimetres, THINNEST_WALL)) / 10.0, 6)
                + " mm");
    }

    static Optional<String> standingLoss(Map<String, String> given) {
        double loss = REFERENCE_LOSS * Math.pow(volume(given) / REFERENCE_VOLUME, 2.0 / 3);
        return Optional.of(Decimals.significant(loss, 2) + " W/K");
    }

    /** Whether the water is divided into layers, which alone need a height. */
    static boolean layered(Map<String, String> given) {
        return !List.of("", "1").contains(given.getOrDefault("layers", ""));
    }

    static Optional<String> height(Map<String, String> given) {
        if (!given.containsKey("diameter")) {
            return Optional.empty();
        }
        Amount<LengthUnit> diameter = QuantityReader.read(given.get("diameter"), Kind.LENGTH);
        double metres = diameter.unit().toSi(diameter.value());
        double height = 4 * volume(given) / (Math.PI * metres * metres);
        return Optional.of(10 * Math.round(LengthUnit.MILLIMETRE.fromSi(height) / 10) + " mm");
    }

    private static double volume(Map<String, String> given) {
        Amount<VolumeUnit> volume = QuantityReader.read(given.get("volume"), Kind.VOLUME);
        return volume.unit().toSi(volume.value());
    }
}
