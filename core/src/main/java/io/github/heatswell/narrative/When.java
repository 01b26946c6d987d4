package io.github.heatswell.narrative;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import java.util.Locale;

/**
 * Moments of a run in words. A run of a day or so in which something goes by the clock is told by the clock; any other by
 * the time since its start.
 */
public final class When {

    private static final double DAY = 86_400;
    private static final double SHORTEST = 3 * 3_600;
    private static final double LONGEST = 3 * DAY;

    private final QuantityFormat amounts;
    private final double clockStart;
    private final boolean byClock;
    private final boolean severalDays;

    private When(QuantityFormat amounts, double clockStart, boolean byClock, boolean severalDays) {
        this.amounts = amounts;
        this.clockStart = clockStart;
        this.byClock = byClock;
        this.severalDays = severalDays;
    }

    public static When of(HotWaterSystem system, double end, QuantityFormat amounts) {
        boolean timetable = !system.draws().draws().isEmpty()
                || !system.supply().mains().isConstant()
                || system.start().timeOfDay() > 0;
        return new When(
                amounts,
                system.start().timeOfDay(),
                timetable && end >= SHORTEST && end <= LONGEST,
                system.start().timeOfDay() + end > DAY + 60);
    }

    /** By the time since the start always. */
    public static When sinceStart(QuantityFormat amounts) {
        return new When(amounts, 0, false, false);
    }

    public boolean byClock() {
        return byClock;
    }

    /** The clock time (s since midnight) at the start. */
    public double clockStart() {
        return clockStart;
    }

    /** A moment: {@code after 10 min}, {@code at 06:12}, {@code at 06:12 the next day}. */
    public String at(double seconds) {
        if (seconds < 0.5) {
            return "at the start";
        }
        if (!byClock) {
            return "after " + amounts.time(seconds);
        }
        long minutes = Math.round((clockStart + seconds) / 60);
        long day = minutes / 1440;
        String which = day == 0 || !severalDays ? "" : day == 1 ? " the next day" : " on day " + (day + 1);
        return "at " + clock(minutes % 1440) + which;
    }

    /** A clock time: {@code 06:12}. */
    public static String clock(long minutes) {
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}
