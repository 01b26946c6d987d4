package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.table.SizeTable;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Report on which vessel to buy.
 */
public final class SizingReport {

    private static final String HAZARD_FIRST =
            "First have the hazard named above dealt with, and leave the heater off until"
                    + " then: no vessel cures it.";

    /** A difference in precharge (Pa) that a tyre gauge shows; our own judgement. */
    private static final double FELT = 0.1e5;

    private final VesselAnswer answer;
    private final VesselAnswer work;
    private final Optional<LoweredSupply> lowered;
    private final SizingResult sizing;
    private final RunResult run;
    private final List<Finding> found;
    private final Check check;
    private final Balances balances;
    private final double atmosphere;
    private final Chart chart;
    private final Optional<Chart> sizes;

    SizingReport(VesselAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.sizing = answer.sizing();
        this.atmosphere = answer.scenario().system().site().atmosphere();
        this.work = answer.forTheWork();
        this.lowered = LoweredSupply.of(answer);
        this.run = fitted(work).orElse(work.asItIs());
        this.found = Findings.of(
                run.summary(),
                fitted(work).isPresent()
                        ? work.scenario().doubts().without("vessel")
                        : work.scenario().doubts());
        Balances.Count count = new Balances.Count();
        QuantityFormat printed = CommandResult.onPage(units);
        this.check = Check.of(run.system(), varied(), PageFindings.notBefore(found, printed), count, printed);
        this.balances = answer.balances().and(count.sum());
        this.chart = chart(units);
        this.sizes = sizing.nominal().isEmpty() ? Optional.empty() : Optional.of(sizes(units));
    }

    /**
     * The answer. The check sheet of the printed report is simulated here.
     *
     * @param answer what was found
     * @param units the units of screen, table and pictures; the JSON is in SI units always
     * @return with the files sizing.csv, sizing.json, before-after.png, before-after.svg, report.html and, where there are
     *     sizes to show, sizes.png and sizes.svg
     */
    public static CommandResult answer(VesselAnswer answer, UnitSystem units) {
        SizingReport report = new SizingReport(answer, units);
        return CommandResult.of(
                        report::content,
                        report.balances,
                        units,
                        List.of(
                                ResultFile.ofText(
                                        "sizing.csv",
                                        out -> SizeTable.write(
                                                answer.sizing(), answer.recommended(), report.atmosphere, units, out)),
                                SizingJson.of(answer).file("sizing.json")),
                        report.pictureFiles())
                .then(NextStep.afterSizing(answer));
    }

    /** What a heat-up from cold should reach with the vessel, and what is too high; empty unless the run shows one within the limit. */
    Optional<String> coldPeak(QuantityFormat shown) {
        return FitterPaper.coldPeakGauge(run).stream()
                .filter(peak -> !Limit.passes(peak, sizing.target().gauge()))
                .mapToObj(peak -> "expect about " + shown.pressure(peak) + ". If the pressure climbs above "
                        + shown.pressure(sizing.target().gauge())
                        + ", the limit, or anything comes out of a relief valve,")
                .findFirst();
    }

    /** The check sheet of the house with the vessel. */
    Check check() {
        return check;
    }

    private List<ResultFile> pictureFiles() {
        List<ResultFile> files = new ArrayList<>(CommandResult.pictures("before-after", chart));
        sizes.ifPresent(drawn -> files.addAll(CommandResult.pictures("sizes", drawn)));
        return files;
    }

    /** The peaks over the sizes, with the one to take. */
    private Chart sizes(UnitSystem units) {
        return Chart.of(answer.advice(), units).below(AlarmNote.ofHouse(answer.scenario()), units);
    }

    /** The run as it is, and with the vessel if one is proposed. */
    private Chart chart(UnitSystem units) {
        if (work.proposed().isEmpty()) {
            return Chart.of(answer.asItIs(), answer.scenario().doubts(), units);
        }
        QuantityFormat shown = CommandResult.onScreen(units);
        String with =
                "with " + lowered.map(supply -> supply.valve(shown) + " and ").orElse("")
                        + (work.advice().kept().isPresent()
                                ? changed()
                                : work.recommended()
                                        .map(SizingResult.Vessel::volume)
                                        .map(shown::volume)
                                        .orElseThrow());
        List<NamedRun> runs = new ArrayList<>();
        runs.add(new NamedRun(asItIs(), answer.asItIs()));
        work.proposed().ifPresent(proposed -> runs.add(new NamedRun(with, proposed)));
        return Chart.comparing(runs, answer.advice(), units);
    }

