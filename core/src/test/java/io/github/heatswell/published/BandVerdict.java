package io.github.heatswell.published;

import java.util.List;

/** How a published figure compares with the predicted band. */
enum BandVerdict {
    IN("in the band"),
    PARTLY("partly in the band"),
    ABOVE("above the band"),
    BELOW("below the band");

    final String words;

    BandVerdict(String words) {
        this.words = words;
    }

    static BandVerdict of(List<PublishedFigure.Value> published, List<Band> predicted) {
        if (published.size() != predicted.size()) {
            throw new IllegalArgumentException(published.size() + " figures, " + predicted.size() + " bands");
        }
        BandVerdict whole = IN;
        for (int i = 0; i < published.size(); i++) {
            BandVerdict one = of(published.get(i), predicted.get(i));
            whole = i == 0 || whole == one ? one : PARTLY;
        }
        return whole;
    }

    private static BandVerdict of(PublishedFigure.Value published, Band band) {
        double low = published.low() - published.tolerance();
        double high = published.high() + published.tolerance();
        if (published.atMost()) {
            return band.high() <= high ? IN : band.low() <= high ? PARTLY : BELOW;
        }
        if (high < band.low()) {
            return BELOW;
        }
        if (low > band.high()) {
            return ABOVE;
        }
        boolean bothEnds = published.low() + published.tolerance() >= band.low()
                && published.high() - published.tolerance() <= band.high();
        return bothEnds ? IN : PARTLY;
    }
}
