package io.github.heatswell.scenarios.readings;

import java.util.regex.Pattern;

/** Whether a note beside a reading says that water was drawn, and when. */
enum DrawNote {
    /** It says nothing of the kind. */
    NONE,
    /** Between the reading before and this one, or as this one was taken. */
    BEFORE_THE_READING,
    /** Between this reading and the next. */
    AFTER_THE_READING;

    private static final Pattern DRAW = Pattern.compile(
            "\\b(?:draw(?:n|s|ing|-off)?|drew|shower(?:s|ed|ing)?|bath(?:s|ed|ing|e)?|dish(?:es|washer)|laundry"
                    + "|wash(?:ed|ing|er)?(?: up)?|(?:hot[- ]?)?water (?:use|used|run|running|was run)|used (?:some |the )?hot water"
                    + "|(?:ran|run|running|opened|open) (?:a |the |some )?(?:hot |cold )?(?:tap|taps|faucet|faucets|water|sink)"
                    + "|(?:tap|taps|faucet|faucets) (?:is |was |were )?(?:run|running|open|opened|on|used)|used (?:the |a )?(?:tap|taps|faucet|faucets)"
                    + "|(?:ge)?dusch(?:t|te|en)?|gebadet|abwasch|abgewaschen|gezapft|douche|douch\u00e9|gedoucht|bain|vaisselle|ducha|duchado|ba\u00f1o|afwas"
                    + "|flush(?:ed|ing)?)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    /** A tub that catches the drip, a room, or water that nobody drew. */
    private static final Pattern OTHERWISE = Pattern.compile(
            "\\b(?:no|not|nobody|none|without|never|drip(?:s|ping|ped)?|valve|into)\\b|n't\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LATER =
            Pattern.compile("\\b(?:before|then|going to|about to)\\b", Pattern.CASE_INSENSITIVE);

    /**
     * Reads a note.
     *
     * @param note the words behind a reading, possibly none
     */
    static DrawNote of(String note) {
        if (!DRAW.matcher(note).find() || OTHERWISE.matcher(note).find()) {
            return NONE;
        }
        return LATER.matcher(note).find() ? AFTER_THE_READING : BEFORE_THE_READING;
    }
}
