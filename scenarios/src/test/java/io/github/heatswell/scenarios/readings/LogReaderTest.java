package io.github.heatswell.scenarios.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.units.PressureUnit;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogReaderTest {

    private static final double AIR = 101_325;

    @TempDir
    Path folder;

    private LogReader.LogFile read(String text) throws IOException {
        return LogReader.read(Files.writeString(folder.resolve("log.csv"), text.replace("|", "\n")), AIR);
    }

    /** Validation: unit definitions; every row says 3 bar gauge after two minutes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "time_s,pressure_bar|0,1|60,2|120,3",
                "time_min,pressure (kPa)|0,100|1,200|2,300",
                "Time [s];Pressure [bar]|0;1|60;2|120;3,0",
                "time_s,pressure (bar abs)|0,2|60,3|120,4.01325",
                "time,pressure_bar|23:58,1|23:59,2|00:00,3",
                "time,pressure_bar,note|2026-03-01T06:00,1,=A1|2026-03-01 06:01,2,@x|2026-03-01T06:02:00Z,3,<b>",
                "\uFEFFtime_h\tpressure_psi|0\t1|0.01\t2|0.033333333333333\t43.5113213"
            })
    void readsManyForms(String text) throws IOException {
        PressureLog log = read(text).log();
        assertEquals(3, log.count());
        assertEquals(120, log.end(), 1e-6, "digits of the text");
        assertEquals(3e5, log.gauge(2), 0.01, "digits of the text");
    }

    /** What people and loggers write: the end of the log (s), its last pressure (bar, gauge), and what was understood. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            time,psi|06:00,61|06:10,62|06:20,95!1200!6.55!time in 'time'; pressure in 'psi' (psi, as a gauge shows it)
            Keller 7|Nr. 12|Datum;Uhrzeit;Druck (bar)|03.11.2024;23:50;4,2|03.11.2024;23:55;4,5|04.11.2024;00:10;4,9!1200!4.9!time in 'Datum' and 'Uhrzeit'; pressure in 'Druck (bar)' (bar, as
            "Date/Time","CH1 Pressure PSI"|"11/03/2024 11:50:00 AM","58.0"|"11/03/2024 12:00:00 PM",""|"11/03/2024 12:05:00 PM","58.1"|"11/03/2024 01:00:00 PM","58.016"!4200!4!pressure in 'CH1 Pressure PSI' (psi
            Date,Time,Absolute pressure (psi)|3/11/24,6:00 am,70|3/11/24,6:10 am,71|3/11/24,6:20 am,72.518868!1200!3.98675!(psi, absolute)
            time (min),pressure (psia),water_degF|0,75,60|10,76,70|20,72.518868,80!1200!3.98675!water temperature in 'water_degF' (degF)
            Zeit;Temperatur °C;bar abs|6:00;10,5;5,01325|6:05;11;5,1|6:20;12;5,01325!1200!4!water temperature in 'Temperatur °C' (degC)
            time_min,pressure_bar,remark|0,4,a|10,--,b|15,n/a,c|16,4.1,d|20,4,e!1200!4!Your notes, which do not affect the answer: 0 'a'; 10 'b'; 15 'c'; 16 'd'; 20 'e'.
            """)
    void readsWhatPeopleAndLoggersWrite(String text, double end, double last, String understood) throws IOException {
        LogReader.LogFile file = read(text);
        PressureLog log = file.log();
        assertEquals(end, log.end(), 1e-6, "digits of the text");
        assertEquals(last * 1e5, log.gauge(log.count() - 1), 100, "digits of the text, or 6.895 kPa to a psi");
        assertEquals(understood != null, file.understood().isPresent());
        assertTrue(understood == null || file.understood().orElseThrow().contains(understood), file::toString);
    }

    /** A pressure between two places is none that a gauge shows, and columns that mean the same are not chosen from. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            time_s,differential pressure bar|0,1|60,1|120,1!must name the columns
            time,CH1 psi,CH2 psi|6:00,1,1!there are two columns for the pressure; keep one
            time,pressure CH1|6:00,1!'ch1' is not a known unit
            time,pressure_bar|13:00 PM,1|1:01 PM,1!with am or pm, hours run from 1 to 12
            time,pressure_bar|31/31/2024 06:00,1!neither a date
            time,pressure_bar|31/01/2024,1!neither a date
            """)
    void guessesNothingThatIsOpen(String text, String message) {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
    }

    /** Regression: a time with a hundred thousand blanks was tried from each of them; it is refused for its length. */
    @Test
    void aTimeThatIsNoneIsRefusedAtOnce() throws IOException {
        Path file = folder.resolve("blanks.csv");
        Files.writeString(file, "time,pressure_bar\n23:57,4\n23: " + " \t".repeat(150_000) + "x,4.1\n");
        InvalidReadingsException refused = assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> assertThrows(InvalidReadingsException.class, () -> LogReader.read(file, AIR)));
        assertTrue(refused.getMessage().contains("3:1: this cell has 300005 characters"), refused::getMessage);
    }

    @Test
    void readsTemperatureAndBurner() throws IOException {
        PressureLog log = read("time_s,pressure_bar,temperature_C,burner|0,1,10,off|60,1,20,on|120,2,,on")
                .log();
        assertEquals(293.15, log.temperature(1).orElseThrow(), 1e-9, "definition of the degree Celsius");
        assertTrue(log.temperature(2).isEmpty());
        assertTrue(log.burnerOn(1) && !log.burnerOn(0));
    }

    @Test
    void knowsTheClock() throws IOException {
        PressureLog log = read("time,pressure_bar|06:30,1|06:31,2|06:32,3").log();
        assertEquals(6.5 * 3600, log.timeOfDay().orElseThrow(), 0, "whole minutes");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "!1:1: the file is empty",
                "time_s/pressure_bar|0/1!1:1: 'time_s/pressure_bar' is a single column",
                "time_s,pressure_bar|0;1|60;2|120;3!2:1: ",
                "time_s,pressure_bar|0,1|60,2 psi|120,1!3:4: pressure: 'psi' is not the unit of the rows above",
                "2026-06-05 06:45,61,48|2026-06-05 07:00,75,60!1:1: the columns have no names; name them, in order",
                "time_s,pressure,unit|0,1,bar|60,20,psi|120,1,bar!3:7: pressure: 'psi' is not the unit of the rows above",
                "time_s,pressure_bar|0,1|60,2 cats|120,1!3:4: pressure: '2 cats' is not a number",
                "time_s,pressure_mV|0,1|60,2|120,1!volts are what a sensor sends",
                "time,pressure_bar|06:00,1|06:10,2|06:05,1!4:1: time: '06:05' is earlier than the row before; correct it",
                "time_s pressure_bar|0 1!is a single column",
                "0,1|60,2|120,3!1:1: the first line must name the columns",
                "time_s,pressure|0,1!has no unit",
                "time_s,pressure_furlong|0,1!is not a known unit",
                "time_s,pressure_bar,pressure_psi|0,1,1!two columns",
                "time_s,pressure_bar|0,1|60,x|120,1!3:4: pressure: 'x' is not a number",
                "time_s,pressure_bar|0,1|60,=1+1|120,1!3:4: pressure: '=1+1' is not a number",
                "time_s,pressure_bar|0,1|60,1e999|120,1!1e999' is not a number",
                "time_s,pressure_bar|0,1|60,65535|120,1!3:4: pressure: '65535' is outside the allowed range, -1.2 bar to",
                "time_s,pressure_bar|0,4.2|60,-5.4|120,6.9!3:4: pressure: '-5.4' is outside the allowed range, -1.2 bar to",
                "time_s,pressure_bar|0,1|60,-1e200|120,1!leave the cell empty where there is no reading",
                "time_s,pressure_bar,temp_C|0,1,20|60,1,-273|120,1,9!3:6: temperature: '-273' is outside the allowed",
                "time_s,pressure_bar,temp_C|0,1,49|60,1,118|120,1,120!3:6: temperature: '118' is above 110 degC",
                "time_s,pressure_bar,temp_C|0,1,49|60,1,118|120,1,120!is the unit right, or is it degF?",
                "time_s,pressure_bar|0,1|86400,1|172801,1!4:1: time: the third reading is more than two days after",
                "time_h,pressure_bar|0,1|1e6,1|1e308,1|2,1!4:1: time: the third reading is more than two days after",
                "time,pressure_bar|0,1|1,1!not a time of day",
                "time,pressure_bar|2026-13-01T00:00,1!neither a date",
                "time_s,pressure_bar|180,1|120,1|60,1|0,1!time runs backwards",
                "time_s,pressure_bar|0,1|60,1!only 2 readings",
                "time_s,pressure_bar,burner|0,1,perhaps!neither on nor off",
                "time_s,pressure_bar|0,\"1|60,2!2:3: a quotation mark opens here and never closes"
            })
    void saysWhatIsWrong(String text, String message) {
        InvalidReadingsException refused =
                assertThrows(InvalidReadingsException.class, () -> read(text == null ? "" : text));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
    }

    @Test
    void refusesAnotherEncoding() throws IOException {
        Path file = folder.resolve("utf16.csv");
        Files.write(file, "time_s,pressure_bar\n0,1\u0081\n".getBytes(StandardCharsets.ISO_8859_1));
        InvalidReadingsException refused =
                assertThrows(InvalidReadingsException.class, () -> LogReader.read(file, AIR));
        assertTrue(refused.getMessage().contains("UTF-8"), refused.getMessage());
    }

    @Test
    void notesWhatIsStrange() throws IOException {
        StringBuilder text = new StringBuilder("time_s,pressure_psi\n");
        for (int i = 0; i < 100; i++) {
            int minute = i < 50 ? i : i + 200;
            text.append(60 * minute)
                    .append(',')
                    .append(i == 70 ? 99 : 40 + i / 10)
                    .append('\n');
        }
        text.append("17940,50\n17940,51\n18000,\n");
        LogReader.LogFile file = read(text.append("100,50\n160,50\n").toString());
        String remarks = String.join("; ", file.remarks());
        assertTrue(remarks.contains("one row without a pressure was"), remarks);
        assertTrue(remarks.contains("repeat the time"), remarks);
        assertTrue(remarks.contains("set back once"), remarks);
        assertTrue(remarks.contains("missing once, for 3 h 21 min"), remarks);
        assertTrue(remarks.contains("steps of 1 psi (0.07 bar)"), remarks);
        assertTrue(remarks.contains("one reading stands out"), remarks);
        assertEquals(PressureUnit.PSI.factor(), file.log().step(), 1, "one psi, to a pascal");
    }

    /** Two and a half million rows end up as fewer than a million, evenly. */
    @Test
    void thinsWhatIsTooMuch() throws IOException {
        Path path = folder.resolve("long.csv");
        try (BufferedWriter out = Files.newBufferedWriter(path)) {
            out.write("time_s,pressure_bar\n");
            for (int i = 0; i < 2_000_004; i++) {
                out.write(i + ",4." + i % 10 + "\n");
            }
        }
        LogReader.LogFile file = LogReader.read(path, AIR);
        assertEquals(500_001, file.log().count());
        assertEquals(4, file.log().time(1), 0, "whole seconds");
        assertTrue(
                file.remarks().get(0).contains("one in 4 is kept"),
                file.remarks().toString());
    }

    /**
     * Ten million rows, and a fault in the row after them: the long look, with the system property {@code long.look}.
     */
    @Test
    @EnabledIfSystemProperty(named = "long.look", matches = "true")
    void readsTenMillionRows() throws IOException {
        Path path = folder.resolve("longest.csv");
        try (BufferedWriter out = Files.newBufferedWriter(path)) {
            out.write("time_s,pressure_bar\n");
            for (int i = 0; i < 10_000_000; i++) {
                out.write(i + ",4." + i % 10 + "\n");
            }
        }
        LogReader.LogFile file = LogReader.read(path, AIR);
        assertEquals(625_000, file.log().count());
        assertEquals(16, file.log().time(1), 0, "whole seconds");
        Files.writeString(path, "0,x\n", StandardOpenOption.APPEND);
        InvalidReadingsException refused =
                assertThrows(InvalidReadingsException.class, () -> LogReader.read(path, AIR));
        assertTrue(refused.getMessage().startsWith("10000002:3: pressure: 'x'"), refused.getMessage());
    }
}
