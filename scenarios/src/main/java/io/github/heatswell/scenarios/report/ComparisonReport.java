package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.VariationTable;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.variation.Combinations.Variant;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Report on several runs side by side.
 */
public final class ComparisonReport {

    /** So many sentences tell what is not known of the houses, each of so many runs by name. */
    private static final int MAX_DOUBTS = 6;

    /** A changed field in the name of a variant, with its value. */
    private static final Pattern CHANGE = Pattern.compile("([a-z][a-z-]*(?:\\[\\d+])?(?:\\.[a-z-]+)+)=([^,]+)");

    private final List<NamedRun> drawn;
    private final List<NamedSummary> runs;
    private final Chart chart;
    private final List<Optional<Yardstick>> yardsticks;

    /**
     * The report of some runs of which nothing else is known.
     *
     * @param drawn the runs in the picture
     * @param runs all runs
     * @param chart the picture
     */
    ComparisonReport(List<NamedRun> drawn, List<NamedSummary> runs, Chart chart) {
        this(
                drawn,
                runs,
                chart,
                runs.stream().map(run -> Optional.<Yardstick>empty()).toList());
    }

    /**
     * The report of some runs.
     *
     * @param drawn the runs in the picture
     * @param runs all runs
     * @param chart the picture
     * @param yardsticks how the worst heat-up of each stands to its limit
     */
    private ComparisonReport(
            List<NamedRun> drawn, List<NamedSummary> runs, Chart chart, List<Optional<Yardstick>> yardsticks) {
        this.yardsticks = List.copyOf(yardsticks);
        this.drawn = List.copyOf(drawn);
        this.runs = List.copyOf(runs);
        this.chart = chart;
    }

    /**
     * The answer.
     *
     * @param fields the varied fields, none if scenarios were compared as they are
     * @param runs what was run; of more than six, the picture shows some
     * @param units the units of report, tables and picture
     * @return with the files comparison.csv, comparison.png, comparison.svg and report.html, and variations.csv if any field was
     *     varied
     */
    public static CommandResult answer(List<String> fields, VariantRuns runs, UnitSystem units) {
        List<NamedRun> drawn = runs.drawn().stream()
                .map(run -> new NamedRun(inWords(run.name(), units), run.result()))
                .toList();
        List<NamedSummary> named = runs.named().stream()
                .map(run -> new NamedSummary(inWords(run.name(), units), run.summary(), run.doubts()))
                .toList();
        Chart chart = Chart.comparing(drawn, named, units);
        List<ResultFile> tables = new ArrayList<>();
        tables.add(ResultFile.ofText("comparison.csv", out -> ComparisonTable.writeAll(runs.named(), units, out)));
        if (!fields.isEmpty()) {
            tables.add(
                    ResultFile.ofText("variations.csv", out -> VariationTable.write(fields, rows(runs), units, out)));
        }
        List<Optional<Yardstick>> yardsticks = runs.variants().stream()
                .map(variant -> VesselChoice.of(variant.scenario()).build().yardstick())
                .toList();
        ComparisonReport report = new ComparisonReport(drawn, named, chart, yardsticks);
        return CommandResult.of(
                        report::content, report.balances(), units, tables, CommandResult.pictures("comparison", chart))
                .then(new NextStep("size", List.of(), firstBeyond(yardsticks), Optional.empty()));
    }

    /** The first run whose worst heat-up exceeds the limit; the first of all if none does. */
    private static int firstBeyond(List<Optional<Yardstick>> yardsticks) {
        return IntStream.range(0, yardsticks.size())
                .filter(i -> yardsticks.get(i).filter(each -> !each.holds()).isPresent())
                .findFirst()
                .orElse(0);
    }

    /** What a variant is called by people: {@code vessel.volume=2gal} is {@code vessel volume 2 gal}. */
    static String inWords(String name, UnitSystem units) {
        return CHANGE.matcher(name)
                .replaceAll(change -> Matcher.quoteReplacement(NamedValue.of(change.group(1))
                        .map(value -> units.spelled(value.label()) + " "
                                + change.group(2).replaceFirst("^(-?[\\d.]+)(?=[a-zA-Z%])", "$1 "))
                        .orElse(change.group())));
    }

