package io.github.heatswell.system;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.VolumeUnit;
import java.util.Objects;

/**
 * Air caught in the piping: a cushion without seat or limit, as long as it lasts.
 *
 * @param volume the volume (m3) at the pressure the run starts from, above 0 to 100 L
 */
public record TrappedAir(double volume) {

    private static final Limits VOLUME = Limits.above("trapped-air", 0, 0.1);

    /**
     * Checks the volume.
     *
     * @param volume the volume (m3) at the pressure the run starts from, above 0 to 100 L
     * @throws IllegalArgumentException if the volume is outside its range
     */
    public TrappedAir {
        VOLUME.check(VolumeUnit.LITRE.fromSi(volume), VolumeUnit.LITRE);
    }

    /**
     * Air of a known volume.
     *
     * @param value the volume at the pressure the run starts from, above 0 to 100 L
     * @param unit its unit
     * @return the air
     * @throws IllegalArgumentException if the volume is outside its range
     */
    public static TrappedAir of(double value, VolumeUnit unit) {
        return new TrappedAir(
                Objects.requireNonNull(unit, "trapped-air: its unit").toSi(value));
    }
}
