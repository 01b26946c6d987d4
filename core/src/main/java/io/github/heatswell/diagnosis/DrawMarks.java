package io.github.heatswell.diagnosis;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Hot-water use that a log notes, or shows: while water is drawn the supply feeds the house, so the pressure falls within minutes to
 * the lowest of the log and stays there, or part of the way if a vessel gives all that is drawn. Where the pressure rests there already, a draw shows only by the heat-up that follows it: the
 * pressure rises anew as the tap is shut. How much was drawn is left open. Immutable.
 */
final class DrawMarks {

    /** The numbers that stand for the volumes, in the order of time. */
    static final List<Parameter> VOLUMES =
            List.of(Parameter.DRAWN_FIRST, Parameter.DRAWN_SECOND, Parameter.DRAWN_THIRD);

    /** Less than this (m3) is no draw. */
    static final double MIN_VOLUME = 0.5e-3;

    /** Most (m3) that a draw is taken to be: two baths. */
    private static final double MAX_VOLUME = 0.3;
    /** What a draw is taken to be at first (m3), and one standard deviation of it; our own judgement. */
    private static final double USUAL = 0.03;
    /** No draw is faster (m3/s): 30 L/min. */
    private static final double FASTEST = 0.03 / 60;
    /** A tap that is opened lets at least this much through (m3/s): 5 L/min; common practice, no source. */
    private static final double SLOWEST = 0.005 / 60;
    /** A fall to the supply's pressure takes no longer (s), unless readings are further apart. */
    private static final double QUICK = 120;
    /** It is as deep as this (Pa), and as so many standard uncertainties. */
    private static final double DEEP = 0.2e5;

    private static final double CLEAR = 6;
    /** So many where two readings on either side show it. */
    private static final double PLAIN = 4;
    /** A leak lets the pressure down by less than this share of its height in so short a time (-); our own judgement. */
    private static final double MOST_OF_IT = 0.6;

    private static final double RECENT = 900;
    /** A tank that was drawn from is heated for about so long (s); our own judgement. */
    private static final double HEAT_UP = 3_600;
    /** A rise from the supply's pressure as small as this (Pa) may follow a draw, if so many readings show it that it is no scatter. */
    private static final double FAINT = 0.1e5;

    /** A pressure rises again once it is so many standard uncertainties above where it fell to. */
    private static final double RESTS = 2;

    /** A draw of which nothing but the heat-up shows is taken to have lasted so long (s); our own judgement. */
    private static final double UNSEEN = 300;
    /** A pressure that rises for want of room does so clearly within this time (s). */
    private static final double SOON = 1_800;
    /** So many readings in a row are no scatter. */
    private static final int IN_A_ROW = 3;

    /** The pressure while water is drawn is above the lowest of the log by no more than this (Pa) and a step. */
    private static final double AT_SUPPLY = 0.15e5;
    /** Draws are repeated every day (s), so that none is known to be of one day alone after that. */
    private static final double DAY = 86_400;

    /** So many of the readings lie below where the supply stands (-): a reducing valve lets the pressure down further while water is drawn. */
    private static final double DROOPING = 0.05;

    private final List<Mark> marks;

    private DrawMarks(List<Mark> marks) {
        this.marks = List.copyOf(marks);
    }

    /**
     * A draw.
     *
     * @param reading the number of the first reading behind its beginning
     * @param from when it began (s, in the time of the log), about
     * @param until when it ended (s), about
     * @param noted whether somebody noted it
     * @param fell whether the log shows it begin, and not only what came after it
     */
    record Mark(int reading, double from, double until, boolean noted, boolean fell) {

        /** The same draw, over by a time (s) at which the next has not begun. */
        private Mark overBy(double time) {
            return new Mark(reading, from, Math.min(until, time), noted, fell);
        }

        /** Whether what shows about a time (s) is this draw, or the heat-up that follows it. */
        private boolean isAbout(double time) {
            return time > from - SOON && time < until + HEAT_UP;
        }

        /** Begins and ends as the log shows, unless so much water takes longer, or so little less time: a tap is not opened by a hair. */
        private Draw draw(double volume, double clock) {
            double flow = Math.min(FASTEST, Math.max(SLOWEST, volume / (until - from)));
            double begins = fell ? from : Math.max(from, until - volume / flow);
            return Draw.builder()
                    .timeOfDay(((begins + clock) % DAY + DAY) % DAY, DurationUnit.SECOND)
                    .volume(volume, VolumeUnit.CUBIC_METRE)
                    .flow(flow, FlowUnit.CUBIC_METRE_PER_SECOND)
                    .build();
        }
    }

