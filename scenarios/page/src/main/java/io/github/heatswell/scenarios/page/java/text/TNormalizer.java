package io.github.heatswell.scenarios.page.java.text;

import org.teavm.jso.JSBody;

/** Takes the place of {@link java.text.Normalizer} in script, where every text can normalize itself. */
public final class TNormalizer {

    private TNormalizer() {}

    /** The forms of Unicode, named as there. */
    public enum Form {
        /** Composed. */
        NFC,
        /** Composed, with compatible characters made one. */
        NFKC
    }

    /**
     * A text in one of the forms.
     *
     * @param text the text
     * @param form the form
     * @return the text in that form
     */
    public static String normalize(CharSequence text, Form form) {
        return normalized(text.toString(), form.name());
    }

    @JSBody(
            params = {"text", "form"},
            script = "return text.normalize(form);")
    private static native String normalized(String text, String form);
}
