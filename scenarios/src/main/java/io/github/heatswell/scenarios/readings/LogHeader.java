package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.readings.LogRows.CellException;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the first line of a log says: which quantity is in which column, and in which unit. A place is -1 where there is no such column. */
final class LogHeader {

    /** So many columns that are not used are named one by one. */
    private static final int MAX_NAMED = 5;
    /** As many columns as a log may have. */
    private static final int MAX_COLUMNS = 500;

    private static final List<String> KNOWN = List.of("time", "pressure", "temperature", "burner");

    private final List<String> names;
    private final Optional<String> asked;
    private final List<String> remarks = new ArrayList<>();
    private int unused;
    private int time = -1;
    private int date = -1;
    private int pressure = -1;
    private int temperature = -1;
    private int burner = -1;
    private final List<Integer> notes = new ArrayList<>();
    private final List<Integer> seen = new ArrayList<>();
    private final List<Integer> unitColumns = new ArrayList<>();
    private boolean elapsed;
    private boolean guessed;
    /** The unit of the times; null for a clock. */
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
     * @param atmosphere the absolute pressure (Pa) of the air at the gauge
     * @param asked the unit of the pressures where their column names none
     * @throws IllegalArgumentException if the columns of time and pressure are not there
     */
    LogHeader(List<String> header, double atmosphere, Optional<String> asked) {
        this.asked = asked;
        names = withoutEmptyEnd(header);
        if (names.size() > MAX_COLUMNS) {
            throw new IllegalArgumentException("this line has " + names.size() + " cells; up to " + MAX_COLUMNS
                    + " columns are allowed, so the ends of its lines may be missing");
        }
        for (int i = 0; i < names.size(); i++) {
            named(i, atmosphere);
        }
        joinDateAndTime();
        if (pressure < 0 && names.stream().anyMatch(LogHeading::isVoltage)) {
            throw new IllegalArgumentException(
                    "volts are what a sensor sends, and no pressure yet; convert them by the range on the sensor's plate, and"
                            + " name the column, for example, 'pressure_bar'");
        }
        if (time < 0 || pressure < 0) {
            throw new IllegalArgumentException(
                    "the first line must name the columns, including one for time and one for pressure, such as"
                            + " 'time_s,pressure_bar'; it is "
                            + Printable.quote(String.join(" ", header)));
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
            throw new CellException(place, wrong);
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
        String clock = "time in " + (date < 0 ? "" : name(date) + " and ") + name(time)
                + (elapsed
                        ? " (hours and minutes from the beginning)"
                        : timeUnit == null ? "" : " (" + timeUnit.symbol() + ")");
        return Optional.of(Stream.of(
                        Optional.of("The columns were read like this: " + clock),
                        Optional.of("pressure in " + name(pressure) + " (" + spelt(pressureUnit) + ", "
                                + (absolute ? "absolute" : "as a gauge shows it") + ")"),
                        Optional.of(temperature)
                                .filter(place -> place >= 0)
                                .map(place ->
                                        "water temperature in " + name(place) + " (" + temperatureUnit.symbol() + ")"),
                        Optional.of(burner).filter(place -> place >= 0).map(place -> "burner in " + name(place)),
                        Stream.concat(notes.stream(), seen.stream())
                                .map(this::name)
                                .reduce((one, other) -> one + " and " + other)
                                .map(all -> "notes in " + all))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; ", "", ".")));
    }

    /** A unit of pressure as it is spelt, without the letters that say from where it is measured. */
    static String spelt(String unit) {
        String bare = unit.replaceAll("[ (]+(?:abs|absolute|a|g|gauge)\\)?$|(?<=psi|bar|pa)[ag]$", "");
        return bare.replace("kpa", "kPa").replace("mpa", "MPa");
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

    /** What is to be said of columns that are not used. */
    List<String> remarks() {
        List<String> all = new ArrayList<>(remarks);
        if (unused > MAX_NAMED) {
            all.add("and " + (unused - MAX_NAMED) + " more columns are not used");
        }
        return all;
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
            case NOTE -> notes.add(place);
            case SEEN -> seen.add(place);
            case UNIT -> unitColumns.add(place);
            case TIME -> {
                if (time >= 0 && LogHeading.is(names.get(place).toLowerCase(Locale.ROOT), Kind.DURATION)) {
                    unused(place);
                    return;
                }
                time = once(time, place, "time");
                elapsed = LogHeading.ELAPSED.equals(heading.unit());
                timeUnit = heading.unit().isEmpty() || elapsed
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
            throw new InvalidReadingsException.UnitMissing(
                    "the pressure column has no unit; name it, for example, 'pressure_bar' or 'pressure (psi)'");
        }
        Pressure one = QuantityReader.pressure("1 " + unit);
        double factor = one.value();
        absolute = one.reference() == Pressure.Reference.ABSOLUTE;
        units = UnitSystem.ofMost(QuantityReader.units("1 " + unit));
        pressureUnit = spelt(unit);
        double zero = absolute ? atmosphere : 0;
        return value -> value * factor - zero;
    }

    /** In which other unit a highest reading (Pa) would be one of a house; a question with a space before it, or nothing. */
    String fitting(double peak) {
        double number = peak / QuantityReader.pressure("1 " + pressureUnit).value();
        List<String> fitting = GaugeUnits.fitting(number).stream()
                .filter(unit -> !isInUnit(unit))
                .toList();
        return fitting.isEmpty() ? "" : " The numbers would fit " + String.join(" or ", fitting) + ".";
    }

    /** Whether the pressures are in a unit, whatever they are measured from. */
    boolean isInUnit(String unit) {
        double one = QuantityReader.pressure("1 " + unit).value();
        return Double.compare(one, QuantityReader.pressure("1 " + pressureUnit).value()) == 0;
    }

    /** The unit system that the unit of the pressures belongs to. */
    UnitSystem units() {
        return units;
    }

    /** Whether times are dates or times on a clock. */
    boolean hasClock() {
        return timeUnit == null;
    }

    /** Whether the hours and minutes run from the beginning of the log, and are no time of day. */
    boolean isElapsed() {
        return elapsed;
    }

    /** Where notes stand. */
    List<Integer> notes() {
        return notes;
    }

    /** Where it stands whether something was seen that the name of the column says. */
    List<Integer> seen() {
        return seen;
    }

    /** Where units stand in a column of their own, of whichever quantity. */
    List<Integer> unitColumns() {
        return unitColumns;
    }

    boolean hasTemperature() {
        return temperature >= 0;
    }

    boolean hasBurner() {
        return burner >= 0;
    }

    /** The names of the columns. */
    List<String> names() {
        return names;
    }

    /** Where the times stand. */
    int time() {
        return time;
    }

    /** Where the dates stand that belong to times on a clock. */
    int date() {
        return date;
    }

    /** Where the pressures stand. */
    int pressure() {
        return pressure;
    }

    /** Where the temperatures stand. */
    int temperature() {
        return temperature;
    }

    /** Where burner or element are said to be on. */
    int burner() {
        return burner;
    }

    /** The unit of the times; null for a clock. */
    Unit timeUnit() {
        return timeUnit;
    }

    /** The unit of the temperatures; null where there are none. */
    Unit temperatureUnit() {
        return temperatureUnit;
    }

    /** Makes a gauge pressure (Pa) of a number. */
    DoubleUnaryOperator toGauge() {
        return toGauge;
    }
}
