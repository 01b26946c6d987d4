package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.readings.LogRows.CellException;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The column of each quantity in a row, and how its cells become numbers. */
final class LogColumns {

    /** No water in a tank is hotter (K): 110 degC. */
    private static final double HOTTEST = 383.15;

    /** Warmer (K) than this no tank is usually kept: 90 degC. */
    private static final double VERY_HOT = 363.15;
    /** Colder (K) than this no water in a pipe is, whatever a thermometer errs: -3 degC. */
    private static final double FROZEN = 270.15;
    /** As many degrees Fahrenheit water has that boils in a closed tank. */
    private static final double HOTTEST_FAHRENHEIT = 250;

    /** Cells that say there is no reading. */
    private static final Set<String> MISSING = Set.of("", "-", "--", "---", "n/a", "na", "nan", "null");
    /** What a spreadsheet writes where it could compute nothing. */
    private static final Pattern WORDED = Pattern.compile("(?<number>[-+]?[\\d.,]+)?\\s*(?<words>\\p{L}.*)");

    private static final Pattern AS_IT_STANDS = Pattern.compile("^(?:'(.*)|=\"(.*)\")$");
    /** The number that spreadsheets keep for a day of our years. */
    private static final Pattern SERIAL = Pattern.compile("[3-6]\\d{4}");

    private static final Pattern HALF_OF_DAY = Pattern.compile("[ap]\\.?m\\.?", Pattern.CASE_INSENSITIVE);

    private static final Pattern ERROR = Pattern.compile("#(?:[A-Z/0]{2,6}[!?]|N/A|NV)", Pattern.CASE_INSENSITIVE);

    private final LogHeader header;
    private final List<String> names;
    private final LogNumbers times;
    private final LogNumbers pressures;
    private final LogNumbers temperatures;
    private final List<String> remarks = new ArrayList<>();
    private final boolean commas;
    private SplitDecimals split;
    /** The first temperature that no tank has; null while there is none. */
    private LogMarks.Suspicion tooHot;

    private final int time;
    private final int date;
    private final int pressure;
    private final int temperature;
    private final int burner;
    private final Map<Integer, Boolean> lastSeen = new HashMap<>();
    /** What stands in the cell of the pressure: a number, and words behind it or in its place. */
    private String number = "";

    private String words = "";
    private boolean halfApart;
    private long line;
    private long errors;
    private String error = "";
    private double hottest = Double.NEGATIVE_INFINITY;
    private long frozen;
    private long known;
    private LogMarks.Suspicion tooCold;

    /**
     * The columns that a first line names.
     *
     * @param header what it says
     * @param commas whether decimals may stand behind a comma
     */
    LogColumns(LogHeader header, boolean commas) {
        this.header = header;
        this.commas = commas;
        names = header.names();
        time = header.time();
        date = header.date();
        pressure = header.pressure();
        temperature = header.temperature();
        burner = header.burner();
        times = new LogNumbers("time", commas);
        pressures = new LogNumbers("pressure", commas);
        temperatures = new LogNumbers("temperature", commas);
        int next = pressure + 1;
        if (!commas && next < names.size() && next != time && next != date && next != burner) {
            double unit = header.toGauge().applyAsDouble(1) - header.toGauge().applyAsDouble(0);
            split = new SplitDecimals(names.get(next), unit, next == temperature ? header.temperatureUnit() : null);
        }
    }

    /** What is to be said of the columns. */
    List<String> remarks() {
        List<String> all = new ArrayList<>(header.remarks());
        if (halfApart) {
            String name = names.get(time + 1);
            all.removeIf(one ->
                    one.contains(name.isEmpty() ? "column " + (time + 2) + " has no name" : Printable.quote(name)));
            all.add("am or pm was taken from the column after the time");
        }
        all.addAll(remarks);
        if (errors > 0) {
            all.add((errors == 1 ? "one cell holds" : errors + " cells hold") + " an error of a spreadsheet such as "
                    + Printable.quote(error) + " and no reading");
        }
        if (split != null) {
            split.remark().ifPresent(all::add);
        }
        return all;
    }

    /** What makes the unit of the temperatures doubtful, as a whole sentence; empty if nothing does. */
    Optional<String> doubt() {
        return hottest > VERY_HOT
                ? Optional.of("The water reaches "
                        + QuantityFormat.ascii(UnitSystem.SI).inBoth().temperature(hottest)
                        + ", hotter than tanks are kept: is the unit of the temperatures right?")
                : Optional.empty();
    }

