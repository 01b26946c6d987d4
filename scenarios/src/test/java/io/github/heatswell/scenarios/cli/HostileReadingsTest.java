package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.report.Diagnoses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts meant to do something in a spreadsheet, a browser or a terminal do nothing in what a diagnosis writes. */
class HostileReadingsTest {

    private static final Pattern DANGEROUS_CELL = Pattern.compile("(?m)(?:^|,)\"?(?:[=+@\t\r]|-(?!\\d))");

    @TempDir
    Path folder;

    /** A title and the name of a valve. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "=1+1<script>alert(1)</script>| +1\"><img src=x onerror=alert(1)>",
                "@SUM(A1)</title><svg onload=alert(1)>| -1 & ]]> <!--"
            })
    void namesDoNothingInWhatIsWritten(String text, String name) throws Exception {
        Path house = house(text, name);
        Path log = firstHour(Diagnoses.log("orchard-lodge-vessel", "vessel.condition=isolated", folder));
        Path out = folder.resolve("out");
        Outcome outcome = Outcome.execute("diagnose", house.toString(), "-r", log.toString(), "-o", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(outcome.out().chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)), outcome.out());
        String csv = Files.readString(out.resolve("readings.csv"));
        assertFalse(DANGEROUS_CELL.matcher(csv).find(), csv);
        for (String written : List.of("report.html", "readings.svg")) {
            Path file = out.resolve(written);
            String content = Files.readString(file);
            assertFalse(content.contains("<script") || content.contains("<img"), written);
            assertFalse(content.matches("(?s).*<[^>]*\\son(?:load|error)=.*"), written);
        }
        var page = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(out.resolve("report.html").toFile());
        assertTrue(page.getElementsByTagName("h1").item(0).getTextContent().startsWith(text));
        assertTrue(Files.readString(out.resolve("diagnosis.json")).startsWith("{"));
    }

    /** What stands in a bad cell is repeated in the complaint, but moves no cursor and colours nothing. */
    @Test
    void complaintsCarryNoControlCharacters() throws IOException {
        Path log = Files.writeString(
                folder.resolve("log.csv"), "time_s,pressure_bar\n0,1\n60,\u001b[31m=1\u0007\u009b2J\n120,3\n");
        Path out = folder.resolve("none");
        Outcome outcome =
                Outcome.execute("diagnose", "orchard-lodge-vessel", "-r", log.toString(), "-o", out.toString());
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().startsWith(log + ":3:"), outcome.err());
        assertTrue(outcome.err().chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)), outcome.err());
        assertFalse(Files.exists(out));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(1, left.count(), "the log alone");
        }
    }

    /** Every fifth minute of the first hour of a log, in which each of its notes occurs. */
    private static Path firstHour(Path log) throws IOException {
        List<String> lines = Files.readAllLines(log);
        List<String> kept =
                IntStream.rangeClosed(0, 12).mapToObj(i -> lines.get(1 + 5 * i)).toList();
        return Files.write(
                log, Stream.concat(Stream.of(lines.get(0)), kept.stream()).toList());
    }

    /** The bundled house under another title, and with a relief valve with such a name. */
    private Path house(String text, String name) throws IOException {
        String title = quoted(text);
        String valve = quoted(name);
        Outcome shown = Outcome.execute("show", "orchard-lodge-vessel");
        String yaml = shown.out().replaceFirst("(?m)^title:.*$", "title: " + Matcher.quoteReplacement(title));
        yaml = yaml.replace("name: expansion valve", "name: " + valve);
        assertTrue(yaml.contains(title) && yaml.contains(valve), yaml);
        return Files.writeString(folder.resolve("house.yaml"), yaml);
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
