package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.scenarios.readings.LogRows.CellException;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Assembles the rows of a file into a log, and notes oddities. */
final class LogAssembly {

    private static final int MIN_READINGS = 3;
    /** What a diagnosis uses of a log (s): its first two days. */
    private static final double USED = 2 * 86_400.0;

    /** How often a clock may be set back, and at most once per this many readings, before the rows count as unsorted. */
    private static final int MAX_SET_BACK = 3;

    private static final int ORDERLY = 10;
    private static final int GAP = 5;
    private static final double OUTLIER = 8;
    /** So many outliers are named. */
    private static final int NAMED = 3;

    private static final int MINUTE = 60;
    /** So far (Pa) below all others, or above its neighbours, a reading by hand may be a slip of the pen. Our own judgement. */
    private static final double FAR_BELOW = 1e5;

    private static final double FAR_ABOVE = 3e5;

    /** Between these (Pa, gauge) the highest reading of a log usually is; beyond, its unit may be wrong. Own judgement. */
    private static final double UNLIKELY_PEAK = 1e5;

    private static final double UNLIKELY_HIGH = 25e5;
    /** Below this (Pa, gauge) no supply stands behind the water, as well as gauges show it. */
    private static final double NO_PRESSURE = 0.05e5;

    /** So fast (Pa/s) no heater of a house lets the pressure rise for long: a bar in half a minute; our own judgement. */
    private static final double FASTEST = 1e5 / 30;

    private static final double NEARLY_ALL = 0.9;
    /** So far apart (s) so many readings are seldom. */
    private static final double SELDOM = 1_800;

    private static final int MANY = 100;
    /** No person reads a gauge more often (s) than this. */
    private static final double HURRIED = 30;
    /** So far apart (s) no three readings tell anything. */
    private static final double A_NIGHT = 4 * 3_600.0;

    private static final double HOUR = 3_600;
    /** Fewer readings are a person's, whose clock is not set back. */
    private static final int BY_HAND = 30;

    private final LogColumns columns;
    private final LogHeader header;
    /** Remarks are in the unit of the log, with the other in brackets: the report may be in either. */
    private final QuantityFormat both;

    private final LogClock clock;
    private final LogNotes notes = new LogNotes();
    private final LogRows rows = new LogRows();
    private double lastRead = Double.NaN;
    private double lastStep = 1;
    private double shift;
    private long forward;
    private long repeated;
    private long setBack;
    private long empty;
    private double firstRead = Double.NaN;
    private long firstBack;
    private String wentBack = "";
    private boolean exactHours = true;

    LogAssembly(LogHeader header, boolean commas) {
        this.header = header;
        clock = new LogClock(header.isElapsed());
        columns = new LogColumns(header, commas);
        both = QuantityFormat.ascii(header.units()).inBoth();
    }

    void add(List<String> row, long line) {
        columns.begin(row, line);
        double gauge = columns.gauge(row);
        String note = columns.note(row);
        String label = columns.timeText(row);
        if (label.isEmpty() && Double.isNaN(gauge) && !note.isEmpty()) {
            notes.untimed(note);
            return;
        }
        double read = header.hasClock() ? onTheClock(row) : columns.seconds(row);
        double temperature = columns.temperature(row);
        boolean burner = columns.burner(row);
        if (Double.isNaN(gauge)) {
            if (note.isEmpty()) {
                empty++;
            } else {
                notes.alone(read + shift, label, note);
            }
            return;
        }
        double step = read - lastRead;
        if (step < 0) {
            columns.refuseSplitThousands(row, lastRead, lastStep);
        }
        lastRead = read;
        if (step == 0) {
            repeated++;
            return;
        }
        if (step < 0) {
            firstBack = setBack++ == 0 ? line : firstBack;
            wentBack = wentBack.isEmpty() ? label : wentBack;
            exactHours = exactHours && Math.abs(lastStep - step - HOUR) <= lastStep;
            shift += lastStep - step;
        } else if (step > 0) {
            forward++;
            lastStep = step;
        }
        firstRead = Double.isNaN(firstRead) ? read : firstRead;
        notes.reading(read + shift, label, note);
        rows.add(read + shift, gauge, temperature, burner);
        if (rows.count() == MIN_READINGS) {
            refuseTooFarApart(rows.times()[MIN_READINGS - 1]);
        }
    }

    private double onTheClock(List<String> row) {
        try {
            return clock.read(columns.timeText(row));
        } catch (IllegalArgumentException wrong) {
            throw new CellException(header.time(), wrong.getMessage());
        }
    }

    private static void refuseTooFarApart(double time) {
        if (!(time <= USED)) {
            throw new IllegalArgumentException(
                    "time: the third reading is more than two days after the first; only the first two days of a log"
                            + " are used, and at least " + MIN_READINGS
                            + " readings are needed in them; is the time unit right?");
        }
    }