    Document content(QuantityFormat shown) {
        Scenario scenario = answer.scenario();
        Narrative told = Narrative.of(answer.advice());
        List<String> sentences = new ArrayList<>();
        bought(shown)
                .or(() ->
                        Narrative.verdict(scenario.question(), answer.advice()).map(said -> said.text(shown)))
                .ifPresent(sentences::add);
        presentIsWeak(shown).ifPresent(why -> sentences.add(0, why));
        sentences.add(told.headline().text(shown) + ".");
        told.remarks().forEach(said -> sentences.add(said.text(shown)));
        if (PageFindings.hazardous(found)) {
            sentences.add(0, HAZARD_FIRST);
        }
        String verdict = sentences.get(0);
        String rest = String.join(" ", sentences.subList(1, sentences.size()));
        List<Document.Section> sections = new ArrayList<>();
        List<String> doubts = unknown()
                .sentence()
                .map(unknown -> unknown.text(shown))
                .map(List::of)
                .orElse(List.of());
        List<Block> said = new ArrayList<>(Document.answer("", verdict, doubts).blocks());
        if (!rest.isEmpty()) {
            said.add(1, new Block.Paragraph(rest, Block.Tone.PLAIN));
        }
        Narrative.unlikeSeen(scenario.question(), answer.asItIs().summary())
                .map(seen -> new Block.Paragraph(seen.text(shown), Block.Tone.PLAIN))
                .ifPresent(said::add);
        pressure(shown).ifPresent(said::add);
        if (answer.against().isPresent()) {
            lowered.ifPresent(supply -> said.add(new Block.Paragraph(
                            "With " + supply.set(shown) + ", and the supply at " + supply.standing(shown) + ":",
                            Block.Tone.PLAIN)
                    .onScreen()));
            AuthorityPaper.comparison(work, shown).map(Block::onScreen).ifPresent(said::add);
        }
        charged(shown).ifPresent(said::add);
        minded().forEach(missing -> said.add(new Block.Paragraph(
                missing.sentence().text(shown) + " " + missing.advice().text(shown), Block.Tone.PLAIN)));
        hotter(shown).ifPresent(said::add);
        withoutAir().ifPresent(said::add);
        inTank(shown).ifPresent(said::add);
        said.add(Block.Picture.beside(chart, String.join(" ", sentences)));
        Optional<Document.Section> authority =
                AuthorityPaper.of(work, lowered, run.system(), fitted().withUnreadLockUp(work.scenario()), shown);
        if (authority.isEmpty()) {
            said.add(limits(shown));
        } else if (!bought(answer)) {
            said.add(limits(shown).onScreen());
        }
        Optional<Document.Section> fitter = fitter(shown);
        said.addAll(work(fitter.isPresent(), authority.isPresent(), shown));
        said.addAll(check.reasons());
        sections.add(new Document.Section("The answer", said));
        fitter.map(paper -> paper.below(first(shown))).ifPresent(sections::add);
        check.section(shown).ifPresent(sections::add);
        authority.map(paper -> paper.below(first(shown))).ifPresent(sections::add);
        sections.add(PageSizes.section(costs(shown)).inAppendix());
        sections.add(PageFindings.section(found, shown).onPageInAppendix());
        sections.add(PageBasis.of(work.scenario(), !check.readings().isEmpty() && authority.isEmpty(), shown)
                .onPageInAppendix());
        sections.add(PageMethods.of(run.summary(), shown).inAppendix());
        return Document.of(
                        scenario.title() + shown.units().spelled(": which vessel?"),
                        scenario.name(),
                        alarms(shown),
                        sections,
                        shown)
                .printedFor(scenario.system());
    }

