package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.report.BoughtVessel;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.SizingReport;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.VolumeUnit;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** {@code heatswell size}: finds the vessel for each scenario. */
final class SizeCommand implements ScenarioCommand {

    private static final String AGAINST = "--against";
    private static final String BOUGHT = "--bought";
    private static final String CHARGED = "--charged";
    private static final String LIMIT = "--limit";
    private static final String RATING = "--rating";
    private static final String NO_CODE_CAP = "--no-code-cap";
    private static final String PRECHARGE = "--precharge";

    private static final Map<String, VesselSizing.Precharge> RULES =
            Map.of("static", VesselSizing.Precharge.STATIC, "din", VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR);

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(volume(
                AGAINST,
                "A vessel that another rule calls for, such as '4.4 gal'. It is compared with the recommended one, on the"
                        + " screen and on the report's sheet for the authority."));
        spec.addOption(volume(
                BOUGHT,
                "The vessel you bought. It is compared with the recommended one, and the report's sheets for fitting are for"
                        + " this vessel."));
        spec.addOption(pressure(
                CHARGED,
                "What the vessel you bought was charged to when you read it. The sheets say what to bring it to."));
        spec.addOption(limit());
        spec.addOption(rating());
        spec.addOption(noCodeCap());
        spec.addOption(precharge());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-sizing. With several scenarios: DIR/NAME-sizing for each."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Find the smallest expansion vessel and its precharge.",
                "Simulates the worst heat-up (a cold fill, and the first week of the scenario's own run) with"
                        + " vessels of many sizes, and compares the answer with published formulas. Writes to a"
                        + " folder:",
                "  sizing.csv, sizing.json, before-after.png, before-after.svg, sizes.png,",
                "  sizes.svg, report.html",
                "Pressures are gauge pressures.");
    }

    @Override
    public String folderEnding() {
        return "-sizing";
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) throws NoAnswerException {
        Optional<String> weak = Optional.ofNullable(request.option(RATING, (Pressure) null))
                .flatMap(
                        rating -> BoughtVessel.weak(scenario.system(), rating, QuantityFormat.ascii(scenario.units())));
        if (weak.isPresent()) {
            throw request.refused(weak.get(), CommandResult.hazards(scenario));
        }
        VesselAnswer answer;
        try {
            answer = choice(scenario, request).answer();
        } catch (IllegalArgumentException e) {
            throw request.refused("cannot size a vessel: " + e.getMessage(), CommandResult.hazards(scenario));
        }
        return SizingReport.answer(answer, scenario.units());
    }

    private static VesselChoice choice(Scenario scenario, Request request) {
        VesselChoice.Builder choice = VesselChoice.of(scenario)
                .limit(Optional.ofNullable(request.option(LIMIT, (Pressure) null)))
                .precharge(request.option(PRECHARGE, VesselSizing.Precharge.STATIC));
        Optional.ofNullable(request.option(RATING, (Pressure) null)).ifPresent(choice::rating);
        Optional.ofNullable(request.option(AGAINST, (NominalSize) null)).ifPresent(choice::against);
        Optional.ofNullable(request.option(BOUGHT, (NominalSize) null)).ifPresent(choice::bought);
        Optional.ofNullable(request.option(CHARGED, (Pressure) null)).ifPresent(choice::charged);
        if (request.arguments().hasMatchedOption(NO_CODE_CAP)) {
            choice.withoutCodeCap();
        }
        return choice.build();
    }

    private static OptionSpec volume(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("VOLUME")
                .type(NominalSize.class)
                .converters(Specs.by(SizeCommand::size))
                .description(description)
                .build();
    }

    private static NominalSize size(String text) {
        try {
            Amount<VolumeUnit> volume = QuantityReader.read(text, Kind.VOLUME);
            return NominalSize.of(volume.value(), volume.unit());
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    private static OptionSpec limit() {
        return pressure(
                LIMIT,
                "Your own limit for the peak pressure, such as '5 bar'. The lowest of these governs: this limit, the"
                        + " reseat pressure of a relief valve less 3 %% of its set pressure, the local limit (80 psi in the US and"
                        + " where the place is not known), and the ratings of vessel and tank.");
    }

    private static OptionSpec rating() {
        return pressure(
                RATING,
                "Maximum working pressure of the vessel. Default: that of the scenario's vessel, or 10 bar (in US units 150 psi).");
    }

    private static OptionSpec noCodeCap() {
        return OptionSpec.builder(NO_CODE_CAP)
                .description("Drop the local limit.")
                .build();
    }

    private static OptionSpec precharge() {
        return OptionSpec.builder(PRECHARGE)
                .paramLabel("static|din")
                .type(VesselSizing.Precharge.class)
                .converters(Specs.by(SizeCommand::rule))
                .description("Precharge: static (default), the static supply pressure; or din, 0.2 bar below it.")
                .build();
    }

    private static OptionSpec pressure(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("PRESSURE")
                .type(Pressure.class)
                .converters(Specs.by(SizeCommand::pressure))
                .description(description)
                .build();
    }

    private static Pressure pressure(String text) {
        try {
            return QuantityReader.pressure(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    private static VesselSizing.Precharge rule(String text) {
        VesselSizing.Precharge rule = RULES.get(text.toLowerCase(Locale.ROOT));
        if (rule == null) {
            throw new TypeConversionException(Printable.quote(text) + " is neither static nor din");
        }
        return rule;
    }
}
