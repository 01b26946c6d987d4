package io.github.heatswell.scenarios.readings;

import io.github.heatswell.charts.table.RowReader;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.readings.LogHeading.Quantity;
import io.github.heatswell.scenarios.readings.LogRows.CellException;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.UnitSystem;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Reads the file of a pressure logger: delimited text in UTF-8 with a first line that names the columns and their units, such as
 * {@code time_s,pressure_bar} or {@code time;pressure (psi);temperature (F);burner}. Other names are understood by their words and
 * units, and lines above the names are skipped; both are said. Times are numbers with a unit, dates with times, or times on a clock,
 * which may pass midnight. A list without names of columns, as people write it, is read as {@link PaperList} says. With a semicolon or a tab between the columns decimals may have a comma. Files of any
 * length are read in bounded memory.
 */
public final class LogReader {

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int HEADER = 4_096;
    /** So many lines, at most, may stand above the one that names the columns. */
    private static final int MAX_SKIPPED = 40;

    /** A row of a time and two numbers or more. */
    private static final Pattern NAMELESS = Pattern.compile(
            "[\"\\s]*\\d[\\d\\s:./T-]*(?:[ap]m)?\"?([,;\t|])[\"\\s]*[-+]?(?:(?!\\1)[\\d.,])++\"?(?:\\1[\"\\s]*[-+]?(?:(?!\\1)[\\d.,])++\"?)+\\s*");

    private LogReader() {}

    /**
     * Reads a log.
     *
     * @param file the file
     * @param atmosphere the absolute pressure (Pa) of the air at the gauge, for columns in absolute pressure
     * @return the log and remarks about the file
     * @throws InvalidReadingsException if the file cannot be understood; the message names the line
     * @throws IOException if the file cannot be read
     */
    public static LogFile read(Path file, double atmosphere) throws IOException {
        return read(file, atmosphere, LogHints.NONE);
    }

    /**
     * The same, where a person adds to what the file says.
     *
     * @param file the file
     * @param atmosphere the absolute pressure (Pa) of the air at the gauge, for columns in absolute pressure
     * @param hints what the file does not say, or says wrongly
     * @return the log and remarks about the file
     * @throws InvalidReadingsException if the file cannot be understood; the message names the line
     * @throws IOException if the file cannot be read
     */
    public static LogFile read(Path file, double atmosphere, LogHints hints) throws IOException {
        SourceText.check(file);
        try (BufferedInputStream bytes = new BufferedInputStream(Files.newInputStream(file))) {
            LogEncoding encoding = LogEncoding.of(bytes);
            LogFile read = read(new InputStreamReader(bytes, encoding.decoder()), file, atmosphere, hints);
            return encoding.remark().map(read::remarked).orElse(read);
        } catch (CharacterCodingException wrong) {
            throw fault(1, "the text is neither UTF-8 nor Windows-1252; save the file as UTF-8");
        }
    }

    private static LogFile read(Reader decoded, Path file, double atmosphere, LogHints hints) throws IOException {
        try (BufferedReader text = new BufferedReader(decoded)) {
            if (hints.columns().isEmpty() && isPaperList(text)) {
                refuseNamelessColumns(text);
                return paperList(text, file, atmosphere, hints.unit());
            }
            Layout layout = hints.columns().isEmpty() ? layout(text) : named(text);
            String names = hints.columns()
                    .map(columns -> columns.replace(',', layout.delimiter) + "\n")
                    .orElse("");
            try (RowReader rows =
                    new RowReader(new BufferedReader(new Joined(new StringReader(names), text)), layout.delimiter)) {
                return read(rows, layout, new LogPlaces(file, layout.delimiter), atmosphere, hints.unit());
            }
        }
    }

    /** Looks ahead whether a person wrote the readings one a line, and named no columns. */
    private static boolean isPaperList(BufferedReader text) throws IOException {
        List<String> lines = ahead(text);
        return lines.stream().noneMatch(LogReader::isHeader) && PaperList.looksLike(lines);
    }