    LogReader.LogFile finished(int skipped) {
        if (setBack > forward) {
            throw new IllegalArgumentException("time runs backwards; put the oldest reading first");
        }
        if (setBack > MAX_SET_BACK && ORDERLY * setBack > forward) {
            throw new IllegalArgumentException("time runs backwards in " + setBack + " of " + (setBack + forward)
                    + " rows; sort the rows by time");
        }
        if (setBack > 0 && !exactHours && header.hasClock() && forward + setBack < BY_HAND) {
            throw new CellException(
                    firstBack,
                    header.time(),
                    "time: '" + wentBack + "' is earlier than the row before; correct it, or sort the rows by time");
        }
        if (rows.count() < MIN_READINGS) {
            throw new IllegalArgumentException(
                    (rows.count() == 1 ? "there is only 1 reading" : "there are only " + rows.count() + " readings")
                            + "; a log needs at least " + MIN_READINGS);
        }
        double[] times = rows.times();
        double[] gauge = rows.gauge();
        double lowest = Arrays.stream(gauge).min().orElseThrow();
        columns.refuseLostMarks(lowest, Arrays.stream(gauge).max().orElseThrow(), times[times.length - 1]);
        PressureLog.Builder builder = PressureLog.builder(times, gauge);
        if (header.hasTemperature()) {
            builder.temperature(rows.temperature());
        }
        if (header.hasBurner()) {
            builder.burner(rows.burner());
        }
        if (clock.tellsTheTimeOfDay()) {
            builder.timeOfDay(clock.firstOfDay());
        }
        PressureLog log = notes.in(builder.build(), firstRead);
        List<String> remarks = new ArrayList<>();
        note(
                remarks,
                skipped,
                "one line above the names of the columns was skipped",
                "%d lines above the names of the columns were skipped");
        remarks.addAll(remarks(log));
        SpotReadings spots = notes.spots(log, firstRead);
        String understood = Stream.of(header.understood().stream(), clock.understood().stream(), notes.understood())
                .flatMap(one -> one)
                .collect(Collectors.joining(" "));
        List<String> doubts = Stream.of(columns.doubt().stream(), doubts(log), notes.doubts().stream())
                .flatMap(one -> one)
                .toList();
        return new LogReader.LogFile(
                log, spots, header.units(), Optional.of(understood).filter(one -> !one.isEmpty()), doubts, remarks);
    }

    /** What makes units doubtful, as whole sentences: an answer from wrong ones is wrong throughout. */
    private Stream<String> doubts(PressureLog log) {
        List<String> doubts = new ArrayList<>();
        double peak = log.highest();
        if (peak < UNLIKELY_PEAK || peak > UNLIKELY_HIGH) {
            doubts.add("The highest pressure is " + both.pressure(peak) + ": is the pressure unit right?"
                    + header.fitting(peak));
        }
        if (!header.hasClock() && rises(log) > FASTEST) {
            doubts.add("The pressure rises by " + both.pressureDifference(log.highest() - log.gauge(0))
                    + " in a log of " + both.time(log.end())
                    + ", faster than heaters do: is the time unit right, or are these minutes?");
        }
        double lowest =
                IntStream.range(0, log.count()).mapToDouble(log::gauge).min().orElseThrow();
        if (lowest < NO_PRESSURE && peak >= UNLIKELY_PEAK) {
            doubts.add("The gauge goes down to " + both.pressure(lowest)
                    + ": was the supply shut off or the house drained? A tank that may have run empty must be full before its heater"
                    + " is on; without that, look at the gauge.");
        }
        double apart = log.end() / (log.count() - 1);
        if (doubts.isEmpty() && header.timeUnit() == DurationUnit.SECOND && apart < HURRIED && log.count() < MANY) {
            doubts.add("The readings are " + both.time(apart) + " apart, " + both.time(log.end())
                    + " in all: is the time unit right, or are these minutes?");
        }
        if (log.count() < BY_HAND) {
            outliers(log).stream()
                    .filter(at -> isSlip(log, at))
                    .limit(NAMED)
                    .map(at -> "The reading of " + named(log, at)
                            + " is far from both its neighbours: was it written down correctly? If not, correct it first: then no cause"
                            + " and no draw need explain it.")
                    .forEach(doubts::add);
        }
        boolean minutes = header.timeUnit() == DurationUnit.MINUTE;
        if (minutes && apart >= SELDOM && log.count() >= MANY
                || header.timeUnit() == DurationUnit.HOUR && apart > A_NIGHT) {
            doubts.add("The readings are " + both.time(apart) + " apart: is the time unit right, or are these "
                    + (minutes ? "seconds?" : "minutes?"));
        }
        if (repeated > forward) {
            doubts.add(
                    "Most rows repeat the time of the row before and were skipped: did the times lose their seconds?");
        }
        return doubts.stream();
    }

