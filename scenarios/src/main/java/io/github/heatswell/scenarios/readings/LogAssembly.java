package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.scenarios.readings.LogRows.CellException;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Assembles the rows of a file into a log, and notes oddities. */
final class LogAssembly {

    private static final int FEWEST = 3;
    /** What a diagnosis uses of a log (s): its first two days. */
    private static final double USED = 2 * 86_400.0;

    /** How often a clock may be set back, and at most once per this many readings, before the rows count as unsorted. */
    private static final int MAX_SET_BACK = 3;

    private static final int ORDERLY = 10;
    private static final int GAP = 5;
    private static final double OUTLIER = 8;

    private final LogColumns columns;
    private final LogHeader header;
    /** Remarks are in the unit of the log, with the other in brackets: the report may be in either. */
    private final QuantityFormat both;

    private final LogClock clock = new LogClock();
    private final LogRows rows = new LogRows();
    private double lastRead = Double.NaN;
    private double lastStep = 1;
    private double shift;
    private long forward;
    private long repeated;
    private long setBack;
    private long empty;

    LogAssembly(LogHeader header, boolean commas) {
        this.header = header;
        columns = new LogColumns(header, commas);
        both = QuantityFormat.ascii(header.units()).inBoth();
    }

    void add(List<String> row, long line) {
        columns.begin(row, line);
        double read = header.hasClock() ? onTheClock(row) : columns.seconds(row);
        double gauge = columns.gauge(row);
        double temperature = columns.temperature(row);
        boolean burner = columns.burner(row);
        if (Double.isNaN(gauge)) {
            empty++;
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
            setBack++;
            shift += lastStep - step;
        } else if (step > 0) {
            forward++;
            lastStep = step;
        }
        rows.add(read + shift, gauge, temperature, burner);
        if (rows.count() == FEWEST) {
            refuseTooFarApart(rows.times()[FEWEST - 1]);
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
                            + " are used, and at least " + FEWEST
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
        if (rows.count() < FEWEST) {
            throw new IllegalArgumentException(
                    (rows.count() == 1 ? "there is only 1 reading" : "there are only " + rows.count() + " readings")
                            + "; a log needs at least " + FEWEST);
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
        if (header.hasClock()) {
            builder.timeOfDay(clock.firstOfDay());
        }
        PressureLog log = builder.build();
        List<String> remarks = new ArrayList<>();
        note(
                remarks,
                skipped,
                "one line above the names of the columns was skipped",
                "%d lines above the names of the columns were skipped");
        remarks.addAll(remarks(log));
        return new LogReader.LogFile(log, header.units(), header.understood(), remarks);
    }

    private List<String> remarks(PressureLog log) {
        List<String> remarks = new ArrayList<>(columns.remarks());
        unlikelyUnit(remarks, log);
        note(remarks, empty, "one row without a pressure was skipped", "%d rows without a pressure were skipped");
        note(
                remarks,
                repeated,
                "one row repeats the time of the row before and was skipped",
                "%d rows repeat the time of the row before and were skipped");
        note(
                remarks,
                setBack,
                "the clock was set back once; the readings were joined end to end",
                "the clock was set back %d times; the readings were joined end to end");
        if (rows.stride() > 1) {
            remarks.add("there are more readings than can be used; one in " + rows.stride() + " is kept");
        }
        gaps(remarks, log);
        if (log.step() > 0) {
            remarks.add("the readings move in steps of " + both.pressureDifference(log.step()));
        }
        note(
                remarks,
                outliers(log),
                "one reading stands out from its neighbours; unless a cause explains it, it gets little weight",
                "%d readings stand out from their neighbours; those that no cause explains get little weight");
        return remarks;
    }

    private void unlikelyUnit(List<String> remarks, PressureLog log) {
        double peak =
                IntStream.range(0, log.count()).mapToDouble(log::gauge).max().orElse(0);
        if (peak < LogMarks.LEAST_PEAK || peak > LogMarks.MAX_PEAK) {
            remarks.add("the highest pressure is " + both.pressure(peak) + "; is the pressure unit right?");
        }
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
                            : "readings are missing " + gaps + " times, for " + longest + " at most");
        }
    }

    private static long outliers(PressureLog log) {
        long outliers = 0;
        for (int i = 1; i < log.count() - 1; i++) {
            double below = Math.min(log.gauge(i - 1), log.gauge(i + 1));
            double above = Math.max(log.gauge(i - 1), log.gauge(i + 1));
            double away = Math.max(below - log.gauge(i), log.gauge(i) - above);
            outliers += away > OUTLIER * log.uncertainty() ? 1 : 0;
        }
        return outliers;
    }
}
