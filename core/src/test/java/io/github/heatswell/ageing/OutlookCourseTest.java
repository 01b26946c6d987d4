package io.github.heatswell.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.study.Houses;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How the months of an outlook are read, with months made by hand. */
class OutlookCourseTest {

    private static final HotWaterSystem HOUSE =
            Parts.lodge(4, 60).vessel(Houses.vessel(12, 3.5)).build();

    private static OutlookCourse.Month month(int number, double relievedDaily, Event.Kind alarm) {
        return new OutlookCourse.Month(
                number, number / 12.0, 15, 3e5, 6e5 + number, relievedDaily, Optional.ofNullable(alarm));
    }

    /** Months that drip by 1 L a day where a letter is not a point: h ends in a hazard, w exceeds the working pressure. */
    private static OutlookCourse course(String pattern) {
        List<OutlookCourse.Month> months = new ArrayList<>();
        for (int i = 0; i < pattern.length(); i++) {
            char letter = pattern.charAt(i);
            Event.Kind alarm = switch (letter) {
                case 'h' -> Event.Kind.VAPOUR_FORMS;
                case 'w' -> Event.Kind.WORKING_PRESSURE_EXCEEDED;
                default -> null;
            };
            months.add(month(i, letter == '.' ? 0 : 1e-3, alarm));
        }
        return new OutlookCourse(0.012, new PrechargeLoss(0.1), months);
    }

    @Test
    void aMonthOfDripsIsATwelfthOfAYear() {
        assertEquals(365e-3 / 12, month(3, 1e-3, null).relieved(), 1e-15);
        assertEquals(0, month(11, 0, null).year());
        assertEquals(1, month(12, 0, null).year());
        assertEquals(2, month(35, 0, null).year());
    }

    @Test
    void whatAYearGivesOffAndReaches() {
        OutlookCourse course = course(".......xx.....xxx........x");
        assertEquals(2 * 365e-3 / 12, course.relievedInYear(0), 1e-15);
        assertEquals(3 * 365e-3 / 12, course.relievedInYear(1), 1e-15);
        assertEquals(6 * 365e-3 / 12, course.relieved(), 1e-15);
        assertEquals(0, course.relievedInYear(5));
        assertEquals(6e5 + 11, course.highestInYear(0));
        assertEquals(6e5 + 23, course.highestInYear(1));
        assertEquals(6e5 + 25, course.highestInYear(2));
        assertEquals(7, course.firstDripping().orElseThrow().number());
    }

    /** A year without a drop in between makes it a second time. */
    @Test
    void drippingAgainTakesADryYear() {
        assertEquals(13, course("x............x").drippingAgain().orElseThrow().number());
        assertTrue(course("x...........").drippingAgain().isEmpty());
        assertTrue(course("x..........x").drippingAgain().isEmpty(), "eleven months");
        assertEquals(13, course("x............xx").drippingAgain().orElseThrow().number());
        assertEquals(14, course(".x............x").drippingAgain().orElseThrow().number());
        assertTrue(course("x......x......x").drippingAgain().isEmpty());
        assertTrue(course("...............x").drippingAgain().isEmpty(), "the first time");
    }

    @Test
    void aHazardIsGraverThanAnEarlierExcess() {
        assertEquals(4, course("..w.h.w").gravest().orElseThrow().number());
        assertEquals(2, course("..w...w").gravest().orElseThrow().number());
        assertTrue(course(".x").gravest().isEmpty());
    }

    @Test
    void ofSeveralCoursesTheGravestMonthCounts() {
        OutlookResult found = Outlook.builder(HOUSE, Duration.ofHours(1))
                .years(1)
                .uncertain(List.of(), values -> HOUSE)
                .sampled(study -> study.samples(16).threads(1))
                .build()
                .simulate();
        assertEquals(
                9, gravest(found, "......w", "..w", ".........h").orElseThrow().number());
        assertEquals(2, gravest(found, "......w", "...w", "..w").orElseThrow().number());
        assertEquals(1, gravest(found, ".h", "......h", "..w").orElseThrow().number());
        assertTrue(gravest(found, "...", "..x", "...").isEmpty());
    }

    private static Optional<OutlookCourse.Month> gravest(
            OutlookResult from, String expected, String slow, String fast) {
        return new OutlookResult(
                        1,
                        course(expected),
                        course(slow),
                        course(fast),
                        List.of(),
                        from.onset(),
                        from.limit(),
                        from.balances())
                .gravest();
    }

    static Stream<Arguments> refusals() {
        Outlook.Builder builder = Outlook.builder(HOUSE, Duration.ofHours(1));
        builder.years(1).years(40).mainsSwing(0).mainsSwing(10e5).larger(List.of(0.1e-3, 5.0));
        return Stream.of(
                Arguments.of(
                        "fade in a year: 501 % is outside the allowed range, 0 % to 500 %",
                        (Executable) () -> new PrechargeLoss(5.01)),
                Arguments.of("fade in a year: NaN %", (Executable) () -> new PrechargeLoss(Double.NaN)),
                Arguments.of("larger: 5001 L is outside the allowed range, 0.1 L to 5000 L", (Executable)
                        () -> builder.larger(List.of(VolumeUnit.LITRE.toSi(5_001)))),
                Arguments.of("larger: 0.05 L", (Executable) () -> builder.larger(List.of(0.05e-3))),
                Arguments.of("mains-swing: -0.1 bar", (Executable) () -> builder.mainsSwing(-0.1e5)));
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void refusesWhatIsOutsideItsRange(String beginning, Executable wrong) {
        String message = assertThrows(IllegalArgumentException.class, wrong).getMessage();
        assertTrue(message.startsWith(beginning), message);
        assertEquals(5, new PrechargeLoss(5).yearly());
    }

    @Test
    void ratesBetweenTheSlowestAndTheFastest() {
        PrechargeLoss.Range fading =
                new PrechargeLoss.Range(new PrechargeLoss(0.1), new PrechargeLoss(0.025), new PrechargeLoss(0.4));
        assertEquals(0.025, fading.quantile(0).yearly(), 1e-12);
        assertEquals(0.05, fading.quantile(0.25).yearly(), 1e-12);
        assertEquals(0.1, fading.quantile(0.5).yearly(), 1e-12);
        assertEquals(0.2, fading.quantile(0.75).yearly(), 1e-12);
        assertEquals(0.4, fading.quantile(1).yearly(), 1e-12);
        PrechargeLoss.Range tight =
                new PrechargeLoss.Range(new PrechargeLoss(0.1), new PrechargeLoss(0), new PrechargeLoss(0.4));
        assertEquals(0.05, tight.quantile(0.25).yearly(), 1e-12, "even in the rate itself");
    }
}