    /** No draws at all. */
    static DrawMarks none() {
        return new DrawMarks(List.of());
    }

    /**
     * The draws of a log: those noted, and those shown unless the description says when water is drawn. A pressure that falls again and
     * again in readings by hand is a valve's.
     *
     * @param log the log, or null
     * @param described whether the description has draws
     */
    static DrawMarks of(PressureLog log, boolean described) {
        if (log == null) {
            return none();
        }
        boolean noted = IntStream.range(0, log.count()).anyMatch(log::isDrawnBefore);
        double level = supplied(log);
        List<Mark> marks = new ArrayList<>();
        boolean heated = false;
        for (int i = 1; i < log.count(); i++) {
            boolean rises = log.tellsItsScatter() && isRise(log, i, level);
            if (rises && heated && !noted && !described && !log.isShutBefore(i)) {
                Mark unseen = unseen(log, i);
                if (!marks.isEmpty()) {
                    marks.add(marks.remove(marks.size() - 1).overBy(unseen.from()));
                }
                marks.add(unseen);
            }
            heated |= rises || log.gauge(0) > level || isAbove(log, i, level);
            boolean goesOn = !marks.isEmpty() && marks.get(marks.size() - 1).reading() == i - 1;
            boolean falls = isFall(log, i, level)
                    || isSmallDraw(log, i) && !isRecent(marks, log.time(i)) && !isFromTheTop(log, i);
            boolean shown = !goesOn && (noted || !described) && !log.isShutBefore(i) && falls;
            if (log.isDrawnBefore(i) || shown) {
                if (!marks.isEmpty()) {
                    marks.add(marks.remove(marks.size() - 1).overBy(log.time(i - 1)));
                }
                marks.add(mark(log, i, level));
            }
        }
        boolean cycles = !noted && !log.tellsItsScatter() && (marks.size() > VOLUMES.size() || log.end() >= DAY);
        return cycles ? none() : new DrawMarks(marks);
    }

    /**
     * With changes that a draw makes and other things too, as many as can be left open besides the plain ones: a fall from the top of the
     * log to which the pressure never comes back, and the clearest small rise from the supply's pressure. Where nobody allows for a draw,
     * a fault takes its place, however loudly the readings then speak for it. None where somebody noted draws, or in a log of more than a day.
     */
    DrawMarks withFaint(PressureLog log) {
        if (!log.tellsItsScatter() || anyNoted() || marks.size() >= VOLUMES.size() || log.end() > DAY) {
            return this;
        }
        List<Mark> all = new ArrayList<>(marks);
        all.addAll(faint(log, marks, supplied(log)));
        all.sort(Comparator.comparingDouble(Mark::from));
        return new DrawMarks(all);
    }

    private static List<Mark> faint(PressureLog log, List<Mark> plain, double level) {
        int[] free = IntStream.range(1, log.count())
                .filter(i -> plain.stream().noneMatch(mark -> mark.isAbout(log.time(i))) && !log.isShutBefore(i))
                .toArray();
        Optional<Mark> fall = Arrays.stream(free)
                .filter(i -> isSmallDraw(log, i) && isFromTheTop(log, i) && isNeverBack(log, i))
                .mapToObj(i -> mark(log, i, level))
                .findFirst();
        int heated = IntStream.range(1, log.count())
                .filter(i -> isAbove(log, i, level))
                .findFirst()
                .orElse(log.count());
        Optional<Mark> rise = Arrays.stream(free)
                .filter(i -> log.time(i) - SOON > log.time(Math.min(heated, i)) && faintRise(log, i, level) > CLEAR)
                .boxed()
                .max(Comparator.comparingDouble(i -> faintRise(log, i, level)))
                .map(i -> unseen(log, i));
        return Stream.of(fall, rise)
                .flatMap(Optional::stream)
                .limit(VOLUMES.size() - plain.size())
                .toList();
    }

    /** How many standard deviations the pressure is higher for a while from a reading on than before, where it was about the supply's. */
    private static double faintRise(PressureLog log, int at, double level) {
        double[] before = between(log, log.time(at) - SOON, log.time(at));
        double[] after = between(log, log.time(at), log.time(at) + SOON);
        double rested = Arrays.stream(before).average().orElse(level);
        double risen = Arrays.stream(after).average().orElseThrow() - rested;
        double deviation = log.uncertainty() * Math.sqrt(1.0 / before.length + 1.0 / after.length);
        return before.length >= IN_A_ROW && rested < level && risen > FAINT ? risen / deviation : 0;
    }

