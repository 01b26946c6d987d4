package io.github.heatswell.scenarios.cli;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.interview.Interview;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.variation.Variation;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.TypeConversionException;

/** The parts that command lines have in common. */
final class Specs {

    /** Names of options, as in the results of parsing. */
    static final String OUT = "--out";

    static final String UNITS = "--units";
    static final String SAMPLE = "--sample";
    static final String PLACE = "--place";
    static final String SET = "--set";
    static final String VARY = "--vary";
    static final String THREADS = "--threads";
    static final int MAX_THREADS = 256;

    /** Where results go if nothing else is said. */
    static final String DEFAULT_OUT = "heatswell-out";

    private static final Map<String, UnitSystem> UNIT_SYSTEMS =
            Map.of("si", UnitSystem.SI, "us", UnitSystem.US, "kpa", UnitSystem.KPA);

    private static final String PLACES =
            Arrays.stream(Place.values()).map(Place::key).collect(Collectors.joining(", "));

    private Specs() {}

    /** A command with its help option and the list of exit statuses. */
    static CommandSpec command(CliCommand command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(command);
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Print this help and exit.")
                .build());
        spec.exitCodeOnInvalidInput(ExitStatus.BAD_INPUT.code());
        spec.exitCodeOnExecutionException(ExitStatus.FAILED.code());
        spec.usageMessage()
                .synopsisHeading("Usage: ")
                .parameterListHeading("%nArguments:%n")
                .optionListHeading("%nOptions:%n")
                .commandListHeading("%nCommands:%n")
                .exitCodeListHeading("%nExit status (the highest that applies):%n")
                .exitCodeList(ExitStatus.list());
        command.describe(spec);
        return spec;
    }

    /** A sentence on what a command does, and more lines if it takes more. */
    static void describe(CommandSpec spec, String header, String... description) {
        spec.usageMessage().header(header);
        if (description.length > 0) {
            spec.usageMessage().descriptionHeading("%n").description(description);
        }
    }

    /** The scenarios to run. */
    static PositionalParamSpec scenarios() {
        return PositionalParamSpec.builder()
                .paramLabel("SCENARIO")
                .arity("1..*")
                .required(true)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("A scenario file or the name of a bundled scenario. A name that ends in .yaml or .yml,"
                        + " or contains a slash, is a file.")
                .build();
    }

    static OptionSpec out(String fallback) {
        return folder(fallback, "-o", OUT);
    }

    /**
     * Reads a value. A class of its own, not a lambda: an archive of classes holds picocli's old interface, and so its converters, only
     * where no lambda implements it.
     */
    record By<T>(Function<String, T> reader) implements ITypeConverter<T> {

        @Override
        public T convert(String text) {
            return reader.apply(text);
        }
    }

    static <T> ITypeConverter<T> by(Function<String, T> reader) {
        return new By<>(reader);
    }

    /** The file that a command writes, and no other. */
    static OptionSpec file(String fallback) {
        return OptionSpec.builder("-o", OUT)
                .paramLabel("FILE")
                .type(Path.class)
                .converters(by(Specs::path))
                .description("The file to write; an existing one is replaced. " + fallback)
                .build();
    }

    /** An option for a folder of results. */
    static OptionSpec folder(String fallback, String... names) {
        return OptionSpec.builder(names)
                .paramLabel("DIR")
                .type(Path.class)
                .converters(by(Specs::path))
                .description(
                        "Folder for the results. Created if missing; existing files of the same names are replaced. "
                                + fallback)
                .build();
    }

    static OptionSpec units() {
        return units(
                "Units of report, tables and charts: si (bar, degC, L), us (psi, degF, gal) or kpa (si with kPa). Default: those of the"
                        + " scenario file.");
    }

    static OptionSpec units(String description) {
        return OptionSpec.builder("-u", UNITS)
                .paramLabel("si|us|kpa")
                .type(UnitSystem.class)
                .converters(by(Specs::unitSystem))
                .description(description)
                .build();
    }

    static OptionSpec sample() {
        return OptionSpec.builder("-s", SAMPLE)
                .paramLabel("TIME")
                .type(Duration.class)
                .converters(by(Specs::duration))
                .description("Sampling interval that overrides the scenario's, such as 10s or 5min.")
                .build();
    }

    static OptionSpec place() {
        return OptionSpec.builder(PLACE)
                .paramLabel("PLACE")
                .type(Place.class)
                .converters(by(Specs::place))
                .description("Place whose rules apply; overrides site.place: " + PLACES + ", or a state or country.")
                .build();
    }

    private static Place place(String text) {
        if (text.equalsIgnoreCase(Place.NOT_KNOWN.key())) {
            return Place.NOT_KNOWN;
        }
        try {
            return Interview.place(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(Printable.quote(text) + " is not one of " + PLACES);
        }
    }

    static OptionSpec set() {
        return OptionSpec.builder(SET)
                .paramLabel("FIELD=VALUE")
                .type(List.class)
                .auxiliaryTypes(Change.class)
                .converters(by(Specs::change))
                .description("Overrides a field, such as 'tank.volume=150 L', in every scenario. Write the value as"
                        + " in a file; 'none' removes the field. May be repeated.")
                .build();
    }

    static OptionSpec threads() {
        return OptionSpec.builder(THREADS)
                .paramLabel("NUMBER")
                .type(Integer.class)
                .converters(by(Specs::number))
                .description("Number of threads. The answer does not depend on it. Default: one per processor.")
                .build();
    }

    private static Integer number(String text) {
        if (!text.matches("\\d{1,3}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > MAX_THREADS) {
            throw new TypeConversionException(Printable.quote(text) + " is not a number from 1 to " + MAX_THREADS);
        }
        return Integer.valueOf(text);
    }

    static OptionSpec vary() {
        return OptionSpec.builder(VARY)
                .paramLabel("FIELD=A,B,...")
                .type(List.class)
                .auxiliaryTypes(Variation.class)
                .converters(by(Specs::variation))
                .description("Runs each scenario with every one of these values, such as vessel.volume=8L,12L,18L."
                        + " May be repeated: several fields give all combinations.")
                .build();
    }

    private static Variation variation(String text) {
        try {
            return Variation.of(text);
        } catch (IllegalArgumentException e) {
            boolean single = text.indexOf('=') > 0 && text.indexOf(',') < 0;
            throw new TypeConversionException(e.getMessage() + (single ? ", or use --set for a single value" : ""));
        }
    }

    private static Change change(String text) {
        try {
            return Change.of(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    private static Path path(String text) {
        try {
            if (!text.isBlank()) {
                return Path.of(text);
            }
        } catch (InvalidPathException e) {
            throw new TypeConversionException(Printable.quote(text) + " is not a valid folder name on this system");
        }
        throw new TypeConversionException("the folder name is missing");
    }

    private static UnitSystem unitSystem(String text) {
        UnitSystem units = UNIT_SYSTEMS.get(text.toLowerCase(Locale.ROOT));
        if (units == null) {
            throw new TypeConversionException(Printable.quote(text) + " is not si, us or kpa");
        }
        return units;
    }

    private static Duration duration(String text) {
        try {
            Amount<DurationUnit> amount = QuantityReader.read(text, Kind.DURATION);
            double seconds = amount.unit().toSi(amount.value());
            if (Math.abs(seconds) < 1e9) {
                return Duration.ofNanos(Math.round(seconds * 1e9));
            }
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
        throw new TypeConversionException(Printable.quote(text) + " is longer than any run can be");
    }
}
