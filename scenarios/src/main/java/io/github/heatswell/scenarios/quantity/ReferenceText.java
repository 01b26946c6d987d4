package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.units.Pressure.Reference;
import java.util.Locale;
import java.util.Map;

/**
 * The unit of a pressure parted from the word for its reference.
 *
 * @param unit the unit alone
 * @param reference what the pressure is measured against; the air around it if nothing is said
 */
record ReferenceText(String unit, Reference reference) {

    /** What may follow the unit; no ending is the end of another. */
    private static final Map<String, Reference> ENDINGS = Map.of(
            "absolute", Reference.ABSOLUTE,
            "abs", Reference.ABSOLUTE,
            "(abs)", Reference.ABSOLUTE,
            "(a)", Reference.ABSOLUTE,
            "gauge", Reference.GAUGE,
            "(gauge)", Reference.GAUGE,
            "(g)", Reference.GAUGE);

    /** The short forms in common use, spelled as units of their own. */
    private static final Map<String, ReferenceText> SHORT_FORMS = Map.of(
            "bara", new ReferenceText("bar", Reference.ABSOLUTE),
            "psia", new ReferenceText("psi", Reference.ABSOLUTE),
            "barg", new ReferenceText("bar", Reference.GAUGE),
            "psig", new ReferenceText("psi", Reference.GAUGE));

    static ReferenceText of(String text) {
        String folded = text.toLowerCase(Locale.ROOT);
        ReferenceText shortForm = SHORT_FORMS.get(folded);
        if (shortForm != null) {
            return shortForm;
        }
        return ENDINGS.entrySet().stream()
                .filter(ending -> folded.endsWith(ending.getKey()))
                .findFirst()
                .map(ending -> new ReferenceText(
                        text.substring(0, text.length() - ending.getKey().length())
                                .strip(),
                        ending.getValue()))
                .orElse(new ReferenceText(text, Reference.GAUGE));
    }
}
