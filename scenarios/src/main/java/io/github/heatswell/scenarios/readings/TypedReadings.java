package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A list of readings that somebody types line by line, each of which is understood as it comes. Immutable.
 */
public final class TypedReadings {

    private static final Pattern CLOCK = Pattern.compile("(\\d\\d)(:\\d\\d.*)");

    private static final TypedReadings NONE = new TypedReadings(List.of(), Optional.empty(), Double.POSITIVE_INFINITY);

    /** What a terminal would act on if the list were shown, but a tab. */
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\t]]");
    /** More (Pa) than any house has. */
    private static final double TOO_MUCH = 25e5;

    /** So far (Pa) below others a reading is asked about. Our own judgement. */
    private static final double FAR = 1e5;
    /** So far (Pa) a pressure seldom goes from one reading to the next and back. Our own judgement. */
    private static final double ONE_STEP = 3e5;

    private static final String HEADING = "Gauge readings, ";

    private final List<String> lines;
    private final Optional<String> unit;
    /** What no gauge of the house should show (Pa). */
    private final double alarming;

    private TypedReadings(List<String> lines, Optional<String> unit, double alarming) {
        this.lines = List.copyOf(lines);
        this.unit = unit;
        this.alarming = alarming;
    }

    /**
     * No line yet.
     *
     * @return a list to add to
     */
    public static TypedReadings none() {
        return NONE;
    }

    /**
     * A list that was typed before.
     *
     * @param text its lines, as {@link #text()} made them
     * @return the list
     * @throws InvalidReadingsException if a line of it cannot be understood
     */
    public static TypedReadings of(String text) {
        TypedReadings typed = NONE;
        for (String line : text.lines().filter(one -> !one.isBlank()).toList()) {
            typed = line.startsWith(HEADING) ? typed.in(line.substring(HEADING.length())) : typed.with(line);
        }
        return typed;
    }

    /**
     * The same in a unit that stands beside no pressure.
     *
     * @param symbol such as {@code psi}
     * @return the list
     */
    public TypedReadings in(String symbol) {
        return new TypedReadings(lines, Optional.of(symbol), alarming);
    }

    /**
     * The same, where it is asked about a pressure that the relief valve of the house should not let come about.
     *
     * @param pascal the least such pressure (Pa, gauge)
     * @return the list
     */
    public TypedReadings doubtingFrom(double pascal) {
        return new TypedReadings(lines, unit, pascal);
    }

    /**
     * The same with one more line.
     *
     * @param line a time, a pressure and possibly what was seen, as in {@code 6:45 am 61 psi heater came on}; or a note alone
     * @return the list
     * @throws InvalidReadingsException if the line cannot be understood after those before, or no unit is known; the list is as before
     */
    public TypedReadings with(String line) {
        TypedReadings more = new TypedReadings(
                Stream.concat(
                                lines.stream(),
                                Stream.of(CONTROL.matcher(line).replaceAll("").strip()))
                        .toList(),
                unit,
                alarming);
        if (WrittenLength.complaint(line, "line").isPresent() || PaperList.isNoTime(line.strip())) {
            PaperList.read(more.lines, unit); // refuses it, also before the first reading
        }
        more.table();
        return more;
    }

    /**
     * The same without the line typed last.
     *
     * @return the list; itself if there is none
     */
    public TypedReadings withoutLast() {
        return lines.isEmpty() ? this : new TypedReadings(lines.subList(0, lines.size() - 1), unit, alarming);
    }

    /**
     * How many lines there are.
     *
     * @return 0 or more
     */
    public int lines() {
        return lines.size();
    }

    /**
     * How many of them hold a pressure.
     *
     * @return 0 or more
     */
    public int readings() {
        return table().map(table -> table.rough().size()).orElse(0);
    }

    /** The list as a table; empty while no line holds a pressure. */
    private Optional<PaperList.Table> table() {
        return PaperList.looksLike(lines) ? Optional.of(PaperList.read(lines, unit)) : Optional.empty();
    }

    /**
     * What is wrong with a line that was refused, in its own words: a fault may show in a line before.
     *
     * @param refused what was thrown
     * @return a sentence without capital and point
     */
    public String complaint(InvalidReadingsException refused) {
        Fault fault = refused.faults().get(0);
        int line = fault.at().line();
        return line <= lines.size()
                ? "with this line, " + Printable.quote(lines.get(line - 1)) + " is no longer clear: " + fault.message()
                : fault.message();
    }

    /**
     * How the last line was taken.
     *
     * @return such as {@code 06:45, 61 psi; 'heater came on': the heater came on}
     */
    public String taken() {
        String last = lines.get(lines.size() - 1);
        Optional<PaperList.Table> table = table();
        if (table.isEmpty()) {
            return (LogNotes.saySomething(last) ? note(last) : "a heading") + missed(last);
        }
        String[] rows = table.get().csv().split("\n", -1);
        String[] cells = rows[lines.size()].split(",", 3);
        String words = cells[2].replaceAll("^\"|\"$", "").replace("\"\"", "\"");
        String pressure = cells[1].isEmpty()
                ? ""
                : ", " + cells[1] + " "
                        + rows[0].split(",")[1].replace("pressure_", "").replace('_', ' ');
        boolean aClock = rows[0].startsWith("time");
        String time = aClock ? clock(cells[0].replaceFirst("(\\d\\d:\\d\\d):00$", "$1")) : cells[0];
        String read = time + pressure + (pressure.isEmpty() ? "" : doubt(pressure.substring(2)) + slip(rows));
        return Stream.of(read, words.isEmpty() ? "" : note(words) + (pressure.isEmpty() ? missed(words) : ""))
                .filter(one -> !one.isEmpty())
                .reduce((one, other) -> one + "; " + other)
                .orElse("");
    }

    /** A time of day as the list has it: with am or pm if any line of it has. */
    private String clock(String time) {
        Matcher parts = CLOCK.matcher(time);
        if (!parts.matches() || !PaperList.hasHalves(lines)) {
            return time;
        }
        int hour = Integer.parseInt(parts.group(1));
        return (hour + 11) % 12 + 1 + parts.group(2) + (hour < 12 ? " am" : " pm");
    }

    private String doubt(String pressure) {
        double read = QuantityReader.pressure(pressure).value();
        return read <= Math.min(TOO_MUCH, alarming)
                ? ""
                : " (more than " + (read > TOO_MUCH ? "any house has" : "the relief valve should let it rise to")
                        + ": is it right? Type back to take it back)";
    }

    /** Asks once about a reading far from those beside it where no draw is noted: this one, or the one before now that it has both. */
    private static String slip(String[] rows) {
        String unit = rows[0].split(",")[1].replace("pressure_", "").replace('_', ' ');
        List<String> numbers = new ArrayList<>();
        List<Double> pascals = new ArrayList<>();
        List<Boolean> drawn = new ArrayList<>();
        boolean draw = false;
        for (String row : List.of(rows).subList(1, rows.length)) {
            String[] cells = row.split(",", 3);
            DrawNote note = cells.length < 3 ? DrawNote.NONE : DrawNote.of(cells[2]);
            draw |= note == DrawNote.BEFORE_THE_READING || note == DrawNote.AFTER_THE_READING;
            if (cells.length == 3 && !cells[1].isEmpty()) {
                numbers.add(cells[1]);
                pascals.add(QuantityReader.pressure(cells[1] + " " + unit).value());
                drawn.add(draw);
                draw = note == DrawNote.AFTER_THE_READING;
            }
        }
        int last = pascals.size() - 1;
        if (isLowest(pascals, drawn, last)) {
            double more = QuantityReader.pressure("1" + numbers.get(last) + " " + unit)
                    .value();
            return " (far below every line before, and no tap is noted: " + numbers.get(last) + " as written"
                    + (Math.abs(more - pascals.get(last - 1)) < ONE_STEP ? ", or 1" + numbers.get(last) : "")
                    + "? If it is wrong, type back, and the line again)";
        }
        if (last < 2 || drawn.get(last) || drawn.get(last - 1) || isLowest(pascals, drawn, last - 1)) {
            return "";
        }
        double middle = pascals.get(last - 1);
        double above = middle - Math.max(pascals.get(last - 2), pascals.get(last));
        double below = Math.min(pascals.get(last - 2), pascals.get(last)) - middle;
        return above > ONE_STEP || below > FAR
                ? " (the line before, " + numbers.get(last - 1) + " " + unit + ", is far "
                        + (above > 0 ? "above" : "below")
                        + " both this one and the one before it: is it as written? If it is wrong, type"
                        + " back twice, and both lines again)"
                : "";
    }

    private static boolean isLowest(List<Double> pascals, List<Boolean> drawn, int at) {
        return at > 0
                && !drawn.get(at)
                && pascals.subList(0, at).stream().allMatch(before -> before - pascals.get(at) > FAR);
    }

    private static String missed(String words) {
        return PaperList.missesPressure(words)
                ? " (no reading was taken from this line: to give one, type the time, then the pressure)"
                : "";
    }

    private static String note(String words) {
        return Printable.quote(words) + ": " + LogNotes.meaning(words);
    }

    /**
     * The list as a file that {@code diagnose} reads.
     *
     * @return its lines, with the unit in the first where none stands beside a pressure
     */
    public String text() {
        return Stream.concat(unit.stream().map(HEADING::concat), lines.stream())
                .map(line -> line + "\n")
                .reduce("", String::concat);
    }
}
