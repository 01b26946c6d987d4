package io.github.heatswell.system;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.TemperatureUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A law of a vessel's gas from outside: what is read off it, and where it is found to break its contract. */
class GasLawTest {

    /** Air at 2 bar, warmed to half as hot again, in the last 40 % of its vessel: 3 bar when empty, 7.5 bar at its limit. */
    private static final double CHARGE = 2e5;

    private static final double WARMTH = 1.5;

    /** Boyle's law and Charles's, with what a test makes wrong of them; it counts how often it was asked. */
    private static class Air implements GasLaw {
        private int asked;

        @Override
        public double pressure(double charge, double share, double warmth) {
            asked++;
            return charge * warmth / share;
        }

        @Override
        public double byShare(double charge, double share, double warmth) {
            return -charge * warmth / (share * share);
        }

        @Override
        public double byWarmth(double charge, double share, double warmth) {
            return charge / share;
        }
    }

    /** Validation: inside by Boyle's law; beyond, straight on with its slope, -3 bar when empty and -18.75 bar at the limit. */
    @ParameterizedTest
    @CsvSource({"4e5, 0.75", "3e5, 1", "7.5e5, 0.4", "1.5e5, 1.5", "11.25e5, 0.2"})
    void aLawIsReadBothWays(double pressure, double share) {
        Air air = new Air();
        GasLawInverse inverse = new GasLawInverse(air, 0.4);
        assertEquals(share, inverse.share(CHARGE, pressure, WARMTH), 1e-12); // rounding
        assertTrue(air.asked <= 4, "the first guess is Boyle's");
        assertEquals(pressure, inverse.pressure(CHARGE, share, WARMTH), 1e-6); // rounding
    }

    /** Closed form: a gas whose pressure falls steeply at half the volume, where the tangent from the first guess points outside. */
    @Test
    void aShareIsFoundWhereTangentsPointOutside() {
        Air step = new Air() {
            @Override
            public double pressure(double charge, double share, double warmth) {
                super.pressure(charge, share, warmth);
                return charge * (1 + Math.atan(20 * (0.5 - share)) + Math.atan(10));
            }

            @Override
            public double byShare(double charge, double share, double warmth) {
                return -20 * charge / (1 + Math.pow(20 * (0.5 - share), 2));
            }
        };
        assertEquals(
                0.5,
                new GasLawInverse(step, 0.4).share(CHARGE, CHARGE * (1 + Math.atan(10)), 1),
                1e-12); // how closely a share is found
        assertTrue(step.asked < 15, step.asked + " times asked, where halving alone takes 43");
    }

    /** Validation: with the vessel's own gas, 2 bar and 1.5 times as warm leave 3/4 of the volume at 4 bar, and the other way round. */
    @Test
    void ordinaryAirFollowsBoyleAndCharles() {
        ExpansionVessel vessel = RefusalTest.vessel(1);
        assertEquals(0.75, vessel.gasShare(CHARGE, 4e5, WARMTH), 1e-15);
        assertEquals(4e5, vessel.gasPressure(CHARGE, 0.75, WARMTH), 1e-9);
    }

    /**
     * Contract: a law is looked at as cold and as hot as compression makes the gas, empty and at its limit. Charged at 0 degC, gas of
     * 20 degC is warmed by 293.15/273.15; it is looked at from 0.8 to 1.6 times that.
     */
    @ParameterizedTest
    @CsvSource({
        "0.8, cold, must give a finite pressure that falls as the gas expands",
        "1.6, hot, must give a finite pressure that falls as the gas expands",
        "0.8, empty, must not fall as the gas warms; its slope is -1.0 Pa at 1.0 of the volume",
        "1.6, full, must not fall as the gas warms; its slope is -1.0 Pa at 0.4 of the volume",
        "1, charge, where the precharge is"
    })
    void aLawIsLookedAtFromEndToEnd(double times, String where, String refusal) {
        GasLaw wrong = new Air() {
            private boolean there(double warmth) {
                return Math.abs(warmth - times * 293.15 / 273.15) < 1e-3;
            }

            @Override
            public double pressure(double charge, double share, double warmth) {
                return super.pressure(charge, share, warmth) * (where.equals("charge") ? 1 + 2e-9 : 1);
            }

            @Override
            public double byShare(double charge, double share, double warmth) {
                boolean rises = where.matches("cold|hot") && there(warmth);
                return rises ? 0 : super.byShare(charge, share, warmth);
            }

            @Override
            public double byWarmth(double charge, double share, double warmth) {
                boolean falls = where.equals("empty") && share > 0.99 || where.equals("full") && share < 0.41;
                return falls && there(warmth) ? -1 : super.byWarmth(charge, share, warmth);
            }
        };
        HotWaterSystem.Builder house = charged(wrong);
        String message =
                assertThrows(InvalidDescriptionException.class, house::build).getMessage();
        assertTrue(message.contains(refusal), message);
    }

    /** Contract: a law misses the precharge by no more than rounding. */
    @Test
    void roundingOfThePrechargeIsNoFault() {
        assertDoesNotThrow(() -> charged(new Air() {
                    @Override
                    public double pressure(double charge, double share, double warmth) {
                        return super.pressure(charge, share, warmth) * (1 + 5e-10);
                    }
                })
                .build());
    }

    private static HotWaterSystem.Builder charged(GasLaw law) {
        return RefusalTest.whole(4, 10)
                .vessel(RefusalTest.vessel(4).toBuilder()
                        .gasLaw(law)
                        .chargedAt(0, TemperatureUnit.CELSIUS)
                        .gasTimeConstant(1, DurationUnit.MINUTE)
                        .build());
    }
}