    private static List<VariationTable.Row> rows(VariantRuns runs) {
        List<VariationTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < runs.variants().size(); i++) {
            Variant variant = runs.variants().get(i);
            RunSummary found = runs.summaries().get(i);
            Optional<Limit> limit = Limit.reliefSet(found);
            rows.add(new VariationTable.Row(
                    new NamedSummary(variant.of(), found),
                    variant.values(),
                    limit.isPresent() ? OptionalDouble.of(limit.get().margin()) : OptionalDouble.empty()));
        }
        return rows;
    }

    private Balances balances() {
        return Stream.concat(
                        runs.stream().map(run -> Balances.of(run.summary())),
                        yardsticks.stream().flatMap(Optional::stream).map(Yardstick::balances))
                .reduce(Balances.NONE, Balances::and);
    }

    Document content(QuantityFormat shown) {
        Narrative narrative = Narrative.comparing(runs, drawn.size());
        String answer = narrative.headline().text(shown) + "."
                + Narrative.exceeded(runs, yardsticks)
                        .map(beyond -> " " + beyond.text(shown))
                        .orElse("");
        List<String> remarks = new ArrayList<>(doubts(shown));
        remarks.addAll(narrative.remarkTexts(shown));
        Narrative.joined(runs, yardsticks).map(joined -> joined.text(shown)).ifPresent(remarks::add);
        List<Document.Section> sections = new ArrayList<>();
        sections.add(Document.answer("", answer, remarks));
        sections.add(Document.pictures(
                List.of(Block.Picture.ofRuns(chart, answer)),
                worst(shown)
                        .map(worst -> List.<Block>of(figures(shown), worst))
                        .orElseGet(() -> List.of(figures(shown)))));
        sections.add(PageMethods.of(drawn).inAppendix());
        String names = runs.stream().map(NamedSummary::name).collect(Collectors.joining(", "));
        return Document.of("Comparison of " + runs.size() + " runs", names, alarms(shown), sections, shown)
                .printedFor(runs.get(0).summary().system());
    }

    /** In which run, by a name that is set apart where it has several words. */
    private static String in(NamedSummary run) {
        return " in " + (run.name().contains(" ") ? "\u201c" + run.name() + "\u201d" : run.name());
    }

    /** Hazards of all runs before any limit passed. */
    private List<AlarmNote> alarms(QuantityFormat shown) {
        List<AlarmNote> hazards = new ArrayList<>();
        List<AlarmNote> warnings = new ArrayList<>();
        for (NamedSummary run : runs) {
            List<Alarm> alarms = Narrative.of(run.summary(), run.doubts()).alarms();
            Map<Boolean, List<Alarm>> byHazard =
                    alarms.stream().collect(Collectors.partitioningBy(alarm -> alarm.level() == Alarm.Level.HAZARD));
            hazards.addAll(AlarmNote.notes(byHazard.get(true), in(run), shown));
            warnings.addAll(AlarmNote.notes(byHazard.get(false), in(run), shown));
        }
        hazards.addAll(AlarmNote.open(balances(), shown));
        hazards.addAll(warnings);
        return hazards;
    }

    /** How the worst heat-ups stand to the limit of a sizing; empty where there are none. */
    private Optional<Grid> worst(QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            String name = runs.get(i).name();
            HotWaterSystem house = runs.get(i).summary().system();
            rows.add(yardsticks
                    .get(i)
                    .map(yardstick -> List.of(
                            name,
                            yardstick.worst().text(shown),
                            shown.pressure(yardstick.limitGauge()),
                            yardstick.standing().text(shown)))
                    .orElseGet(() -> List.of(name, "-", "-", "not judged: " + notJudged(house))));
        }
        return yardsticks.stream().allMatch(Optional::isEmpty)
                ? Optional.empty()
                : Optional.of(new Grid(
                        "The worst heat-up of each, from a cold fill with every tap closed, against the limit of 'heatswell"
                                + " size', by the best estimates",
                        List.of("Run", "Peak", "Limit", "The limit is"),
                        rows));
    }

    /** Why a house has no worst heat-up. */
    private static String notJudged(HotWaterSystem house) {
        return house.heater().thermostatStuck()
                ? "the thermostat is stuck"
                : house.supply().arrangement() == Supply.Arrangement.DIRECT
                        ? "open to the mains"
                        : Findings.creeps(house)
                                ? "leakage past the reducing valve"
                                : "the heat-up cannot be simulated";
    }

    private Grid figures(QuantityFormat shown) {
        double longest =
                runs.stream().mapToDouble(run -> run.summary().end()).max().orElseThrow();
        // a run that a hazard ended was meant to last longer
        boolean alike = runs.stream()
                .allMatch(run ->
                        run.summary().end() == longest || run.summary().hazard().isPresent());
        Moments moments =
                Moments.common(runs.stream().map(run -> run.summary().system()).toList(), longest);
        List<String> columns = new ArrayList<>(List.of(
                "Run", "Peak", moments.byClock() ? "Reached" : "After", "Discharged", "Margin below relief set"));
        if (!alike) {
            columns.add(1, "Length");
        }
        List<List<String>> rows = new ArrayList<>();
        for (NamedSummary run : runs) {
            List<String> row = row(run, moments, shown);
            if (!alike) {
                row.add(1, shown.time(run.summary().end()));
            }
            rows.add(row);
        }
        return new Grid("The runs side by side, gauge pressures", columns, rows);
    }

    private static List<String> row(NamedSummary run, Moments moments, QuantityFormat shown) {
        RunSummary result = run.summary();
        RunSummary.Extreme peak = result.extremes().highestPressure();
        return new ArrayList<>(List.of(
                run.name(),
                shown.pressure(result.gauge(peak.value())),
                moments.byClock() ? moments.at(peak.time()).text(shown) : shown.time(peak.time()),
                shown.volume(result.totals().relieved()),
                Limit.reliefSet(result)
                        .map(limit -> limit.room(result).text(shown))
                        .orElseGet(() -> Limit.withoutRelief(result.system()))));
    }

    /** What is not known of the houses: each sentence once, with the names of its runs unless it is said of all of them. */
    private List<String> doubts(QuantityFormat shown) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        for (NamedSummary run : runs) {
            run.doubts()
                    .sentence()
                    .ifPresent(said -> names.computeIfAbsent(said.text(shown), any -> new ArrayList<>())
                            .add(run.name()));
        }
        return names.entrySet().stream()
                .map(said -> whose(said.getValue()) + said.getKey())
                .limit(MAX_DOUBTS)
                .toList();
    }

    private String whose(List<String> names) {
        if (names.size() == runs.size()) {
            return "";
        }
        return (names.size() > MAX_DOUBTS ? names.size() + " of the runs" : String.join(", ", names)) + ": ";
    }
}