    /** A table of numbers is no list; what its columns hold only its owner knows. */
    private static void refuseNamelessColumns(BufferedReader text) throws IOException {
        List<String> lines =
                ahead(text).stream().filter(line -> !line.isBlank()).limit(2).toList();
        if (lines.stream().allMatch(line -> NAMELESS.matcher(line).matches())) {
            throw fault(
                    1,
                    "the columns have no names; name them, in order, in a first line such as"
                            + " 'time,pressure_psi,temperature_F' or by --columns time,pressure_psi,temperature_F");
        }
    }

    /** The first lines, which are still to be read. */
    private static List<String> ahead(BufferedReader text) throws IOException {
        text.mark(HEADER + 1);
        char[] start = new char[HEADER];
        int length = Math.max(0, text.read(start, 0, HEADER));
        text.reset();
        return new String(start, 0, length)
                .lines()
                .map(line -> line.replace(String.valueOf(BYTE_ORDER_MARK), ""))
                .limit(MAX_SKIPPED + 1)
                .toList();
    }

    private static LogFile paperList(BufferedReader text, Path file, double atmosphere, Optional<String> asked)
            throws IOException {
        StringBuilder all = new StringBuilder();
        for (int next = text.read(); next >= 0; next = text.read()) {
            if (all.length() == PaperList.MAX_LENGTH) {
                throw fault(
                        1,
                        "a list as long as this needs a first line that names the columns, such as 'time,pressure_psi'");
            }
            if (next != BYTE_ORDER_MARK) {
                all.append((char) next);
            }
        }
        PaperList.Table table = PaperList.read(all.toString().lines().toList(), asked);
        try (RowReader rows = new RowReader(new StringReader(table.csv()), ',')) {
            LogFile read = read(rows, new Layout(',', -1), new LogPlaces(file, '\0'), atmosphere, Optional.empty());
            String understood = Stream.concat(Stream.of(table.understood()), read.understood().stream())
                    .collect(Collectors.joining(" "));
            return new LogFile(
                    table.marked(read.log()),
                    read.spots(),
                    read.units(),
                    Optional.of(understood),
                    read.doubts(),
                    read.remarks());
        }
    }

    /**
     * How the rows are written.
     *
     * @param delimiter what parts the cells
     * @param skipped how many lines stand before the one that names the columns
     */
    private record Layout(char delimiter, int skipped) {}

