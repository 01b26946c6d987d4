package io.github.heatswell.sizing;

import static io.github.heatswell.sizing.PeakSurveyTest.COTTAGE;
import static io.github.heatswell.sizing.PeakSurveyTest.small;
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PASCAL;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.VolumeUnit.CUBIC_METRE;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static io.github.heatswell.units.VolumeUnit.US_GALLON;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How a survey of peaks is asked for, refused, listened to and interrupted. */
class PeakSurveyContractTest {

    @Test
    void oneThreadAndManyGiveTheSame() {
        PeakMap one = small(COTTAGE).threads(1).build().map();
        PeakMap many = small(COTTAGE).threads(5).build().map();
        for (int j = 0; j < one.prechargeCount(); j++) {
            assertEquals(one.dripVolume(j), many.dripVolume(j));
            for (int i = 0; i < one.volumeCount(); i++) {
                assertEquals(one.peakGauge(i, j), many.peakGauge(i, j));
            }
        }
    }

    @Test
    void listenerHearsEveryStep() {
        List<Integer> heard = new ArrayList<>();
        small(COTTAGE)
                .threads(3)
                .progress((done, total) -> {
                    assertEquals(4 * 4 + 4, total);
                    heard.add(done);
                })
                .build()
                .map();
        assertEquals(20, heard.size());
        for (int i = 0; i < 20; i++) {
            assertEquals(i + 1, heard.get(i));
        }
    }

    @Test
    void listenerThatFailsEndsTheSurvey() {
        PeakSurvey survey = small(COTTAGE)
                .threads(2)
                .progress((done, total) -> {
                    throw new IllegalStateException("enough");
                })
                .build();
        assertEquals(
                "enough", assertThrows(IllegalStateException.class, survey::map).getMessage());
    }

    @Test
    void interruptedCallerGetsItsThreadBack() {
        PeakSurvey survey = small(COTTAGE).build();
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, survey::map);
        assertTrue(Thread.interrupted(), "the mark stays until it is looked at");
    }

    @Test
    void takesTheUnitsOfItsCaller() {
        PeakMap map = PeakSurvey.builder(COTTAGE)
                .volumes(US_GALLON, 2, 10)
                .precharges(PSI, 30, 50)
                .build()
                .map();
        assertEquals(2 * 3.785411784e-3, map.volume(0), 1e-12); // rounding
        assertEquals(50 * 6894.757293168, map.prechargeGauge(1), 1e-6); // rounding
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                refused("volumes: the number of them: 1 ", b -> b.volumes(CUBIC_METRE, 0.01)),
                refused("volumes: the number of them: 61 ", b -> b.volumes(CUBIC_METRE, new double[61])),
                refused("volumes: 0.00005 m3", b -> b.volumes(CUBIC_METRE, 0.00005, 0.01)),
                refused("volumes: NaN m3", b -> b.volumes(CUBIC_METRE, 0.01, Double.NaN)),
                refused("volumes: 0.01 m3 is not above 0.01 m3", b -> b.volumes(CUBIC_METRE, 0.01, 0.01)),
                refused("volumes: 0.05 L", b -> b.volumes(LITRE, 0.05, 10)),
                refused("precharges: 17 bar", b -> b.precharges(BAR, 1, 17)),
                refused("precharges: the number of them: 0 ", b -> b.precharges(PASCAL)),
                refused("precharges: 0 Pa", b -> b.precharges(PASCAL, 0, 1e5)),
                refused("precharges: 1700000 Pa", b -> b.precharges(PASCAL, 1e5, 17e5)),
                refused("precharges: 100000 Pa is not above", b -> b.precharges(PASCAL, 2e5, 1e5)),
                refused("threads: 0 ", b -> b.threads(0)));
    }

    private static Arguments refused(String beginning, UnaryOperator<PeakSurvey.Builder> settings) {
        return Arguments.of(beginning, settings);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void refusesWithAReason(String beginning, UnaryOperator<PeakSurvey.Builder> settings) {
        PeakSurvey.Builder builder = PeakSurvey.builder(COTTAGE);
        String message = assertThrows(IllegalArgumentException.class, () -> settings.apply(builder))
                .getMessage();
        assertTrue(message.startsWith(beginning), message);
    }

    @Test
    void refusesAHouseItCannotSurvey() {
        HotWaterSystem bare = Houses.cottage(3.5).withoutVessel().build();
        HotWaterSystem stuck = Houses.cottage(3.5)
                .heater(Houses.heaterBuilder(3, 62).thermostatStuck(true).build())
                .build();
        PeakSurvey.Builder without = PeakSurvey.builder(bare);
        PeakSurvey.Builder hot = PeakSurvey.builder(stuck);
        assertTrue(assertThrows(IllegalArgumentException.class, without::build)
                .getMessage()
                .startsWith("vessel: "));
        assertTrue(assertThrows(IllegalArgumentException.class, hot::build)
                .getMessage()
                .startsWith("thermostat: "));
        assertTrue(small(bare)
                .vesselLike(Houses.vessel(50))
                .build()
                .map()
                .present()
                .isEmpty());
    }
}