    /** For the vessel proposed, or for the one that is there if it is right; not while the heater is to stay off. */
    private Optional<Document.Section> fitter(QuantityFormat shown) {
        if (PageFindings.notBefore(found, shown).isPresent()) {
            return Optional.empty();
        }
        if (fitted(work).isPresent()) {
            return Optional.of(FitterPaper.of(run, work.sizing(), state(), shown)
                    .at(lowered)
                    .section(shown));
        }
        return run.system()
                .vessel()
                .map(vessel -> FitterPaper.of(run.system(), shown).at(lowered).section(shown));
    }

    /** What is to be minded before a size is bought or allowed, on the sheets that go by it. */
    private List<String> first(QuantityFormat shown) {
        return Stream.of(
                        presentIsWeak(shown).stream(),
                        Narrative.first(work.advice()).map(said -> said.text(shown)).stream(),
                        minded().stream().map(missing -> missing.sentence().text(shown)),
                        bought(shown).filter(told -> work.tooSmall().isPresent() || work.lacksMargin()).stream())
                .flatMap(each -> each)
                .toList();
    }

    /** What to do, and which sheet is for whom. */
    private List<Block> work(boolean fitter, boolean authority, QuantityFormat shown) {
        List<String> steps = new ArrayList<>(first(shown));
        String house = "";
        if (PageFindings.notBefore(found, shown).isPresent()) {
            // nothing is bought or fitted before that
            return List.of(
                    new Block.Subheading("What to do").onPage(),
                    new Block.Items(List.of(HAZARD_FIRST), Block.ListKind.STEPS).onPage());
        }
        Narrative.normalDrip(answer.asItIs().summary())
                .map(said -> said.text(shown))
                .ifPresent(said -> steps.add(0, said));
        Optional<ExpansionVessel> present = PageSizes.justEnough(answer);
        present.map(vessel -> "First have the present vessel of " + shown.volume(vessel.volume()) + " charged to "
                        + PageSizes.recharge(answer, shown)
                        + ": nothing to buy, and by the best estimates it is then enough. How sure that is stands above."
                        + " If it still drips, or to be on the safe side, go on:")
                .ifPresent(steps::add);
        lowered.map(supply -> "Have " + supply.set(shown) + ". The supply must then be at " + supply.standing(shown)
                        + ": read a gauge before the vessel is charged."
                        + (answer.scenario().system().site().place() == Place.UK && !supply.isFitted()
                                ? " First ask the cylinder's manufacturer: the valve may belong to the tested unit."
                                : ""))
                .ifPresent(steps::add);
        if (fitted(work).isPresent()) {
            ExpansionVessel vessel =
                    run.system().vessels().get(run.system().vessels().size() - 1);
            String charge = shown.pressure(vessel.precharge().gauge(atmosphere));
            steps.add(
                    isNew()
                            ? "Have a vessel of " + shown.volume(vessel.volume()) + " fitted, charged to " + charge
                                    + " before it is connected."
                                    + BoughtVessel.charged(
                                                    work, vessel.precharge().gauge(atmosphere), shown)
                                            .map(found -> " " + found)
                                            .orElse("")
                            : work.advice().isAtWork()
                                    ? "Have the present vessel charged to " + charge + "."
                                    : "Have the present vessel put to work and charged to " + charge + ".");
            house = " It is for the house with "
                    + (work.bought().isPresent() ? "the vessel that was bought" : changed())
                    + lowered.map(supply -> " and " + supply.set(shown)).orElse("") + ".";
        }
        if (fitter) {
            steps.add("Give the sheet \u201c" + shown.units().spelled("For the fitter")
                    + "\u201d to whoever does the work.");
        }
        if (!check.readings().isEmpty()) {
            steps.add((steps.isEmpty() ? "Check" : "Then check")
                    + " the house by the sheet \u201cWhat the gauge should read\u201d." + house);
        }
        if (authority) {
            steps.add(
                    "If a permit or a notice is needed, hand in the sheet \u201cFor the authority\u201d with the appendix.");
        }
        return steps.isEmpty()
                ? List.of()
                : List.of(
                        new Block.Subheading("What to do").onPage(),
                        new Block.Items(
                                        steps.stream()
                                                .map(shown.units()::spelled)
                                                .toList(),
                                        Block.ListKind.STEPS)
                                .onPage());
    }