    /** Takes notice of a new row; refuses it if it has more in it than the columns that have names. */
    void begin(List<String> row, long at) {
        line = at;
        refuseSurplus(row);
        header.unitColumns().forEach(place -> refuseOtherUnit(cell(row, place), place));
        splitWords(cell(row, pressure));
        if (split != null && !cell(row, pressure).isEmpty()) {
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
                || header.hasClock()
                || !LogMarks.SPLIT_THOUSANDS
                        .matcher(cell(row, time) + "," + cell(row, time + 1))
                        .matches()) {
            return;
        }
        double meant = header.timeUnit().toSi(Double.parseDouble(written)) - before;
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
        boolean fahrenheit = tooHot != null
                && header.temperatureUnit() == TemperatureUnit.CELSIUS
                && TemperatureUnit.CELSIUS.fromSi(hottest) <= HOTTEST_FAHRENHEIT;
        if (fahrenheit && (split == null || !split.isCoarse())) {
            throw new CellException(tooHot.line(), temperature, tooHot.message());
        }
        if (split != null) {
            split.refusal().ifPresent(found -> {
                throw new CellException(found.line(), pressure, found.message());
            });
        }
        if (2 * frozen > known) {
            throw new CellException(tooCold.line(), temperature, tooCold.message());
        }
        LogMarks.ofPressure(pressures, header.toGauge(), lowest, highest).ifPresent(found -> {
            throw new CellException(found.line(), pressure, found.message());
        });
        if (!header.hasClock()) {
            LogMarks.ofTime(times, header.timeUnit()).ifPresent(found -> {
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

    String timeText(List<String> row) {
        String half = header.hasClock() ? cell(row, time + 1) : "";
        boolean apart = HALF_OF_DAY.matcher(half).matches();
        halfApart |= apart;
        String clock = apart ? cell(row, time) + " " + half : cell(row, time);
        return date < 0 || clock.isEmpty() ? clock : cell(row, date) + " " + clock;
    }

    /** The time (s) of a column with a unit. */
    double seconds(List<String> row) {
        return header.timeUnit().toSi(read(times, bare(cell(row, time)), time, line));
    }

    /** Whether a cell may hold words, which most of a long log do not. */
    private static boolean hasWords(String cell) {
        return cell.chars().anyMatch(Character::isLetter);
    }

    /** Words in the cell of a pressure are its unit, or a note if they say something. */
    private void splitWords(String cell) {
        number = cell;
        words = "";
        if (!hasWords(cell)) {
            return;
        }
        Matcher parts = WORDED.matcher(cell);
        if (!parts.matches() || MISSING.contains(cell.toLowerCase(Locale.ROOT))) {
            return;
        }
        String behind = parts.group("words");
        String first = behind.replaceFirst("[\\s,;:(].*", "");
        if (LogHeading.isPressure(first.toLowerCase(Locale.ROOT))) {
            refuseOtherUnit(first, pressure);
            behind = behind.substring(first.length()).replaceFirst("^[\\s,;:-]+", "");
            number = parts.group("number");
        }
        if (LogNotes.saySomething(behind)) {
            number = parts.group("number");
            words = behind;
        } else if (!behind.isEmpty()) {
            number = cell;
        }
    }

    private void refuseOtherUnit(String unit, int place) {
        if (LogHeading.isPressure(unit.toLowerCase(Locale.ROOT)) && !header.isInUnit(unit)) {
            throw new CellException(
                    place,
                    "pressure: " + Printable.quote(unit)
                            + " is not the unit of the rows above; use one unit throughout");
        }
    }

    /** What is noted in a row: in columns of notes, behind the pressure, and where something is seen for the first time. */
    String note(List<String> row) {
        if (words.isEmpty()
                && header.seen().isEmpty()
                && header.notes().stream().allMatch(place -> cell(row, place).isEmpty())) {
            return "";
        }
        List<String> all = new ArrayList<>();
        all.add(words);
        header.notes().forEach(place -> all.add(cell(row, place)));
        for (int place : header.seen()) {
            Optional<Boolean> is = yesOrNo(cell(row, place));
            if (is.isPresent() && !is.get().equals(lastSeen.put(place, is.get()))) {
                all.add((is.get() ? "" : "no ") + names.get(place));
            }
        }
        return all.stream().filter(one -> !one.isEmpty()).collect(Collectors.joining("; "));
    }

    private static Optional<Boolean> yesOrNo(String cell) {
        return switch (cell.toLowerCase(Locale.ROOT)) {
            case "on", "1", "true", "yes", "y", "x", "an", "ein", "ja", "oui", "s\u00ed", "si", "aan" ->
                Optional.of(true);
            case "off", "0", "false", "no", "n", "aus", "nein", "non", "uit", "nee" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    /** The pressure (Pa, gauge), NaN if the cell is empty. */
    double gauge(List<String> row) {
        return isMissing(row, pressure) || number == null
                ? Double.NaN
                : checked(
                        "pressure",
                        ReadingRange.LOGGED_PRESSURE,
                        header.toGauge().applyAsDouble(read(pressures, number, pressure, line)),
                        row,
                        pressure,
                        SERIAL.matcher(number).matches()
                                ? "if a spreadsheet took the number for a date, write it as it was; or "
                                : "");
    }

    /** The temperature (K), NaN if there is none. */
    double temperature(List<String> row) {
        if (isMissing(row, temperature)) {
            return Double.NaN;
        }
        double read = checked(
                "temperature",
                ReadingRange.LOGGED_TEMPERATURE,
                header.temperatureUnit().toSi(read(temperatures, cell(row, temperature), temperature, line)),
                row,
                temperature,
                "");
        known++;
        hottest = Math.max(hottest, read);
        if (read < FROZEN) {
            frozen++;
            tooCold = tooCold != null
                    ? tooCold
                    : new LogMarks.Suspicion(
                            line,
                            "temperature: '" + cell(row, temperature)
                                    + "' is below freezing, as most readings are; is the unit"
                                    + " right"
                                    + (header.temperatureUnit() == TemperatureUnit.FAHRENHEIT
                                            ? ", or is it degC?"
                                            : "?"));
        }
        if (read > HOTTEST && tooHot == null) {
            tooHot = new LogMarks.Suspicion(
                    line,
                    "temperature: '" + cell(row, temperature) + "' is above 110 degC, hotter than a sound tank ever is;"
                            + " is the unit right"
                            + (header.temperatureUnit() == TemperatureUnit.CELSIUS ? ", or is it degF?" : "?")
                            + " If it is, keep away from the tank and have its heater switched off; leave the cell empty where there is"
                            + " no reading");
        }
        return read;
    }

    private boolean isMissing(List<String> row, int place) {
        String text = cell(row, place);
        boolean wrong = ERROR.matcher(text).matches();
        if (wrong) {
            errors++;
            error = error.isEmpty() ? text : error;
        }
        return wrong || MISSING.contains(text.toLowerCase(Locale.ROOT));
    }

    /** A time without the unit behind it that its column has. */
    private String bare(String time) {
        if (!hasWords(time)) {
            return time;
        }
        Matcher parts = WORDED.matcher(time);
        return parts.matches()
                        && parts.group("number") != null
                        && LogHeading.is(parts.group("words"), Kind.DURATION)
                        && QuantityReader.read("1 " + parts.group("words"), Kind.DURATION)
                                        .unit()
                                == header.timeUnit()
                ? parts.group("number")
                : time;
    }

    private static double read(LogNumbers numbers, String text, int place, long line) {
        try {
            return numbers.read(text, line);
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
        String text = isMissing(row, burner) ? "off" : cell(row, burner);
        return yesOrNo(text)
                .orElseThrow(() -> new CellException(
                        burner,
                        "burner: " + Printable.quote(text) + " is neither on nor off; write on or off, or 1 or 0"));
    }

    /** A cell without what spreadsheets put around a text that is meant as it stands. */
    private static String cell(List<String> row, int place) {
        String text = place < 0 || place >= row.size() ? "" : row.get(place).strip();
        if (text.startsWith("'") || text.startsWith("=")) {
            text = AS_IT_STANDS.matcher(text).replaceFirst("$1$2");
        }
        return text.indexOf('\u00a0') < 0 ? text : text.replaceAll("\u00a0(?=\\p{L})", " ");
    }
}
