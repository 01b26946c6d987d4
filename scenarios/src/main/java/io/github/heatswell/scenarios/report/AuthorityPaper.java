package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.RulesHere;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.file.Origin;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Blanks;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What whoever enforces the rules is given about a proposed vessel, each part under the question it answers. What was not checked
 * against a source is left out or called so; nothing on it is from memory.
 */
final class AuthorityPaper {

    /** What the choice of a vessel rests on. */
    private static final Set<Topic> MATTER = EnumSet.of(
            Topic.STATIC_LIMIT,
            Topic.PEAK_LIMIT,
            Topic.EXPANSION_CONTROL,
            Topic.BYPASS,
            Topic.EXPANSION_MEANS,
            Topic.RELIEF_FOR_EXPANSION,
            Topic.SUPPLY_TO_RELIEF,
            Topic.VESSEL,
            Topic.WHO_MAY_WORK);

    /** What an inspector of an unvented heater looks at first; elsewhere a sheet of its own. */
    private static final Set<Topic> UNVENTED = EnumSet.of(Topic.HEAT_RELIEF, Topic.DISCHARGE_PIPE);

    /** The codes of a country that has several. */
    private static final Set<Place> CODES = EnumSet.of(Place.US_IPC, Place.US_UPC);

    /** The highest pressure as a share of the set pressure by DIN 4807-5, as its formula in the appendix has it. */
    private static final double DIN_SHARE = 0.8;

    /** Where relief valves may close again, as shares of their set pressure (-); our own judgement, as on the check sheet. */
    private static final double LOW_RESEAT = 0.7;

    private static final double HIGH_RESEAT = 0.9;

    /** Pressures that differ by less are the same (Pa). */
    private static final double SAME = 1;

    /** A difference in precharge (Pa) that a tyre gauge shows; our own judgement. */
    private static final double FELT = 0.1e5;

    private final VesselAnswer answer;
    private final Optional<LoweredSupply> lowered;
    private final HotWaterSystem house;
    private final VariedHouse varied;
    private final double atmosphere;
    private final QuantityFormat shown;

    private AuthorityPaper(
            VesselAnswer answer,
            Optional<LoweredSupply> lowered,
            HotWaterSystem house,
            VariedHouse varied,
            QuantityFormat shown) {
        this.answer = answer;
        this.lowered = lowered;
        this.house = house;
        this.varied = varied;
        this.atmosphere = house.site().atmosphere();
        this.shown = shown;
    }

    /**
     * The paper; empty where no vessel is proposed and nobody asks for one.
     *
     * @param answer what was found, at the supply that is to be
     * @param lowered the supply that is to be, where it is not the present one
     * @param house the house with the vessel, if one is proposed
     * @param varied what of it is uncertain
     * @param shown the units
     */
    static Optional<Document.Section> of(
            VesselAnswer answer,
            Optional<LoweredSupply> lowered,
            HotWaterSystem house,
            VariedHouse varied,
            QuantityFormat shown) {
        return answer.recommended().isEmpty() && answer.against().isEmpty()
                ? Optional.empty()
                : Optional.of(new AuthorityPaper(answer, lowered, house, varied, shown).section());
    }

    /** That everything holds at a lower supply alone. */
    private static String lowered(LoweredSupply supply, QuantityFormat shown) {
        return "All of this is with " + supply.set(shown) + ": the supply is then at " + supply.standing(shown)
                + ". At the present supply, no size on the list is recommended.";
    }

