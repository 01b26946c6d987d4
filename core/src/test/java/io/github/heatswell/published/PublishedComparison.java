package io.github.heatswell.published;

import java.util.List;
import java.util.stream.Stream;

/**
 * A published figure beside what is predicted for it.
 *
 * @param figure the figure
 * @param prediction how it is predicted, and how the two should compare
 * @param bands what was predicted, one band for each number of the figure
 */
record PublishedComparison(PublishedFigure figure, Prediction prediction, List<Band> bands) {

    /** Every figure that is compared, in the order of the page; takes some seconds of simulation. */
    static List<PublishedComparison> all(List<PublishedFigure> figures) {
        return predictions()
                .map(prediction -> new PublishedComparison(
                        figure(figures, prediction.figure()),
                        prediction,
                        prediction.bands().get()))
                .toList();
    }

    private static Stream<Prediction> predictions() {
        return Stream.of(
                        PressureRises.all(),
                        Discharges.all(),
                        ExpandedVolumes.all(),
                        Sizings.all(),
                        Reheats.all(),
                        WaterAndMaterials.all())
                .flatMap(List::stream);
    }

    private static PublishedFigure figure(List<PublishedFigure> figures, String id) {
        return figures.stream()
                .filter(figure -> figure.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no figure " + id));
    }

    BandVerdict verdict() {
        return BandVerdict.of(figure.numbers(), bands);
    }

    boolean simulated() {
        return prediction.method() == Prediction.Method.SIMULATION || prediction.method() == Prediction.Method.SIZING;
    }

    @Override
    public String toString() {
        return figure.id() + " by " + prediction.method().words;
    }
}
