package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure.Reference;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A written quantity taken apart.
 *
 * @param number the number, finite
 * @param digits the number as it was written
 * @param unit what stands behind the number, possibly nothing
 */
record QuantityText(double number, String digits, String unit) {

    private static final int MAX_LENGTH = 60;
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern NUMBER_FIRST =
            Pattern.compile("([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)(.*)");
    private static final Pattern COMMA = Pattern.compile("([-+]?)([\\d.]+),([\\d,.]*)(.*)");
    private static final Pattern GROUPED = Pattern.compile("[-+]?\\d+[ '_]\\d.*");
    private static final Pattern THOUSANDS = Pattern.compile("([-+]?\\d{1,3}(?:['_]\\d{3})+)((?![\\d,' _]*\\d).*)");
    private static final Pattern SPACED = Pattern.compile("([-+]?[1-9]\\d{0,2}(?: \\d{3})+)((?![\\d,' _]*\\d).*)");
    private static final Pattern AMERICAN =
            Pattern.compile("([-+]?[1-9]\\d{0,2}(?:,\\d{3})+)((?:\\.\\d+)? ?btu.*)", Pattern.CASE_INSENSITIVE);
    /** Sizes of pipes and vessels, such as {@code 1 1/2 in}; not two values that somebody parts by a stroke, such as {@code 6/7 bar}. */
    private static final Pattern FRACTION =
            Pattern.compile("(?:(\\d{1,3})[ -])?(\\d{1,2})[/\u2044](2|3|4|8|16|32)( ?[a-zA-Z].*)");

    /** Before a fraction that is one character: its digits must not run on from those of the whole. */
    private static final Pattern HALVES = Pattern.compile("(?<=\\d)(?=[\u00bc-\u00be\u2150-\u215e])");

    private static final Pattern NO_NUMBER = Pattern.compile("[-+]?\\.?(nan|inf|infinity|infinite)\\b.*");

    /**
     * Takes a text apart.
     *
     * @throws IllegalArgumentException if it does not begin with a finite number
     */
    static QuantityText of(String text) {
        String plain = together(plain(text));
        if (plain.length() > MAX_LENGTH) {
            throw new IllegalArgumentException(Printable.quote(plain) + " is too long for a number and a unit");
        }
        refuseForeignNumbers(plain);
        Matcher parts = NUMBER_FIRST.matcher(plain);
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    Printable.quote(text) + " does not start with a number; write a number and a unit");
        }
        double number = Double.parseDouble(parts.group(1));
        if (!Double.isFinite(number)) {
            throw notFinite(text);
        }
        return new QuantityText(number, parts.group(1), parts.group(2).strip());
    }

    /** The text with ordinary blanks, minus and degree signs. */
    private static String plain(String text) {
        String usual = text.replace('\u00ba', '\u00b0').replace('\u2212', '-');
        usual = HALVES.matcher(usual).replaceAll(" ");
        return BLANKS.matcher(Normalizer.normalize(usual, Normalizer.Form.NFKC))
                .replaceAll(" ")
                .strip();
    }

    /** Digits in groups of three, as reports write them; one comma is one of thousands only before an American unit. */
    private static String together(String plain) {
        Matcher spaced = SPACED.matcher(plain);
        if (spaced.matches()) {
            return spaced.group(1).replace(" ", "") + spaced.group(2);
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches() && Integer.parseInt(fraction.group(2)) < Integer.parseInt(fraction.group(3))) {
            double whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
            return whole
                    + (double) Integer.parseInt(fraction.group(2)) / Integer.parseInt(fraction.group(3))
                    + fraction.group(4);
        }
        Matcher american = AMERICAN.matcher(plain);
        return american.matches() ? american.group(1).replace(",", "") + american.group(2) : plain;
    }

    private static void refuseForeignNumbers(String plain) {
        Matcher comma = COMMA.matcher(plain);
        if (comma.matches()) {
            throw new IllegalArgumentException(Printable.quote(plain) + " has a comma in the number; "
                    + correction(comma.group(1), comma.group(2), comma.group(3), comma.group(4)));
        }
        if (GROUPED.matcher(plain).matches()) {
            Matcher thousands = THOUSANDS.matcher(plain);
            throw new IllegalArgumentException(Printable.quote(plain)
                    + " has a mark or a space between the digits; "
                    + (thousands.matches()
                            ? "write " + thousands.group(1).replaceAll("['_]", "") + thousands.group(2)
                            : "write the digits without gaps"));
        }
        if (NO_NUMBER.matcher(plain.toLowerCase(Locale.ROOT)).matches()) {
            throw notFinite(plain);
        }
    }

    private static String correction(String sign, String whole, String fraction, String rest) {
        if (whole.indexOf('.') >= 0 || !fraction.matches("\\d+")) {
            return "use a decimal point and no thousands separator";
        }
        String decimal = sign + whole + "." + fraction + rest;
        if (fraction.length() == 3) {
            return "write " + decimal + " or " + sign + whole + fraction + rest + ", whichever you mean";
        }
        return "use a decimal point: " + decimal;
    }

    private static IllegalArgumentException notFinite(String text) {
        return new IllegalArgumentException(Printable.quote(text) + " is not a finite number");
    }

    /**
     * The unit of a pressure separated from the word for its reference.
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
}