    /** The screen has what can be chosen; what an answer rests on is for the page. */
    private List<Block> costs(QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        Optional<Grid> supplies = PageSizes.supplies(answer, shown);
        lowered.flatMap(supply -> PageSizes.of(work, shown)
                        .map(grid ->
                                new Grid(grid.caption() + ", with " + supply.set(shown), grid.columns(), grid.rows())))
                .map(Grid::onPage)
                .ifPresent(blocks::add);
        PageSizes.of(answer, shown)
                .map(grid -> lowered.isPresent()
                        ? new Block.Folded("every size at the present supply", List.of(grid))
                        : grid)
                .map(table -> supplies.isPresent() ? table.onPage() : table)
                .ifPresent(blocks::add);
        sizes.map(drawn -> new Block.Folded(
                        "the picture of the sizes",
                        List.of(Block.Picture.of(
                                drawn,
                                "Peak of the worst heat-up over the volume of the vessel, gauge pressure.",
                                "Chart of the peak pressure over the sizes on sale. " + drawn.headline()))))
                .ifPresent(blocks::add);
        supplies.map(table -> new Block.Folded("every size at lower supplies", List.of(table)))
                .ifPresent(blocks::add);
        blocks.add(PageSizes.choices(answer, shown));
        List<Block> rests = new ArrayList<>();
        PageSizes.least(answer, shown).ifPresent(rests::add);
        PageSizes.laterValve(answer, shown).ifPresent(blocks::add);
        PageSizes.means(answer.scenario().system().site().place()).ifPresent(rests::add);
        answer.formulas().forEach(formula -> rests.addAll(PageFormulas.of(formula, shown)));
        // the table of what can be done has the numbers of the grid
        PageSizes.costs(water(), answer.scenario(), shown).stream()
                .filter(cost -> !(cost instanceof Grid))
                .forEach(rests::add);
        rests.forEach(block -> blocks.add(block.onPage()));
        blocks.addAll(PageSizes.prices(answer));
        // who bought one has chosen
        return bought(answer) ? blocks.stream().map(Block::onPage).toList() : blocks;
    }

