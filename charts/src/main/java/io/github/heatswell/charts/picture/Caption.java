package io.github.heatswell.charts.picture;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.units.QuantityFormat;
import java.util.Objects;

/**
 * The words above a picture, in the order they are read: the hazard, if there is one, then what was found, then the
 * facts of the system.
 *
 * @param hazard the hazard at which a run ended, or empty if there is none
 * @param title what was found
 * @param subtitle the facts of the system
 */
public record Caption(String hazard, String title, String subtitle) {

    /**
     * Makes every text printable.
     *
     * @param hazard the hazard at which a run ended, or empty if there is none
     * @param title what was found
     * @param subtitle the facts of the system
     */
    public Caption {
        hazard = PlainText.of(Objects.requireNonNull(hazard, "hazard"));
        title = PlainText.of(Objects.requireNonNull(title, "title"));
        subtitle = PlainText.of(Objects.requireNonNull(subtitle, "subtitle"));
    }

    /**
     * The words of a narrative.
     *
     * @param narrative what was found
     * @param amounts how quantities are written
     * @return the caption, with the hazard first if there is one
     */
    public static Caption of(Narrative narrative, QuantityFormat amounts) {
        return new Caption(
                narrative.hazard().map(what -> "Hazard: " + what.text(amounts)).orElse(""),
                narrative.headline().text(amounts),
                narrative.facts().text(amounts));
    }
}
