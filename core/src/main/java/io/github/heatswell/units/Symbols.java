package io.github.heatswell.units;

import java.math.BigDecimal;

/** The characters that units, the space before them and the space between thousands are written in. */
public enum Symbols {
    /** Characters that every terminal shows: {@code 58 degC}. */
    ASCII,
    /** Degree signs and ordinary spaces, for pictures and for other programs: {@code 58 °C}. */
    UNICODE,
    /** Degree signs, and spaces at which no line breaks, for pages: {@code 58 °C}. */
    PRINTED;

    char space() {
        return this == PRINTED ? '\u00a0' : ' ';
    }

    /** The digits of a rounded number. */
    String digits(BigDecimal rounded) {
        return Decimals.grouped(rounded, space());
    }

    /** A number that never reads as zero unless it is zero. */
    String small(BigDecimal exact, int decimals, int significant) {
        BigDecimal rounded = Decimals.rounded(exact, decimals, significant);
        if (exact.signum() == 0 || rounded.signum() != 0) {
            return digits(rounded);
        }
        String least = BigDecimal.ONE.movePointLeft(decimals).toPlainString();
        return exact.signum() > 0 ? "under" + space() + least : "above" + space() + "-" + least;
    }

    /** A unit behind its number, with the space between. */
    String behind(String unit) {
        return space() + written(unit);
    }

    String written(String unit) {
        return this == ASCII
                ? unit
                : unit.replace("deg", "\u00b0").replace("m3", "m\u00b3").replace(' ', space());
    }
}
