package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    private static final String SEPARATOR = "[,;\t]";

    /** {@link PressureLog#ROUGH} in words, 95 % sure, by the unit of a list. */
    private static final Map<String, String> ROUGHLY = Map.of("psi", "4 psi", "kPa", "30 kPa");

    private static final Pattern LINE = Pattern.compile(
            "(?:(?:in the |the |this |that )?(?<part>ne?xt (?:mornin(?:g|'|\\b)|day)|(?:last thing )?at night|mornin(?:g|'|\\b))(?: at\\b)?(?:, before anybody uses water)?[.,:]?\\s+)?"
                    + "(?:(?<day>mon|tue|wed|thu|fri|sat|sun)(?:s|nes|rs|ur)?(?:day)?\\b[.,]?\\s+)?(?:(?<date>\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4})[,\\s]+)?"
                    + "(?:(?<hour>\\d{1,2})(?:[:.]?(?<minute>\\d{2})(?::(?<second>\\d{2}))?)?"
                    + "\\s?(?<half>[ap]\\.?m\\b\\.?)|(?<clock>\\d{1,2}[:hH]\\d{2}(?::\\d{2})?|\\d{1,2}\\.\\d{2}(?=\\s))(?:\\s?(?:h|hrs|uhr)\\b)?"
                    + "|(?<minutes>\\d{1,4})\\s?min(?:utes|uten|utos|uti)?\\b"
                    + "|(?<word>noon|midnight)\\b)"
                    + "(?<mark>\\s*[-:=,;\u2013]\\s+|[,;\\s]\\s*)(?<rest>.*)",
            Pattern.CASE_INSENSITIVE);
    /** What is left of a time of day that has nothing after it. */
    private static final Pattern HALF_ALONE = Pattern.compile("[ap]\\.?m\\.?", Pattern.CASE_INSENSITIVE);

    /** A time that somebody does not know exactly. */
    private static final Pattern HESITANT = Pattern.compile(
            "^(?:~|(?:about|around|approx|approximately|roughly|circa|ca|maybe)\\b\\.?)\\s*"
                    + "(?=\\d{1,2}(?:[:.h]\\d{2}\\b|\\s?[ap]\\.?m\\b))",
            Pattern.CASE_INSENSITIVE);

    /** A date without its year before a time, possibly behind a day of the week. */
    private static final Pattern DATE = Pattern.compile(
            "^(?<day>(?:mon|tue|wed|thu|fri|sat|sun)(?:s|nes|rs|ur)?(?:day)?\\b[.,]?\\s+)?"
                    + "(?<date>\\d{1,2}[/-]\\d{1,2}|\\d{1,2}\\.\\d{1,2}\\.|MONTH\\s\\d{1,2}(?:st|nd|rd|th)?|\\d{1,2}\\.?\\sMONTH)"
                            .replace("MONTH", "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)(?!be )\\p{L}*\\.?")
                    + "[,:;]?\\s+(?:at\\s+)?(?=\\d{1,2}(?:[:.h]\\d{2}\\b|\\s?[ap]\\.?m\\b)|\\d{3,4}\\s?[ap]\\.?m\\b|noon\\b|midnight\\b)",
            Pattern.CASE_INSENSITIVE);
    /** A pressure with its unit anywhere in a line. */
    private static final Pattern WITH_UNIT = Pattern.compile("\\d\\s?(\\p{L}+)");

    /** A pressure before its time. */
    private static final Pattern SWAPPED = Pattern.compile(
            "^(\\d+(?:[.,]\\d+)?\\s*\\p{L}*)\\s+(?:at|um|\u00e0|a las|om|alle)\\s+(\\d{1,2}[:.h]\\d{2}(?:\\s?[ap]\\.?m\\b\\.?)?)",
            Pattern.CASE_INSENSITIVE);

    /** From one time to another, which tells of what happened until then. */
    private static final Pattern SPAN = Pattern.compile(
            "^\\d{1,2}(?:[:.]\\d{2})?(?:\\s?[ap]\\.?m\\b\\.?)?\\s*(?:-|\u2013|to|until|till)\\s*"
                    + "(\\d{1,2}(?:[:.]\\d{2}(?:\\s?[ap]\\.?m\\b\\.?)?|\\s?[ap]\\.?m\\b\\.?)\\s+\\p{L})",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern PRESSURE = Pattern.compile(
            "(?<about>(?:~|\u2248|(?:about|around|approx|approximately|roughly|circa|ca)\\b\\.?)\\s*)?"
                    + "(?<number>\\d{1,5}(?:[.,]\\d{1,3})?)!*(?<behind>.*)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NEGATIVE = Pattern.compile("[-\u2212\u2013]\\d.*");
    /** Halves and quarters behind a whole number, but for what measures a pipe or the turn of a valve. */
    private static final Pattern FRACTION = Pattern.compile(
            "(?:\\s+|-)(?:(?<part>[1-3])/(?<of>[24])|(?<word>and (?:a|one)[ -](?:half|quarter)))(?![\\d/]|[ -]?(?:in\\b|inch|turn|\"|full|open))"
                    + "(?<rest>.*)",
            Pattern.CASE_INSENSITIVE);
    /** What stands behind a pressure, or behind its unit, that is not quite so. */
    private static final Pattern ROUGH =
            Pattern.compile("\\s*(?:-?ish\\b|or so\\b|\\?)(?<rest>.*)", Pattern.CASE_INSENSITIVE);

    private static final Pattern UNIT =
            Pattern.compile("\\s?(?<unit>\\p{L}+(?:/\\p{L}+[2\u00b2]?)?)(?<rest>.*)", Pattern.CASE_INSENSITIVE);
    /** What may be seen of relief pipe or heater, and the pressure behind it: of anything else it may be a plate's or a vessel's. */
    private static final Pattern SEEN_FIRST = Pattern.compile(
            "(?<seen>(?:(?:not?|still|it'?s?|is|the|relief|pipe|valve|started|stopped|just|now|yet|heater|burner|on|off|came|went|and|at"
                    + "|drips?|dripping|dry|wet)[\\s,;:]+)+)(?<pressure>\\d{1,5}(?:[.,]\\d{1,3})?\\s?(?<unit>\\p{L}+)\\b.*)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern ABSOLUTE =
            Pattern.compile("\\s+abs(?:olute)?\\b(?<rest>.*)", Pattern.CASE_INSENSITIVE);

    private final StringBuilder rows = new StringBuilder();
    private final List<String> headings = new ArrayList<>();
    private final List<Double> numbers = new ArrayList<>();
    private final List<Boolean> rough = new ArrayList<>();
    private final PaperClock clock;
    private String unit = "";
    private String date = "";
    private String missed = "";
    private boolean noted;
    private boolean sinceBeginning;
    private int firstReading;
    private int line;

    private PaperList(List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            Optional<String> tooLong = WrittenLength.complaint(lines.get(i), "line");
            if (tooLong.isPresent()) {
                throw new LineException(i + 1, tooLong.get());
            }
        }
        clock = new PaperClock(hasHalves(lines));
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
     */
    record Table(String csv, String understood, List<Boolean> rough) {

        /**
         * A log read from this table, with what is rough in it; where rows were left out, every reading is as rough.
         */
        PressureLog marked(PressureLog log) {
            boolean all = log.count() == rough.size();
            boolean[] about = new boolean[log.count()];
            for (int i = 0; i < about.length; i++) {
                about[i] = all ? rough.get(i) : rough.contains(true);
            }
            return log.roughened(about);
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
                        .noneMatch(text ->
                                cells(text) > 1 && cells(text) == cells(first.get()) && !startsWithReading(first.get())
                                        || !text.isEmpty()
                                                && Character.isDigit(text.charAt(0))
                                                && !LINE.matcher(timeFirst(text))
                                                        .matches());
    }

    /** Whether some line says am or pm after its time. */
    static boolean hasHalves(List<String> lines) {
        return lines.stream()
                .map(text -> LINE.matcher(timeFirst(text.strip())))
                .anyMatch(parts -> parts.matches() && parts.group("half") != null);
    }

    private static boolean isReading(String text) {
        Matcher parts = LINE.matcher(timeFirst(text));
        return parts.matches()
                && PRESSURE.matcher(pressureFirst(parts.group("rest").strip())).matches();
    }

    /** Whether time and pressure stand before the first comma of a line, which a table has between them. */
    private static boolean startsWithReading(String line) {
        return isReading(line.split(SEPARATOR, 2)[0]);
    }

    /** What stands behind a time, with its pressure before what was seen of relief pipe or heater. */
    private static String pressureFirst(String rest) {
        Matcher seen = SEEN_FIRST.matcher(rest);
        return seen.matches() && isPressureUnit(seen.group("unit"))
                ? seen.group("pressure") + " " + seen.group("seen")
                : rest;
    }

    private static String timeFirst(String text) {
        String time =
                HESITANT.matcher(DATE.matcher(text).replaceFirst("${day}")).replaceFirst("");
        return SPAN.matcher(SWAPPED.matcher(time).replaceFirst("$2 $1 ")).replaceFirst("$1");
    }

    /** Whether a line begins with a number that is no time with something after it, so that no list can hold it. */
    static boolean isNoTime(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(0)) && !isTimed(LINE.matcher(timeFirst(text)));
    }

    private static boolean isTimed(Matcher parts) {
        return parts.matches()
                && !HALF_ALONE.matcher(parts.group("rest").strip()).matches();
    }

    /** Whether a line in which no reading was found holds a pressure with its unit that is nothing seen of vessel or tap. */
    static boolean missesPressure(String text) {
        return SpotNote.of(text).isEmpty()
                && WITH_UNIT.matcher(text).results().anyMatch(found -> isPressureUnit(found.group(1)));
    }

    private static int cells(String text) {
        return text.split(SEPARATOR).length;
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
            InvalidReadingsException.UnitMissing missing = new InvalidReadingsException.UnitMissing(unitMissing());
            throw new InvalidReadingsException(new Fault(new Location(firstReading, 1), missing.getMessage()), missing);
        }
        String known = unit.isEmpty() ? asked.orElseThrow() : unit;
        if (asked.isPresent() && !unit.isEmpty() && !sameUnit(asked.get(), unit)) {
            throw new LineException(
                    firstReading,
                    "the list names its unit, " + unit + ", and another was given beside it, " + asked.get()
                            + "; leave one out");
        }
        return new Table(
                (sinceBeginning ? "elapsed" : "time") + ",pressure_" + known.replace(' ', '_') + ",note\n" + rows,
                understood(known, unit.isEmpty()),
                rough);
    }

    private static boolean sameUnit(String one, String other) {
        return QuantityReader.pressure("1 " + one).equals(QuantityReader.pressure("1 " + other));
    }

    private void row(String line) {
        if (line.isEmpty()) {
            return;
        }
        String text = timeFirst(line);
        follow(DATE.matcher(line));
        Matcher parts = LINE.matcher(text);
        if (!isTimed(parts)) {
            withoutTime(text);
            return;
        }
        String time = time(parts);
        sinceBeginning |= parts.group("minutes") != null;
        if (sinceBeginning && parts.group("minutes") == null) {
            throw refused("some lines have minutes, and this one has a time of day; use one of them throughout");
        }
        String rest = parts.group("rest").strip();
        if (NEGATIVE.matcher(rest).matches()) {
            throw refused(Printable.quote(rest)
                    + " begins with a dash: put a space after it if it only separates time and pressure; for a gauge below 0, write 0 and a"
                    + " note");
        }
        Matcher pressure = PRESSURE.matcher(pressureFirst(rest));
        if (pressure.matches()) {
            boolean about = HESITANT.matcher(line).find() || pressure.group("about") != null;
            reading(time, pressure, about, parts.group("mark").contains(","));
        } else {
            cells(time, "", rest);
        }
    }

    /** A date without its year can only say that a line is of the same day as before; days of the week say more. */
    private void follow(Matcher dated) {
        if (!dated.find()) {
            return;
        }
        String on = dated.group("date").toLowerCase(Locale.ROOT);
        if (dated.group("day") == null && !date.isEmpty() && !date.equals(on)) {
            throw refused(
                    "this is another date than before, without its year; write 'next day' in its place, or the whole date"
                            + " before each time, such as '2026-03-01 6:45 am 78 psi'");
        }
        date = on;
    }

    private String time(Matcher parts) {
        try {
            return clock.read(parts);
        } catch (IllegalArgumentException wrong) {
            throw refused(wrong.getMessage());
        }
    }

    private void withoutTime(String text) {
        if (Character.isDigit(text.charAt(0))) {
            throw refused(Printable.quote(text)
                    + " is not a time of day with a pressure after it; write each reading on a line of its own,"
                    + " such as '6:45 am 78 psi'");
        }
        if (firstReading == 0 && !LogNotes.saySomething(text)) {
            headings.add(text);
            List<String> units = Pattern.compile("[^\\p{L}\\p{N}/\u00b2]+")
                    .splitAsStream(text)
                    .filter(PaperList::isPressureUnit)
                    .toList();
            units.forEach(this::unit);
        } else {
            missed += missesPressure(text)
                    ? " No reading was taken from " + Printable.quote(text) + ", which has no time."
                    : "";
            cells("", "", text);
        }
    }

    private void reading(String time, Matcher pressure, boolean hedged, boolean comma) {
        boolean about = hedged;
        String number = pressure.group("number");
        String behind = pressure.group("behind");
        Matcher fraction = FRACTION.matcher(behind);
        if (fraction.matches() && number.matches("\\d+")) {
            number = String.valueOf(Integer.parseInt(number) + part(fraction));
            behind = fraction.group("rest");
        }
        Matcher close = ROUGH.matcher(behind);
        about |= close.matches();
        behind = close.matches() ? close.group("rest") : behind;
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
            throw refused(Printable.quote(number + behind)
                    + " is not a pressure; write the pressure right after the time, with its unit"
                    + " if it has one, and any note after that");
        }
        firstReading = firstReading == 0 ? line : firstReading;
        rough.add(about);
        numbers.add(Double.parseDouble(number.replace(',', '.')));
        cells(time, number.replace(',', '.'), behind);
    }

    private static double part(Matcher fraction) {
        return fraction.group("word") == null
                ? Double.parseDouble(fraction.group("part")) / Double.parseDouble(fraction.group("of"))
                : fraction.group("word").toLowerCase(Locale.ROOT).endsWith("half") ? 0.5 : 0.25;
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
            throw refused("pressures are in " + unit + " before and in " + lower + " here; use one unit throughout");
        }
        unit = lower;
    }

    /** A row of the table. */
    private void cells(String time, String number, String behind) {
        String words = behind.replaceFirst("^[\\s,;:.\u2013-]+", "").strip();
        rows.append(time)
                .append(',')
                .append(number)
                .append(",\"")
                .append(words.replace("\"", "\"\""))
                .append('"');
        noted |= !words.isEmpty();
    }

    private String unitMissing() {
        double highest = numbers.stream().mapToDouble(number -> number).max().orElseThrow();
        List<String> fitting = GaugeUnits.fitting(highest);
        String advice = fitting.size() == 1
                ? "; a highest reading of " + plain(highest) + " only makes sense in " + fitting.get(0)
                        + ": if the gauge shows " + fitting.get(0) + ", write it after the first pressure"
                : "; look at the gauge and write it, psi, bar or kPa, after the first pressure";
        return "the pressures have no unit" + advice;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    private String understood(String known, boolean wasAsked) {
        StringBuilder text = new StringBuilder("Each line was read as a time and a pressure ("
                + LogHeader.spelt(known) + (wasAsked ? ", as you said" : "")
                + (QuantityReader.pressure("1 " + known).reference() == Pressure.Reference.ABSOLUTE
                        ? ", absolute"
                        : ", as a gauge shows it")
                + ")"
                + (noted ? ", and the words after them as a note." : "."));
        headings.forEach(
                heading -> text.append(" ").append(Printable.quote(heading)).append(" was taken as a heading."));
        if (clock.isInferred()) {
            text.append(" A time without am or pm was taken as the next such time after the line before.");
        }
        if (rough.contains(true)) {
            text.append(" What you marked as about right (about, or so, ~, ish, ?) may be off by "
                    + ROUGHLY.getOrDefault(LogHeader.spelt(known), "0.3 bar") + " more than the rest.");
        }
        return text.append(missed).toString();
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
