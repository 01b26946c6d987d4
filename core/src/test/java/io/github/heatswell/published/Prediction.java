package io.github.heatswell.published;

import java.util.List;
import java.util.function.Supplier;

/**
 * What this project predicts for a published figure.
 *
 * @param figure the id of the figure
 * @param method by what it is predicted
 * @param open what the source leaves open, and the ranges it is varied in
 * @param bands the prediction, one band for each number of the figure, in its unit
 * @param expected how the figure compares with it
 * @param why why the figure does not lie in the band, or a remark
 */
record Prediction(
        String figure, Method method, String open, Supplier<List<Band>> bands, BandVerdict expected, String why) {

    /** By what a figure is predicted. */
    enum Method {
        SIMULATION("simulation"),
        SIZING("sizing"),
        FORMULA("formula"),
        TABLE("water or material data");

        final String words;

        Method(String words) {
            this.words = words;
        }
    }

    static Prediction of(String figure, Method method, String open, Supplier<Band> band) {
        return new Prediction(figure, method, open, () -> List.of(band.get()), BandVerdict.IN, "");
    }

    static Prediction ofSeveral(String figure, Method method, String open, Supplier<List<Band>> bands) {
        return new Prediction(figure, method, open, bands, BandVerdict.IN, "");
    }

    /** The same, with a documented difference: a change of the figure or of the prediction is noticed. */
    Prediction but(BandVerdict known, String reason) {
        return new Prediction(figure, method, open, bands, known, reason);
    }

    Prediction remark(String text) {
        return new Prediction(figure, method, open, bands, expected, text);
    }
}
