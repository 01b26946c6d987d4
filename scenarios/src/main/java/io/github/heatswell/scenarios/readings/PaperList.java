package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a list as people write it beside a gauge: one reading a line, a time, a pressure with or without its unit, and possibly a
 * note, such as {@code 6:45 am 78 heater came on}. It becomes a table with one row a line, which is then read like any other.
 */
final class PaperList {

    /** So many characters of a list are read, far more than anybody writes by hand. */
    static final int MAX_LENGTH = 1 << 18;

    /** So many notes are repeated in the answer. */
    private static final int MAX_NOTES = 12;

    /** {@link PressureLog#ROUGH} in words, 95 % sure. */
    private static final String ROUGHLY = "0.3 bar (4 psi)";

    private static final int HALF_A_DAY = 43_200;
    private static final int DAY = 2 * HALF_A_DAY;
    private static final int HOUR = 3_600;
    private static final int MINUTE = 60;
    private static final int NOON = 12;

    private static final Pattern LINE = Pattern.compile(
            "(?:(?<day>mon|tue|wed|thu|fri|sat|sun)(?:s|nes|rs|ur)?(?:day)?\\b[.,]?\\s+)?(?:(?<date>\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4})[,\\s]+)?"
                    + "(?:(?<hour>\\d{1,2})(?::(?<minute>\\d{2})(?::(?<second>\\d{2}))?)?"
                    + "\\s?(?<half>[ap]\\.?m\\b\\.?)|(?<clock>\\d{1,2}:\\d{2}(?::\\d{2})?)(?:\\s?(?:h|hrs|uhr)\\b)?"
                    + "|(?<word>noon|midnight)\\b)"
                    + "(?<mark>\\s*[-:=,;\u2013]\\s+|[,;\\s]\\s*)(?<rest>.*)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PRESSURE = Pattern.compile(
            "(?<about>(?:~|\u2248|(?:about|around|approx|approximately|roughly|circa|ca)\\b\\.?)\\s*)?"
                    + "(?<number>\\d{1,5}(?:[.,]\\d{1,3})?)(?<behind>.*)",
            Pattern.CASE_INSENSITIVE);
    /** What stands behind a pressure, or behind its unit, that is not quite so. */
    private static final Pattern ROUGH =
            Pattern.compile("\\s*(?:-?ish\\b|or so\\b|\\?)(?<rest>.*)", Pattern.CASE_INSENSITIVE);

    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
    private static final Pattern UNIT =
            Pattern.compile("\\s?(?<unit>\\p{L}+(?:/\\p{L}+\u00b2?)?)(?<rest>.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern ABSOLUTE =
            Pattern.compile("\\s+abs(?:olute)?\\b(?<rest>.*)", Pattern.CASE_INSENSITIVE);

    private final StringBuilder rows = new StringBuilder();
    private final List<String> headings = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Double> numbers = new ArrayList<>();
    private final List<Boolean> rough = new ArrayList<>();
    private final List<Boolean> drawn = new ArrayList<>();
    private boolean drawnSince;
    private String day = "";
    private final boolean twelveHours;
    private String date = "";
    private double last = Double.NaN;
    private boolean inferred;
    private String unit = "";
    private int firstReading;
    private int line;

    private PaperList(List<String> lines) {
        twelveHours = lines.stream()
                .map(text -> LINE.matcher(text.strip()))
                .anyMatch(parts -> parts.matches() && parts.group("half") != null);
        for (String text : lines) {
            line++;
            row(text.strip());
            rows.append('\n');
        }
    }

    /**
     * The list as a table.
     *
     * @param csv its names of columns and rows; the row of a line stands one line further down
     * @param understood how it was understood, in whole sentences, with the notes
     * @param rough of each reading whether it was said to be no more than about right
     * @param drawn of each reading whether a note says that water was drawn since the one before
     */
    record Table(String csv, String understood, List<Boolean> rough, List<Boolean> drawn) {

        /**
         * A log read from this table, with what is rough in it and where water was drawn; where rows were left out, every reading is
         * as rough, and no note is put to a reading that it may not be about.
         */
        PressureLog marked(PressureLog log) {
            boolean all = log.count() == rough.size();
            boolean[] about = new boolean[log.count()];
            boolean[] after = new boolean[log.count()];
            for (int i = 0; i < about.length; i++) {
                about[i] = all ? rough.get(i) : rough.contains(true);
                after[i] = all && drawn.get(i);
            }
            return log.roughened(about).drawn(after);
        }
    }

    /** Whether a text begins like a list: some line is a reading, and no names of columns stand above. */
    static boolean looksLike(List<String> lines) {
        Optional<String> first =
                lines.stream().map(String::strip).filter(PaperList::isReading).findFirst();
        return first.isPresent()
                && lines.stream()
                        .map(String::strip)
                        .takeWhile(text -> !text.equals(first.get()))
                        .noneMatch(text -> cells(text) > 1 && cells(text) == cells(first.get())
                                || !text.isEmpty()
                                        && Character.isDigit(text.charAt(0))
                                        && !LINE.matcher(text).matches());
    }

    private static boolean isReading(String text) {
        Matcher parts = LINE.matcher(text);
        return parts.matches() && PRESSURE.matcher(parts.group("rest")).matches();
    }

    private static int cells(String text) {
        return text.split("[,;\t]").length;
    }

    /**
     * Reads a list.
     *
     * @param lines all its lines
     * @param asked the unit of its pressures where it names none; empty if that is not known either
     * @throws InvalidReadingsException if a line cannot be understood, or no unit is known
     */
    static Table read(List<String> lines, Optional<String> asked) {
        try {
            return new PaperList(lines).table(asked);
        } catch (LineException wrong) {
            throw new InvalidReadingsException(List.of(new Fault(new Location(wrong.line, 1), wrong.getMessage())));
        }
    }

    /** Something is wrong with a line. */
    private static final class LineException extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final int line;

        LineException(int line, String message) {
            super(message);
            this.line = line;
        }
    }

