package io.github.heatswell.water;

import static io.github.heatswell.water.Printed.assertNineDigits;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** IAPWS-IF97 region 1 against the verification table of its release, and the contract. */
class If97Region1Test extends LiquidWaterContract {
    private static final ReferenceTable TABLE_5 = ReferenceTable.read(
            "if97_table5.csv", 3, "T_K", "p_abs_MPa", "v_m3_kg", "h_kJ_kg", "u_kJ_kg", "cp_kJ_kgK", "w_m_s");
    private static final ReferenceTable TABLE_5_DERIVED =
            ReferenceTable.read("if97_table5_derived.csv", 3, "T_K", "p_abs_MPa", "beta_1_K", "kappa_1_Pa");

    If97Region1Test() {
        super(If97Region1.instance());
    }

    static IntStream rows() {
        return IntStream.range(0, 3);
    }

    /** Validation: IAPWS R7-97(2012), Table 5, every printed digit; the sound speed involves beta and kappa as well. */
    @ParameterizedTest
    @MethodSource("rows")
    void table5IsReproducedToItsLastDigit(int row) {
        LiquidWater.State state = stateOf(TABLE_5, row);
        assertAll(
                () -> assertNineDigits(TABLE_5.text(row, "v_m3_kg"), 1 / state.density(), "v"),
                () -> assertNineDigits(TABLE_5.text(row, "h_kJ_kg"), state.enthalpy() / 1e3, "h"),
                () -> assertNineDigits(TABLE_5.text(row, "u_kJ_kg"), state.internalEnergy() / 1e3, "u"),
                () -> assertNineDigits(TABLE_5.text(row, "cp_kJ_kgK"), state.heatCapacity() / 1e3, "cp"),
                () -> assertNineDigits(TABLE_5.text(row, "w_m_s"), Property.soundSpeed(state), "w"));
    }

    /** Validation: expansivity and compressibility at the same states, from two other programs of the same equation. */
    @ParameterizedTest
    @MethodSource("rows")
    void derivativesAtTheStatesOfTable5AreReproduced(int row) {
        LiquidWater.State state = stateOf(TABLE_5_DERIVED, row);
        assertAll(
                () -> assertNineDigits(TABLE_5_DERIVED.text(row, "beta_1_K"), state.expansivity(), "beta"),
                () -> assertNineDigits(TABLE_5_DERIVED.text(row, "kappa_1_Pa"), state.compressibility(), "kappa"));
    }

    /** Regression: the range is the documented one. */
    @Test
    void rangeIsTheDocumentedOne() {
        assertEquals(
                new LiquidWater.ValidityRange(273.15, 623.15, 611, 100e6),
                If97Region1.instance().validity());
    }

    /** Regression: there is one instance, since there is nothing to tell two apart. */
    @Test
    void instanceIsShared() {
        assertSame(If97Region1.instance(), If97Region1.instance());
    }

    private static LiquidWater.State stateOf(ReferenceTable table, int row) {
        return If97Region1.instance().stateAt(table.number(row, "T_K"), table.number(row, "p_abs_MPa") * 1e6);
    }
}
