package io.github.heatswell.published;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The part of the page "How accurate is it?" that is made from the comparisons. It names no makers. */
final class AccuracyPage {

    private final List<PublishedFigure> figures;
    private final List<PublishedComparison> comparisons;

    AccuracyPage(List<PublishedFigure> figures, List<PublishedComparison> comparisons) {
        this.figures = figures;
        this.comparisons = comparisons;
    }

    String text() {
        List<PublishedComparison> simulated =
                comparisons.stream().filter(PublishedComparison::simulated).toList();
        List<PublishedComparison> others =
                comparisons.stream().filter(c -> !c.simulated()).toList();
        return summary(simulated)
                + "\n![Predicted bands and published figures](how-accurate.svg)\n"
                + "\n## By simulation and simulated sizing\n\n"
                + table(simulated)
                + "\n## Where they differ, and remarks\n\n"
                + remarks()
                + "\n## Formulas, water and materials\n\n"
                + table(others)
                + "\n"
                + elsewhere();
    }

    private static String summary(List<PublishedComparison> simulated) {
        return "Of " + simulated.size() + " comparisons by simulation or simulated sizing, "
                + count(simulated, BandVerdict.IN)
                + "\npublished figures lie in the predicted band, " + count(simulated, BandVerdict.PARTLY)
                + " partly, and "
                + (count(simulated, BandVerdict.ABOVE) + count(simulated, BandVerdict.BELOW))
                + " outside it. A figure counts as in the band if it misses it by no more than its tolerance, which the data file explains.\n"
                + "The reasons for the others stand below the table.\n";
    }

    private static long count(List<PublishedComparison> comparisons, BandVerdict verdict) {
        return comparisons.stream().filter(c -> c.verdict() == verdict).count();
    }

    private static String table(List<PublishedComparison> rows) {
        return rows.stream().map(AccuracyPage::row).collect(Collectors.joining("", """
                | | What was published | By | Printed | Tolerance | Predicted | Verdict | Left open by the source, and varied |
                | --- | --- | --- | --- | --- | --- | --- | --- |
                """, ""));
    }

    private static String row(PublishedComparison c) {
        PublishedFigure figure = c.figure();
        String memory =
                figure.standing().equals("from memory") && !figure.kind().contains("memory") ? ", from memory" : "";
        return "| " + figure.id() + " | " + figure.quantity() + ": " + figure.conditions() + " | " + figure.kind()
                + memory
                + " | " + printed(figure) + " | " + tolerance(figure) + " | " + predicted(c) + " | " + c.verdict().words
                + " | "
                + c.prediction().open() + " |\n";
    }

    private static String printed(PublishedFigure figure) {
        return figure.printed() + unit(figure);
    }

    /** How far the printed figure may lie outside the band and still count as in it. */
    private static String tolerance(PublishedFigure figure) {
        double most = figure.numbers().stream()
                .mapToDouble(PublishedFigure.Value::tolerance)
                .max()
                .orElseThrow();
        return most == 0
                ? "none"
                : "± " + BigDecimal.valueOf(most).stripTrailingZeros().toPlainString() + unit(figure);
    }

    private static String predicted(PublishedComparison c) {
        boolean open = c.bands().stream().anyMatch(band -> Double.isInfinite(band.high()));
        return IntStream.range(0, c.bands().size())
                        .mapToObj(
                                i -> text(c.bands().get(i), c.figure().numbers().get(i)))
                        .collect(Collectors.joining("; "))
                + unit(c.figure())
                + (open ? " and more" : "");
    }

    private static String unit(PublishedFigure figure) {
        return figure.unit().equals("-") ? "" : " " + figure.unit();
    }

    /** Three digits of the larger end, more where the figure is known better. */
    private static String text(Band band, PublishedFigure.Value number) {
        boolean fine = number.tolerance() > 0 && number.tolerance() < 1e-4 * number.high();
        double larger = Double.isInfinite(band.high()) ? band.low() : band.high();
        int scale = new BigDecimal(larger).round(new MathContext(fine ? 7 : 3)).scale();
        String low = text(band.low(), scale);
        String high = text(larger, scale);
        return low.equals(high) ? low : low + " to " + high;
    }

    private static String text(double value, int scale) {
        return new BigDecimal(value)
                .setScale(scale, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private String remarks() {
        return comparisons.stream()
                .filter(c -> !c.prediction().why().isEmpty())
                .map(c -> "- **" + c.figure().id() + "**, " + c.figure().quantity() + ", " + c.verdict().words + ": "
                        + c.prediction().why() + "\n")
                .collect(Collectors.joining());
    }

    private String elsewhere() {
        String tested = figures.stream()
                .filter(figure -> figure.use().startsWith("test "))
                .map(PublishedFigure::quantity)
                .distinct()
                .collect(Collectors.joining("; "));
        long idle = figures.stream()
                .filter(figure -> figure.use().startsWith("not compared"))
                .count();
        return "Tested elsewhere: " + tested + ".\n\nAnother " + idle
                + " published figures are not compared: rules, settings, and things the model does not have. The data\n"
                + "file gives the reason for each.\n";
    }
}