    private Table table(Optional<String> asked) {
        if (unit.isEmpty() && asked.isEmpty()) {
            throw new LineException(firstReading, unitMissing());
        }
        String known = unit.isEmpty() ? asked.orElseThrow() : unit;
        if (asked.isPresent() && !unit.isEmpty() && !sameUnit(asked.get(), unit)) {
            throw new LineException(
                    firstReading,
                    "the list names its unit, " + unit + ", and the command line another, " + asked.get()
                            + "; leave one out");
        }
        return new Table(
                "time,pressure_" + known.replace(' ', '_') + "\n" + rows,
                understood(known, unit.isEmpty()),
                rough,
                drawn);
    }

    private static boolean sameUnit(String one, String other) {
        return QuantityReader.pressure("1 " + one).equals(QuantityReader.pressure("1 " + other));
    }

    private void row(String text) {
        if (text.isEmpty()) {
            return;
        }
        Matcher parts = LINE.matcher(text);
        if (!parts.matches()) {
            withoutTime(text);
            return;
        }
        String time = time(parts);
        String rest = parts.group("rest").strip();
        Matcher pressure = PRESSURE.matcher(rest);
        if (pressure.matches()) {
            reading(time, pressure, parts.group("mark").contains(","));
        } else {
            note(time, rest, true);
        }
    }

    private void withoutTime(String text) {
        if (Character.isDigit(text.charAt(0))) {
            throw refused(Printable.quote(text)
                    + " does not begin with a time of day; write each reading on a line of its own,"
                    + " such as '6:45 am 78 psi'");
        }
        if (firstReading == 0) {
            headings.add(text);
            List<String> units = Pattern.compile("[^\\p{L}\\p{N}/\u00b2]+")
                    .splitAsStream(text)
                    .filter(PaperList::isPressureUnit)
                    .toList();
            units.forEach(this::unit);
        } else {
            note("", text, true);
        }
    }

