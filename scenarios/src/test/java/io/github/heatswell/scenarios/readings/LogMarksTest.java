package io.github.heatswell.scenarios.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.PressureUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: decimals and thousands that a comma or a point has moved are refused where they stand; sound logs that look much like
 * them are read. Rows are parted by a bar.
 */
class LogMarksTest {

    private static final double AIR = 101_325;

    @TempDir
    Path folder;

    private LogReader.LogFile read(String text) throws IOException {
        return LogReader.read(Files.writeString(folder.resolve("log.csv"), text.replace("|", "\n")), AIR);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            time_s,pressure_bar,note|0,4,200|60,4,354|120,4,534!2:3: pressure: every reading is a whole number, and 'note' behind it holds digits as decimals have them; if the comma is a decimal comma, write 4.200 or separate the columns with semicolons; if not, write 4.0
            time_s,pressure_bar,note|0,4,2|60,4,3|120,4,5!2:3: pressure: every reading
            time_s,pressure_bar,flame|0,4,0|60,4,1|120,4,0!2:3: pressure: every reading
            time_s,pressure_bar,note,|0,4,2,|60,4,3,|120,4,5,!2:3: pressure: every reading
            time_s,pressure_bar,,|0,4,2|60,4,3|120,4,5!if the comma is a decimal comma, write 4.2
            time_s,pressure_bar,temperature_C|0,4,200|60,4,354|120,4,534!2:3: pressure: every reading is a whole number, and 'temperature_C' behind it
            time_s,pressure_bar,temperature_F|0,4,612|60,4,754|120,4,934|180,5,112!2:3: pressure: every reading
            time_s,pressure_bar,temperature_K|0,4,12|60,4,17|120,4,21!2:5: temperature: '12' is outside the allowed range
            time_s,pressure_bar,temperature_C|0,4,05|60,4,17|120,4,21!2:3: pressure: every reading
            time_s,pressure_bar,temperature_C|0,4,72|60,4,91|120,5,08|180,5,23!2:3: pressure: every reading
            time_s,pressure_bar,temperature_C|0,4,72|60,4,91|120,5,18|180,5,23!2:3: pressure: every reading
            time_s,pressure_bar,temperature_C,burner|0,4,72,|60,4,91,|120,5,18,|180,5,23,!2:3: pressure: every reading
            time_s,pressure_MPa,note|0,0,42|60,0,43|120,0,45!2:3: pressure: every reading is a whole number, and 'note' behind it
            time_s,pressure_psi,note|0,55,412|60,57,938|120,60,107!2:3: pressure: every reading is a whole number
            time_s,pressure_psi,note|0,55,7|60,56,1|120,56,5|180,57,0|240,57,5!2:3: pressure: every reading
            time_s,pressure_psi,temperature_F|0,55,71|60,56,12|120,56,54|180,57,02|240,57,51!2:3: pressure: every reading
            time_s,pressure_psi,temperature_C|0,55,412|60,57,938|120,60,107!2:3: pressure: every reading
            time_s,pressure_psi,temperature_C|0,55,41|60,57,93|120,60,07!2:3: pressure: every reading
            """)
    void decimalsInTheNextColumnAreFound(String text, String message) {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
    }

    /** The first pressure and the last, in the unit of the column. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            time_s,pressure_psi,temperature_F|0,55,61|60,56,64|120,57,68|180,58,71!55!58
            time_s,pressure_psi,temperature_F|0,55,98|60,56,99|120,57,101|180,58,104!55!58
            time_s,pressure_psi,temperature_C|0,55,8|60,55,9|120,56,10|180,56,12!55!56
            time_s,pressure_psi,temperature_C|0,55,08|60,55,09|120,56,10|180,56,12!55!56
            time_s,pressure_psi,temperature_C|0,55,12|3600,90,60|7200,80,58!55!80
            time_s,pressure_psi,temperature_K|0,55,285|60,56,287|120,57,289!55!57
            time_s,pressure_psi,temperature_C|0,55,12|60,56,|120,57,13!55!57
            time_s,pressure_psi,temperature_C|0,55,60|60,54,41|120,53,22|180,54,35|240,55,48!55!55
            time_s,pressure_psi,count|0,55,1|60,56,2|120,57,3|180,58,4!55!58
            time_s,pressure_psi,count|0,55,9|60,56,10|120,57,11|180,58,12!55!58
            time_s,pressure_psi,count|0,55,0098|60,56,0099|120,57,0100|180,58,0101!55!58
            time_s,pressure_psi,minute|0,55,0958|60,56,0959|120,57,1000|180,58,1001!55!58
            time_s,pressure_psi,device|0,55,07|60,56,07|120,57,07!55!57
            time_s,pressure_psi,state|0,55,0|60,56,1|120,55,0|180,57,1!55!57
            time_s,pressure_psi,code|0,55,01|60,56,02|120,55,01|180,57,02!55!57
            time_s,pressure_psi,volt|0,55,230|60,56,231|120,57,229|180,58,230!55!58
            time_s,pressure_psi,humidity|0,55,45|60,56,46|120,57,44|180,58,45!55!58
            time_s,pressure_kPa,note|0,420,|60,431,7|120,442,!420!442
            time_s,pressure_psi,burner|0,55,0|60,56,1|120,57,1!55!57
            pressure_psi,time_s|55,100|56,160|57,220!55!57
            time_s,pressure_bar,temperature_C|0,4,12|600,4,18|1200,5,25!4!5
            time_s,pressure_bar,device|0,4,7|600,5,7|1200,6,7!4!6
            time_s,pressure_bar,count|0,4,8|60,4,9|120,4,10|180,5,11!4!5
            time_s,pressure_bar,note|0,4.0,200|60,4.0,354|120,4.0,534!4!4
            time_s;pressure_bar;note|0;4;200|60;4;354|120;4;534!4!4
            """)
    void soundLogsThatLookAlikeAreRead(String text, double first, double last) throws IOException {
        LogReader.LogFile file = read(text);
        double unit = (text.contains("_psi")
                        ? PressureUnit.PSI
                        : text.contains("_kPa") ? PressureUnit.KILOPASCAL : PressureUnit.BAR)
                .factor();
        assertEquals(first, file.log().gauge(0) / unit, 1e-9, "digits of the text");
        assertEquals(last, file.log().gauge(file.log().count() - 1) / unit, 1e-9, "digits of the text");
    }

