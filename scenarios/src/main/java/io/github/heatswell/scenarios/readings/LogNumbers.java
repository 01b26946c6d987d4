package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.wording.Printable;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the numbers of a column, and ensures that their marks are decimal points or commas throughout, never thousands
 * separators, which would turn 1020 into 1.02.
 */
final class LogNumbers {

    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?");
    private static final Pattern DATE = Pattern.compile(
            "\\d{1,4}[-./ ]+(?:\\d{1,2}|\\p{L}{3,9}\\.?)(?:[-./ ]+\\d{2,4})?" + "|\\p{L}{3,9}\\.?[- ]\\d{1,4}");
    private static final Pattern LIKE_THOUSANDS = Pattern.compile("[1-9][.,]\\d{3}");
    private static final Pattern THOUSANDS = Pattern.compile("\\+?[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern HUNDREDS = Pattern.compile("[1-9]\\d{2}");
    private static final int MAX_LENGTH = 40;

    private final String field;
    private final boolean commas;
    private String before = "";
    private String pointed = "";
    private String comma = "";
    private String whole = "";
    private Marked marked;
    private boolean keepsZeros;
    private boolean decimal;
    private long firstLine;

    /**
     * Begins a column.
     *
     * @param field what it holds, for messages
     * @param commas whether decimals may stand behind a comma
     */
    LogNumbers(String field, boolean commas) {
        this.field = field;
        this.commas = commas;
    }

    /**
     * A number with a mark before its last three digits.
     *
     * @param text as it is written
     * @param line where
     */
    record Marked(String text, long line) {
        double thousands() {
            return Double.parseDouble(unmarked());
        }

        String unmarked() {
            return text.replaceAll("[.,]", "");
        }
    }

    double read(String text, long line) {
        String plain = commas ? text.replace(',', '.') : text;
        if (plain.length() > MAX_LENGTH
                || !NUMBER.matcher(plain).matches()
                || Double.isInfinite(Double.parseDouble(plain))) {
            throw refused(Printable.quote(text) + " is not a number; " + advice(text));
        }
        refuseBothMarks(text);
        refuseThousands(text);
        firstLine = firstLine == 0 ? line : firstLine;
        notice(text, line);
        before = text;
        return Double.parseDouble(plain);
    }

    private String advice(String text) {
        if (DATE.matcher(text).matches()) {
            return "a spreadsheet may have taken it for a date: set the column to text, and write the number again";
        }
        if (!text.isEmpty() && Character.isDigit(text.charAt(0)) && text.matches(".*[A-Za-z%°]")) {
            return "write digits only, and the unit in the first line";
        }
        return "write digits" + (commas ? "" : " with a point for the decimals") + ", and no thousands separator";
    }

    private void refuseBothMarks(String text) {
        if (text.indexOf(',') >= 0) {
            comma = text;
        }
        if (text.indexOf('.') >= 0) {
            pointed = text;
        }
        if (!comma.isEmpty() && !pointed.isEmpty()) {
            throw refused("some numbers have a point, such as '" + pointed + "', and some a comma, such as '" + comma
                    + "'; write all decimals with a point, and no thousands separator");
        }
    }

    /** From 960 to 1.020, or back, no reading goes. */
    private void refuseThousands(String text) {
        boolean up = jumps(before, text);
        if (up || jumps(text, before)) {
            String marked = up ? text : before;
            throw refused("'" + text + "' follows '" + before + "'; if the mark in '" + marked
                    + "' separates thousands, write " + marked.replaceAll("[.,]", "")
                    + ", and if not, write all readings with the same number of decimals");
        }
    }

    private void notice(String text, long line) {
        if (text.indexOf('.') < 0 && text.indexOf(',') < 0) {
            whole = whole.isEmpty() ? text : whole;
        } else if (THOUSANDS.matcher(text).matches()) {
            keepsZeros |= text.endsWith("0");
            marked = marked == null ? new Marked(text, line) : marked;
        } else {
            decimal = true;
        }
    }

    /** Where the first number stands. */
    long firstLine() {
        return firstLine;
    }

    /** The first number whose mark may part thousands; nothing if the mark of another is sure to be that of decimals. */
    Optional<Marked> doubtful() {
        return decimal ? Optional.empty() : Optional.ofNullable(marked);
    }

    /**
     * A number without a mark, where others have three digits behind theirs and keep the zeros at the end; nothing if there is none.
     * No program writes decimals like that, but every one writes thousands so.
     */
    Optional<String> uneven() {
        return keepsZeros && !whole.isEmpty() ? Optional.of(whole) : Optional.empty();
    }

    private static boolean jumps(String hundreds, String thousands) {
        return hundreds.length() == 3
                && thousands.length() == 5
                && HUNDREDS.matcher(hundreds).matches()
                && LIKE_THOUSANDS.matcher(thousands).matches();
    }

    private IllegalArgumentException refused(String message) {
        return new IllegalArgumentException(field + ": " + message);
    }
}
