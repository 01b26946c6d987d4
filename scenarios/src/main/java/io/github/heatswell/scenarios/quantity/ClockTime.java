package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.scenarios.wording.Printable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the time on a clock with 24 hours, or with 12 and {@code am} or {@code pm} behind it.
 */
public final class ClockTime {

    private static final Pattern CLOCK =
            Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2}))?(?: ?([ap])\\.?m\\.?)?", Pattern.CASE_INSENSITIVE);
    private static final int HOURS = 24;
    private static final int NOON = 12;
    private static final int SIXTY = 60;

    private ClockTime() {}

    /**
     * Reads a time of day.
     *
     * @param text such as {@code 06:30}, {@code 06:30:15} or {@code 6:30 am}
     * @return the time since midnight (s), 0 to 86 399
     * @throws IllegalArgumentException if the text is no such time; the message says how to write it
     */
    public static double read(String text) {
        Matcher parts = CLOCK.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    Printable.quote(text) + " is not a time of day; write hours and minutes: 06:30 or 18:30");
        }
        int hours = Integer.parseInt(parts.group(1));
        int minutes = Integer.parseInt(parts.group(2));
        int seconds = parts.group(3) == null ? 0 : Integer.parseInt(parts.group(3));
        if (parts.group(4) != null) {
            if (hours < 1 || hours > NOON) {
                throw new IllegalArgumentException(
                        text.strip() + " is not a time of day; with am or pm, hours run from 1 to 12");
            }
            hours = hours % NOON + (parts.group(4).equalsIgnoreCase("p") ? NOON : 0);
        }
        if (hours >= HOURS || minutes >= SIXTY || seconds >= SIXTY) {
            throw new IllegalArgumentException(
                    text.strip() + " is outside the allowed range, 00:00 to 23:59:59; midnight is 00:00");
        }
        return (hours * SIXTY + minutes) * SIXTY + seconds;
    }
}