    /** A whole heat-up in each unit, with one, two and three decimals, the temperature left empty. */
    static Stream<Arguments> heatUps() {
        return Stream.of("bar", "psi", "kPa")
                .flatMap(unit -> Stream.of("note", "temperature_C", "temperature_F")
                        .flatMap(next -> Stream.of(1, 2, 3).map(decimals -> Arguments.of(unit, next, decimals))))
                // a tenth of a psi or of a kPa is no more than the gauge is out, and looks like many a counter
                .filter(a -> "bar".equals(a.get()[0]) || (int) a.get()[2] > 1);
    }

    @ParameterizedTest
    @MethodSource("heatUps")
    void aHeatUpWithDecimalCommasIsRefused(String unit, String next, int decimals) {
        double scale = "bar".equals(unit) ? 1 : "psi".equals(unit) ? 14.5 : 100;
        String text = "time_s,pressure_" + unit + "," + next + "|"
                + rows(i -> scale * (4.2 + 0.0917 * i + 0.013 * Math.sin(7 * i)), "," + "%." + decimals + "f")
                        .replace('.', ',');
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refused.getMessage().startsWith("2:3: pressure: every reading"), refused.getMessage());
    }

    private static String rows(DoubleUnaryOperator pressure, String pattern) {
        return IntStream.range(0, 30)
                .mapToObj(i -> 60 * i + String.format(Locale.ROOT, pattern, pressure.applyAsDouble(i)))
                .collect(Collectors.joining("|"));
    }

    @Test
    void whatCannotBeToldIsRemarked() throws IOException {
        LogReader.LogFile file = read("time_s,pressure_bar,temperature_C|0,4,12|600,4,18|1200,5,25");
        assertTrue(
                file.remarks()
                        .contains("every pressure is a whole number; if its decimals ended up in 'temperature_C',"
                                + " write 4.12 with a point"),
                file.remarks().toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            time_s;pressure_bar|0;4,2|3.600;5,1|7.200;6,0!3:1: time: '3.600' has a mark and '0' has none; if the mark separates thousands, write 3600, and if not, write all readings with the same number of decimals
            time_s,pressure_bar|0,4.2|1.000,5.1|2.000,6.0!3:1: time: '1.000' has a mark and '0' has none
            time_s;pressure_kPa|0;0|60;1.020|120;1.100!3:4: pressure: '1.020' has a mark and '0' has none; if the mark separates thousands, write 1020
            time_s;pressure_kPa|0;1020|60;1.080|120;1.100!3:4: pressure: '1.080' has a mark and '1020' has none
            time_s;pressure_Pa|0;420.000|60;435.400|120;453.400!2:3: pressure: no reading reaches 0.1 bar (1.5 psi); if the mark in '420.000' separates thousands, write 420000, and if not, write all readings with one decimal
            time_s;pressure_kPa|0;1.001|60;1.154|120;1.334!2:3: pressure: no reading reaches
            time_s;pressure_bar|0;4200|60;4354|120;4534!2:3: pressure: no reading is below 4200 bar
            time_s,pressure_bar,note|840,4.1,|900,4.2,|960,4.3,|1,020,4.4|1,080,4.5!5:1: time: '1' follows a later time; if the comma separates thousands, write 1020
            """)
    void lostMarksAreFound(String text, String message) {
        InvalidReadingsException refused = assertThrows(InvalidReadingsException.class, () -> read(text));
        assertTrue(refused.getMessage().contains(message), refused.getMessage());
    }

    /** The last time (s) and the last pressure (bar). */
    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '~', textBlock = """
            time_s,pressure_bar|0,4|60,4.250|120,4.500!120!4.5
            time_s,pressure_bar|0.000,4.200|1.020,4.354|2.040,4.534!2.04!4.534
            time_s,pressure_bar|0,4.200|0.060,4.354|1.020,4.534!1.02!4.534
            time_s,pressure_bar|0,4.2|1.001,4.3|2.003,4.4!2.003!4.4
            time_h,pressure_bar|0,4.2|0.500,4.3|1.000,4.4!3600!4.4
            time_s,pressure_kPa|0,420|60,419.875|120,421.5!120!4.215
            time_s,pressure_kPa|0,0.000|60,0.000|120,5.120!120!0.0512
            time_s,pressure_kPa,note|900,420,|960,421,|1,422,|61,423,!180!4.23
            time_s,pressure_bar|0,65|60,4.2|120,4.3!120!4.3
            """)
    void soundMarksAreRead(String text, double end, double pressure) throws IOException {
        LogReader.LogFile file = read(text);
        int last = file.log().count() - 1;
        assertEquals(end, file.log().time(last), 1e-9, "digits of the text");
        assertEquals(pressure, PressureUnit.BAR.fromSi(file.log().gauge(last)), 1e-9, "digits of the text");
    }

    @Test
    void aLogOfSecondsIsRemarked() throws IOException {
        LogReader.LogFile file = read("time_s,pressure_bar|10.020,4.2|10.080,4.3|10.140,4.4");
        assertTrue(
                file.remarks().stream()
                        .anyMatch(r -> r.contains("if the mark in the time '10.020' separates thousands, write 10020")),
                file.remarks().toString());
    }
}