    /** How fast (Pa/s) the pressure goes from a tenth to nine tenths of its whole rise; 0 where it rises little or falls in between. */
    private static double rises(PressureLog log) {
        double first = log.gauge(0);
        double rise = log.highest() - first;
        int begins = 0;
        int ends = 0;
        while (log.gauge(ends) < first + NEARLY_ALL * rise) {
            begins = log.gauge(ends) <= first + (1 - NEARLY_ALL) * rise ? ends : begins;
            ends++;
        }
        return log.showsHeatUp() && ends > begins + 2 ? NEARLY_ALL * rise / (log.time(ends) - log.time(begins)) : 0;
    }

    private List<String> remarks(PressureLog log) {
        List<String> remarks = new ArrayList<>(columns.remarks());
        note(remarks, empty, "one row without a pressure was skipped", "%d rows without a pressure were skipped");
        note(
                remarks,
                repeated,
                "one row repeats the time of the row before and was skipped",
                "%d rows repeat the time of the row before and were skipped");
        clock.remark().ifPresent(remarks::add);
        note(
                remarks,
                setBack,
                "the clock was set back once; the readings were joined end to end",
                "the clock was set back %d times; the readings were joined end to end");
        if (rows.stride() > 1) {
            remarks.add("there are more readings than can be used; one in " + rows.stride() + " is kept");
        }
        if (log.end() > USED) {
            remarks.add("the causes are looked for in the first two days; readings above a limit, in the whole log");
        }
        gaps(remarks, log);
        if (log.step() > 0) {
            remarks.add("the readings move in steps of " + both.pressureDifference(log.step()));
        }
        List<Integer> outliers = outliers(log);
        String which = outliers.stream().limit(NAMED).map(at -> named(log, at)).collect(Collectors.joining("; "))
                + (outliers.size() > NAMED ? "; and " + (outliers.size() - NAMED) + " more" : "");
        note(
                remarks,
                outliers.size(),
                "one reading stands out from its neighbours (" + which
                        + "); unless a cause explains it, it gets little weight",
                outliers.size() + " readings stand out from their neighbours (" + which
                        + "); those that no cause explains get little weight");
        return remarks;
    }

    private static void note(List<String> remarks, long number, String ofOne, String ofSeveral) {
        if (number > 0) {
            remarks.add(number == 1 ? ofOne : String.format(Locale.ROOT, ofSeveral, number));
        }
    }

    private void gaps(List<String> remarks, PressureLog log) {
        double[] steps = new double[log.count() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = log.time(i + 1) - log.time(i);
        }
        Arrays.sort(steps);
        double usual = steps[steps.length / 2];
        long gaps = Arrays.stream(steps).filter(step -> step > GAP * usual).count();
        if (gaps > 0) {
            String longest = both.time(steps[steps.length - 1]);
            remarks.add(
                    gaps == 1
                            ? "readings are missing once, for " + longest
                            : "readings are missing " + QuantityFormat.times(gaps) + ", for up to " + longest);
        }
    }

    /** Which readings are far from both their neighbours. */
    private static List<Integer> outliers(PressureLog log) {
        return IntStream.range(1, log.count() - 1)
                .filter(at -> away(log, at) > OUTLIER * log.uncertainty())
                .boxed()
                .toList();
    }

    /** How far (Pa) a reading is outside those beside it; not positive between them. */
    private static double away(PressureLog log, int at) {
        double below = Math.min(log.gauge(at - 1), log.gauge(at + 1));
        double above = Math.max(log.gauge(at - 1), log.gauge(at + 1));
        return Math.max(below - log.gauge(at), log.gauge(at) - above);
    }

    private boolean isSlip(PressureLog log, int at) {
        double others = IntStream.range(0, log.count())
                .filter(other -> other != at && !notes.tellOfDraw(firstRead + log.time(other)))
                .mapToDouble(log::gauge)
                .min()
                .orElse(0);
        return log.gauge(at) < others - FAR_BELOW && !notes.tellOfDraw(firstRead + log.time(at))
                || log.gauge(at) > Math.max(log.gauge(at - 1), log.gauge(at + 1)) + FAR_ABOVE;
    }

    /** A reading as its owner finds it again. */
    private String named(PressureLog log, int at) {
        String pressure = both.pressure(log.gauge(at));
        if (log.timeOfDay().isEmpty()) {
            return pressure + ", " + both.time(log.time(at)) + " after the first";
        }
        long minute = Math.round((log.timeOfDay().getAsDouble() + log.time(at)) / MINUTE);
        return pressure + String.format(Locale.ROOT, " at %02d:%02d", minute / 60 % 24, minute % 60);
    }
}
