package io.github.heatswell.scenarios.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.scenarios.cli.Outcome;
import io.github.heatswell.scenarios.generated.Chance;
import io.github.heatswell.scenarios.readings.InvalidReadingsException;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files of readings in which something went wrong are read, or refused with places and sentences, quickly and without a trace. More
 * of them are looked at with {@code -Dtest.jvm.options=-Dfuzz.cases=100000}.
 */
class ReadingsFuzzTest {

    private static final double AIR = 101_325;
    private static final int ONE_IN = 50;

    @TempDir
    Path folder;

    private Cases cases;
    private int read;

    @Test
    void anyLogIsReadOrRefused(TestReporter reporter) {
        List<String> texts = List.of(
                log("time_s,pressure_bar,note", ",", ""),
                log("Time [min];Pressure [psi];Temp [F];burner", ";", ""),
                log("time,pressure (bar abs),temperature_C,heater", ",", "%02d:%02d"),
                log("datetime\tpressure_kPa", "\t", "2026-03-28T%02d:%02d"));
        look(reporter, "log.csv", LogMutations.ALL, texts);
    }

    @Test
    void anyReadingsOnSiteAreReadOrRefused(TestReporter reporter) {
        List<String> texts = List.of(
                "cold-static: 4.2 bar\ntyre-gauge: 290 kPa \u00b1 5 kPa\ncaught-volume: 1.5 L +/- 0.2 L\n"
                        + "hot-tap: 60 C\nheat-up-maximum: 8.01325 bar abs\n",
                "{ cold-static: 61 psi, tyre-gauge: 42 psi +/- 1 psi, hot-tap: 140 degF \u00b1 2 K }\n",
                "next-morning: 4 bar\ncaught-volume: 2 gal\n");
        look(reporter, "spots.yaml", YamlMutations.ALL, texts);
    }

    private void look(TestReporter reporter, String name, List<Mutation> mutations, List<String> texts) {
        cases = new Cases(folder.resolve(name), mutations, texts);
        cases.all(reporter, this::use);
        reporter.publishEntry(read + " of them are readings");
        assertTrue(read > Cases.COUNT / 50 && read < Cases.COUNT, "some are readings, some are not: " + read);
    }

    /** Forty minutes; those on a clock pass midnight. */
    private static String log(String header, String delimiter, String clock) {
        StringBuilder text = new StringBuilder(header).append('\n');
        for (int i = 0; i < 40; i++) {
            int minutes = 1_420 + i;
            text.append(
                    clock.isEmpty()
                            ? Integer.toString(60 * i)
                            : String.format(Locale.ROOT, clock, minutes / 60 % 24, minutes % 60));
            for (String cell : List.of("4." + i, "2" + i % 10, i % 8 < 4 ? "on" : "off")) {
                text.append(delimiter).append(cell);
            }
            text.append('\n');
        }
        return text.toString();
    }

    private void use(Path file, Chance chance) throws IOException {
        try {
            look(cases.timed(path -> OwnersReadings.none().with(path, AIR)));
            read++;
            return;
        } catch (InvalidReadingsException refused) {
            ComplaintRules.broken(refused.faults(), file).forEach(cases::broken);
        } catch (IOException unread) {
            cases.unread(unread);
        }
        if (chance.oneIn(ONE_IN)) {
            String out = folder.resolve("out").toString();
            Outcome outcome = Outcome.execute("diagnose", "mill-cottage", "-r", file.toString(), "-o", out);
            cases.refused(outcome.status(), outcome.err());
        }
    }

    /** What is read has numbers in order, and remarks that show. */
    private void look(OwnersReadings readings) {
        for (String remark : readings.remarks()) {
            if (!Printable.shows(remark) || remark.isBlank()) {
                cases.broken("a remark does not show: " + Printable.quote(remark));
            }
        }
        for (SpotReading spot : readings.spots().all().values()) {
            finite("a reading on site", spot.value());
            finite("its uncertainty", spot.uncertainty());
        }
        readings.log().ifPresent(this::inOrder);
    }

    private void inOrder(PressureLog log) {
        finite("the uncertainty of the log", log.uncertainty());
        finite("its step", log.step());
        for (int i = 0; i < log.count(); i++) {
            finite("a pressure", log.gauge(i));
            finite("a time", log.time(i));
            log.temperature(i).ifPresent(kelvin -> finite("a temperature", kelvin));
            if (i > 0 && log.time(i) <= log.time(i - 1)) {
                cases.broken("time does not run forward in reading " + i);
                return;
            }
        }
    }

    private void finite(String what, double value) {
        if (!Double.isFinite(value)) {
            cases.broken(what + " is " + value);
        }
    }
}
