package io.github.heatswell.scenarios.cli;

import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.InstalledCheck;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReading;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.readings.InvalidReadingsException;
import io.github.heatswell.scenarios.readings.LogHints;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.DiagnosisAnswer;
import io.github.heatswell.scenarios.report.DiagnosisReport;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** {@code heatswell diagnose}: what the readings of a gauge say of a house. */
final class DiagnoseCommand implements ScenarioCommand {

    private static final String READINGS = "--readings";
    private static final String PRESSURE_UNIT = "--pressure-unit";
    private static final String SEEN = "--seen";
    private static final String COLUMNS = "--columns";
    /** A difference this close (Pa) to the pressure of the air may be that; our own judgement. */
    private static final double AS_AIR = 0.2e5;
    /** A vessel with more water (-) than this is called full of it. */
    private static final double HALF = 0.5;

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(OptionSpec.builder("-r", READINGS)
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(Path.class)
                .description(
                        "A gauge log in CSV (a header line that names columns and units, then a time and a pressure"
                                + " in every row), a list as written by hand (6:45 am 61 psi showered), or site readings in a .yaml"
                                + " file. Use it twice to give one of each.")
                .build());
        spec.addOption(OptionSpec.builder(PRESSURE_UNIT)
                .paramLabel("UNIT")
                .type(String.class)
                .converters(Specs.by(DiagnoseCommand::pressureUnit))
                .description("The unit of the pressures in a log that names none, such as psi or bar.")
                .build());
        spec.addOption(OptionSpec.builder(COLUMNS)
                .paramLabel("NAMES")
                .type(String.class)
                .description(
                        "Names for all columns of a log with their units, in place of those in the file or where it has none:"
                                + " time_min,pressure_psi,note. A column named - is not used.")
                .build());
        spec.addOption(OptionSpec.builder(SEEN)
                .paramLabel("WORDS")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(
                        "What you saw at the vessel or hot tap, in quotes: 'vessel heavy', 'water at the gas valve', 'tyre gauge 40 psi',"
                                + " 'hot tap 58 C'. May be given several times, with or without readings in a file.")
                .build());
        spec.addOption(Specs.threads());
        spec.addOption(Specs.out("Default: heatswell-out/NAME-diagnosis."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units(
                "Units of report, tables and charts: si (bar, degC, L), us (psi, degF, gal) or kpa (si with kPa). Default: those of the"
                        + " scenario file; for a bundled scenario those of the log."));
        Specs.describe(
                spec,
                "Work out from gauge readings why the relief valve drips.",
                "Describe the house as it should be; the readings show how it is. Ranks the possible causes by how"
                        + " well each explains the readings, estimates values with their intervals, and names the"
                        + " site check that would settle the rest. Writes to a folder:",
                "  diagnosis.json, report.html and, with a log,",
                "  readings.csv, readings.png, readings.svg",
                "Pressures are gauge pressures.");
    }

    private static String pressureUnit(String text) {
        try {
            QuantityReader.pressure("1 " + text);
            return text.toLowerCase(Locale.ROOT);
        } catch (IllegalArgumentException none) {
            throw new TypeConversionException(none.getMessage());
        }
    }

    @Override
    public String folderEnding() {
        return "-diagnosis";
    }

    @Override
    public ResultFolder folder(ResultFolder folder, Request request) {
        return folder.sparing(files(request));
    }

    @Override
    public void check(int scenarios, Request request) throws NoAnswerException {
        if (scenarios != 1) {
            throw request.refused("diagnose takes one scenario, not " + scenarios);
        }
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) throws NoAnswerException {
        OwnersReadings readings = readings(scenario.system().site().atmosphere(), request);
        UnitSystem units = units(scenario, readings, request);
        OwnersReadings doubted = readings;
        for (String doubt : Stream.of(absolute(scenario.system(), readings, units), undescribed(scenario, readings))
                .flatMap(Optional::stream)
                .toList()) {
            doubted = doubted.doubted(doubt);
        }
        return DiagnosisReport.answer(diagnose(scenario.in(units), withHint(doubted, units, request), request), units);
    }

    /** Whether a log begins as far from the supply of the description as the air presses, as a whole sentence; empty if not. */
    private static Optional<String> absolute(HotWaterSystem house, OwnersReadings readings, UnitSystem units) {
        if (readings.log().isEmpty()) {
            return Optional.empty();
        }
        double air = house.site().atmosphere();
        double above =
                readings.log().get().gauge(0) - house.supplyAtStart().gauge(air) + house.head(house.gaugeHeight());
        String far = QuantityFormat.ascii(units).pressureDifference(Math.abs(above));
        if (Math.abs(above - air) < AS_AIR) {
            return Optional.of("The log begins " + far
                    + " above the supply pressure described, which is about the pressure of the air. If the"
                    + " sensor reads absolute pressure, name its column pressure_psi_abs or pressure_bar_abs.");
        }
        return Math.abs(above + air) < AS_AIR
                ? Optional.of("The log begins " + far
                        + " below the supply pressure described, which is about the pressure of the air. If"
                        + " the sensor reads 0 in open air, it does not read absolute pressure: leave abs out"
                        + " of the column's name.")
                : Optional.empty();
    }