    private void reading(String time, Matcher pressure, boolean comma) {
        String number = pressure.group("number");
        boolean about = pressure.group("about") != null;
        Matcher close = ROUGH.matcher(pressure.group("behind"));
        about |= close.matches();
        String behind = close.matches() ? close.group("rest") : pressure.group("behind");
        int mark = number.indexOf(',');
        if (comma && mark >= 0) {
            behind = number.substring(mark) + behind;
            number = number.substring(0, mark);
        }
        Matcher word = UNIT.matcher(behind);
        boolean attached = !behind.isEmpty() && !Character.isWhitespace(behind.charAt(0));
        if (word.matches() && isPressureUnit(word.group("unit"))) {
            behind = absolute(word.group("unit"), word.group("rest"));
            Matcher unsure = ROUGH.matcher(behind);
            about |= unsure.matches();
            behind = unsure.matches() ? unsure.group("rest") : behind;
        } else if (word.matches() && isTemperature(word.group("unit"))
                || attached && !behind.matches("[,;:.\u2013-](?:\\s.*|\\D.*)?")) {
            throw refused(
                    Printable.quote(number + behind) + " is not a pressure; write the pressure right behind the time,"
                            + " with its unit if it has one, and any note behind it");
        }
        firstReading = firstReading == 0 ? line : firstReading;
        rough.add(about);
        drawn.add(drawnSince || DrawNote.of(behind) == DrawNote.BEFORE_THE_READING);
        drawnSince = DrawNote.of(behind) == DrawNote.AFTER_THE_READING;
        numbers.add(Double.parseDouble(number.replace(',', '.')));
        rows.append(time).append(',').append(number.replace(',', '.'));
        note(time, behind, false);
    }

    /** Notices the unit, with the word absolute if it follows. */
    private String absolute(String found, String behind) {
        Matcher absolute = ABSOLUTE.matcher(behind);
        boolean has = absolute.matches();
        unit(has ? found + " abs" : found);
        return has ? absolute.group("rest") : behind;
    }

    private void unit(String found) {
        String lower = found.toLowerCase(Locale.ROOT);
        if (!unit.isEmpty() && !sameUnit(unit, lower)) {
            throw refused("pressures are in " + unit + " before and in " + lower + " here; write all in one unit");
        }
        unit = lower;
    }

    /** Keeps a note; one on a line of its own is about the time before the next reading. */
    private void note(String time, String behind, boolean alone) {
        String words = behind.replaceFirst("^[\\s,;:.\u2013-]+", "").strip();
        if (!words.isEmpty()) {
            drawnSince |= alone && DrawNote.of(words) != DrawNote.NONE;
            notes.add((time.isEmpty() ? "" : time.replaceFirst(":00$", "") + " ") + Printable.quote(words));
        }
    }

    /** The time of a line as the clock of a log reads it. */
    private String time(Matcher parts) {
        String on = parts.group("date") == null ? "" : parts.group("date");
        double seconds = clock(parts);
        if (on.equals(date)) {
            seconds = afterLast(parts, seconds);
            followDay(parts, seconds);
        }
        day = parts.group("day") == null
                ? seconds < last ? "" : day
                : parts.group("day").toLowerCase(Locale.ROOT);
        date = on;
        last = seconds;
        int whole = (int) seconds;
        String clock =
                String.format(Locale.ROOT, "%02d:%02d:%02d", whole / HOUR, whole / MINUTE % MINUTE, whole % MINUTE);
        return on.isEmpty() ? clock : on + " " + clock;
    }

    /** Without a date a list goes on from one reading to the next within hours; a day of the week must say the same. */
    private void followDay(Matcher parts, double seconds) {
        if (parts.group("day") == null || day.isEmpty() || parts.group("date") != null) {
            return;
        }
        int later = Math.floorMod(DAYS.indexOf(parts.group("day").toLowerCase(Locale.ROOT)) - DAYS.indexOf(day), 7);
        if (later != (seconds < last ? 1 : 0)) {
            throw refused("this reading is not within a day of the one before; write the date before each time, such as"
                    + " '2026-03-01 6:45 am 78 psi'");
        }
    }

