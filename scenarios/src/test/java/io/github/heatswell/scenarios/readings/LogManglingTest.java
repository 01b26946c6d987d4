package io.github.heatswell.scenarios.readings;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.scenarios.fault.Fault;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What spreadsheets and loggers of other countries do to a log: either it says what it said before, or it is refused at the right
 * place with what to write instead, or the change is remarked upon. It never silently says something else.
 */
class LogManglingTest {

    private static final double AIR = 101_325;
    private static final String HEADER = "time_s,pressure_bar,temperature_C,burner";

    @TempDir
    Path folder;

    /** Half an hour: pressures with three decimals, temperatures with one, times beyond a thousand seconds. */
    private static String log() {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (int i = 0; i < 30; i++) {
            text.append(String.format(
                    Locale.ROOT, "%d,%.3f,%.1f,%s\n", 60 * i, 4.2 + 0.0917 * i, 12.3 + 1.1 * i, i < 25 ? "on" : "off"));
        }
        return text.toString();
    }

    private static String eachRow(UnaryOperator<String> change) {
        String[] lines = log().split("\n");
        return Stream.concat(Stream.of(lines[0]), Stream.of(lines).skip(1).map(change))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String eachCell(String delimiter, UnaryOperator<String> change) {
        return log().lines()
                .map(line -> Stream.of(line.split(",")).map(change).collect(Collectors.joining(delimiter)))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String decimalComma(String cell) {
        return cell.replace('.', ',');
    }

    private static String thousands(String cell, String mark) {
        return cell.matches("\\d{4}") ? cell.charAt(0) + mark + cell.substring(1) : cell;
    }

    static Stream<Arguments> harmless() {
        return Stream.of(
                Arguments.of("as it was", log()),
                Arguments.of("byte order mark", "\uFEFF" + log()),
                Arguments.of("ends of lines of another system", log().replace("\n", "\r\n")),
                Arguments.of("ends of lines of an old system", log().replace("\n", "\r")),
                Arguments.of("no end of the last line", log().stripTrailing()),
                Arguments.of(
                        "unit in a column of its own",
                        eachRow(row -> row.replaceFirst("^(\\d+,[\\d.]+),", "$1,bar,"))
                                .replace(HEADER, "time_s,pressure,unit,temperature_C,burner")),
                Arguments.of("everything in quotes", eachCell(",", cell -> '"' + cell + '"')),
                Arguments.of("blanks around cells", eachCell(" , ", cell -> cell)),
                Arguments.of("semicolons", log().replace(',', ';')),
                Arguments.of("semicolons and decimal commas", eachCell(";", LogManglingTest::decimalComma)),
                Arguments.of("tabs", log().replace(',', '\t')),
                Arguments.of("tabs and decimal commas", eachCell("\t", LogManglingTest::decimalComma)),
                Arguments.of("a line about the delimiter", "sep=;\n" + log().replace(',', ';')),
                Arguments.of("empty cells behind every row", log().replace("\n", ",,,\n")),
                Arguments.of("one empty cell behind every row", log().replace("\n", ",\n")),
                Arguments.of("rows of empty cells at the end", log() + ",,,\n,,,\n"),
                Arguments.of("empty lines at the end", log() + "\n\n \n".replace(" ", "")),
                Arguments.of("empty lines in between", log().replace("\n", "\n\n")),
                Arguments.of("heading in capitals", log().replace(HEADER, HEADER.toUpperCase(Locale.ROOT))),
                Arguments.of("another heading", log().replace(HEADER, "Time [s],Pressure (bar),Temp (°C),Heater")),
                Arguments.of("columns in another order", reordered()),
                Arguments.of("switch as numbers", log().replace(",on", ",1").replace(",off", ",0")),
                Arguments.of("switch as words", log().replace(",on", ",TRUE").replace(",off", ",FALSE")),
                Arguments.of("units in the cells", eachRow(row -> row.replaceFirst(",(\\d+\\.\\d+),", ",$1 bar,"))),
                Arguments.of(
                        "units in the cells alone",
                        eachRow(row -> row.replaceFirst("(\\d+),(\\d+\\.\\d+),", "$1s,$2bar,"))
                                .replace("time_s,pressure_bar", "time,pressure")),
                Arguments.of(
                        "units in a row below the names",
                        log().replace(HEADER, "time,pressure,temperature,burner\ns,bar,C,")),
                Arguments.of("strokes between the columns", log().replace(',', '|')),
                Arguments.of("scientific notation", eachRow(row -> row.replaceFirst(",(\\d+\\.\\d+),", ",$1E+00,"))),
                Arguments.of(
                        "scientific notation and decimal commas",
                        eachCell(";", cell -> decimalComma(cell.matches("\\d\\.\\d{3}") ? cell + "E+00" : cell))),
                Arguments.of("apostrophes that make text", eachRow(row -> "'" + row.replaceFirst(",", ",'"))),
                Arguments.of(
                        "formulas that make text", eachRow(row -> row.replaceFirst(",(\\d+\\.\\d+),", ",=\"$1\","))),
                Arguments.of(
                        "hard blanks before units",
                        eachRow(row -> row.replaceFirst(",(\\d+\\.\\d+),", ",$1\u00a0bar,"))),
                Arguments.of(
                        "units in brackets below the names",
                        log().replace(HEADER, "Time,Pressure,Temp,Burner\n(s),(bar),[\u00b0C],")),
                Arguments.of(
                        "empty cells behind every row but the first",
                        eachRow(row -> row.replace(',', ';') + ";;;").replace(HEADER, HEADER.replace(',', ';'))),
                Arguments.of("plus signs", eachRow(row -> "+" + row)));
    }

    private static String reordered() {
        return log().lines()
                .map(line -> line.split(","))
                .map(c -> String.join(",", c[3], c[1], c[0], c[2]))
                .collect(Collectors.joining("\n"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("harmless")
    void whatChangesNothingIsUnderstood(String name, String text) throws IOException {
        LogReader.LogFile read = read(text);
        PressureLog asItWas = read(log()).log();
        assertArrayEquals(values(asItWas), values(read.log()), 1e-9, "the same digits: " + name);
        assertEquals(read(log()).remarks(), read.remarks());
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of(
                        "decimal comma in a file with commas",
                        log().replace('.', ','),
                        "2:12: there are 6 cells in this row, but the first line names 4 columns; if the comma is a"
                                + " decimal comma, write 4.200 or separate the columns with semicolons"),
                Arguments.of(
                        "two columns, decimal comma",
                        "time_s,pressure_bar\n0,4,200\n60,4,354\n120,4,534\n180,4,740\n",
                        "2:5: there are 3 cells in this row, but the first line names 2 columns; if the comma is a"
                                + " decimal comma, write 4.200 or separate the columns with semicolons"),
                Arguments.of(
                        "two columns, decimal comma, empty cell behind the heading",
                        "time_s,pressure_bar,\n0,4,200\n60,4,354\n120,4,534\n180,4,740\n",
                        "2:5: there are 3 cells in this row, but the first line names 2 columns"),
                Arguments.of(
                        "decimal comma in quotes",
                        eachCell(",", cell -> '"' + decimalComma(cell) + '"'),
                        "2:5: pressure: '4,200' is not a number; write digits with a point for the decimals, and no"
                                + " thousands separator"),
                Arguments.of(
                        "thousands with points, decimals with commas",
                        eachCell(";", cell -> thousands(decimalComma(cell), ".")),
                        "19:1: time: '1.020' follows '960'; if the mark in '1.020' separates thousands, write 1020,"
                                + " and if not,"
                                + " write all readings with the same number of decimals"),
                Arguments.of(
                        "thousands with commas, decimals with points",
                        eachCell(";", cell -> thousands(cell, ",")),
                        "19:1: time: '1,020' follows '960'; if the mark in '1,020' separates thousands, write 1020"),
                Arguments.of(
                        "thousands with commas in quotes",
                        eachCell(",", cell -> thousands(cell, ",").indexOf(',') > 0 ? "\"1,020\"" : cell),
                        "19:1: time: '1,020' is not a number; write digits with a point for the decimals, and no"
                                + " thousands separator"),
                Arguments.of(
                        "thousands with blanks",
                        eachCell(",", cell -> thousands(cell, "\u00a0")),
                        "19:1: time: '1\u00a0020' is not a number"),
                Arguments.of(
                        "points and commas in one column",
                        eachCell(";", cell -> cell).replaceFirst("4\\.292", "4,292"),
                        "3:4: pressure: some numbers have a point, such as '4.200', and some a comma, such as '4,292'; write"
                                + " all decimals with a point, and no thousands separator"),
                Arguments.of(
                        "a number made a date",
                        log().replaceFirst("4\\.200", "04-Feb"),
                        "2:3: pressure: '04-Feb' is not a number; a spreadsheet may have taken it for a date: set the"
                                + " column to text, and write the number again"),
                Arguments.of(
                        "a number made the number of a date",
                        log().replaceFirst("4\\.200", "46115"),
                        "2:3: pressure: '46115' is outside the allowed range, -1.2 bar to 10000 bar; if a spreadsheet"
                                + " took the number for a date, write it as it was"),
                Arguments.of(
                        "twenty-four o'clock",
                        "time,pressure_bar\n23:58,4.2\n23:59,4.3\n24:00,4.4\n00:01,4.5\n",
                        "4:1: time: 24:00 is outside the allowed range, 00:00 to 23:59:59; midnight is 00:00"),
                Arguments.of(
                        "twenty-four o'clock of a day",
                        "time,pressure_bar\n2026-03-01 23:59,4.2\n2026-03-01 24:00,4.3\n2026-03-02 00:01,4.4\n",
                        "3:1: time: '2026-03-01 24:00' is neither a date with a time nor a time of day; write"
                                + " 2026-01-31 06:30 or 06:30, and midnight as 00:00 of the next day"),
                Arguments.of(
                        "dates of another country kept as text",
                        "time;pressure_bar\n03.14.2026 06:00;4,2\n03.14.2026 06:01;4,3\n03.14.2026 06:02;4,4\n",
                        "2:1: time: '03.14.2026 06:00' is neither a date"),
                Arguments.of(
                        "some dates of another country made dates",
                        "time;pressure_bar\n03.12.2026 23:59;4,2\n3/13/2026 0:00;4,3\n3/13/2026 0:01;4,4\n",
                        "3:1: time: '3/13/2026 0:00' is earlier than the row before"),
                Arguments.of(
                        "per cent",
                        eachRow(row -> row.replaceFirst(",(\\d+)\\.(\\d)\\d\\d,", ",$1.$2%,")),
                        "2:3: pressure: '4.2%' is not a number; write digits only, and the unit in the first line"),
                Arguments.of(
                        "too narrow a column",
                        log().replaceFirst("4\\.200", "####"),
                        "2:3: pressure: '####' is not a number"),
                Arguments.of(
                        "quotes around whole lines",
                        log().lines().map(line -> '"' + line + '"').collect(Collectors.joining("\n")),
                        "1:1: the whole line is in quotation marks, which makes it one column; remove the quotation"
                                + " marks around lines"),
                Arguments.of(
                        "a quotation mark that stays open",
                        log().replaceFirst("4\\.200", "\"4.200"),
                        "2:3: a quotation mark opens here and never closes; remove it, or close it at the end of the"
                                + " cell"),
                Arguments.of(
                        "something behind a quotation mark",
                        log().replaceFirst("4\\.200", "\"4.200\"bar"),
                        "2:10: there is text after the closing quotation mark; remove the quotation marks around"
                                + " this cell"),
                Arguments.of(
                        "heading gone", log().substring(log().indexOf('\n') + 1), "1:1: the first line must name the"),
                Arguments.of("unit gone", log().replace("_bar", ""), "1:8: the pressure column has no unit"),
                Arguments.of("newest first", reversed(), "time runs backwards; put the oldest reading first"),
                Arguments.of("sorted by pressure as text", shuffled(), "sort the rows by time"),
                Arguments.of(
                        "a cell too many", log().replaceFirst("on\n", "on,7\n"), "2:17: there are 5 cells in this row"),
                Arguments.of(
                        "a note in the switch", log().replaceFirst("on\n", "why\n"), "2:14: burner: 'why' is neither"));
    }

    /** A log through midnight at the end of a day below 13, so that only the change shows which number is the day. */
    private static String dated(String order) {
        StringBuilder text = new StringBuilder("time,pressure_bar\n");
        for (int i = 0; i < 10; i++) {
            String day = i < 5 ? "04" : "05";
            String date = order.replace("dd", day).replace("MM", "03").replace("yyyy", "2026");
            text.append(date)
                    .append(i < 5 ? " 23:5" + (5 + i) : " 00:0" + (i - 5))
                    .append(",4.")
                    .append(i)
                    .append('\n');
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"dd/MM/yyyy", "MM/dd/yyyy", "dd.MM.yyyy", "dd-MM-yyyy", "yyyy/MM/dd"})
    void datesAreReadWhicheverWayTheyAreWritten(String order) throws IOException {
        PressureLog log = read(dated(order)).log();
        assertEquals(10, log.count());
        assertEquals(540, log.end(), "nine minutes");
        assertEquals((23 * 60 + 55) * 60, log.timeOfDay().orElseThrow());
    }

    @Test
    void aTitleAboveIsSkippedAndSaid() throws IOException {
        for (String title : List.of("Log of May\n", "Log, May\n", "\"Log\"\n\n")) {
            LogReader.LogFile read = read(title + log());
            assertArrayEquals(values(read(log()).log()), values(read.log()), 1e-9, "the same digits");
            assertTrue(read.remarks().get(0).contains("above the names of the columns"), read.remarks()::toString);
            InvalidReadingsException refusal = assertThrows(
                    InvalidReadingsException.class, () -> read(title + log().replaceFirst("4\\.200", "x")));
            long line = 2 + title.lines().count();
            assertTrue(refusal.getMessage().startsWith(line + ":3: pressure: 'x'"), refusal.getMessage());
        }
    }

    /** What a spreadsheet or a program makes of times: each log lasts three minutes, from six in the morning where a clock tells. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            time,pressure_bar|46085.25,4.2|46085.250694444,4.3|46085.251388889,4.4|46085.252083333,4.5!as days since 1900
            time,pressure_bar|0.25,4.2|0.250694444,4.3|0.251388889,4.4|0.252083333,4.5!as parts of a day
            timestamp,pressure_bar|1730635200,4.2|1730635260,4.3|1730635320,4.4|1730635380,4.5!since 1970 in seconds
            time,pressure_bar|3-Nov-24 06:00,4.2|3-Nov-24 06:01,4.3|03. Nov. 2024 06:02,4.4|November 3 2024 06:03,4.5!
            date,time,pressure_bar|46085,0.25,4.2|46085,0.250694444,4.3|46085,0.251388889,4.4|46085,0.252083333,4.5!as days since 1900
            date,time,pressure_bar|46085,06:00,4.2|46085,06:01,4.3|46085,06:02,4.4|46085,06:03,4.5!as days since 1900
            Datum;Zeit;Druck (bar)|01.03.26;06:00;4,2|01.03.26;06:01;4,3|01.03.26;06:02;4,4|01.03.26;06:03;4,5!in 'Datum' and 'Zeit'
            Uhrzeit;Druck (bar)|02:58;4,2|02:59;4,3|02:00;4,4|02:01;4,5!time in 'Uhrzeit'
            elapsed,pressure_bar|23:59:00,4.2|24:00:00,4.3|24:01:00,4.4|24:02:00,4.5!from the beginning
            time,pressure_bar|2024-11-03T06:00:00-04:00,4.2|2024-11-03T06:01:00-04:00,4.3|2024-11-03T05:02:00-05:00,4.4|2024-11-03T05:03:00-05:00,4.5!
            time,pressure_bar|2024-03-10 01:58,4.2|2024-03-10 01:59,4.3|2024-03-10 03:00,4.4|2024-03-10 03:01,4.5!
            """)
    void timesAsProgramsMakeThemAreUnderstood(String text, String understood) throws IOException {
        LogReader.LogFile read = read(text.replace('|', '\n'));
        assertEquals(180, read.log().end(), 0.01, "digits of the text");
        assertTrue(
                understood == null || read.understood().orElseThrow().contains(understood),
                read.understood()::toString);
    }

    /** Text to columns parts a time from its am or pm; without them, noon would be midnight, and one o'clock before noon. */
    @ParameterizedTest
    @ValueSource(strings = {"ampm", "", "AM/PM"})
    void halvesOfTheDayInAColumnOfTheirOwnBelongToTheTime(String name) throws IOException {
        LogReader.LogFile read =
                read("time," + name + ",pressure_bar\n12:58:00,PM,4.2\n12:59:00,PM,4.3\n1:00:00,PM,4.4\n");
        assertEquals(120, read.log().end(), "two minutes");
        assertEquals(46_680, read.log().timeOfDay().orElseThrow(), "two to one in the afternoon");
        assertEquals(List.of("am or pm was taken from the column after the time"), read.remarks());
    }

    @Test
    void aPersonNamesTheColumns() throws IOException {
        LogHints hints = new LogHints(Optional.empty(), Optional.of("time_min,pressure_psi,-"));
        for (String text : List.of("time_s,pressure_bar,x\n0,58,7\n1,60,7\n2,62,7\n", "0;58;7\n1;60;7\n2;62;7\n")) {
            Path file = Files.writeString(folder.resolve("log.csv"), text);
            PressureLog log = LogReader.read(file, AIR, hints).log();
            assertEquals(120, log.end(), 0, "minutes");
            assertEquals(4e5, log.gauge(0), 110, "58 psi are 3.9990 bar");
        }
    }

    /** Minutes under seconds make a log that no person wrote; psi and kPa under each other's name fit the other. */
    @Test
    void whatNobodyReadsIsDoubted() throws IOException {
        doubted(
                "time_s,pressure_bar\n0,4.2\n10,4.4\n20,4.5\n30,4.6\n40,4.6\n",
                "The readings are 10 s apart, 40 s in all: is the time unit right, or are these minutes?");
        doubted(
                "time_min,pressure_psi\n0,420\n10,480\n20,600\n",
                "is the pressure unit right? The numbers would fit kPa.");
        doubted(
                "time_min,pressure_kPa\n0,4.2\n10,4.8\n20,6.0\n",
                "is the pressure unit right? The numbers would fit bar.");
    }

    private static String reversed() {
        List<String> lines = new ArrayList<>(log().lines().skip(1).toList());
        java.util.Collections.reverse(lines);
        return HEADER + "\n" + String.join("\n", lines);
    }

    private static String shuffled() {
        List<String> lines = new ArrayList<>(log().lines().skip(1).toList());
        lines.sort(java.util.Comparator.comparing(line -> line.split(",")[1].substring(3)));
        return HEADER + "\n" + String.join("\n", lines);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void whatIsNotUnderstoodIsRefused(String name, String text, String message) {
        InvalidReadingsException refusal = assertThrows(InvalidReadingsException.class, () -> read(text), name);
        assertTrue(refusal.getMessage().contains(message), refusal.getMessage());
        Fault fault = refusal.faults().get(0);
        assertTrue(fault.at().line() >= 1 && fault.at().column() >= 1, fault.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            temperature_C | temparature_C | the column 'temparature_C' is not used; did you mean temperature?
            burner        | flame        | the column 'flame' is not used
            burner        | ''           |
            burner        | burners      | the column 'burners' is not used; did you mean burner?
            """)
    void columnsThatAreNotUsedAreNamed(String heading, String instead, String remark) throws IOException {
        String text = log().replace(heading, instead.replace("''", ""));
        if (remark == null) {
            assertThrows(InvalidReadingsException.class, () -> read(text));
        } else {
            assertTrue(
                    read(text).remarks().contains(remark), read(text).remarks().toString());
        }
    }

    @Test
    void aColumnWithoutANameIsNamedByItsPlace() throws IOException {
        List<String> remarks = read(log().replace("temperature_C", "")).remarks();
        assertTrue(remarks.contains("column 3 has no name and is not used"), remarks.toString());
    }

    @ParameterizedTest
    @CsvSource({"pressure_bar, pressure_kPa, 7 kPa (1 psi)", "pressure_bar, pressure_MPa, 68.59 bar (995 psi)"})
    void anUnlikelyUnitIsDoubted(String heading, String instead, String peak) throws IOException {
        doubted(log().replace(heading, instead), "The highest pressure is " + peak + ": is the pressure unit right?");
    }

    private void doubted(String text, String doubt) throws IOException {
        List<String> said = read(text).doubts();
        assertTrue(said.toString().contains(doubt), said::toString);
    }

    /** A unit that is wrong for certain is refused, and one that may be wrong is doubted right behind the verdict. */
    @Test
    void unitsThatAreNotThoseOfTheNumbersAreDoubted() throws IOException {
        doubted(
                eachRow(row -> Integer.parseInt(row.split(",")[0]) / 60 + row.substring(row.indexOf(','))),
                "The pressure rises by 2.66 bar (39 psi) in a log of 29 s, faster than heaters do: is the time unit"
                        + " right, or are these minutes?");
        StringBuilder hours = new StringBuilder("time_min,pressure_bar\n");
        for (int i = 0; i < 120; i++) {
            hours.append(60 * i).append(",4.").append(i % 10).append('\n');
        }
        doubted(hours.toString(), "The readings are 1 h apart: is the time unit right, or are these seconds?");
        doubted(
                "time,pressure_bar\n06:00,4\n06:00,4.1\n06:00,4.2\n06:00,4.2\n07:00,4.3\n08:00,4.4\n",
                "Most rows repeat the time of the row before and were skipped: did the times lose their seconds?");
        doubted(
                log().replace("12.3,", "96.3,"),
                "The water reaches 96.3 degC (205 degF), hotter than tanks are kept: is the unit of the temperatures right?");
        assertTrue(read(log()).understood().isEmpty(), "nothing is doubted that is in order");
    }

    /** Degrees Fahrenheit under Celsius were taken for decimals that a comma had cut off, and Celsius under Fahrenheit for ice. */
    @Test
    void degreesOfTheOtherScaleAreRefused() {
        StringBuilder hot = new StringBuilder("time_min,pressure_psi,temperature_C\n");
        StringBuilder cold = new StringBuilder("time_min,pressure_psi,temperature_F\n");
        for (int i = 0; i < 20; i++) {
            hot.append(3 * i)
                    .append(',')
                    .append(61 + 2 * i)
                    .append(',')
                    .append(48 + 10 * i)
                    .append('\n');
            cold.append(3 * i)
                    .append(',')
                    .append(61 + 2 * i)
                    .append(',')
                    .append(9 + i)
                    .append('\n');
        }
        refused(
                hot.toString(),
                "9:7: temperature: '118' is above 110 degC, hotter than a sound tank ever is; is the unit"
                        + " right, or is it degF? If it is, keep away from the tank and have its heater switched off");
        refused(
                cold.toString(),
                "2:6: temperature: '9' is below freezing, as most readings are; is the unit right, or is it"
                        + " degC?");
    }

    private void refused(String text, String message) {
        InvalidReadingsException refusal = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refusal.getMessage().contains(message), refusal.getMessage());
    }

    /** What a spreadsheet writes where it could compute nothing is no reading; a column too narrow for its numbers hides some. */
    @ParameterizedTest
    @ValueSource(strings = {"#VALUE!", "#REF!", "#DIV/0!", "#N/A", "#NAME?", "#NUM!", "#NULL!", "#WERT!", "#NV"})
    void anErrorOfASpreadsheetIsNoReading(String error) throws IOException {
        LogReader.LogFile read = read(log().replaceFirst("4\\.200", error).replaceFirst("13\\.4", error));
        assertEquals(29, read.log().count());
        assertTrue(read.log().temperature(0).isEmpty());
        assertTrue(
                read.remarks()
                        .contains("2 cells hold an error of a spreadsheet such as '" + error + "' and no reading"),
                read.remarks()::toString);
    }

    /** Lost seconds make rows repeat a time, and lost cells leave rows without a pressure: both are said. */
    @Test
    void whatIsLostIsSaid() throws IOException {
        String minutes = "time,pressure_bar\n06:00,4\n06:00,4.1\n06:01,4.2\n06:01,4.3\n06:02,4.4\n";
        assertTrue(read(minutes).remarks().contains("2 rows repeat the time of the row before and were skipped"));
        String gaps = log().replaceFirst("4\\.200", "").replaceFirst("4\\.292", "");
        assertTrue(read(gaps).remarks().contains("2 rows without a pressure were skipped"));
    }

    /** Regression: what spreadsheets save was refused: a degree sign in Windows-1252, "Unicode text" in UTF-16. */
    @ParameterizedTest
    @CsvSource({"UTF-16LE, false", "UTF-16BE, false", "UTF-16, false", "windows-1252, true"})
    void anotherEncodingThatCanBeToldIsRead(String encoding, boolean remarked) throws IOException {
        String text = log().replace("temperature_C", "temperature (°C)");
        Path file = Files.write(folder.resolve("log.csv"), text.getBytes(Charset.forName(encoding)));
        LogReader.LogFile read = LogReader.read(file, AIR);
        LogReader.LogFile same = read(text);
        assertEquals(same.log().count(), read.log().count());
        assertEquals(same.log().temperature(2), read.log().temperature(2));
        assertEquals(
                remarked,
                read.remarks().stream().anyMatch(remark -> remark.contains("was read as Windows-1252")),
                read.remarks().toString());
    }

    /** A byte that stands for nothing in Windows-1252 either. */
    @Test
    void whatIsNoTextIsRefused() throws IOException {
        byte[] bytes = log().replace("temperature_C", "temperature_C~").getBytes(StandardCharsets.US_ASCII);
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = bytes[i] == '~' ? (byte) 0x81 : bytes[i];
        }
        Path file = Files.write(folder.resolve("log.csv"), bytes);
        InvalidReadingsException refusal =
                assertThrows(InvalidReadingsException.class, () -> LogReader.read(file, AIR));
        assertTrue(refusal.getMessage().contains("save the file as UTF-8"), refusal.getMessage());
    }

    /** Regression: a gauge at nothing, and below, was read without a word of an empty tank. */
    @Test
    void aGaugeAtNothingIsAskedAbout() throws IOException {
        List<String> doubts =
                read("time_min,pressure_bar\n0,4.2\n5,0\n10,0\n15,0\n20,-0.3\n").doubts();
        assertTrue(doubts.get(0).startsWith("The gauge goes down to -0.3 bar"), doubts.toString());
        assertTrue(read("time_min,pressure_bar\n0,4.2\n5,4.1\n10,4\n15,4\n")
                .doubts()
                .isEmpty());
    }

    /** Regression: a log of ten weeks never said that its causes were looked for in two days. */
    @Test
    void aLongLogIsToldHowMuchOfItIsUsed() throws IOException {
        String said = "the causes are looked for in the first two days; readings above a limit, in the whole log";
        String week =
                IntStream.range(0, 200).mapToObj(i -> i + "," + (4 + 0.001 * i)).collect(Collectors.joining("\n"));
        assertTrue(read("time_h,pressure_bar\n" + week + "\n").remarks().contains(said));
        assertFalse(read("time_min,pressure_bar\n" + week + "\n").remarks().contains(said));
    }

    private LogReader.LogFile read(String text) throws IOException {
        Path file = Files.write(folder.resolve("log.csv"), text.getBytes(StandardCharsets.UTF_8));
        return LogReader.read(file, AIR);
    }

    private static double[] values(PressureLog log) {
        return java.util.stream.IntStream.range(0, log.count())
                .boxed()
                .flatMapToDouble(i -> java.util.stream.DoubleStream.of(
                        log.time(i), log.gauge(i), log.temperature(i).orElse(-1), log.burnerOn(i) ? 1 : 0))
                .toArray();
    }
}