    /** Goes to the line that names the columns, past the lines that many loggers write above it. */
    private static Layout layout(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != BYTE_ORDER_MARK) {
            text.reset();
        }
        text.mark(HEADER + 1);
        char[] start = new char[HEADER];
        int length = Math.max(0, text.read(start, 0, HEADER));
        text.reset();
        List<String> lines =
                new String(start, 0, length).lines().limit(MAX_SKIPPED + 1).toList();
        for (int i = 1; i < lines.size() && !isHeader(lines.get(0)); i++) {
            String line = lines.get(i);
            if (isHeader(line) && !lines.get(0).strip().toLowerCase(Locale.ROOT).startsWith("sep=")) {
                for (int j = 0; j < i; j++) {
                    text.readLine();
                }
                return new Layout(mostFrequent(line), i);
            }
        }
        return new Layout(delimiter(new String(start, 0, length)), 0);
    }

    /** Goes behind the line that names the columns, if there is one: a person names them in its place. */
    private static Layout named(BufferedReader text) throws IOException {
        List<String> lines = ahead(text);
        int header = IntStream.range(0, lines.size())
                .filter(i -> isHeader(lines.get(i)))
                .findFirst()
                .orElse(lines.isEmpty() || lines.get(0).matches("[\"\\s]*[-+]?\\d.*") ? -1 : 0);
        for (int i = 0; i <= header; i++) {
            text.readLine();
        }
        String row = lines.stream().skip(header + 1L).findFirst().orElse("");
        return new Layout(mostFrequent(row), header);
    }

    /** One text, and then another. */
    private static final class Joined extends Reader {
        private final Reader first;
        private final Reader second;
        private boolean ended;

        Joined(Reader first, Reader second) {
            this.first = first;
            this.second = second;
        }

        @Override
        public int read(char[] into, int from, int length) throws IOException {
            int read = ended ? -1 : first.read(into, from, length);
            ended |= read < 0;
            return ended ? second.read(into, from, length) : read;
        }

        @Override
        public void close() throws IOException {
            second.close();
        }
    }

    /** Whether a line names a column for the time and one for the pressure. */
    private static boolean isHeader(String line) {
        List<Optional<LogHeading>> headings = Arrays.stream(
                        line.split(Pattern.quote(String.valueOf(mostFrequent(line)))))
                .map(cell -> LogHeading.of(cell.replace("\"", "")))
                .toList();
        return Stream.of(Set.of(Quantity.TIME, Quantity.DATE), Set.of(Quantity.PRESSURE))
                .allMatch(wanted -> headings.stream()
                        .flatMap(Optional::stream)
                        .anyMatch(heading -> wanted.contains(heading.quantity())));
    }

    private static char delimiter(String start) {
        String line = start.strip().lines().findFirst().orElse("");
        if (line.isEmpty()) {
            throw fault(1, "the file is empty; the first line of a log names the columns");
        }
        if (line.indexOf('\0') >= 0) {
            throw fault(1, "the text is not UTF-8; save the file as UTF-8");
        }
        char best = mostFrequent(line);
        if (count(line, best) == 0) {
            throw fault(
                    1,
                    Printable.quote(line)
                            + " is a single column; separate columns with commas, semicolons or tabs, and name them in the first line, such"
                            + " as 'time,pressure_psi', or write a list, a reading a line, such as '6:45 am 78 psi'");
        }
        return best;
    }

    private static char mostFrequent(String line) {
        char best = ',';
        for (char candidate : new char[] {';', '\t', '|'}) {
            best = count(line, candidate) > count(line, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String line, char c) {
        return line.chars().filter(each -> each == c).count();
    }

    private static LogFile read(
            RowReader rows, Layout layout, LogPlaces places, double atmosphere, Optional<String> asked)
            throws IOException {
        long read = 0;
        try {
            List<String> header = header(rows);
            read = line(rows, layout);
            Optional<List<String>> row = next(rows);
            UnitsBelow units = UnitsBelow.of(header, row.orElse(List.of()));
            LogHeader columns = columns(units.names(), atmosphere, asked, read, places);
            LogAssembly assembly = new LogAssembly(columns, layout.delimiter != ',');
            for (row = units.ownRow() ? next(rows) : row; row.isPresent(); row = next(rows)) {
                read = line(rows, layout);
                if (!isEmpty(row.get())) {
                    assembly.add(row.get(), read);
                }
            }
            return assembly.finished(layout.skipped);
        } catch (InvalidReadingsException told) {
            throw told;
        } catch (CellException wrong) {
            throw new InvalidReadingsException(
                    new Fault(places.cell(wrong.line(line(rows, layout)), wrong.cell()), wrong.getMessage()), wrong);
        } catch (IllegalArgumentException wrong) {
            throw new InvalidReadingsException(new Fault(start(line(rows, layout)), wrong.getMessage()), wrong);
        } catch (CharacterCodingException wrong) {
            throw fault(line(rows, layout) + 1, "the text here is not UTF-8; save the file as UTF-8");
        } catch (IOException wrong) {
            LogPlaces.Flaw flaw = places.flaw(read + 1);
            throw fault(flaw.at(), flaw.message());
        }
    }

    /** What the names of the columns say, which stand in a line above the row read last. */
    private static LogHeader columns(
            List<String> names, double atmosphere, Optional<String> asked, long line, LogPlaces places)
            throws IOException {
        try {
            return new LogHeader(names, atmosphere, asked);
        } catch (CellException wrong) {
            throw new InvalidReadingsException(new Fault(places.cell(line, wrong.cell()), wrong.getMessage()), wrong);
        } catch (IllegalArgumentException wrong) {
            throw new InvalidReadingsException(new Fault(start(line), wrong.getMessage()), wrong);
        }
    }

    /** The next row, if no cell of it is too long. */
    private static Optional<List<String>> next(RowReader rows) throws IOException {
        Optional<List<String>> row = rows.next();
        List<String> cells = row.orElse(List.of());
        for (int i = 0; i < cells.size(); i++) {
            Optional<String> tooLong = WrittenLength.complaint(cells.get(i), "cell");
            if (tooLong.isPresent()) {
                throw new CellException(i, tooLong.get());
            }
        }
        return row;
    }

    /** The line of the file that the row read last ends on. */
    private static long line(RowReader rows, Layout layout) {
        return rows.line() + layout.skipped;
    }

    /** Spreadsheets put rows of empty cells behind the last. */
    private static boolean isEmpty(List<String> row) {
        return row.get(0).isBlank() && row.stream().allMatch(String::isBlank);
    }

    /** The names of the columns; some programs put a line in front that says which delimiter follows. */
    private static List<String> header(RowReader rows) throws IOException {
        List<String> first = next(rows).orElseThrow(LogReader::nothing);
        boolean aboutDelimiter = first.get(0).strip().equalsIgnoreCase("sep=");
        List<String> header = aboutDelimiter ? next(rows).orElseThrow(LogReader::nothing) : first;
        if (header.size() == 1) {
            throw new IllegalArgumentException(
                    "the whole line is in quotation marks, which makes it one column; remove the quotation marks"
                            + " around lines");
        }
        return header;
    }

    private static IllegalArgumentException nothing() {
        return new IllegalArgumentException("the file is empty; the first line of a log names the columns");
    }

    private static InvalidReadingsException fault(long line, String message) {
        return fault(start(line), message);
    }

    private static Location start(long line) {
        return new Location((int) Math.min(Integer.MAX_VALUE, line), 1);
    }

    private static InvalidReadingsException fault(Location at, String message) {
        return new InvalidReadingsException(List.of(new Fault(at, message)));
    }

    /**
     * A log and what was strange about its file.
     *
     * @param log the log
     * @param spots what notes say of vessel and tap, possibly nothing
     * @param units the unit system that the unit of the pressures belongs to
     * @param understood how columns were understood whose names are none of those documented, as whole sentences; empty if there
     *     are none
     * @param doubts what may not be meant so, as whole sentences; an answer from what is not meant is wrong throughout
     * @param remarks sentences about gaps, repeated readings, jumps of the clock, coarse steps and the like
     */
    public record LogFile(
            PressureLog log,
            SpotReadings spots,
            UnitSystem units,
            Optional<String> understood,
            List<String> doubts,
            List<String> remarks) {

        /**
         * Checks and copies.
         *
         * @param log the log
         * @param spots what notes say of vessel and tap, possibly nothing
         * @param units the unit system that the unit of the pressures belongs to
         * @param understood how columns were understood whose names are none of those documented
         * @param doubts what may not be meant so
         * @param remarks sentences about gaps, repeated readings, jumps of the clock, coarse steps and the like
         */
        public LogFile {
            Objects.requireNonNull(log, "log");
            Objects.requireNonNull(spots, "spots");
            Objects.requireNonNull(units, "units");
            Objects.requireNonNull(understood, "understood");
            doubts = List.copyOf(doubts);
            remarks = List.copyOf(remarks);
        }

        /** The same with one more remark, the first. */
        LogFile remarked(String remark) {
            return new LogFile(
                    log,
                    spots,
                    units,
                    understood,
                    doubts,
                    Stream.concat(Stream.of(remark), remarks.stream()).toList());
        }
    }
}