    /** That a vessel was read which the description does not know, as a whole sentence; empty if not. */
    private static Optional<String> undescribed(Scenario scenario, OwnersReadings readings) {
        Map<SiteCheck, SpotReading> all = readings.spots().all();
        if (!scenario.system().vessels().isEmpty() || all.keySet().stream().noneMatch(SiteCheck::isOfVessel)) {
            return Optional.empty();
        }
        boolean wet = Stream.of(SiteCheck.GAS_VALVE, SiteCheck.VESSEL_FULL)
                .anyMatch(check -> all.containsKey(check) && all.get(check).value() > HALF);
        return Optional.of(
                "You took readings of an expansion vessel, but the house described has none. Describe the vessel with its volume"
                        + " and precharge, and run again: those readings are left out here."
                        + (wet
                                ? " A vessel full of water, or water at its air valve, means that its diaphragm has failed."
                                : ""));
    }

    /** Those asked for; else those of the owner's file; of a bundled house, which is nobody's, those of the log. */
    private static UnitSystem units(Scenario scenario, OwnersReadings readings, Request request) {
        UnitSystem unasked =
                Batch.isBundled(request.words().get(0)) ? readings.units().orElse(scenario.units()) : scenario.units();
        return request.option(Specs.UNITS, unasked);
    }

    private static OwnersReadings withHint(OwnersReadings readings, UnitSystem units, Request request) {
        return readings.units()
                .filter(logged -> logged != units && request.option(Specs.UNITS, null) == null)
                .map(logged ->
                        readings.remarked("the log is in " + logged.pressure().symbol() + ", the house in "
                                + units.pressure().symbol() + "; for an answer in the units of the log, add --units "
                                + logged.name().toLowerCase(Locale.ROOT)))
                .orElse(readings);
    }

    private static OwnersReadings readings(double atmosphere, Request request) throws NoAnswerException {
        OwnersReadings readings = OwnersReadings.none();
        for (Path file : files(request)) {
            try {
                readings = readings.with(
                        file,
                        atmosphere,
                        new LogHints(
                                Optional.ofNullable(request.option(PRESSURE_UNIT, null)),
                                Optional.ofNullable(request.option(COLUMNS, null))));
            } catch (InvalidReadingsException e) {
                String instead = e.isUnitMissing() ? ", or give it with " + PRESSURE_UNIT : "";
                throw wrong(file, e.getMessage().lines().map(line -> ":" + line + instead));
            } catch (FileSystemException e) {
                throw wrong(file, Stream.of(": " + Objects.requireNonNullElse(e.getReason(), "cannot be read")));
            } catch (IOException | IllegalArgumentException e) {
                throw wrong(file, Stream.of(": " + e.getMessage()));
            }
        }
        for (String words : request.option(SEEN, List.<String>of())) {
            try {
                readings = readings.noted(words);
            } catch (IllegalArgumentException e) {
                throw new NoAnswerException("heatswell: " + SEEN + ": " + e.getMessage(), "");
            }
        }
        if (files(request).isEmpty() && readings.spots().isEmpty()) {
            throw new NoAnswerException(
                    "heatswell: there are no readings; name their file with " + READINGS
                            + ", or say what you saw at the vessel or tap with " + SEEN,
                    "");
        }
        if (readings.log().isEmpty() && readings.spots().isEmpty()) {
            throw new NoAnswerException("heatswell: the files contain no readings", "");
        }
        return readings;
    }

    private static NoAnswerException wrong(Path file, Stream<String> complaints) {
        String name = Printable.line(file.toString());
        return new NoAnswerException(complaints.map(line -> name + line).collect(Collectors.joining("\n")), "");
    }

    private static List<Path> files(Request request) {
        return request.option(READINGS, List.of());
    }

    /** Whether the file leaves out the reseat pressure of every relief valve, which are few: a plate names none. */
    private static boolean reseatAssumed(Scenario scenario) {
        long assumed = scenario.assumptions().stream()
                .filter(assumption -> assumption.field().matches("relief\\[\\d+]\\.reseats"))
                .count();
        return assumed > 0 && assumed == scenario.system().reliefValves().size();
    }

    private static DiagnosisAnswer diagnose(Scenario scenario, OwnersReadings readings, Request request)
            throws NoAnswerException {
        Diagnosis.Builder builder =
                Diagnosis.builder(scenario.system()).spots(readings.spots()).threads(request.threads());
        readings.log().ifPresent(builder::log);
        if (reseatAssumed(scenario)) {
            builder.reseatAssumed();
        }
        if (scenario.assumptions().stream().anyMatch(one -> one.field().endsWith(".acceptance"))) {
            builder.acceptanceAssumed();
        }
        SpotReadings counting = readings.spots().of(scenario.system());
        Diagnosis diagnosis = built(builder, request);
        return new DiagnosisAnswer(
                scenario,
                readings,
                diagnosis.log(),
                diagnosis.run(),
                counting.isEmpty() ? Optional.empty() : Optional.of(InstalledCheck.of(scenario.system(), counting)));
    }

    private static Diagnosis built(Diagnosis.Builder builder, Request request) throws NoAnswerException {
        try {
            return builder.build();
        } catch (IllegalArgumentException contradictory) {
            throw request.refused(contradictory.getMessage());
        }
    }
}
