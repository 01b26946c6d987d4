package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.VolumeUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads amounts of money. Their currency is given elsewhere.
 */
public final class Price {

    private static final Pattern AMOUNT = Pattern.compile("\\d{1,9}(\\.\\d{1,6})?");
    private static final Pattern PER_VOLUME = Pattern.compile("(\\S+)\\s*(?:per|/)\\s*(.+)");

    private Price() {}

    /**
     * Reads an amount.
     *
     * @param text such as {@code 52.50}
     * @return the amount, 0 or more
     * @throws IllegalArgumentException if the text is no such amount; the message says how to write it
     */
    public static BigDecimal of(String text) {
        String amount = text.strip();
        if (!AMOUNT.matcher(amount).matches()) {
            throw new IllegalArgumentException(Printable.quote(text)
                    + " is not an amount of money; write digits and a decimal point, such as" + " 52.50");
        }
        return new BigDecimal(amount);
    }

    /**
     * Reads a price of water.
     *
     * @param text such as {@code 4.50 per m3}
     * @return the price of a cubic metre, 0 or more
     * @throws IllegalArgumentException if the text is no such price; the message says how to write it
     */
    public static BigDecimal perVolume(String text) {
        Matcher parts = PER_VOLUME.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    Printable.quote(text) + " does not give the amount of water; write, for example, 4.50 per m3");
        }
        VolumeUnit unit = Kind.VOLUME
                .unit(parts.group(2))
                .orElseThrow(() -> new IllegalArgumentException(Printable.quote(parts.group(2))
                        + " is not a known unit of volume; write the price per " + Kind.VOLUME.symbols()));
        return of(parts.group(1)).divide(BigDecimal.valueOf(unit.toSi(1)), MathContext.DECIMAL64);
    }
}
