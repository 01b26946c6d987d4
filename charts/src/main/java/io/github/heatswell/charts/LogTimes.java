package io.github.heatswell.charts;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.DurationUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The time axis of a log, by the clock where that is known. Of few readings, which a person took, the hours in which there is none are
 * cut out: what they tell happens within minutes. Immutable.
 */
final class LogTimes {

    /** A gap is so many times as long as the usual distance of two readings; our own judgement. */
    private static final double GAP = 6;
    /** So few readings are shown one by one. */
    private static final int FEW = 60;
    /** What is shown before and after readings that are far from others, and left blank between (-), as a share of the rest. */
    private static final double MARGIN = 0.06;

    private static final double BLANK = 0.03;
    private static final int MINUTE = 60;
    private static final int DAY = 1_440;
    private static final int[] STEPS = {1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 360, 720};

    private final PressureLog log;
    /** From this distance of two readings (s) on there is a gap between them. */
    private final double longest;

    private final List<Window> windows;
    private final Axis axis;

    /**
     * A part of the log that is shown.
     *
     * @param from when it begins (s, in the time of the log)
     * @param until when it ends (s, in the time of the log)
     * @param at where it begins on the axis (s)
     */
    record Window(double from, double until, double at) {
        boolean holds(double seconds) {
            return seconds >= from && seconds <= until;
        }
    }

    LogTimes(PressureLog log, HotWaterSystem house, int mostTicks) {
        this.log = log;
        double[] steps = IntStream.range(1, log.count())
                .mapToDouble(i -> log.time(i) - log.time(i - 1))
                .sorted()
                .toArray();
        this.longest = GAP * steps[steps.length / 2];
        this.windows = windows();
        Window last = windows.get(windows.size() - 1);
        double end = Math.max(1, last.at + last.until - last.from);
        this.axis = new Axis(
                log.timeOfDay().isPresent() ? "time of day" : "time since the first reading (h:min)",
                0,
                end,
                ticks(Moments.of(house, log.end()), end / mostTicks));
    }

    Axis axis() {
        return axis;
    }

    /** Whether readings are few, so that each is shown. */
    boolean areFew() {
        return log.count() <= FEW;
    }

    /** The parts that are shown, in their order. */
    List<Window> shown() {
        return windows;
    }

    /** Where a moment that is shown (s, in the time of the log) stands on the axis. */
    double of(double seconds) {
        Window window = windows.stream()
                .filter(one -> seconds <= one.until)
                .findFirst()
                .orElse(windows.get(windows.size() - 1));
        return window.at + Math.max(0, seconds - window.from);
    }

    /** Whether nobody read the gauge for long between a reading and the one before. */
    boolean isGapBefore(int index) {
        return log.time(index) - log.time(index - 1) > longest;
    }

    private List<Window> windows() {
        double shown = IntStream.range(1, log.count())
                .filter(i -> !isGapBefore(i))
                .mapToDouble(i -> log.time(i) - log.time(i - 1))
                .sum();
        List<Window> windows = new ArrayList<>();
        double from = 0;
        double at = 0;
        for (int i = 1; i < log.count() && areFew(); i++) {
            double until = log.time(i - 1) + MARGIN * shown;
            double next = log.time(i) - MARGIN * shown;
            if (isGapBefore(i) && next - until > BLANK * shown) {
                windows.add(new Window(from, until, at));
                at += until - from + BLANK * shown;
                from = next;
            }
        }
        windows.add(new Window(from, log.end(), at));
        return List.copyOf(windows);
    }

    /** Ticks at round times, no closer than so much (s on the axis); one at its reading where a part holds no round time. */
    private List<Tick> ticks(Moments moments, double apart) {
        double start = log.timeOfDay().orElse(0);
        double step = MINUTE
                * Arrays.stream(STEPS)
                        .filter(minutes -> MINUTE * minutes >= apart)
                        .findFirst()
                        .orElse(DAY);
        List<Tick> ticks = new ArrayList<>();
        for (Window window : windows) {
            List<Double> round = new ArrayList<>();
            double first = Math.ceil((start + window.from) / step) * step - start;
            for (int i = 0; first + i * step <= window.until; i++) {
                round.add(first + i * step);
            }
            if (round.isEmpty()) {
                IntStream.range(0, log.count())
                        .mapToDouble(log::time)
                        .filter(window::holds)
                        .findFirst()
                        .ifPresent(round::add);
            }
            for (double seconds : round) {
                if (ticks.isEmpty() || of(seconds) - ticks.get(ticks.size() - 1).at() >= apart) {
                    ticks.add(new Tick(of(seconds), name(moments, start + seconds)));
                }
            }
        }
        return ticks;
    }

    private String name(Moments moments, double seconds) {
        long minutes = Math.round(seconds / MINUTE);
        return log.timeOfDay().isPresent()
                ? moments.clock(minutes % DAY)
                : minutes / MINUTE + DurationUnit.clock(minutes % MINUTE).substring(2);
    }
}
