package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.study.SizeCertainty.Range;
import io.github.heatswell.study.SizeCertainty.Tried;
import io.github.heatswell.study.StudyResult.Share;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which of the sizes looked at holds the limit in nine of ten houses, by the exact interval of the count. */
class CertainSizeTest {

    private static Tried tried(double litres, int above, int of) {
        return new Tried(litres / 1000, new Share(above, of));
    }

    private static SizeCertainty certainty(Optional<Range> needed, Tried... tried) {
        return new SizeCertainty(false, List.of(tried), Optional.empty(), needed, Balances.NONE);
    }

    /**
     * Validation: where no house of n exceeds the limit, at most 1 - 0.05^(1/n) do with 95 % confidence, from (1 - p)^n = 0.05.
     * 28 houses leave 10.1 %, 29 leave 9.8 %.
     */
    @Test
    void noneOfTwentyNineIsTheFewestThatShowNineOfTen() {
        assertEquals(1 - Math.pow(0.05, 1 / 29.0), tried(18, 0, 29).above().atMost(), 1e-12);
        assertFalse(tried(18, 0, 28).holds());
        assertTrue(tried(18, 0, 29).holds());
        assertTrue(tried(18, 0, 28).isOpen());
        assertFalse(tried(18, 0, 29).isOpen());
    }

    /** A size that more than one house in ten exceeds beyond doubt is decided, too. */
    @Test
    void aSizeThatFailsForCertainIsNotOpen() {
        assertFalse(tried(8, 32, 64).holds());
        assertFalse(tried(8, 32, 64).isOpen());
        assertTrue(tried(12, 7, 64).isOpen());
    }

    @Test
    void theSmallestThatHoldsIsAdvised() {
        SizeCertainty certainty = certainty(Optional.empty(), tried(12, 20, 64), tried(18, 0, 64), tried(24, 0, 64));
        assertEquals(0.018, certainty.advised().orElseThrow().volume());
        assertEquals(0.012, certainty.bare().volume());
        assertEquals(20, certainty.at(0.012).orElseThrow().above().count());
        assertTrue(certainty.at(0.013).isEmpty());
        assertTrue(certainty(Optional.empty(), tried(12, 20, 64)).advised().isEmpty());
    }

    /** Two and a half times the least size are not yet vague; no size that is enough for nine of ten is. */
    @Test
    void sizesThatDifferWidelyAreVague() {
        Range narrow = new Range(0.012, OptionalDouble.of(0.030), Optional.empty());
        Range wide = new Range(0.012, OptionalDouble.of(0.031), Optional.empty());
        Range endless = new Range(0.012, OptionalDouble.empty(), Optional.empty());
        Range fromNone = new Range(0, OptionalDouble.of(0.031), Optional.empty());
        assertFalse(narrow.isVague() || fromNone.isVague());
        assertTrue(wide.isVague() && endless.isVague());
        assertEquals(
                Optional.of(wide),
                certainty(Optional.of(wide), tried(12, 0, 64)).vague());
        assertTrue(certainty(Optional.of(narrow), tried(12, 0, 64)).vague().isEmpty());
    }
}