    private Document.Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Blanks(
                "The house, and who signs for it",
                List.of(
                        Blanks.Line.open("Address"),
                        Blanks.Line.open("Date"),
                        Blanks.Line.open("Prepared by"),
                        Blanks.Line.open("Licence or registration"),
                        Blanks.Line.open("Code and edition here"),
                        // not at the end, where a lower sheet would leave it alone on the next
                        Blanks.Line.open("Signature")),
                false));
        lowered.ifPresent(supply -> blocks.add(new Block.Paragraph(lowered(supply, shown), Block.Tone.PLAIN)));
        comparison(answer, shown).ifPresent(blocks::add);
        blocks.add(new Block.Paragraph(
                "How sure is that? " + sure(answer.scenario(), varied, lowered.isPresent(), shown), Block.Tone.PLAIN));
        unseen().map(said -> new Block.Paragraph(said.text(shown), Block.Tone.PLAIN))
                .ifPresent(blocks::add);
        rests().map(said -> new Block.Paragraph(said, Block.Tone.PLAIN)).ifPresent(blocks::add);
        blocks.add(limits());
        clauses(blocks);
        blocks.add(plates());
        blocks.add(new Block.Paragraph(
                reduced()
                        + capacity()
                        + PageFormulas.byHand(answer.formulas(), chargedBelow(), shown)
                                .map(said -> said + " ")
                                .orElse("")
                        + method(),
                Block.Tone.PLAIN));
        return new Document.Section("For the authority: why this vessel", Document.Form.PAPER, blocks);
    }

    /**
     * Two sizes against the limit: the one recommended, and the one asked for or else the next smaller on sale.
     *
     * @param answer what was found
     * @param shown the units
     * @return the table; empty where there is no size to show
     */
    static Optional<Grid> comparison(VesselAnswer answer, QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        answer.recommended().ifPresent(size -> rows.add(row("recommended", size, tried(size, answer), answer, shown)));
        answer.against()
                .ifPresentOrElse(
                        other -> rows.add(row(
                                other.bought().isPresent() ? "bought" : "to compare with",
                                other.vessel(),
                                other.tried(),
                                answer,
                                shown)),
                        () -> smaller(answer)
                                .ifPresent(size -> rows.add(
                                        row("next smaller on sale", size, tried(size, answer), answer, shown))));
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid(
                        "Does it stay within the limit of "
                                + shown.pressure(answer.sizing().target().gauge())
                                + "? Peak of the worst heat-up, gauge pressure",
                        List.of("Vessel", "Precharge", "Peak", "Against the limit", "Enough in"),
                        rows));
    }

    private static Optional<SizingResult.Vessel> smaller(VesselAnswer answer) {
        return answer.recommended()
                .flatMap(best -> answer.sizing().nominal().stream()
                        .filter(size -> size.volume() < best.volume())
                        .max(Comparator.comparingDouble(SizingResult.Vessel::volume)));
    }

    private static Optional<SizeCertainty.Tried> tried(SizingResult.Vessel size, VesselAnswer answer) {
        return answer.certainty().flatMap(found -> found.at(size.volume()));
    }

    private static List<String> row(
            String why,
            SizingResult.Vessel size,
            Optional<SizeCertainty.Tried> tried,
            VesselAnswer answer,
            QuantityFormat shown) {
        double atmosphere = answer.scenario().system().site().atmosphere();
        String more = size.higher() ? "more than " : "";
        return List.of(
                shown.volume(size.volume()) + ", " + why,
                shown.pressure(size.precharge().gauge(atmosphere)),
                more + shown.pressure(size.peakAbsolute() - atmosphere),
                size.suffices()
                        ? "met, with " + shown.pressureDifference(size.margin()) + " to spare"
                        : "exceeded by " + more + shown.pressureDifference(-size.margin()),
                tried.map(one -> one.above().of() - one.above().count() + " of "
                                + one.above().of() + " sampled houses: "
                                + (one.holds()
                                        ? "yes"
                                        : one.above().count() == one.above().of() ? "no" : "not sure enough"))
                        .orElse("not sampled"));
    }

    /** How the sampled houses differ, and who said by how much. */
    static String sure(Scenario scenario, VariedHouse varied, boolean lowered, QuantityFormat shown) {
        List<VariedHouse.Input> inputs = varied.inputs().stream()
                .filter(input -> !isReplaced(input, scenario, varied))
                .toList();
        String given = inputs.stream()
                .filter(input -> isGiven(input, scenario))
                // how closely a valve is set that is yet to be set is nobody's to give
                .filter(input -> !(lowered && input.name().startsWith("supply.reducing-valve")))
                .map(VariedHouse.Input::label)
                .collect(Collectors.joining("; "));
        return "Each sampled house is followed for a year from the day its vessel is charged. They differ in "
                + inputs.stream()
                        .map(input -> input.label() + " " + PageWords.inUnits(input.words(), shown))
                        .collect(Collectors.joining("; "))
                + "; and how fast a vessel loses precharge. "
                + (given.isEmpty()
                        ? "These ranges were not given: they are common practice, no source."
                        : "These were given: " + given + "; the others are common practice, no source.")
                + notVaried(scenario, varied)
                + " A size is recommended if, with 95 % confidence, it is enough in nine of ten such houses.";
    }

    /** Whether the vessel proposed, with its charge, stands in every sampled house in place of what was uncertain of the old one. */
    private static boolean isReplaced(VariedHouse.Input input, Scenario scenario, VariedHouse varied) {
        return !varied.usual()
                && input.name().startsWith("vessel.")
                && !scenario.system().hasSeveralVessels();
    }

    /** Which numbers that move the size are the same in every sampled house. */
    private static String notVaried(Scenario scenario, VariedHouse varied) {
        // the usual spreads go by the label of what they vary, those of the file by its field
        List<String> same = Stream.of(NamedValue.REDUCED, NamedValue.LOCK_UP, NamedValue.SET_POINT)
                .filter(value -> scenario.system().supply().reducingValve().isPresent()
                        || !value.field().startsWith("supply.reducing-valve"))
                .filter(value -> varied.inputs().stream()
                        .noneMatch(input -> input.name().equals(value.field())
                                || input.name().equals(value.label())))
                .map(NamedValue::label)
                .collect(Collectors.toCollection(ArrayList::new));
        if (!varied.usual()) {
            same.add("volume and precharge of the vessel fitted");
        }
        return same.isEmpty() ? "" : " Not varied: " + String.join("; ", same) + ".";
    }

    /** Whether whoever described the house said how far a value may be off. */
    private static boolean isGiven(VariedHouse.Input input, Scenario scenario) {
        return scenario.uncertain().stream().anyMatch(field -> field.field().equals(input.name()))
                && EnumSet.of(Origin.RANGE, Origin.CHANGED).contains(scenario.origin(input.name()));
    }

    private Grid limits() {
        List<List<String>> rows = new ArrayList<>();
        for (SizingTarget.Bound bound : answer.sizing().target().bounds()) {
            String name = answer.advice().name(bound) + edition(bound);
            rows.add(List.of(shown.pressure(bound.absolute() - atmosphere), name, standing(bound, name)));
        }
        Place place = house.site().place();
        boolean none = place.isKnown() && place.limits(Topic.PEAK_LIMIT).isEmpty();
        return new Grid(
                "Which limit? The lowest of these governs"
                        + (none ? "; no clause that limits the pressure after a heat-up was found for this place" : ""),
                List.of("Limit", "What it is", "Source"),
                rows);
    }

    /** Who says so, and how far that was checked. */
    private String standing(SizingTarget.Bound bound, String name) {
        if (isAssumed(bound)) {
            return "assumed; the plate decides";
        }
        if (bound.rule() == SizingTarget.Rule.VESSEL_RATING) {
            double height = house.vessel().map(ExpansionVessel::height).orElse(0.0);
            return "given, as " + shown.pressure(bound.absolute() - house.head(height) - atmosphere) + " on "
                    + (answer.advice().kept().isPresent() || answer.bought().isPresent()
                            ? "its plate"
                            : "a plate; that of the vessel fitted decides");
        }
        return assumedReseat(bound)
                .map(valve -> "assumed " + shown.share(reseatShare(valve)) + " of the set pressure; "
                        + (Math.abs(reseatShare(valve) - DIN_SHARE) < 1e-3
                                ? "DIN 4807-5 takes the same as the highest pressure of a heat-up"
                                : besides(name, bound.source())))
                .orElseGet(() -> besides(name, bound.source()));
    }

    /** Of which edition the limit of the place is. */
    private String edition(SizingTarget.Bound bound) {
        return bound.rule() == SizingTarget.Rule.CODE_CAP
                ? SizingTarget.cap(house)
                        .filter(rule -> !rule.edition().isEmpty())
                        .map(rule -> ", edition: " + rule.edition())
                        .orElse("")
                : "";
    }

    /** The valve of a bound by a reseat pressure that nobody gave. */
    private Optional<ReliefValve> assumedReseat(SizingTarget.Bound bound) {
        List<ReliefValve> valves = house.reliefValves();
        return IntStream.range(0, valves.size())
                .filter(i -> bound.rule() == SizingTarget.Rule.RELIEF_RESEAT
                        && valves.get(i).name().equals(bound.device()))
                .filter(i -> answer.scenario().assumptions().stream()
                        .anyMatch(made -> made.field().equals("relief[" + i + "].reseats")))
                .mapToObj(valves::get)
                .findFirst();
    }

    private double reseatShare(ReliefValve valve) {
        return valve.reseatPressure().gauge(atmosphere) / valve.setPressure().gauge(atmosphere);
    }

    /** What of the present vessel nobody has checked, where it is to stay; its charge is set anew. */
    private Optional<Statement> unseen() {
        Doubts doubts = answer.scenario().doubts();
        return doubts.without(NamedValue.PRECHARGE.field())
                .sentence()
                .filter(said -> answer.advice().kept().isPresent()
                        && !Optional.of(said).equals(doubts.without("vessel").sentence()));
    }

    /** What the size would be if the limit that governs were another; empty where it is given or read. */
    private Optional<String> rests() {
        SizingTarget.Bound ruling = answer.sizing().target().ruling();
        if (ruling.rule() == SizingTarget.Rule.CODE_CAP) {
            return next(ruling, Double.POSITIVE_INFINITY)
                    .map(next ->
                            "This size rests on one clause, in the edition named below. Where an edition without it is adopted,"
                                    + " the next limit is " + shown.pressure(next - atmosphere)
                                    + ". By the best estimates alone, " + enough(ruling.absolute()) + " here and "
                                    + enough(next) + " there. The recommended size changes with it.");
        }
        return assumedReseat(ruling)
                .map(valve -> "This size rests on an assumed reseat pressure, " + shown.share(reseatShare(valve))
                        + " of the set pressure, which the sampled houses do not vary. By the best estimates alone, "
                        + enough(ruling.absolute()) + "; "
                        + DoubleStream.of(LOW_RESEAT, HIGH_RESEAT)
                                .mapToObj(share -> "at " + shown.share(share) + ", "
                                        + enough(next(
                                                        ruling,
                                                        ruling.absolute()
                                                                + (share - reseatShare(valve))
                                                                        * valve.setPressure()
                                                                                .gauge(atmosphere))
                                                .orElseThrow()))
                                .collect(Collectors.joining("; "))
                        + ". The recommended size changes with it.");
    }

    /** The lowest limit (Pa, absolute) with another in place of the one that governs; empty where none is left. */
    private Optional<Double> next(SizingTarget.Bound ruling, double instead) {
        return DoubleStream.concat(
                        DoubleStream.of(instead),
                        answer.sizing().target().bounds().stream()
                                .filter(bound -> !bound.equals(ruling))
                                .mapToDouble(SizingTarget.Bound::absolute))
                .boxed()
                .min(Comparator.naturalOrder())
                .filter(Double::isFinite);
    }

    private String enough(double limitAbsolute) {
        return answer.sizing().nominal().stream()
                .filter(size -> !size.higher() && size.peakAbsolute() <= limitAbsolute)
                .min(Comparator.comparingDouble(SizingResult.Vessel::volume))
                .map(size -> shown.volume(size.volume()) + " is enough")
                .orElse("no size on the list is enough");
    }

    private boolean isAssumed(SizingTarget.Bound bound) {
        return bound.assumed()
                || bound.rule() == SizingTarget.Rule.WORKING_PRESSURE
                        && answer.scenario().assumptions().stream()
                                .anyMatch(made -> made.field().equals(NamedValue.WORKING_PRESSURE.field()));
    }

    /** A source as far as the name of a limit does not give it already. */
    private static String besides(String name, Citation source) {
        boolean named = name.contains(source.text().split(": ")[0]) && isRead(source);
        return named ? PageFormulas.standing(source) : checked(source);
    }

    private static boolean isRead(Citation source) {
        return source.standing() == Citation.Standing.SEEN || source.standing() == Citation.Standing.SECOND_HAND;
    }

    private static String checked(Citation source) {
        return switch (source.standing()) {
            case SEEN, SECOND_HAND -> source.text() + " (" + PageFormulas.standing(source) + ")";
            case GIVEN -> source.text();
            case FROM_MEMORY -> "no source checked";
        };
    }

    private void clauses(List<Block> blocks) {
        RulesHere rules = RulesHere.of(house, answer.scenario().doubts().without("vessel"));
        if (!rules.place().isKnown()) {
            blocks.add(new Block.Paragraph(
                    "Which clauses? The place was not given, so none is cited: whoever enforces the rules there knows them.",
                    Block.Tone.PLAIN));
            return;
        }
        List<List<String>> rows = rules.rules().stream()
                .filter(held -> matters(held.rule()) && held.rule().isCode())
                .map(held -> List.of(
                        held.rule().cited()
                                + (held.rule().source().orElseThrow().standing() == Citation.Standing.SEEN
                                        ? "; read"
                                        : held.rule().clause().contains("quoted") ? "" : "; quoted"),
                        PageWords.typeset(held.rule().words(), shown),
                        became(held)))
                .toList();
        blocks.add(new Grid(
                "Which clauses? " + rules.place().title()
                        + ". \u201cRead\u201d: in the original; \u201cquoted\u201d: by others",
                List.of("Clause and edition", "What it says", "Here"),
                rows));
        // one paragraph: on the lower of the two papers every line counts
        boolean all = rules.rules().stream().map(RulesHere.Held::rule).allMatch(AuthorityPaper::matters);
        String trade = rules.rules().stream()
                .map(RulesHere.Held::rule)
                .filter(rule -> matters(rule) && !rule.isCode())
                .map(rule -> PageWords.capitalised(rule.topic().label()) + ": " + PageWords.typeset(rule.words(), shown)
                        + " (" + rule.cited() + "). ")
                .collect(Collectors.joining());
        String said = code().map(why -> why + " ").orElse("")
                + (trade.isEmpty() ? "" : "No clause, but said by the trade. " + trade)
                + (all ? "" : "Further clauses, which do not affect the size, are left out.");
        if (!said.isEmpty()) {
            blocks.add(new Block.Paragraph(said.strip(), Block.Tone.PLAIN));
        }
    }

    private static boolean matters(PlaceRule rule) {
        return rule.place() == Place.UK && UNVENTED.contains(rule.topic())
                || MATTER.contains(rule.topic())
                        // that there is no such share is no clause
                        && (rule.topic() != Topic.SUPPLY_TO_RELIEF
                                || rule.limit().isPresent());
    }

    /** How much less than the supply at its height the vessel is charged to (Pa), 0 where nothing can be told apart. */
    private double chargedBelow() {
        return house.vessels().stream()
                .reduce((one, last) -> last)
                .map(vessel -> answer.sizing().supplyStatic().gauge(atmosphere)
                        - house.head(vessel.height())
                        - vessel.precharge().gauge(atmosphere))
                .filter(below -> below > FELT)
                .orElse(0.0);
    }

    /** Why a code is taken that is one of several in its country. */
    private Optional<String> code() {
        if (!CODES.contains(house.site().place())) {
            return Optional.empty();
        }
        return Optional.of("Why this code? "
                + (answer.scenario().origin("site.place") == Origin.ASSUMED_CODE
                        ? "It was assumed from the state or country you named. Nobody looked up what that state has adopted."
                        : "The description names it. If only a state or the country was known, it was assumed.")
                + " The code adopted here decides.");
    }

    private String became(RulesHere.Held held) {
        PlaceRule rule = held.rule();
        boolean larger = rule.topic() == Topic.EXPANSION_CONTROL
                && rule.limit().isPresent()
                && house.tank().volume() >= rule.limit().getAsDouble();
        return switch (held.verdict()) {
            case BY_A_RUN -> "see the peaks above";
            case ON_SITE -> larger ? "this heater is larger: ask the water undertaker" : "check on site";
            case CUT_OUT_ON_SITE -> "check on site: the cut-out must be hand-reset";
            case KEPT -> "nothing against it";
            case ONCE_CLOSED -> "check on site; to be kept in full once a check valve is fitted";
            case AGAINST, OPEN, ELSEWHERE, OLDER, NOT_KNOWN -> RulesReport.word(held.verdict());
        };
    }

    private Block plates() {
        // a code that has the vessel sized as its manufacturer says asks which it is
        List<Blanks.Line> lines = new ArrayList<>(List.of(
                Blanks.Line.open("Heater: make"),
                Blanks.Line.open("Vessel: make"),
                new Blanks.Line(
                        "Supply at rest, highest",
                        shown.pressure(answer.sizing().supplyStatic().gauge(atmosphere)),
                        true),
                thermostat(),
                new Blanks.Line("Heater: volume", shown.volume(house.tank().volume()) + from("tank.volume"), true),
                new Blanks.Line(
                        "Heater: rated for",
                        shown.pressure(house.tank().workingPressure().gauge(atmosphere))
                                + from(NamedValue.WORKING_PRESSURE.field()),
                        true),
                new Blanks.Line(
                        "Heater: input",
                        shown.power(house.heater().input()) + from(NamedValue.HEATER_INPUT.field()),
                        true)));
        house.reliefValves()
                .forEach(valve -> lines.add(new Blanks.Line(
                        (house.reliefValves().size() == 1 ? "Relief valve" : PageWords.capitalised(valve.name()))
                                + " opens at",
                        opens(valve),
                        true)));
        lowered.ifPresent(
                supply -> lines.add(new Blanks.Line("Reducing valve: to be set to", supply.valve(shown), true)));
        answer.against()
                .filter(other -> answer.bought().isPresent())
                .map(VesselAnswer.Against::vessel)
                .or(answer::recommended)
                .ifPresent(vessel -> {
                    lines.add(new Blanks.Line("Vessel: volume", shown.volume(vessel.volume()), true));
                    lines.add(new Blanks.Line(
                            "Vessel: precharge",
                            shown.pressure(vessel.precharge().gauge(atmosphere)),
                            true));
                });
        lines.add(answer.bought()
                .flatMap(with -> with.system().vessels().stream().reduce((one, last) -> last))
                .flatMap(vessel -> vessel.body().rating())
                .map(rating -> new Blanks.Line("Vessel: rated for", shown.pressure(rating.gauge(atmosphere)), true))
                .orElse(Blanks.Line.open("Vessel: rated for")));
        return new Blanks("Site and plates: what this sheet assumes, and what you read on site", lines, false);
    }

    /** Behind a value that the person who signs has to look at first. */
    private String from(String field) {
        if (answer.scenario().assumptions().stream()
                .anyMatch(made -> made.field().equals(field))) {
            return " (assumed)";
        }
        return switch (answer.scenario().origin(field)) {
            case GIVEN, CHANGED, RANGE, USUAL_ACCURACY -> "";
            case GUESSED -> " (a guess)";
            case ASSUMED_CODE, TYPICAL, NOT_KNOWN -> " (assumed)";
        };
    }

    /** What holds the supply there, where its own rise is not hidden by the mains. */
    private String reduced() {
        boolean read = lowered.filter(LoweredSupply::isFitted).isEmpty()
                && from(NamedValue.LOCK_UP.field()).isEmpty();
        return house.supply()
                .reducingValve()
                .filter(valve -> Math.abs(valve.set().gauge(atmosphere)
                                + valve.lockUpRise()
                                - answer.sizing().supplyStatic().gauge(atmosphere))
                        < SAME)
                .map(valve -> "Supply at rest: the reducing valve's "
                        + shown.pressure(valve.set().gauge(atmosphere))
                        + from(NamedValue.REDUCED.field())
                        + " and a lock-up rise of "
                        + shown.pressureDifference(valve.lockUpRise()) + (read ? "" : " (assumed)") + ". ")
                .orElse("");
    }

    /** With the second guard beside the first: of an unvented heater both are asked for. */
    private Blanks.Line thermostat() {
        Heater heater = house.heater();
        String set = shown.temperature(heater.setPoint()) + from(NamedValue.SET_POINT.field());
        return heater.cutOut().isEmpty() && !heater.isCutOutAbsent()
                ? new Blanks.Line("Thermostat set at", set, true)
                : new Blanks.Line(
                        "Thermostat; cut-out",
                        set + "; "
                                + heater.cutOut().stream()
                                        .mapToObj(shown::temperature)
                                        .findFirst()
                                        .orElse("none"),
                        true);
    }

    /** Pressure, temperature, and for how much heat its plate says it will do. */
    private String opens(ReliefValve valve) {
        return shown.pressure(valve.setPressure().gauge(atmosphere))
                + valve.setTemperature().stream()
                        .mapToObj(opens -> " or " + shown.temperature(opens))
                        .collect(Collectors.joining())
                + valve.ratedInput().stream()
                        .mapToObj(rated -> ", for " + shown.power(rated))
                        .collect(Collectors.joining());
    }

    /** Whether the valves that open on temperature discharge as much heat as the heater gives; one whose plate says less is a hazard. */
    private String capacity() {
        String input = shown.power(house.heater().input());
        return house.reliefValves().stream()
                .filter(valve -> valve.setTemperature().isPresent())
                .map(valve -> valve.name() + ": rated for "
                        + valve.ratedInput().stream()
                                .mapToObj(rated -> shown.power(rated) + ", "
                                        + (rated < house.heater().input() ? "less than" : "at least") + " the heater's "
                                        + input)
                                .findFirst()
                                .orElse("how much heat? Its plate must say at least the heater's " + input)
                        + ". ")
                .collect(Collectors.joining());
    }

    private String method() {
        return "How was it worked out? By simulation, with "
                + PageMethods.version().get(1)
                + ": cold water fills the tank and is heated to the set point with every tap closed and the relief"
                + " valves left out, as they would hide a peak. Ordinary use was simulated as well. The appendix lists every input with its origin. Local code and a"
                + " licensed professional decide; no vessel replaces a relief valve.";
    }
}
