package io.github.heatswell.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Validation: figures that others have published, with their sources in {@code published_figures.tsv}, against what runs,
 * sizings and formulas predict. Where a source leaves something open, the prediction is a band over the corners of stated
 * ranges. A figure outside it is a documented difference; the page holds figure, band and verdict, so a change of any is
 * noticed. With {@code -Dreadme.rewrite} table and picture of the page are written anew instead of compared.
 */
class PublishedFiguresTest {

    private static final Path PAGE = Path.of("docs/how-accurate.md");
    private static final Path PICTURE = Path.of("docs/how-accurate.svg");
    private static final String BEGIN = "<!-- figures: made by PublishedFiguresTest -->\n";
    private static final String END = "<!-- end of figures -->";

    private static final List<PublishedFigure> FIGURES = PublishedFigure.read();

    /** Made once for all tests that need them. */
    private static final class Made {
        private static final List<PublishedComparison> COMPARISONS = PublishedComparison.all(FIGURES);
    }

    static Stream<PublishedComparison> comparisons() {
        return Made.COMPARISONS.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("comparisons")
    void figureComparesAsDocumented(PublishedComparison comparison) {
        assertEquals(
                comparison.prediction().expected(),
                comparison.verdict(),
                () -> comparison.figure().printed() + " against " + comparison.bands());
        assertTrue(
                comparison.verdict() == BandVerdict.IN
                        || !comparison.prediction().why().isEmpty(),
                "a figure that is not in its band needs a reason");
    }

    @Test
    void thePageIsWhatThePredictionsGive() throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        assertTrue(from >= BEGIN.length() && to >= from, "the page has no place for the table");
        String table = new AccuracyPage(FIGURES, Made.COMPARISONS).text();
        String picture = new AccuracyPicture(Made.COMPARISONS).svg();
        if (System.getProperty("readme.rewrite") != null) {
            Files.writeString(PAGE, page.substring(0, from) + table + page.substring(to));
            Files.writeString(PICTURE, picture);
        } else {
            assertEquals(table, page.substring(from, to), "run this test once with -Dreadme.rewrite");
            assertEquals(picture, Files.readString(PICTURE), "run this test once with -Dreadme.rewrite");
        }
    }

    /** A prediction that misses the figure and yet counts as in the band shows by how much it may. */
    @Test
    void thePageShowsTolerances() {
        String table = new AccuracyPage(FIGURES, Made.COMPARISONS).text();
        assertTrue(table.contains("| about 335 psi | ± 67 psi | 300 psi | in the band |"), table);
        assertTrue(table.contains("| 160.8 atm | ± 1.6 atm | 170 atm | below the band |"), table);
    }

    /** What the page says of wall and air: 200 L at 20 degC and 3 bar, half the wall, or 0.2 L of air. */
    @Test
    void littleChangesTheSlope() {
        double stiff = PressureRises.slope(150, 0);
        assertTrue(PressureRises.slope(300, 0) < 2 / 3.0 * stiff);
        assertTrue(PressureRises.slope(150, 0.001) < 0.5 * stiff);
        assertTrue(PressureRises.slope(300, 0.001) < 0.5 * PressureRises.slope(300, 0));
    }

    /** Figures that are compared have numbers and a prediction, and no others have. */
    @Test
    void everyFigureIsComparedOrSaysWhyNot() {
        Set<String> compared =
                Made.COMPARISONS.stream().map(c -> c.figure().id()).collect(Collectors.toSet());
        for (PublishedFigure figure : FIGURES) {
            assertEquals(figure.compared(), compared.contains(figure.id()), figure.id());
            assertEquals(figure.compared(), !figure.numbers().isEmpty(), figure.id());
            assertTrue(
                    figure.compared()
                            || figure.use().matches("not compared: .+")
                            || figure.use().startsWith("test ")
                                    && exists(figure.use().substring(5)),
                    () -> figure.id() + " is used for " + figure.use());
        }
    }

    @Test
    void everyFigureHasItsSource() {
        assertEquals(
                FIGURES.size(),
                FIGURES.stream().map(PublishedFigure::id).distinct().count());
        for (PublishedFigure figure : FIGURES) {
            assertFalse(figure.source().isBlank() || figure.kind().isBlank(), figure.id());
            assertTrue(
                    Set.of("read primary", "read second-hand", "from memory").contains(figure.standing()), figure.id());
            assertTrue(figure.numbers().isEmpty() || !figure.reason().isBlank(), figure.id());
        }
    }

    private static boolean exists(String test) {
        String[] parts = test.split("#");
        try {
            return Arrays.stream(Class.forName(parts[0]).getDeclaredMethods())
                    .anyMatch(method -> method.getName().equals(parts[1]));
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    /** The verdict itself: a single number within its tolerance, both ends of a range, an upper bound. */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 0, false, 4, 6, IN",
        "3, 3, 1.5, false, 4, 6, IN",
        "3, 3, 0.5, false, 4, 6, BELOW",
        "7, 7, 0.5, false, 4, 6, ABOVE",
        "4, 6, 0, false, 4, 6, IN",
        "3, 5, 0, false, 4, 6, PARTLY",
        "3, 7, 0, false, 4, 6, PARTLY",
        "7, 8, 0, false, 4, 6, ABOVE",
        "6, 6, 0, true, 4, 6, IN",
        "5, 5, 0, true, 4, 6, PARTLY",
        "3, 3, 0, true, 4, 6, BELOW",
        "9, 9, 0, false, 4, Infinity, IN"
    })
    void verdicts(
            double low, double high, double tolerance, boolean atMost, double from, double to, BandVerdict expected) {
        PublishedFigure.Value number = new PublishedFigure.Value(low, high, tolerance, atMost);
        assertEquals(expected, BandVerdict.of(List.of(number), List.of(new Band(from, to))));
    }

    /** Several numbers of one figure: the same verdict for all, or partly. */
    @Test
    void severalNumbersMustAllAgree() {
        PublishedFigure.Value five = new PublishedFigure.Value(5, 5, 0, false);
        Band around = new Band(4, 6);
        Band above = new Band(7, 8);
        assertEquals(BandVerdict.IN, BandVerdict.of(List.of(five, five), List.of(around, around)));
        assertEquals(BandVerdict.PARTLY, BandVerdict.of(List.of(five, five), List.of(around, above)));
        assertEquals(BandVerdict.BELOW, BandVerdict.of(List.of(five, five), List.of(above, above)));
    }
}
