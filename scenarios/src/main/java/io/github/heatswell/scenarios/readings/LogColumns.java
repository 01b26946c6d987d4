package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.readings.LogRows.CellException;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where in a row each quantity stands, and how its cells become numbers. */
final class LogColumns {

    /** No water in a tank is hotter (K): 110 degC. */
    private static final double HOTTEST = 383.15;

    /** Cells that say there is no reading. */
    private static final Set<String> MISSING = Set.of("", "-", "--", "---", "n/a", "na", "nan", "null");

    /** So many columns that are not used are named one by one. */
    private static final int MAX_NAMED = 5;

    private static final List<String> KNOWN = List.of("time", "pressure", "temperature", "burner");

    private final List<String> names;
    private final LogNumbers times;
    private final LogNumbers pressures;
    private final LogNumbers temperatures;
    private final List<String> remarks = new ArrayList<>();
    private final boolean commas;
    private final Optional<String> asked;
    private SplitDecimals split;
    /** The first temperature that no tank has; null while there is none. */
    private LogMarks.Found tooHot;

    private long line;
    private int unused;
    private int time = -1;
    private int date = -1;
    private boolean guessed;
    private int pressure = -1;
    private int temperature = -1;
    private int burner = -1;
    private Unit timeUnit;
    private Unit temperatureUnit;
    private DoubleUnaryOperator toGauge;
    private String pressureUnit = "";
    private UnitSystem units = UnitSystem.SI;
    private boolean absolute;

    /**
     * Finds the columns.
     *
     * @param header the cells of the first line
     * @param commas whether decimals may stand behind a comma
     * @param atmosphere the absolute pressure (Pa) of the air at the gauge
     * @param asked the unit of the pressures where their column names none
     * @throws IllegalArgumentException if the columns of time and pressure are not there
     */
    LogColumns(List<String> header, boolean commas, double atmosphere, Optional<String> asked) {
        this.asked = asked;
        this.commas = commas;
        names = withoutEmptyEnd(header);
        times = new LogNumbers("time", commas);
        pressures = new LogNumbers("pressure", commas);
        temperatures = new LogNumbers("temperature", commas);
        for (int i = 0; i < names.size(); i++) {
            named(i, atmosphere);
        }
        joinDateAndTime();
        if (time < 0 || pressure < 0) {
            throw new IllegalArgumentException(
                    "the first line must name the columns, including one for time and one for pressure, such as"
                            + " 'time_s,pressure_bar'; it is "
                            + Printable.quote(String.join(" ", header)));
        }
        int next = pressure + 1;
        if (!commas && next < names.size() && next != time && next != date && next != burner) {
            double unit = toGauge.applyAsDouble(1) - toGauge.applyAsDouble(0);
            split = new SplitDecimals(names.get(next), unit, next == temperature ? temperatureUnit : null);
        }
    }

    private void named(int place, double atmosphere) {
        Optional<LogHeading> heading = LogHeading.of(names.get(place));
        if (heading.isEmpty()) {
            unused(place);
            return;
        }
        try {
            column(place, heading.get(), atmosphere);
        } catch (IllegalArgumentException wrong) {
            throw new CellException(place, wrong.getMessage());
        }
    }

    /** A date stands alone with its time behind it, or in front of a time on a clock; beside seconds it says nothing. */
    private void joinDateAndTime() {
        if (date >= 0 && time < 0) {
            time = date;
            date = -1;
        } else if (date >= 0 && !hasClock()) {
            unused(date);
            date = -1;
        }
    }

