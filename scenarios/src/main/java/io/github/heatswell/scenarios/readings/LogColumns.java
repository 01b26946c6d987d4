package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where in a row each quantity stands, and how its cells become numbers. */
final class LogColumns {

    private static final Pattern NAME = Pattern.compile(
            "(time|date|datetime|clock|pressure|temperature|temp|burner|heater)(?:[\\s_\\[(]+(.*?)[)\\]\\s]*)?");

    /** No name of a column known here comes near this length; the pattern would try a longer one for ever. */
    private static final int LONGEST_NAME = 100;

    private final NumberText numbers;
    private int time = -1;
    private int pressure = -1;
    private int temperature = -1;
    private int burner = -1;
    private Unit timeUnit;
    private Unit temperatureUnit;
    private DoubleUnaryOperator toGauge;

    LogColumns(List<String> header, NumberText numbers, double atmosphere) {
        this.numbers = numbers;
        for (int i = 0; i < header.size(); i++) {
            String heading = header.get(i).strip().toLowerCase(Locale.ROOT);
            Matcher parts = NAME.matcher(heading);
            if (heading.length() <= LONGEST_NAME && parts.matches()) {
                column(
                        i,
                        parts.group(1),
                        parts.group(2) == null ? "" : parts.group(2).strip(),
                        atmosphere);
            }
        }
        if (time < 0 || pressure < 0) {
            throw new IllegalArgumentException(
                    "the first line must name the columns, with a column for the time and one for"
                            + " the pressure, such as 'time_s,pressure_bar'; here it is "
                            + Printable.quote(String.join(" ", header)));
        }
    }

    private void column(int place, String name, String unit, double atmosphere) {
        switch (name) {
            case "pressure" -> {
                pressure = once(pressure, place, name);
                toGauge = pressureUnit(unit, atmosphere);
            }
            case "temperature", "temp" -> {
                temperature = once(temperature, place, name);
                temperatureUnit =
                        QuantityReader.read("1 " + unit, Kind.TEMPERATURE).unit();
            }
            case "burner", "heater" -> burner = once(burner, place, name);
            default -> {
                time = once(time, place, name);
                boolean clock = unit.isEmpty() || name.startsWith("date") || "clock".equals(name);
                timeUnit = clock
                        ? null
                        : QuantityReader.read("1 " + unit, Kind.DURATION).unit();
            }
        }
    }

    private static int once(int before, int place, String name) {
        if (before >= 0) {
            throw new IllegalArgumentException("there are two columns for the " + name + "; keep one");
        }
        return place;
    }

    private static DoubleUnaryOperator pressureUnit(String unit, double atmosphere) {
        if (unit.isEmpty()) {
            throw new IllegalArgumentException(
                    "the column of the pressure has no unit; name it such as 'pressure_bar' or 'pressure (psi)'");
        }
        Pressure one = QuantityReader.pressure("1 " + unit.replace('_', ' '));
        double factor = one.value();
        double zero = one.reference() == Pressure.Reference.ABSOLUTE ? atmosphere : 0;
        return value -> value * factor - zero;
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
        return cell(row, time);
    }

    /** The time (s) of a column with a unit. */
    double seconds(List<String> row) {
        return timeUnit.toSi(numbers.read("time", cell(row, time)));
    }

    /** The pressure (Pa, gauge), NaN if the cell is empty. */
    double gauge(List<String> row) {
        String text = cell(row, pressure);
        return text.isEmpty()
                ? Double.NaN
                : checked(
                        "pressure",
                        ReadingRange.LOGGED_PRESSURE,
                        toGauge.applyAsDouble(numbers.read("pressure", text)),
                        text);
    }

    /** The temperature (K), NaN if there is none. */
    double temperature(List<String> row) {
        String text = cell(row, temperature);
        return text.isEmpty()
                ? Double.NaN
                : checked(
                        "temperature",
                        ReadingRange.LOGGED_TEMPERATURE,
                        temperatureUnit.toSi(numbers.read("temperature", text)),
                        text);
    }

    private static double checked(String field, ReadingRange range, double value, String text) {
        try {
            return range.checked(value, text, "; leave the cell empty where there is no reading");
        } catch (IllegalArgumentException outside) {
            throw new IllegalArgumentException(field + ": " + outside.getMessage(), outside);
        }
    }

    boolean burner(List<String> row) {
        String text = cell(row, burner).toLowerCase(Locale.ROOT);
        return switch (text) {
            case "on", "1", "true", "yes" -> true;
            case "", "off", "0", "false", "no" -> false;
            default ->
                throw new IllegalArgumentException(
                        "burner: " + Printable.quote(text) + " is neither on nor off; write on or off, or 1 or 0");
        };
    }

    private static String cell(List<String> row, int place) {
        return place < 0 || place >= row.size() ? "" : row.get(place).strip();
    }
}
