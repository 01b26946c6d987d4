package io.github.heatswell.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Regression: the values of a house have one name each, wherever they stand in a file. */
class NamedValueTest {

    @Test
    void aFieldIsFoundWhereverItStands() {
        assertEquals(Optional.of(NamedValue.SET_PRESSURE), NamedValue.of("relief[12].opens"));
        assertEquals(Optional.of(NamedValue.SUPPLY), NamedValue.of("supply.pressure.pressure"));
        assertEquals(Optional.of(NamedValue.COLD), NamedValue.of("supply.water.coldest"));
        assertEquals(Optional.empty(), NamedValue.of("supply.waterworks"));
        assertEquals(Optional.empty(), NamedValue.of("tank"));
        assertEquals(Optional.of(NamedValue.PRECHARGE), NamedValue.of("vessels[1].precharge"));
        assertEquals("opens", NamedValue.SET_PRESSURE.key());
    }

    @Test
    void noTwoHaveOneName() {
        List<NamedValue> all = List.of(NamedValue.values());
        assertEquals(all.size(), all.stream().map(NamedValue::field).distinct().count());
        assertEquals(all.size(), all.stream().map(NamedValue::words).distinct().count());
        assertEquals(all.size(), all.stream().map(NamedValue::label).distinct().count());
        assertEquals("tank volume", NamedValue.TANK_VOLUME.label());
        assertEquals("vessel volume", NamedValue.VESSEL_VOLUME.label());
        assertEquals("rating of the vessel", NamedValue.VESSEL_RATING.label());
    }

    /** Contract: a value that is not known is asked for; two stand on the plates by which a valve suits its tank. */
    @Test
    void everyValueCanBeFoundOut() {
        assertEquals(
                List.of(),
                Arrays.stream(NamedValue.values())
                        .filter(value -> value.check().isBlank())
                        .toList());
        assertEquals(
                Set.of(NamedValue.SET_PRESSURE, NamedValue.WORKING_PRESSURE),
                Arrays.stream(NamedValue.values())
                        .filter(NamedValue::isPressureOnPlate)
                        .collect(Collectors.toSet()));
    }

    @Test
    void aChoiceIsNeverMoreOrLess() {
        HotWaterSystem.Builder house = HotWaterSystem.builder();
        Arrays.stream(NamedValue.values()).filter(NamedValue::isChoice).forEach(choice -> {
            assertThrows(IllegalArgumentException.class, choice::raisedIn);
            assertThrows(IllegalArgumentException.class, () -> choice.raise(house, 0.1));
        });
    }

    /** A precharge that is uncertain in one house leaves another without a vessel as it is. */
    @Test
    void aHouseWithoutAVesselStaysAsItIs() {
        HotWaterSystem.Builder house = HotWaterSystem.builder();
        NamedValue.PRECHARGE.raise(house, 1e4);
        assertThrows(IllegalStateException.class, () -> house.changeVessel(vessel -> vessel));
    }
}
