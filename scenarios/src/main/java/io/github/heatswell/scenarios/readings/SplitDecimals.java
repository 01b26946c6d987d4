package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Unit;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Detects pressure decimals that a decimal comma has moved into the next column. Decimals are recognised by how they
 * look: they wrap around when the whole number changes by one, jump about, start with zeros, and are not plausible
 * water temperatures. A temperature, a counter or the number of a device does none of that. Where pressures are in a
 * unit as large as a bar, whole numbers throughout are odd in themselves, and less is asked for.
 */
final class SplitDecimals {

    private static final Pattern WHOLE = Pattern.compile("[-+]?\\d{1,9}");
    private static final Pattern DIGITS = Pattern.compile("\\d{1,9}");
    /** A unit as large as this (Pa) is too coarse for whole numbers. */
    private static final double COARSE = 0.5e5;

    private static final int MIN_READINGS = 3;
    private static final int MANY = 8;
    /** In liquid water (K) outside of these no thermometer of a house reads. */
    private static final double COLDEST = 250;

    private static final double HOTTEST = 400;
    /** How far (of a whole number) decimals jump from reading to reading at least, if they jump about. */
    private static final double WILD = 0.25;

    /** So far (of a whole number) a pressure goes at most where its whole number changes by one and its decimals wrap round. */
    private static final double HALF = 0.5 + 1e-9;

    private static final double LIVELY = 0.15;

    private final String name;
    private final boolean coarse;
    /** The unit of a temperature, or null if the next column is not used. */
    private final Unit temperature;

    private boolean other;
    private int rows;
    private int blanks;
    private int zeros;
    private int impossible;
    private int carries;
    private int breaks;
    private int shortest = Integer.MAX_VALUE;
    private int longest;
    private double jumps;
    private boolean wholesVary;
    private boolean digitsVary;
    private boolean counts = true;
    private boolean rises = true;
    private String firstWhole = "";
    private String firstDigits = "";
    private long firstLine;
    private double whole;
    private double digits;
    private double fraction;

    /**
     * Begins a log.
     *
     * @param name of the column behind the pressure
     * @param unit the unit of the pressure (Pa)
     * @param temperature the unit of that column if it is a temperature, else null
     */
    SplitDecimals(String name, double unit, Unit temperature) {
        this.name = name;
        this.coarse = unit >= COARSE;
        this.temperature = temperature;
    }

    /** Whether the unit of the pressures is too coarse for whole numbers. */
    boolean isCoarse() {
        return coarse;
    }

    /** Takes notice of a row that has a pressure. */
    void watch(String pressure, String next, long line) {
        if (other) {
            return;
        }
        if (next.isEmpty() && WHOLE.matcher(pressure).matches()) {
            blanks++;
            return;
        }
        if (!WHOLE.matcher(pressure).matches() || !DIGITS.matcher(next).matches()) {
            other = true;
            return;
        }
        double newWhole = Double.parseDouble(pressure);
        double newDigits = Double.parseDouble(next);
        double newFraction = newDigits / Math.pow(10, next.length());
        if (rows == 0) {
            firstWhole = pressure;
            firstDigits = next;
            firstLine = line;
        } else {
            compare(newWhole, newDigits, newFraction);
        }
        rows++;
        zeros += next.length() > 1 && next.charAt(0) == '0' ? 1 : 0;
        shortest = Math.min(shortest, next.length());
        longest = Math.max(longest, next.length());
        if (temperature != null) {
            double kelvin = temperature.toSi(newDigits);
            impossible += kelvin < COLDEST || kelvin > HOTTEST ? 1 : 0;
        }
        whole = newWhole;
        digits = newDigits;
        fraction = newFraction;
    }

    private void compare(double newWhole, double newDigits, double newFraction) {
        double step = newWhole - whole;
        wholesVary |= step != 0;
        digitsVary |= newDigits != digits;
        boolean next = Double.compare(newDigits, digits + 1) == 0;
        counts &= next;
        rises &= newDigits >= digits;
        jumps += Math.abs(newFraction - fraction);
        if (Math.abs(step) == 1) {
            boolean carried = Math.abs(step + newFraction - fraction) <= HALF;
            carries += carried ? 1 : 0;
            breaks += carried ? 0 : 1;
        }
    }

    /** Why the log is refused, if it is. */
    Optional<LogMarks.Suspicion> refusal() {
        if (!possible() || !(coarse ? likelyInCoarse() : likelyInFine())) {
            return Optional.empty();
        }
        return Optional.of(new LogMarks.Suspicion(
                firstLine,
                "pressure: every reading is a whole number, and " + column() + " behind it holds digits as decimals"
                        + " have them; if the comma is a decimal comma, write " + decimal()
                        + " or separate the columns with semicolons; if not, write " + firstWhole + ".0"));
    }

    /** What is to be said of a log that is not refused, but may be wrong. */
    Optional<String> remark() {
        return possible() && coarse && temperature != null
                ? Optional.of("every pressure is a whole number; if its decimals ended up in " + column() + ", write "
                        + decimal() + " with a point")
                : Optional.empty();
    }

    private boolean possible() {
        return !other && rows >= MIN_READINGS && 4 * blanks <= rows;
    }

    private boolean likelyInCoarse() {
        if (temperature != null) {
            return zeros > 0 || mostlyImpossible() || carries > 0 && breaks == 0;
        }
        boolean device = wholesVary && !digitsVary;
        boolean counter = counts && longest > shortest;
        return !device && !counter;
    }

    private boolean likelyInFine() {
        boolean wraps = carries >= 2 && breaks <= carries / 4;
        double jump = jumps / (rows - 1);
        boolean someZeros = zeros > 0 && 2 * zeros <= rows;
        boolean even = shortest == longest && longest > 1;
        if (temperature != null) {
            return mostlyImpossible() || wraps || zeros > 0 && jump >= LIVELY || even && rows >= MANY && jump >= WILD;
        }
        boolean aboutWildly = even && (longest > 2 || rows >= MANY) && jump >= WILD;
        return wraps || someZeros && !rises || aboutWildly;
    }

    private boolean mostlyImpossible() {
        return 2 * impossible > rows;
    }

    private String column() {
        return name.isEmpty() ? "the column" : Printable.quote(name);
    }

    private String decimal() {
        return firstWhole + "." + firstDigits;
    }
}
