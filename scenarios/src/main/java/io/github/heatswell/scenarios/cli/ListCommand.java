package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.wording.Wrapped;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell list}: names the bundled scenarios and the questions they answer. */
final class ListCommand implements CliCommand {

    @Override
    public void describe(CommandSpec spec) {
        Specs.describe(spec, "List the bundled scenarios and the questions they answer.");
        spec.usageMessage().exitCodeListHeading("").exitCodeList(null);
    }

    @Override
    public ExitStatus execute(Request request) {
        StringBuilder text = new StringBuilder("Bundled scenarios; the houses are invented.\n");
        for (Catalogue.Topic topic : Catalogue.topics()) {
            text.append('\n').append(topic.question().toUpperCase(Locale.ROOT)).append('\n');
            for (String name : topic.names()) {
                Catalogue.Listing listing = Catalogue.listing(name);
                text.append('\n').append(name).append('\n');
                text.append(Wrapped.lines(listing.title() + ".", "  ", "  "));
                text.append(Wrapped.lines(listing.question(), "  ", "  "));
            }
        }
        request.console()
                .print(text.append("\nRun one with: heatswell run NAME\n")
                        .append(NextLine.of("run", "orchard-lodge"))
                        .toString());
        return ExitStatus.RAN;
    }
}