    /** Whether the pressure never comes back to where it falls from with a reading: a relief valve that closes lets it rise again. */
    private static boolean isNeverBack(PressureLog log, int at) {
        double from = Math.max(log.gauge(at - 1), log.gauge(at - 2)) - plain(log);
        return IntStream.range(at, log.count()).noneMatch(i -> log.gauge(i) > from)
                && IntStream.range(1, at - 1).noneMatch(i -> isSmallDraw(log, i) && log.gauge(i - 1) > from);
    }

    /** The readings from one time (s) to before another. */
    private static double[] between(PressureLog log, double from, double until) {
        return IntStream.range(0, log.count())
                .filter(i -> log.time(i) >= from && log.time(i) < until)
                .mapToDouble(log::gauge)
                .toArray();
    }

    /** The highest that a gauge may show (Pa) where the supply feeds the house. */
    private static double supplied(PressureLog log) {
        double[] rising =
                IntStream.range(0, log.count()).mapToDouble(log::gauge).sorted().toArray();
        int few = log.tellsItsScatter() ? (int) (DROOPING * rising.length) : 0;
        return Math.max(rising[0], Math.min(rising[few], log.gauge(0))) + AT_SUPPLY + log.step();
    }

    /** Only those that somebody noted. */
    DrawMarks noted() {
        return new DrawMarks(marks.stream().filter(Mark::noted).toList());
    }

    /** Whether the pressure comes down to the supply's with a reading, fast and far. */
    private static boolean isFall(PressureLog log, int at, double level) {
        if (log.gauge(at) > level) {
            return false;
        }
        int from = at - 1;
        while (from > 0 && log.time(at) - log.time(from - 1) <= QUICK && log.gauge(from - 1) > log.gauge(from)) {
            from--;
        }
        double highest = log.gauge(from);
        for (int i = from; i >= 0 && log.gauge(i) > level && log.time(at) - log.time(i) <= RECENT; i--) {
            highest = Math.max(highest, log.gauge(i));
        }
        double fall = log.gauge(from) - log.gauge(at);
        return fall > Math.max(DEEP, CLEAR * log.uncertainty()) && fall > MOST_OF_IT * (highest - log.gauge(at));
    }

    /**
     * Whether the pressure comes down part of the way with a reading of a logger, at once and for good: a vessel gives what is drawn from
     * the water it has taken in, and the supply feeds only what goes beyond that.
     */
    private static boolean isSmallDraw(PressureLog log, int at) {
        if (!log.tellsItsScatter() || at < 2 || at + 1 >= log.count() || log.time(at) - log.time(at - 1) > RECENT) {
            return false;
        }
        double before = Math.min(log.gauge(at - 1), log.gauge(at - 2));
        double after = Math.max(log.gauge(at), log.gauge(at + 1));
        return before - after > plain(log);
    }

    /** A change (Pa) that readings on both sides show. */
    private static double plain(PressureLog log) {
        return Math.max(DEEP, PLAIN * log.uncertainty());
    }

    /** Whether a fall begins at the top of the log: that may be a relief valve which closes. */
    private static boolean isFromTheTop(PressureLog log, int at) {
        double top =
                IntStream.range(0, log.count()).mapToDouble(log::gauge).max().orElseThrow();
        return Math.max(log.gauge(at - 1), log.gauge(at - 2)) > top - plain(log);
    }

    /** Whether the last draw has only begun at a time (s). */
    private static boolean isRecent(List<Mark> marks, double time) {
        return !marks.isEmpty() && time - marks.get(marks.size() - 1).from() < RECENT;
    }

    /** Whether the pressure has rested at the supply's for a while, and with a reading rises from there, soon and far. */
    private static boolean isRise(PressureLog log, int at, double level) {
        int last = at + IN_A_ROW - 1;
        int rested = at - 1;
        while (rested >= 0 && log.gauge(rested) <= level) {
            rested--;
        }
        if (last >= log.count()
                || at - 1 - rested < IN_A_ROW
                || log.time(at - 1) - log.time(rested + 1) < RECENT
                || IntStream.rangeClosed(at, last).anyMatch(i -> log.gauge(i) <= level)) {
            return false;
        }
        double risen = IntStream.range(at, log.count())
                .takeWhile(i -> log.time(i) - log.time(at) <= SOON)
                .mapToDouble(log::gauge)
                .max()
                .orElseThrow();
        double rest = IntStream.range(rested + 1, at)
                .mapToDouble(log::gauge)
                .average()
                .orElseThrow();
        return risen - rest > Math.max(DEEP, CLEAR * log.uncertainty());
    }

