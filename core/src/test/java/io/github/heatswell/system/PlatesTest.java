package io.github.heatswell.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import org.junit.jupiter.api.Test;

/** What stands on plates and changes no simulation. */
class PlatesTest {

    @Test
    void theBodyOfAVesselStaysWithIt() {
        ExpansionVessel.Builder plain = ExpansionVessel.builder()
                .volume(8, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(3, PressureUnit.BAR))
                .acceptance(60, RatioUnit.PERCENT);
        ExpansionVessel.Body unknown = plain.build().body();
        ExpansionVessel vessel = plain.rating(Pressure.gauge(150, PressureUnit.PSI))
                .mounting(ExpansionVessel.Mounting.HANGING)
                .emptyMass(10, MassUnit.POUND)
                .length(15, LengthUnit.INCH)
                .build();
        ExpansionVessel.Body body =
                vessel.toBuilder().volume(9, VolumeUnit.LITRE).build().body();
        assertEquals(vessel.body(), body);
        assertEquals(150, body.rating().orElseThrow().in(PressureUnit.PSI), 1e-12); // rounding
        assertEquals(4.5359237, body.emptyMass().orElseThrow(), 1e-12); // rounding
        assertEquals(0.381, body.length().orElseThrow(), 1e-12); // rounding
        assertEquals(ExpansionVessel.Mounting.HANGING, body.mounting().orElseThrow());
        assertTrue(unknown.rating().isEmpty() && unknown.mounting().isEmpty());
        assertTrue(unknown.emptyMass().isEmpty() && unknown.length().isEmpty());
    }

    @Test
    void aRatedInputBelongsToADeviceThatMindsTemperature() {
        ReliefValve.Builder valve = ReliefValve.builder()
                .name("valve")
                .setPressure(Pressure.gauge(7, PressureUnit.BAR))
                .fullLiftPressure(Pressure.gauge(7.7, PressureUnit.BAR))
                .reseatPressure(Pressure.gauge(6, PressureUnit.BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.SNAP)
                .ratedInput(100_000, PowerUnit.BTU_PER_HOUR);
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, valve::build);
        assertEquals("rated-input", refused.problems().get(0).field());
    }
}