    /** How the names of the columns were understood; empty if each is one of those that the documentation lists. */
    Optional<String> understood() {
        if (!guessed) {
            return Optional.empty();
        }
        String clock = "time in " + (date < 0 ? "" : name(date) + " and ") + name(time);
        return Optional.of(Stream.of(
                        Optional.of("The columns were understood like this: " + clock),
                        Optional.of("pressure in " + name(pressure) + " (" + pressureUnit + ", "
                                + (absolute ? "absolute" : "as a gauge shows it") + ")"),
                        Optional.of(temperature)
                                .filter(place -> place >= 0)
                                .map(place ->
                                        "water temperature in " + name(place) + " (" + temperatureUnit.symbol() + ")"),
                        Optional.of(burner).filter(place -> place >= 0).map(place -> "burner in " + name(place)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; ", "", ".")));
    }

    private String name(int place) {
        return Printable.quote(names.get(place));
    }

    private void unused(int place) {
        unused++;
        if (unused > MAX_NAMED) {
            return;
        }
        String name = names.get(place);
        remarks.add(
                name.isEmpty()
                        ? "column " + (place + 1) + " has no name and is not used"
                        : "the column " + Printable.quote(name) + " is not used"
                                + Nearest.hint(name.replaceFirst("[\\s_\\[(].*", ""), KNOWN));
    }

    /** Spreadsheets put empty cells behind the last column. */
    private static List<String> withoutEmptyEnd(List<String> header) {
        int length = header.size();
        while (length > 0 && header.get(length - 1).isBlank()) {
            length--;
        }
        return header.subList(0, length).stream().map(String::strip).toList();
    }

    /** What is to be said of the columns. */
    List<String> remarks() {
        List<String> all = new ArrayList<>(remarks);
        if (unused > MAX_NAMED) {
            all.add("and " + (unused - MAX_NAMED) + " more columns are not used");
        }
        if (split != null) {
            split.remark().ifPresent(all::add);
        }
        return all;
    }

    /** Takes notice of a new row; refuses it if it has more in it than the columns that have names. */
    void begin(List<String> row, long at) {
        line = at;
        refuseSurplus(row);
        if (split != null && !isMissing(row, pressure)) {
            split.watch(cell(row, pressure), cell(row, pressure + 1), at);
        }
    }

    /**
     * Refuses a time that runs back because a comma between its thousands was taken for the end of a cell.
     *
     * @param before the time (s) before it
     * @param step the step (s) before that
     */
    void refuseSplitThousands(List<String> row, double before, double step) {
        String written = cell(row, time) + cell(row, time + 1);
        if (commas
                || hasClock()
                || !LogMarks.SPLIT_THOUSANDS
                        .matcher(cell(row, time) + "," + cell(row, time + 1))
                        .matches()) {
            return;
        }
        double meant = timeUnit.toSi(Double.parseDouble(written)) - before;
        if (meant > 0 && meant < LogMarks.MAX_STEP * step) {
            throw new CellException(
                    time,
                    "time: '" + cell(row, time) + "' follows a later time; if the comma separates thousands, write "
                            + written);
        }
    }

    /**
     * Refuses a log whose numbers show that marks of decimals or of thousands were lost or taken for something else, or whose
     * water is hotter than any.
     *
     * @param lowest the lowest pressure (Pa, gauge)
     * @param highest the highest pressure (Pa, gauge)
     * @param end how long the log lasts (s)
     */
    void refuseLostMarks(double lowest, double highest, double end) {
        if (split != null) {
            split.refusal().ifPresent(found -> {
                throw new CellException(found.line(), pressure, found.message());
            });
        }
        LogMarks.ofPressure(pressures, toGauge, lowest, highest).ifPresent(found -> {
            throw new CellException(found.line(), pressure, found.message());
        });
        if (!hasClock()) {
            LogMarks.ofTime(times, timeUnit).ifPresent(found -> {
                throw new CellException(found.line(), time, found.message());
            });
            LogMarks.shortTime(times, end).ifPresent(remarks::add);
        }
        if (tooHot != null) {
            throw new CellException(tooHot.line(), temperature, tooHot.message());
        }
    }

    private void refuseSurplus(List<String> row) {
        for (int i = names.size(); i < row.size(); i++) {
            if (!row.get(i).isBlank()) {
                throw new CellException(
                        i,
                        "there are " + row.size() + " cells in this row, but the first line names " + names.size()
                                + " columns" + meant(row));
            }
        }
    }

    /** What a number was before its comma was taken for the end of a cell. */
    private String meant(List<String> row) {
        String whole = cell(row, pressure);
        String fraction = cell(row, pressure + 1);
        boolean split = whole.matches("[-+]?\\d{1,9}") && fraction.matches("\\d{1,9}");
        String example = split ? "write " + whole + "." + fraction : "write decimals with a point";
        return "; if the comma is a decimal comma, " + example + " or separate the columns with semicolons";
    }

    private void column(int place, LogHeading heading, double atmosphere) {
        switch (heading.quantity()) {
            case PRESSURE -> {
                pressure = once(pressure, place, "pressure");
                toGauge = toGauge(heading.unit().isEmpty() ? asked.orElse("") : heading.unit(), atmosphere);
            }
            case TEMPERATURE -> {
                temperature = once(temperature, place, "temperature");
                temperatureUnit = QuantityReader.read("1 " + heading.unit(), Kind.TEMPERATURE)
                        .unit();
            }
            case BURNER -> burner = once(burner, place, "burner");
            case DATE -> date = once(date, place, "date");
            case TIME -> {
                time = once(time, place, "time");
                timeUnit = heading.unit().isEmpty()
                        ? null
                        : QuantityReader.read("1 " + heading.unit(), Kind.DURATION)
                                .unit();
            }
        }
        guessed |= heading.guessed();
    }

    private static int once(int before, int place, String name) {
        if (before >= 0) {
            throw new IllegalArgumentException("there are two columns for the " + name + "; keep one");
        }
        return place;
    }

    private DoubleUnaryOperator toGauge(String unit, double atmosphere) {
        if (unit.isEmpty()) {
            throw new IllegalArgumentException(
                    "the pressure column has no unit; name it, for example, 'pressure_bar' or 'pressure (psi)', or add"
                            + " --pressure-unit psi or --pressure-unit bar");
        }
        Pressure one = QuantityReader.pressure("1 " + unit);
        double factor = one.value();
        absolute = one.reference() == Pressure.Reference.ABSOLUTE;
        units = UnitSystem.ofMost(QuantityReader.units("1 " + unit));
        pressureUnit = unit.replaceAll("[ (]*(?:abs|a|g|gauge)\\)?$", "");
        double zero = absolute ? atmosphere : 0;
        return value -> value * factor - zero;
    }

    /** The unit system that the unit of the pressures belongs to. */
    UnitSystem units() {
        return units;
    }

    boolean hasTemperature() {
        return temperature >= 0;
    }

    boolean hasBurner() {
        return burner >= 0;
    }

    /** Whether times are dates or times on a clock. */
    boolean hasClock() {
        return timeUnit == null;
    }

    String timeText(List<String> row) {
        String clock = cell(row, time);
        return date < 0 || clock.isEmpty() ? clock : cell(row, date) + " " + clock;
    }

    /** Which cell of a row holds the time. */
    int timePlace() {
        return time;
    }

    /** The time (s) of a column with a unit. */
    double seconds(List<String> row) {
        return timeUnit.toSi(read(times, row, time, line));
    }

    /** The pressure (Pa, gauge), NaN if the cell is empty. */
    double gauge(List<String> row) {
        return isMissing(row, pressure)
                ? Double.NaN
                : checked(
                        "pressure",
                        ReadingRange.LOGGED_PRESSURE,
                        toGauge.applyAsDouble(read(pressures, row, pressure, line)),
                        row,
                        pressure,
                        "");
    }

    /** The temperature (K), NaN if there is none. */
    double temperature(List<String> row) {
        if (isMissing(row, temperature)) {
            return Double.NaN;
        }
        double read = checked(
                "temperature",
                ReadingRange.LOGGED_TEMPERATURE,
                temperatureUnit.toSi(read(temperatures, row, temperature, line)),
                row,
                temperature,
                "");
        if (read > HOTTEST && tooHot == null) {
            tooHot = new LogMarks.Found(
                    line,
                    "temperature: '" + cell(row, temperature) + "' is above 110 degC, and no water in a tank is as hot;"
                            + " is the unit right"
                            + (temperatureUnit == TemperatureUnit.CELSIUS ? ", or is it degF?" : "?")
                            + " leave the cell empty where there is no reading");
        }
        return read;
    }

    private static boolean isMissing(List<String> row, int place) {
        return MISSING.contains(cell(row, place).toLowerCase(Locale.ROOT));
    }

    private static double read(LogNumbers numbers, List<String> row, int place, long line) {
        try {
            return numbers.read(cell(row, place), line);
        } catch (IllegalArgumentException wrong) {
            throw new CellException(place, wrong.getMessage());
        }
    }

    private static double checked(
            String field, ReadingRange range, double value, List<String> row, int place, String question) {
        try {
            return range.checked(
                    value, cell(row, place), "; " + question + "leave the cell empty where there is no reading");
        } catch (IllegalArgumentException outside) {
            throw new CellException(place, field + ": " + outside.getMessage());
        }
    }

    boolean burner(List<String> row) {
        String text = cell(row, burner).toLowerCase(Locale.ROOT);
        return switch (text) {
            case "on", "1", "true", "yes" -> true;
            case "", "off", "0", "false", "no" -> false;
            default ->
                throw new CellException(
                        burner,
                        "burner: " + Printable.quote(text) + " is neither on nor off; write on or off, or 1 or 0");
        };
    }

    private static String cell(List<String> row, int place) {
        return place < 0 || place >= row.size() ? "" : row.get(place).strip();
    }
}
