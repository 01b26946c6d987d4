package io.github.heatswell.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units against their definitions. */
class UnitTest {

    /** Validation: factors follow from definitions (inch, pound, standard gravity, US gallon, International-Table Btu). */
    @Test
    void factorsFollowFromDefinitions() {
        assertEquals(6894.757293168, PressureUnit.PSI.toSi(1), 1e-9); // printed digits of the usual tables
        assertEquals(100_000, PressureUnit.BAR.toSi(1));
        assertEquals(3.785411784e-3, VolumeUnit.US_GALLON.toSi(1), 1e-15); // exact by definition
        assertEquals(0.29307107, PowerUnit.BTU_PER_HOUR.toSi(1), 5e-9); // printed digits
        assertEquals(0.52752793, ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT.toSi(1), 5e-9); // printed digits
        assertEquals(6.30902e-5, FlowUnit.US_GALLON_PER_MINUTE.toSi(1), 5e-11); // printed digits
        assertEquals(0.3048, LengthUnit.FOOT.toSi(1), 1e-16);
        assertEquals(86_400, DurationUnit.DAY.toSi(1));
        assertEquals(3.6e6, EnergyUnit.KILOWATT_HOUR.toSi(1));
        assertEquals(1055.056, EnergyUnit.BTU.toSi(1), 5e-4); // printed digits
        assertEquals(EnergyUnit.BTU.toSi(1), PowerUnit.BTU_PER_HOUR.toSi(1) * DurationUnit.HOUR.toSi(1), 1e-9);
        assertEquals(0.45359237, MassUnit.POUND.toSi(1)); // exact by definition
        assertEquals(1.3558179, MomentUnit.POUND_FORCE_FOOT.toSi(1), 5e-8); // printed digits
        assertEquals(428.927e-11, ComplianceUnit.US_FLUID_OUNCE_PER_PSI.toSi(1), 1e-14); // 29.5735 mL by 0.0689476 bar
        assertEquals(28e-11, ComplianceUnit.MILLILITRE_PER_BAR.toSi(28), 1e-24); // rounding
        assertEquals(12e-6, ExpansionUnit.MILLIONTH_PER_KELVIN.toSi(12), 1e-21); // rounding
        assertEquals(12e-6, ExpansionUnit.MILLIMETRE_PER_METRE_KELVIN.toSi(0.012), 1e-21); // rounding
        assertEquals(6.12e-5, ExpansionUnit.MILLIONTH_PER_FAHRENHEIT.toSi(34), 1e-19); // nine fifths
        assertEquals(0.78, RatioUnit.PERCENT.toSi(78), 1e-16);
    }

    @Test
    void thermometersHaveZeroPointsAndDifferencesHaveNone() {
        assertEquals(273.15, TemperatureUnit.FAHRENHEIT.toSi(32), 1e-12);
        assertEquals(373.15, TemperatureUnit.FAHRENHEIT.toSi(212), 1e-12);
        assertEquals(210, TemperatureUnit.FAHRENHEIT.fromSi(TemperatureUnit.CELSIUS.toSi(98.8888889)), 1e-7);
        assertEquals(6, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE.toSi(10.8), 1e-12);
        assertEquals(0, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE.toSi(0));
    }

    static Stream<Unit> units() {
        return Stream.of(Unit.class.getPermittedSubclasses())
                .flatMap(kind -> Stream.of(kind.getEnumConstants()))
                .map(Unit.class::cast);
    }

    @ParameterizedTest
    @MethodSource("units")
    void conversionsUndoEachOther(Unit unit) {
        for (double value : new double[] {0, 1, -40, 1234.5}) {
            assertEquals(value, unit.fromSi(unit.toSi(value)), 1e-9 + 1e-12 * Math.abs(value)); // rounding
        }
        assertEquals(unit.spellings().get(0), unit.symbol());
    }

    /** Within one kind no spelling may mean two things, also when case is not heeded. */
    @Test
    void spellingsAreUnambiguous() {
        for (Class<?> kind : Unit.class.getPermittedSubclasses()) {
            Set<String> seen = new HashSet<>();
            for (Object constant : kind.getEnumConstants()) {
                Set<String> own = new HashSet<>();
                ((Unit) constant).spellings().forEach(s -> own.add(s.toLowerCase(Locale.ROOT)));
                for (String spelling : own) {
                    assertTrue(seen.add(spelling), kind.getSimpleName() + ": " + spelling);
                }
            }
        }
    }

    @Test
    void pressureKnowsItsReference() {
        Pressure gauge = Pressure.gauge(4.2, PressureUnit.BAR);
        Pressure absolute = Pressure.absolute(4.2, PressureUnit.BAR);
        assertEquals(5.2e5, gauge.absolute(1e5), 1e-9);
        assertEquals(4.2e5, absolute.absolute(1e5), 1e-9);
        assertEquals(3.2e5, absolute.gauge(1e5), 1e-9);
        assertEquals("4.2 bar gauge", gauge.toString());
        assertEquals("4.2 bar abs", absolute.toString());
        assertFalse(gauge.equals(absolute));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void pressureIsAFiniteNumber(double value) {
        assertThrows(IllegalArgumentException.class, () -> Pressure.gauge(value, PressureUnit.BAR));
        assertThrows(IllegalArgumentException.class, () -> Pressure.absolute(value, PressureUnit.PSI));
    }

    @Test
    void unitSystemsAreConsistent() {
        for (UnitSystem system : UnitSystem.values()) {
            PressureUnit pressure = switch (system) {
                case SI -> PressureUnit.BAR;
                case US -> PressureUnit.PSI;
                case KPA -> PressureUnit.KILOPASCAL;
            };
            assertEquals(pressure, system.pressure());
            assertTrue(system.temperature()
                    == (system != UnitSystem.US ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT));
            assertEquals(system != UnitSystem.US ? "L" : "gal", system.volume().symbol());
            assertEquals(
                    system != UnitSystem.US ? "L/min" : "gal/min", system.flow().symbol());
            assertEquals(
                    system != UnitSystem.US ? "kW" : "Btu/h", system.power().symbol());
            assertEquals(
                    system != UnitSystem.US ? "K" : "degF",
                    system.temperatureDifference().symbol());
        }
    }

    /** 150 psi is 10.342 bar (NIST SP 811: 6894.757 Pa to the psi); a pressure keeps what it is measured against. */
    @Test
    void pressureIsReadInAnyUnit() {
        assertEquals(10.342, Pressure.gauge(150, PressureUnit.PSI).in(PressureUnit.BAR), 5e-4); // digits given
        assertEquals(150, Pressure.absolute(150, PressureUnit.PSI).in(PressureUnit.PSI), 1e-12); // rounding
    }
}
