package io.github.heatswell.scenarios.cli;

import io.github.heatswell.ageing.Outlook;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.outlook.HouseOutlook;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutlookReport;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** {@code heatswell outlook}: what the years will do as the vessel loses its charge. */
final class OutlookCommand implements ScenarioCommand {

    private static final String YEARS = "--years";
    private static final String FADE = "--fade";
    private static final String MAINS_SWING = "--mains-swing";
    private static final int USUAL_YEARS = 10;

    private static final String RANGE = " to ";

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(years());
        spec.addOption(fade());
        spec.addOption(mainsSwing());
        spec.addOption(Specs.threads());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-outlook. With several scenarios: DIR/NAME-outlook for each."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Look years ahead, as the vessel loses its precharge.",
                "Simulates the worst day of every month as the vessel loses precharge and the cold water follows the"
                        + " seasons. Shows when a relief valve starts to drip and how certain that is, how low the"
                        + " precharge may fall, when to check it, and what a larger vessel would change. Writes to"
                        + " a folder:",
                "  outlook.csv, outlook.json, outlook.png, outlook.svg, report.html",
                "Pressures are gauge pressures.");
    }

    @Override
    public String folderEnding() {
        return "-outlook";
    }

    @Override
    public Optional<NextStep> otherwise(Scenario scenario) {
        List<ExpansionVessel> vessels = scenario.system().vessels();
        if (vessels.isEmpty()) {
            return Optional.of(NextStep.to("size"));
        }
        return vessels.stream().anyMatch(one -> one.condition() == ExpansionVessel.Condition.SOUND)
                ? Optional.empty()
                : Optional.of(NextStep.to("run"));
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) throws NoAnswerException {
        OutlookAnswer answer;
        try {
            answer = HouseOutlook.of(scenario)
                    .years(request.option(YEARS, USUAL_YEARS))
                    .fading(request.option(FADE, PrechargeLoss.Range.usual()))
                    .mainsSwing(request.option(MAINS_SWING, 0.0))
                    .sampled(study -> study.threads(request.threads()))
                    .build()
                    .answer();
        } catch (IllegalArgumentException e) {
            throw request.refused(scenario.units().spelled(why(scenario, e)), CommandResult.hazards(scenario));
        }
        return OutlookReport.answer(answer, scenario.units());
    }

    private static String why(Scenario scenario, IllegalArgumentException refusal) {
        List<ExpansionVessel> vessels = scenario.system().vessels();
        if (vessels.isEmpty()) {
            return "this house has no expansion vessel, so there is no precharge to lose; 'heatswell size' finds one";
        }
        return vessels.stream().anyMatch(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                ? "cannot look ahead: " + refusal.getMessage()
                : (vessels.size() == 1 ? "the vessel of this house does not work," : "no vessel of this house works,")
                        + " so there is no precharge to lose; 'heatswell run' says what to do";
    }

    private static OptionSpec years() {
        return OptionSpec.builder("-y", YEARS)
                .paramLabel("NUMBER")
                .type(Integer.class)
                .converters(Specs.by(OutlookCommand::years))
                .description("How many years to look ahead, 1 to 40. Default: 10.")
                .build();
    }

    private static OptionSpec fade() {
        return OptionSpec.builder(FADE)
                .paramLabel("RATE")
                .type(PrechargeLoss.Range.class)
                .converters(Specs.by(OutlookCommand::fading))
                .description("Share of its gauge pressure the precharge loses per year, such as '8 %%', or a range such"
                        + " as '5 %% to 20 %%'; the geometric mean of a range is the expected rate."
                        + " Default: '3 %% to 25 %%', 8.5 %% expected: an estimate for a butyl diaphragm,"
                        + " good to a factor of three.")
                .build();
    }

    private static OptionSpec mainsSwing() {
        return OptionSpec.builder(MAINS_SWING)
                .paramLabel("PRESSURE")
                .type(Double.class)
                .converters(Specs.by(OutlookCommand::swing))
                .description("Seasonal swing of the mains pressure from lowest to highest, such as '0.6 bar'. It is"
                        + " highest when the water is coldest. Default: 0 bar.")
                .build();
    }

    private static Integer years(String text) {
        if (!text.matches("\\d{1,3}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > Outlook.MAX_YEARS) {
            throw new TypeConversionException(
                    Printable.quote(text) + " is not a number of years from 1 to " + Outlook.MAX_YEARS);
        }
        return Integer.valueOf(text);
    }

    private static PrechargeLoss.Range fading(String text) {
        try {
            int middle = text.indexOf(RANGE);
            if (middle < 0) {
                return PrechargeLoss.Range.exactly(loss(text));
            }
            PrechargeLoss slow = loss(text.substring(0, middle));
            PrechargeLoss fast = loss(text.substring(middle + RANGE.length()));
            double between = Math.sqrt(slow.yearly() * fast.yearly());
            return new PrechargeLoss.Range(new PrechargeLoss(between), slow, fast);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    private static PrechargeLoss loss(String text) {
        Amount<RatioUnit> rate = QuantityReader.read(text.strip(), Kind.RATIO);
        double share = rate.unit().toSi(rate.value());
        if (share > 1) {
            throw new IllegalArgumentException(
                    Printable.quote(text.strip()) + " is more than all of it; a year takes 100 % at most");
        }
        return new PrechargeLoss(share);
    }

    private static Double swing(String text) {
        try {
            Amount<PressureUnit> swing = QuantityReader.read(text, Kind.PRESSURE);
            return swing.unit().toSi(swing.value());
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }
}
