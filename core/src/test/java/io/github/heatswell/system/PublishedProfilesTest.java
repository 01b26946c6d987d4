package io.github.heatswell.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation: the published profiles add up to their printed totals. */
class PublishedProfilesTest {

    private final Map<String, DrawProfile> profiles = DrawProfile.published();

    /** Reference energies of Regulation (EU) 814/2013, Annex III, Table 1 (kWh a day). */
    @ParameterizedTest
    @CsvSource({
        "eu-3xs, 0.345",
        "eu-xxs, 2.100",
        "eu-xs, 2.100",
        "eu-s, 2.100",
        "eu-m, 5.845",
        "eu-l, 11.655",
        "eu-xl, 19.07",
        "eu-xxl, 24.53",
        "eu-3xl, 46.76",
        "eu-4xl, 93.52"
    })
    void europeanEnergiesAddUp(String name, double kilowattHours) {
        double sum = profiles.get(name).draws().stream()
                .mapToDouble(draw -> draw.heat().orElseThrow())
                .sum();
        assertEquals(kilowattHours, sum / 3.6e6, 1e-9); // exact by the regulation; rounding
    }

    /** Daily totals and numbers of draws of 10 CFR 430, Subpart B, Appendix E (gal; the numbers from memory). */
    @ParameterizedTest
    @CsvSource({"us-very-small, 10, 9", "us-low, 38, 11", "us-medium, 55, 12", "us-high, 84, 14"})
    void americanVolumesAddUp(String name, double gallons, int draws) {
        DrawProfile profile = profiles.get(name);
        double sum = profile.draws().stream()
                .mapToDouble(draw -> draw.volume().orElseThrow())
                .sum();
        assertEquals(gallons, VolumeUnit.US_GALLON.fromSi(sum), 1e-9); // exact by the regulation; rounding
        assertEquals(draws, profile.draws().size());
    }

    /** Annex III: nothing before seven; the last draw of M at 21:30. */
    @Test
    void europeanDayBeginsAtSeven() {
        List<Draw> medium = profiles.get("eu-m").draws();
        assertEquals(7 * 3600, medium.get(0).timeOfDay());
        assertEquals(21.5 * 3600, medium.get(medium.size() - 1).timeOfDay());
        assertEquals(23, medium.size());
        assertEquals(273.15 + 55, medium.get(20).mixedTemperature().orElseThrow(), 1e-9);
        assertEquals(273.15 + 40, medium.get(0).mixedTemperature().orElseThrow(), 1e-9);
    }

    @Test
    void namesAreKnown() {
        assertEquals(14, List.copyOf(profiles.keySet()).size());
        assertFalse(profiles.containsKey("eu-tiny"));
        assertTrue(DrawProfile.none().draws().isEmpty());
    }

    @Test
    void drawsThatRunIntoEachOtherAreRefused() {
        Draw long1 = Draw.ofVolume(3600, 60, VolumeUnit.LITRE, 1, FlowUnit.LITRE_PER_MINUTE);
        Draw next = Draw.ofVolume(3600 + 1800, 1, VolumeUnit.LITRE, 1, FlowUnit.LITRE_PER_MINUTE);
        String message = assertThrows(
                        IllegalArgumentException.class, () -> DrawProfile.of("mine", List.of(next, long1)))
                .getMessage();
        assertTrue(message.contains("01:00") && message.contains("01:30"), message);
        assertThrows(IllegalArgumentException.class, () -> DrawProfile.of("mine", List.of(next, next)));
        assertEquals(
                2,
                DrawProfile.of(
                                "mine",
                                List.of(next, Draw.ofHeat(0, 1, EnergyUnit.MEGAJOULE, 3, FlowUnit.LITRE_PER_MINUTE)))
                        .draws()
                        .size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, 86_400, Double.POSITIVE_INFINITY})
    void impossibleTimesAreRefused(double time) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Draw.ofVolume(time, 1, VolumeUnit.LITRE, 1, FlowUnit.LITRE_PER_MINUTE));
        assertThrows(
                IllegalArgumentException.class,
                () -> Draw.ofHeat(time, 1, EnergyUnit.MEGAJOULE, 1, FlowUnit.LITRE_PER_MINUTE));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void impossibleAmountsAreRefused(double amount) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Draw.ofVolume(0, amount, VolumeUnit.LITRE, 1, FlowUnit.LITRE_PER_MINUTE));
        assertThrows(
                IllegalArgumentException.class,
                () -> Draw.ofVolume(0, 1, VolumeUnit.LITRE, amount, FlowUnit.LITRE_PER_MINUTE));
        assertThrows(
                IllegalArgumentException.class,
                () -> Draw.ofHeat(0, amount, EnergyUnit.JOULE, 1, FlowUnit.LITRE_PER_MINUTE));
        assertThrows(
                IllegalArgumentException.class,
                () -> Draw.ofHeat(0, 1, EnergyUnit.MEGAJOULE, 1, FlowUnit.LITRE_PER_MINUTE)
                        .mixedTo(amount, TemperatureUnit.CELSIUS));
    }
}
