package io.github.heatswell.scenarios.report;

import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.InstalledCheck;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import io.github.heatswell.units.PressureUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Diagnoses for tests, from readings of known origin. */
public final class Diagnoses {

    /** Answers already found, by what they are of: each takes seconds, and several classes look at the same. */
    private static final Map<String, DiagnosisAnswer> FOUND = new HashMap<>();

    private Diagnoses() {}

    /** What a log of a house with a change says, on steps of 1 psi, with a column of hostile texts, and readings on site. */
    public static synchronized DiagnosisAnswer of(String name, String change, Path folder) throws IOException {
        String key = name + ", " + change;
        if (!FOUND.containsKey(key)) {
            FOUND.put(key, of(Catalogue.read(name), log(name, change, folder), spots(folder)));
        }
        return FOUND.get(key);
    }

    /** What readings on site alone say. */
    public static DiagnosisAnswer ofSpots(String name, Path folder) throws IOException {
        return of(Catalogue.read(name), spots(folder));
    }

    private static DiagnosisAnswer of(Scenario house, Path... files) throws IOException {
        double air = house.system().site().atmosphere();
        OwnersReadings readings = OwnersReadings.none();
        for (Path file : files) {
            readings = readings.with(file, air);
        }
        Diagnosis.Builder builder =
                Diagnosis.builder(house.system()).spots(readings.spots()).threads(2);
        readings.log().ifPresent(builder::log);
        Diagnosis diagnosis = builder.build();
        return new DiagnosisAnswer(
                house,
                readings,
                diagnosis.log(),
                diagnosis.run(),
                Optional.of(InstalledCheck.of(house.system(), readings.spots())));
    }

    private static Path spots(Path folder) throws IOException {
        return Files.writeString(folder.resolve("spots.yaml"), "cold-static: 61 psi\ntyre-gauge: 4.2 bar\n");
    }

    /** A log of a house with a change. */
    public static Path log(String name, String change, Path folder) throws IOException {
        Trace trace = Catalogue.read(name)
                .with(List.of(Change.of(change)))
                .simulation()
                .run()
                .trace();
        StringBuilder text = new StringBuilder("time_s,pressure_psi,note\n");
        String[] notes = {"=1+1", "+1", "-1", "@SUM(A1)", "<script>alert(1)</script>", "\u001b[31mred"};
        for (int i = 0; i < trace.count(); i++) {
            text.append(Math.round(trace.grid().time(i)))
                    .append(',')
                    .append(Math.round(PressureUnit.PSI.fromSi(trace.value(Channel.GAUGE_READING, i))))
                    .append(',')
                    .append(notes[i % notes.length])
                    .append('\n');
        }
        return Files.writeString(folder.resolve("log.csv"), text);
    }
}