    /** Whether a reading and those before it are no scatter above a pressure: the tank was heated, perhaps from the first reading on. */
    private static boolean isAbove(PressureLog log, int at, double level) {
        return at + 1 >= IN_A_ROW && IntStream.range(at + 1 - IN_A_ROW, at + 1).allMatch(i -> log.gauge(i) > level);
    }

    /** A draw that ended as the pressure began to rise. */
    private static Mark unseen(PressureLog log, int at) {
        double ended = 0.5 * (log.time(at - 1) + log.time(at));
        return new Mark(at, ended - UNSEEN, ended, false, false);
    }

    private static Mark mark(PressureLog log, int at, double level) {
        int last = at;
        double rests = log.gauge(at) + RESTS * log.uncertainty();
        while (last + 1 < log.count() && log.gauge(last + 1) <= rests && !log.isDrawnBefore(last + 1)) {
            last++;
        }
        double begins = 0.5 * (log.time(at - 1) + log.time(at));
        double half = last + 1 < log.count() ? 0.5 * (log.time(last + 1) - log.time(last)) : PressureLog.BY_HAND;
        double ends = log.gauge(at) <= level
                ? log.time(last) + Math.min(half, PressureLog.BY_HAND)
                : 0.5 * (begins + log.time(at));
        return new Mark(at, begins, ends, log.isDrawnBefore(at), true);
    }

    /**
     * Whether a tap ran at a time (s), which lets the gauge show less than the pressure at rest: pipes and valves take some of it. So much of
     * that is of the house, and so little of what is asked, that such a reading speaks for no cause and against none.
     */
    boolean isRunning(double time) {
        return marks.stream().anyMatch(mark -> mark.fell() && time > mark.from() && time <= mark.until());
    }

    /** How many readings there are before the first draw. */
    int before() {
        return marks.get(0).reading();
    }

    /** How many readings of a log can be used with its draws: not past a day, and not past more draws than are left open. */
    int usable(PressureLog log) {
        if (isEmpty()) {
            return log.count();
        }
        int readings = marks.size() > VOLUMES.size() ? marks.get(VOLUMES.size()).reading() : log.count();
        return (int) IntStream.range(0, readings).filter(i -> log.time(i) < DAY).count();
    }

    /** Those of them that a log still holds of which only the first readings are left. */
    DrawMarks within(PressureLog log) {
        return new DrawMarks(
                marks.stream().filter(mark -> mark.reading() < log.count()).toList());
    }

    boolean isEmpty() {
        return marks.isEmpty();
    }

    /** Whether somebody noted one. */
    boolean anyNoted() {
        return marks.stream().anyMatch(Mark::noted);
    }

    /** Whether only the log shows one. */
    boolean anyGuessed() {
        return !marks.stream().allMatch(Mark::noted);
    }

    /** What the volume of a draw among others is called among these, or null if it is not one of these. */
    Parameter named(Parameter volume, DrawMarks others) {
        int index = marks.indexOf(others.marks.get(VOLUMES.indexOf(volume)));
        return index < 0 || index >= VOLUMES.size() ? null : VOLUMES.get(index);
    }

    /** Whether somebody noted the draw of which a number says how much it was. */
    boolean isNoted(Parameter volume) {
        return marks.get(VOLUMES.indexOf(volume)).noted();
    }

    /** The volumes that are left open: what was noted was drawn, what only the log shows may be none. */
    List<FreeParameter> open() {
        return IntStream.range(0, marks.size())
                .mapToObj(i -> new FreeParameter(
                        VOLUMES.get(i), marks.get(i).noted() ? MIN_VOLUME : 0, MAX_VOLUME, List.of(USUAL), USUAL))
                .toList();
    }

    /**
     * A house in which water is drawn like this.
     *
     * @param house the house
     * @param volumes how much (m3)
     * @param start the time of the log (s) at which the run starts
     */
    HotWaterSystem in(HotWaterSystem house, double[] volumes, double start) {
        List<Draw> draws = new ArrayList<>(house.draws().draws());
        for (int i = 0; i < volumes.length; i++) {
            Mark mark = marks.get(i);
            if (volumes[i] >= MIN_VOLUME && mark.from() > start) {
                draws.add(mark.draw(volumes[i], house.start().timeOfDay() - start));
            }
        }
        return draws.isEmpty()
                ? house
                : house.toBuilder().draws(DrawProfile.of("of the log", draws)).build();
    }
}
