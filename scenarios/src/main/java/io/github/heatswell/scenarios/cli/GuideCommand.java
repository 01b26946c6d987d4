package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.interview.Guide;
import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutputException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell guide}: leads through the job by the commands as they are. */
final class GuideCommand implements CliCommand {

    private static final String PAPERS = "papers";

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(InterviewCommand.house("File of the house; if there is none, you describe the house first."));
        spec.addOption(Specs.folder(
                "Default: heatswell-out/NAME, heatswell-out/NAME-outlook and so on.", "-r", InterviewCommand.RESULTS));
        spec.addOption(Specs.units(
                "Units of examples and reports: si (bar, degC, L), us (psi, degF, gal) or kpa (si with kPa)."
                        + " Default: those of the place, or si."));
        Specs.describe(
                spec,
                "Go through the whole job, from the drip to a vessel that stops it.",
                "Seven steps: the drip, its cause, the size, the vessel, its charge, the check,",
                "and the years. If there is no file of the house yet, it asks about the house",
                "first, as heatswell interview does. Each step is a command that you could type",
                "yourself.",
                "",
                "Type quit at any question; the same command picks up from there. It keeps its",
                "place in my-house.guide.txt, beside the file of the house. To start over, type",
                "new after a step, when it asks whether to go on.");
    }

    @Override
    public ExitStatus execute(Request request) {
        Path house = request.out().orElse(InterviewCommand.DEFAULT_FILE);
        Console console = request.console();
        List<String> units = new ArrayList<>();
        request.asked()
                .ifPresent(asked -> units.addAll(List.of("-u", asked.name().toLowerCase(Locale.ROOT))));
        try {
            Optional<Path> results = Optional.ofNullable(request.option(InterviewCommand.RESULTS, (Path) null));
            Guide.Ending ended = Guide.lead(house, request.asked(), console.in(), console.out(), new Guide.Commands() {
                @Override
                public Guide.Done run(List<String> words) {
                    List<String> all = new ArrayList<>(
                            results.map(folder -> into(folder, words)).orElse(words));
                    all.addAll(units);
                    List<NextStep> next = new ArrayList<>();
                    int status = CommandFactory.led(console, next::add).execute(all.toArray(String[]::new));
                    return new Guide.Done(status, next.stream().findFirst());
                }

                @Override
                public Path papers(Path usual) {
                    return results.map(folder -> folder.resolve(PAPERS)).orElse(usual);
                }
            });
            List<String> next = new ArrayList<>(ended.next());
            if (ended.ending() != Outcome.Ending.FINISHED) {
                next.addAll(List.of("guide", "-o", house.toString()));
                results.ifPresent(folder -> next.addAll(List.of("-r", folder.toString())));
            }
            if (!next.isEmpty()) {
                next.addAll(units);
                console.print(NextLine.of(next.toArray(String[]::new)));
            }
            return status(ended, console);
        } catch (OutputException e) {
            console.complain(house + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
    }

    /** A command line that writes into a folder of the results asked for: all papers of the work into one. */
    private static List<String> into(Path results, List<String> words) {
        List<String> all = new ArrayList<>(words);
        int out = all.indexOf(Specs.OUT);
        if (out >= 0) {
            all.subList(out, out + 2).clear();
        }
        String name = List.of("run", "size").contains(words.get(0)) ? PAPERS : words.get(0);
        all.addAll(List.of(Specs.OUT, results.resolve(name).toString()));
        return all;
    }

    private static ExitStatus status(Guide.Ending ended, Console console) {
        if (ended.ending() == Outcome.Ending.ENDED) {
            console.complain("heatswell: the input ended before the last step");
            return ExitStatus.BAD_INPUT;
        }
        if (ended.ending() == Outcome.Ending.OBSTRUCTED) {
            console.complain("heatswell: another file has the name under which an unfinished interview is saved");
            return ExitStatus.BAD_INPUT;
        }
        return List.of(ExitStatus.values()).stream()
                .filter(status -> status.code() == ended.status())
                .findFirst()
                .orElse(ExitStatus.FAILED);
    }
}
