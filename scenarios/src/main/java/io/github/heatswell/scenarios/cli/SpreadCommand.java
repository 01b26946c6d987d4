package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.SpreadReport;
import io.github.heatswell.scenarios.spread.HouseSpread;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code heatswell spread}: simulates many houses that differ in the uncertain values. */
final class SpreadCommand implements ScenarioCommand {

    private static final String SAMPLES = "--samples";
    private static final String SEED = "--seed";
    private static final int USUAL_SAMPLES = 1024;
    private static final int MIN_SAMPLES = 16;
    private static final int MAX_SAMPLES = 1_000_000;

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(OptionSpec.builder("-n", SAMPLES)
                .paramLabel("NUMBER")
                .type(Integer.class)
                .description("How many houses to simulate, 16 to 1000000. Default: 1024.")
                .build());
        spec.addOption(OptionSpec.builder(SEED)
                .paramLabel("NUMBER")
                .type(Long.class)
                .description("Seed of the random numbers: the same seed gives the same answer. Default: 1.")
                .build());
        spec.addOption(Specs.threads());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-spread. With several scenarios: DIR/NAME-spread for each."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Estimate how far off the answer may be.",
                "Simulates many houses that differ in the scenario's uncertain values (such as '4.2 bar +- 0.2 bar'"
                        + " or '4 bar to 4.6 bar'). If it has none, usual uncertainties are assumed. Shows in how"
                        + " many houses a relief valve discharges, how the peaks spread, and which value matters"
                        + " most. If interrupted, it writes what it has so far. Writes to a folder:",
                "  spread.csv, samples.csv, spread.json, spread.png, spread.svg, report.html",
                "Pressures are gauge pressures.");
    }

    @Override
    public String folderEnding() {
        return "-spread";
    }

    @Override
    public boolean reserves() {
        return true;
    }

    @Override
    public ExitStatus execute(Request request) {
        int samples = samples(request);
        if (samples < MIN_SAMPLES || samples > MAX_SAMPLES) {
            request.console()
                    .complain("heatswell: --samples: " + samples + " is outside the allowed range, 16 to 1000000");
            return ExitStatus.BAD_INPUT;
        }
        return Runner.each(this, request);
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) throws NoAnswerException {
        SpreadAnswer answer = spread(scenario, request);
        if (answer.peak().answered() == 0) {
            throw request.refused(
                    answer.result().completed() == 0
                            ? "interrupted before the first sample finished; nothing was written"
                            : "none of the samples could be simulated, the first for this reason: "
                                    + answer.result().firstFailure().orElse("")
                                    + "; check the value and narrow its uncertainty");
        }
        return SpreadReport.answer(answer, scenario.units());
    }

    private static SpreadAnswer spread(Scenario scenario, Request request) {
        try (ProgressLine progress = ProgressLine.shownTo(request)) {
            return HouseSpread.of(scenario)
                    .samples(samples(request))
                    .seed(request.option(SEED, 1L))
                    .threads(request.threads())
                    .stopWhen(request.interrupted())
                    .progress(progress::done)
                    .build()
                    .answer();
        }
    }

    private static int samples(Request request) {
        return request.option(SAMPLES, USUAL_SAMPLES);
    }
}
