package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.ClockTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether a note beside a reading says that water was drawn, and when. */
enum DrawNote {
    /** It says nothing about the kind. */
    NONE,
    /** Between the reading before and this one, or as this one was taken. */
    BEFORE_THE_READING,
    /** Between this reading and the next. */
    AFTER_THE_READING,
    /** No water was drawn, since the reading before or in the hours that it names. */
    NOTHING_DRAWN;

    private static final Pattern DRAW = Pattern.compile(
            "\\b(?:draw(?:n|s|ing|-off)?|drew|shower(?:s|ed|ing)?|bath(?:s|ed|ing|e)?|dish(?:es|washer)|laundry"
                    + "|wash(?:ed|ing|er)?(?: up)?|(?:hot[- ]?)?water (?:use|used|run|running|was run)|used (?:some |the )?hot water"
                    + "|(?:ran|run|running|opened|open) (?:a |the |some )?(?:hot |cold )?(?:tap|taps|faucet|faucets|water|sink)"
                    + "|(?:ran|run|used|took)(?: off| out)? (?:about |some )?\\d+(?:[.,]\\d+)?\\s?(?:gal|gallons?|l|lit(?:er|re)s?|quarts?)"
                    + "|(?:tap|taps|faucet|faucets) (?:is |was |were )?(?:run|running|open|opened|on|used)|used (?:the |a )?(?:tap|taps|faucet|faucets)"
                    + "|(?:ge)?dusch(?:t|te|en)?|gebadet|abwasch|abgewaschen|gezapft|douche|douch\u00e9|gedoucht|bain|vaisselle|ducha|duchado|ba\u00f1o|afwas"
                    + "|flush(?:ed|ing)?)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    /** A tub that catches the drip, a room, or water that nobody drew, or has not drawn. */
    private static final Pattern OTHERWISE = Pattern.compile(
            "\\b(?:no|not|nobody|none|without|never|drip(?:s|ping|ped)?|valve|into|wants?|wanted|maybe|perhaps|might|tomorrow)\\b|n't\\b"
                    + "|\\bgauge (?:is |was )?(?:on|at|by|near|screwed)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NOTHING = Pattern.compile(
            "\\b(?:nobody|no[- ]one|we|i)(?: has| have|'ve)?(?: not|n't| never)? (?:us(?:ed?|ing)|ran|run(?:ning)?|drew|opened|touched|took) (?:any |no |the |a |hot |cold )*(?:water|taps?|faucets?)\\b"
                    + "|\\bno (?:hot )?(?:water|taps?|faucets?) (?:was |were |is |has been |)?(?:used|drawn|taken|run|running|opened|open|on)\\b"
                    + "|\\b(?:all |every )(?:the )?(?:taps?|faucets?) (?:stayed |were |was |kept |is |are )?(?:shut|closed|off)\\b"
                    + "|\\b(?:no draws?|no water use|nothing drawn)\\b"
                    + "|\\bniemand (?:hat )?(?:(?:warm)?wasser|gezapft|geduscht)|\\bkein (?:warm)?wasser (?:gezapft|verbraucht|benutzt|gelaufen)"
                    + "|\\balle h\u00e4hne (?:zu|geschlossen)|\\bnicht gezapft",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    /** Where somebody did draw, after all. */
    private static final Pattern DENIED = Pattern.compile(
            "\\b(?:nobody|no|not|never|niemand|kein|nicht|shut|closed|off|zu|geschlossen|nothing)\\b|n't\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern HOURS = Pattern.compile(
            "(?<![\\d:])(\\d{1,2}(?::\\d\\d)?)\\s?([ap])?\\.?m?\\.?\\s?(?:-|\u2013|to|until|till|through|bis)\\s?(\\d{1,2}(?::\\d\\d)?)\\s?(?:([ap])\\.?m\\b|uhr|h\\b|$|[^\\d:])",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LATER =
            Pattern.compile("\\b(?:before|then|going to|about to)\\b", Pattern.CASE_INSENSITIVE);

    /**
     * Reads a note.
     *
     * @param note the words behind a reading, possibly none
     */
    static DrawNote of(String note) {
        if (NOTHING.matcher(note).find() && DENIED.matcher(note).find()) {
            return NOTHING_DRAWN;
        }
        if (!DRAW.matcher(note).find() || OTHERWISE.matcher(note).find()) {
            return NONE;
        }
        return LATER.matcher(note).find() ? AFTER_THE_READING : BEFORE_THE_READING;
    }

    /**
     * The hours that a note names, such as {@code 1-5 am}.
     *
     * @param note the words
     * @return from and until (s since midnight); empty if it names none
     */
    static Optional<double[]> hours(String note) {
        Matcher parts = HOURS.matcher(note);
        if (!parts.find()) {
            return Optional.empty();
        }
        String until = parts.group(4) == null ? "" : " " + parts.group(4) + "m";
        String from = parts.group(2) == null ? until : " " + parts.group(2) + "m";
        try {
            return Optional.of(new double[] {clock(parts.group(1), from), clock(parts.group(3), until)});
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private static double clock(String digits, String half) {
        return ClockTime.read((digits.contains(":") ? digits : digits + ":00") + half);
    }
}