    private double clock(Matcher parts) {
        if (parts.group("word") != null) {
            return parts.group("word").equalsIgnoreCase("noon") ? NOON * HOUR : 0;
        }
        try {
            return parts.group("half") == null
                    ? ClockTime.read(parts.group("clock"))
                    : ClockTime.read(parts.group("hour") + ":" + or(parts.group("minute"), "00") + ":"
                            + or(parts.group("second"), "00") + " "
                            + parts.group("half").charAt(0) + "m");
        } catch (IllegalArgumentException wrong) {
            throw refused("time: " + wrong.getMessage());
        }
    }

    private static String or(String text, String otherwise) {
        return text == null ? otherwise : text;
    }

    /** In a list with am and pm, a time without goes on from the one before: after 11:50 am, 12:10 is past noon. */
    private double afterLast(Matcher parts, double seconds) {
        boolean open = twelveHours
                && parts.group("half") == null
                && parts.group("word") == null
                && seconds < (NOON + 1) * HOUR;
        if (open && Double.isNaN(last)) {
            throw refused("write am or pm behind the first time, as behind others");
        }
        if (open) {
            inferred = true;
            double other = (seconds + HALF_A_DAY) % DAY;
            return ahead(other) < ahead(seconds) ? other : seconds;
        }
        if (ahead(seconds) > HALF_A_DAY) {
            throw refused("this time is earlier than the one before; put the readings in order, and write am or pm, or"
                    + " hours from 0 to 23");
        }
        return seconds;
    }

    /** How long (s) after the last reading a time comes. */
    private double ahead(double seconds) {
        return Double.isNaN(last) ? 0 : (seconds - last + DAY) % DAY;
    }

    private String unitMissing() {
        double highest = numbers.stream().mapToDouble(number -> number).max().orElseThrow();
        List<String> fitting = List.of("psi", "bar", "kPa").stream()
                .filter(name -> {
                    double peak = highest * QuantityReader.pressure("1 " + name).value();
                    return peak >= LogMarks.USUAL_LEAST && peak <= LogMarks.USUAL_MOST;
                })
                .toList();
        String advice = fitting.size() == 1
                ? "; a highest reading of " + plain(highest) + " only makes sense in " + fitting.get(0)
                        + ": if the gauge shows " + fitting.get(0) + ", add --pressure-unit " + fitting.get(0)
                : "; look at the gauge and write it behind the first pressure, or add --pressure-unit psi, bar or kPa";
        return "no unit stands beside the pressures" + advice;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    private String understood(String known, boolean wasAsked) {
        StringBuilder text = new StringBuilder("Each line was read as a time and a pressure ("
                + known + (wasAsked ? ", as you said" : "") + (known.endsWith(" abs") ? "" : ", as a gauge shows it")
                + ")"
                + (notes.isEmpty() ? "." : ", and the words after them as a note."));
        headings.forEach(
                heading -> text.append(" ").append(Printable.quote(heading)).append(" was taken as a heading."));
        if (inferred) {
            text.append(" A time without am or pm was taken as the next such time after the line before.");
        }
        if (rough.contains(true)) {
            text.append(" What you marked as about right (about, or so, ~, ish, ?) may be off by " + ROUGHLY
                    + " more than" + " the rest.");
        }
        text.append(notes(" Your notes of water use, taken as water drawn between two readings: ", true))
                .append(notes(
                        " Your " + (drawn.contains(true) ? "other " : "")
                                + "notes, which change nothing in the answer: ",
                        false));
        return text.toString();
    }

    private String notes(String about, boolean ofDraws) {
        List<String> all = notes.stream()
                .filter(note -> ofDraws == (DrawNote.of(note) != DrawNote.NONE))
                .toList();
        return all.isEmpty()
                ? ""
                : about
                        + String.join("; ", all.subList(0, Math.min(MAX_NOTES, all.size())))
                        + (all.size() > MAX_NOTES ? "; and " + (all.size() - MAX_NOTES) + " more." : ".");
    }

    private LineException refused(String message) {
        return new LineException(line, message);
    }

    private static boolean isPressureUnit(String word) {
        return LogHeading.isPressure(word.toLowerCase(Locale.ROOT));
    }

    private static boolean isTemperature(String word) {
        return LogHeading.is(word, Kind.TEMPERATURE);
    }
}
