package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Parts;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a study may be relied on for beside its statistics. */
class StudyContractTest {

    private static Study.Builder study(double shift) {
        return Study.builder()
                .input("a", Distribution.between(0, 1))
                .input("b", Distribution.between(0, 2))
                .outputs(List.of("sum"))
                .samples(64)
                .seed(7)
                .model(values -> new double[] {values[0] + values[1] + shift});
    }

    /** What is added to every answer adds nothing to its variance, in whole or in shares, however few the samples are. */
    @Test
    void sharesDoNotDependOnWhereZeroIs() {
        VarianceShares plain = study(0).build().varianceShares();
        VarianceShares shifted = study(1000).build().varianceShares();
        for (int input = 0; input < 2; input++) {
            assertEquals(plain.firstOrder(input, 0), shifted.firstOrder(input, 0), 1e-9); // rounding of 1000 squared
            assertEquals(plain.total(input, 0), shifted.total(input, 0), 1e-9); // the same
        }
    }

    @Test
    void resultsKnowTheirStudy() {
        Study study = study(0).build();
        StudyResult result = study.run();
        VarianceShares shares = study.varianceShares();
        assertEquals(64, study.samples());
        assertEquals(List.of("sum"), result.outputs());
        assertEquals(List.of("sum"), shares.outputs());
        assertEquals(study.inputs(), shares.inputs());
        assertEquals(64 * (2 + 2), shares.plannedRuns());
        assertEquals(64 * (2 + 2), shares.completedRuns());
    }

    @Test
    void whatIsNotThereIsNotAnswered() {
        StudyResult result = study(0).build().run();
        VarianceShares shares = study(0).build().varianceShares();
        for (int wrong : new int[] {-1, 64}) {
            assertThrows(IndexOutOfBoundsException.class, () -> result.input(wrong));
        }
        for (int wrong : new int[] {-1, 2}) {
            assertThrows(IndexOutOfBoundsException.class, () -> shares.firstOrder(wrong, 0));
            assertThrows(IndexOutOfBoundsException.class, () -> shares.total(wrong, 0));
        }
    }

    @Test
    void fewestAndMostAreAllowed() {
        assertEquals(16, study(0).samples(16).build().samples());
        assertEquals(1_000_000, study(0).samples(1_000_000).build().samples());
        assertEquals(1, study(0).threads(1).build().threads());
        assertEquals(1024, study(0).threads(1024).build().threads());
    }

    /** Above means above: the threshold itself is not, and no sign is left on a zero. */
    @Test
    void thresholdItselfIsNotAboveIt() {
        StudyResult.Spread spread = StudyResult.Spread.of(new double[] {-0.0, 1, 2, 2, 3}, 5);
        assertEquals(new StudyResult.Share(1, 5), spread.above(2));
        assertEquals(new StudyResult.Share(3, 5), spread.above(1));
        assertEquals(0.0, spread.quantile(0)); // -0.0 would differ
        assertEquals(1.6, spread.mean(), 1e-15); // rounding
        for (double wrong : new double[] {-0.001, 1.001, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> spread.quantile(wrong));
        }
    }

    /** A vessel that is cut off leaves no charge to be uncertain about. */
    @ParameterizedTest
    @EnumSource(value = ExpansionVessel.Condition.class, mode = EnumSource.Mode.EXCLUDE, names = "SOUND")
    void deadVesselHasNoUncertainCharge(ExpansionVessel.Condition condition) {
        ExpansionVessel dead =
                Houses.vessel(18, 4).toBuilder().condition(condition).build();
        assertFalse(UncertainHouse.Quantity.PRECHARGE.concerns(
                Parts.lodge(4.2, 58).vessel(dead).build()));
    }

    /** A spread reaches one and a half expanded uncertainties to either side, and its unit says of what. */
    @ParameterizedTest
    @EnumSource(UncertainHouse.Quantity.class)
    void usualSpreadIsThatOfTheStatedUncertainty(UncertainHouse.Quantity quantity) {
        double reach = quantity.usual().onlyLimitsKnown() ? 2 : 3;
        assertEquals(
                reach * quantity.expanded(),
                quantity.usual().high() - quantity.usual().low(),
                1e-15 * reach * quantity.expanded()); // rounding
        assertEquals(true, List.of("Pa", "K", "").contains(quantity.unit()), quantity.unit());
        assertEquals(
                quantity.expanded() < 1, quantity.unit().isEmpty(), "shares are below one, kelvin and pascal above");
    }
}
