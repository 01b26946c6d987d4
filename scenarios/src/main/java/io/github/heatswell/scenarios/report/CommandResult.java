package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Result of a command. Everything is computed before it is created; writing its files only formats it. The one
 * exception is a run too long for memory, which runs while its trace is written and whose report follows.
 *
 * @param files what is written, in this order
 * @param report what is shown, once the files are complete
 */
public record CommandResult(List<ResultFile> files, Supplier<Report> report) {

    /**
     * Checks that everything is there and copies the list.
     *
     * @param files what is written, in this order
     * @param report what is shown, once the files are complete
     */
    public CommandResult {
        files = List.copyOf(files);
        Objects.requireNonNull(report, "report");
    }

    /**
     * An answer whose document is shown on the screen and written as {@code report.html}, after the other files.
     *
     * @param content what the answer says, with quantities as they are to be written
     * @param balances those of the runs behind the answer
     * @param units the units of screen and page
     * @param tables files of numbers
     * @param pictures files that are made at the same time as the page
     */
    static CommandResult of(
            Function<QuantityFormat, Document> content,
            Balances balances,
            UnitSystem units,
            List<ResultFile> tables,
            List<ResultFile> pictures) {
        Report report = Report.of(content.apply(onScreen(units)), balances);
        List<ResultFile> drawn = new ArrayList<>(pictures);
        drawn.add(page(out -> HtmlPage.write(content.apply(onPage(units)), out)));
        List<ResultFile> files = new ArrayList<>(tables);
        files.addAll(ResultFile.sideBySide(drawn));
        return new CommandResult(files, () -> report);
    }

    /** The same with what comes next where nobody may be hurt. */
    CommandResult then(NextStep step) {
        return new CommandResult(files, () -> report.get().thenIfCalm(step));
    }

    /**
     * The hazards of a house about which a question has no answer.
     *
     * @param house the house as it is
     * @return paragraphs, each ended by an empty line; empty if there is no hazard
     */
    public static String hazards(Scenario house) {
        return AlarmNote.lines(AlarmNote.of(house, onScreen(house.units())), " in the house as it is");
    }

    /** The files of a picture. */
    static List<ResultFile> pictures(String name, Chart chart) {
        return List.of(
                ResultFile.of(name + ".png", chart::writePng), ResultFile.ofText(name + ".svg", chart::writeSvg));
    }

    /** The printed report as a file. */
    static ResultFile page(ResultFile.Text text) {
        return ResultFile.ofText("report.html", text);
    }

    /** How the screen writes quantities. */
    static QuantityFormat onScreen(UnitSystem units) {
        return QuantityFormat.ascii(units);
    }

    /** How a page writes quantities. */
    static QuantityFormat onPage(UnitSystem units) {
        return QuantityFormat.printed(units);
    }
}