    /** What it takes to keep more pressure than the cheapest way leaves. */
    private Optional<Block> pressure(QuantityFormat shown) {
        double set =
                lowered.map(supply -> supply.supply().valve().gauge(atmosphere)).orElse(Double.POSITIVE_INFINITY);
        List<String> ways = answer.supplies().columns().stream()
                .filter(column -> column.setting()
                                .filter(to -> to.gauge(atmosphere) > set + 1)
                                .isPresent()
                        && column.sure().orElse(0) > 0)
                .map(column -> shown.volume(column.sure().getAsDouble()) + " at "
                        + shown.pressure(column.setting().get().gauge(atmosphere)))
                .toList();
        return ways.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Paragraph(
                        "More pressure at the taps takes a larger vessel: " + String.join(", ", ways) + ".",
                        Block.Tone.PLAIN));
    }

    /** A charge below the supply's pressure, as asked for, is not the one that findings name. */
    private Optional<Block> charged(QuantityFormat shown) {
        return fitted(work)
                .flatMap(with -> PrechargeTarget.of(
                        with.system(), with.system().vessels().size() - 1))
                .map(target -> target.pumpToGauge()
                        - fitted(work).orElseThrow().system().vessels().stream()
                                .reduce((one, last) -> last)
                                .orElseThrow()
                                .precharge()
                                .gauge(atmosphere))
                .filter(below -> below > FELT)
                .map(below -> new Block.Paragraph(
                        "The precharge is set " + shown.pressureDifference(below)
                                + " below the supply's pressure, as asked for. The other commands name the supply's own"
                                + " pressure; the trade takes either.",
                        Block.Tone.PLAIN));
    }

    /** The size is found for the valves described, and one that is missing opens lower; a vessel may be made for less than they are. */
    private List<Finding> minded() {
        return found.stream()
                .filter(finding -> finding.id().equals("expansion-valve-missing")
                        || finding.id().equals("vessel-rated-below-relief") && state() != FitterPaper.State.TO_BUY)
                .toList();
    }

    /** A store that is to be made hotter, as the findings advise, needs another vessel. */
    private Optional<Block> hotter(QuantityFormat shown) {
        return found.stream()
                .filter(finding -> finding.id().equals("stored-too-cool"))
                .flatMap(finding -> finding.limit().stream())
                .findFirst()
                .map(least -> {
                    String said = "All this is for water stored at "
                            + shown.temperature(
                                    answer.scenario().system().heater().setPoint())
                            + ". If the thermostat is set to " + least.text(shown)
                            + " to keep legionella down, the water expands more: size again for that first";
                    return new Block.Paragraph(said + ".", Block.Tone.PLAIN)
                            .orOnScreen(new Block.Paragraph(
                                    said + ", with --set heater.set-point="
                                            // a command takes a value in one unit, spelled as files spell it
                                            + least.text(QuantityFormat.ascii(shown.units()))
                                                    .replace(" ", "") + ".",
                                    Block.Tone.PLAIN));
                });
    }

    /** Air cushions a heat-up only until it is dissolved. */
    private Optional<Block> withoutAir() {
        HotWaterSystem house = answer.scenario().system();
        return house.tank().air().isPresent() || house.trappedAir().isPresent()
                ? Optional.of(new Block.Paragraph(
                        "These peaks ignore any air in the house: water dissolves it, and its cushion is gone.",
                        Block.Tone.PLAIN))
                : Optional.empty();
    }

    /** The gas of a vessel in the tank is as hot as the water when it has to hold most. */
    private Optional<Block> inTank(QuantityFormat shown) {
        HotWaterSystem house = run.system();
        double room = house.site().roomTemperature();
        return house.vessels().stream()
                .reduce((one, last) -> last)
                .filter(ExpansionVessel::isInTank)
                .map(vessel -> new Block.Paragraph(
                        "These vessels are built into the tank like the first one there. The gas warms with the water and presses"
                                + " harder, so the vessel takes less than one outside the tank. That is in the sizes, but not in"
                                + " the formulas. The precharges are for gas as cold as the cold water. To check or set one, empty the"
                                + " tank and wait until it is as warm as the room: with the gas at "
                                + shown.temperature(room) + " a tyre gauge must show "
                                + charge(vessel, room, shown) + " where "
                                + charge(vessel, house.gasAtRest(vessel), shown) + " is meant.",
                        Block.Tone.PLAIN));
    }

    /** What a tyre gauge shows of a precharge with the gas at a temperature (K). */
    private String charge(ExpansionVessel vessel, double kelvin, QuantityFormat shown) {
        double room = run.system().site().roomTemperature();
        return shown.pressure(vessel.chargeAbsolute(atmosphere, room, kelvin) - atmosphere);
    }

    private VariedHouse varied() {
        return Check.unread(fitted(), work.scenario());
    }

    /** What is not known of the house that the papers are about: of a vessel that another was bought for, nothing counts. */
    private Doubts unknown() {
        Doubts doubts = answer.scenario().doubts();
        return bought(answer) ? doubts.without("vessel") : doubts;
    }

    private static boolean bought(VesselAnswer answer) {
        return answer.against().flatMap(VesselAnswer.Against::bought).isPresent();
    }

    /** Whether the vessel that was bought will do, with a lower supply if only with that. */
    private Optional<String> bought(QuantityFormat shown) {
        return BoughtVessel.told(work, shown)
                .map(told -> lowered.map(
                                supply -> "With " + supply.set(shown) + ", " + told.replaceFirst("^The ", "the "))
                        .orElse(told));
    }

    /** Why the vessel that is there has to go, whatever its size. */
    private Optional<String> presentIsWeak(QuantityFormat shown) {
        return bought(answer)
                ? Optional.empty()
                : BoughtVessel.presentIsWeak(answer.scenario().system(), shown);
    }

    /** The run with the vessel that was bought, or else with the one proposed. */
    private static Optional<RunResult> fitted(VesselAnswer answer) {
        return answer.bought().or(answer::proposed);
    }

    /** The house with that vessel, if there is one. */
    private VariedHouse fitted() {
        return fitted(work)
                .map(run -> run.system().vessels())
                .map(fitted -> fitted.get(fitted.size() - 1))
                .map(vessel -> VariedHouse.with(work.scenario(), vessel))
                .orElseGet(() -> VariedHouse.of(work.scenario()));
    }

    /** What a run of the house as it is came to, and that with the vessel if a hazard ended it. */
    private List<AlarmNote> alarms(QuantityFormat shown) {
        Doubts doubts = answer.scenario().doubts();
        List<AlarmNote> alarms = new ArrayList<>(AlarmNote.notes(
                Narrative.of(answer.asItIs().summary(), doubts).alarms(), " in the house as it is", shown));
        work.proposed()
                .filter(with -> with.hazard().isPresent())
                .map(with ->
                        Narrative.of(with.summary(), doubts.without("vessel")).alarms())
                .ifPresent(told -> alarms.addAll(AlarmNote.notes(told.subList(0, 1), " also with the vessel", shown)));
        alarms.addAll(AlarmNote.open(balances, shown));
        return alarms;
    }

    /** How much of the supply pressure nobody has measured. */
    private String lockUp(QuantityFormat shown) {
        return answer.scenario().assumptions().stream()
                        .anyMatch(assumed -> assumed.field().equals(NamedValue.LOCK_UP.field()))
                ? answer.scenario()
                        .system()
                        .supply()
                        .reducingValve()
                        .map(valve -> risen(valve, shown))
                        .orElse("")
                : "";
    }

    /** What of the supply is the lock-up rise, or that the mains keep it from rising so far. */
    private String risen(ReducingValve valve, QuantityFormat shown) {
        double locked = valve.set().gauge(atmosphere) + valve.lockUpRise();
        double supply = sizing.supplyStatic().gauge(atmosphere);
        return supply < locked - 1
                ? "; as high as the mains pressure, which is less than the " + shown.pressure(locked)
                        + " that the reducing valve would let it rise to: its setting and an assumed lock-up rise of "
                        + shown.pressureDifference(valve.lockUpRise())
                : "; " + shown.pressureDifference(valve.lockUpRise())
                        + " of it, the lock-up rise of the reducing valve, is assumed: read a gauge with no water"
                        + " running";
    }

    /** A size on sale that reads the same in these units and is not enough lies below it. */
    private String smallest(SizingResult.Vessel least, QuantityFormat shown) {
        String volume = shown.volume(least.volume());
        boolean below = sizing.nominal().stream()
                .anyMatch(
                        size -> !size.suffices() && shown.volume(size.volume()).equals(volume));
        return below ? "over " + volume : volume;
    }

    private Grid limits(QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Supply",
                shown.pressure(sizing.supplyStatic().gauge(atmosphere)),
                "static pressure, at its highest" + lockUp(shown)));
        for (SizingTarget.Bound bound : sizing.target().bounds()) {
            rows.add(List.of(
                    "Limit",
                    shown.pressure(bound.absolute() - atmosphere),
                    answer.advice().name(bound)));
        }
        sizing.smallest()
                .ifPresent(least -> rows.add(
                        List.of("Smallest vessel", smallest(least, shown), "just enough by the best estimates")));
        return new Grid(
                "What the vessel has to handle, gauge pressures", List.of("What", "Value", "Remark"), rows, true);
    }

    private Map<String, YearlyWater> water() {
        Map<String, YearlyWater> water = new LinkedHashMap<>();
        answer.waterAsItIs()
                .ifPresent(asItIs -> water.put(PageWords.capitalised(asItIs()) + PageSizes.whatever(answer), asItIs));
        answer.waterProposed().ifPresent(proposed -> water.put("With " + changed(), proposed));
        return water;
    }

    /** Whether the vessel that the papers are about is not the present one. */
    private boolean isNew() {
        return work.bought().isPresent() || work.advice().kept().isEmpty();
    }

    private FitterPaper.State state() {
        return work.bought().isPresent()
                ? FitterPaper.State.BOUGHT
                : isNew() ? FitterPaper.State.TO_BUY : FitterPaper.State.PRESENT;
    }

    /** What the house without the change is called; one with a lower supply and no vessel, where that was bought, never was. */
    private String asItIs() {
        return !bought(answer)
                ? "as it is"
                : answer.scenario().system().vessels().isEmpty() ? "without it" : "with the old one";
    }

    /** What is changed about the house. */
    private String changed() {
        return work.advice().kept().isEmpty()
                ? "the vessel"
                : work.advice().isAtWork() ? "the right precharge" : "the present vessel at work";
    }
}
